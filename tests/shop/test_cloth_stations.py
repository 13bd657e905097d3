import pytest

from job_sheet_demo import inputs
from laywright.files.page import Picture, Table
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


def test_check_bars_are_left_out_of_pictures_that_are_not_to_scale(made):
    pictures = [b for b in _station(made, "Cut cloth").blocks if isinstance(b, Picture)]
    patterns = pictures[-1].drawing
    assert "cut" in patterns.layers
    assert "check bar" not in patterns.layers
