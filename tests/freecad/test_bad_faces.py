"""Faces that cannot be moulded end in one sentence of the Moulded Face, which names them."""

import FreeCAD
import Part
import pytest

from freecad.laywright.objects.job import add_stage

V = FreeCAD.Vector


def folded():
    """A strip that is folded flat onto itself, as two faces."""
    return Part.makePolygon([V(0, 0, 0), V(60, 0, 0), V(20, 0, 0)]).extrude(V(0, 40, 0))


def helix():
    """A ramp of a turn and a quarter: seen along its axis its outline crosses itself."""
    shape = Part.makeLongHelix(20.0, 25.0, 20.0)
    inner = shape.Wires[0].Edges
    wide = [edge.copy() for edge in Part.makeLongHelix(20.0, 25.0, 40.0).Wires[0].Edges]
    return Part.makeShell([Part.makeRuledSurface(a, b) for a, b in zip(inner, wide, strict=True)])


CASES = {
    "metres for millimetres": (lambda: Part.makePlane(0.3, 0.2), V(0, 0, 1), "check the unit"),
    "pull in the face": (lambda: Part.makePlane(300, 200), V(1, 0, 0), "lies in the face"),
    "folded": (folded, V(0, 0, 1), "lying on itself"),
    "crossing": (helix, V(0, 0, 1), "outline that crosses itself"),
}


@pytest.mark.parametrize("case", CASES)
def test_one_sentence_names_the_face(doc, case):
    shape, pull, sentence = CASES[case]
    part = doc.addObject("Part::Feature", "Lid")
    part.Shape = shape()
    face = add_stage(doc, "MouldedFace")
    face.Faces = (part, [f"Face{i + 1}" for i in range(len(part.Shape.Faces))])
    face.PullFrom, face.Pull = "fixed direction", pull
    doc.recompute()
    assert not face.isValid()
    assert sentence in face.Status
    assert "Face" in face.Status.split(": found")[0]
    assert face.Status.count("\n") == 0
