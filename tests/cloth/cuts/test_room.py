"""Where cuts have room: known distances on a flat plate."""

import math

import numpy as np
import pytest

import shapes
from laywright.cloth.cuts.darts import find_darts
from laywright.cloth.cuts.room import Room, line_distance
from laywright.cloth.cuts.splices import find_splices
from laywright.cloth.cuts.trial import Ground
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.even_mesh import even_mesh
from laywright.cloth.drape.fabric import fabric_for
from laywright.cloth.drape.trouble import limits_of
from laywright.laminate.materials import Weave

DART = np.array([[0.0, -50.0], [0.0, -10.0]])
BESIDE = np.array([[10.0, y, 0.0] for y in range(-50, 0, 2)])


@pytest.fixture(scope="module")
def plate():
    surface = even_mesh(shapes.graph(lambda x, y: 0 * x, (-80, 80), (-50, 50), (16, 10)), 10.0)
    fabric = fabric_for(Weave.PLAIN)
    datum = Datum((0.0, 0.0, 0.0), (1.0, 0.0, 0.0))
    flat = surface.vertices[:, :2].copy()
    return Ground(surface, flat, fabric, datum, 0.0, None, limits_of(fabric))


def test_a_path_is_free_where_it_keeps_the_distance(plate):
    assert line_distance(plate.on_surface(DART), BESIDE) == pytest.approx(10.0, abs=0.5)
    assert Room(plate, [BESIDE], 9.0).free(DART)
    assert not Room(plate, [BESIDE], 11.0).free(DART)
    assert not Room(plate, (), 11.0).free(DART, [DART + np.array([10.0, 0.0])])


def test_a_path_moves_along_the_edge_until_it_is_free(plate):
    """The first place of the series that is 25 mm away: 27.5 mm to the other side."""
    moved = Room(plate, [BESIDE], 25.0).shifted(DART)
    assert moved == pytest.approx(DART + np.array([-27.5, 0.0]))
    every = [BESIDE + np.array([x, 0.0, 0.0]) for x in range(-90, 90, 20)]
    assert Room(plate, every, 25.0).shifted(DART) is None


def test_where_nothing_is_strained_nothing_is_cut(plate):
    room = Room(plate)
    assert find_darts(room, plate.bare).paths == ()
    assert find_splices(room, plate.bare, math.inf) is plate.bare
