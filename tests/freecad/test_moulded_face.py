"""The moulded face knows its faces again after an edit, or refuses and offers the best match."""

import math

import FreeCAD
import Part
import pytest
from parts import bored_box

from freecad.laywright import bridge
from freecad.laywright.objects.job import add_stage

pytestmark = pytest.mark.freecad


def top_face(shape):
    return next(
        f"Face{number}"
        for number, face in enumerate(shape.Faces, 1)
        if abs(face.CenterOfMass.z - 20.0) < 1e-6 and face.normalAt(0, 0).z > 0.9
    )


def test_a_face_that_lost_its_name_is_never_silently_replaced(doc):
    part, bore = bored_box(doc)
    face = add_stage(doc, "MouldedFace")
    face.Faces = (part, [top_face(part.Shape)])
    doc.recompute()
    assert face.Area.Value == pytest.approx(2400.0)

    for x in (30.0, 45.0, 15.0):
        bore.Placement.Base = FreeCAD.Vector(x, 20, -20)
        doc.recompute()
        wanted = top_face(part.Shape)
        if face.isValid():
            # FreeCAD followed the face: it must be the top, with the hole in it.
            assert face.Faces[1] == [wanted]
            assert face.Area.Value == pytest.approx(2400.0 - 78.54, rel=1e-3)
        else:
            assert face.Faces[1] != [wanted]
            assert f"pick it again; {wanted} is the most like it" in face.Status
            assert face.Area.Value == pytest.approx(2400.0)


def test_a_longer_part_keeps_its_face(doc):
    part, _ = bored_box(doc)
    face = add_stage(doc, "MouldedFace")
    face.Faces = (part, [top_face(part.Shape)])
    doc.recompute()
    doc.Box.Length = 75
    doc.recompute()
    assert face.isValid()
    assert face.Area.Value == pytest.approx(75.0 * 40.0)


def test_a_face_that_does_not_exist_is_named(doc):
    part, _ = bored_box(doc)
    face = add_stage(doc, "MouldedFace")
    face.Faces = (part, ["Face99"])
    doc.recompute()
    assert not face.isValid()
    assert "Face99" in face.Status


def test_no_faces_is_one_sentence(doc):
    face = add_stage(doc, "MouldedFace")
    doc.recompute()
    assert face.Status == (
        "out of date: Faces: found no faces, needed one or more faces of a part; pick the faces."
    )


def test_all_faces_of_a_box_are_refused_as_a_closed_shell(doc):
    part, _ = bored_box(doc)
    face = add_stage(doc, "MouldedFace")
    face.Faces = (part, [f"Face{number}" for number in range(1, 7)])
    doc.recompute()
    assert "close into a shell" in face.Status


def test_neighbouring_faces_share_their_edge_exactly(doc):
    part, _ = bored_box(doc)
    rounded = doc.addObject("Part::Fillet", "Rounded")
    rounded.Base = part
    rounded.Edges = [(number, 4.0, 4.0) for number in range(1, 13)]
    doc.recompute()
    names = [
        f"Face{number}"
        for number, piece in enumerate(rounded.Shape.Faces, 1)
        if piece.CenterOfMass.z > 10.5
    ]
    face = add_stage(doc, "MouldedFace")
    face.Faces = (rounded, names)
    doc.recompute()
    assert face.isValid(), face.Status
    surface = face.Proxy.kept(face).surface
    assert len(surface.boundary_loops) == 1
    assert surface.euler_characteristic == 1
    assert surface.patch_names == tuple(names)
    exact = sum(rounded.Shape.getElement(name).Area for name in names)
    assert surface.area == pytest.approx(exact, rel=2e-3)


@pytest.mark.parametrize(
    ("pick", "wanted"),
    [("upright edge", (0, 0, -1)), ("top", (0, 0, -1)), ("bore", (0, 0, -1)), ("nothing", None)],
)
def test_the_pull_follows_a_picked_edge_or_face(doc, pick, wanted):
    part, bore = bored_box(doc)
    bore.Placement.Base = FreeCAD.Vector(30, 20, -20)
    doc.recompute()
    shape = part.Shape
    edges = {f"Edge{number}": edge for number, edge in enumerate(shape.Edges, 1)}
    names = {
        "upright edge": next(
            name
            for name, edge in edges.items()
            if type(edge.Curve).__name__ == "Line" and abs(edge.tangentAt(0).z) > 0.9
        ),
        "top": top_face(shape),
        "bore": next(
            f"Face{number}"
            for number, face in enumerate(shape.Faces, 1)
            if type(face.Surface).__name__ == "Cylinder"
        ),
        "nothing": None,
    }
    face = add_stage(doc, "MouldedFace")
    face.Faces = (part, [top_face(shape)])
    face.PullFrom = "picked edge or face"
    if names[pick] is None:
        doc.recompute()
        assert "PullAxis: found no edge or face" in face.Status
        return
    face.PullAxis = (part, [names[pick]])
    doc.recompute()
    assert face.isValid(), face.Status
    assert (face.PullUsed - FreeCAD.Vector(*wanted)).Length < 1e-9


def test_the_wanted_draft_follows_the_moulds_surface(doc):
    part, _ = bored_box(doc)
    face = add_stage(doc, "MouldedFace")
    face.Faces = (part, [top_face(part.Shape)])
    check = add_stage(doc, "ReleaseCheck")
    check.Face = face
    for surface, degrees in (
        ("draft set by hand", 2.0),
        ("smooth, sealed", 2.0),
        ("layer lines across the pull", 5.0),
    ):
        check.MouldSurface = surface
        doc.recompute()
        assert check.isValid(), check.Status
        assert check.WantedDraft.Value == pytest.approx(degrees)


@pytest.mark.parametrize("kind", ["free-form", "closed free-form", "cylinder"])
def test_the_deviation_of_the_triangles_is_the_distance_from_the_surface(doc, kind):
    def height(x, y):
        return 12.0 * math.sin(0.05 * x) * math.cos(0.04 * y)

    if kind == "cylinder":
        shape = Part.makeCylinder(30, 50)
    elif kind == "free-form":
        surface = Part.BSplineSurface()
        rows = [
            [FreeCAD.Vector(x, y, height(x, y)) for y in range(0, 91, 10)]
            for x in range(0, 121, 10)
        ]
        surface.interpolate(rows)
        shape = surface.toShape()
    else:
        shape = Part.makeCylinder(30, 50).toNurbs()
    names = [f"Face{number}" for number in range(1, len(shape.Faces) + 1)]
    found, deviation = bridge.surface_from_shape(shape, names[:1], 0.2, 0.3)
    face, worst = shape.Faces[0], 0.0
    for middle in found.centroids:
        u, v = face.Surface.parameter(bridge.vector(middle))
        worst = max(worst, face.Surface.value(u, v).distanceToPoint(bridge.vector(middle)))
    assert 0.5 * worst < deviation <= worst * 1.01
    assert worst <= 0.2 * 1.05
