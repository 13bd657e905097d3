"""Corners are grouped around their points, not through them."""

from __future__ import annotations

import numpy as np

import shapes
from laywright.surface.corner_groups import corner_groups
from laywright.surface.triangles import Surface


def test_around_a_closed_surface_there_is_one_group_for_each_point():
    torus = shapes.torus(40.0, 12.0, 9, 6)
    group = corner_groups(torus, np.ones(len(torus.edges.ends), dtype=bool))
    assert group.max() + 1 == len(torus.vertices)
    for number in range(group.max() + 1):
        assert len(np.unique(torus.triangles.ravel()[group == number])) == 1


def test_fans_that_meet_in_a_point_only_stay_apart():
    points = np.array([[0, 0, 0], [1, 0, 0], [0, 1, 0], [-1, 0, 0], [0, -1, 0]], float)
    bow = Surface.single(points, np.array([[0, 1, 2], [0, 3, 4]]))
    group = corner_groups(bow, np.ones(len(bow.edges.ends), dtype=bool))
    assert len(np.unique(group)) == 6


def test_across_edges_that_do_not_join_corners_stay_apart():
    box = shapes.box(1.0, 2.0, 3.0)
    group = corner_groups(box, np.zeros(len(box.edges.ends), dtype=bool))
    assert len(np.unique(group)) == 36
