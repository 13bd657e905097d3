"""Reading a draped cloth between its vertices."""

import math

import numpy as np
import pytest

import shapes
from cloth.drape.reading import read_cloth, yarn_directions

P = 100.0
DISH = shapes.graph(lambda x, y: (x * x + y * y) / (2 * P), (-80, 80), (-80, 80), (40, 40))


def arc(t):
    return P / 2 * (t / P * np.sqrt(1 + (t / P) ** 2) + np.arcsinh(t / P))


NET = np.stack([arc(DISH.vertices[:, 0]), arc(DISH.vertices[:, 1])], axis=1)


def test_position_and_shear_of_the_known_net():
    """On the paraboloid the net is known (check DRP-06)."""
    x, y = np.array([13.0, -41.5, 60.2]), np.array([7.7, 22.0, 60.2])
    reading = read_cloth(DISH, NET, np.stack([arc(x), arc(y)], axis=1))
    expected = np.stack([x, y, (x * x + y * y) / (2 * P)], axis=1)
    assert reading.points == pytest.approx(expected, abs=2e-3)
    exact = np.arcsin(x * y / P**2 / np.sqrt((1 + (x / P) ** 2) * (1 + (y / P) ** 2)))
    assert np.degrees(reading.shear) == pytest.approx(np.degrees(exact), abs=0.05)


def test_yarns_follow_the_parabolas():
    warp, weft = yarn_directions(DISH, NET)
    x, y = DISH.vertices[:, 0] / P, DISH.vertices[:, 1] / P
    inner = np.maximum(np.abs(x), np.abs(y)) < 0.7
    along = np.stack([np.ones_like(x), 0 * x, x], axis=1) / np.sqrt(1 + x * x)[:, None]
    across = np.stack([0 * y, np.ones_like(y), y], axis=1) / np.sqrt(1 + y * y)[:, None]
    assert np.abs(warp - along)[inner].max() < 2e-3
    assert np.abs(weft - across)[inner].max() < 2e-3


def test_yarns_of_a_turned_cloth_turn_with_it():
    plate = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (6, 6))
    c, s = math.cos(0.4), math.sin(0.4)
    warp, weft = yarn_directions(plate, plate.vertices[:, :2] @ np.array([[c, -s], [s, c]]))
    assert warp == pytest.approx(np.broadcast_to([c, s, 0.0], warp.shape), abs=1e-7)
    assert weft == pytest.approx(np.broadcast_to([-s, c, 0.0], weft.shape), abs=1e-7)
