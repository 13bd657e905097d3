"""What remains of the cloth."""

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import Polygon, box

from laywright.cloth.roll.leftover import free_rectangles


def rectangle(low_x, high_x, low_y, high_y):
    return np.array([[low_x, low_y], [high_x, low_y], [high_x, high_y], [low_x, high_y]], float)


def test_the_corner_beside_a_piece_is_found_whole():
    found = free_rectangles([rectangle(0, 395, 0, 695)], 1000.0, 1000.0)
    assert found[0] == (400.0, 1000.0, 0.0, 1000.0)
    assert found[1] == (0.0, 400.0, 700.0, 1000.0)
    assert len(found) == 2


def test_small_rests_and_faults_are_no_offcuts():
    assert free_rectangles([rectangle(0, 905, 0, 1000)], 1000.0, 1000.0) == ()
    faulty = free_rectangles([], 300.0, 300.0, [(105.0, 195.0, 0.0, 300.0)])
    assert faulty == ((0.0, 100.0, 0.0, 300.0), (200.0, 300.0, 0.0, 300.0))
    assert free_rectangles([], 5.0, 5.0) == ()


@given(st.integers(0, 200))
@settings(max_examples=20)
def test_rests_touch_no_piece_and_not_each_other(seed):
    draw = np.random.default_rng(seed)
    pieces = []
    for _ in range(4):
        x, y = draw.uniform(0, 800, 2)
        pieces.append(rectangle(x, x + draw.uniform(20, 200), y, y + draw.uniform(20, 200)))
    found = free_rectangles(pieces, 1000.0, 1000.0)
    shapes = [box(a, low, b, high) for a, b, low, high in found]
    assert all(shape.area >= 100.0**2 for shape in shapes)
    for number, shape in enumerate(shapes):
        assert not any(shape.intersects(Polygon(piece)) for piece in pieces)
        assert all(shape.intersection(other).area == 0.0 for other in shapes[:number])
    assert [s.area for s in shapes] == sorted((s.area for s in shapes), reverse=True)
