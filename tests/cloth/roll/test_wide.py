"""Patterns that are wider than their roll."""

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from cloth_demo import pattern_of
from laywright.cloth.roll.wide import proposal, strips_for
from laywright.laminate.materials import Weave


def plate(height, weave=Weave.TWILL):
    return pattern_of(
        np.array([[0, 0], [300, 0], [300, height], [0, height]], float), 1, "c", 1000.0, weave
    )


@given(st.floats(1000, 6000), st.floats(200, 990), st.sampled_from(list(Weave)))
def test_strips_cover_the_pattern_with_their_lap_and_fit_the_roll(height, usable, weave):
    strips = strips_for(plate(height, weave), usable)
    lap = 0.0 if weave is Weave.UNIDIRECTIONAL else 25.0
    assert strips[0][0] == pytest.approx(0.0)
    assert strips[-1][1] == pytest.approx(height)
    assert all(high - low <= usable + 1e-6 for low, high in strips)
    for (_, end), (start, _) in pairwise(strips):
        assert end - start == pytest.approx(lap)
    one_less = (len(strips) - 1) * (usable - lap) + lap
    assert one_less < height + 1e-6


def test_the_proposal_in_words():
    assert proposal(plate(1200.0), 980.0) == (
        "2 strips of 612 mm along the warp, lapped by 25 mm, with the seam +0 mm to the left of "
        "the start point seen along the warp"
    )
    assert "laid edge to edge" in proposal(plate(1200.0, Weave.UNIDIRECTIONAL), 980.0)
