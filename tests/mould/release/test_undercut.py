"""Shares that hold back, leave steeply and leave well add up, and turn with the part."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.arrays import unit_vector
from laywright.mould.release.undercut import undercut_of

PARTS = (shapes.torus(40.0, 12.0, 24, 14), shapes.mushroom(16), shapes.hatch(spacing=40.0))


@settings(max_examples=40, deadline=None)
@given(st.integers(0, 10**6), st.floats(0.0, 0.5))
def test_shares_are_shares_and_turn_with_the_part(seed, least):
    rng = np.random.default_rng(seed)
    surface, pull = PARTS[seed % 3], np.array(unit_vector(rng.normal(size=3)))
    turn = np.linalg.qr(rng.normal(size=(3, 3)))[0]
    turn *= np.linalg.det(turn)
    moved = surface.moved(surface.vertices @ turn.T + rng.normal(size=3))
    one = undercut_of(surface, unit_vector(pull), least)
    other = undercut_of(moved, unit_vector(turn @ pull), least)
    for name in ("hidden", "undercut", "steep"):
        share = getattr(one, name)
        assert (share >= 0.0).all()
        assert (share <= 1.0).all()
        assert surface.areas @ share == pytest.approx(
            surface.areas @ getattr(other, name), abs=1e-7 * surface.area
        )
    assert (one.undercut + one.steep <= 1.0 + 1e-12).all()


def test_a_sphere_is_held_back_by_half_and_steep_by_the_sine():
    surface = shapes.sphere(50.0, 60)
    found = undercut_of(surface, unit_vector((0.3, -0.5, 0.8)), math.sin(0.1))
    assert surface.areas @ found.undercut == pytest.approx(surface.area / 2.0, rel=1e-3)
    assert surface.areas @ found.steep == pytest.approx(
        surface.area * math.sin(0.1) / 2.0, rel=5e-3
    )
    assert found.hidden.max() == 0.0
