"""Facets along the pull: hidden where something hangs over them, exactly by length."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from laywright.mould.release.visibility import hidden_share
from laywright.surface.triangles import Surface


@settings(max_examples=40, deadline=None)
@given(st.floats(-2.0, 12.0), st.floats(0.1, 6.0), st.floats(-2.0, 12.0), st.floats(0.1, 6.0))
def test_a_wall_under_two_shelves(x1, w1, x2, w2):
    """A wall 10 long and 4 high that faces +y; shelves stick out of its plane above it."""
    points = [[10, 0, 0], [0, 0, 0], [0, 0, 4], [10, 0, 4]]
    triangles = [[0, 1, 2], [0, 2, 3]]
    for x, w, z in ((x1, w1, 5.0), (x2, w2, 6.0)):
        first = len(points)
        points += [[x, 0, z], [x + w, 0, z], [x + w, 3, z], [x, 3, z]]
        triangles += [[first, first + 2, first + 1], [first, first + 3, first + 2]]
    surface = Surface.single(np.array(points, float), np.array(triangles))
    share = hidden_share(surface, (0.0, 0.0, 1.0))
    covered = np.zeros(200001, dtype=bool)
    place = np.linspace(0.0, 10.0, len(covered))
    for x, w in ((x1, w1), (x2, w2)):
        covered |= (place >= x) & (place <= x + w)
    assert float(surface.areas[:2] @ share[:2]) == pytest.approx(40.0 * covered.mean(), abs=1e-3)


def test_shelves_behind_or_below_hide_nothing():
    wall = np.array([[10, 0, 0], [0, 0, 0], [0, 0, 4], [10, 0, 4]], float)
    for shelf_y, shelf_z in ((-3.0, 5.0), (0.0, -1.0)):
        shelf = np.array([[0, 0, 0], [10, 0, 0], [10, 3, 0], [0, 3, 0]], float)
        shelf += np.array([0.0, shelf_y, shelf_z])
        surface = Surface.single(
            np.concatenate([wall, shelf]),
            np.array([[0, 1, 2], [0, 2, 3], [4, 5, 6], [4, 6, 7]]),
        )
        assert hidden_share(surface, (0.0, 0.0, 1.0))[:2].tolist() == [0.0, 0.0]
