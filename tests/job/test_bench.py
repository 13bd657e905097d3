"""What the bench is told about part and mould is what the other rooms found."""

import numpy as np
import pytest

import shapes
from job_demo import hatch
from laywright.job import run
from laywright.job.bench import bench_facts
from laywright.job.links import with_mould_of
from laywright.mould.tiles.printer import load_printers
from laywright.shop.curing.cure_settings import CureSettings
from laywright.shop.plan import ShopSettings


@pytest.fixture(scope="module")
def result():
    return run(hatch())


def test_facts_of_the_hatch(result):
    facts = bench_facts(
        result.face, result.laminate, result.body, result.tiles, result.patterns, result.roll
    )
    area = shapes.hatch().area
    assert facts.part_area == pytest.approx(area, rel=1e-6)
    edge = float(
        np.linalg.norm(
            np.roll(result.body.trim_line, -1, axis=0) - result.body.trim_line, axis=1
        ).sum()
    )
    # The run-off of 25 mm goes once round the edge and turns the corners on its outer side.
    assert edge * 25.0 < facts.mould_area - area < edge * 25.0 + np.pi * 25.0**2 + 0.02 * area
    assert facts.run_off == pytest.approx(25.0, rel=0.2)
    # More than the crown of 900 mm and 600 mm alone, for the rim turns round four corners.
    assert 1.0 / (900.0 * 600.0) < facts.curvature < 1e-4
    assert facts.print_g == pytest.approx(sum(tile.mass for tile in result.tiles.tiles))
    assert facts.plastic == "PETG"
    assert len(facts.cloth_edges) == len(result.patterns.patterns)
    assert all(edge.sides == 1 for edge in facts.cloth_edges)
    plan = result.sheet.bench
    assert plan.trim.line_mm == pytest.approx(edge, rel=1e-3)
    assert plan.trim.holes == ()


def test_the_mould_s_plastic_comes_from_the_printer_unless_it_is_named(result):
    printer = load_printers()["Medium, 220 x 220 x 250 mm"]
    assert with_mould_of(ShopSettings(), printer).cure.mould_softening_c == printer.softening_c
    named = ShopSettings(cure=CureSettings(mould_softening_c=95.0))
    assert with_mould_of(named, printer) is named
    assert result.shop.cure.mould_limit_c == printer.softening_c - 10.0
