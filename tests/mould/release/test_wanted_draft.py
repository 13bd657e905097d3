"""Wanted draft by the mould's surface (common practice, no source)."""

from __future__ import annotations

import math

import pytest

from checks.reference import row
from laywright.errors import LimitError
from laywright.mould.release.wanted_draft import (
    LAYER_RIDGE,
    MouldFinish,
    check_wanted_draft,
    wanted_draft,
)


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
    asks = ", which asks for 1.5 deg more for each 0.025 mm (common practice)"
    assert wanted_draft(MouldFinish.LAYERED, 0.08).reason == (
        "layer lines 0.08 mm deep run across the pull and are neither sanded nor sealed" + asks
    )
    assert wanted_draft(MouldFinish.TEXTURED, 0.2).reason == "the texture is 0.2 mm deep" + asks
    assert wanted_draft(MouldFinish.SMOOTH).reason == (
        "a smooth, sealed mould lets go from 1 deg on, and 2 to 3 deg are preferred "
        "(common practice)"
    )


@pytest.mark.parametrize("depth", [-0.1, 0.6, math.nan])
def test_a_depth_that_cannot_be_is_refused(depth):
    with pytest.raises(LimitError) as caught:
        wanted_draft(MouldFinish.TEXTURED, depth)
    assert str(caught.value) == (
        f"depth of the texture: found {depth:g} mm, needed 0 to 0.5 mm; "
        "measure it, or smooth and seal the mould."
    )


def test_the_ends_of_what_can_be_are_taken():
    assert degrees(MouldFinish.TEXTURED, 0.5) == pytest.approx(32.0)
    check_wanted_draft(0.0)
    check_wanted_draft(math.radians(89.9))
    for angle in (-0.01, math.pi / 2, math.nan):
        with pytest.raises(LimitError) as caught:
            check_wanted_draft(angle)
        assert caught.value.where == "wanted draft"
        assert str(caught.value).endswith(" deg, needed 0 to 90 deg; set an angle such as 2 deg.")
