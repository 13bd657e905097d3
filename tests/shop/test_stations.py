import dataclasses
import re

import pytest

from job_sheet_demo import inputs, texts_on
from laywright.files.page import Picture, Table
from laywright.shop.release_coats import CoatingSettings, plan_coats
from laywright.shop.traveller import make_sheet


@pytest.fixture(scope="module")
def made():
    return make_sheet(**inputs())


def _station(made, title):
    return next(station for station in made.sheet.stations if station.title == title)


def _table(station, start):
    return next(b for b in station.blocks if isinstance(b, Table) and b.heading.startswith(start))


def test_weigh_in_has_the_planned_mass_of_every_piece_and_a_blank(made):
    table = _table(_station(made, "Cut cloth"), "Weigh-in")
    planned = table.columns.index("Planned, g")
    assert [row[planned] for row in table.rows] == ["31.3", "25.0"]
    assert all(row[table.columns.index("Weighed, g")] == "" for row in table.rows)


def test_every_ply_has_a_line_with_its_cup_and_room_to_sign(made):
    table = _table(_station(made, "Lay up"), "Plies")
    assert [row[0] for row in table.rows] == ["1", "2"]
    assert [row[table.columns.index("Cup")] for row in table.rows] == ["1", "1"]
    assert [row[table.columns.index("Angle, °")] for row in table.rows] == ["0", "45"]
    assert all(row[-2:] == ("", "") for row in table.rows)


def test_cups_show_cumulative_scale_readings(made):
    table = _table(_station(made, "Mix"), "Cups")
    assert table.rows[0][:5] == ("1", "1, 2", "46", "60", "69")
    assert _table(_station(made, "Mix"), "The same ratio").rows == tuple(
        (text,) for text in inputs()["shop"].mix.ratio_texts
    )


def test_masses_of_the_record_add_up(made):
    rows = {row[0]: row[1] for row in _table(_station(made, "Record"), "Planned").rows}
    number = {name: float(re.match(r"[\d.]+", text)[0]) for name, text in rows.items()}
    used = number["Resin and hardener mixed"] - number["Mix left over in cups and tools"]
    assert number["Part before trimming"] == pytest.approx(number["Dry cloth"] + used, abs=0.11)
    assert number["Part after trimming"] == pytest.approx(721.0 * 0.136, abs=0.06)
    assert number["Cloth over untrimmed part, by mass"] == 50.0


def test_check_bars_are_left_out_of_pictures_that_are_not_to_scale(made):
    pictures = [b for b in _station(made, "Cut cloth").blocks if isinstance(b, Picture)]
    patterns = pictures[-1].drawing
    assert "cut" in patterns.layers
    assert "check bar" not in patterns.layers


def test_an_undercut_stops_the_work_at_the_release_station():
    changed = inputs()
    changed["release"] = dataclasses.replace(changed["release"], undercut_area=312.0)
    text = " ".join(texts_on(_station(make_sheet(**changed), "Release")))
    assert "312 mm²" in text
    assert "Do not lay up" in text


def test_the_release_station_keeps_the_clock_of_the_coats(made):
    rows = _table(_station(made, "Release"), "Wax").rows
    steps = plan_coats(1.36e5, CoatingSettings()).steps
    assert [row[1] for row in rows] == [step.what for step in steps]
    assert [float(row[0]) for row in rows] == [round(step.start_minutes) for step in steps]


def test_the_mould_is_measured_against_its_planned_size(made):
    rows = _table(_station(made, "Assemble and seal"), "Measured").rows
    assert [row[1] for row in rows] == ["400.1", "180.0", "60.0", "equal"]


def test_the_cure_station_shows_the_limit_of_the_mould(made):
    station = _station(made, "Cure")
    (chart,) = (block.drawing for block in station.blocks if isinstance(block, Picture))
    assert "the mould must stay below this" in {
        shape.text for shape in chart.shapes if hasattr(shape, "text")
    }
    assert "42 °C" in " ".join(texts_on(station))
