"""Rings around what faces one way."""

import math
from dataclasses import replace

import numpy as np
import pytest
import shapely

import shapes
from laywright.cloth.cuts.cutting import cut_surface
from laywright.cloth.cuts.rings import ring_cuts
from laywright.cloth.cuts.trial import Ground
from laywright.cloth.drape.datum import default_datum
from laywright.cloth.drape.even_mesh import even_mesh, spacing_for
from laywright.cloth.drape.fabric import fabric_for
from laywright.cloth.drape.flatten import flatten
from laywright.cloth.drape.trouble import limits_of
from laywright.laminate.materials import Weave

TILT = math.radians(40.0)


def ground(height, half=100.0, triangles=600):
    """A face over a square, by its height in mm."""
    surface = shapes.graph(height, (-half, half), (-half, half), (60, 60))
    coarse = even_mesh(surface, spacing_for(surface, triangles))
    fabric = fabric_for(Weave.TWILL)
    limits = limits_of(fabric)
    datum = default_datum(surface)
    return Ground(coarse, flatten(coarse), fabric, datum, 0.0, None, limits)


# A well of 90 mm across and 60 mm deep in a face of 200 mm.
WELL = ground(lambda x, y: -60 / (1 + np.exp((np.hypot(x, y) - 45) / 3)), triangles=900)
TUB = ground(lambda x, y: 2.0 * 3 * np.logaddexp((np.hypot(x, y) - 60) / 3, 0.0), half=80.0)


@pytest.mark.parametrize(("face", "rings"), [(TUB, 1), (WELL, 2)])
def test_a_slit_from_the_edge_and_two_halves_of_each_ring(face, rings):
    slit, *halves = ring_cuts(face, TILT)
    assert len(halves) == 2 * rings
    assert shapely.boundary(face.region).distance(shapely.Point(slit[0])) < 1e-6
    for one, other in zip(halves[::2], halves[1::2], strict=True):
        assert one[0] == pytest.approx(other[0])
        assert one[-1] == pytest.approx(other[-1])
        assert shapely.LineString(slit).distance(shapely.Point(one[0])) < face.spacing
    ring = shapely.Polygon(np.concatenate([halves[0], halves[1][::-1]]))
    assert face.region.contains(ring)


@pytest.mark.parametrize(("face", "pieces"), [(TUB, 2), (WELL, 3)])
def test_the_face_falls_into_floor_and_strips(face, pieces):
    cut = cut_surface(face.surface, face.flat, ring_cuts(face, TILT))
    components = cut.surface.components
    assert components.max() + 1 == pieces
    for number in range(pieces):
        part = cut.surface.part(components == number)
        assert len(part.boundary_loops) == 1  # slit, not a closed ring
        assert part.euler_characteristic == 1
    assert cut.surface.area == pytest.approx(face.surface.area, rel=0.02)


def test_a_plate_and_a_dish_have_none():
    assert ring_cuts(ground(lambda x, y: 0.0 * x), TILT) == []
    assert ring_cuts(ground(lambda x, y: (x * x + y * y) / 800), TILT) == []


def test_moved_rings_keep_apart_from_those_where_they_were():
    here, there = ring_cuts(TUB, TILT), ring_cuts(TUB, TILT, 15.0)
    one, other = (shapely.MultiLineString(list(cuts[1:])) for cuts in (here, there))
    assert 0.75 * 15.0 < one.distance(other) < 16.0


def test_they_spare_most_of_what_is_past_the_limits():
    bare = WELL.bare
    tried = WELL.attempt(ring_cuts(WELL, math.radians(55.0)))
    assert tried is not None
    assert bare.share > 0.25
    assert tried.share < 0.25 * bare.share
    assert tried.trouble < 0.1 * bare.trouble


def test_cloth_that_laps_over_itself_is_not_clear():
    flat = ground(lambda x, y: 0.0 * x, triangles=200).bare
    assert flat.clear
    assert not replace(flat, laps=True).clear
