"""Cloth Patterns in a document: cuts proposed, accepted, made."""

import math

import FreeCAD
import Part
import pytest

from freecad.laywright.objects.job import add_stage
from laywright.cloth.cuts import Propose

pytestmark = pytest.mark.freecad

PLAIN = "E-glass plain weave 163 g/m^2"
RESIN = "Laminating epoxy, slow hardener"
RADIUS, LOW = 100.0, 0.1  # mm, radians


@pytest.fixture
def patterns(doc):
    """Return Cloth Patterns of one plain ply on a deep dome, not yet computed."""
    dome = doc.addObject("Part::Feature", "Dome")
    dome.Shape = Part.makeSphere(
        RADIUS, FreeCAD.Vector(), FreeCAD.Vector(0, 0, 1), math.degrees(LOW), 90.0, 360.0
    )
    upper = max(range(len(dome.Shape.Faces)), key=lambda k: dome.Shape.Faces[k].Area)
    face = add_stage(doc, "MouldedFace")
    face.Faces = (dome, [f"Face{upper + 1}"])
    layup = add_stage(doc, "Layup")
    layup.Cloths, layup.Angles, layup.Resin = [PLAIN], [0.0], RESIN
    stage = add_stage(doc, "ClothPatterns")
    stage.Face, stage.Layup = face, layup
    stage.DatumFrom = stage.getEnumerationsOfProperty("DatumFrom")[1]
    stage.DatumPoint = FreeCAD.Vector(0, 0, RADIUS)
    return stage


def test_cuts_are_shown_and_accepted(doc, patterns):
    doc.recompute()
    assert patterns.Status == "up to date"
    assert patterns.ProposedCuts == []
    assert patterns.StartPoint.z == pytest.approx(RADIUS, abs=1.0)
    assert patterns.StartDirection.Length == pytest.approx(1.0)
    patterns.WherePastLimits = Propose.SHOWN.value
    doc.recompute()
    proposed = list(patterns.ProposedCuts)
    assert proposed
    assert patterns.MadeCuts == []
    sheared = patterns.LargestShear.Value
    patterns.Proxy.take_proposed(patterns)
    assert patterns.Cuts == proposed
    doc.recompute()
    assert len(patterns.MadeCuts) == len(proposed)
    assert patterns.LargestShear.Value < sheared - 5.0


def test_a_cut_that_cannot_be_read_is_said(doc, patterns):
    patterns.Cuts = ["somewhere on the left"]
    doc.recompute()
    assert "found 'somewhere on the left'" in patterns.Status


def test_the_cloth_is_laid_from_a_picked_edge_and_follows_it(doc, patterns):
    dome = patterns.Face.Faces[0]
    edges = dome.Shape.Edges
    rim = f"Edge{1 + max(range(len(edges)), key=lambda number: edges[number].Length)}"
    patterns.DatumFrom = "picked edge"
    doc.recompute()
    assert "datum edge: found none" in patterns.Status
    patterns.DatumEdge = (dome, [rim])
    doc.recompute()
    assert patterns.Status == "up to date"
    start, along = patterns.StartPoint, patterns.StartDirection
    # Half-way round the rim, which begins on the x axis, it runs along y.
    assert tuple(start) == pytest.approx(
        (-RADIUS * math.cos(LOW), 0.0, RADIUS * math.sin(LOW)), abs=0.2
    )
    assert abs(along.y) == pytest.approx(1.0, abs=1e-3)
    patterns.DatumEdge = (dome, [patterns.Face.Faces[1][0]])
    doc.recompute()
    assert "found a face, needed an edge" in patterns.Status


def test_refused_cuts_are_not_proposed_again(doc, patterns):
    patterns.WherePastLimits = Propose.SHOWN.value
    doc.recompute()
    proposed = list(patterns.ProposedCuts)
    patterns.Proxy.refuse_proposed(patterns)
    assert [line.removesuffix(", refused") for line in patterns.Cuts] == proposed
    doc.recompute()
    assert patterns.Status == "up to date"
    assert patterns.MadeCuts == []
    assert not set(proposed) & set(patterns.ProposedCuts)
