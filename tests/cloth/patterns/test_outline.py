"""Outlines of flat patterns."""

import math

import numpy as np
import pytest
import shapely

import shapes
from laywright.cloth.patterns.outline import (
    flat_region,
    notches_of,
    refuse_runaway,
    ring,
    smooth_region,
)
from laywright.errors import GeometryError


def plate_with_hole():
    plate = shapes.graph(lambda x, y: 0.0 * x, (-50, 50), (-30, 30), (50, 30))
    return plate.part(np.abs(plate.centroids).max(axis=1) > 10.0)


def test_region_is_the_area_with_its_hole():
    plate = plate_with_hole()
    region = flat_region(plate, plate.vertices[:, :2], "ply 1")
    assert region.area == pytest.approx(6000.0 - 400.0)
    assert len(region.interiors) == 1
    assert shapely.is_ccw(region.exterior)


def test_a_pattern_over_itself_is_refused():
    strip = shapes.cylinder_patch(10, 7.5, 4, (60, 4))
    turn = np.arctan2(strip.vertices[:, 0], strip.vertices[:, 2])
    around = np.repeat(np.linspace(-3.75, 3.75, 61), 5)
    assert turn.shape == around.shape
    radius = 10.0 + strip.vertices[:, 1]
    coiled = np.stack([radius * np.cos(around), radius * np.sin(around)], axis=1)
    with pytest.raises(GeometryError, match="laps over itself"):
        flat_region(strip, coiled, "ply 1")


def test_smooth_edges_follow_a_round_plate_and_its_round_hole():
    turn = 2.0 * np.pi * np.arange(24) / 24
    ring_points = np.stack([np.cos(turn), np.sin(turn)], axis=1)
    rough = shapely.Polygon(50.0 * ring_points, [20.0 * ring_points])
    smooth = smooth_region(rough, 0.005)
    assert smooth.area == pytest.approx(math.pi * (2500.0 - 400.0), rel=1e-3)
    assert rough.area < 0.99 * smooth.area
    assert len(smooth.interiors) == 1


def test_edges_too_close_to_be_smoothed_stay_as_they_are():
    """The inner edge is an arc within a sliver: smoothed it would cross the straight one."""
    turn = np.linspace(0.0, np.pi, 6)
    bow = np.stack([50.0 * np.cos(turn), 50.0 * np.sin(turn)], axis=1)
    rough = shapely.Polygon(np.concatenate([bow * 1.001, bow[::-1] * 0.9995]))
    smooth = smooth_region(rough, 0.01)
    assert smooth.is_valid


def test_notches_point_inwards_where_the_threads_leave():
    cut = shapely.Polygon([(-40, -20), (60, -20), (60, 30), (-40, 30)])
    notches = notches_of(cut, 6.0)
    assert [n.tolist() for n in notches] == [
        [[60.0, 0.0], [54.0, 0.0]],
        [[0.0, 30.0], [0.0, 24.0]],
        [[-40.0, 0.0], [-34.0, 0.0]],
        [[0.0, -20.0], [0.0, -14.0]],
    ]
    assert notches_of(cut, 0.0) == ()


def test_ring_does_not_repeat_its_first_point():
    points = ring(shapely.Polygon([(0, 0), (1, 0), (0, 1)]).exterior)
    assert points.shape == (3, 2)


def test_a_pattern_far_larger_than_the_part_is_refused():
    plate = plate_with_hole()
    region = flat_region(plate, plate.vertices[:, :2], "ply 1")
    refuse_runaway(region, plate, "ply 1")
    with pytest.raises(GeometryError, match=r"0\.0224 m\^2 of cloth for 0\.0056 m\^2"):
        refuse_runaway(shapely.affinity.scale(region, 2.0, 2.0), plate, "ply 1")
