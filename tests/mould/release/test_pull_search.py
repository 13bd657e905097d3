"""Pulls sought at some facets are proved at all of them."""

from __future__ import annotations

import math

import numpy as np
import pytest

import shapes
from laywright.mould.release import pull_search
from laywright.mould.release.leaving import candidate_pulls
from laywright.mould.release.pull_search import PullSearch

UP = (0.0, 0.0, 1.0)


def last_sets(surface, count):
    search = PullSearch(surface, candidate_pulls(surface, UP), math.radians(2.0))
    rounds = list(search.rounds(count))
    least = min(
        float(surface.areas[~search.leaves(chosen)[0].any(axis=0)].sum())
        for sets in rounds
        for chosen in sets
    )
    return rounds, least


@pytest.mark.parametrize("count", [2, 3])
def test_a_look_at_few_facets_ends_with_sets_as_good_as_a_look_at_all(count, monkeypatch):
    surface = shapes.tray(turns=2, spacing=60.0).flipped()
    rounds, least = last_sets(surface, count)
    assert len(rounds) == 1
    monkeypatch.setattr(pull_search, "_LOOKED_AT", 40)
    _, seen = last_sets(surface, count)
    assert seen == pytest.approx(least, abs=1e-6 * surface.area)


def test_facets_that_stay_in_every_set_are_looked_at_in_a_next_round(monkeypatch):
    # Whatever is not looked at stays: the ball's plug leaves nowhere.
    surface = shapes.sphere(50.0, 8)
    monkeypatch.setattr(pull_search, "_LOOKED_AT", 16)
    search = PullSearch(surface, np.array([UP, (0.0, 0.0, -1.0)]), 0.0)
    rounds = list(search.rounds(2))
    assert 1 < len(rounds) <= 4
    assert not search.leaves(rounds[-1][0])[0].any()
