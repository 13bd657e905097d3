import re

import pytest

from job_sheet_demo import inputs, texts_on
from laywright.files.page import Picture, Table
from laywright.shop.traveller import make_sheet


@pytest.fixture(scope="module")
def made():
    return make_sheet(**inputs())


def _station(made, title):
    return next(station for station in made.sheet.stations if station.title == title)


def _table(station, start):
    return next(b for b in station.blocks if isinstance(b, Table) and b.heading.startswith(start))


def test_masses_of_the_record_add_up(made):
    rows = {row[0]: row[1] for row in _table(_station(made, "Record"), "Planned").rows}
    number = {name: float(re.match(r"[\d.]+", text)[0]) for name, text in rows.items()}
    used = number["Resin and hardener mixed"] - number["Mix left over in cups and tools"]
    assert number["Part before trimming"] == pytest.approx(number["Dry cloth"] + used, abs=0.11)
    assert number["Part after trimming"] == pytest.approx(721.0 * 0.136, abs=0.06)
    assert number["Cloth over untrimmed part, by mass"] == 50.0


def test_the_cure_station_shows_the_limit_of_the_mould(made):
    station = _station(made, "Cure")
    (chart,) = (block.drawing for block in station.blocks if isinstance(block, Picture))
    assert "the mould must stay below this" in {
        shape.text for shape in chart.shapes if hasattr(shape, "text")
    }
    assert "60 °C" in " ".join(texts_on(station))
