import io

import numpy as np
import pytest
import trimesh

import shapes
from laywright.errors import GeometryError
from laywright.files.stl import stl_bytes


def test_read_back_it_is_closed_and_has_the_same_volume():
    sphere = shapes.sphere(150.0, 60)
    written = stl_bytes(sphere.vertices, sphere.triangles)
    mesh = trimesh.load_mesh(io.BytesIO(written), file_type="stl")
    mesh.merge_vertices()
    assert mesh.is_watertight
    volume = trimesh.Trimesh(sphere.vertices, sphere.triangles, process=False).volume
    assert mesh.volume == pytest.approx(volume, rel=1e-6)
    assert np.abs(mesh.bounds - sphere.bounds).max() < 3e-5


def test_normals_have_length_one_and_follow_the_right_hand():
    box = shapes.box(3, 4, 5)
    records = np.frombuffer(stl_bytes(box.vertices, box.triangles)[84:], np.uint8).reshape(-1, 50)
    normals = np.ascontiguousarray(records[:, :12]).view("<f4")
    assert np.allclose(normals, box.normals, atol=1e-7)


def test_triangles_without_area_have_no_normal():
    written = stl_bytes(np.zeros((3, 3)), np.array([[0, 1, 2]]))
    assert written[84:] == bytes(50)


def test_nothing_is_an_empty_file_and_lost_points_are_refused():
    assert len(stl_bytes(np.zeros((0, 3)), np.zeros((0, 3)))) == 84
    with pytest.raises(GeometryError):
        stl_bytes(np.full((3, 3), np.inf), np.array([[0, 1, 2]]))


def test_the_header_names_the_unit():
    assert b"mm" in stl_bytes(np.zeros((0, 3)), np.zeros((0, 3)))[:80]
