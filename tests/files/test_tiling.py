import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import LimitError
from laywright.files.drawing import Drawing, Line, Style
from laywright.files.paper import Paper
from laywright.files.tiling import MARGIN, OVERLAP, page_name, tiling


def _rectangle(width, height, x=0.0, y=0.0):
    corners = np.array([[0, 0], [width, 0], [width, height], [0, height]], float) + np.array([x, y])
    return Drawing("r", (Line("cut", corners, True),), {"cut": Style(0.0)})


@given(st.floats(1, 1500), st.floats(1, 1500), st.floats(-500, 500), st.sampled_from(list(Paper)))
def test_windows_cover_the_drawing_and_share_the_overlap(width, height, x, paper):
    plan = tiling(_rectangle(width, height, x, -x), paper)
    assert plan.window == (paper.size[0] - 2 * MARGIN, paper.size[1] - 2 * MARGIN)
    first, last = plan.place(0, 0), plan.place(plan.rows - 1, plan.columns - 1)
    assert first[0] <= x + 1e-9
    assert last[0] + plan.window[0] >= x + width - 1e-9
    assert last[1] + plan.window[1] >= -x + height - 1e-9
    assert plan.place(0, 1)[0] + OVERLAP == pytest.approx(plan.place(0, 0)[0] + plan.window[0])
    assert len(plan.kept) == plan.rows * plan.columns


@pytest.mark.parametrize(("width", "pages"), [(179.9, 1), (180.0, 1), (180.1, 2), (350.0, 2)])
def test_no_page_more_than_needed(width, pages):
    assert tiling(_rectangle(width, 200.0)).columns == pages


def test_pages_without_ink_are_left_out_but_not_those_inside_the_outline():
    corners = np.array([[0, 0], [700, 0], [700, 150], [150, 150], [150, 900], [0, 900]], float)
    plan = tiling(Drawing("L", (Line("cut", corners, True),)))
    assert (plan.rows, plan.columns) == (4, 5)
    assert set(plan.kept) == {(0, c) for c in range(5)} | {(r, 0) for r in range(4)}
    low, high = np.array(plan.corner), np.array(plan.place(3, 4)) + plan.window
    assert (low <= 0).all()
    assert (high >= [700, 900]).all()
    solid = tiling(_rectangle(900, 900))
    assert len(solid.kept) == solid.rows * solid.columns


def test_names_count_rows_from_the_top():
    plan = tiling(_rectangle(400, 8000))
    assert page_name(plan, plan.rows - 1, 0) == "A1"
    assert page_name(plan, plan.rows - 2, 2) == "B3"
    assert page_name(plan, plan.rows - 27, 0) == "AA1"


def test_a_drawing_in_the_wrong_unit_is_refused():
    with pytest.raises(LimitError, match="at most 400 pages"):
        tiling(_rectangle(25000, 25000))
