"""Flat patterns: one outline to cut for every ply, draped on the surface that the ply takes.

A pattern is drawn as the cloth lies on the bench with its upper side up, the side that will
look away from the mould.  Its x axis runs along the warp, which is the length of the roll.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
import shapely

from laywright.arrays import FloatArray, floats
from laywright.cloth.datum import Datum, default_datum
from laywright.cloth.drape import Drape, drape
from laywright.cloth.even_mesh import even_mesh, spacing_for
from laywright.cloth.fabric import Start, fabric_of
from laywright.cloth.outline import cut_outline, flat_region, notches_of, ring
from laywright.cloth.place import nearest_place
from laywright.cloth.strain import image_of
from laywright.errors import InputError
from laywright.laminate.laminate import Laminate
from laywright.laminate.materials import Weave
from laywright.laminate.plies import Ply
from laywright.progress import Progress, part_of, silent
from laywright.stage import stage
from laywright.surface.face import MouldedFace
from laywright.surface.offset import offset
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = ["DrapedPly", "Pattern", "PatternSet", "PatternSettings", "make_patterns"]

_VISIBLE_STRETCH = 0.005
_LOOSE = 0.05
_FEWEST = 200
_MESHING = 0.2


@dataclass(frozen=True)
class PatternSettings:
    """How patterns are drawn and how the cloth is laid.

    Attributes
    ----------
    margin : float, mm
        Cloth beyond the edge of the part; 20 mm is common practice, no source.
    notch : float, mm
        Length of the notches where the threads through the start point meet the cut edge.
    deviation : float, mm
        Largest distance between the drawn outlines and the computed ones.
    start : Start or None
        What the hand lays straight first; None takes what is usual for each cloth.
    triangles : int
        Number of even triangles that the face is meshed with for the drape.
    """

    margin: float = 20.0
    notch: float = 6.0
    deviation: float = TOLERANCES.outline
    start: Start | None = None
    triangles: int = 8000

    def __post_init__(self) -> None:
        for name, least in (("margin", 0.0), ("notch", 0.0), ("deviation", 1e-6)):
            value = getattr(self, name)
            if not (math.isfinite(value) and value >= least):
                raise InputError(
                    f"{name} of the patterns",
                    f"{value:g} mm",
                    f"at least {least:g} mm",
                    "correct the setting",
                )
        if self.triangles < _FEWEST:
            raise InputError(
                "triangles for the drape",
                f"{self.triangles}",
                f"at least {_FEWEST}",
                "correct the setting",
            )


@dataclass(frozen=True, eq=False)
class DrapedPly:
    """A ply on its own surface.

    Attributes
    ----------
    surface : Surface
        Surface of the middle of the ply, mm.
    drape : Drape
        How the cloth lies on it.
    """

    surface: Surface
    drape: Drape


@dataclass(frozen=True, eq=False)
class Pattern:
    """The flat pattern of one ply; coordinates in mm, x along the warp, lowest corner at zero.

    Attributes
    ----------
    ply : int
        Number of the ply; ply 1 touches the mould.
    name : str
        Name of the ply.
    cloth : str
        Name of the cloth that it is cut from.
    weave : Weave
        How the yarns of that cloth lie.
    roll_width : float, mm
        Width of the roll, from the cloth's card.
    locking_angle : float, radians
        Shear at which the cloth begins to wrinkle.
    angle : float, radians
        Ply angle from the datum arrow.
    cut : (k, 2) float, mm
        Outline to cut, margin included, counter-clockwise, not repeated at its end.
    openings : tuple of (i, 2) float, mm
        Openings to cut, smaller than the holes by the margin; small holes have none.
    trim : (j, 2) float, mm
        Edge of the part.
    holes : tuple of (i, 2) float, mm
        Edges of the holes in the part.
    datum : (2,) float, mm
        Start point.
    datum_direction : (2,) float
        Unit direction of the datum arrow on the cloth.
    centre : (2,) float, mm
        Where the middle of the part's area lies.
    notches : tuple of (2, 2) float, mm
        From the cut edge inwards, where the threads through the start point run.
    area : float, mm^2
        Cloth within the cut line.
    net_area : float, mm^2
        Cloth within the edge of the part.
    largest_shear : float, radians
        Largest shear, without its sign.
    locked_share : float
        Share of the area whose shear is past the locking angle.
    piece : int
        Number of the piece where the ply is laid in several, 0 where it is laid in one.
    slits : tuple of (k, 2) float, mm
        Lines to cut inside the cut line, from the edge inwards, where darts lap over.
    laps : tuple of (k, 2) float, mm
        Lines up to which this pattern laps over its neighbour, or over itself at a dart.
    """

    ply: int
    name: str
    cloth: str
    weave: Weave
    roll_width: float
    locking_angle: float
    angle: float
    cut: FloatArray
    openings: tuple[FloatArray, ...]
    trim: FloatArray
    holes: tuple[FloatArray, ...]
    datum: FloatArray
    datum_direction: FloatArray
    centre: FloatArray
    notches: tuple[FloatArray, ...]
    area: float
    net_area: float
    largest_shear: float
    locked_share: float
    piece: int = 0
    slits: tuple[FloatArray, ...] = ()
    laps: tuple[FloatArray, ...] = ()


@dataclass(frozen=True, eq=False)
class PatternSet:
    """The patterns of a layup.

    Attributes
    ----------
    patterns : tuple of Pattern
        One for each ply, or for each piece of a ply, ply 1 first.
    draped : tuple of DrapedPly
        The drape of each ply, ply 1 first; its (u, v) plus `Pattern.datum` of the piece are
        pattern coordinates.
    remarks : tuple of str
        What a maker should know about them.
    digest : str
        Of the inputs.
    """

    patterns: tuple[Pattern, ...]
    draped: tuple[DrapedPly, ...]
    remarks: tuple[str, ...]
    digest: str = ""


@stage("Cloth Patterns", version=2)
def make_patterns(
    face: MouldedFace,
    laminate: Laminate,
    datum: Datum | None = None,
    settings: PatternSettings = PatternSettings(),
    *,
    progress: Progress = silent,
) -> PatternSet:
    """Drape every ply on its own surface and draw its flat pattern.

    Parameters
    ----------
    face : MouldedFace
        The moulded face.
    laminate : Laminate
        Plies and their thicknesses.
    datum : Datum or None
        Start point and arrow; None takes the middle and the longest extent.
    settings : PatternSettings
        Margin, notches, outlines.
    progress : Progress
        Told how far it is; may raise `laywright.errors.Cancelled`.

    Returns
    -------
    PatternSet

    Raises
    ------
    GeometryError
        If the face cannot be laid flat in one piece, or a pattern would overlap itself.
    """
    working = face.working_surface(laminate.thickness)
    working = even_mesh(
        working,
        spacing_for(working, settings.triangles),
        progress=part_of(progress, 0.0, _MESHING),
    )
    datum = datum or default_datum(working)
    plies = laminate.layup.plies
    patterns: list[Pattern] = []
    draped: list[DrapedPly] = []
    earlier: dict[tuple[str, float], FloatArray] = {}
    for index, ply in enumerate(plies):
        name = laminate.layup.ply_name(index + 1)
        shares = [_MESHING + (1.0 - _MESHING) * k / len(plies) for k in (index, index + 1)]
        inner = part_of(progress, *shares)
        inner(0.0, f"draping {name}")
        surface = offset(working, float(laminate.ply_heights[index]))
        result = drape(
            surface,
            fabric_of(ply.cloth),
            datum,
            ply.angle,
            start=settings.start,
            first=earlier.get((ply.cloth.name, ply.angle)),
            progress=inner,
        )
        earlier[ply.cloth.name, ply.angle] = result.uv
        draped.append(DrapedPly(surface, result))
        patterns.append(_pattern(index + 1, name, ply, surface, result, datum, settings))
    remarks = [
        remark
        for pattern, ply, lies in zip(patterns, plies, draped, strict=True)
        for remark in _remarks(pattern, ply.cloth.weave, lies)
    ]
    return PatternSet(tuple(patterns), tuple(draped), tuple(remarks))


def _pattern(
    number: int,
    name: str,
    ply: Ply,
    surface: Surface,
    result: Drape,
    datum: Datum,
    settings: PatternSettings,
) -> Pattern:
    region = flat_region(surface, result.uv, name)
    cut = cut_outline(region, settings.margin, settings.deviation)
    trim = shapely.simplify(region, settings.deviation)
    shift = -np.array(cut.bounds[:2])
    middle = nearest_place(surface, (surface.areas / surface.area) @ surface.centroids)
    notches = notches_of(cut, settings.notch)
    return Pattern(
        number,
        name,
        ply.cloth.name,
        ply.cloth.weave,
        ply.cloth.roll_width,
        ply.cloth.locking_angle,
        ply.angle,
        ring(cut.exterior) + shift,
        tuple(ring(inner) + shift for inner in cut.interiors),
        ring(trim.exterior) + shift,
        tuple(ring(inner) + shift for inner in trim.interiors),
        floats(shift, 2),
        floats(image_of(surface, result.uv, datum.origin, datum.direction), 2),
        floats(middle.value(surface, result.uv) + shift, 2),
        tuple(notch + shift for notch in notches),
        float(cut.area),
        float(region.area),
        result.largest_shear,
        result.locked_share,
    )


def _remarks(pattern: Pattern, weave: Weave, ply: DrapedPly) -> list[str]:
    """Return what a maker should know about one pattern, in plain words."""
    remarks = []
    degrees = math.degrees(pattern.angle)
    head = f"{pattern.name} ({pattern.cloth}, {degrees:.0f} deg)"
    shear = np.abs(ply.drape.shear)
    if pattern.locked_share > 0.0:
        x, y, z = ply.surface.centroids[int(np.argmax(shear))]
        remarks.append(
            f"{head}: {100.0 * pattern.locked_share:.1f} % of its area shears past the locking "
            f"angle of {math.degrees(pattern.locking_angle):.0f} deg, up to "
            f"{math.degrees(pattern.largest_shear):.0f} deg near ({x:.0f}, {y:.0f}, {z:.0f}) mm; "
            "the cloth will wrinkle there. Darts and splices are not proposed yet: cut and lap "
            "it by hand, turn the ply, move the start point or take a looser cloth."
        )
    if ply.drape.yarn_stretch > (_LOOSE if weave is Weave.MAT else _VISIBLE_STRETCH):
        remarks.append(
            f"{head}: the cloth would have to stretch or gather by "
            f"{100.0 * ply.drape.yarn_stretch:.1f} % on average; make a trial in cheap cloth "
            "before you cut."
        )
    if not ply.drape.at_rest:
        remarks.append(
            f"{head}: the computation stopped before the cloth had come to rest; take the "
            "pattern as a rough guide and leave more margin."
        )
    return remarks
