"""Dowels: inside the seam with a wall on every side, round hole and slot, no two meeting."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st
from manifold3d import Manifold, OpType

import shapes
from laywright.mould.solid import block, side_by_side, to_manifold
from laywright.mould.tiles import joint as meshes
from laywright.mould.tiles.joint import JointKind
from laywright.mould.tiles.joints import JointSize, joints_of, sections
from tile_demo import plan_of

SIZE = JointSize(6.3, 12.0, 2.5, 0.6)


def hole(joint, side):
    return side_by_side([meshes.hole(joint, side)], 7)


def test_sections_of_a_torus_have_their_closed_forms():
    body = to_manifold(shapes.torus(40.0, 12.0, 360, 180), "torus")
    (across,) = sections(body, 2, [0.0])
    assert across.area == pytest.approx(math.pi * (52.0**2 - 28.0**2), rel=1e-3)
    for axis in (0, 1):
        (through,) = sections(body, axis, [0.01])
        assert through.area == pytest.approx(2 * math.pi * 144.0, rel=1e-3)
    assert sections(body, 0, [100.0])[0].is_empty


@settings(max_examples=5, deadline=None)
@given(st.floats(35.0, 65.0), st.floats(30.0, 50.0), st.floats(20.0, 45.0))
def test_holes_keep_their_wall_and_do_not_meet(x, y, z):
    box = shapes.box(100.0, 80.0, 60.0)
    body = to_manifold(box, "box")
    plan = plan_of(box, ((x,), (y,), (z,)))
    diameter, depth, wall, slot = 6.3, 8.0, 2.5, 0.6
    seams = joints_of(body, plan, JointSize(diameter, depth, wall, slot))
    joints = seams.joints
    assert seams.area == pytest.approx(80 * 60 + 100 * 60 + 100 * 80)
    cuts = [hole(joint, side) for joint in joints for side in (-1, 1)]
    grown = [
        hole(replace(joint, diameter=diameter + 2 * (wall - 0.02)), side)
        for joint in joints
        for side in (-1, 1)
    ]
    outside = block(np.full(3, -50.0), np.array([150.0, 130.0, 110.0]), 0) - body
    for wide in grown:
        assert (wide ^ outside).volume() < 1e-6
    whole = Manifold.batch_boolean(cuts, OpType.Add)
    alone = sum(
        (lower + upper).volume() for lower, upper in zip(cuts[::2], cuts[1::2], strict=True)
    )
    assert whole.volume() == pytest.approx(alone, rel=1e-12)


def test_a_round_hole_and_a_slot_per_seam():
    box = shapes.box(100.0, 80.0, 60.0)
    plan = plan_of(box, ((50.0,), (), ()))
    seams = joints_of(to_manifold(box, "box"), plan, SIZE)
    assert seams.bare == ()
    one, other = seams.joints
    assert one.slot == (0.0, 0.0, 0.0)
    way = np.subtract(other.point, one.point)
    np.testing.assert_allclose(other.slot, 0.6 * way / np.linalg.norm(way), atol=1e-12)
    reach = np.hypot(80.0 - SIZE.needed, 60.0 - SIZE.needed)
    assert np.linalg.norm(way) == pytest.approx(reach, rel=1e-9)
    side = math.pi / 32
    circle = 3.15**2 * 32 * math.tan(side)
    assert hole(one, 1).volume() == pytest.approx(12.0 * circle, rel=1e-9)
    assert hole(other, -1).volume() == pytest.approx(12.0 * circle, rel=1e-9)
    assert hole(other, 1).volume() == pytest.approx(12.0 * (circle + 1.2 * 6.3), rel=1e-9)
    bounds = hole(one, -1).bounding_box()
    assert (bounds[0], bounds[3]) == (38.0, 50.0)


def test_a_printed_hole_is_never_narrower_than_wanted():
    box = shapes.box(100.0, 80.0, 60.0)
    plan = plan_of(box, ((50.0,), (), ()))
    joints = joints_of(to_manifold(box, "box"), plan, SIZE).joints
    (section,) = sections(hole(joints[0], -1), 0, [45.0])
    centre = shapely.Point(joints[0].point[1:])
    assert section.boundary.distance(centre) == pytest.approx(3.15, abs=1e-7)


def test_a_thin_seam_is_left_bare():
    plate = shapes.box(100.0, 80.0, 8.0)
    plan = plan_of(plate, ((50.0,), (40.0,), ()))
    seams = joints_of(to_manifold(plate, "plate"), plan, SIZE)
    assert seams.joints == ()
    assert len(seams.bare) == 4
    assert [seam.width for seam in seams.bare] == pytest.approx([8.0] * 4, abs=0.1)
    assert SIZE.needed == pytest.approx(12.52)


def test_tongues_keep_their_wall_too():
    box = shapes.box(100.0, 80.0, 60.0)
    body = to_manifold(box, "box")
    size = JointSize(10.7, 6.25, 2.5, 0.5, JointKind.TONGUES, 0.25)
    seams = joints_of(body, plan_of(box, ((50.0,), (40.0,), ())), size)
    assert len(seams.joints) == 8
    for joint in seams.joints:
        low, high = np.array(hole(joint, 1).bounding_box()).reshape(2, 3)
        assert (low >= 2.5 - 1e-9).all()
        assert (high <= np.array([100.0, 80.0, 60.0]) - 2.5 + 1e-9).all()
