"""Which facets a piece can be drawn away from."""

from __future__ import annotations

import numpy as np
import pytest

import shapes
from laywright.mould.release.leaving import (
    barely_held,
    candidate_pulls,
    held_share,
    leaves_along,
)

UP = (0.0, 0.0, 1.0)


def test_half_of_a_cavity_round_a_ball_leaves_each_way():
    surface = shapes.sphere(50.0, 16).flipped()
    for z in (1.0, -1.0):
        leaves = held_share(surface, (0.0, 0.0, z)) == 0.0
        np.testing.assert_array_equal(leaves, surface.normals[:, 2] * z > 0.0)


def test_a_plug_inside_a_ball_leaves_nowhere():
    assert held_share(shapes.sphere(50.0, 16), UP).all()


def test_the_quick_answer_errs_at_rims_only():
    surface = shapes.tray(turns=4).flipped()
    pulls = np.array([[0.0, 0.0, 1.0], [0.0, 1.0, 0.0], [-1.0, 0.0, 0.0]])
    quick = leaves_along(surface, pulls, np.arange(len(surface.triangles)))
    for row, pull in zip(quick, pulls, strict=True):
        exact = held_share(surface, tuple(pull.tolist())) == 0.0
        assert (row | ~exact).all()
        assert surface.areas @ (row != exact) < 0.01 * surface.area


@pytest.mark.parametrize(("lip", "share"), [(0.04, 1.0), (0.06, 0.5), (0.12, 0.0)])
def test_a_lip_that_stands_out_less_than_triangles_are_exact_barely_holds(lip, share):
    # Two rows of facets, one above the other: the upper one stands out half as far.
    surface = shapes.tray(lip).flipped()
    facets = np.flatnonzero(surface.patches == surface.patch_names.index("Lip"))
    assert (held_share(surface, UP)[facets] == 1.0).all()
    assert barely_held(surface, UP, facets).mean() == share


def test_the_lip_of_a_tray_is_what_holds_it():
    surface = shapes.tray().flipped()
    held = held_share(surface, UP)
    names = np.array(surface.patch_names)[surface.patches]
    assert (held[names == "Lip"] == 1.0).all()
    assert (held[np.isin(names, ["Floor", "Bend", "Wall"])] == 0.0).all()
    # the rim reaches 4 mm inward over the wall's widest place, and 8 mm beyond it
    rim = names == "Rim"
    assert held[rim] @ surface.areas[rim] == pytest.approx(surface.areas[rim].sum() / 3.0, rel=0.1)


def test_candidates_are_told_apart_and_come_with_their_opposites():
    found = candidate_pulls(shapes.tray(), (0.0, 0.6, 0.8))
    np.testing.assert_allclose(found[0], (0.0, 0.6, 0.8))
    np.testing.assert_allclose(np.linalg.norm(found, axis=1), 1.0)
    near = found @ found.T
    np.fill_diagonal(near, 0.0)
    assert near.max() <= np.cos(np.radians(1.5)) + 1e-12
    assert (found @ -found.T).max(axis=1).min() == pytest.approx(1.0, abs=4e-4)
    for axis in np.eye(3):
        assert (found @ axis).max() == pytest.approx(1.0)
