"""Chapter 5, undercut and visibility: closed forms against the release check."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely

import shapes
from checks.reference import agree
from laywright.mould.release.release import UNDERCUT, release_of
from laywright.mould.release.smooth import share_below
from laywright.mould.solid import block, from_manifold, joined

UP = (0.0, 0.0, 1.0)
ALONG = (1.0, 0.0, 0.0)
WHOLE = 0.75 - 12.0 / (2.0 * math.pi * 40.0)


def unit(vector):
    vector = np.asarray(vector, dtype=float)
    return tuple(vector / np.linalg.norm(vector))


def test_ring_on_edge():
    surface = shapes.torus(40.0, 12.0, 120, 60)
    report = release_of(surface, ALONG)
    area = surface.area
    agree(
        "DRF-06",
        {
            "front_facing_fraction": float(surface.areas[~report.facing_away].sum() / area),
            "front_facing_hidden_fraction_of_total": float(
                surface.areas @ report.hidden_share / area
            ),
            "undercut_total_fraction": report.undercut_area / area,
        },
    )


@pytest.mark.parametrize(
    ("around", "section"), [(120, 42), (101, 49), (100, 50), (90, 55), (104, 48)]
)
def test_ring_on_edge_at_ten_thousand_facets_whatever_the_mesh(around, section):
    surface = shapes.torus(40.0, 12.0, around, section)
    turn = math.radians(7.3)
    for pull in (ALONG, (math.cos(turn), math.sin(turn), 0.0)):
        found = release_of(surface, pull).undercut_area
        assert found == pytest.approx(WHOLE * surface.area, rel=0.005)


def by_points(surface, holds):
    """Share of every facet that holds the part back, by 300 points of each."""
    u, v = ((a.ravel() + 1.0 / 3.0) / 24.0 for a in np.meshgrid(np.arange(24), np.arange(24)))
    u, v = u[u + v < 1.0], v[u + v < 1.0]
    a, b, c = np.moveaxis(surface.corners, 1, 0)
    share = np.zeros(len(a))
    for s, t in zip(u, v, strict=True):
        share += holds(*(a + s * (b - a) + t * (c - a)).T)
    return share / len(u)


@pytest.mark.parametrize(("around", "section"), [(120, 42), (101, 49), (100, 50), (90, 55)])
@pytest.mark.parametrize("turn", [0.0, 7.3])
def test_ring_on_edge_holds_back_the_right_places(around, section, turn):
    """Of a ring on edge only the outer half of the tube leaves, on the side of the pull."""
    surface = shapes.torus(40.0, 12.0, around, section)
    x, y = math.cos(math.radians(turn)), math.sin(math.radians(turn))
    true = by_points(surface, lambda a, b, _: (a * x + b * y < 0.0) | (np.hypot(a, b) < 40.0))
    found = release_of(surface, (x, y, 0.0)).undercut_share
    assert surface.areas @ np.abs(found - true) < 0.0015 * surface.area


@pytest.mark.parametrize(
    "surface", [shapes.torus(40.0, 12.0, 101, 49), shapes.sphere(50.0, 50)], ids=["ring", "sphere"]
)
def test_lying_ring_and_sphere_hold_back_their_lower_half(surface):
    turn = np.linalg.qr(np.array([[0.2, 1.0, 0.3], [0.7, 0.1, -0.4], [0.1, 0.2, 0.9]]))[0]
    turn *= np.linalg.det(turn)
    up = tuple(turn[:, 2])
    moved = surface.moved(surface.vertices @ turn.T)
    found = release_of(moved, up).undercut_share
    true = by_points(surface, lambda _x, _y, z: z < 0.0)
    assert surface.areas @ np.abs(found - true) < 0.001 * surface.area


def test_hook():
    """A lip 20 by 20 mm on a post, 34 mm above a floor; the mesh follows none of the shadow."""
    solid = joined(
        [
            block(np.array([0.0, 0.0, 0.0]), np.array([60.0, 40.0, 4.0]), 0),
            block(np.array([0.0, 10.0, 3.0]), np.array([10.0, 30.0, 38.0]), 0),
            block(np.array([0.0, 10.0, 38.0]), np.array([30.0, 30.0, 44.0]), 0),
        ]
    )
    surface = from_manifold(solid.refine(15), ("hook",))
    assert 8_000 < len(surface.triangles) < 12_000
    report = release_of(surface, UP)
    middle, normal, area = surface.centroids, surface.normals, surface.areas
    under = shapely.area(
        shapely.intersection(
            shapely.polygons(surface.corners[:, :, :2]), shapely.box(10.0, 10.0, 30.0, 30.0)
        )
    )
    wall = (np.abs(normal[:, 0] - 1.0) < 1e-9) & (np.abs(middle[:, 0] - 10.0) < 1e-9)
    true = np.where(normal[:, 2] < -0.5, area, np.where(wall, area, 0.0))
    true = np.where((normal[:, 2] > 0.5) & (middle[:, 2] < 5.0), under, true)
    assert true.sum() == pytest.approx(60 * 40 + 2 * 20 * 20 + 34 * 20, rel=1e-9)
    assert np.abs(report.undercut_share * area - true).sum() < 1e-6 * surface.area


def test_ring_on_edge_converges():
    errors = []
    for around in (48, 96, 192):
        surface = shapes.torus(40.0, 12.0, around, around // 2 + 1)
        pull = (math.cos(0.2), math.sin(0.2), 0.0)
        found = release_of(surface, pull).undercut_area / surface.area
        errors.append(abs(found - WHOLE))
    assert errors[2] < 0.3 * errors[0]
    assert errors[2] < 0.001


def test_mushroom():
    surface = shapes.mushroom(512)
    report = release_of(surface, UP)
    middle, areas, normals = surface.centroids, surface.areas, surface.normals
    radius = np.hypot(middle[:, 0], middle[:, 1])
    under = (normals[:, 2] < -0.5) & (middle[:, 2] > 1.0)
    upright = np.abs(normals[:, 2]) < 1e-6
    stem, rim = upright & (radius < 20.0), upright & (radius > 20.0)
    agree(
        "UND-01",
        {
            "underside_annulus": float(areas[under & report.facing_away].sum()),
            "hidden_stem_wall": float(areas[stem] @ report.hidden_share[stem]),
            "cap_rim_zero_draft": float(
                areas[rim & (np.abs(report.draft) < 1e-9)] @ (1.0 - report.undercut_share[rim])
            ),
            "volume": surface.volume,
        },
    )
    classes = dict(report.area_by_class)
    base = areas[(normals[:, 2] < -0.5) & (middle[:, 2] < 1.0)].sum()
    assert classes[UNDERCUT] - base == pytest.approx(2375.044 + 3015.929, rel=3e-4)


def test_cylinder_seen_askew():
    surface = shapes.revolved(np.array([[0, 0], [10, 0], [10, 50], [0, 50]], float), 720)

    def seen(direction):
        return float(surface.areas @ np.maximum(surface.normals @ np.array(direction), 0.0))

    turn, count = math.radians(30.0), 4000
    height = 1.0 - 2.0 * (np.arange(count) + 0.5) / count
    angle = np.arange(count) * math.pi * (3.0 - math.sqrt(5.0))
    wide = np.sqrt(1.0 - height**2)
    directions = np.stack([wide * np.cos(angle), wide * np.sin(angle), height], axis=1)
    mean = float((np.maximum(directions @ surface.normals.T, 0.0) @ surface.areas).mean())
    agree(
        "UND-03",
        {
            "projected_area": seen((math.sin(turn), 0.0, math.cos(turn))),
            "mean_over_all_directions": mean,
        },
    )


def test_sphere_from_a_point_and_from_infinity():
    surface = shapes.sphere(50.0, 60)
    eye = np.array([0.0, 0.0, 200.0])
    height = np.einsum("ij,ij->i", surface.vertices, eye - surface.vertices)
    hidden = share_below(height[surface.triangles], 0.0)
    pull = unit((0.2, 0.7, 0.5))
    agree(
        "UND-05",
        {
            "visible_fraction_point": float(surface.areas @ (1.0 - hidden) / surface.area),
            "visible_fraction_infinity": 1.0
            - release_of(surface, pull).undercut_area / surface.area,
        },
    )
