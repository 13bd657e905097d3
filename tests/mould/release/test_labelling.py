"""Divisions by cuts through a graph: against trying every division."""

from __future__ import annotations

from itertools import product

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from laywright.mould.release.labelling import NEVER, labelled


def total(label, cost, pairs, price):
    apart = label[pairs[:, 0]] != label[pairs[:, 1]]
    return cost[label, np.arange(len(label))].sum() + price @ apart


@settings(max_examples=60, deadline=None)
@given(seed=st.integers(0, 10**6))
def test_two_pieces_are_divided_at_the_least_cost_of_all(seed):
    rng = np.random.default_rng(seed)
    size = 9
    pairs = np.array([(i, j) for i in range(size) for j in range(i) if rng.random() < 0.4])
    pairs = np.concatenate([pairs.reshape(-1, 2), [[0, 1]]]).astype(np.int64)
    price, cost = rng.uniform(0, 2, len(pairs)), rng.uniform(0, 2, (2, size))
    cost[0, 3] = cost[1, 5] = NEVER
    label = labelled(cost, pairs, price)
    assert (label[3], label[5]) == (1, 0)
    every = (np.array(chosen) for chosen in product((0, 1), repeat=size))
    best = min(total(chosen, cost, pairs, price) for chosen in every)
    assert total(label, cost, pairs, price) == pytest.approx(best, abs=1e-5)


@settings(max_examples=30, deadline=None)
@given(seed=st.integers(0, 10**6))
def test_three_pieces_come_within_twice_the_least_cost(seed):
    """The bound of expansion moves (Boykov, Veksler and Zabih, 2001, theorem 6.1)."""
    rng = np.random.default_rng(seed)
    size = 6
    pairs = np.array([(i, i - 1) for i in range(1, size)] + [(0, 3), (1, 5)])
    price, cost = rng.uniform(0, 2, len(pairs)), rng.uniform(0, 2, (3, size))
    label = labelled(cost, pairs, price)
    every = (np.array(chosen) for chosen in product(range(3), repeat=size))
    best = min(total(chosen, cost, pairs, price) for chosen in every)
    assert total(label, cost, pairs, price) <= 2.0 * best + 1e-6


def test_a_cheap_edge_draws_the_line_to_it():
    pairs = np.stack([np.arange(9), np.arange(1, 10)], axis=1)
    cost = np.zeros((2, 10))
    cost[1, 0] = cost[0, 9] = NEVER
    price = np.ones(9)
    price[6] = 0.1
    np.testing.assert_array_equal(labelled(cost, pairs, price), [0] * 7 + [1] * 3)
