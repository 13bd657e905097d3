"""Wanted draft by the mould's surface (common practice, no source)."""

from __future__ import annotations

import math

import pytest

from checks.reference import row
from laywright.errors import LimitError
from laywright.mould.wanted_draft import LAYER_RIDGE, MouldFinish, wanted_draft


def degrees(finish, depth=None):
    return math.degrees(wanted_draft(finish, depth).angle)


def test_smooth_is_within_the_usual_two_to_three_degrees():
    assert "2-3 deg preferred" in row("UND-06")["expected"][0]["value"]
    assert degrees(MouldFinish.SMOOTH) == pytest.approx(2.0)
    assert degrees(MouldFinish.SMOOTH, 0.3) == pytest.approx(2.0)


@pytest.mark.parametrize("finish", [MouldFinish.LAYERED, MouldFinish.TEXTURED])
def test_every_ridge_asks_for_more_in_proportion_to_its_depth(finish):
    assert degrees(finish) == pytest.approx(degrees(finish, LAYER_RIDGE)) == pytest.approx(5.0)
    assert degrees(finish, 0.0) == pytest.approx(2.0)
    assert degrees(finish, 0.025) - degrees(finish, 0.0) == pytest.approx(1.5)
    assert degrees(finish, 0.1) == pytest.approx(8.0)


def test_the_reason_is_said_in_words():
    assert "layer lines 0.08 mm deep run across the pull" in (
        wanted_draft(MouldFinish.LAYERED, 0.08).reason
    )
    assert "smooth, sealed mould" in wanted_draft(MouldFinish.SMOOTH).reason


@pytest.mark.parametrize("depth", [-0.1, 0.6, math.nan])
def test_a_depth_that_cannot_be_is_refused(depth):
    with pytest.raises(LimitError, match="depth of the texture"):
        wanted_draft(MouldFinish.TEXTURED, depth)
