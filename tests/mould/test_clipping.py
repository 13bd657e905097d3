"""Overlaps of triangles agree with a general polygon library."""

from __future__ import annotations

import numpy as np
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from laywright.mould.clipping import overlaps, signed_areas


def upwards(triangles: np.ndarray) -> np.ndarray:
    return np.where((signed_areas(triangles) < 0)[:, None, None], triangles[:, ::-1], triangles)


@settings(max_examples=25, deadline=None)
@given(st.integers(0, 10**6))
def test_areas_and_polygons(seed):
    rng = np.random.default_rng(seed)
    one, other = (upwards(rng.normal(size=(200, 3, 2))) for _ in range(2))
    polygons, areas = overlaps(one, other)
    wanted = shapely.area(shapely.intersection(shapely.polygons(one), shapely.polygons(other)))
    np.testing.assert_allclose(areas, wanted, atol=1e-12)
    some = areas > 1e-9
    np.testing.assert_allclose(shapely.area(shapely.polygons(polygons[some])), areas[some])


def test_a_triangle_with_itself_and_with_a_neighbour():
    one = np.array([[[0.0, 0.0], [3.0, 0.0], [0.0, 4.0]]])
    beside = np.array([[[3.0, 0.0], [3.0, 4.0], [0.0, 4.0]]])
    assert overlaps(one, one)[1].tolist() == [6.0]
    assert overlaps(one, beside)[1].tolist() == [0.0]
