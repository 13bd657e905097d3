"""Marks stand on hidden faces only, inside the tile; arrows point up and from row to row."""

from __future__ import annotations

import numpy as np
import pytest
import shapely

import shapes
from laywright.mould.body.body import build_body
from laywright.mould.solid import to_manifold
from laywright.mould.tiles.cells import places
from laywright.mould.tiles.cuts import CutPlan
from laywright.mould.tiles.joint import JointKind
from laywright.mould.tiles.joints import seams_of, sections
from laywright.mould.tiles.printer import Printer
from laywright.mould.tiles.tile_marks import marks_of, pull_arrows
from laywright.mould.tiles.tiles import TileSettings, cut_tiles
from laywright.surface.face import MouldSide, take_face

DEPTH, GAP, PEN = 0.6, 0.2, 0.8


@pytest.fixture(scope="module")
def block():
    box = shapes.box(90.0, 80.0, 60.0)
    low, high = box.bounds.tolist()
    cuts = ((45.0,), (40.0,), (30.0,))
    plan = CutPlan(np.eye(3), 0.0, tuple(low), tuple(high), cuts, np.eye(3), 0.0)
    return to_manifold(box, "box"), plan


def test_every_underside_carries_its_mark_as_deep_as_was_asked_for(block):
    whole, plan = block
    marks = marks_of(whole, plan, DEPTH, GAP, None, PEN, 0)
    assert set(marks) == set(places(plan))
    for place, mark in marks.items():
        low, high = np.array(mark.solid.bounding_box()).reshape(2, 3)
        under = 0.0 if place[2] == 0 else 30.0 + GAP / 2.0
        assert high[2] == pytest.approx(under + DEPTH)
        inside = (mark.solid ^ whole).volume()
        assert mark.solid.volume() - mark.outside == pytest.approx(inside, rel=1e-9)
        corner = plan.cell(place)
        assert (low[:2] > corner[0, :2] + 1.0).all()
        assert (high[:2] < corner[1, :2] - 1.0).all()
    assert marks_of(whole, plan, 0.0, GAP, None, PEN, 0) == {}


def test_an_arrow_along_the_pull_in_a_seam_face_of_every_tile(block):
    whole, plan = block
    arrows = pull_arrows(seams_of(whole, plan, DEPTH).rooms, plan, DEPTH, GAP, PEN, 0)
    assert set(arrows) == set(places(plan))
    for place, arrow in arrows.items():
        box = np.array(arrow.bounding_box()).reshape(2, 3)
        deep = np.ptp(box, axis=0)
        axis = int(np.argmin(deep))
        assert axis in (0, 1)
        assert deep[axis] == pytest.approx(DEPTH + GAP / 2.0)
        assert np.isclose(box[:, axis], plan.cuts[axis][0]).any()
        corner = plan.cell(place)
        assert (box[0] >= corner[0] - 1e-9).all()
        assert (box[1] <= corner[1] + 1e-9).all()
        # the head is the upper half: wider there, as seen in the face
        (flat,) = sections(arrow, axis, [box[:, axis].mean()])
        points = shapely.get_coordinates(flat)
        up = points[:, 1] if axis == 0 else points[:, 0]
        across = points[:, 0] if axis == 0 else points[:, 1]
        middle = 0.5 * (up.min() + up.max())
        assert np.ptp(across[up > middle]) > 3.0 * np.ptp(across[up < middle])


@pytest.mark.parametrize("kind", list(JointKind))
def test_nothing_is_engraved_where_cloth_lies_and_nothing_shows_through(kind):
    face = take_face(shapes.hatch(spacing=20.0), (0, 0, 1), mould_side=MouldSide.INSIDE)
    body = build_body(face, 1.0)
    tiles = cut_tiles(body, Printer("P", (180.0,) * 3), TileSettings(joint=kind))
    working = len(body.working.patch_names)
    area = sum(t.solid.areas[t.solid.patches < working].sum() for t in tiles.tiles)
    bare = cut_tiles(body, Printer("P", (180.0,) * 3), TileSettings(joint=kind, mark_depth=0.0))
    without = sum(t.solid.areas[t.solid.patches < working].sum() for t in bare.tiles)
    assert tiles.cuts == bare.cuts
    assert area == pytest.approx(without, rel=1e-9)
    for tile in tiles.tiles:
        mark = tile.solid.patch_names.index("mark")
        normals = tile.solid.normals[tile.solid.patches == mark]
        floors = {tuple(np.round(n).astype(int)) for n in normals if np.abs(n).max() > 0.999}
        assert (0, 0, -1) in floors, tile.name
        assert any(n[2] == 0 for n in floors), tile.name
