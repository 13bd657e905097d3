"""The Layup in a document: its cards stay with it, its core, its load, the shell handed over."""

import FreeCAD
import pytest

from freecad.laywright import preferences
from freecad.laywright.exports import export_job
from freecad.laywright.objects.job import add_stage
from laywright.laminate.card_files import corrected
from laywright.laminate.drop_off import local_plies
from laywright.laminate.extents import Round
from laywright.laminate.materials import load_materials
from laywright.laminate.own_cards import changed_card, drop_card, keep_card

pytestmark = pytest.mark.freecad

TWILL = "E-glass twill weave 200 g/m^2"
RESIN = "Laminating epoxy, slow hardener"
MINE = "Twill from the attic"


@pytest.fixture
def folder(tmp_path):
    """Return a folder of one's own cards, in use for the test, with a copy of a cloth in it."""
    settings = FreeCAD.ParamGet(preferences.GROUP)
    before = settings.GetString("MaterialsFolder", "")
    cards = tmp_path / "my cards"
    settings.SetString("MaterialsFolder", str(cards))
    card = load_materials().cards[TWILL]
    keep_card(changed_card(card, MINE, card.texts, card.values), cards, load_materials())
    yield cards
    settings.SetString("MaterialsFolder", before)


@pytest.fixture
def layup(doc, folder):
    """Return a Layup of two plies of one's own cloth, computed: 800 g/m2."""
    obj = add_stage(doc, "Layup")
    obj.Cloths, obj.Angles, obj.Resin = [MINE] * 2, [0.0, 90.0], RESIN
    doc.recompute()
    assert obj.Status == "up to date"
    assert obj.ArealMass == pytest.approx(800.0)
    return obj


def heavier(folder):
    """Change one's own card to 240 g/m2."""
    library = load_materials(folder)
    keep_card(
        corrected(library.cards[MINE], "areal_weight", 240.0, "g/m^2", "invented"), folder, library
    )


def recomputed(obj):
    obj.touch()
    obj.Document.recompute()
    assert obj.Status == "up to date"
    return obj.ArealMass


def test_a_card_that_changes_leaves_the_job_alone_until_it_is_asked_for(layup, folder, tmp_path):
    version = layup.Digest
    heavier(folder)
    assert recomputed(layup) == pytest.approx(800.0)
    assert layup.Digest == version

    document = layup.Document
    path = str(tmp_path / "old.FCStd")
    document.saveAs(path)
    name = document.Name
    FreeCAD.closeDocument(name)
    again = FreeCAD.openDocument(path)
    try:
        old = again.getObject("Layup")
        assert recomputed(old) == pytest.approx(800.0)
        assert old.Digest == version
        # Another ply of the same cloth is of the old card as well: it is the same roll.
        old.Cloths, old.Angles = [MINE] * 3, [0.0, 90.0, 0.0]
        assert recomputed(old) == pytest.approx(1200.0)
        old.Cards = []
        assert recomputed(old) == pytest.approx(1440.0)
        assert len(old.Cards) == 3
    finally:
        FreeCAD.closeDocument(again.Name)


def test_a_job_needs_no_library_once_it_has_its_cards(layup, folder):
    drop_card(MINE, folder)
    assert recomputed(layup) == pytest.approx(800.0)
    (folder / "broken.toml").write_text("no card", encoding="utf-8")
    assert recomputed(layup) == pytest.approx(800.0)
    layup.Cloths = [MINE, TWILL]
    layup.Document.recompute()
    assert "broken.toml" in layup.Status


def test_core_voids_and_load_are_told(layup):
    thin, fraction = layup.Thickness.Value, layup.FibreVolume
    layup.Core, layup.CoreThickness = "Closed-cell PVC foam 80 kg/m^3", "8 mm"
    layup.Document.recompute()
    assert layup.Thickness.Value == pytest.approx(thin + 8.0)
    assert len(layup.Cards) == 4
    layup.CoreOnPly = 2
    layup.Document.recompute()
    assert "core: found a place after ply 2 of 2" in layup.Status
    layup.CoreOnPly = 1
    layup.VoidShare = 4.0
    layup.Document.recompute()
    assert layup.FibreVolume == pytest.approx(0.96 * fraction)
    version = layup.Digest
    assert layup.UnderLoad == ""
    layup.BendAlong = 5.0
    layup.Document.recompute()
    first = layup.UnderLoad
    assert "times this load." in first
    layup.BendAlong = 10.0
    layup.Document.recompute()
    assert layup.UnderLoad != first
    assert layup.Digest == version  # a load changes nothing in the laminate itself


def test_a_panel_and_the_shares_that_are_counted_on(layup):
    layup.PanelLength, layup.PanelWidth = "300 mm", "200 mm"
    layup.Document.recompute()
    simple = layup.UnderLoad
    assert simple.startswith("The panel bends by ")
    layup.PanelEdges = "clamped"
    layup.PullAlong = 10.0
    layup.Document.recompute()
    clamped = layup.UnderLoad
    assert "The panel bends by " in clamped
    assert clamped.index("times this load.") < clamped.index("The panel")
    bends = [float(text.split("bends by ")[1].split()[0]) for text in (simple, clamped)]
    assert 2.5 < bends[0] / bends[1] < 4.5
    layup.PanelLength = "0 mm"
    layup.Document.recompute()
    usual = _times(layup)
    layup.TensionCounted = 40  # of the usual 80 % of hand work
    layup.Document.recompute()
    assert _times(layup) == pytest.approx(usual / 2.0, rel=0.01)
    layup.PressedForce, layup.PressedArea = 100.0, 0.0
    layup.Document.recompute()
    assert "pressed patch: found 100 N on 0 mm^2" in layup.Status


def _times(layup):
    return float(layup.UnderLoad.split(" at ")[-1].split()[0])


def test_the_load_comes_onto_the_sheet_and_the_shell_among_the_files(hatch, tmp_path):
    document, job, stages = hatch
    sheet = stages["JobSheet"]
    patterns = stages["ClothPatterns"].Digest
    stages["Layup"].PullAlong = 10.0
    sheet.ShellFile = "edge can turn but not shift"
    sheet.ShellElements = 300
    document.recompute()
    assert stages["ClothPatterns"].Digest == patterns
    export_job(job, tmp_path)
    (deck,) = (tmp_path / "analysis").iterdir()
    assert f"** {sheet.Title}, {sheet.Version}\n" in deck.read_text(encoding="ascii")
    assert "times this load" in (tmp_path / "job sheet.html").read_text(encoding="utf-8")
    assert sheet.Files == "up to date"
    sheet.ShellPressure = 2.0
    document.recompute()
    assert sheet.Files == "out of date: Shell for Analysis changed since they were written"
    sheet.ShellFile = "not written"
    document.recompute()
    export_job(job, tmp_path)
    assert not deck.exists()


def test_a_ply_that_covers_a_part_of_the_face(layup):
    version = layup.Digest
    layup.Extents = ["", "", ""]
    layup.Document.recompute()
    assert "3 lines for 2 plies" in layup.Status
    layup.Extents = [""]
    layup.Document.recompute()
    assert layup.Digest == version
    layup.Extents = ["", "30 mm round 10, 20, 5"]
    layup.Document.recompute()
    assert layup.Status == "up to date"
    assert layup.ArealMass == pytest.approx(400.0)
    kept = layup.Proxy.kept(layup)
    assert kept.layup.plies[1].extent == Round((10.0, 20.0, 5.0), 30.0)
    assert "30 mm round 10, 20, 5" in layup.Remarks[-1]
    layup.Cloths, layup.Angles = [MINE] * 3, [0.0] * 3
    layup.Extents = ["", *["25 mm along the edge"] * 2]
    layup.DropOff, layup.DropWay = "9 mm", "further out"
    layup.Document.recompute()
    kept = layup.Proxy.kept(layup)
    assert [ply.setback for ply in local_plies(kept)] == [0.0, -9.0]
    layup.Extents = ["25 mm along the edge"] * 3
    layup.Document.recompute()
    assert "no ply that covers the whole face" in layup.Status


def test_the_bench_takes_its_supplies_by_their_cards(hatch):
    document, _, stages = hatch
    sheet = stages["JobSheet"]
    digest = sheet.Digest
    assert sheet.PeelPly == "Polyester peel ply 85 g/m^2"
    sheet.Wax = "Soap"
    document.recompute()
    assert "bench: wax: found 'Soap'" in sheet.Status
    sheet.Wax = "Paste wax for moulds"
    document.recompute()
    assert (sheet.Status, sheet.Digest) == ("up to date", digest)
