import numpy as np
import pytest
import trimesh

import shapes
from laywright.files.coarser import coarser
from laywright.files.edges import sides


def _area(points, faces):
    a, b, c = (points[faces[:, k]] for k in range(3))
    return 0.5 * np.linalg.norm(np.cross(b - a, c - a), axis=1).sum()


def test_a_mesh_that_is_coarse_enough_comes_back_as_it_is():
    box = shapes.box(1, 2, 3)
    points, faces = coarser(box.vertices, box.triangles, 12)
    assert np.array_equal(points, box.vertices)
    assert np.array_equal(faces, box.triangles)


@pytest.mark.parametrize("most", [200, 1000, 3000])
def test_a_sphere_stays_a_sphere(most):
    sphere = shapes.sphere(50.0, 90)
    points, faces = coarser(sphere.vertices, sphere.triangles, most)
    assert 0.3 * most < len(faces) <= most
    used = points[np.unique(faces)]
    spacing = 50.0 * np.sqrt(4 * np.pi / len(faces))
    assert np.linalg.norm(used, axis=1).min() > 50.0 - spacing**2 / 50.0
    assert _area(points, faces) == pytest.approx(4 * np.pi * 2500, rel=0.12)


def test_the_edge_of_an_open_plate_stays_straight():
    plate = shapes.graph(lambda x, y: 0 * x, (0, 100), (0, 60), (80, 60))
    points, faces = coarser(plate.vertices, plate.triangles, 800)
    lone = sides(faces).lone
    ends = np.unique([faces.ravel()[lone], np.roll(faces, -1, axis=1).ravel()[lone]])
    x, y = points[ends, 0], points[ends, 1]
    off = np.minimum.reduce([np.abs(x), np.abs(x - 100), np.abs(y), np.abs(y - 60)])
    assert off.max() < 0.05


def test_a_closed_mesh_stays_closed_and_keeps_its_volume():
    torus = shapes.torus(40.0, 12.0, 300, 150)
    points, faces = coarser(torus.vertices, torus.triangles, 6000)
    assert len(faces) <= 6000
    assert len(sides(faces).lone) == 0
    a, b, c = (points[faces[:, k]] for k in range(3))
    volume = np.einsum("ij,ij->", a, np.cross(b, c)) / 6.0
    assert volume == pytest.approx(2 * np.pi**2 * 40 * 144, rel=0.03)


def test_flat_sides_collapse_without_moving():
    box = shapes.box(30.0, 20.0, 10.0)
    fine = trimesh.Trimesh(box.vertices, box.triangles).subdivide().subdivide().subdivide()
    points, faces = coarser(fine.vertices, fine.faces, 50)
    assert len(faces) == 12
    assert np.ptp(points, axis=0).tolist() == [30.0, 20.0, 10.0]
