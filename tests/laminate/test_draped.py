from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laminate.stacks import CARBON, GLASS, MAT, MATERIALS, RESIN, TAPE, layup
from laywright.errors import InputError
from laywright.laminate.draped import draped_stiffness, draped_thickness
from laywright.laminate.laminate import analyse
from laywright.laminate.plies import Core, Layup, Ply

MIXED = analyse(Layup((Ply(GLASS, 0.2), Ply(TAPE, -0.4), Ply(MAT, 0.0), Ply(CARBON, 1.0)), RESIN))
ANGLES = np.array([ply.angle for ply in MIXED.layup.plies])


def test_unsheared_cloth_gives_the_laminate_itself():
    found = draped_stiffness(MIXED, np.tile(ANGLES, (5, 1)), np.tile(ANGLES + math.pi / 2, (5, 1)))
    for name in "abd":
        plain = getattr(MIXED, name)
        assert np.allclose(getattr(found, name), plain, rtol=0, atol=1e-9 * np.abs(plain).max())


@given(st.floats(-1.0, 1.0), st.floats(-3.0, 3.0))
def test_fibre_is_conserved_under_shear(shear, turn):
    """The fibre in a cell of cloth stays, while the cell shrinks by the cosine of the shear."""
    warp = np.full((1, 4), turn)
    thickness = draped_thickness(MIXED, warp, warp + math.pi / 2.0 - shear)[0]
    grown = thickness / MIXED.ply_thicknesses
    expected = np.full(4, 1.0 / math.cos(shear))
    expected[2] = 1.0
    assert np.allclose(grown, expected, rtol=1e-12)


def test_shear_turns_stiffness_towards_the_bisector():
    """Warp and weft scissored together by 30 degrees carry more along their bisector."""
    made = analyse(layup(CARBON, 0))
    shear = math.radians(30.0)
    warp = np.array([[-math.pi / 4 + shear / 2]])
    weft = np.array([[math.pi / 4 - shear / 2]])
    found = draped_stiffness(made, warp, weft).a[0]
    plain = draped_stiffness(made, np.array([[-math.pi / 4]]), np.array([[math.pi / 4]])).a[0]
    assert found[0, 0] > 1.8 * plain[0, 0]
    assert found[1, 1] < plain[1, 1]
    assert abs(found[0, 2]) < 1e-9 * found[0, 0]


def test_cloth_far_past_locking_is_refused():
    made = analyse(layup(CARBON, 0))
    with pytest.raises(InputError, match="dart or a splice"):
        draped_stiffness(made, np.array([[0.0]]), np.array([[0.03]]))


def test_a_core_keeps_its_thickness_and_place():
    core = Core(MATERIALS.core("Closed-cell PVC foam 80 kg/m^3"), 6.0, 1)
    made = analyse(layup(CARBON, 0, 30, core=core))
    angles = np.array([[ply.angle for ply in made.layup.plies]])
    found = draped_stiffness(made, angles, angles + math.pi / 2.0)
    for name in "abd":
        plain = getattr(made, name)
        assert np.allclose(getattr(found, name)[0], plain, rtol=0, atol=1e-9 * np.abs(plain).max())


def test_a_cover_that_is_given_is_taken():
    made = analyse(layup(CARBON, 0))
    warp, weft = np.array([[0.0]]), np.array([[math.pi / 2.0]])
    plain = draped_stiffness(made, warp, weft)
    doubled = draped_stiffness(made, warp, weft, np.array([[2.0]]))
    assert doubled.a == pytest.approx(2.0 * plain.a, rel=1e-12)
    assert doubled.d == pytest.approx(8.0 * plain.d, rel=1e-12)
