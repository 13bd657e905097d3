"""Undercut places are told apart, measured and placed."""

from __future__ import annotations

import math

import numpy as np
import pytest

import shapes
from laywright.mould.regions import regions_of
from laywright.mould.release import release_of

UP = (0.0, 0.0, 1.0)


def test_area_depth_and_worst_draft_of_a_mushroom():
    report = release_of(shapes.mushroom(256), UP)
    (region,) = report.regions
    assert region.area == pytest.approx(report.undercut_area, rel=1e-9)
    assert region.depth == pytest.approx(40.0)
    assert region.worst_draft == pytest.approx(-math.pi / 2)


def test_places_that_do_not_touch_are_two():
    surface = shapes.box(10, 20, 30)
    tilt = surface.normals @ np.array(UP)
    marked = np.isin(surface.patches, [0, 1]).astype(float)
    regions = regions_of(surface, UP, marked, np.arcsin(tilt))
    assert [region.patch for region in regions] == ["left", "right"]
    assert [region.area for region in regions] == [600.0, 600.0]
    assert {region.point[0] for region in regions} == {0.0, 10.0}
    assert regions_of(surface, UP, 0.0 * marked, np.arcsin(tilt)) == ()
