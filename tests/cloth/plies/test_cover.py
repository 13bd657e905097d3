"""Which plies lie where: areas of zones, heights, shares of triangles."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import shapes
from laywright.cloth.drape.even_mesh import even_mesh, spacing_for
from laywright.cloth.plies.cover import cover_of, share_above
from laywright.laminate.extents import Round, Strip
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply

CARDS = load_materials()
TWILL = CARDS.cloth("E-glass twill weave 200 g/m^2")
PLATE = shapes.graph(lambda x, y: 0.0 * x, (-100, 100), (-60, 60), (4, 4))
PATCH = Round((0.0, 0.0, 0.0), 30.0)


def cover(*extents, set_back=False, surface=PLATE):
    plies = tuple(Ply(TWILL, 0.0, "", extent) for extent in extents)
    laminate = analyse(Layup(plies, CARDS.resin(CARDS.resin_names[0])))
    mesh = even_mesh(surface, spacing_for(surface, 2500))
    return laminate, cover_of(mesh, surface, laminate, set_back=set_back)


def test_zones_are_rings_and_strips_of_their_closed_forms():
    laminate, found = cover(None, PATCH, PATCH, Strip(10.0), None)
    areas = {2: math.pi * 30.0**2, 3: math.pi * 24.0**2, 4: 200.0 * 120.0 - 180.0 * 100.0}
    zones = {zone.plies: zone.area for zone in found.zones(laminate.layup.throughout, areas)}
    assert zones[1, 2, 3, 5] == pytest.approx(areas[3], rel=1e-4)
    assert zones[1, 2, 5] == pytest.approx(areas[2] - areas[3], rel=1e-4)
    assert zones[1, 4, 5] == pytest.approx(areas[4], rel=1e-4)
    assert sum(zones.values()) == pytest.approx(200.0 * 120.0, rel=1e-9)
    assert set(zones) == {(1, 5), (1, 2, 5), (1, 2, 3, 5), (1, 4, 5)}


def test_mass_by_zones_is_mass_by_plies():
    laminate, found = cover(None, PATCH, Strip(40.0), PATCH)
    areas = {2: math.pi * 30.0**2, 3: 200.0 * 120.0 - 120.0 * 40.0, 4: math.pi * 24.0**2}
    zones = found.zones(laminate.layup.throughout, areas)
    by_ply = np.zeros(4)
    for zone in zones:
        by_ply[np.array(zone.plies) - 1] += zone.area
    assert by_ply == pytest.approx([24000.0, *areas.values()], rel=1e-4)
    assert len(zones) > 4


def test_without_local_plies_there_are_no_zones_and_one_height():
    laminate, found = cover(None, None)
    assert found.zones(laminate.layup.throughout, {}) == ()
    assert [found.heights(laminate, n) for n in (1, 2)] == laminate.ply_heights.tolist()


def test_a_ply_lies_on_what_is_below_it_there():
    laminate, found = cover(None, PATCH, None)
    one = laminate.thickness / 2.0
    away = np.linalg.norm(found.mesh.vertices, axis=1)
    heights = found.heights(laminate, 3)
    assert heights[away < 29.0] == pytest.approx(2.5 * one)
    assert heights[away > 37.0] == pytest.approx(1.5 * one)
    assert found.heights(laminate, 1) == pytest.approx(0.5 * one)
    assert found.heights(laminate, 2) == pytest.approx(1.5 * one)


def test_a_mould_that_is_set_back_leaves_the_outside_where_it_is():
    """The last ply keeps its distance from the wanted face; the first goes down with the mould."""
    laminate, found = cover(None, PATCH, None, set_back=True)
    one = laminate.thickness / 2.0
    assert found.heights(laminate, 3) == pytest.approx(1.5 * one)
    away = np.linalg.norm(found.mesh.vertices, axis=1)
    assert found.heights(laminate, 1)[away < 29.0] == pytest.approx(-0.5 * one)


def test_values_are_carried_straight_across_triangles():
    _, found = cover(None, PATCH)
    x, y, _ = found.mesh.vertices.T
    points = np.array([[3.3, 4.4, 0.0], [-71.0, 20.0, 0.0], [99.9, -59.9, 0.0]])
    carried = found.carried(2.0 * x - y + 1.0, points)
    assert carried == pytest.approx(2.0 * points[:, 0] - points[:, 1] + 1.0, abs=0.05)
    assert found.carried(0.7, points) == 0.7


@given(st.floats(-5.0, 5.0), st.floats(-5.0, 5.0), st.floats(-5.0, 5.0))
def test_shares_above_and_below_make_a_whole(a, b, c):
    if 0.0 in (a, b, c):
        return
    corners = np.array([[a, b, c]])
    above = share_above(corners)[0]
    assert 0.0 <= above <= 1.0
    assert above + share_above(-corners)[0] == pytest.approx(1.0)


def test_shares_add_up_to_the_area_of_a_ply():
    _, found = cover(None, PATCH, Strip(12.0))
    areas = found.mesh.areas
    for number, area in ((2, math.pi * 900.0), (3, 200.0 * 120.0 - 176.0 * 96.0)):
        share = found.share(number, area)
        assert areas @ share == pytest.approx(area, rel=1e-9)
        assert share.min() == 0.0
        assert share.max() == 1.0
