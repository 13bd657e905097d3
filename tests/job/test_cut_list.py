"""The cut list and where patterns land, for sheet and spreadsheet."""

import csv
import io

import numpy as np
import pytest

from cloth_demo import TWILL, hatch_patterns
from laywright.cloth.roll.roll import Offcut, RollSettings, placed_outline, plan_roll
from laywright.job.cut_list import cut_lines, cut_table, landing_lines, roll_lines

PLAN = plan_roll(hatch_patterns(), RollSettings(seconds=0.0, offcuts=(Offcut(TWILL, 600, 450),)))


def test_pieces_stand_in_the_order_of_cutting_with_place_and_size():
    patterns = hatch_patterns().patterns
    for layout in PLAN.layouts:
        found = cut_lines(layout, patterns)
        assert [line.number for line in found] == list(range(1, len(found) + 1))
        starts = [round(line.at[0]) for line in found]
        assert starts == sorted(starts)
        for line, place in zip(found, layout.placements, strict=True):
            outline = placed_outline(patterns[place.pattern], place)
            assert np.array(line.at) + line.size == pytest.approx(outline.max(axis=0))


def test_offcuts_come_before_rolls():
    lines = roll_lines(PLAN, hatch_patterns().patterns)
    assert [line.cloth for line in lines] == [f"offcut 1 of {TWILL}", TWILL]
    assert lines[0].to_buy == 0.0
    assert lines[1].to_buy >= lines[1].length
    assert sum(len(line.pieces) for line in lines) == 3
    assert all(0.0 < line.tape[1] <= 1.01 * line.tape[0] for line in lines)
    assert not {"left over", "check bar", "warp"} & set(lines[1].drawing.layers)


def test_the_table_reads_back():
    text = cut_table(PLAN, hatch_patterns().patterns).decode("utf-8-sig")
    rows = list(csv.DictReader(io.StringIO(text)))
    assert len(rows) == 3
    assert {row["face"] for row in rows} == {"up"}
    assert {int(row["ply"]) for row in rows} == {1, 2, 3}
    arrows = {row["warp arrow"] for row in rows}
    assert arrows <= {"away from the free end", "back to the free end"}
    assert float(rows[0]["begins along the warp (mm)"]) >= 0.0


def test_landings_are_told_in_numbers():
    lines = landing_lines(hatch_patterns(), (0.0, 0.0, 1.0))
    assert [line.names for line in lines] == ["ply 1, ply 3", "ply 2"]
    assert dict(lines[0].notches)["warp ahead"][0] > 100.0
