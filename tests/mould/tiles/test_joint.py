"""Holes and tongues: exact volumes, clearance on every side, section on a corner."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.mould.solid import side_by_side
from laywright.mould.tiles import joint as meshes
from laywright.mould.tiles.joint import Joint, JointKind
from laywright.mould.tiles.joints import sections

CLEAR = 0.25


def hole(joint, side):
    return side_by_side([meshes.hole(joint, side)], 0)


def tongue(joint, face):
    return side_by_side([meshes.tongue(joint, face)], 0)


TONGUE = Joint(
    (0, 0, 0),
    (1, 0, 0),
    0,
    (50.0, 20.0, 15.0),
    10.0 + 2.0 * math.sqrt(2.0) * CLEAR,
    6.25,
    (0.0, 0.0, 0.0),
    JointKind.TONGUES,
    CLEAR,
)


def test_a_tongue_fills_its_groove_but_for_the_clearance():
    solid, groove = tongue(TONGUE, 49.95), hole(TONGUE, 1)
    assert solid.volume() == pytest.approx(50.0 * (6.0 + 0.05 + 0.5), rel=1e-12)
    assert groove.volume() == pytest.approx(TONGUE.diameter**2 / 2.0 * 6.25, rel=1e-12)
    ahead = solid.trim_by_plane((1.0, 0.0, 0.0), 50.0)
    assert (ahead - groove).volume() == pytest.approx(0.0, abs=1e-9)
    (inner,), (outer,) = (sections(part, 0, [53.0]) for part in (solid, groove))
    assert inner.boundary.distance(outer.boundary) == pytest.approx(CLEAR)
    assert groove.bounding_box()[3] - solid.bounding_box()[3] == pytest.approx(CLEAR)
    assert meshes.hole(TONGUE, -1) is None


def test_no_side_of_a_tongue_hangs_over_by_more_than_half_a_right_angle():
    mesh = tongue(TONGUE, 49.95).to_mesh64()
    corners = np.asarray(mesh.vert_properties)[:, :3][np.asarray(mesh.tri_verts).astype(int)]
    normal = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    normal /= np.linalg.norm(normal, axis=1, keepdims=True)
    assert normal[:, 2].min() == pytest.approx(-math.sqrt(0.5))


@given(st.floats(0.0, math.tau), st.floats(0.1, 3.0), st.sampled_from(list(JointKind)[:2]))
def test_a_slot_is_as_much_longer_as_it_is_drawn_out(turn, length, kind):
    drawn = (0.0, length * math.cos(turn), length * math.sin(turn))
    slotted = replace(TONGUE, slot=drawn, kind=kind)
    plain = replace(TONGUE, kind=kind)
    if kind is JointKind.DOWELS:
        width = slotted.diameter
    else:
        across = np.array([-math.sin(turn), math.cos(turn)])
        width = slotted.diameter * np.abs(across).max()
    gain = hole(slotted, 1).volume() - hole(plain, 1).volume()
    assert gain == pytest.approx(2.0 * length * width * slotted.depth, rel=1e-6)
    for side in (-1.0, 1.0):
        moved = hole(plain, 1).translate((0.0, side * drawn[1], side * drawn[2]))
        apart = (moved - hole(slotted, 1)).volume()
        assert apart <= 0.003 * hole(plain, 1).volume()
