"""Cloth Patterns in a document: cuts proposed, accepted, made."""

import math

import FreeCAD
import Part
import pytest

from freecad.laywright.objects.job import add_stage
from laywright.cloth.cuts.cuts import Propose

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


def test_a_patch_and_its_zones(doc, patterns):
    """On the sphere a patch of 30 mm along it has the area of a cap: 2 pi R^2 (1 - cos(r / R))."""
    layup = patterns.Layup
    layup.Cloths, layup.Angles = [PLAIN] * 2, [0.0, 45.0]
    layup.Extents = ["", f"30 mm round 0, 0, {RADIUS:g}"]
    doc.recompute()
    assert patterns.Status == "up to date"
    assert patterns.Count == 2
    cap = 2.0 * math.pi * RADIUS**2 * (1.0 - math.cos(0.3))
    sizes = {zone.plies: zone.area for zone in patterns.Proxy.kept(patterns).zones}
    assert sizes[1, 2] == pytest.approx(cap, rel=5e-3)
    assert [line.split(":")[0] for line in patterns.Zones] == ["plies 1", "plies 1, 2"]
    body = add_stage(doc, "MouldBody")
    body.Face, body.Layup = patterns.Face, layup
    face, built, _ = body.Proxy.inputs(body)
    assert face.digest == patterns.Face.Digest
    assert [ply.ply for ply in built.local] == [2]
    layup.Extents = ["", "30 mm round 0, 0, 500"]
    doc.recompute()
    assert "nowhere on the face" in patterns.Status


def test_film_and_peel_ply_are_cut_besides(doc, patterns):
    doc.recompute()
    cloth, lines = patterns.CutArea.Value, len(patterns.Shape.Wires)
    patterns.AlsoCut = ["peel ply", "film"]
    doc.recompute()
    assert patterns.Status == "up to date"
    assert [line.split(":")[0] for line in patterns.Sheets] == ["peel ply", "film"]
    assert patterns.CutArea.Value == cloth
    assert len(patterns.Shape.Wires) == lines + 4
    assert any(line.startswith("film: ") for line in patterns.Remarks)
    patterns.AlsoCut = ["cling film"]
    doc.recompute()
    assert "found 'cling film', needed 'film' or 'peel ply'" in patterns.Status
