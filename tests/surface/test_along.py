"""Distances along a surface: exact on what develops, whatever its triangles are like."""

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from scipy.spatial import Delaunay

import shapes
from laywright.errors import InputError
from laywright.surface.along import Along
from laywright.surface.triangles import Surface

PLATE = shapes.graph(lambda x, y: 0.0 * x, (-100, 100), (-60, 60), (25, 15))


@pytest.fixture
def holed():
    """A plate with a bolt hole of 10 mm, in long thin triangles that only use its outlines."""
    turn = np.linspace(0.0, 2.0 * np.pi, 60, endpoint=False)
    corners = [[-100, -60], [100, -60], [100, 60], [-100, 60]]
    flat = np.concatenate([corners, 10.0 * np.stack([np.cos(turn), np.sin(turn)], axis=1)])
    triangles = Delaunay(flat).simplices
    kept = np.hypot(*flat[triangles].mean(axis=1).T) > 9.9
    points = np.concatenate([flat, np.zeros((len(flat), 1))], axis=1)
    found = Surface.single(points, triangles[kept])
    turned = (found.normals[:, 2] < 0.0)[:, None]
    return Surface.single(points, np.where(turned, found.triangles[:, ::-1], found.triangles))


@given(st.floats(-99.0, 99.0), st.floats(-59.0, 59.0))
def test_on_a_plane_distances_from_a_point_are_straight_ones(x, y):
    found = Along(PLATE).from_point((x, y, 0.0))
    straight = np.hypot(*(PLATE.vertices[:, :2] - [x, y]).T)
    assert found == pytest.approx(straight, abs=1e-7)


def test_on_a_rectangle_the_edge_is_as_far_as_the_nearest_side():
    x, y, _ = np.abs(PLATE.vertices).T
    assert Along(PLATE).from_edge() == pytest.approx(np.minimum(100 - x, 60 - y), abs=1e-9)


def test_thin_triangles_and_a_hole_do_no_harm(holed):
    along = Along(holed)
    for point in ((40.0, 5.0, 0.0), (0.0, 0.0, 0.0)):
        straight = np.linalg.norm(holed.vertices - point, axis=1)
        assert along.from_point(point) == pytest.approx(straight, abs=1e-7)


def test_on_a_cylinder_distances_are_those_of_the_development():
    cells, radius, turn = 40, 50.0, 2.0
    surface = shapes.cylinder_patch(radius, turn, 120.0, (cells, 50))
    found = Along(surface).from_point((0.0, 0.0, radius))
    step = turn / cells
    around = np.arctan2(surface.vertices[:, 0], surface.vertices[:, 2]) / step
    chord = 2.0 * radius * math.sin(0.5 * step)
    assert found == pytest.approx(np.hypot(around * chord, surface.vertices[:, 1]), abs=1e-7)


def test_on_a_sphere_distances_converge_to_the_great_circle():
    worst = []
    for rings in (12, 24, 48):
        cap = shapes.cap(100.0, math.radians(70.0), rings)
        polar = 100.0 * np.arccos(np.clip(cap.vertices[:, 2] / 100.0, -1.0, 1.0))
        worst.append(float(np.abs(Along(cap).from_point((0.0, 0.0, 100.0)) - polar).max()))
    assert worst[1] < 0.5 * worst[0]
    assert worst[2] < 0.5 * worst[1]
    assert worst[2] < 0.08


def test_into_faces_is_measured_from_their_border_and_negative_outside():
    fine = PLATE.centroids[:, 0] > 4.0
    surface = Surface(PLATE.vertices, PLATE.triangles, fine.astype(int), ("Left", "Right"))
    found = Along(surface).into_patches(("Right",))
    assert found == pytest.approx(PLATE.vertices[:, 0] - 4.0, abs=1e-9)
    assert Along(surface).into_patches(("Left",)) == pytest.approx(-found, abs=1e-9)
    whole = Along(surface).into_patches(("Left", "Right"))
    assert whole.min() > 200.0


def test_the_border_of_a_face_is_met_by_triangles_that_do_not_end_there():
    fine = PLATE.centroids[:, 0] > 4.0
    named = Surface(PLATE.vertices, PLATE.triangles, fine.astype(int), ("Left", "Right"))
    other = shapes.graph(lambda x, y: 0.0 * x, (-100, 100), (-60, 60), (31, 17))
    found = Along(other, named).into_patches(("Right",))
    assert found == pytest.approx(other.vertices[:, 0] - 4.0, abs=1e-9)


def test_a_point_a_little_off_the_face_is_its_foot_and_one_far_off_is_far():
    straight = np.hypot(*PLATE.vertices[:, :2].T)
    for height, farther in ((8.0, 0.0), (-20.0, 0.0), (30.0, 30.0)):
        found = Along(PLATE).from_point((0.0, 0.0, height))
        assert found - straight == pytest.approx(farther, abs=1e-7)


@pytest.mark.parametrize(
    ("names", "words"), [(("Roof",), "'Roof'.*moulded faces"), ((), "no name")]
)
def test_unknown_faces_are_refused(names, words):
    with pytest.raises(InputError, match=words):
        Along(PLATE).into_patches(names)


def test_a_point_that_is_no_number_is_refused():
    with pytest.raises(InputError, match="three numbers"):
        Along(PLATE).from_point((0.0, math.nan, 0.0))


def test_the_edge_of_a_bent_outline_is_met_within_a_part_of_the_triangles():
    disc = shapes.cap(1e6, 1e-4, 40)  # flat, 100 mm
    inward = 100.0 - np.hypot(*disc.vertices[:, :2].T)
    rim = shapely.Polygon(disc.vertices[disc.boundary_loops[0], :2])
    assert rim.is_valid
    assert Along(disc).from_edge() == pytest.approx(inward, abs=0.1)
