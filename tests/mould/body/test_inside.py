"""Hollow moulds: closed, light, and nowhere thinner than asked."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright import values
from laywright.errors import GeometryError, LimitError
from laywright.mould.body.body import MouldBody, build_body
from laywright.mould.body.inside import deflection
from laywright.mould.body.settings import Inside, MouldBuild, MouldSettings
from laywright.surface.distance import distances
from laywright.surface.face import MouldSide, take_face

UP = (0.0, 0.0, 1.0)
RIBS, SHELL = MouldBuild.HOLLOW_WITH_RIBS, MouldBuild.SHELL
PLATE = shapes.graph(lambda x, y: 0.0 * x, (0, 60), (0, 40), (6, 4))


def body_of(surface, inside, base=20.0, **other):
    face = take_face(surface, UP, mould_side=MouldSide.INSIDE)
    return build_body(face, 0.0, MouldSettings(base=base, inside=inside, **other))


def dome(height, radius=40.0):
    r = np.linspace(0.0, radius, 7)
    return shapes.dish(np.column_stack([r, height * (1.0 - (r / radius) ** 2)]), 32)


@settings(max_examples=8, deadline=None)
@given(st.floats(-25.0, 25.0), st.floats(2.0, 7.0), st.sampled_from([RIBS, SHELL]))
def test_the_wall_is_nowhere_thinner_than_asked(height, wall, build):
    body = body_of(dome(height), Inside(build, wall=wall, rib_spacing=35.0))
    assert body.solid.is_closed
    assert body.solid.components.max() == 0
    assert body.largest_deviation < 1e-9
    hollow = body.solid.part(body.solid.patches == body.patch("hollow"))
    rng = np.random.default_rng(1)
    share = rng.dirichlet((1.0, 1.0, 1.0), len(hollow.triangles))
    points = np.einsum("mi,mij->mj", share, hollow.corners)
    assert distances(points, body.working).min() >= 0.99 * wall
    assert wall <= body.least_wall <= 1.05 * wall


def test_a_flat_shell_has_its_volume():
    body = body_of(PLATE, Inside(SHELL, wall=4.0), scribe_depth=0.0)
    solid = body_of(PLATE, Inside(), scribe_depth=0.0)
    outside = solid.volume / 20.0
    around = solid.solid.areas[solid.solid.patches == solid.patch("sides")].sum() / 20.0
    within = outside - 4.0 * around + 16.0 * np.pi
    assert solid.volume - body.volume == pytest.approx(16.0 * within, rel=0.01)


def test_ribs_stand_on_their_grid_and_a_bottom_closes_all_but_the_vents():
    inside = Inside(RIBS, wall=3.0, rib_spacing=30.0, rib_thickness=2.0)
    shell = body_of(PLATE, Inside(SHELL, wall=3.0))
    ribbed = body_of(PLATE, inside)
    assert shell.volume < ribbed.volume < body_of(PLATE, Inside()).volume
    floor = ribbed.solid.vertices[:, 2].min()
    hollow = ribbed.solid.part(ribbed.solid.patches == ribbed.patch("hollow"))
    upright = (np.abs(hollow.normals[:, 0]) > 1.0 - 1e-9) & (hollow.areas > 50.0)
    places = np.round(hollow.corners[upright][..., 0] - 30.0, 6)
    inner = places[np.abs(places) < 40.0]
    assert set(np.unique(np.abs(inner))) == {1.0, 29.0, 31.0}
    closed = body_of(PLATE, Inside(RIBS, wall=3.0, rib_spacing=30.0, bottom=2.0))
    assert closed.volume > ribbed.volume
    solid = body_of(PLATE, Inside()).solid
    shut, whole = (
        part.areas[(part.normals[:, 2] < -0.9) & (part.centroids[:, 2] < floor + 1e-9)].sum()
        for part in (closed.solid, solid)
    )
    vents = (whole - shut) / (np.pi * 9.0)
    assert vents == pytest.approx(round(vents), abs=1e-6)
    assert vents >= 4.0
    assert closed.solid.is_closed


def test_a_body_too_thin_for_its_wall_is_refused():
    with pytest.raises(GeometryError, match="no room behind a wall of 9 mm"):
        body_of(PLATE, Inside(SHELL, wall=9.0), base=8.0)


def test_deflection_is_the_plates():
    plate = Inside(RIBS, wall=4.0, stiffness=2000.0, vacuum=0.1)
    rigidity = 2000.0 * 64.0 / 12.0 / (1.0 - 0.35**2)
    assert deflection(plate, 50.0) == pytest.approx(0.00126 * 0.1 * 50.0**4 / rigidity)
    thick = Inside(RIBS, wall=8.0, stiffness=2000.0, vacuum=0.1)
    assert deflection(plate, 50.0) == pytest.approx(8.0 * deflection(thick, 50.0))
    assert deflection(plate, 100.0) == pytest.approx(16.0 * deflection(plate, 50.0))


def test_a_weak_wall_is_told():
    weak = body_of(PLATE, Inside(SHELL, wall=2.0))
    (remark,) = weak.remarks
    assert remark.startswith("Under a vacuum of 0.08 MPa a flat wall of 2 mm gives way by")
    assert body_of(PLATE, Inside(RIBS, wall=4.0, rib_spacing=30.0)).remarks == ()


def test_stored_and_out_of_reason():
    body = body_of(PLATE, Inside(SHELL))
    stored = values.pack(body)
    assert values.pack(values.unpack(MouldBody, stored)) == stored
    for wrong in ({"wall": 0.0}, {"rib_spacing": 3.0}, {"bottom": -1.0}, {"stiffness": 1.0}):
        with pytest.raises(LimitError):
            Inside(**wrong)
