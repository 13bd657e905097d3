import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.framing import extent, fitted, gathered
from laywright.files.lettering import width_of


def _square(side, *labels):
    corners = np.array([[0, 0], [side, 0], [side, side], [0, side]], float)
    return Drawing("square", (Line("cut", corners, True), *labels), {"cut": Style(0.0)})


def test_extent_of_lines_is_their_bounds():
    assert extent(_square(40.0)).tolist() == [[0, 0], [40, 40]]


def test_extent_holds_letters_also_when_they_are_turned():
    text = "warp this way"
    half = 0.5 * width_of(text, 4.0)
    upright = extent(_square(1.0, Label("text", text, (0.0, 0.0), 4.0, np.pi / 2)))
    assert upright[0, 1] == pytest.approx(-half, abs=0.3)
    level = extent(_square(1.0, Label("text", text, (0.0, 0.0), 4.0)))
    assert level[0, 0] == pytest.approx(-half, abs=0.3)


@given(
    st.floats(1.0, 2000.0),
    st.floats(20.0, 200.0),
    st.floats(20.0, 200.0),
    st.floats(-0.2, 1.2),
    st.floats(0.5, 60.0),
)
def test_a_fitted_drawing_lies_in_its_box(side, width, height, at, letter):
    drawing = fitted(_square(side, Label("t", "Ply 1", (at * side, side), letter)), width, height)
    low, high = extent(drawing)
    assert np.abs(low).max() < 1e-9
    assert (high <= np.array([width, height]) * 1.02 + 1e-9).all()


def test_proportions_stay():
    wide = Drawing(
        "w", (Line("cut", np.array([[0, 0], [600, 0], [600, 200]])),), {"cut": Style(0.0)}
    )
    assert np.ptp(fitted(wide, 90.0, 90.0).bounds, axis=0).tolist() == pytest.approx([90.0, 30.0])


def test_letters_stay_readable_and_do_not_cover_each_other():
    labels = [Label("t", f"line {k}", (500.0, 500.0 - 12.0 * k), 8.0) for k in range(5)]
    small = fitted(_square(1000.0, *labels), 80.0, 80.0)
    kept = [shape for shape in small.shapes if isinstance(shape, Label)]
    assert [label.text for label in kept] == ["line 0", "line 4"]
    assert all(label.height == 2.2 for label in kept)


def test_an_enlarged_title_moves_off_the_line_below_it():
    small = fitted(_square(1000.0, Label("t", "title", (500.0, 1010.0), 8.0)), 80.0, 80.0)
    (title,) = (shape for shape in small.shapes if isinstance(shape, Label))
    top = max(shape.points[:, 1].max() for shape in small.shapes if isinstance(shape, Line))
    assert title.at[1] - 0.5 * title.height >= top


def test_an_empty_drawing_fits():
    assert fitted(Drawing("none", ()), 50.0, 50.0).shapes == ()


def test_gathered_drawings_stand_apart_each_with_its_name():
    drawings = [Drawing(f"ply {k}", _square(100.0 + k).shapes) for k in range(5)]
    picture = gathered("all", drawings)
    boxes = [s.points for s in picture.shapes if isinstance(s, Line)]
    names = [s for s in picture.shapes if isinstance(s, Label)]
    assert [name.text for name in names] == [f"ply {k}" for k in range(5)]
    for k, box in enumerate(boxes):
        middle = box.mean(axis=0)
        assert names[k].at[0] == pytest.approx(middle[0], abs=0.5)
        assert names[k].at[1] < box[:, 1].min()
        for other in boxes[:k]:
            apart = (box.min(axis=0) > other.max(axis=0)) | (other.min(axis=0) > box.max(axis=0))
            assert apart.any()
