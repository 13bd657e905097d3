"""Seams are the cheapest of all that keep the limits."""

from __future__ import annotations

import math
from itertools import combinations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from laywright.mould.tiles.seams import place_seams


@settings(max_examples=60, deadline=None)
@given(
    seed=st.integers(0, 10**6),
    count=st.integers(0, 4),
    longest=st.floats(15.0, 60.0),
    shortest=st.floats(0.0, 20.0),
    pins=st.sets(st.integers(0, 13), max_size=2),
    reach=st.sampled_from([0.0, 3.0]),
)
def test_as_cheap_as_the_best_of_all(seed, count, longest, shortest, pins, reach):
    rng = np.random.default_rng(seed)
    places = np.sort(rng.uniform(0.0, 100.0, 14))
    costs = rng.uniform(0.0, 5.0, 14)
    extent = (-3.0, 104.0)
    mean = 107.0 / (count + 1)
    scale = 0.05 * costs.mean()
    best = math.inf
    for chosen in combinations(range(14), count):
        edges = np.array([extent[0], *places[list(chosen)], extent[1]])
        lengths = np.diff(edges)
        outer = lengths + np.array([reach] * count + [0.0])
        if pins <= set(chosen) and outer.max() <= longest and lengths.min() >= shortest:
            cost = costs[list(chosen)].sum() + scale * ((lengths / mean - 1.0) ** 2).sum()
            best = min(best, cost)
    pinned = tuple(float(places[i]) for i in pins)
    found = place_seams(places, costs, extent, count, longest, shortest, pinned=pinned, reach=reach)
    if found is None:
        assert best == math.inf
    else:
        assert found[1] == pytest.approx(best, rel=1e-9, abs=1e-12)
        assert len(found[0]) == count
        assert set(pinned) <= set(found[0])


def test_no_candidates_and_no_way():
    nothing = np.empty(0)
    assert place_seams(nothing, nothing, (0.0, 10.0), 0, 10.0, 0.0) == ((), 0.0)
    assert place_seams(nothing, nothing, (0.0, 10.0), 0, 9.0, 0.0) is None
    assert place_seams(nothing, nothing, (0.0, 10.0), 1, 9.0, 0.0) is None
