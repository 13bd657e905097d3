"""Seam lengths are exact; tight places and edges cost more; fine meshes cost as coarse ones."""

from __future__ import annotations

import numpy as np
import pytest
import trimesh

import shapes
from laywright.mould.tiles.seam_cost import SeamCost, seam_lengths, seam_weights


@pytest.mark.parametrize("axis", [0, 1, 2])
def test_lengths_are_those_of_sections(axis):
    surface = shapes.torus(40.0, 12.0, 40, 20)
    places = np.linspace(-30.0, 30.0, 13) + 0.01234
    places = places[np.abs(places) < (11.0 if axis == 2 else 50.0)]
    found = seam_lengths(
        surface.corners[:, :, axis], surface.corners, np.ones(len(surface.triangles)), places
    )
    mesh = trimesh.Trimesh(surface.vertices, surface.triangles, process=False)
    normal = np.eye(3)[axis]
    for place, length in zip(places, found, strict=True):
        pieces = trimesh.intersections.mesh_plane(mesh, normal, normal * place)
        wanted = np.linalg.norm(pieces[:, 1] - pieces[:, 0], axis=1).sum()
        assert length == pytest.approx(wanted, rel=1e-9)


def test_a_plate_is_as_long_everywhere_and_nothing_beyond():
    surface = shapes.graph(lambda x, y: 0.5 * x, (0, 100), (0, 40), (10, 7))
    places = np.array([-1.0, 3.3, 50.0, 99.9, 101.0])
    found = seam_lengths(
        surface.corners[:, :, 0], surface.corners, np.ones(len(surface.triangles)), places
    )
    np.testing.assert_allclose(found, [0, 40, 40, 40, 0], atol=1e-9)


def test_tight_places_and_the_trim_line_weigh_more():
    surface = shapes.hatch(spacing=8.0)
    weights = seam_weights(surface, surface.vertices[surface.boundary_loops[0]])
    crown, fillet = (weights[surface.patches == i].mean() for i in (0, 1))
    assert crown < 1.3
    assert fillet > 1.0 + 50.0 / 20.0 * 0.7
    middle = np.linalg.norm(surface.centroids[:, :2], axis=1).argmin()
    assert weights[middle] == pytest.approx(1.0 + 50.0 / 600.0, rel=0.2)


def test_curvature_of_a_sphere():
    surface = shapes.sphere(40.0, 60)
    far = np.array([[1e4, 0.0, 0.0]])
    bend = (seam_weights(surface, far) - 1.0) / 50.0
    away = np.abs(surface.centroids[:, 2]) < 30.0
    np.testing.assert_allclose(bend[away], 1.0 / 40.0, rtol=0.25)


def test_an_edge_costs_three_times_as_much_and_fades():
    surface = shapes.graph(lambda x, y: 0.0 * x, (0, 100), (0, 40), (50, 20))
    edge = np.stack([np.zeros(41), np.arange(41.0), np.zeros(41)], axis=1)
    weights = seam_weights(surface, edge)
    near = surface.centroids[:, 0]
    np.testing.assert_allclose(weights, 1.0 + 2.0 * np.exp(-near / 10.0), rtol=0.12)


@pytest.mark.parametrize("turn", [0.0, 0.4])
def test_triangles_taken_as_points_cost_what_cut_ones_cost(turn):
    axis = np.array([np.cos(turn), np.sin(turn), 0.0])
    edge = np.array([[0.0, 20.0, 0.0]])
    costs = []
    for fine in (1, 8):
        surface = shapes.graph(
            lambda x, y: 4.0 * np.sin(x / 15.0), (0, 100), (0, 40), (30 * fine, 12 * fine)
        )
        cost = SeamCost.of(surface, edge)
        assert (len(cost.points) > 0) == (fine > 1)
        costs.append(cost.along(axis, np.arange(15.0, 85.0)))
    np.testing.assert_allclose(costs[1], costs[0], rtol=0.03)
