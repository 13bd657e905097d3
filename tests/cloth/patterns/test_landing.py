"""Where patterns land on the mould."""

import math

import numpy as np
import pytest

import shapes
from cloth_demo import TWILL, hatch_patterns, laminate_of
from laywright.cloth.drape.datum import Datum
from laywright.cloth.patterns.landing import landing_drawing, landings
from laywright.cloth.patterns.pattern import PatternSettings, make_patterns
from laywright.errors import InputError
from laywright.files.drawing import Label, Line
from laywright.surface.face import MouldSide, take_face

COARSE = PatternSettings(triangles=500)


def on_plug(surface):
    """The mould below, so that the cloth is laid and seen from above."""
    return take_face(surface, (0, 0, 1), mould_side=MouldSide.INSIDE)


def plate(angle=0.0):
    """A flat plate, x from -100 to 100 and y from -60 to 60; start 30 mm right of its middle."""
    flat = shapes.graph(lambda x, y: 0.0 * x, (-100, 100), (-60, 60), (40, 24))
    datum = Datum((30.0, 10.0, 0.0), (1.0, 0.0, 0.0))
    return make_patterns(on_plug(flat), laminate_of((TWILL, angle)), datum, COARSE)


def test_on_a_plate_every_measure_is_plain_to_see():
    (found,) = landings(plate(), (0.0, 0.0, 1.0))
    assert found.names == ("ply 1",)
    assert found.start == pytest.approx([130.0, 70.0], abs=1e-3)
    wanted = {
        "warp ahead": (70.0, 0.0),
        "weft left": (0.0, 50.0),
        "warp behind": (-130.0, 0.0),
        "weft right": (0.0, -70.0),
    }
    assert found.notches.keys() == wanted.keys()
    for word, point in wanted.items():
        assert found.notches[word] == pytest.approx(point, abs=0.05)
    length = sum(np.linalg.norm(piece[1] - piece[0]) for piece in found.threads)
    assert length == pytest.approx(200.0 + 120.0, rel=1e-3)
    (turned,) = landings(plate(), (0.0, 0.0, -1.0))
    assert turned.start == pytest.approx(found.start)


def test_threads_of_a_turned_ply_leave_the_plate_on_its_diagonals():
    (found,) = landings(plate(45.0), (0.0, 0.0, 1.0))
    assert found.notches["warp ahead"] == pytest.approx([50.0, 50.0], abs=0.1)
    assert found.notches["weft left"] == pytest.approx([-50.0, 50.0], abs=0.1)
    assert found.notches["warp behind"] == pytest.approx([-70.0, -70.0], abs=0.1)
    assert found.notches["weft right"] == pytest.approx([70.0, -70.0], abs=0.1)


def test_on_a_cap_the_start_lies_in_the_middle_and_threads_leave_alike():
    """By symmetry: at the pole, and r sin(angle) from it."""
    face = on_plug(shapes.cap(100, 0.6, 16))
    patterns = make_patterns(face, laminate_of((TWILL, 0.0)), Datum((0, 0, 100), (1, 0, 0)), COARSE)
    (found,) = landings(patterns, (0.0, 0.0, 1.0))
    radius = 100.0 * math.sin(0.6)
    assert found.start == pytest.approx([radius, radius], abs=1.0)
    for point in found.notches.values():
        assert np.hypot(*point) == pytest.approx(radius, abs=1.0)


def test_plies_that_land_alike_are_told_once():
    patterns = hatch_patterns()
    found = landings(patterns, (0.0, 0.0, 1.0))
    assert [landing.names for landing in found] == [("ply 1", "ply 3"), ("ply 2",)]


def test_the_drawing_states_both_measures_with_their_unit():
    drawing = landing_drawing(plate(), (0.0, 0.0, 1.0))
    texts = [s.text for s in drawing.shapes if isinstance(s, Label)]
    assert texts == ["130 mm", "70 mm"]
    (edge,) = [s.points for s in drawing.shapes if isinstance(s, Line) and s.layer == "trim"]
    assert edge.min(axis=0) == pytest.approx([0.0, 0.0], abs=1e-9)
    assert edge.max(axis=0) == pytest.approx([200.0, 120.0])
    assert set(drawing.styles) == set(drawing.layers)


def test_an_arrow_along_the_pull_cannot_be_seen():
    with pytest.raises(InputError, match="a datum arrow along the pull"):
        landings(plate(), (1.0, 0.0, 0.0))
