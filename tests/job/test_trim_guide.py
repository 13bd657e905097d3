import numpy as np
import pytest

from job_demo import hatch
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
