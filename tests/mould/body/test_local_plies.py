"""A mould set back under local ply: depth, slope, volume, and only where it is asked for."""

import dataclasses
import math

import numpy as np
import pytest
import shapely

import shapes
from laywright.errors import GeometryError
from laywright.laminate.drop_off import Buildup, LocalPly
from laywright.laminate.extents import Faces, Round, Strip
from laywright.mould.body.body import build_body
from laywright.mould.body.compensation import Allowance, Allowances
from laywright.mould.body.local_plies import local_items, set_back_locally
from laywright.mould.body.settings import MouldSettings
from laywright.surface.face import LaminateSide, MouldSide, take_face

PLATE = shapes.graph(lambda x, y: 0.0 * x, (-100, 100), (-60, 60), (2, 2))
DISC = LocalPly(2, Round((20.0, 0.0, 0.0), 25.0), 0.0, 0.3, 6.0)
BUILT = Buildup(0.5, (DISC,))
PLUG = take_face(PLATE, (0, 0, 1.0), LaminateSide.INSIDE, MouldSide.INSIDE)
CAVITY = take_face(PLATE, (0, 0, -1.0), LaminateSide.INSIDE, MouldSide.OUTSIDE)


def below(face, built):
    """Return the volume between a plane working surface and the same set back locally, mm^3."""
    flat = face.working_surface(built.throughout)
    found = set_back_locally(face, flat, built, Allowances())
    depth = (flat.vertices[0, 2] - found.vertices[:, 2])[found.triangles].mean(axis=1)
    return float(depth @ found.areas), found


def frustum(radius, ramp, depth):
    """Return the volume of a round hollow with a sloping side, mm^3."""
    outer = radius + ramp
    return math.pi * depth / 3.0 * (radius**2 + radius * outer + outer**2)


def test_a_disc_leaves_a_hollow_with_a_sloping_side():
    volume, found = below(PLUG, BUILT)
    assert volume == pytest.approx(frustum(25.0, 6.0, 0.3), rel=0.03)
    away = np.hypot(found.vertices[:, 0] - 20.0, found.vertices[:, 1])
    assert found.vertices[away < 24.9, 2] == pytest.approx(-0.8, abs=0.01)
    assert found.vertices[away > 31.1, 2] == pytest.approx(-0.5)
    slope = np.degrees(np.arccos(np.clip(found.normals[:, 2], -1.0, 1.0)))
    assert slope.max() == pytest.approx(math.degrees(math.atan(0.05)), abs=0.5)


def test_further_plies_add_up_and_a_strip_reaches_the_edge():
    plies = (
        DISC,
        dataclasses.replace(DISC, ply=3, setback=6.0),
        LocalPly(4, Strip(10.0), 0.0, 0.2, 4.0),
    )
    volume, found = below(PLUG, Buildup(0.5, plies))
    rim = sum(
        area * 0.2 / 4.0 * 0.01
        for area in [200 * 120 - (200 - 2 * w) * (120 - 2 * w) for w in np.arange(10, 14, 0.01)]
    )
    closed = frustum(25.0, 6.0, 0.3) + frustum(19.0, 6.0, 0.3) + rim
    assert volume == pytest.approx(closed, rel=0.03)
    assert found.boundary_loops
    edge = found.vertices[found.boundary_loops[0], 2]
    assert edge == pytest.approx(-0.7)


def test_a_body_stays_closed_and_loses_just_that_volume():
    settings = MouldSettings()
    plain = build_body(PLUG, 0.5, settings)
    local = build_body(PLUG, BUILT, settings)
    assert local.solid.is_closed
    deeper = 0.3 * shapely.box(-100, -60, 100, 60).buffer(25.0, 64).area  # the base goes down
    lost = plain.volume + deeper - local.volume
    assert lost == pytest.approx(frustum(25.0, 6.0, 0.3), rel=0.03)
    assert local.largest_deviation < 0.01
    assert local.largest_from_cad == pytest.approx(0.8)
    items = {item.name: item.size for item in local.compensations}
    assert items["laminate thickness"] == 0.5
    assert items["thickness of local ply 2"] == 0.3


def test_a_hatch_reinforced_in_three_places_is_closed():
    hatch = take_face(shapes.hatch(), (0, 0, 1.0), LaminateSide.INSIDE, MouldSide.INSIDE)
    plies = (
        LocalPly(2, Round((120.0, 60.0, 0.0), 30.0), 0.0, 0.3, 6.0),
        LocalPly(3, Strip(12.0), 0.0, 0.25, 6.0),
        LocalPly(4, Faces(("Crown",)), 15.0, 0.25, 6.0),
    )
    body = build_body(hatch, Buildup(0.5, plies))
    assert body.solid.is_closed
    assert body.largest_deviation < 0.01
    assert body.largest_from_cad == pytest.approx(0.5 + 0.3 + 0.25, abs=0.02)
    assert np.abs(body.from_cad).min() == pytest.approx(0.5, abs=0.01)


@pytest.mark.parametrize(
    ("face", "allowances"),
    [(CAVITY, Allowances()), (PLUG, Allowances(left_out=(Allowance.LAMINATE,)))],
)
def test_where_the_mould_touches_the_part_or_it_is_switched_off_nothing_changes(face, allowances):
    flat = face.working_surface(0.5)
    assert set_back_locally(face, flat, BUILT, allowances) is flat
    (item,) = local_items(face, BUILT, allowances)
    assert item.size == 0.0
    assert item.where.startswith("not applied")
    plain, local = (
        build_body(face, one, MouldSettings(allowances=allowances)) for one in (0.5, BUILT)
    )
    assert np.array_equal(plain.solid.vertices, local.solid.vertices)


def test_the_digest_of_a_mould_without_local_plies_is_that_of_its_thickness():
    assert build_body.digest(PLUG, 0.5) != build_body.digest(PLUG, BUILT)
    assert local_items(PLUG, 0.5, Allowances()) == ()


def test_plies_too_thick_for_a_bend_are_refused_with_their_place():
    bend = take_face(
        shapes.cylinder_patch(2.0, 2.0, 60.0, (30, 4)),
        (0, 0, 1.0),
        LaminateSide.INSIDE,
        MouldSide.INSIDE,
    )
    thick = LocalPly(2, Round((0.0, 0.0, 2.0), 12.0), 0.0, 2.5, 6.0)
    with pytest.raises(GeometryError, match="set back by local plies"):
        set_back_locally(bend, bend.working_surface(0.1), Buildup(0.1, (thick,)), Allowances())
