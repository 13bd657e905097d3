"""Overlaps of triangles agree with a general polygon library."""

from __future__ import annotations

import numpy as np
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from laywright.mould.clipping import apart, overlaps, signed_areas, union_area


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


@settings(max_examples=25, deadline=None)
@given(st.integers(0, 10**6), st.sampled_from([2, 3]), st.floats(0.0, 0.5))
def test_apart_by_more_than_a_distance(seed, corners, by):
    rng = np.random.default_rng(seed)
    one = rng.normal(size=(200, corners, 2))
    other = upwards(rng.normal(size=(200, 3, 2)))
    first = shapely.linestrings(one) if corners == 2 else shapely.polygons(one)
    gap = shapely.distance(first, shapely.polygons(other))
    found = apart(one, other, by)
    assert not found[gap < by - 1e-12].any()
    np.testing.assert_array_equal(apart(one, other, 0.0), gap > 0.0)
    if corners == 3:
        area = shapely.area(shapely.intersection(first, shapely.polygons(other)))
        assert (area[apart(one, other, -by)] <= 4.0 * by * shapely.length(first).max()).all()


def test_neighbours_are_apart_but_for_rounding():
    one = np.array([[[0.0, 0.0], [3.0, 0.0], [0.0, 4.0]]])
    beside = np.array([[[3.0, 0.0], [3.0, 4.0], [0.0, 4.0]]])
    assert not apart(one, beside, 0.0)[0]
    assert apart(one, beside, -1e-9)[0]


def test_a_triangle_with_itself_and_with_a_neighbour():
    one = np.array([[[0.0, 0.0], [3.0, 0.0], [0.0, 4.0]]])
    beside = np.array([[[3.0, 0.0], [3.0, 4.0], [0.0, 4.0]]])
    assert overlaps(one, one)[1].tolist() == [6.0]
    assert overlaps(one, beside)[1].tolist() == [0.0]


@settings(max_examples=25, deadline=None)
@given(st.integers(0, 10**6), st.integers(1, 150), st.booleans())
def test_union_of_many(seed, count, whole_numbers):
    rng = np.random.default_rng(seed)
    triangles = rng.normal(size=(count, 3, 2)) * 3.0
    if whole_numbers:
        triangles = np.round(triangles)
    triangles = upwards(triangles)
    wanted = shapely.union_all(shapely.polygons(triangles), grid_size=1e-9).area
    assert abs(union_area(triangles) - wanted) < 1e-6


def test_union_of_pieces_that_meet_but_for_rounding():
    """Four pieces of one triangle whose shared corners differ in the last bit."""
    whole = np.array([[-1.4011700917854184, -0.2478303894231352], [2.1226212533992634] * 2, [0, 0]])
    whole[1] = [2.1226212533992634, -0.2478303894231352]
    whole[2] = [1.8077293704439084, 0.3197401061265041]
    cut = (whole[0] + whole[1]) / 2.0
    pieces = np.array([[whole[0], cut, whole[2]], [cut * (1.0 + 2e-16), whole[1], whole[2]]])
    assert abs(union_area(pieces) - signed_areas(whole[None])[0]) < 1e-12
