"""Mould Body in FreeCAD: build, edge and allowances reach the core and come back as reports."""

import pytest

pytestmark = pytest.mark.freecad


def test_a_ribbed_mould_with_an_edge_reports_wall_plastic_and_allowances(hatch):
    document, _, stages = hatch
    body = stages["MouldBody"]
    solid = body.Volume.Value
    body.Build = "hollow with ribs"
    body.BaseHeight = "12 mm"
    body.Flange = "20 mm"
    body.ClothMargin = "15 mm"
    body.BoltHoles = "5 mm"
    body.Inscription = "HATCH B-1"
    body.Coats = "0.2 mm"
    document.recompute([body])
    assert body.Status == "up to date"
    assert body.Mesh.isSolid()
    assert body.Volume.Value < solid
    assert body.LeastWall.Value >= 4.0
    assert body.FarthestFromPart.Value == pytest.approx(0.2, rel=0.2)
    assert "mm3/s" in body.Printing
    assert any(line.startswith("release film and coats: 0.2 mm") for line in body.Compensations)
    body.LeftOut = ["release film and coats"]
    document.recompute([body])
    assert body.FarthestFromPart.Value < 0.05
    body.LeftOut = ["heat"]
    document.recompute([body])
    assert "'print shrinkage'" in body.Status


def test_spring_in_is_listed_applied_or_not_considered(hatch):
    document, _, stages = hatch
    body = stages["MouldBody"]
    body.BendsClose = 0.8
    document.recompute([body])
    assert body.Status == "up to date"
    plain = body.Volume.Value
    assert body.FarthestFromPart.Value < 0.05
    body.SpringIn = "applied"
    document.recompute([body])
    assert body.Status == "up to date"
    assert body.Mesh.isSolid()
    whole, *_ = [line for line in body.Compensations if line.startswith("spring-in")]
    assert "mm, working surface, opened" in whole
    moved = float(whole.split()[3])
    assert moved > 0.001
    assert body.FarthestFromPart.Value <= moved + 0.001
    body.SpringIn = "not considered"
    document.recompute([body])
    assert [line for line in body.Compensations if line.startswith("spring-in")] == [
        "spring-in of bends: 0 deg, not considered"
    ]
    assert body.Volume.Value == plain
