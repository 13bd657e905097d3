"""Beyond the trim line: each feature has its volume, its place, and leaves the part alone."""

from __future__ import annotations

import math
from itertools import permutations

import numpy as np
import pytest

import shapes
from laywright.errors import GeometryError, InputError, LimitError
from laywright.mould.body.body import build_body
from laywright.mould.body.edge import bolt_places
from laywright.mould.body.run_off import RunOff, rays_of, run_off_rows, travelled
from laywright.mould.body.settings import Edge, MouldSettings
from laywright.surface.distance import distances
from laywright.surface.face import MouldSide, take_face

UP = (0.0, 0.0, 1.0)
PLATE = shapes.graph(lambda x, y: 0.0 * x, (0, 100), (0, 70), (10, 7))


def body_of(surface=PLATE, depth=0.0, **edge):
    face = take_face(surface, UP, mould_side=MouldSide.INSIDE)
    return build_body(face, 0.0, MouldSettings(base=10.0, scribe_depth=depth, edge=Edge(**edge)))


def removed(depth=0.0, **edge):
    plain = {"flange": edge.get("flange", 0.0)}
    body = body_of(depth=depth, **edge)
    assert body.solid.is_closed
    assert body.largest_deviation < 1e-9
    return body_of(depth=depth, **plain).volume - body.volume


def test_a_flange_is_level_and_as_wide_as_asked():
    surface = shapes.cap(80.0, 0.6, 16)
    rays = rays_of(surface, surface.boundary_loops[0])
    rows = run_off_rows(rays, RunOff(20.0, 15.0, 6.0))
    last = rows[-1] - rows[-2]
    assert np.abs(last[:, 2]).max() < 1e-9
    np.testing.assert_allclose(np.linalg.norm(last, axis=1), 15.0, rtol=1e-9)
    along = np.arcsin(-rays.along[:, 2])
    gone = travelled(np.concatenate([rays.start[None], rows]))[-1]
    np.testing.assert_allclose(gone, 35.0 + 6.0 * along, rtol=2e-3)
    body = body_of(surface, flange=15.0)
    assert body.solid.is_closed
    assert body.largest_deviation < 1e-9


@pytest.mark.parametrize("number", [1, 4])
def test_pry_pockets_take_their_volume(number):
    taken = removed(flange=20.0, cloth_margin=30.0, pry_pockets=number)
    straight = 20.0 * 3.0 * 14.0 * number
    assert taken == pytest.approx(straight, rel=0.05)


def test_the_second_line_runs_at_its_distance():
    body = body_of(depth=0.4, cloth_margin=15.0)
    line = body.solid.part(body.solid.patches == body.patch("cloth line"))
    away = distances(line.vertices, body.working)
    assert away.min() > 14.8
    assert away.max() < 16.0
    assert line.area > 0.8 * 2.0 * math.hypot(0.4, 0.4) * (2 * 170.0 + 2 * math.pi * 15.0)


def test_a_line_without_room_is_told():
    slot = np.array(
        [[-80, -60], [80, -60], [80, 60], [10, 60], [10, -10], [-10, -10], [-10, 60], [-80, 60]],
        float,
    )
    body = body_of(shapes.plate(slot, lambda x, y: 0.0 * x, 8.0), depth=0.4, cloth_margin=15.0)
    assert body.remarks[0].startswith("The line at the edge of the cloth is left out")


def test_the_air_port_ends_in_the_scrap():
    taken = removed(cloth_margin=15.0, air_port=4.0)
    assert taken == pytest.approx(math.pi * 4.0 * 10.0, rel=1e-6)
    cup = shapes.dish(np.array([[0, 0], [20, 0], [20, -30]], float), 32)
    with pytest.raises(GeometryError, match="the air port"):
        body_of(cup, air_port=4.0)


def test_bolts_fit_one_way_only():
    assert removed(flange=20.0, bolt_holes=6.0) == pytest.approx(4 * math.pi * 9.0 * 10.0, rel=1e-6)
    rays = rays_of(PLATE, PLATE.boundary_loops[0])
    lines = np.concatenate([rays.start[None], run_off_rows(rays, RunOff(25.0, 20.0))])
    places = bolt_places(lines, Edge(flange=20.0, bolt_holes=6.0))
    for order in permutations(range(4)):
        moved = places[list(order)] - places.mean(axis=0)
        still = places - places.mean(axis=0)
        u, _, v = np.linalg.svd(moved.T @ still)
        gap = np.abs(moved @ (u @ v) - still).max()
        assert gap > 1.0 or order == (0, 1, 2, 3)


def test_the_inscription_stands_in_a_side():
    body = body_of(inscription="TRAY B-2")
    letters = body.solid.part(body.solid.patches == body.patch("inscription"))
    floor = body.solid.vertices[:, 2].min()
    high = letters.vertices[:, 2]
    assert high.min() > floor + 0.5
    assert high.max() < floor + 10.0
    assert 20.0 < removed(inscription="TRAY B-2") < 80.0
    with pytest.raises(InputError, match="'%' in '5 %'"):
        Edge(inscription="5 %")


def test_out_of_reason_is_refused():
    for wrong in (
        {"flange": -1.0},
        {"pry_pockets": 99},
        {"flange": 5.0, "bolt_holes": 6.0},
        {"blend": 0.0},
    ):
        with pytest.raises(LimitError):
            Edge(**wrong)
    with pytest.raises(LimitError, match="cloth margin"):
        MouldSettings(edge=Edge(cloth_margin=60.0))
