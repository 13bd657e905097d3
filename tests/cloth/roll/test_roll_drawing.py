"""The drawing of a roll."""

import numpy as np
import pytest

from cloth_demo import TWILL, hatch_patterns
from drawing_reading import lines, texts
from laywright.cloth.roll.roll import Fault, Offcut, RollSettings, placed_outline, plan_roll
from laywright.cloth.roll.roll_drawing import roll_drawing
from laywright.files.drawing import Label
from laywright.files.framing import extent


def test_a_roll_is_drawn_with_every_piece_where_it_lies():
    patterns = hatch_patterns()
    layout = plan_roll(patterns, RollSettings(seconds=0.0)).rolls[0]
    drawing = roll_drawing(layout, patterns.patterns)
    assert set(drawing.styles) == set(drawing.layers)
    assert np.ptp(lines(drawing, "roll")[0].points, axis=0) == pytest.approx(
        [layout.length, layout.width]
    )
    for number, place in enumerate(layout.placements, 1):
        line = lines(drawing, "cut")[number - 1]
        assert line.points == pytest.approx(placed_outline(patterns.patterns[place.pattern], place))
        assert f"{number}: {place.name}" in texts(drawing)
    (words,) = [text for text in texts(drawing) if "% used" in text]
    assert f"{layout.length / 1000:.2f} m of a roll 1000 mm wide" in words
    assert f"buy {layout.to_buy / 1000:.2f} m" in words


def test_names_and_warp_arrows_do_not_cross():
    patterns = hatch_patterns()
    layout = plan_roll(patterns, RollSettings(seconds=0.0, parts=2)).rolls[0]
    drawing = roll_drawing(layout, patterns.patterns)
    arrows = [s.points for s in lines(drawing, "warp")]
    for label in (s for s in drawing.shapes if isinstance(s, Label) and s.layer == "label"):
        low, high = extent(type(drawing)("", (label,)))
        inside = [((a >= low) & (a <= high)).all(axis=1).any() for a in arrows]
        assert not any(inside), label.text


def test_the_warp_arrow_turns_with_the_piece():
    patterns = hatch_patterns()
    layout = plan_roll(patterns, RollSettings(seconds=0.0, parts=3)).rolls[0]
    shafts = [s.points for s in lines(roll_drawing(layout, patterns.patterns), "warp")][::3]
    ahead = [float(shaft[1, 0] - shaft[0, 0]) > 0.0 for shaft in shafts]
    assert ahead == [*(not place.turned for place in layout.placements), True]


def test_faults_offcuts_and_rests_are_drawn_with_their_sizes():
    settings = RollSettings(
        seconds=0.0, offcuts=(Offcut(TWILL, 600.0, 450.0),), faults=(Fault(TWILL, 100.0, 130.0),)
    )
    patterns = hatch_patterns()
    plan = plan_roll(patterns, settings)
    (offcut,), (roll,) = plan.offcuts, plan.rolls
    assert "0.60 m of an offcut 450 mm wide" in " ".join(
        texts(roll_drawing(offcut, patterns.patterns))
    )
    drawing = roll_drawing(roll, patterns.patterns)
    box = lines(drawing, "fault")[0].points
    assert box.min(axis=0).tolist() == [100.0, 0.0]
    assert box.max(axis=0).tolist() == [130.0, 1000.0]
    for a, b, low, high in roll.left_over:
        assert f"rest {b - a:.0f} x {high - low:.0f} mm" in texts(drawing)
    assert lines(drawing, "unused edge")[0].points[:, 1].tolist() == [10.0, 10.0]
