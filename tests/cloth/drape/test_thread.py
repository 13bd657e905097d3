"""Threads laid straight follow geodesics."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.drape import drape
from laywright.cloth.drape.even_mesh import even_mesh
from laywright.cloth.drape.fabric import Start, fabric_for
from laywright.cloth.drape.place import nearest_place
from laywright.cloth.drape.thread import lay_thread, neighbours
from laywright.laminate.materials import Weave


def thread_from(surface, point, direction, length=np.inf):
    place = nearest_place(surface, np.array(point, float))
    return lay_thread(surface, place, tuple(direction), length)


@given(st.floats(0.0, 2.0 * math.pi))
@settings(max_examples=20)
def test_straight_on_a_plate(turn):
    plate = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (7, 9))
    direction = np.array([math.cos(turn), math.sin(turn), 0.0])
    points = thread_from(plate, (0.3, 0.2, 0), direction).points(plate)
    across = np.cross(points - [0.3, 0.2, 0.0], direction)[:, 2]
    assert np.abs(across).max() < 1e-9
    assert np.abs(points[-1, :2]).max() == pytest.approx(10.0)


@pytest.mark.parametrize("turn", [0.0, 0.4, 1.1])
def test_great_circle_on_a_sphere(turn):
    cap = shapes.cap(100, 1.2, 60)
    direction = np.array([math.cos(turn), math.sin(turn), 0.0])
    thread = thread_from(cap, (0, 0, 100), direction)
    points = thread.points(cap)
    off = points @ np.array([-math.sin(turn), math.cos(turn), 0.0])
    assert np.abs(off).max() < 0.02
    assert thread.distance[-1] == pytest.approx(120.0, rel=2e-4)


def test_length_along_a_meridian_converges_in_the_second_order():
    error = [
        abs(thread_from(shapes.cap(100, 1.2, n), (0, 0, 100), (1, 0, 0)).distance[-1] - 120.0)
        for n in (15, 30, 60)
    ]
    assert error[0] / error[1] == pytest.approx(4.0, rel=0.1)
    assert error[1] / error[2] == pytest.approx(4.0, rel=0.1)


def test_helix_on_a_cylinder():
    """A geodesic of a cylinder keeps its angle to the generators."""
    radius, pitch = 40.0, 0.5
    cylinder = shapes.cylinder_patch(radius, 3.0, 100, (120, 40))
    start = np.array([0.0, 0.0, radius])
    points = thread_from(cylinder, start, (math.cos(pitch), math.sin(pitch), 0)).points(cylinder)
    around = radius * np.arctan2(points[:, 0], points[:, 2])
    assert points[:, 1] == pytest.approx(np.tan(pitch) * around, abs=0.02)


def test_a_sharp_edge_is_crossed_as_if_unfolded():
    ridge = shapes.graph(lambda x, y: -np.abs(x), (-10, 10), (-10, 10), (20, 20))
    start = np.array([-5.0, -5.0, -5.0])
    slope = 1.0 / math.sqrt(2.0)
    thread = thread_from(ridge, start, (0.6 * slope, 0.8, 0.6 * slope))
    points = thread.points(ridge)
    unfolded = (points[:, 0] + 5.0) / slope
    assert points[:, 1] + 5.0 == pytest.approx(unfolded * 0.8 / 0.6, abs=1e-9)


def test_stops_at_a_length_and_before_it_meets_itself():
    plate = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (20, 20))
    assert 5.0 <= thread_from(plate, (0, 0, 0), (1, 0.3, 0), 5.0).distance[-1] < 7.0
    sphere = shapes.sphere(10.0, 20)
    around = thread_from(sphere, (10, 0, 0.1), (0, 1, 0))
    assert around.distance[-1] < 2.0 * math.pi * 10.0 * 1.1


def test_neighbours_are_mutual():
    cap = shapes.cap(10, 1.0, 6)
    across = neighbours(cap)
    assert (across < 0).sum() == len(cap.boundary_loops[0])
    for triangle, row in enumerate(across):
        for other in row[row >= 0]:
            assert triangle in across[other]
            assert len(set(cap.triangles[triangle]) & set(cap.triangles[other])) == 2


@pytest.mark.parametrize("turn", [0.0, 0.12, -0.1])
def test_a_thread_spans_a_hole_and_goes_on_as_on_the_whole_surface(turn):
    cap = shapes.cap(100, 1.2, 60)
    middle = 100.0 * np.array([math.sin(0.5), 0.0, math.cos(0.5)])
    holed = cap.part(np.linalg.norm(cap.centroids - middle, axis=1) > 16.0)
    assert len(holed.boundary_loops) == 2
    direction = np.array([math.cos(turn), math.sin(turn), 0.0])
    thread = thread_from(holed, (0, 0, 100), direction)
    points = thread.points(holed)
    off = points @ np.array([-math.sin(turn), math.cos(turn), 0.0])
    assert np.abs(off).max() < 0.05  # normals at the rim of the hole are known from one side
    assert thread.distance[-1] == pytest.approx(120.0, rel=3e-4)
    gaps = np.diff(thread.distance)
    assert gaps.max() > 20.0  # the hole
    assert np.sort(gaps)[-2] < 5.0


def test_a_hole_in_the_middle_hardly_changes_the_cloth():
    cap = even_mesh(shapes.cap(100.0, 0.9, 24), 7.0)
    middle = 100.0 * np.array([math.sin(0.4), 0.0, math.cos(0.4)])
    kept = np.linalg.norm(cap.centroids - middle, axis=1) > 14.0
    used = np.unique(cap.triangles[kept])
    fabric, datum = fabric_for(Weave.TWILL), Datum((0.0, 0.0, 100.0), (1.0, 0.0, 0.0))
    for start in Start:
        whole = drape(cap, fabric, datum, start=start)
        holed = drape(cap.part(kept), fabric, datum, start=start)
        assert np.abs(holed.uv - whole.uv[used]).max() < 0.15
        assert holed.largest_shear == pytest.approx(whole.largest_shear, abs=2e-3)
