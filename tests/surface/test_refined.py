"""Smaller triangles where a distance lies between bounds, and the same surface."""

import numpy as np
import pytest

import shapes
from laywright.surface.along import Along
from laywright.surface.refined import refined_between


def test_edges_are_short_along_a_ring_and_long_elsewhere():
    plate = shapes.graph(lambda x, y: 0.0 * x, (-100, 100), (-60, 60), (2, 2))

    def far(surface):
        return Along(surface).from_point((55.0, 13.0, 0.0))

    found = refined_between(plate, far, 20.0, 26.0, 2.0)
    assert found.area == pytest.approx(plate.area, rel=1e-12)
    assert found.euler_characteristic == 1
    ends = found.vertices[found.edges.ends]
    length = np.linalg.norm(ends[:, 1] - ends[:, 0], axis=1)
    away = np.hypot(*(ends[..., :2] - [55.0, 13.0]).transpose(2, 0, 1))
    there = ((away >= 20.0) & (away <= 26.0)).all(axis=1)
    assert there.sum() > 100
    assert length[there].max() <= 2.0
    assert length.max() > 20.0
