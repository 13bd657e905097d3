import numpy as np
import pytest

from laywright.files.drawing import Drawing, Label, Line

SQUARE = np.array([[0, 0], [4, 0], [4, 2], [0, 2]], float)
DRAWING = Drawing(
    "d", (Line("cut", SQUARE, True), Label("text", "ply", (9.0, 1.0)), Line("b", SQUARE))
)


def test_bounds_hold_lines_and_label_places():
    assert DRAWING.bounds.tolist() == [[0, 0], [9, 2]]
    assert Drawing("none", ()).bounds.tolist() == [[0, 0], [0, 0]]


def test_moved_shifts_everything():
    moved = DRAWING.moved(10.0, -1.0)
    assert (moved.bounds - DRAWING.bounds).tolist() == [[10, -1], [10, -1]]
    assert moved.shapes[0].closed


def test_without_leaves_layers_out():
    assert DRAWING.layers == ("cut", "text", "b")
    assert DRAWING.without("b", "text").layers == ("cut",)


def test_points_must_be_pairs():
    with pytest.raises(ValueError, match="shape"):
        Line("cut", np.zeros((3, 3)))
