"""The roll plan."""

import dataclasses

import numpy as np
import pytest
import shapely
from shapely.geometry import Polygon

from cloth_demo import pattern_of
from laywright import values
from laywright.cloth.patterns.pattern import PatternSet
from laywright.cloth.roll.packing import fits
from laywright.cloth.roll.roll import (
    Fault,
    Offcut,
    RollPlan,
    RollSettings,
    TurnOver,
    WidePatterns,
    placed_outline,
    plan_roll,
)
from laywright.cloth.roll.roll_layout import strip_outline
from laywright.cloth.roll.spot import Spot
from laywright.cloth.roll.tape import cut_length
from laywright.errors import Cancelled, LimitError
from laywright.laminate.materials import Weave

QUICK = RollSettings(seconds=0.0)


def ell(size, ply, cloth="twill", roll_width=1000.0, weave=Weave.TWILL):
    points = [[0, 0], [1, 0], [1, 0.3], [0.3, 0.3], [0.3, 1], [0, 1]]
    return pattern_of(size * np.array(points, float), ply, cloth, roll_width, weave)


def plate(length, width, ply, weave=Weave.TWILL):
    corners = np.array([[0, 0], [length, 0], [length, width], [0, width]], float)
    return pattern_of(corners, ply, "cloth", 1000.0, weave)


def kit(*patterns):
    return PatternSet(patterns, (), ())


SIX = kit(*(ell(size, ply) for ply, size in enumerate((600, 500, 500, 400, 300, 300), start=1)))


def check(plan, patterns, settings):
    """Every piece lies once, on its cloth, with its gap; the numbers are those of the pieces."""
    placed = [place.pattern for layout in plan.layouts for place in layout.placements]
    parts = settings.parts + settings.mirrored_parts
    assert sorted(placed) == sorted(list(range(len(patterns.patterns))) * parts)
    for layout in plan.layouts:
        pieces = [patterns.patterns[place.pattern] for place in layout.placements]
        edge = settings.edge if layout.name == "roll" else 0.0
        spots = [Spot(p.x, p.y - edge, p.turned, p.mirrored) for p in layout.placements]
        outlines = [piece.cut for piece in pieces]
        assert fits(outlines, spots, layout.width - 2 * edge, settings.gap)
        laid = [placed_outline(*pair) for pair in zip(pieces, layout.placements, strict=True)]
        end = max(line[:, 0].max() for line in laid)
        assert layout.length == pytest.approx(end) if edge else end <= layout.length
        area = sum(piece.area for piece in pieces)
        assert layout.share_used == pytest.approx(area / (layout.length * layout.width))
        assert layout.cut_length == pytest.approx(cut_length(laid))
        assert layout.tape_50 <= layout.tape_20 * 1.01
        starts = [round(line[:, 0].min()) for line in laid]
        assert starts == sorted(starts)
        shapes = [Polygon(line) for line in laid]
        for a, b, low, high in layout.left_over:
            assert not any(shape.intersects(shapely.box(a, low, b, high)) for shape in shapes)


def test_simple_plan_is_sound_and_always_the_same():
    plan = plan_roll(SIX, QUICK)
    check(plan, SIX, QUICK)
    assert plan == plan_roll(SIX, QUICK)
    assert plan.digest == plan_roll.digest(SIX, QUICK)


def test_searched_plan_is_sound_and_never_longer():
    settings = RollSettings(seconds=2.0)
    plan = plan_roll(SIX, settings)
    check(plan, SIX, settings)
    assert plan.rolls[0].length <= plan_roll(SIX, QUICK).rolls[0].length + 1e-9


def test_each_cloth_has_its_roll_in_the_order_of_the_layup():
    patterns = kit(ell(300, 1, "twill"), ell(300, 2, "mat", 600.0), ell(200, 3, "twill"))
    plan = plan_roll(patterns, QUICK)
    check(plan, patterns, QUICK)
    assert [(roll.cloth, roll.width) for roll in plan.rolls] == [("twill", 1000.0), ("mat", 600.0)]
    wider = plan_roll(patterns, RollSettings({"mat": 1270.0}, seconds=0.0))
    assert wider.rolls[1].width == 1270.0


def test_what_is_bought_is_rounded_up_to_what_is_sold():
    plan = plan_roll(kit(plate(432.0, 900.0, 1)), QUICK)
    assert (plan.rolls[0].length, plan.rolls[0].to_buy) == (pytest.approx(432.0), 500.0)
    assert plan.rolls[0].left_over == ()
    by_half = plan_roll(kit(plate(432.0, 900.0, 1)), dataclasses.replace(QUICK, sold_by=500.0))
    assert by_half.rolls[0].to_buy == 500.0
    metre = plan_roll(kit(plate(432.0, 900.0, 1)), dataclasses.replace(QUICK, sold_by=1000.0))
    assert metre.rolls[0].left_over == ((440.0, 1000.0, 0.0, 1000.0),)


def test_the_grain_is_kept_and_only_like_faces_are_turned_over():
    """Two slanted plates that nest only when one is turned over."""
    slanted = np.array([[0, 0], [400, 0], [1000, 900], [600, 900]], float)
    twin = (slanted * np.array([1.0, -1.0]))[::-1] + np.array([0.0, 900.0])
    for weave, over in ((Weave.PLAIN, 1), (Weave.TWILL, 0)):
        patterns = kit(
            pattern_of(slanted, 1, "c", 1000.0, weave), pattern_of(twin, 2, "c", 1000.0, weave)
        )
        plan = plan_roll(patterns, QUICK)
        check(plan, patterns, QUICK)
        assert sum(place.face_down for place in plan.rolls[0].placements) == over
        kept = plan_roll(patterns, dataclasses.replace(QUICK, turn_over=TurnOver.NEVER))
        assert not any(place.face_down for place in kept.rolls[0].placements)
        assert kept.rolls[0].length - plan.rolls[0].length >= 500.0 * over


def test_offcuts_are_used_before_the_roll():
    patterns = kit(plate(300, 200, 1), plate(280, 190, 2), plate(600, 900, 3))
    settings = dataclasses.replace(
        QUICK, offcuts=(Offcut("cloth", 350, 420), Offcut("other", 900, 900))
    )
    plan = plan_roll(patterns, settings)
    check(plan, patterns, settings)
    (used,) = plan.offcuts
    assert (used.title, used.to_buy, used.length) == ("offcut 1 of cloth", 0.0, 350.0)
    assert {place.ply for place in used.placements} == {1, 2}
    assert [place.ply for place in plan.rolls[0].placements] == [3]


def test_a_job_that_fits_its_offcuts_buys_nothing():
    settings = dataclasses.replace(QUICK, offcuts=(Offcut("cloth", 400, 400),))
    plan = plan_roll(kit(plate(300, 200, 1)), settings)
    assert plan.rolls == ()
    assert len(plan.layouts) == 1


def test_nothing_is_cut_from_a_fault():
    fault = Fault("twill", 300.0, 330.0)
    settings = RollSettings(seconds=0.0, faults=(fault,))
    plan = plan_roll(SIX, settings)
    check(plan, SIX, settings)
    (roll,) = plan.rolls
    assert roll.faults == ((300.0, 330.0, 0.0, 1000.0),)
    band = shapely.box(300.0, 0.0, 330.0, 1000.0)
    for place in roll.placements:
        assert not Polygon(placed_outline(SIX.patterns[place.pattern], place)).intersects(band)
    searched = plan_roll(SIX, dataclasses.replace(settings, seconds=1.0))
    check(searched, SIX, settings)
    assert searched.rolls[0].length <= roll.length + 1e-9
    far = plan_roll(SIX, RollSettings(seconds=0.0, faults=(Fault("twill", 9000, 9100),)))
    assert far.rolls[0].faults == ()


def test_several_parts_and_mirrored_ones():
    settings = dataclasses.replace(QUICK, parts=2, mirrored_parts=1)
    plan = plan_roll(SIX, settings)
    check(plan, SIX, settings)
    places = plan.rolls[0].placements
    assert sum(place.mirrored for place in places) == 6
    assert not any(place.face_down for place in places)
    assert {place.name for place in places if place.ply == 1} == {
        "ply 1, part 1",
        "ply 1, part 2",
        "ply 1, mirrored part 1",
    }
    assert "everything else in this job is for one part" in plan.remarks[0]


def test_a_pattern_wider_than_its_roll_is_refused_with_a_split_proposed():
    with pytest.raises(LimitError) as caught:
        plan_roll(kit(plate(300, 990, 1)), QUICK)
    assert caught.value.where == "ply 1 on the roll of cloth"
    assert caught.value.found == "a pattern that is 990 mm wide across the warp"
    assert "have it split: 2 strips of 508 mm along the warp, lapped by 25 mm" in str(caught.value)


def test_a_wide_pattern_is_split_on_wish():
    settings = dataclasses.replace(QUICK, wide=WidePatterns.SPLIT)
    pattern = plate(300, 1500, 1)
    plan = plan_roll(kit(pattern), settings)
    (roll,) = plan.rolls
    strips = [strip_outline(pattern, place.strip) for place in roll.placements]
    assert shapely.union_all([Polygon(s) for s in strips]).area == pytest.approx(pattern.area)
    assert sum(Polygon(s).area for s in strips) == pytest.approx(pattern.area + 25.0 * 300.0)
    assert {place.name for place in roll.placements} == {"ply 1 a", "ply 1 b"}
    assert "is wider than its roll and is cut as 2 strips" in plan.remarks[0]


def test_a_pattern_that_would_fall_to_pieces_is_refused():
    legs = [[0, 0], [100, 0], [100, 1200], [400, 1200], [400, 0], [500, 0], [500, 1300], [0, 1300]]
    tall = pattern_of(np.array(legs, float), 1, "c", 1000.0)
    settings = dataclasses.replace(QUICK, wide=WidePatterns.SPLIT, widths={"c": 200.0})
    with pytest.raises(LimitError, match="loose pieces"):
        plan_roll(kit(tall), settings)


def test_outlines_for_a_drawing():
    plan = plan_roll(SIX, QUICK)
    edge, *pieces = plan.rolls[0].outlines(SIX)
    assert edge[0].max(axis=0).tolist() == [plan.rolls[0].length, 1000.0]
    assert len(pieces) == 6
    assert all(closed for _, closed in (edge, *pieces))


def test_inputs_and_results_are_stored_and_read_back():
    settings = dataclasses.replace(QUICK, offcuts=(Offcut("twill", 700, 700),), parts=2)
    plan = plan_roll(SIX, settings)
    assert values.unpack(RollPlan, values.pack(plan)) == plan


def test_stopped_while_it_searches_the_best_so_far_is_given():
    def stop(share, doing=""):
        if doing.startswith("searching"):
            raise Cancelled

    plan = plan_roll(SIX, RollSettings(seconds=3.0), progress=stop)
    check(plan, SIX, QUICK)
    assert plan.rolls[0].length <= plan_roll(SIX, QUICK).rolls[0].length + 1e-9
    assert "ended before its time" in plan.remarks[0]


def test_stopped_before_there_is_a_plan_nothing_is_given():
    def stop(share, doing=""):
        raise Cancelled

    with pytest.raises(Cancelled):
        plan_roll(SIX, RollSettings(seconds=2.0), progress=stop)


def test_many_pieces():
    draw = np.random.default_rng(3)
    sizes = draw.uniform(80, 300, 400)
    patterns = kit(*(ell(size, ply) for ply, size in enumerate(sizes, 1)))
    plan = plan_roll(patterns, QUICK)
    check(plan, patterns, QUICK)
    assert plan.rolls[0].share_used > 0.6


def test_a_changed_pattern_changes_the_digest():
    moved = dataclasses.replace(SIX.patterns[0], cut=SIX.patterns[0].cut * 1.01)
    assert plan_roll.digest(kit(moved, *SIX.patterns[1:]), QUICK) != plan_roll.digest(SIX, QUICK)
