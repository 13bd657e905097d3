"""A mesh object as the part: unit asked for, defects listed, regions picked, a mould made."""

import math

import FreeCAD
import Mesh
import pytest

from freecad.laywright import bridge
from freecad.laywright.objects.job import add_stage, make_job, stage_objects, stages_of


@pytest.fixture
def bowl(doc):
    """A crowned plate of triangles that share no points, one of them missing, in centimetres."""
    size, count = 12.0, 24
    step = 2.0 * size / count

    def at(i, j):
        x, y = -size + i * step, -size + j * step
        return FreeCAD.Vector(x, y, 0.012 * (2.0 * size * size - x * x - y * y))

    facets = []
    for i in range(count):
        for j in range(count):
            a, b, c, d = at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)
            facets += [[a, b, c], [a, c, d]]
    obj = doc.addObject("Mesh::Feature", "Bowl")
    obj.Mesh = Mesh.Mesh(facets[:-1])
    return obj


def made(bowl, unit="cm", **wanted):
    scan = add_stage(bowl.Document, "ScannedPart")
    scan.Source, scan.Unit = bowl, unit
    for name, value in wanted.items():
        setattr(scan, name, value)
    bowl.Document.recompute()
    return scan


def test_arrays_come_over_where_the_mesh_stands(bowl):
    bowl.Placement = FreeCAD.Placement(
        FreeCAD.Vector(1, 2, 3), FreeCAD.Rotation(FreeCAD.Vector(0, 0, 1), 90)
    )
    points, triangles = bridge.mesh_arrays(bowl)
    assert len(triangles) == bowl.Mesh.CountFacets
    assert points[:, 2].min() == pytest.approx(3.0, abs=1e-5)
    assert points.mean(axis=0)[:2] == pytest.approx([1.0, 2.0], abs=0.05)


def test_the_unit_is_asked_for(bowl):
    scan = made(bowl, "not stated")
    assert not scan.isValid()
    assert "unit of Bowl: found none stated" in scan.Status
    scan.Unit = "m"
    bowl.Document.recompute()
    assert "millimetres" in scan.Status


def test_defects_and_regions_are_listed_and_the_mesh_stands_in_mm(bowl):
    scan = made(bowl)
    assert scan.Status == "up to date"
    assert tuple(scan.Size) == pytest.approx((240.0, 240.0, 34.56), rel=1e-5)
    assert scan.Facets == 1151
    assert len(scan.Regions) == 1
    (line,) = scan.Defects
    assert line.startswith("97 open edges at (")
    assert line.endswith(" mm and 77 more")
    assert line.count("(") == 20


def test_a_job_from_a_mesh(bowl):
    job = make_job(bowl, [])
    scan = stage_objects(bowl.Document, "ScannedPart")[0]
    scan.Unit = "cm"
    stages = stages_of(job)
    for kind in reversed([k for k in stages if k not in ("MouldedFace", "Layup", "MouldBody")]):
        bowl.Document.removeObject(stages[kind].Name)
    bowl.Document.recompute()
    face, body = stages["MouldedFace"], stages["MouldBody"]
    assert face.Area.Value == pytest.approx(scan.Area.Value)
    assert body.Status == "up to date"
    assert body.Mesh.isSolid()
    face.RegionPoints = [FreeCAD.Vector(500, 0, 0)]
    bowl.Document.recompute()
    assert "off the mesh" in face.Status
    face.RegionPoints = [FreeCAD.Vector(0, 0, 34)]
    bowl.Document.recompute()
    assert face.Status == "up to date"
    face.RegionPoints = []
    face.Regions = ["Face7"]
    bowl.Document.recompute()
    assert "'Face7'" in face.Status


def test_regions_end_where_the_surface_turns(doc):
    box = doc.addObject("Mesh::Feature", "Box")
    box.Mesh = Mesh.createBox(100.0, 60.0, 40.0)
    scan = made(box, "mm")
    assert scan.Defects == []
    assert [line.split(": ")[1] for line in scan.Regions] == [
        "6000 mm²",
        "6000 mm²",
        "4000 mm²",
        "4000 mm²",
        "2400 mm²",
        "2400 mm²",
    ]
    face = add_stage(doc, "MouldedFace")
    face.Scan = scan
    face.RegionPoints = [FreeCAD.Vector(0, 0, 20)]
    doc.recompute()
    assert face.Area.Value == pytest.approx(6000.0)
    assert math.isclose(abs(face.PullUsed.z), 1.0)
