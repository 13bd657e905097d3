"""Cuts along one axis: pins kept, bars and rims free, None where nothing keeps the limits."""

from __future__ import annotations

import numpy as np
import pytest

import shapes
from laywright.errors import LimitError
from laywright.mould.tiles.cut_ground import CutLimits, ground_of
from laywright.mould.tiles.cut_line import SLIVER, line_of
from laywright.mould.tiles.wishes import CutWishes

UP = (0.0, 0.0, 1.0)
FREE = CutWishes()


def ground(x=400.0, least=30.0, **more):
    solid = shapes.box(x, 100.0, 20.0)
    working = shapes.graph(lambda x, y: 0.0 * x, (20, x - 20), (20, 80), (90, 20))
    trim = working.vertices[working.boundary_loops[0]]
    return ground_of(solid, working, trim, UP, CutLimits((200.0,) * 3, least, **more))


def test_nearly_even_cuts_on_an_even_plate():
    cuts, cost = line_of(ground(600.0), FREE, 0.0, 0, 210.0)
    np.testing.assert_allclose(cuts, [200.0, 400.0], atol=10.0)
    assert cost > 0.0
    assert line_of(ground(), FREE, 0.0, 0, 401.0)[0] == ()


def test_avoided_stretches_rims_and_pins():
    cuts, _ = line_of(ground(), FREE, 0.0, 0, 230.0, avoided=((185.0, 215.0),))
    assert cuts == pytest.approx((185.0,)) or cuts == pytest.approx((215.0,))
    near_rim, _ = line_of(ground(400.0, 15.0), FREE, 0.0, 0, 385.0, avoided=((25.0, 375.0),))
    assert not 20.0 < near_rim[0] < 20.0 + SLIVER
    pinned, _ = line_of(ground(), CutWishes(pinned_x=(150.0,)), 0.0, 0, 210.0)
    assert 150.0 in pinned
    with pytest.raises(LimitError) as caught:
        line_of(ground(), CutWishes(pinned_x=(150.0,), kept_whole=((150, 50, 10, 5),)), 0.0, 0, 210)
    assert caught.value.found == "150 mm, through what no cut may pass"
    assert caught.value.needed == "a place outside 142.5 to 157.5 mm"


def test_nothing_where_no_cut_keeps_the_limits():
    assert line_of(ground(40.0 + 1.0, 30.0), FREE, 0.0, 0, 35.0) is None
    assert line_of(ground(tongue=210.0), FREE, 0.0, 0, 200.0) is None
