"""A thin skin that wants other folds: they are measured with their side, and it comes to rest."""

from __future__ import annotations

import math

import numpy as np
import pytest

import shapes
from laywright.surface.shell import folds, relaxed
from laywright.surface.triangles import Surface


def roof(turn):
    points = np.array(
        [[0, 0, 0], [0, 50, 0], [-30, 0, 0], [30 * math.cos(turn), 0, -30 * math.sin(turn)]]
    )
    return Surface.single(points, np.array([[0, 1, 2], [1, 0, 3]]))


@pytest.mark.parametrize("turn", [-2.5, -0.3, 0.0, 1e-9, 0.7, 3.0])
def test_a_fold_has_its_size_and_side(turn):
    surface = roof(turn)
    inner = (surface.edges.left >= 0) & (surface.edges.right >= 0)
    found = folds(surface)
    assert abs(found[inner][0]) == pytest.approx(abs(turn), abs=1e-15)
    assert (found[~inner] == 0.0).all()
    np.testing.assert_array_equal(folds(surface.flipped())[inner], -found[inner])
    assert (folds(shapes.sphere(10.0, 12)) > 0.0).mean() > 0.6
    assert folds(shapes.sphere(10.0, 12)).min() > -1e-6


def test_a_hinge_turns_to_any_fold_without_strain():
    surface = roof(0.4)
    for wanted in (0.1, 0.8, -0.3):
        there = folds(roof(wanted))
        made = relaxed(surface, there, 1.0)
        np.testing.assert_allclose(folds(made), there, atol=1e-9)
        np.testing.assert_allclose(made.areas, surface.areas, rtol=1e-8)


def test_a_skin_that_wants_what_it_has_stays_where_it_is():
    surface = shapes.cap(60.0, 0.8, 8)
    made = relaxed(surface, folds(surface), 1.0)
    np.testing.assert_allclose(made.vertices, surface.vertices, atol=1e-9)


def test_the_thinner_a_dome_the_less_it_stretches():
    surface = shapes.cap(60.0, 0.8, 10)
    wanted = folds(surface) / 1.02
    strain = [
        np.abs(relaxed(surface, wanted, t).areas / surface.areas - 1.0).max()
        for t in (8.0, 2.0, 0.5)
    ]
    assert strain == sorted(strain, reverse=True)
