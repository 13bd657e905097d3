"""Mould Body in FreeCAD: build, edge and allowances reach the core and come back as reports."""

import math

import pytest

from laywright.errors import LaywrightError

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
    assert "mm/s" in body.Printing
    assert any(line.startswith("release film and coats: 0.2 mm") for line in body.Compensations)
    body.LeftOut = ["release film and coats"]
    document.recompute([body])
    assert body.FarthestFromPart.Value < 0.05
    body.LeftOut = ["heat"]
    document.recompute([body])
    assert "'print shrinkage'" in body.Status


def test_plastic_is_reckoned_by_the_chosen_card_and_has_no_price(hatch):
    document, _, stages = hatch
    body, tiles = stages["MouldBody"], stages["PrintTiles"]
    assert body.Printer == tiles.Printer
    before = body.Printing
    assert f"card '{body.Printer}'" in before
    assert before.endswith("mm/s")
    body.Printer = "Large, 300 mm"
    document.recompute([body])
    assert "card 'Large, 300 mm'" in body.Printing
    body.Printer = "none such"
    document.recompute([body])
    assert "'none such'" in body.Status
    body.Printer = ""
    document.recompute()
    assert body.Printing == before
    sums = [[float(part.split()[0]) for part in line.split(", ")[1:]] for line in tiles.Tiles]
    mass, hours = (sum(column) for column in zip(*sums, strict=True))
    grams, time, card = tiles.Printing.split(", ", 2)
    assert float(grams.removesuffix(" g")) == pytest.approx(mass, abs=len(sums))
    assert float(time.removesuffix(" h")) == pytest.approx(hours, abs=0.1 * len(sums))
    assert card == tiles.Printer


def test_pieces_take_draft_and_number_of_the_release_check_unless_they_are_set(hatch):
    _, _, stages = hatch
    body, check = stages["MouldBody"], stages["ReleaseCheck"]
    assert body.Release is check

    def asked():
        pieces = body.Proxy.inputs(body)[2].pieces
        return math.degrees(pieces.least_draft), pieces.most_pieces

    check.LeastDraft, check.MostPieces = "5 deg", 3
    assert asked() == (pytest.approx(5.0), 3)
    body.PieceDraft, body.MostPieces = "1 deg", 2
    assert asked() == (pytest.approx(1.0), 2)
    body.Release = body.Layup
    with pytest.raises(LaywrightError, match="a Release Check"):
        body.Proxy.inputs(body)


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


def test_the_datum_of_the_patterns_is_marked_where_they_are_linked(hatch):
    document, _, stages = hatch
    body, patterns = stages["MouldBody"], stages["ClothPatterns"]
    assert body.MarkedDatum is None
    plain = body.Volume.Value
    body.MarkedDatum = patterns
    document.recompute()
    assert body.Status == "up to date"
    assert body.Mesh.isSolid()
    marked = body.Volume.Value
    assert 10.0 < plain - marked < 35.0
    assert stages["PrintTiles"].Status == "up to date"
    patterns.DatumFrom = "point and direction below"
    patterns.DatumPoint = patterns.StartPoint
    pull = body.Face.Proxy.kept(body.Face).pull
    patterns.DatumDirection = patterns.StartDirection.cross(type(patterns.StartDirection)(*pull))
    document.recompute()
    assert body.Status == "up to date"
    assert body.Volume.Value != marked
    body.MarkedDatum = None
    document.recompute()
    assert body.Volume.Value == plain
