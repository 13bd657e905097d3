"""Feet: on one level, of the right volume, apart, and refused where there is no room."""

from __future__ import annotations

import math

import numpy as np
import pytest

import shapes
from laywright.errors import GeometryError, LimitError
from laywright.mould.body.body import MouldSettings, build_body
from laywright.mould.body.feet import foot_places
from laywright.mould.body.settings import Feet, Inside, MouldBuild
from laywright.surface.face import MouldSide, take_face

SQUARE = np.array([[0, 0], [100, 0], [100, 80], [0, 80]], float)


def face():
    return take_face(shapes.hatch(spacing=30.0), (0.0, 0.0, 1.0), mould_side=MouldSide.INSIDE)


@pytest.mark.parametrize("number", [3, 4])
@pytest.mark.parametrize("build", [MouldBuild.SOLID, MouldBuild.SHELL])
def test_a_mould_stands_on_its_feet(number, build):
    settings = {"inside": Inside(build), "base": 12.0}
    bare = build_body(face(), 1.0, MouldSettings(**settings))
    feet = Feet(number, 15.0, 20.0)
    body = build_body(face(), 1.0, MouldSettings(feet=feet, **settings))
    assert body.solid.is_closed
    assert body.solid.components.max() == 0
    assert body.largest_deviation < 1e-6
    low = body.solid.bounds[0, 2]
    assert low == pytest.approx(bare.solid.bounds[0, 2] - 15.0)
    under = (body.solid.corners[..., 2] < low + 1e-6).all(axis=1)
    assert body.solid.areas[under].sum() == pytest.approx(number * math.pi * 100.0, rel=1e-6)
    if build is MouldBuild.SOLID:
        added = number * math.pi * 100.0 * 15.0
        assert body.volume - bare.volume == pytest.approx(added, rel=1e-6)


def test_four_feet_stand_in_the_corners_and_three_apart():
    places = foot_places(SQUARE, Feet(4, 10.0, 20.0))
    assert sorted(map(tuple, places.tolist())) == [
        (10.0, 10.0),
        (10.0, 70.0),
        (90.0, 10.0),
        (90.0, 70.0),
    ]
    assert len(foot_places(SQUARE, Feet(3, 10.0, 20.0))) == 3


def test_no_room_and_odd_numbers_are_refused():
    with pytest.raises(GeometryError, match="room for 4 feet of 60 mm"):
        foot_places(SQUARE, Feet(4, 10.0, 60.0))
    for wrong in ({"number": 2}, {"number": 3, "height": 0.0}, {"number": 3, "diameter": 1.0}):
        with pytest.raises(LimitError):
            Feet(**wrong)
