"""The roll plan."""

import dataclasses
import math

import numpy as np
import pytest

from cloth_demo import pattern_of
from laywright import values
from laywright.cloth.packing import fits
from laywright.cloth.pattern import PatternSet
from laywright.cloth.roll import RollPlan, RollSettings, placed_outline, plan_roll
from laywright.cloth.skyline import Spot
from laywright.errors import Cancelled, InputError, LimitError


def ell(size, ply, cloth="twill", roll_width=1000.0):
    points = [[0, 0], [1, 0], [1, 0.3], [0.3, 0.3], [0.3, 1], [0, 1]]
    return pattern_of(size * np.array(points, float), ply, cloth, roll_width)


def kit(*patterns):
    return PatternSet(patterns, (), ())


SIX = kit(*(ell(size, ply) for ply, size in enumerate((600, 500, 500, 400, 300, 300), start=1)))


def check(plan, patterns, settings):
    by_ply = {pattern.ply: pattern for pattern in patterns.patterns}
    placed = [place.ply for roll in plan.rolls for place in roll.placements]
    assert sorted(placed) == sorted(by_ply)
    for roll in plan.rolls:
        outlines = [by_ply[place.ply].cut for place in roll.placements]
        spots = [Spot(p.x, p.y - settings.edge, p.turned) for p in roll.placements]
        assert fits(outlines, spots, roll.width - 2 * settings.edge, settings.gap)
        laid = np.concatenate([placed_outline(by_ply[p.ply], p) for p in roll.placements])
        assert laid[:, 0].min() >= -1e-9
        assert roll.length == pytest.approx(laid[:, 0].max())
        area = sum(by_ply[p.ply].area for p in roll.placements)
        assert roll.share_used == pytest.approx(area / (roll.length * roll.width))


def test_simple_plan_is_sound_and_always_the_same():
    settings = RollSettings(seconds=0.0)
    plan = plan_roll(SIX, settings)
    check(plan, SIX, settings)
    assert plan == plan_roll(SIX, settings)
    assert plan.digest == plan_roll.digest(SIX, settings)


def test_searched_plan_is_sound_and_never_longer():
    settings = RollSettings(seconds=2.0)
    plan = plan_roll(SIX, settings)
    check(plan, SIX, settings)
    simple = plan_roll(SIX, RollSettings(seconds=0.0))
    assert plan.rolls[0].length <= simple.rolls[0].length + 1e-9


def test_each_cloth_has_its_roll_in_the_order_of_the_layup():
    patterns = kit(ell(300, 1, "twill"), ell(300, 2, "mat", 600.0), ell(200, 3, "twill"))
    settings = RollSettings(seconds=0.0)
    plan = plan_roll(patterns, settings)
    check(plan, patterns, settings)
    assert [(roll.cloth, roll.width) for roll in plan.rolls] == [("twill", 1000.0), ("mat", 600.0)]
    wider = plan_roll(patterns, RollSettings({"mat": 1270.0}, seconds=0.0))
    assert wider.rolls[1].width == 1270.0


def test_a_pattern_wider_than_its_roll_is_refused_in_one_sentence():
    with pytest.raises(LimitError, match=r"ply 1 on the roll of twill: found a pattern that is"):
        plan_roll(kit(ell(990, 1)), RollSettings(seconds=0.0))


def test_outlines_for_a_drawing():
    plan = plan_roll(SIX, RollSettings(seconds=0.0))
    edge, *pieces = plan.rolls[0].outlines(SIX)
    assert edge[0].max(axis=0).tolist() == [plan.rolls[0].length, 1000.0]
    assert len(pieces) == 6
    assert all(closed for _, closed in (edge, *pieces))


def test_inputs_and_results_are_stored_and_read_back():
    settings = RollSettings({"mat": 1270.0}, 12.0, 4.0, 0.0, 7)
    assert values.unpack(RollSettings, values.pack(settings)) == settings
    plan = plan_roll(SIX, settings)
    assert values.unpack(RollPlan, values.pack(plan)) == plan


@pytest.mark.parametrize(
    "wrong",
    [{"edge": -1.0}, {"gap": math.nan}, {"seconds": -1.0}, {"widths": {"mat": 10.0}}],
)
def test_settings_that_cannot_be_are_refused(wrong):
    with pytest.raises(InputError):
        RollSettings(**wrong)


def test_stops_when_asked():
    def stop(share, doing=""):
        raise Cancelled

    with pytest.raises(Cancelled):
        plan_roll(SIX, RollSettings(seconds=2.0), progress=stop)


def test_a_changed_pattern_changes_the_digest():
    settings = RollSettings(seconds=0.0)
    moved = dataclasses.replace(SIX.patterns[0], cut=SIX.patterns[0].cut * 1.01)
    assert plan_roll.digest(kit(moved, *SIX.patterns[1:]), settings) != plan_roll.digest(
        SIX, settings
    )
