import re

import pytest

from job_sheet_demo import inputs, station_of, table_of, texts_on
from laywright.files.drawing import Label
from laywright.files.framing import fitted
from laywright.files.page import Picture
from laywright.laminate.materials import load_materials
from laywright.shop.curing.cure import plan_cure
from laywright.shop.curing.cure_settings import CureSettings
from laywright.shop.sheet.finish_stations import cure_station


def test_masses_of_the_record_add_up(made):
    rows = {row[0]: row[1] for row in table_of(station_of(made, "Record"), "Planned").rows}
    number = {name: float(re.match(r"[\d.]+", text)[0]) for name, text in rows.items()}
    used = number["Resin and hardener mixed"] - number["Mix left over in cups and tools"]
    assert number["Part before trimming"] == pytest.approx(number["Dry cloth"] + used, abs=0.11)
    assert number["Part after trimming"] == pytest.approx(721.0 * 0.136, abs=0.06)
    assert number["Cloth over untrimmed part, by mass"] == 50.0


def test_the_cure_station_shows_the_limit_of_the_mould(made):
    station = station_of(made, "Cure")
    (chart,) = (block.drawing for block in station.blocks if isinstance(block, Picture))
    assert "the mould must stay below this" in {
        shape.text for shape in chart.shapes if hasattr(shape, "text")
    }
    assert "60 °C" in " ".join(texts_on(station))


def test_the_cure_station_tells_cure_and_softening_at_every_moment(made):
    table = table_of(station_of(made, "Cure"), "Times")
    events = inputs()["shop"].cure.events
    assert [row[0] for row in table.rows] == [event.what for event in events]
    assert [float(row[1]) for row in table.rows] == [round(event.hours, 1) for event in events]
    assert [float(row[2]) for row in table.rows] == [round(100.0 * e.cure) for e in events]
    said = " ".join(texts_on(station_of(made, "Cure").blocks))
    assert "271 °C" in said
    assert "upper bounds, no forecast" in said


def test_the_trim_station_has_the_line_and_every_hole(made):
    station = station_of(made, "Trim")
    assert "1.44 m long" in " ".join(texts_on(station.blocks))
    (row,) = table_of(station, "Holes").rows
    assert row[0] == "H1"
    assert row[1] == "200.0, 150.0, 50.0"
    assert row[2] == "12.0"


def test_the_record_says_what_good_work_weighs(made):
    rows = {row[0]: row[1] for row in table_of(station_of(made, "Record"), "Planned").rows}
    whole = float(rows["Part before trimming"].split()[0])
    low, _, high, _ = rows["Good work by hand"].split()
    assert float(low) == pytest.approx(0.91 * whole, abs=0.6)
    assert float(high) == pytest.approx(1.09 * whole, abs=0.6)


@pytest.mark.parametrize("post_cure", [None, 60.0])
@pytest.mark.parametrize("degrees", [18.0, 21.0, 27.0])
def test_every_moment_keeps_its_name_on_paper(post_cure, degrees):
    """What is left out of a chart that is too small would be missed at the oven."""
    resin = load_materials().resin("Laminating epoxy, slow hardener")
    settings = CureSettings(degrees, 70.0, post_cure)
    station = cure_station(plan_cure(resin, settings, 0.5))
    (picture,) = (block for block in station.blocks if isinstance(block, Picture))
    for wide in (184.0, 190.0):
        shown = fitted(picture.drawing, wide, picture.height)
        names = {shape.text for shape in shown.shapes if isinstance(shape, Label)}
        assert {"gelled", "too hard for a knife", "may leave the mould"} <= names
