"""Strips are as wide as the margin says; mending takes hairlines away and nothing else."""

from __future__ import annotations

import math

import numpy as np
import pytest
import shapely

from laywright.cloth.cuts.strips import HAIRLINE, healed, margin_strip


def test_a_strip_is_a_box_with_two_half_discs():
    strip = margin_strip(np.array([[0.0, 0.0], [100.0, 0.0]]), 15.0)
    sides = 32
    discs = 0.5 * sides * 15.0**2 * math.sin(2.0 * math.pi / sides)
    assert strip.area == pytest.approx(100.0 * 30.0 + discs, rel=1e-9)


def test_a_gap_of_a_hairline_is_closed_and_a_wider_one_stays():
    left = shapely.box(0.0, 0.0, 10.0, 10.0)
    close = shapely.box(10.0 + 1.5 * HAIRLINE, 0.0, 20.0, 10.0)
    apart = shapely.box(10.0 + 3.0 * HAIRLINE, 0.0, 20.0, 10.0)
    assert healed(shapely.union(left, close)).area == pytest.approx(200.0, rel=1e-9)
    kept = shapely.union(left, apart)
    assert len(shapely.get_parts(healed(kept))) == 2
    assert healed(kept).area == pytest.approx(kept.area, rel=1e-9)
