"""The mould body: closed, exact where the laminate lies, refused where it cannot work."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.spatial import Delaunay

import shapes
from laywright import values
from laywright.errors import Cancelled, GeometryError, LimitError
from laywright.mould.body.body import MouldBody, MouldSettings, build_body
from laywright.mould.body.compensation import Allowance, Allowances
from laywright.mould.release.release import check_release
from laywright.surface.distance import distances
from laywright.surface.face import LaminateSide, MouldSide, take_face
from laywright.surface.region import patches_at
from laywright.surface.repair import RepairSettings
from laywright.surface.scan import take_mesh
from laywright.surface.triangles import Surface

UP, DOWN = (0.0, 0.0, 1.0), (0.0, 0.0, -1.0)
PLUG, CAVITY = MouldSide.INSIDE, MouldSide.OUTSIDE


def hatch_face(side, laminate=LaminateSide.INSIDE, spacing=12.0):
    return take_face(shapes.hatch(spacing=spacing), UP if side is PLUG else DOWN, laminate, side)


@pytest.mark.parametrize("side", list(MouldSide))
@pytest.mark.parametrize("laminate", list(LaminateSide))
@pytest.mark.parametrize("thickness", [0.0, 1.5])
def test_every_side_gives_a_closed_exact_body(side, laminate, thickness):
    face = hatch_face(side, laminate)
    body = build_body(face, thickness)
    assert body.solid.is_closed
    assert body.solid.euler_characteristic == 2
    assert body.volume > 0.0
    assert body.largest_deviation < 1e-9
    area = body.solid.areas[body.on_working_area].sum()
    assert area == pytest.approx(face.working_surface(thickness).area, rel=1e-9)
    applied = thickness and (side is PLUG) == (laminate is LaminateSide.INSIDE)
    assert body.compensations[0].size == (thickness if applied else 0.0)


@pytest.mark.parametrize("side", list(MouldSide))
def test_volume_is_that_of_a_height_field(side):
    settings_ = MouldSettings(scribe_depth=0.0)
    body = build_body(hatch_face(side), 0.0, settings_)
    solid = body.solid
    up = np.array(body.pull)
    plan = solid.areas * (solid.normals @ up)
    top = ~np.isin(solid.patches, [body.patch("sides"), body.patch("base")])
    floor = (solid.vertices @ up).min()
    under = float(plan[top] @ (solid.centroids[top] @ up - floor))
    assert body.volume == pytest.approx(under, rel=1e-9)
    base = solid.patches == body.patch("base")
    np.testing.assert_allclose(solid.normals[base], np.tile(-up, (base.sum(), 1)), atol=1e-9)
    height = solid.vertices[np.unique(solid.triangles[top])] @ up
    assert height.min() - floor == pytest.approx(8.0, abs=1e-9)


def test_the_groove_has_its_section_and_leaves_the_working_area():
    plain = build_body(hatch_face(PLUG), 0.0, MouldSettings(scribe_depth=0.0))
    body = build_body(hatch_face(PLUG), 0.0)
    closed = np.concatenate([body.trim_line, body.trim_line[:1]])
    length = np.linalg.norm(np.diff(closed, axis=0), axis=1).sum()
    assert plain.volume - body.volume == pytest.approx(0.16 * length, rel=0.05)
    line = body.solid.part(body.solid.patches == body.patch("scribe line"))
    away = distances(line.vertices, body.working)
    assert away.min() > 0.03
    assert away.max() < 1.0


@settings(max_examples=8, deadline=None)
@given(st.tuples(*[st.floats(-1.0, 1.0)] * 3).filter(lambda v: np.linalg.norm(v) > 0.2))
def test_a_part_anywhere_in_space_gives_the_same_body(axis):
    surface = shapes.hatch(spacing=30.0)
    turn = np.linalg.qr(np.array([axis, (0.3, 1.0, 0.2), (1.0, 0.1, -0.4)]).T)[0]
    turn *= np.linalg.det(turn)
    moved = surface.moved(surface.vertices @ turn.T + np.array([100.0, -20.0, 5.0]))
    one = build_body(take_face(surface, UP, mould_side=PLUG), 1.0)
    other = build_body(take_face(moved, tuple(turn @ np.array(UP)), mould_side=PLUG), 1.0)
    assert other.volume == pytest.approx(one.volume, rel=1e-7)
    assert other.largest_deviation < 1e-7
    assert other.solid.is_closed


@pytest.mark.parametrize("draft", [20.0, 2.0, 0.0])
@pytest.mark.parametrize("way", [1.0, -1.0])
def test_steep_cups_as_cavity_and_plug(draft, way):
    wall = np.linspace(0.0, 60.0, 9)[:, None] * [math.tan(math.radians(draft)), 1.0]
    profile = np.concatenate([[[0, 0], [20, 0]], wall + np.array([40, 0])]) * [1.0, way]
    face = take_face(shapes.dish(profile, 48), UP, mould_side=PLUG)
    body = build_body(face, 0.0)
    assert body.solid.is_closed
    assert body.solid.euler_characteristic == 2
    assert body.largest_deviation < 1e-9
    low, high = body.solid.bounds
    if way > 0:
        assert (high - low)[0] / 2.0 - profile[-1, 0] > 8.0


@pytest.mark.parametrize("way", [1.0, -1.0])
def test_upright_walls_from_a_single_precision_file(way):
    profile = np.array([[0, 0], [20, 0], [40, 0], [40, 30], [40, 60]]) * [1.0, way]
    cup = shapes.dish(profile, 48)
    noise = np.random.default_rng(0).uniform(-4e-6, 4e-6, cup.vertices.shape)
    rough = cup.moved(cup.vertices.astype(np.float32).astype(float) + noise)
    assert rough.normals[:, 2].min() < 0.0
    face = take_face(rough, UP, mould_side=PLUG)
    assert check_release(face).undercut_area == 0.0
    body = build_body(face, 0.0)
    assert body.solid.is_closed
    assert body.solid.euler_characteristic == 2
    assert body.volume == pytest.approx(build_body(take_face(cup, UP, mould_side=PLUG), 0.0).volume)


def test_a_surface_that_passes_over_itself_is_refused():
    turn = np.linspace(0.0, 2.5 * np.pi, 40)
    inner = np.stack([20 * np.cos(turn), 20 * np.sin(turn), 3 * turn], axis=1)
    outer = inner * np.array([2.0, 2.0, 1.0])
    i = np.arange(39)
    ramp = Surface.single(
        np.concatenate([inner, outer]),
        np.concatenate([np.stack([i, i + 40, i + 41], 1), np.stack([i, i + 41, i + 1], 1)]),
        "Ramp",
    )
    with pytest.raises(GeometryError) as caught:
        build_body(take_face(ramp, UP, mould_side=PLUG), 0.0)
    assert caught.value.where == "Ramp"


def test_holes_are_filled_and_scribed():
    turn = 2 * np.pi * np.arange(24) / 24
    hole = np.stack([15 * np.cos(turn) - 20, 15 * np.sin(turn)], axis=1)
    square = np.array([[-60, -60], [60, -60], [60, 60], [-60, 60]], float)
    surface = shapes.plate(square, lambda x, y: -(x**2 + y**2) / 800.0, 6.0, (hole,))
    body = build_body(take_face(surface, UP, mould_side=PLUG), 0.0)
    assert body.solid.is_closed
    assert body.solid.euler_characteristic == 2
    assert body.largest_deviation < 1e-9
    assert body.remarks == ("1 hole of the face is filled, the edges scribed.",)
    filling = body.solid.areas[body.solid.patches == body.patch("filled hole")].sum()
    assert 0.8 * 15**2 * np.pi < filling < 15**2 * np.pi


def test_an_undercut_is_refused_with_its_face():
    with pytest.raises(GeometryError) as caught:
        build_body(
            hatch_face(PLUG).__class__(shapes.hatch(), DOWN, LaminateSide.INSIDE, PLUG, 0.0), 0.0
        )
    assert caught.value.where == "Crown"
    assert "hold the part back" in caught.value.found
    surface = shapes.cap(50.0, 2.0, 12)
    with pytest.raises(GeometryError, match="hold the part back"):
        build_body(take_face(surface, UP, mould_side=PLUG), 0.0)


def test_settings_out_of_reason_are_refused():
    for wrong in (
        {"run_off": 1.0},
        {"base": 0.0},
        {"scribe_depth": -1.0},
        {"scribe_width": float("nan")},
        {"shrinkage": (0.5, 0.0, 0.0)},
    ):
        with pytest.raises(LimitError):
            MouldSettings(**wrong)
    with pytest.raises(LimitError, match="laminate thickness"):
        build_body(hatch_face(PLUG), -1.0)


def test_stored_stamped_and_stoppable():
    face = hatch_face(CAVITY, spacing=30.0)
    body = build_body(face, 1.0)
    assert body.digest == build_body.digest(face, 1.0)
    assert body.digest != build_body.digest(face, 1.1)
    stored = values.pack(body)
    assert values.pack(values.unpack(MouldBody, stored)) == stored

    def stop(share, doing=""):
        if share > 0.3:
            raise Cancelled

    with pytest.raises(Cancelled):
        build_body(face, 1.0, progress=stop)


def test_shrinkage_is_kept_for_the_print_and_not_built_in():
    face = hatch_face(PLUG, spacing=30.0)
    plain, shrunk = (
        build_body(face, 0.0),
        build_body(face, 0.0, MouldSettings(shrinkage=(0.004,) * 3)),
    )
    assert shrunk.volume == plain.volume
    assert shrunk.print_scale == pytest.approx((1 / 0.996,) * 3)
    assert [item.name for item in shrunk.compensations[1:]] == [
        f"print shrinkage along {axis}" for axis in "xyz"
    ]


def test_a_groove_tighter_than_the_laminate_is_thick():
    part = shapes.graph(lambda x, y: -np.sqrt(x**2 + 1.0), (-30, 30), (-20, 20), (60, 6))
    face = take_face(part, UP, LaminateSide.INSIDE, PLUG)
    body = build_body(face, 5.0)
    assert body.solid.is_closed
    assert body.largest_deviation < 1e-6
    assert np.abs(body.from_cad + 5.0).max() < 0.05
    assert body.compensations[0].size == 5.0


def test_coats_set_the_print_back():
    face = hatch_face(CAVITY, spacing=30.0)
    coated = MouldSettings(allowances=Allowances(coats=0.3, expansion=68e-6, warming=20.0))
    body = build_body(face, 1.0, coated)
    assert body.largest_from_cad == pytest.approx(0.3, rel=0.1)
    assert body.from_cad.max() <= -0.29
    assert body.print_scale == pytest.approx((1.0 / 1.00136,) * 3)
    left_out = MouldSettings(
        allowances=Allowances(0.3, 68e-6, 20.0, 0.0, (Allowance.COATS, Allowance.GROWTH))
    )
    body = build_body(face, 1.0, left_out)
    assert body.largest_from_cad < 1e-9
    assert body.print_scale == (1.0, 1.0, 1.0)


def test_an_open_scan_with_noise_holes_and_a_ragged_rim_becomes_a_mould():
    """As a scanner gives it: one side only, in metres, a fifth of its triangles turned over."""
    rng = np.random.default_rng(7)
    places = np.stack(np.meshgrid(*[np.arange(-60.0, 60.0, 2.5)] * 2), axis=2).reshape(-1, 2)
    places += rng.uniform(-0.7, 0.7, places.shape)
    turn, far = np.arctan2(places[:, 1], places[:, 0]), np.linalg.norm(places, axis=1)
    kept = far < 50.0 + 5.0 * np.cos(3.0 * turn) + rng.uniform(-1.0, 1.0, len(far))
    kept &= np.linalg.norm(places - [12.0, 9.0], axis=1) > 3.0
    places = places[kept]
    heights = 20.0 - (places**2).sum(axis=1) / 150.0
    points = np.column_stack([places, heights]) + rng.normal(0.0, 0.05, (len(places), 3))
    facets = Delaunay(places).simplices
    sides = places[facets] - places[np.roll(facets, 1, axis=1)]
    facets = facets[np.linalg.norm(sides, axis=2).max(axis=1) < 6.0]
    (x, y), (u, v) = sides[:, 1].T, sides[:, 2].T
    turned = (x * v - y * u < 0.0)[np.linalg.norm(sides, axis=2).max(axis=1) < 6.0]
    turned ^= rng.random(len(facets)) < 0.2
    facets = np.where(turned[:, None], facets[:, ::-1], facets)
    mending = RepairSettings(hole=60.0)
    reading = take_mesh(0.001 * points, facets, "m", mending=mending)
    region = patches_at(reading.surface, ((0.0, 0.0, 20.0),), "Region")
    assert region.area > 0.999 * reading.surface.area
    assert "holes closed" in {change.kind for change in reading.changes}
    face = take_face(region, UP, LaminateSide.OUTSIDE, MouldSide.INSIDE)
    body = build_body(face, 1.0)
    assert body.solid.is_closed
    assert body.largest_deviation < 1e-6
    assert body.largest_from_cad < 1e-9
