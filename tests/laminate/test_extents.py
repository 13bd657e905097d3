"""What a ply covers: read from a text, written as one, refused in one sentence."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError, LaywrightError
from laywright.laminate.extents import Faces, Round, Strip, extent_from_text, extent_text

SIZES = st.floats(0.01, 9000.0).map(lambda size: float(f"{size:.6g}"))
PLACES = st.floats(-5000.0, 5000.0).map(lambda place: round(place, 3) + 0.0)


@given(
    st.one_of(
        st.builds(Round, st.tuples(PLACES, PLACES, PLACES), SIZES),
        st.builds(Strip, SIZES),
        st.lists(st.sampled_from(["Face1", "Face12", "Region3"]), min_size=1).map(
            lambda names: Faces(tuple(names))
        ),
        st.none(),
    )
)
def test_what_is_written_is_read_again(extent):
    assert extent_from_text(extent_text(extent)) == extent


def test_units_and_brackets_are_understood():
    assert extent_from_text(" 2.5 cm round (1, -2.5, 3) mm ") == Round((1.0, -2.5, 3.0), 25.0)
    assert extent_from_text("1 cm along the edge") == Strip(10.0)
    assert extent_from_text("face Rim") == Faces(("Rim",))


@pytest.mark.parametrize(
    "text",
    [
        "somewhere",
        "30 mm round 1, 2",
        "30 mm round 1..2, 3, 4",
        "30 kg round 1, 2, 3",
        "0 mm round 1, 2, 3",
        "-4 mm along the edge",
        "0 mm along the edge",
        "25 mm along the edge of it",
        "nan mm along the edge",
        "faces",
        "faces Face1,, Face2",
    ],
)
def test_what_is_no_extent_is_refused(text):
    with pytest.raises(LaywrightError):
        extent_from_text(text)


def test_a_middle_that_is_no_number_is_refused():
    with pytest.raises(InputError, match="three numbers"):
        Round((0.0, float("inf"), 0.0), 5.0)


class _Ruler:
    def from_point(self, point):
        return np.abs(np.arange(5.0) - point[0])

    def from_edge(self):
        return np.arange(5.0)

    def into_patches(self, names):
        return np.arange(5.0) - len(names)


def test_depths_count_from_the_end_inwards():
    assert Round((1.0, 0.0, 0.0), 2.0).depth(_Ruler()).tolist() == [1, 2, 1, 0, -1]
    assert Strip(3.0).depth(_Ruler()).tolist() == [3, 2, 1, 0, -1]
    assert Faces(("a", "b")).depth(_Ruler()).tolist() == [-2, -1, 0, 1, 2]
