"""Outlines of flat patterns."""

import math

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.cloth.outline import cut_outline, flat_region, notches_of, ring
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


@given(st.floats(0.0, 30.0), st.floats(0.01, 0.5))
@settings(max_examples=25)
def test_margin_surrounds_the_region(margin, deviation):
    region = shapely.Polygon([(0, 0), (80, 0), (80, 50), (30, 20), (0, 60)])
    cut = cut_outline(region, margin, deviation)
    assert cut.buffer(deviation + 1e-6).contains(region)
    apart = np.array([region.exterior.distance(shapely.Point(p)) for p in cut.exterior.coords])
    assert apart == pytest.approx(margin, abs=deviation + 0.02 * margin)
    assert cut.area == pytest.approx(
        region.area + margin * region.length + math.pi * margin**2, rel=0.12
    )


def test_holes_close_by_the_margin():
    plate = plate_with_hole()
    region = flat_region(plate, plate.vertices[:, :2], "ply 1")
    assert cut_outline(region, 5.0, 0.01).interiors[0].length == pytest.approx(40.0, abs=0.2)
    assert len(cut_outline(region, 12.0, 0.01).interiors) == 0


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
