"""Plain sheets over the last ply: closed forms where they roll out flat, a word where not."""

import math

import numpy as np
import pytest
from shapely.geometry import Polygon

import shapes
from cloth_demo import hatch_patterns, laminate_of
from laywright import values
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.fabric import Sheeting
from laywright.cloth.patterns.pattern import PatternSet, PatternSettings, make_patterns
from laywright.cloth.patterns.pattern_drawing import pattern_drawing
from laywright.cloth.patterns.sheets import lay_sheets
from laywright.files.drawing import Label
from laywright.surface.face import LaminateSide, MouldSide, take_face

TOP = Datum((0.0, 0.0, 100.0), (1.0, 0.0, 0.0))


@pytest.mark.parametrize("kind", Sheeting)
def test_a_sheet_rolls_off_a_cylinder_as_a_rectangle(kind):
    radius, length, half = 80.0, 200.0, 1.0
    tube = shapes.graph(
        lambda x, y: np.sqrt(radius**2 - x**2),
        (-radius * math.sin(half), radius * math.sin(half)),
        (-length / 2, length / 2),
        (60, 60),
    )
    datum = Datum((0.0, 0.0, radius), (0.0, 1.0, 0.0))
    settings = PatternSettings(margin=15.0, also_cut=(kind,))
    (sheet,), remarks = lay_sheets(tube, datum, settings)
    across = 2.0 * half * radius
    assert sheet.net_area == pytest.approx(across * length, rel=2e-3)
    assert np.ptp(sheet.trim, axis=0) == pytest.approx([length, across], rel=2e-3)
    assert (sheet.ply, sheet.name, sheet.cloth) == (0, kind.value, kind.value)
    grown = across * length + 2.0 * 15.0 * (across + length) + math.pi * 15.0**2
    assert sheet.area == pytest.approx(grown, rel=2e-3)
    assert remarks == ()


def test_stiffer_sheets_lie_down_less_on_a_dome():
    dome = shapes.cap(100.0, math.radians(50.0), 14)
    settings = PatternSettings(also_cut=(Sheeting.FILM, Sheeting.TAPE))
    _, remarks = lay_sheets(dome, TOP, settings)
    shares = {text.split(":")[0]: float(text.split(":")[1].split()[0]) for text in remarks}
    assert shares["adhesive tape"] > shares["film"] > 0.0


def test_sheets_are_laid_over_the_last_ply_and_change_nothing_else():
    face = take_face(
        shapes.cap(60.0, 0.5, 10),
        (0.0, 0.0, 1.0),
        laminate_side=LaminateSide.OUTSIDE,
        mould_side=MouldSide.INSIDE,
    )
    laminate = laminate_of(("E-glass twill weave 200 g/m^2", 0.0))
    plain = make_patterns(face, laminate, None, PatternSettings(triangles=500))
    also = PatternSettings(triangles=500, margin=20.0, also_cut=(Sheeting.PEEL_PLY,))
    found = make_patterns(face, laminate, None, also)
    (sheet,) = found.sheets
    np.testing.assert_array_equal(found.patterns[0].cut, plain.patterns[0].cut)
    # The sheet lies on a sphere that is larger by half the laminate, seen from the ply's middle.
    larger = ((60.0 + laminate.thickness) / (60.0 + 0.5 * laminate.thickness)) ** 2
    assert sheet.net_area == pytest.approx(larger * found.patterns[0].net_area, rel=5e-3)
    assert plain.sheets == ()
    again = values.unpack(PatternSet, values.pack(found), "patterns")
    assert values.digest(again) == values.digest(found)
    texts = [shape.text for shape in pattern_drawing(sheet).shapes if isinstance(shape, Label)]
    assert texts[:2] == ["Over the last ply: peel ply", "cut 1"]


def test_without_a_wish_there_are_none():
    found = hatch_patterns()
    assert found.sheets == ()
    assert all(Polygon(pattern.cut).is_valid for pattern in found.patterns)
