"""The coupon: closed, small, its holes stepped about the wanted clearance and numbered."""

from __future__ import annotations

import math

import numpy as np
import pytest

from laywright.mould.solid import to_manifold
from laywright.mould.tiles.coupon import joint_coupon
from laywright.mould.tiles.joint import JointKind
from laywright.mould.tiles.joints import sections
from laywright.mould.tiles.tile import TileSettings


def holes(piece, height):
    (section,) = sections(to_manifold(piece.solid, "coupon"), 2, [height])
    return sorted(section.interiors, key=lambda ring: ring.centroid.x)


def test_dowel_holes_step_about_the_clearance():
    (piece,) = joint_coupon(TileSettings().joint_size, 0.8, 0.6)
    assert piece.clearances == (0.05, 0.1, 0.15, 0.2, 0.25)
    assert piece.solid.is_closed
    size = np.ptp(piece.solid.bounds, axis=0)
    assert (size < [80.0, 20.0, 20.0]).all()
    rings = holes(piece, size[2] - 1.0)
    assert len(rings) == 5
    for ring, clearance in zip(rings, piece.clearances, strict=True):
        apothem = ring.centroid.distance(ring)
        assert 2.0 * apothem == pytest.approx(6.0 + 2.0 * clearance, rel=1e-6)
    written = piece.solid.areas[piece.solid.patches == 1]
    assert written.sum() > 5.0


def test_the_tongue_fits_the_middle_groove_with_the_wanted_clearance():
    settings = TileSettings(JointKind.TONGUES, tongue_clearance=0.2)
    bar, key = joint_coupon(settings.joint_size, 0.8, 0.6)
    assert bar.clearances == (0.1, 0.15, 0.2, 0.25, 0.3)
    assert key.solid.is_closed
    top = float(key.solid.bounds[1, 2])
    (section,) = sections(to_manifold(key.solid, "key"), 2, [top - 1.0])
    assert section.area == pytest.approx(10.0**2 / 2.0)
    for ring, clearance in zip(
        holes(bar, float(bar.solid.bounds[1, 2]) - 1.0), bar.clearances, strict=True
    ):
        side = 10.0 / math.sqrt(2.0) + 2.0 * clearance
        assert ring.convex_hull.area == pytest.approx(side**2, rel=1e-6)


def test_flat_joints_need_none_and_no_clearance_is_below_zero():
    assert joint_coupon(TileSettings(JointKind.PLAIN).joint_size, 0.8, 0.6) == ()
    assert joint_coupon(TileSettings(JointKind.CLAMP_EARS).joint_size, 0.8, 0.6) == ()
    (piece,) = joint_coupon(TileSettings(clearance=0.0).joint_size, 0.8, 0.0)
    assert piece.clearances == (0.0, 0.0, 0.0, 0.05, 0.1)
