from __future__ import annotations

import dataclasses

from job_sheet_demo import inputs, texts_on
from laywright.files.page import Table
from laywright.shop.bench.shopping import list_shopping
from laywright.shop.bench.timeline import clock_text
from laywright.shop.sheet.plan_stations import clock_station, shopping_station

BENCH = inputs()["bench"]


def rows(station) -> tuple[tuple[str, ...], ...]:
    return next(block for block in station.blocks if isinstance(block, Table)).rows


def test_the_clock_has_a_line_for_every_step_and_says_when_all_is_done():
    station = clock_station(BENCH.timeline)
    assert [row[1] for row in rows(station)] == [entry.what for entry in BENCH.timeline.entries]
    assert [row[0] for row in rows(station)] == [
        clock_text(entry.start_minutes) for entry in BENCH.timeline.entries
    ]
    assert f"Finished on {BENCH.timeline.finish}" in " ".join(texts_on(station.blocks))


def test_what_falls_into_the_night_is_said():
    late = dataclasses.replace(BENCH.timeline, remarks=("knife: at night.",))
    assert "Note: knife: at night." in texts_on(clock_station(late).blocks)


def test_the_list_shows_prices_where_there_are_some():
    station = shopping_station(BENCH.shopping)
    found = {row[0]: row for row in rows(station)}
    assert found["Resin"][3] == "30.00 per kg"
    assert found["Peel ply"][3:5] == ("-", "-")
    said = " ".join(texts_on(station.blocks))
    assert f"{BENCH.shopping.total:.2f} EUR in all" in said
    assert f"{len(BENCH.shopping.unpriced)} lines have no price yet" in said


def test_without_any_price_there_is_no_cost():
    bare = list_shopping((), (), 1, "")
    assert "No prices yet" in " ".join(texts_on(shopping_station(bare).blocks))
