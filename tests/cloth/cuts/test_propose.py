"""Proposed cuts: they bring shear and stretch below the limits, and are not longer than needed."""

import math

import numpy as np
import pytest

import shapes
from laywright.cloth.cuts.propose import propose
from laywright.cloth.cuts.room import line_distance
from laywright.cloth.cuts.trial import Ground
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.even_mesh import even_mesh
from laywright.cloth.drape.fabric import fabric_for
from laywright.cloth.drape.flatten import flatten
from laywright.cloth.drape.trouble import CLEAR, limits_of
from laywright.laminate.materials import Weave

RADIUS = 100.0


def ground(weave, polar, limit=None, side=14.0):
    surface = even_mesh(shapes.cap(RADIUS, polar, 20), side)
    fabric = fabric_for(weave)
    datum = Datum((0.0, 0.0, RADIUS), (1.0, 0.0, 0.0))
    return Ground(surface, flatten(surface), fabric, datum, 0.0, None, limits_of(fabric, limit))


@pytest.fixture(scope="module")
def deep():
    return ground(Weave.PLAIN, math.radians(86.0))


@pytest.fixture(scope="module")
def proposed(deep):
    return propose(deep)


def test_nothing_is_proposed_where_the_cloth_lies_down():
    found = propose(ground(Weave.TWILL, 0.7))
    assert found.bare.clear
    assert found.best is None


def test_the_cuts_bring_the_cloth_below_its_limits(deep, proposed):
    assert proposed.bare.share > 0.03
    best = proposed.best
    assert best.share <= CLEAR
    inner = best.over == 0.0
    assert np.abs(best.laid.drape.shear[inner]).max() <= deep.fabric.locking_angle
    # A rim's length would do without thinking: cuts are much shorter.
    assert best.length < RADIUS * math.pi * 1.2
    again = deep.attempt(best.paths)
    assert again.trouble == pytest.approx(best.trouble, rel=1e-9, abs=1e-12)


def test_a_ply_above_takes_other_places(deep, proposed):
    lines = [deep.on_surface(path) for path in proposed.best.paths]
    found = propose(deep, lines, 25.0, proposed.best.paths).best
    assert found.clear
    for path in found.paths:
        assert min(line_distance(deep.on_surface(path), line) for line in lines) >= 25.0


def test_a_lower_limit_finds_more_to_do(deep, proposed):
    stricter = ground(Weave.PLAIN, math.radians(86.0), math.radians(30.0)).bare
    assert stricter.share > 2.0 * proposed.bare.share


def test_where_cloth_is_lacking_a_splice_parts_it():
    """A dart can take cloth out and not let any in: on a saddle mat must be parted."""
    saddle = even_mesh(shapes.graph(lambda x, y: (x * x - y * y) / 120, (-80, 80), (-80, 80)), 12.0)
    fabric = fabric_for(Weave.MAT)
    datum = Datum((0.0, 0.0, 0.0), (1.0, 0.0, 0.0))
    mat = Ground(saddle, flatten(saddle), fabric, datum, 0.0, None, limits_of(fabric))
    found = propose(mat)
    assert found.bare.share > 0.1
    assert found.best.clear
    assert len(found.best.laid.pieces) > 1
