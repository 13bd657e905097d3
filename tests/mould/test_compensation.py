"""Allowances: shrinkage scales by 1 / (1 - s)."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import LimitError
from laywright.mould.compensation import print_scale, shrinkage_items, thickness_item

SHARE = st.floats(-0.05, 0.05)


@given(st.tuples(SHARE, SHARE, SHARE))
def test_what_shrinks_comes_out_right(shrinkage):
    for scale, share in zip(print_scale(shrinkage), shrinkage, strict=True):
        assert 300.0 * scale * (1.0 - share) == pytest.approx(300.0, rel=1e-12)


def test_items_name_size_and_place():
    items = shrinkage_items((0.003, 0.0, 0.004))
    assert [item.name for item in items] == ["print shrinkage along x", "print shrinkage along z"]
    assert items[0].size == pytest.approx(0.300903, rel=1e-5)
    assert (thickness_item(1.2).size, thickness_item(1.2).unit) == (1.2, "mm")
    assert thickness_item(0.0).where.startswith("not applied")


def test_a_share_out_of_reason_is_refused_by_axis():
    with pytest.raises(LimitError) as caught:
        print_scale((0.0, 0.2, 0.0))
    assert caught.value.where == "print shrinkage along y"
    assert caught.value.found == "20 %"
    with pytest.raises(LimitError):
        print_scale((float("nan"), 0.0, 0.0))
