"""Poses: working face without overhang first, layer lines along the pull, a flat bed face."""

from __future__ import annotations

import numpy as np
import pytest

import shapes
from laywright.mould.tiles.cuts import PrintPose
from laywright.mould.tiles.pose import BedFace, stand
from laywright.surface.triangles import Surface

WIDE = (300.0, 300.0, 300.0)
ONE = (1.0, 1.0, 1.0)


def on_top(surface):
    return surface.normals[:, 2] > 0.5


def test_a_block_lies_on_its_side_where_it_may():
    box = shapes.box(80.0, 70.0, 40.0)
    side = stand(box, on_top(box), PrintPose.ANY_SIDE, WIDE, ONE)
    assert side.bed_face is BedFace.SIDE
    assert side.is_along_pull
    assert abs(side.rotation[2, 2]) < 1e-12
    assert (side.overhang, side.unsupported_share) == (0.0, 0.0)
    base = stand(box, on_top(box), PrintPose.BASE_DOWN, WIDE, ONE)
    assert base.bed_face is BedFace.BASE
    assert base.bed_area == pytest.approx(80.0 * 70.0)
    low = stand(box, on_top(box), PrintPose.ANY_SIDE, (300.0, 300.0, 50.0), ONE)
    assert low.bed_face is BedFace.BASE
    assert stand(box, on_top(box), PrintPose.ANY_SIDE, (60.0, 60.0, 300.0), ONE) is None


def test_a_block_that_stands_on_its_head_is_measured_as_it_hangs():
    wedge = shapes.box(60.0, 60.0, 40.0)
    points = wedge.vertices.copy()
    points[(points[:, 2] > 1.0) & (points[:, 0] < 1.0), 0] -= 60.0
    leaning = wedge.moved(points)
    base = stand(leaning, on_top(leaning), PrintPose.BASE_DOWN, WIDE, ONE)
    # the left side leans out by 60 mm over a height of 40 mm
    assert base.overhang == pytest.approx(60.0 * np.hypot(60.0, 40.0))
    assert base.unsupported_share == 0.0


def test_the_working_face_decides_against_a_side_that_lets_it_hang():
    # a ridge of 60 degrees: whichever side it lies on, one flank hangs over
    points = [[0, 0, 0], [60, 0, 0], [60, 80, 0], [0, 80, 0]]
    points += [[30, 0, 52], [30, 80, 52]]
    triangles = [[0, 2, 1], [0, 3, 2], [0, 1, 4], [2, 3, 5], [1, 2, 5], [1, 5, 4], [3, 0, 4]]
    triangles += [[3, 4, 5]]
    ridge = Surface.single(np.array(points, float), np.array(triangles))
    assert ridge.is_closed
    assert ridge.volume > 0.0
    flanks = np.abs(ridge.normals[:, 0]) > 0.5
    found = stand(ridge, flanks, PrintPose.ANY_SIDE, WIDE, ONE)
    assert found.unsupported_share == 0.0
    assert found.bed_face is BedFace.SIDE
    assert abs(found.rotation[2, 1]) == pytest.approx(1.0)  # stands on a gable, along the ridge


def test_the_scale_counts_for_the_room():
    box = shapes.box(100.0, 100.0, 20.0)
    assert stand(box, on_top(box), PrintPose.BASE_DOWN, (100.5, 100.5, 50.0), ONE) is not None
    scale = (1.01, 1.0, 1.0)
    assert stand(box, on_top(box), PrintPose.BASE_DOWN, (100.5, 100.5, 50.0), scale) is None
