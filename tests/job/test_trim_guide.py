from dataclasses import replace

import numpy as np
import pytest

import shapes
from job_demo import hatch
from laywright.cloth.plies.draped_ply import DrapedPly
from laywright.errors import GeometryError
from laywright.files.drawing import Label
from laywright.job import files_of, run
from laywright.job.job import JobResult
from laywright.job.trim_guide import trim_paper, trim_ring
from laywright.shop.bench.bench import BenchSettings, TrimGuide
from laywright.surface.distance import distances


@pytest.fixture(scope="module")
def result() -> JobResult:
    return run(hatch())


def test_the_ring_is_closed_and_as_large_as_its_band(result):
    ply, thickness = result.patterns.draped[-1], float(result.laminate.ply_thicknesses[-1])
    ring = trim_ring(ply, thickness, 15.0, 2.5)
    assert ring.is_closed
    assert ring.euler_characteristic == 0
    line = result.sheet.bench.trim.line_mm
    assert ring.volume == pytest.approx(line * 15.0 * 2.5, rel=0.1)
    away = distances(ring.vertices, ply.surface)
    assert away.min() == pytest.approx(0.5 * thickness + 0.2, rel=0.02)
    assert away.max() == pytest.approx(0.5 * thickness + 2.7, rel=0.02)


@pytest.mark.parametrize("triangles", [300, 600])
def test_a_coarse_drape_gives_a_ring_of_the_same_volume(result, triangles):
    job = hatch(bench=BenchSettings(trim_guide=TrimGuide.RING))
    coarse = run(replace(job, patterns=replace(job.patterns, triangles=triangles)), result)
    rings = [
        trim_ring(found.patterns.draped[-1], float(found.laminate.ply_thicknesses[-1]))
        for found in (coarse, result)
    ]
    assert all(ring.is_closed for ring in rings)
    assert rings[0].volume == pytest.approx(rings[1].volume, rel=0.02)
    assert "mould/trim guide (mm).stl" in files_of(coarse)


def test_on_a_flat_plate_the_ring_is_a_frame_of_the_exact_size():
    """100 mm by 60 mm: the frame is what a plate of 70 mm by 30 mm leaves."""
    flat = shapes.graph(lambda x, y: 0.0 * x, (0, 100), (0, 60), (20, 12))
    ring = trim_ring(DrapedPly(flat, None, ()), 0.3, 15.0, 2.5)
    assert ring.euler_characteristic == 0
    assert ring.volume == pytest.approx((100.0 * 60.0 - 70.0 * 30.0) * 2.5, rel=1e-3)
    assert ring.bounds[:, 2] == pytest.approx([0.35, 2.85])


def test_a_hollow_too_tight_for_the_ring_is_said():
    gutter = shapes.cylinder_patch(2.5, np.pi, 80.0).flipped()
    with pytest.raises(GeometryError) as caught:
        trim_ring(DrapedPly(gutter, None, ()), 0.3)
    assert caught.value.where == "trim guide"
    assert "no room for a ring 15 mm wide" in caught.value.found
    assert caught.value.remedy == "take the paper guide"


def test_the_paper_is_the_part_laid_flat(result):
    pattern = result.patterns.patterns[-1]
    drawing = trim_paper(pattern, "Test hatch")
    outline = drawing.shapes[0].points
    assert np.array_equal(outline, pattern.trim)
    assert any("Test hatch" in shape.text for shape in drawing.shapes if isinstance(shape, Label))


@pytest.mark.parametrize(
    ("guide", "name"),
    [
        (TrimGuide.NONE, None),
        (TrimGuide.PAPER, "cloth/trim guide true scale A4.pdf"),
        (TrimGuide.RING, "mould/trim guide (mm).stl"),
    ],
)
def test_only_the_guide_that_was_chosen_is_written(result, guide, name):
    changed = run(hatch(bench=BenchSettings(trim_guide=guide)), result)
    assert {path for path in files_of(changed) if "trim guide" in path} == {name} - {None}
