from __future__ import annotations

import pytest

from job_demo import hatch
from laywright.cloth.patterns.pattern import PatternSettings, make_patterns
from laywright.job.laminate_page import laminate_details
from laywright.laminate.laminate import analyse
from laywright.laminate.loading import Loading
from laywright.laminate.loads import LoadCase
from laywright.shop.sheet.laminate_station import laminate_station
from laywright.surface.face import take_face


@pytest.fixture(scope="module")
def patterns_of_hatch():
    job = hatch()
    laminate = analyse(job.layup)
    face = take_face(job.surface, None)
    return laminate, make_patterns(face, laminate, None, PatternSettings(triangles=600))


@pytest.fixture(scope="module")
def details(patterns_of_hatch):
    laminate, patterns = patterns_of_hatch
    return laminate, laminate_details(laminate, patterns)


def test_the_tables_hold_bands_spread_and_sheets(details):
    laminate, page = details
    bands, spread, sheets = page.tables
    assert bands.rows[0][:2] == ("thickness, mm", f"{laminate.thickness:.3g}")
    assert spread.rows[1][:2] == ("mass, g/m^2", "1200")
    assert {row[0] for row in sheets.rows} == {
        "ABS sheet",
        "Aluminium alloy sheet",
        "Mild steel sheet",
        "Polycarbonate sheet",
    }
    assert all("e+" not in cell for table in page.tables for row in table.rows for cell in row)


def test_the_state_rules_of_thumb_and_cautions_are_said(details):
    _, page = details
    said = " ".join(page.notes)
    assert "The layup is symmetric about the middle and balanced." in said
    assert "common practice, no source" in said
    assert "no protection level is computed or claimed" in said


def test_a_load_adds_margins_their_band_and_the_envelope(patterns_of_hatch):
    laminate, patterns = patterns_of_hatch
    page = laminate_details(laminate, patterns, Loading(LoadCase(force=(10.0, 0.0, 0.0))))
    assert page.tables[0].rows[-1][0] == "margin, times the load"
    assert page.tables[-1].heading.startswith("How many times the forces")
    assert any("by an accredited laboratory" in note for note in page.notes)
    captions = [b.caption for b in laminate_station(page).blocks if hasattr(b, "caption")]
    assert captions[-1] == "What it carries"


def test_the_station_is_one_page_with_both_pictures(details):
    _, page = details
    station = laminate_station(page)
    captions = [block.caption for block in station.blocks if hasattr(block, "caption")]
    assert captions == ["The stack, away from the mould on top", "Modulus in each direction"]
