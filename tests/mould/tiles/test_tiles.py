"""Print tiles: closed, within the printer, and the account of volumes balances."""

from __future__ import annotations

import math

import numpy as np
import pytest

import shapes
from laywright import values
from laywright.errors import LimitError
from laywright.mould.body.body import MouldSettings, build_body
from laywright.mould.tiles.cuts import PrintPose
from laywright.mould.tiles.joint import JointKind
from laywright.mould.tiles.printer import Printer, load_printers
from laywright.mould.tiles.tiles import TileSet, TileSettings, cut_tiles
from laywright.surface.face import MouldSide, take_face

MEDIUM = load_printers()["Medium, 220 x 220 x 250 mm"]
SMALL = load_printers()["Small, 180 mm"]
PLAIN = TileSettings(dowel_diameter=0.0, glue_gap=0.0, mark_depth=0.0)


def body_of(side=MouldSide.INSIDE, spacing=14.0, pull=None, **settings):
    pull = pull or ((0, 0, 1) if side is MouldSide.INSIDE else (0, 0, -1))
    face = take_face(shapes.hatch(spacing=spacing), pull, mould_side=side)
    return build_body(face, 1.0, MouldSettings(**settings))


@pytest.fixture(scope="module")
def plug():
    return body_of()


@pytest.mark.parametrize("side", list(MouldSide))
@pytest.mark.parametrize("printer", [SMALL, MEDIUM])
def test_closed_fitting_and_balanced(side, printer):
    body = body_of(side)
    tiles = cut_tiles(body, printer)
    assert abs(tiles.volume_error) < 1e-9
    for tile in tiles.tiles:
        assert tile.solid.is_closed
        printed = tile.printed()
        assert printed.is_closed
        assert printed.volume == pytest.approx(tile.volume, rel=1e-9)
        low, high = printed.bounds
        np.testing.assert_allclose(high - low, tile.size, atol=1e-9)
        border = printer.border
        assert (low[:2] >= border - 1e-6).all()
        assert (high[:2] <= np.array(printer.volume[:2]) - border + 1e-6).all()
        assert low[2] == pytest.approx(0.0, abs=1e-9)
        assert high[2] <= printer.volume[2]
        bed = printed.areas[(printed.normals[:, 2] < -0.999) & (printed.centroids[:, 2] < 1e-6)]
        assert bed.sum() > 100.0


def test_plain_cuts_add_up_to_the_body(plug):
    tiles = cut_tiles(plug, SMALL, PLAIN)
    assert sum(tile.volume for tile in tiles.tiles) == pytest.approx(plug.volume, rel=1e-9)
    assert tiles.joints == ()
    seam = tiles.tiles[0].solid.patch_names.index("seam")
    cut_area = sum(tile.solid.areas[tile.solid.patches == seam].sum() for tile in tiles.tiles)
    assert cut_area == pytest.approx(2.0 * tiles.glue_area, rel=1e-6)


def test_what_is_cut_away_is_dowels_marks_and_glue(plug):
    plain = sum(tile.volume for tile in cut_tiles(plug, SMALL, PLAIN).tiles)
    glued = cut_tiles(plug, SMALL, TileSettings(dowel_diameter=0.0, glue_gap=0.2, mark_depth=0.0))
    gone = plain - sum(tile.volume for tile in glued.tiles)
    assert gone == pytest.approx(0.2 * glued.glue_area, rel=2e-3)
    assert glued.glue_gaps == tuple(0.2 * len(cuts) for cuts in glued.cuts)
    doweled = cut_tiles(plug, SMALL, TileSettings(glue_gap=0.0, mark_depth=0.0))
    gone = plain - sum(tile.volume for tile in doweled.tiles)
    circle = 3.15**2 * 32 * math.tan(math.pi / 32)
    slots = sum(any(joint.slot) for joint in doweled.joints)
    wanted = len(doweled.joints) * 24.0 * circle + slots * 12.0 * 1.2 * 6.3
    assert gone == pytest.approx(wanted, rel=1e-6)


def test_working_area_goes_to_the_tiles_whole(plug):
    tiles = cut_tiles(plug, SMALL, PLAIN)
    area = sum(
        tile.solid.areas[tile.solid.patches < len(plug.working.patch_names)].sum()
        for tile in tiles.tiles
    )
    assert area == pytest.approx(plug.working.area, rel=1e-7)


def test_names_follow_rows_and_columns(plug):
    tiles = cut_tiles(plug, SMALL)
    columns, rows, layers = tiles.plan.counts
    assert layers == 1
    names = [f"{chr(65 + row)}{column + 1}" for row in range(rows) for column in range(columns)]
    assert [tile.name for tile in tiles.tiles] == names
    centres = np.array([tile.solid.centroids.mean(axis=0) for tile in tiles.tiles])
    along = centres @ tiles.plan.axes.T
    for tile, centre in zip(tiles.tiles, along, strict=True):
        low, high = tiles.plan.cell((tile.column, tile.row, tile.layer))
        assert (centre > low).all()
        assert (centre < high).all()


def test_layers_where_the_mould_is_too_high():
    wall = np.linspace(0.0, 120.0, 9)[:, None] * [0.1, -1.0]
    profile = np.concatenate([[[0, 0], [20, 0]], wall + np.array([40, 0])])
    body = build_body(
        take_face(shapes.dish(profile, 48), (0, 0, 1), mould_side=MouldSide.INSIDE), 0.0
    )
    low = Printer("Low", (250.0, 250.0, 100.0))
    tiles = cut_tiles(body, low)
    assert tiles.plan.counts == (1, 1, 2)
    assert [tile.name for tile in tiles.tiles] == ["A1-1", "A1-2"]
    assert abs(tiles.volume_error) < 1e-9
    assert all(tile.size[2] <= 100.0 for tile in tiles.tiles)
    assert {joint.axis for joint in tiles.joints} == {2}
    upright = cut_tiles(body, low, TileSettings(pose=PrintPose.ANY_SIDE))
    assert len(upright.tiles) <= len(tiles.tiles)


def test_any_pull_direction():
    body = body_of(spacing=30.0)
    turn = np.linalg.qr(np.random.default_rng(2).normal(size=(3, 3)))[0]
    turn *= np.linalg.det(turn)
    surface = shapes.hatch(spacing=30.0)
    moved = surface.moved(surface.vertices @ turn.T)
    other = build_body(
        take_face(moved, tuple(turn @ np.array([0.0, 0.0, 1.0])), mould_side=MouldSide.INSIDE), 1.0
    )
    one, two = cut_tiles(body, SMALL), cut_tiles(other, SMALL)
    assert len(one.tiles) == len(two.tiles)
    assert abs(two.volume_error) < 1e-9
    assert all(tile.solid.is_closed for tile in two.tiles)


def test_shrinkage_scales_the_print_in_the_printers_axes():
    plain, shrunk = body_of(), body_of(shrinkage=(0.01, 0.0, 0.02))
    one, other = cut_tiles(plain, MEDIUM), cut_tiles(shrunk, MEDIUM)
    for a, b in zip(one.tiles, other.tiles, strict=True):
        assert b.volume == pytest.approx(a.volume, rel=0.2)
        assert b.printed().volume == pytest.approx(b.volume / 0.99 / 0.98, rel=1e-9)
        assert (np.array(b.size) <= np.array(MEDIUM.usable) + 1e-6).all()


def test_stored_and_stamped(plug):
    tiles = cut_tiles(plug, MEDIUM)
    assert tiles.digest == cut_tiles.digest(plug, MEDIUM)
    assert tiles.digest != cut_tiles.digest(plug, SMALL)
    stored = values.pack(tiles)
    assert values.pack(values.unpack(TileSet, stored)) == stored


def test_printers_and_settings_that_cannot_work(plug):
    with pytest.raises(LimitError) as caught:
        cut_tiles(plug, Printer("Tiny", (18.0, 18.0, 18.0), border=4.0))
    assert caught.value.where == "printer Tiny"
    assert caught.value.found == "10 mm of usable room"
    assert caught.value.needed.startswith("at least 30 mm")
    thick = TileSettings(dowel_diameter=40.0)
    with pytest.raises(LimitError) as caught:
        cut_tiles(plug, Printer("Narrow", (44.0, 220.0, 250.0), border=1.0), thick)
    assert caught.value.found == "42 mm of usable room"
    assert caught.value.needed == "at least 46.52 mm for the least tile and its dowels"
    with pytest.raises(LimitError, match="dowel depth"):
        TileSettings(least_tile=20.0)
    with pytest.raises(LimitError, match="dowel clearance"):
        TileSettings(clearance=-0.1)
    with pytest.raises(LimitError, match="glue gap"):
        TileSettings(glue_gap=float("nan"))


@pytest.mark.parametrize("kind", [JointKind.TONGUES, JointKind.CLAMP_EARS])
def test_tongues_and_ears_stay_closed_fit_and_balance(plug, kind):
    tiles = cut_tiles(plug, SMALL, TileSettings(joint=kind))
    assert abs(tiles.volume_error) < 1e-9
    assert all(tile.solid.is_closed for tile in tiles.tiles)
    assert all((np.array(tile.size) <= np.array(SMALL.usable) + 1e-6).all() for tile in tiles.tiles)
    assert bool(tiles.joints) == (kind is JointKind.TONGUES)
    assert bool(tiles.ears) == (kind is JointKind.CLAMP_EARS)


def test_glue_by_area_gap_and_density(plug):
    tiles = cut_tiles(plug, SMALL, TileSettings(glue_gap=0.2, glue_density=1.1))
    assert tiles.glue_g == pytest.approx(tiles.glue_area * 0.2 * 1.1e-3)


def test_a_body_thinner_than_its_joints_is_refused_with_both_numbers():
    flat = shapes.graph(lambda x, y: 0.0 * x, (0, 300), (0, 100), (6, 3))
    body = build_body(take_face(flat, (0, 0, 1), mould_side=MouldSide.INSIDE), 0.0)
    with pytest.raises(LimitError) as caught:
        cut_tiles(body, SMALL)
    assert caught.value.where == "dowels in the seams"
    assert caught.value.found.startswith("a body 8 mm thick")
    assert caught.value.needed.startswith("12.52 mm")
