import numpy as np
import pytest

import shapes
from laywright.errors import GeometryError
from laywright.files.solid import Solid


def test_a_transform_turns_and_shifts_points():
    box = shapes.box(1, 2, 3)
    quarter = np.array([[0, -1, 0, 10], [1, 0, 0, 20], [0, 0, 1, 30], [0, 0, 0, 1]], float)
    placed = Solid("box", box.vertices, box.triangles, quarter).placed
    assert placed.min(axis=0).tolist() == [8, 20, 30]
    assert placed.max(axis=0).tolist() == [10, 21, 33]


def test_lost_points_and_wrong_indices_are_refused():
    points = np.eye(3)
    with pytest.raises(GeometryError, match="no numbers"):
        Solid("tile", np.array([[np.nan, 0, 0]]), np.zeros((0, 3)))
    with pytest.raises(GeometryError, match="does not exist"):
        Solid("tile", points, np.array([[0, 1, 3]]))
    with pytest.raises(GeometryError, match="does not exist"):
        Solid("tile", points, np.array([[0, 1, -1]]))
