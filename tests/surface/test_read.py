"""Mesh files are read in the unit that the person states."""

from __future__ import annotations

import zipfile

import numpy as np
import pytest
import trimesh

import shapes
from laywright.errors import FileError, GeometryError, UnitError
from laywright.surface.read import read_mesh, read_surface
from laywright.surface.repair import RepairSettings


def written(surface, path):
    trimesh.Trimesh(surface.vertices, surface.triangles, process=False).export(path)
    return path


@pytest.mark.parametrize("kind", ["stl", "obj", "ply", "3mf"])
def test_every_kind_gives_the_part_back(tmp_path, kind):
    for wanted, faces in ((shapes.box(10, 20, 30), 6), (shapes.torus(40, 12), 1)):
        reading = read_mesh(written(wanted, tmp_path / f"part.{kind}"), "mm")
        assert reading.defects == ()
        assert reading.surface.volume == pytest.approx(wanted.volume, rel=1e-6)
        assert len(reading.surface.patch_names) == faces


def test_the_unit_scales(tmp_path):
    path = written(shapes.box(1, 2, 3), tmp_path / "part.stl")
    assert read_surface(path, "in").volume == pytest.approx(6 * 25.4**3, rel=1e-6)
    assert read_surface(path, "cm").volume == pytest.approx(6000.0, rel=1e-6)


def test_a_unit_that_is_no_length_or_contradicts_the_file(tmp_path):
    with pytest.raises(UnitError):
        read_surface(written(shapes.box(1, 2, 3), tmp_path / "part.stl"), "kg")
    with pytest.raises(UnitError, match="which the file states"):
        read_surface(written(shapes.box(1, 2, 3), tmp_path / "part.3mf"), "in")


def test_an_open_part_keeps_its_outline(tmp_path):
    wanted = shapes.hatch(spacing=20.0)
    reading = read_mesh(written(wanted, tmp_path / "part.ply"), "mm")
    (defect,) = reading.defects
    assert (defect.kind, defect.count) == ("open edges", len(wanted.boundary_loops[0]))
    assert reading.surface.loop_length(reading.surface.boundary_loops[0]) == pytest.approx(
        wanted.loop_length(wanted.boundary_loops[0]), rel=1e-6
    )


def test_a_crease_angle_of_ones_own(tmp_path):
    path = written(shapes.box(10, 20, 30), tmp_path / "part.stl")
    assert read_surface(path, "mm", crease=2.0).patch_names == ("Face1",)


def test_what_cannot_be_read_is_one_sentence(tmp_path):
    with pytest.raises(FileError, match=r"a file of kind '\.step'"):
        read_surface(tmp_path / "part.step", "mm")
    with pytest.raises(FileError, match="found no file"):
        read_surface(tmp_path / "part.stl", "mm")
    (tmp_path / "bad.ply").write_bytes(b"ply\nnonsense")
    with pytest.raises(FileError, match="cannot be read as a mesh"):
        read_surface(tmp_path / "bad.ply", "mm")


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("v 0 0 0\nv 1 0 0\nv 0 nan 0\nf 1 2 3\n", "1 points that are no numbers"),
        ("v 0 0 0\nv 1 0 0\nv 0 1e999 0\nf 1 2 3\n", "1 points that are no numbers"),
    ],
)
def test_points_that_are_no_numbers(tmp_path, text, found):
    path = tmp_path / "part.obj"
    path.write_text(text)
    with pytest.raises(FileError, match=found):
        read_surface(path, "mm")


def test_a_triangle_of_a_point_that_is_not_there(tmp_path):
    path = tmp_path / "part.ply"
    head = "ply\nformat ascii 1.0\nelement vertex 3\nproperty float x\nproperty float y\n"
    faces = "property float z\nelement face 1\nproperty list uchar int vertex_indices\n"
    path.write_text(f"{head}{faces}end_header\n0 0 0\n9 0 0\n0 9 0\n3 0 1 8\n")
    with pytest.raises(FileError, match="a triangle of point 9 in 3 points"):
        read_surface(path, "mm")


def test_a_3mf_file_with_entities_of_its_own_is_refused(tmp_path):
    whole = written(shapes.box(10, 20, 30), tmp_path / "part.3mf")
    with zipfile.ZipFile(whole) as archive:
        entries = {name: archive.read(name) for name in archive.namelist()}
    with zipfile.ZipFile(tmp_path / "sly.3mf", "w") as archive:
        for name, data in entries.items():
            sly = b'<!DOCTYPE model [<!ENTITY out SYSTEM "file:///etc/hostname">]>' + data
            archive.writestr(name, sly if name.endswith(".model") else data)
    with pytest.raises(FileError, match="a document type in"):
        read_surface(tmp_path / "sly.3mf", "mm")


def test_three_triangles_on_an_edge_are_refused_with_the_place(tmp_path):
    points = np.array([[0, 0, 0], [9, 0, 0], [0, 9, 0], [0, 0, 9], [0, -9, 0]], float)
    mesh = trimesh.Trimesh(points, [[0, 1, 2], [0, 1, 3], [0, 1, 4]], process=False)
    mesh.export(tmp_path / "fin.ply")
    with pytest.raises(GeometryError) as caught:
        read_surface(tmp_path / "fin.ply", "mm")
    assert "1 edges with more than two triangles at (4.50, 0.00, 0.00)" in caught.value.found


def test_mending_makes_a_torn_scan_usable_and_tells_what_it_did(tmp_path):
    points = np.array([[0, 0, 0], [9, 0, 0], [0, 9, 0], [9, 9, 0], [4, 4, 0.5]], float)
    mesh = trimesh.Trimesh(points, [[0, 1, 2], [1, 3, 2], [1, 2, 4]], process=False)
    mesh.export(tmp_path / "fin.ply")
    reading = read_mesh(tmp_path / "fin.ply", "mm", mending=RepairSettings())
    assert [change.kind for change in reading.changes] == [
        "triangles taken off edges with more than two"
    ]
    assert reading.surface.area == pytest.approx(81.0)


@pytest.mark.parametrize(("size", "asked"), [(0.3, "metres or inches"), (9000.0, "millimetres")])
def test_a_size_that_speaks_for_another_unit_asks_for_it(tmp_path, size, asked):
    path = written(shapes.box(size, size / 2, size / 3), tmp_path / "part.stl")
    with pytest.raises(UnitError) as caught:
        read_surface(path, "mm")
    assert asked in caught.value.remedy
    assert caught.value.where == "unit of part.stl"
