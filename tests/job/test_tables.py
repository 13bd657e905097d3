import csv
import io

import pytest

from job_demo import hatch
from laywright.job import run
from laywright.job.tables import table_files


@pytest.fixture(scope="module")
def tables():
    result = run(hatch())
    read = {
        path: list(csv.DictReader(io.StringIO(content.decode("utf-8-sig"))))
        for path, content in table_files(result).items()
    }
    return result, read


def test_masses_of_the_tables_are_those_of_the_plan(tables):
    result, read = tables
    mix = result.shop.mix
    plies = read["tables/plies.csv"]
    assert sum(float(row["cloth (g)"]) for row in plies) == pytest.approx(mix.cloth_g, abs=0.05)
    held = sum(float(row["resin with hardener (g)"]) for row in plies)
    assert held == pytest.approx(mix.laminate_resin_g, abs=0.05)
    cups = read["tables/cups.csv"]
    assert sum(float(row["resin (g)"]) for row in cups) == pytest.approx(mix.resin_g)


def test_clock_cure_and_shopping_are_there_line_by_line(tables):
    result, read = tables
    bench = result.sheet.bench
    assert [r["what"] for r in read["tables/clock.csv"]] == [
        entry.what for entry in bench.timeline.entries
    ]
    assert [r["item"] for r in read["tables/shopping.csv"]] == [
        line.item for line in bench.shopping.lines
    ]
    cures = [float(row["degree of cure (%)"]) for row in read["tables/cure.csv"]]
    assert cures == sorted(cures)
    assert all("(" in head or head in KNOWN for head in read["tables/tiles.csv"][0])


KNOWN = {
    "tile",
    "order of assembly",
    "row",
    "column",
    "layer",
    "on the bed",
    "layer lines along the pull",
}


def test_what_the_mould_allows_for_is_there_with_size_and_place(tables):
    result, read = tables
    rows = read["tables/allowances.csv"]
    assert [row["allowed for"] for row in rows] == [item.name for item in result.body.compensations]
    assert [float(row["size"]) for row in rows] == pytest.approx(
        [item.size for item in result.body.compensations], abs=1e-5
    )
