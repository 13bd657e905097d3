"""Undercut places are told apart, measured and placed."""

from __future__ import annotations

import math

import numpy as np
import pytest

import shapes
from laywright.mould.release.regions import regions_of
from laywright.mould.release.release import release_of

UP = (0.0, 0.0, 1.0)


def test_area_depth_and_worst_draft_of_a_mushroom():
    report = release_of(shapes.mushroom(256), UP)
    (region,) = report.regions
    assert region.area == pytest.approx(report.undercut_area, rel=1e-9)
    assert region.depth == pytest.approx(40.0)
    assert region.worst_draft == pytest.approx(-math.pi / 2)


def test_places_that_do_not_touch_are_two():
    surface = shapes.box(10, 20, 30)
    tilt = surface.normals @ np.array(UP)
    marked = np.isin(surface.patches, [0, 1]).astype(float)
    regions = regions_of(surface, UP, marked, np.arcsin(tilt))
    assert [region.patch for region in regions] == ["left", "right"]
    assert [region.area for region in regions] == [600.0, 600.0]
    assert {region.point[0] for region in regions} == {0.0, 10.0}
    assert regions_of(surface, UP, 0.0 * marked, np.arcsin(tilt)) == ()


def test_shares_weigh_the_area_and_the_face_that_holds_most_names_the_place():
    surface = shapes.box(10, 20, 30)
    tilt = surface.normals @ np.array(UP)
    draft = np.arcsin(tilt)
    share = np.zeros(len(surface.triangles))
    # two faces that share an edge: the smaller one whole, the larger one by a tenth
    left, front = (surface.patch_names.index(name) for name in ("left", "front"))
    share[surface.patches == left] = 0.1
    share[surface.patches == front] = 1.0
    draft[np.flatnonzero(surface.patches == left)[1]] = -0.5
    (region,) = regions_of(surface, UP, share, draft)
    assert region.area == pytest.approx(0.1 * 600.0 + 300.0)
    assert region.patch == "front"
    assert region.depth == pytest.approx(30.0)
    assert region.worst_draft == -0.5
    worst = np.flatnonzero(surface.patches == left)[1]
    assert region.point == pytest.approx(
        tuple(surface.vertices[surface.triangles[worst]].mean(axis=0))
    )


def test_places_are_in_the_order_of_their_area_and_traces_are_left_out():
    surface = shapes.box(10, 20, 30)
    draft = np.arcsin(surface.normals @ np.array(UP))
    share = np.zeros(len(surface.triangles))
    share[surface.patches == surface.patch_names.index("left")] = 0.5
    share[surface.patches == surface.patch_names.index("right")] = 0.75
    share[surface.patches == surface.patch_names.index("front")] = 1e-6
    assert [region.patch for region in regions_of(surface, UP, share, draft)] == ["right", "left"]
