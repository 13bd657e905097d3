import dataclasses

import numpy as np

from job_sheet_demo import inputs, station_of, table_of, texts_on
from laywright.files.page import Steps
from laywright.shop.bench.bench_supplies import usual_supplies
from laywright.shop.bench.release_coats import CoatingSettings, plan_coats
from laywright.shop.bench.strips import StripSettings, plan_strips
from laywright.shop.sheet.traveller import make_sheet


def test_an_undercut_stops_the_work_at_the_release_station():
    changed = inputs()
    changed["release"] = dataclasses.replace(changed["release"], undercut_area=312.0)
    text = " ".join(texts_on(station_of(make_sheet(**changed), "Release")))
    assert "312 mm²" in text
    assert "Do not lay up" in text


def test_the_release_station_keeps_the_clock_of_the_coats(made):
    rows = table_of(station_of(made, "Release"), "Wax").rows
    steps = inputs()["bench"].coats.steps
    assert steps == plan_coats(1.8e5, CoatingSettings(), usual_supplies()).steps
    assert [row[1] for row in rows] == [step.what for step in steps]
    assert [float(row[0]) for row in rows] == [round(step.start_minutes) for step in steps]


def test_the_mould_is_measured_against_its_planned_size(made):
    rows = table_of(station_of(made, "Assemble and seal"), "Measured").rows
    assert [row[1] for row in rows] == ["400.1", "180.0", "60.0", "equal"]


def test_filler_primer_and_sealer_stand_with_their_waits(made):
    table = table_of(station_of(made, "Assemble and seal"), "Smooth and seal")
    spans = inputs()["bench"].finish.spans
    assert [row[0] for row in table.rows] == [span.what for span in spans]
    waits = [0.0 if row[2] == "-" else 60.0 * float(row[2]) for row in table.rows]
    assert waits == [span.wait_minutes for span in spans]


def test_tape_is_told_in_strips():
    changed = inputs()
    strips = plan_strips(np.array([[0, 0], [420, 0], [420, 300], [0, 300]]), 0.0, StripSettings())
    changed["bench"] = dataclasses.replace(changed["bench"], strips=strips)
    said = " ".join(texts_on(station_of(make_sheet(**changed), "Release").blocks))
    assert f"{len(strips.lengths)} strips of tape" in said


def test_tiles_are_glued_in_the_planned_order_each_with_a_box():
    changed = inputs()
    order = ("Glue A1 + A2.", "Glue B1 + B2.", "Glue row A1, A2 to row B1, B2.")
    changed["tiles"] = dataclasses.replace(changed["tiles"], assembly=order)
    (steps,) = (
        block
        for block in station_of(make_sheet(**changed), "Assemble and seal").blocks
        if isinstance(block, Steps)
    )
    first = steps.items.index(order[0])
    assert steps.items[first : first + 3] == order
    assert "counts on" in steps.items[first - 1]
