"""Joints as the solids that make them: holes in both tiles, tongues in one, ears outside."""

from __future__ import annotations

import numpy as np
import pytest
import shapely

import shapes
from laywright.errors import LimitError
from laywright.mould.solid import to_manifold
from laywright.mould.tiles.cuts import CutPlan
from laywright.mould.tiles.joint import JointKind
from laywright.mould.tiles.seam_joints import joints_for
from laywright.mould.tiles.tile import TileSettings

LOWER, UPPER = (0, 0, 0), (1, 0, 0)


def found(kind, size=(100.0, 60.0, 40.0), **more):
    box = shapes.box(*size)
    low, high = box.bounds.tolist()
    plan = CutPlan(
        np.eye(3), 0.0, tuple(low), tuple(high), ((size[0] / 2,), (), ()), np.eye(3), 0.0
    )
    return joints_for(to_manifold(box, "box"), plan, TileSettings(joint=kind, **more), 0)


def test_dowels_are_holes_in_both_tiles():
    joints = found(JointKind.DOWELS)
    assert set(joints.holes) == {LOWER, UPPER}
    assert joints.lugs == {}
    low, high = np.array(joints.holes[LOWER].bounding_box()).reshape(2, 3)
    assert (low[0], high[0]) == (38.0, 50.0)
    low, high = np.array(joints.holes[UPPER].bounding_box()).reshape(2, 3)
    assert (low[0], high[0]) == (50.0, 62.0)
    assert joints.area == pytest.approx(2400.0)


@pytest.mark.parametrize("gap", [0.0, 0.3])
def test_a_tongue_has_its_clearance_on_every_side_of_the_groove(gap):
    joints = found(JointKind.TONGUES, glue_gap=gap, tongue_clearance=0.25)
    assert set(joints.holes) == {UPPER}
    assert set(joints.lugs) == {LOWER}
    tongue, groove = joints.lugs[LOWER], joints.holes[UPPER]
    beyond = tongue.trim_by_plane((1.0, 0.0, 0.0), 50.0)
    assert (beyond - groove).volume() < 1e-9
    tip, bottom = tongue.bounding_box()[3], groove.bounding_box()[3]
    assert bottom - tip == pytest.approx(0.25)
    flats = [
        shapely.union_all([shapely.Polygon(loop) for loop in turned.slice(53.0).to_polygons()])
        for turned in (solid.transform(_across_x()) for solid in (tongue, groove))
    ]
    assert (
        flats[1].exterior.distance(flats[0]) == pytest.approx(0.25, abs=1e-6)
        if (flats[0].geom_type == "Polygon")
        else all(
            outer.exterior.distance(inner) >= 0.25 - 1e-6
            for outer in flats[1].geoms
            for inner in flats[0].geoms
            if outer.contains(inner)
        )
    )


def _across_x():
    matrix = np.zeros((3, 4))
    matrix[0, 1] = matrix[1, 2] = matrix[2, 0] = 1.0
    return matrix


def test_ears_stand_outside_and_leave_the_glue_gap():
    joints = found(JointKind.CLAMP_EARS, glue_gap=0.2)
    assert set(joints.lugs) == {LOWER, UPPER}
    assert joints.holes == {}
    assert joints.lugs[LOWER].bounding_box()[3] == pytest.approx(49.9)
    assert joints.lugs[UPPER].bounding_box()[0] == pytest.approx(50.1)


def test_flat_seams_have_an_area_and_a_free_face_all_the_same():
    joints = found(JointKind.PLAIN)
    assert (joints.holes, joints.lugs, joints.joints) == ({}, {}, ())
    assert joints.area == pytest.approx(2400.0)
    assert joints.rooms[LOWER, 0].area == pytest.approx(2400.0)


@pytest.mark.parametrize(
    ("kind", "needed"),
    [(JointKind.DOWELS, "12.52 mm"), (JointKind.TONGUES, "16.73 mm")],
)
def test_a_body_thinner_than_its_joints(kind, needed):
    with pytest.raises(LimitError) as caught:
        found(kind, (100.0, 60.0, 8.0))
    assert caught.value.where == f"{kind.value} in the seams"
    assert caught.value.found.startswith("a body 8 mm thick")
    assert caught.value.needed.startswith(needed)
