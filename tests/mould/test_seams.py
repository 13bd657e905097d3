"""Seam lengths are exact; seams are the cheapest of all."""

from __future__ import annotations

import math
from itertools import combinations

import numpy as np
import pytest
import trimesh
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.mould.seams import place_seams, seam_lengths, seam_weights


@pytest.mark.parametrize("axis", [0, 1, 2])
def test_lengths_are_those_of_sections(axis):
    surface = shapes.torus(40.0, 12.0, 40, 20)
    places = np.linspace(-30.0, 30.0, 13) + 0.01234
    places = places[np.abs(places) < (11.0 if axis == 2 else 50.0)]
    found = seam_lengths(surface.corners, np.ones(len(surface.triangles)), axis, places)
    mesh = trimesh.Trimesh(surface.vertices, surface.triangles, process=False)
    normal = np.eye(3)[axis]
    for place, length in zip(places, found, strict=True):
        pieces = trimesh.intersections.mesh_plane(mesh, normal, normal * place)
        wanted = np.linalg.norm(pieces[:, 1] - pieces[:, 0], axis=1).sum()
        assert length == pytest.approx(wanted, rel=1e-9)


def test_a_plate_is_as_long_everywhere_and_nothing_beyond():
    surface = shapes.graph(lambda x, y: 0.5 * x, (0, 100), (0, 40), (10, 7))
    places = np.array([-1.0, 3.3, 50.0, 99.9, 101.0])
    found = seam_lengths(surface.corners, np.ones(len(surface.triangles)), 0, places)
    np.testing.assert_allclose(found, [0, 40, 40, 40, 0], atol=1e-9)


def test_tight_places_and_the_trim_line_weigh_more():
    surface = shapes.hatch(spacing=8.0)
    weights = seam_weights(surface, surface.vertices[surface.boundary_loops[0]])
    crown, fillet = (weights[surface.patches == i].mean() for i in (0, 1))
    assert crown < 1.3
    assert fillet > 1.0 + 50.0 / 20.0 * 0.7
    middle = np.linalg.norm(surface.centroids[:, :2], axis=1).argmin()
    assert weights[middle] == pytest.approx(1.0 + 50.0 / 600.0, rel=0.2)


@settings(max_examples=60, deadline=None)
@given(
    seed=st.integers(0, 10**6),
    count=st.integers(0, 4),
    longest=st.floats(15.0, 60.0),
    shortest=st.floats(0.0, 20.0),
)
def test_as_cheap_as_the_best_of_all(seed, count, longest, shortest):
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
        if lengths.max() <= longest and lengths.min() >= shortest:
            cost = costs[list(chosen)].sum() + scale * ((lengths / mean - 1.0) ** 2).sum()
            best = min(best, cost)
    found = place_seams(places, costs, extent, count, longest, shortest)
    if found is None:
        assert best == math.inf
    else:
        assert found[1] == pytest.approx(best, rel=1e-9, abs=1e-12)
        assert len(found[0]) == count


def test_no_candidates_and_no_way():
    nothing = np.empty(0)
    assert place_seams(nothing, nothing, (0.0, 10.0), 0, 10.0, 0.0) == ((), 0.0)
    assert place_seams(nothing, nothing, (0.0, 10.0), 0, 9.0, 0.0) is None
    assert place_seams(nothing, nothing, (0.0, 10.0), 1, 9.0, 0.0) is None
