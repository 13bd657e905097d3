"""Smooth lines through the corners of a polygon."""

import math

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely.geometry import LinearRing, Point

from laywright.cloth.patterns.smooth_line import smooth_line, smooth_run


def circle(radius, count, seed=None):
    turn = 2.0 * np.pi * np.arange(count) / count
    if seed is not None:
        turn += np.random.default_rng(seed).uniform(-0.3, 0.3, count) * 2.0 * np.pi / count
    return radius * np.stack([np.cos(turn), np.sin(turn)], axis=1)


def off(line, radius):
    middles = 0.5 * (line + np.roll(line, -1, axis=0))
    return float(np.abs(np.hypot(*np.concatenate([line, middles]).T) - radius).max())


@pytest.mark.parametrize("count", [12, 24, 48])
def test_a_circle_is_met_exactly(count):
    """The sagitta of its polygon would be r (1 - cos(pi / n)), 2 mm for 12 sides."""
    line = smooth_line(circle(60.0, count), 1e-3)
    assert np.abs(np.hypot(*line.T) - 60.0).max() < 1e-9
    assert off(line, 60.0) < 1e-3


def test_an_ellipse_converges_faster_than_its_polygon():
    worst = []
    for count in (24, 48, 96):
        points = circle(60.0, count) * np.array([1.5, 1.0])
        line = smooth_line(points, 1e-5) / np.array([1.5, 1.0])
        polygon = points / np.array([1.5, 1.0])
        worst.append((off(line, 60.0), off(polygon, 60.0)))
    assert all(ours < 0.25 * plain for ours, plain in worst)
    assert math.log2(worst[0][0] / worst[2][0]) / 2.0 > 2.7


@given(st.integers(0, 1000), st.floats(0.01, 0.5))
def test_every_given_point_stays_on_the_line(seed, deviation):
    points = circle(60.0, 24, seed)
    line = smooth_line(points, deviation)
    ring = LinearRing(line)
    assert max(ring.distance(Point(p)) for p in points) < 1e-9
    assert off(line, 60.0) < off(points, 60.0) + 1e-9
    assert shapely.Polygon(line).is_valid


def test_sharp_corners_and_straight_sides_stay_as_they_are():
    square = np.array([[0, 0], [50, 0], [100, 0], [100, 100], [0, 100]], float)
    assert smooth_line(square, 0.05) == pytest.approx(square)


@pytest.mark.parametrize("pieces", [1, 8])
def test_a_straight_side_that_runs_into_a_round_corner_stays_straight(pieces):
    round_corner = circle(20.0, 48)[:13] + np.array([80.0, 30.0])
    low = np.stack([np.linspace(0.0, 100.0, pieces + 1), np.zeros(pieces + 1)], axis=1)
    outline = np.concatenate([low, round_corner, [[0.0, 50.0]]])
    line = smooth_line(outline, 0.01)
    assert shapely.hausdorff_distance(LinearRing(line), LinearRing(outline)) < 0.1
    assert line[:, 1].min() == pytest.approx(0.0, abs=1e-9)
    assert line[:, 0].max() <= 100.0 + 1e-9


def test_a_half_round_end_keeps_its_corners():
    turn = np.linspace(-np.pi / 2, np.pi / 2, 13)
    end = np.stack([30.0 * np.cos(turn), 30.0 * np.sin(turn)], axis=1)
    line = smooth_line(end, 1e-4)
    area = shapely.Polygon(line).area
    assert area == pytest.approx(0.5 * math.pi * 900.0, rel=1e-4)
    assert line[:, 0].min() == pytest.approx(0.0, abs=1e-9)


def test_a_run_keeps_its_ends_and_meets_its_arc():
    """An arc of 1.5 rad drawn by 9 sides; its smooth line has the arc's length."""
    turn = np.linspace(0.2, 1.7, 10)
    points = 80.0 * np.stack([np.cos(turn), np.sin(turn)], axis=1)
    line = smooth_run(points, 1e-3)
    assert line[[0, -1]] == pytest.approx(points[[0, -1]])
    middles = 0.5 * (line[1:] + line[:-1])
    assert np.abs(np.hypot(*np.concatenate([line, middles]).T) - 80.0).max() < 1e-3
    assert shapely.LineString(line).length == pytest.approx(80.0 * 1.5, rel=2e-5)
    straight = np.stack([np.linspace(0.0, 90.0, 7), np.zeros(7)], axis=1)
    assert smooth_run(straight, 1e-3) == pytest.approx(straight)
