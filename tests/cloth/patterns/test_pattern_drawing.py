"""Drawings of patterns and rolls."""

import numpy as np
import pytest

from cloth_demo import hatch_patterns
from drawing_reading import lines, texts
from laywright.cloth.patterns.drawing_marks import CHECK_BAR
from laywright.cloth.patterns.pattern_drawing import pattern_drawing
from laywright.files.drawing import Drawing, Label
from laywright.files.framing import extent


def test_a_pattern_is_drawn_at_true_scale_on_named_layers():
    pattern = hatch_patterns().patterns[1]
    drawing = pattern_drawing(pattern, "Hatch")
    assert set(drawing.layers) == {"cut", "trim", "notch", "datum", "warp", "label", "check bar"}
    assert set(drawing.styles) == set(drawing.layers)
    assert lines(drawing, "cut")[0].points == pytest.approx(pattern.cut)
    assert lines(drawing, "trim")[0].points == pytest.approx(pattern.trim)
    assert len(lines(drawing, "notch")) == len(pattern.notches) == 4


def test_the_label_says_ply_cloth_angle_and_side():
    said = texts(pattern_drawing(hatch_patterns().patterns[1], "Hatch"))
    for wanted in (
        "Hatch",
        "Ply 2",
        "E-glass twill weave 200 g/m^2",
        "+45 deg from the datum arrow",
        "this side up, away from the mould",
        "warp this way",
    ):
        assert wanted in said
    assert "along the datum arrow" in texts(pattern_drawing(hatch_patterns().patterns[0]))


def test_check_bars_measure_100_mm_both_ways():
    bars = lines(pattern_drawing(hatch_patterns().patterns[0]), "check bar")
    sizes = [np.ptp(bar.points, axis=0).tolist() for bar in bars]
    assert [CHECK_BAR, 0.0] in sizes
    assert [0.0, CHECK_BAR] in sizes
    assert CHECK_BAR == 100.0


def test_the_datum_arrow_points_as_the_pattern_says():
    pattern = hatch_patterns().patterns[1]
    shaft = lines(pattern_drawing(pattern), "datum")[0].points
    along = (shaft[1] - shaft[0]) / np.linalg.norm(shaft[1] - shaft[0])
    assert shaft[0] == pytest.approx(pattern.datum)
    assert along == pytest.approx(pattern.datum_direction)


def test_label_and_datum_arrow_keep_out_of_each_others_way():
    for pattern in hatch_patterns().patterns:
        drawing = pattern_drawing(pattern)
        tip = lines(drawing, "datum")[0].points[1]
        heights = [s.at[1] for s in drawing.shapes if isinstance(s, Label) and s.layer == "label"]
        assert all(abs(height - tip[1]) > 1.0 for height in heights)
        if abs(tip[1] - pattern.datum[1]) > 1.0:
            assert all((h - pattern.datum[1]) * (tip[1] - pattern.datum[1]) < 0 for h in heights)


def test_several_plies_one_drawing_its_quantity_and_its_seam():
    pattern = hatch_patterns().patterns[0]
    drawing = pattern_drawing(pattern, "", (3, 1), 4, (120.0,))
    assert {"Plies 1 and 3", "cut 4", "outline drawn within 0.05 mm"} <= set(texts(drawing))
    (seam,) = lines(drawing, "seam")
    assert seam.points[:, 1].tolist() == [120.0, 120.0]
    assert "cut 1" in texts(pattern_drawing(pattern))


def test_nothing_is_written_over_the_check_bars():
    drawing = pattern_drawing(hatch_patterns().patterns[0])
    (text,) = [s for s in drawing.shapes if isinstance(s, Label) and s.layer == "check bar"]
    low, high = extent(Drawing("", (text,)))
    for bar in lines(drawing, "check bar"):
        assert (bar.points.max(axis=0) < low).any() or (bar.points.min(axis=0) > high).any()
