"""Clamp ears: in pairs, on the bed, outside of the mould, at the ends of upright seams."""

from __future__ import annotations

import pytest

import shapes
from laywright.mould.solid import to_manifold
from laywright.mould.tiles.ears import EarSize, ear_solid, ears_of
from tile_demo import plan_of

SIZE = EarSize(15.0, 8.0, 20.0)


def test_pairs_at_both_ends_of_every_outer_seam():
    box = shapes.box(100.0, 80.0, 30.0)
    body = to_manifold(box, "box")
    ears, bare, area = ears_of(body, plan_of(box, ((50.0,), (), ())), SIZE, 0.2)
    assert len(ears) == 4
    assert bare == ()
    assert area == pytest.approx(80.0 * 30.0)
    for ear in ears:
        solid = ear_solid(ear, 0)
        outside = (solid - body).volume()
        assert outside == pytest.approx(15.0 * (8.0 - 0.1) * 20.0, rel=1e-9)
        assert ear.low[2] == 0.0
        edge = 49.9 if ear.place == (0, 0, 0) else 50.1
        assert edge in (ear.low[0], ear.high[0])
    rows = ears_of(body, plan_of(box, ((), (40.0,), ())), SIZE, 0.2)[0]
    assert {round(ear.low[0]) for ear in rows} == {-15, 100}


def test_seams_inside_and_level_ones_stay_bare():
    box = shapes.box(90.0, 90.0, 60.0)
    plan = plan_of(box, ((30.0, 60.0), (30.0, 60.0), (30.0,)))
    ears, bare, _ = ears_of(to_manifold(box, "box"), plan, SIZE, 0.1)
    assert len(ears) == 2 * 8
    # of 12 upright seams below, 4 lie inside; 12 above; 9 are level
    assert len(bare) == 4 + 12 + 9


def test_a_side_too_low_gets_none():
    box = shapes.box(100.0, 80.0, 6.0)
    ears, bare, _ = ears_of(to_manifold(box, "box"), plan_of(box, ((50.0,), (), ())), SIZE, 0.1)
    assert ears == ()
    assert bare == (((0, 0, 0), (1, 0, 0)),)
