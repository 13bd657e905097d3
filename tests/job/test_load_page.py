from __future__ import annotations

import dataclasses

import pytest

from laminate.stacks import MATERIALS
from laywright.job.load_page import load_page, load_words
from laywright.laminate.criteria import Criterion
from laywright.laminate.knock_downs import KnockDowns
from laywright.laminate.laminate import analyse
from laywright.laminate.loading import Loading
from laywright.laminate.loads import LoadCase, StrainCase
from laywright.laminate.plate import Plate
from laywright.laminate.strength import check_strength
from laywright.laminate.used_cards import NamedCore, NamedPly, layup_of

TWILL = "Carbon twill weave 200 g/m^2"
RESIN = "Laminating epoxy, slow hardener"


@pytest.fixture(scope="module")
def laminate():
    return analyse(
        layup_of(MATERIALS, [NamedPly(TWILL, angle) for angle in (0.0, 0.5, 0.0)], RESIN)
    )


def test_margins_stand_ply_by_ply_with_finding_envelope_and_caution(laminate):
    loading = Loading(LoadCase(force=(20.0, 0.0, 0.0)), criterion=Criterion.MAX_STRAIN)
    page = load_page(laminate, loading)
    report = check_strength(laminate, loading.load, Criterion.MAX_STRAIN)
    (table,) = page.tables
    assert table.heading.endswith("by maximum strain")
    assert [row[1] for row in table.rows] == [f"{m.factor:.2f}" for m in report.margins]
    assert page.notes[0] == report.finding
    assert report.caution in page.notes
    assert "maximum strain" in page.picture.name
    assert "80% are counted on in tension" in page.notes[-1]
    assert "usual for hand work, common practice, no source" in page.notes[-1]
    assert load_words(laminate, loading) == report.finding


def test_bending_is_drawn_as_an_envelope_of_bending(laminate):
    page = load_page(laminate, Loading(LoadCase(moment=(3.0, 1.0, 0.0))))
    texts = [shape.text for shape in page.picture.shapes if hasattr(shape, "text")]
    assert "bending along, N" in texts


def test_a_panel_and_strains_are_told_with_their_limits(laminate):
    loading = Loading(
        strain=StrainCase((0.001, 0.0, 0.0)),
        plate=Plate(300.0, 200.0, pressure=0.001),
        knock_downs=KnockDowns(0.5, 0.5, 0.5, 0.5),
    )
    page = load_page(laminate, loading)
    assert page.picture is None
    assert page.tables[0].heading.startswith("How many times the strains")
    assert page.tables[1].heading == "A flat panel of 300 x 200 mm, simply supported"
    assert any("A quick estimate for a flat rectangle" in note for note in page.notes)
    assert "(set for this job)" in page.notes[-1]
    assert "The panel bends by" in load_words(laminate, loading)


def test_a_panel_that_is_pressed_in_its_plane_says_when_it_buckles(laminate):
    pressed = Plate(300.0, 200.0, force=(-0.1, 0.0, 0.0))
    rows = dict(load_page(laminate, Loading(plate=pressed)).tables[-1].rows)
    assert rows["Buckles at"].endswith("times the in-plane forces")
    twice = Plate(300.0, 200.0, force=(-0.2, 0.0, 0.0))
    half = dict(load_page(laminate, Loading(plate=twice)).tables[-1].rows)["Buckles at"]
    assert float(half.split()[0]) == pytest.approx(
        float(rows["Buckles at"].split()[0]) / 2, rel=0.02
    )


def test_a_core_is_judged_beside_the_plies():
    core = NamedCore("Closed-cell PVC foam 80 kg/m^3", 8.0, 1)
    layup = layup_of(MATERIALS, [NamedPly(TWILL, 0.0)] * 2, RESIN, core=core)
    page = load_page(analyse(layup), Loading(LoadCase(moment=(10.0, 0.0, 0.0), shear=(1.0, 0.0))))
    names = [row[0] for row in page.tables[0].rows]
    assert names[2:] == [
        "core, sheared",
        "face at the mould, wrinkling",
        "face away from it, wrinkling",
        "core, crushed",
    ]
    assert float(page.tables[0].rows[2][1]) > 0.0


def test_a_cloth_without_strengths_leaves_a_note_in_place_of_margins(laminate):
    plies = tuple(
        dataclasses.replace(ply, cloth=dataclasses.replace(ply.cloth, strengths=None))
        for ply in laminate.layup.plies
    )
    bare = analyse(dataclasses.replace(laminate.layup, plies=plies))
    loading = Loading(LoadCase(force=(20.0, 0.0, 0.0)))
    page = load_page(bare, loading)
    assert page.tables == ()
    assert "found no strengths on its card" in page.notes[0]
    assert "found no strengths on its card" in load_words(bare, loading)
