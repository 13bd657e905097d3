"""Mass, time and cost of a mould are those of the printer's card, as for its tiles."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

import shapes
from laywright.errors import LimitError
from laywright.mould.body.body import MouldSettings, build_body
from laywright.mould.body.compensation import Allowances
from laywright.mould.body.plastic import PlasticSettings, estimate_plastic
from laywright.mould.machine import Printer
from laywright.mould.tiles.cuts import PrintPose
from laywright.mould.tiles.joint import JointKind
from laywright.mould.tiles.tiles import TileSettings, cut_tiles
from laywright.surface.face import MouldSide, take_face

UP = (0.0, 0.0, 1.0)
AS_IT_IS = (1.0, 1.0, 1.0)
LARGE = Printer("Large", (900.0, 900.0, 900.0), infill_share=0.15, walls=4, speed=80.0)


def estimate(side, printer=LARGE, scale=AS_IT_IS, **money):
    cube = shapes.box(side, side, side)
    return estimate_plastic((cube,), UP, scale, PlasticSettings(printer=printer, **money))


@given(st.floats(1.0, 300.0), st.floats(0.0, 1.0))
def test_between_infill_and_solid(side, infill):
    printer = replace(LARGE, infill_share=infill)
    found = estimate(side, printer)
    volume = side**3
    assert infill * volume * (1 - 1e-9) <= found.printed <= volume * (1 + 1e-9)
    assert found.mass_g == pytest.approx(printer.mass(volume, 6 * side**2), rel=1e-9)
    assert found.hours == pytest.approx(printer.hours(volume, 6 * side**2, side), rel=1e-9)


def test_a_larger_print_is_a_larger_cube():
    larger, cube = estimate(100.0, scale=(1.01,) * 3), estimate(101.0)
    assert larger.mass_g == pytest.approx(cube.mass_g)
    assert larger.hours == pytest.approx(cube.hours)


def test_there_is_no_cost_without_a_price_and_nothing_without_a_printer():
    free = estimate(100.0)
    assert free.cost is None
    assert free.cost_of(500.0) == ""
    assert free.formula.endswith(" h at 80 mm/s")
    assert "card 'Large'" in free.formula
    paid = estimate(100.0, price=20.0, currency="EUR")
    assert paid.cost == pytest.approx(0.02 * paid.mass_g)
    assert paid.formula == f"{free.formula}; {paid.cost:.2f} EUR"
    assert paid.cost_of(500.0) == "10.00 EUR"
    assert estimate(100.0, None) is None


def test_a_mould_of_one_tile_takes_what_its_tile_takes():
    face = take_face(shapes.hatch(), UP, mould_side=MouldSide.INSIDE)
    settings = MouldSettings(
        plastic=PlasticSettings(printer=LARGE),
        shrinkage=(0.004, 0.004, 0.006),
        allowances=Allowances(expansion=6e-5, warming=20.0),
    )
    body = build_body(face, 0.6, settings)
    plain = TileSettings(joint=JointKind.PLAIN, mark_depth=0.0, pose=PrintPose.BASE_DOWN)
    (tile,) = cut_tiles(body, LARGE, plain).tiles
    assert body.plastic.mass_g == pytest.approx(tile.mass, rel=1e-6)
    assert body.plastic.hours == pytest.approx(tile.hours, rel=1e-6)


def test_pieces_are_printed_by_themselves():
    one, two = (shapes.box(side, side, side) for side in (50.0, 80.0))
    settings = PlasticSettings(printer=LARGE)
    both = estimate_plastic((one, two), UP, AS_IT_IS, settings)
    assert both.hours == pytest.approx(
        math.fsum(estimate(side).hours for side in (50.0, 80.0)), rel=1e-9
    )


def test_a_price_out_of_reason_is_refused():
    for wrong in (float("nan"), -1.0):
        with pytest.raises(LimitError):
            PlasticSettings(price=wrong)
