"""DXF for cutters and CAD: release R2010, lengths in mm, one DXF layer per layer.

Lengths in a DXF have no unit of their own, so the header states millimetres
(``$INSUNITS`` 4) and metric habits (``$MEASUREMENT`` 1).  Dates and identities in the header
are fixed: the same drawing gives the same bytes.
"""

from __future__ import annotations

import io
import math
import re
from collections.abc import Sequence

import ezdxf
import numpy as np
from ezdxf import colors
from ezdxf.document import Drawing as Document
from ezdxf.enums import TextEntityAlignment
from ezdxf.layouts.layout import Modelspace

from laywright.errors import InputError
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.framing import extent
from laywright.files.lettering import clean

__all__ = ["dxf_bytes"]

_GAP = 20.0  # mm between drawings side by side
_MILLIMETRES = 4
_METRIC = 1
_NOT_IN_NAMES = re.compile(r'[<>/\\":;?*|=`,%]')
_FIXED = (
    ("$TDCREATE", "2451544.5"),
    ("$TDUCREATE", "2451544.5"),
    ("$TDUPDATE", "2451544.5"),
    ("$TDUUPDATE", "2451544.5"),
    ("$FINGERPRINTGUID", "{00000000-0000-0000-0000-000000000000}"),
    ("$VERSIONGUID", "{00000000-0000-0000-0000-000000000000}"),
)
_STAMP = re.compile(r"\d+(?:\.\d+)+\S* @ \d{4}-\d\d-\d\dT[0-9:.+-]+")


def dxf_bytes(drawings: Drawing | Sequence[Drawing]) -> bytes:
    """Return a DXF file of one drawing, or of several side by side.

    Parameters
    ----------
    drawings : Drawing or sequence of Drawing
        In mm.  A single drawing keeps its coordinates; several stand in a row from x = 0,
        20 mm apart, each on y = 0.

    Returns
    -------
    bytes
        R2010 (AC1024), UTF-8.

    Raises
    ------
    InputError
        If there is no drawing.
    """
    several = (drawings,) if isinstance(drawings, Drawing) else tuple(drawings)
    if not several:
        raise InputError("the DXF file", "no drawing", "at least one", "make the patterns first")
    placed = several if isinstance(drawings, Drawing) else _in_a_row(several)
    document = ezdxf.new("R2010", setup=False)  # type: ignore[attr-defined]
    document.header["$INSUNITS"] = _MILLIMETRES
    document.header["$MEASUREMENT"] = _METRIC
    space = document.modelspace()
    for drawing in placed:
        _add(document, space, drawing)
    bounds = np.stack([extent(drawing) for drawing in placed])
    low, high = bounds[:, 0].min(axis=0), bounds[:, 1].max(axis=0)
    space.reset_extents((*low.tolist(), 0.0), (*high.tolist(), 0.0))
    middle = (0.5 * (low + high)).tolist()
    document.set_modelspace_vport(float(np.max(high - low)) * 1.1, (middle[0], middle[1]))
    for kind in sorted(document.entitydb.dxf_types_in_use()):
        document.classes.add_class(kind)  # left to itself, the writer takes them in any order
    buffer = io.StringIO(newline="\n")
    document.write(buffer)
    return _settled(buffer.getvalue()).encode("utf-8")


def _in_a_row(drawings: tuple[Drawing, ...]) -> list[Drawing]:
    placed, x = [], 0.0
    for drawing in drawings:
        low, high = extent(drawing)
        placed.append(drawing.moved(x - float(low[0]), -float(low[1])))
        x += float(high[0] - low[0]) + _GAP
    return placed


def _add(document: Document, space: Modelspace, drawing: Drawing) -> None:
    names = {layer: _layer(document, layer, drawing) for layer in drawing.layers}
    for shape in drawing.shapes:
        if isinstance(shape, Line):
            if shape.closed and shape.fill is not None:
                hatch = space.add_hatch(dxfattribs={"layer": names[shape.layer]})
                hatch.rgb = _rgb(shape.fill)
                hatch.paths.add_polyline_path(shape.points.tolist(), is_closed=True)
            space.add_lwpolyline(
                shape.points.tolist(),
                close=shape.closed,
                dxfattribs={"layer": names[shape.layer]},
            )
        else:
            _write(space, shape, names[shape.layer])


def _write(space: Modelspace, label: Label, layer: str) -> None:
    text = clean(label.text).replace("%%", "% %").replace("^", "^ ").replace("\\", "/")
    if text.strip():
        space.add_text(
            text,
            height=label.height,
            rotation=math.degrees(label.turn),
            dxfattribs={"layer": layer},
        ).set_placement(label.at, align=TextEntityAlignment.MIDDLE_CENTER)


def _layer(document: Document, layer: str, drawing: Drawing) -> str:
    """Return the DXF name of a layer, made with its style when it is new."""
    style = drawing.styles.get(layer, Style())
    name = _NOT_IN_NAMES.sub("_", clean(layer))[:200].strip() or "drawing"
    if name not in document.layers:
        entry = document.layers.add(name)
        entry.rgb = _rgb(style.colour)
        entry.dxf.lineweight = _line_weight(style.width)
        if style.dashes:
            entry.dxf.linetype = _line_type(document, style.dashes)
    return name


def _line_weight(width: float) -> int:
    """Return the nearest pen that the format knows, in 1/100 mm."""
    pens = (0, 5, 9, 13, 15, 18, 20, 25, 30, 35, 40, 50, 53, 60, 70, 80, 90, 100, 106, 120, 140)
    return min(pens, key=lambda pen: abs(pen - 100.0 * width))


def _line_type(document: Document, dashes: tuple[float, ...]) -> str:
    pattern = dashes if len(dashes) % 2 == 0 else dashes * 2
    name = "DASHES_" + "_".join(f"{length:g}".replace(".", "p") for length in pattern)
    if name not in document.linetypes:
        signed = [length if i % 2 == 0 else -length for i, length in enumerate(pattern)]
        document.linetypes.add(name, [sum(pattern), *signed], description="dashes in mm")
    return name


def _rgb(colour: tuple[float, float, float]) -> colors.RGB:
    r, g, b = (round(255 * min(max(part, 0.0), 1.0)) for part in colour)
    return colors.RGB(r, g, b)


def _settled(text: str) -> str:
    """Return the file with dates and random identities replaced by fixed ones."""
    for name, value in _FIXED:
        text = re.sub(
            rf"(\n\s*9\n{re.escape(name)}\n\s*\d+\n)[^\n]*",
            lambda match, value=value: match[1] + value,  # type: ignore[misc]
            text,
            count=1,
        )
    return _STAMP.sub("fixed", text)
