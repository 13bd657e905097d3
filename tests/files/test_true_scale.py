import numpy as np
import pytest

from laywright.errors import InputError
from laywright.files.drawing import Drawing, Line, Style
from laywright.files.paper import Paper
from laywright.files.tiling import MARGIN, page_name, tiling
from laywright.files.true_scale import drawing_pages
from pdf_reading import lines_of, pages_of, texts_of

OUTLINE = np.array([[0, 0], [520, 0], [520, 180], [180, 180], [180, 640], [0, 640]], float)
PATTERN = Drawing("Cowl ply 1", (Line("cut", OUTLINE, True),), {"cut": Style(0.5)})


def _horizontal(lines):
    return lines[np.abs(lines[:, 0, 1] - lines[:, 1, 1]) < 1e-6]


@pytest.mark.parametrize("paper", list(Paper))
def test_every_page_has_its_size_and_both_bars_of_100_mm(paper):
    pages = pages_of(drawing_pages(PATTERN, paper))
    assert len(pages) == 1 + len(tiling(PATTERN, paper).kept)
    for page in pages:
        assert [float(v) * 25.4 / 72 for v in page.mediabox[2:]] == pytest.approx(
            paper.size, abs=1e-3
        )
        lines = lines_of(page)
        lengths = np.linalg.norm(lines[:, 1] - lines[:, 0], axis=1)
        bars = lines[np.abs(lengths - 100.0) < 1e-3]
        level = np.abs(bars[:, 0, 1] - bars[:, 1, 1]) < 1e-6
        assert level.any()
        assert (~level).any()
        assert (bars.min(axis=(1, 2)) < MARGIN).any()


@pytest.mark.parametrize("paper", list(Paper))
def test_laid_together_the_pages_give_the_drawing(paper):
    plan = tiling(PATTERN, paper)
    pages = pages_of(drawing_pages(PATTERN, paper))[1:]
    wanted = np.stack([OUTLINE, np.roll(OUTLINE, -1, axis=0)], axis=1)
    for (row, column), page in zip(plan.kept, pages, strict=True):
        lines = lines_of(page) - MARGIN + np.array(plan.place(row, column))
        for line in wanted:
            assert np.abs(lines - line).max(axis=(1, 2)).min() < 2e-3


def test_crosses_of_neighbours_lie_on_each_other():
    plan = tiling(PATTERN)
    pages = pages_of(drawing_pages(PATTERN))[1:]
    crosses = {}
    for (row, column), page in zip(plan.kept, pages, strict=True):
        lines = _horizontal(lines_of(page))
        short = lines[np.abs(np.abs(lines[:, 0, 0] - lines[:, 1, 0]) - 8.0) < 1e-3]
        crosses[row, column] = short.mean(axis=1) - MARGIN + np.array(plan.place(row, column))
    shared = 0
    for (row, column), here in crosses.items():
        assert len(here) == 4
        for other in ((row, column + 1), (row + 1, column)):
            if other in crosses:
                gaps = np.linalg.norm(here[:, None] - crosses[other][None], axis=2)
                assert (gaps < 2e-3).sum() == 2
                shared += 1
    assert shared >= 7


def test_the_map_names_every_page_and_says_how_to_print():
    plan = tiling(PATTERN)
    texts = texts_of(drawing_pages(PATTERN))
    for (row, column), text in zip(plan.kept, texts[1:], strict=True):
        name = page_name(plan, row, column)
        assert name in texts[0]
        assert name in text.splitlines()
        assert "print at 100 %" in text
    assert "measure both bars" in texts[0]
    assert f"{len(plan.kept)} pages" in texts[0]


def test_several_drawings_follow_each_other():
    small = Drawing("small", (Line("cut", OUTLINE * 0.1, True),))
    texts = texts_of(drawing_pages([small, small]))
    assert len(texts) == 4
    assert [("small" in text) for text in texts] == [True] * 4


def test_nothing_is_refused_and_bytes_repeat():
    with pytest.raises(InputError, match="no drawing"):
        drawing_pages([])
    assert drawing_pages(PATTERN) == drawing_pages(PATTERN)
