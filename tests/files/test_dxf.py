import io
import math

import ezdxf
import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.dxf import dxf_bytes

FLAG = np.array([[0, 0], [100, 0], [100, 20], [20, 20], [20, 60], [0, 60]], float)
PATTERN = Drawing(
    "ply 1",
    (
        Line("cut", FLAG + 300.0, True),
        Line("fold", FLAG[:2]),
        Line("area", FLAG, True, (0.5, 0.5, 0.5)),
        Label("text", "Ply 1, 45°", (50.0, 10.0), 5.0, math.pi / 6),
    ),
    {"cut": Style(0.5, (), (1.0, 0.0, 0.0)), "fold": Style(0.25, (4.0, 2.0))},
)


def _read(written):
    document = ezdxf.read(io.StringIO(written.decode("utf-8")))
    assert not document.audit().has_errors
    return document


def test_a_known_length_is_read_back():
    document = _read(dxf_bytes(PATTERN))
    (cut,) = document.modelspace().query('LWPOLYLINE[layer=="cut"]')
    points = np.array(list(cut.get_points("xy")))
    assert cut.closed
    assert np.array_equal(points, FLAG + 300.0)
    assert np.linalg.norm(points[1] - points[0]) == 100.0


def test_layers_carry_colour_pen_and_dashes():
    layers = _read(dxf_bytes(PATTERN)).layers
    assert {"cut", "fold", "area", "text"} <= {layer.dxf.name for layer in layers}
    assert tuple(layers.get("cut").rgb) == (255, 0, 0)
    assert layers.get("cut").dxf.lineweight == 50
    assert layers.get("fold").dxf.linetype != "Continuous"


def test_text_stands_where_it_was_put():
    document = _read(dxf_bytes(PATTERN))
    (text,) = document.modelspace().query("TEXT")
    assert text.dxf.text == "Ply 1, 45°"
    assert text.dxf.height == 5.0
    assert text.dxf.rotation == pytest.approx(30.0)
    _, at, _ = text.get_placement()
    assert tuple(at)[:2] == (50.0, 10.0)


def test_filled_areas_are_hatches():
    document = _read(dxf_bytes(PATTERN))
    (hatch,) = document.modelspace().query("HATCH")
    assert hatch.dxf.layer == "area"
    assert tuple(hatch.rgb) == (128, 128, 128)


def test_several_drawings_stand_side_by_side():
    document = _read(dxf_bytes([Drawing(str(k), (Line("cut", FLAG, True),)) for k in range(3)]))
    lows = sorted(
        min(x for x, _ in line.get_points("xy"))
        for line in document.modelspace().query("LWPOLYLINE")
    )
    assert np.diff(lows) == pytest.approx([120.5, 120.5])


@settings(max_examples=25, deadline=None)
@given(st.text(max_size=30))
def test_hostile_names_add_no_entities(text):
    drawing = Drawing(text, (Line(text, FLAG), Label(text, f"x{text}", (0.0, 0.0))))
    document = _read(dxf_bytes(drawing))
    assert sorted(e.dxftype() for e in document.modelspace()) == ["LWPOLYLINE", "TEXT"]


def test_a_name_that_looks_like_dxf_stays_a_name():
    drawing = Drawing("a", (Label("l\n  0\nEOF", "x\n  0\nLINE\n%%d", (0.0, 0.0)),))
    document = _read(dxf_bytes(drawing))
    (text,) = document.modelspace()
    assert text.dxf.text == "x   0 LINE % %d"


def test_nothing_is_refused():
    with pytest.raises(InputError, match="no drawing"):
        dxf_bytes([])
