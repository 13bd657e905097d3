"""Heights over a grid are the surface's own."""

from __future__ import annotations

import numpy as np

import shapes
from laywright.mould.body.heights import grid_heights


def test_a_plane_gives_its_heights_and_nothing_beyond():
    surface = shapes.graph(lambda x, y: 2.0 * x - 0.5 * y, (0, 10), (0, 6), (3, 5))
    found = grid_heights(surface, np.array([-1.0, -1.0]), 0.5, (26, 20))
    x, y = (-1.0 + 0.5 * np.arange(n) for n in (26, 20))
    wanted = 2.0 * x[:, None] - 0.5 * y[None, :]
    inside = ((x >= 0) & (x <= 10))[:, None] & ((y >= 0) & (y <= 6))[None, :]
    np.testing.assert_array_equal(np.isnan(found), ~inside)
    np.testing.assert_allclose(found[inside], wanted[inside], atol=1e-9)
