"""The quick look agrees with the exact one, but for facets that a rim crosses."""

from __future__ import annotations

import numpy as np
import pytest

import shapes
from laywright.mould.release.sampled import sampled_hidden
from laywright.mould.release.visibility import hidden_share


@pytest.mark.parametrize("surface", [shapes.torus(40, 12, 40, 21), shapes.tray(turns=5)])
@pytest.mark.parametrize("pull", [(0.0, 0.0, 1.0), (1.0, 0.0, 0.0), (0.6, 0.0, 0.8)])
def test_it_agrees_with_the_exact_shares(surface, pull):
    exact, quick = hidden_share(surface, pull), sampled_hidden(surface, pull)
    facing = surface.normals @ np.array(pull) > 1e-5
    whole = facing & ((exact < 1e-9) | (exact > 1.0 - 1e-9))
    assert (np.abs(quick - exact)[whole] < 1e-9).mean() > 0.98
    assert surface.areas[facing] @ quick[facing] == pytest.approx(
        surface.areas[facing] @ exact[facing], abs=0.02 * surface.area
    )


def test_a_graph_hides_nothing():
    surface = shapes.graph(lambda x, y: np.sin(x) * np.cos(y), (-3, 3), (-3, 3), (12, 12))
    assert sampled_hidden(surface, (0.0, 0.0, 1.0)).max() == 0.0


def test_facets_that_are_not_asked_for_are_not_looked_at():
    surface = shapes.mushroom(48)
    asked = np.arange(0, len(surface.triangles), 3)
    whole = sampled_hidden(surface, (0.0, 0.0, 1.0))
    some = sampled_hidden(surface, (0.0, 0.0, 1.0), asked)
    np.testing.assert_array_equal(some[asked], whole[asked])
    assert whole[asked].max() > 0.0
    assert np.delete(some, asked).max() == 0.0
