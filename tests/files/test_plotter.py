"""Whole sheets for a plotter."""

import numpy as np
import pytest

from laywright.errors import InputError, LimitError
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.plotter import LARGEST_SHEET, fits_a_sheet, whole_sheets
from pdf_reading import lines_of, pages_of, texts_of

OUTLINE = np.array([[0, 0], [1520, 0], [1520, 180], [180, 180], [180, 940], [0, 940]], float)


def pattern(shift=0.0, scale=1.0):
    line = Line("cut", OUTLINE * scale + shift, True)
    return Drawing("Cowl ply 1", (line, Label("label", "cut 2", (90.0, 90.0))), {"cut": Style(0.5)})


@pytest.mark.parametrize("shift", [0.0, -700.0, 333.3])
def test_every_line_is_on_the_sheet_at_true_scale(shift):
    (page,) = pages_of(whole_sheets(pattern(shift)))
    size = np.array([float(v) for v in page.mediabox[2:]]) * 25.4 / 72
    lines = lines_of(page)
    assert lines.min() > 10.0
    assert (lines.max(axis=(0, 1)) < size - 10.0).all()
    lengths = sorted(np.linalg.norm(lines[:, 1] - lines[:, 0], axis=1))
    wanted = np.linalg.norm(np.roll(OUTLINE, -1, axis=0) - OUTLINE, axis=1)
    assert lengths == pytest.approx(sorted(wanted), abs=2e-3)


def test_each_drawing_has_a_sheet_of_its_own_size_with_words_on_it():
    content = whole_sheets([pattern(), pattern(scale=0.2)])
    first, second = (float(page.mediabox[2]) for page in pages_of(content))
    assert (first - second) * 25.4 / 72 == pytest.approx(1520.0 * 0.8, abs=1e-2)
    assert all("plot at 100 %" in text and "cut 2" in text for text in texts_of(content))
    assert whole_sheets(pattern()) == whole_sheets(pattern())


def test_what_no_page_can_hold_is_refused():
    large = pattern(scale=4.0)
    assert fits_a_sheet(pattern())
    assert not fits_a_sheet(large)
    with pytest.raises(LimitError, match=f"at most {LARGEST_SHEET:.0f} mm"):
        whole_sheets(large)
    with pytest.raises(InputError, match="no drawing"):
        whole_sheets([])
