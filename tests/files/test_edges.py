import numpy as np

import shapes
from laywright.files.edges import facet_normals, sides


def test_every_side_of_a_closed_mesh_has_its_partner():
    box = shapes.box(1, 1, 1)
    found = sides(box.triangles)
    assert len(found.lone) == 0
    assert len(found.first) == 18
    flat = box.triangles.ravel()
    following = np.roll(box.triangles, -1, axis=1).ravel()
    assert np.array_equal(flat[found.first], following[found.second])
    assert np.array_equal(following[found.first], flat[found.second])


def test_open_edges_and_edges_of_three_triangles_are_lone():
    fan = np.array([[0, 1, 2], [1, 0, 3], [0, 1, 4]])
    assert len(sides(fan).first) == 0
    assert len(sides(fan).lone) == 9


def test_normals():
    box = shapes.box(2, 3, 4)
    assert np.allclose(facet_normals(box.corners), box.normals)
    assert not facet_normals(np.zeros((1, 3, 3))).any()
