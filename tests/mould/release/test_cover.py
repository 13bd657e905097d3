"""The fewest pulls: against trying every set."""

from __future__ import annotations

from itertools import combinations

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from laywright.mould.release.cover import covers


@settings(max_examples=40, deadline=None)
@given(seed=st.integers(0, 10**6), count=st.integers(1, 3))
def test_up_to_three_pulls_leave_as_little_as_any_set(seed, count):
    rng = np.random.default_rng(seed)
    leaves = rng.random((7, 30)) < 0.4
    good = leaves & (rng.random((7, 30)) < 0.5)
    areas = rng.uniform(0.5, 2.0, 30)
    least = min(areas @ ~leaves[list(s)].any(axis=0) for s in combinations(range(7), count))
    for chosen in covers(leaves, good, areas, count):
        assert len(set(chosen)) == count
        assert areas @ ~leaves[list(chosen)].any(axis=0) <= least + 2e-6 * areas.sum()


def test_four_pulls_are_found_where_four_are_needed():
    leaves = np.kron(np.eye(4, dtype=bool), np.ones((1, 5), dtype=bool))
    leaves = np.concatenate([leaves, leaves & False])
    found = covers(leaves, leaves, np.ones(20), 4)
    assert found[0] == (0, 1, 2, 3)


def test_among_equals_the_wanted_draft_decides_then_the_list():
    leaves = np.ones((4, 10), dtype=bool)
    good = leaves.copy()
    good[:2] = False
    found = covers(leaves, good, np.ones(10), 1)
    assert found[0] == (2,)
    assert (0,) in found
