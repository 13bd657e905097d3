"""Allowances: shrinkage scales by 1 / (1 - s), every item with its size and place."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import LimitError
from laywright.mould.body.compensation import (
    Allowance,
    Allowances,
    growth_scale,
    print_scale,
    scale_items,
    spring_in_items,
    surface_items,
)
from laywright.surface.bends import Bend

SHARE = st.floats(-0.05, 0.05)


@given(st.tuples(SHARE, SHARE, SHARE))
def test_what_shrinks_comes_out_right(shrinkage):
    for scale, share in zip(print_scale(shrinkage), shrinkage, strict=True):
        assert 300.0 * scale * (1.0 - share) == pytest.approx(300.0, rel=1e-12)


@given(st.floats(0.0, 5e-4), st.floats(-50.0, 100.0))
def test_what_grows_comes_out_right(expansion, warming):
    printed = 300.0 * growth_scale(expansion, warming)
    assert printed * (1.0 + expansion * warming) == pytest.approx(300.0, rel=1e-12)


def test_items_name_size_and_place():
    nothing = Allowances()
    items = scale_items((0.003, 0.0, 0.004), nothing)
    assert [item.name for item in items] == ["print shrinkage along x", "print shrinkage along z"]
    assert items[0].size == pytest.approx(0.300903, rel=1e-5)
    (laminate,) = surface_items(1.2, 1.2, nothing)
    assert (laminate.size, laminate.unit) == (1.2, "mm")
    (other_side,) = surface_items(1.2, 0.0, nothing)
    assert other_side.size == 0.0
    assert other_side.where.startswith("not applied: the mould touches the CAD face")


def test_every_item_can_be_switched_off_and_says_so():
    off = Allowances(0.2, 68e-6, 20.0, 0.01, tuple(Allowance))
    bend = Bend("Fillet", 1.5, 8.0, 300.0, (0.0, 0.0, 0.0))
    items = (
        *surface_items(1.2, 1.2, off),
        *scale_items((0.003,) * 3, off),
        *spring_in_items((bend,), off),
    )
    assert len(items) == 7
    assert [item.size for item in items] == [0.0] * 7
    assert {item.where for item in items} == {"not applied: switched off"}
    on = Allowances(0.2, 68e-6, 20.0)
    assert [item.size for item in surface_items(1.2, 1.2, on)] == [1.2, 0.2]
    assert scale_items((0.0,) * 3, on)[0].size == pytest.approx(-0.13582, rel=1e-4)


def test_a_bend_is_told_and_not_applied():
    bend = Bend("Fillet", math.radians(90.0), 8.0, 300.0, (1.0, -0.04, 2.0))
    (item,) = spring_in_items((bend,), Allowances(closing=0.7 / 90.0))
    assert (item.name, item.unit) == ("spring-in of bend 1", "deg")
    assert item.size == pytest.approx(0.7)
    assert item.where.startswith("not applied: Fillet turns by 90 deg, radius 8 mm, over 300 mm")
    assert "near (1, 0, 2) mm" in item.where
    assert spring_in_items((bend,), Allowances()) == ()


def test_a_share_out_of_reason_is_refused_by_axis():
    with pytest.raises(LimitError) as caught:
        print_scale((0.0, 0.2, 0.0))
    assert caught.value.where == "print shrinkage along y"
    assert caught.value.found == "20 %"
    with pytest.raises(LimitError):
        print_scale((float("nan"), 0.0, 0.0))
    for wrong in ({"coats": -1.0}, {"expansion": 1.0}, {"warming": float("nan")}):
        with pytest.raises(LimitError):
            Allowances(**wrong)
