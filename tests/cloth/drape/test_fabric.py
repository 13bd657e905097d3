"""Stiffnesses of the cloth."""

import math

import pytest

from laywright import values
from laywright.cloth.drape.fabric import Fabric, Start, fabric_for, fabric_of
from laywright.errors import LimitError
from laywright.laminate.materials import Weave, load_materials


@pytest.mark.parametrize("weave", list(Weave))
def test_yarns_are_stiffer_than_the_shear_of_every_cloth_but_mat(weave):
    fabric = fabric_for(weave)
    assert fabric.warp >= fabric.weft
    assert fabric.shear <= (0.5 if weave is Weave.MAT else 0.2) * fabric.weft
    assert values.unpack(Fabric, values.pack(fabric)) == fabric


def test_mat_is_the_same_in_all_directions():
    """Isotropic without lateral contraction: shear modulus = half of Young's modulus."""
    mat = fabric_for(Weave.MAT)
    assert mat.warp == mat.weft == 2.0 * mat.shear
    assert mat.start is Start.POINT


def test_tighter_weaves_lock_earlier():
    angles = [fabric_for(w).locking_angle for w in (Weave.PLAIN, Weave.TWILL, Weave.SATIN)]
    assert angles == sorted(angles)


def test_a_cloth_brings_its_own_locking_angle():
    cloth = load_materials().cloth("E-glass twill weave 200 g/m^2")
    fabric = fabric_of(cloth)
    assert fabric.locking_angle == cloth.locking_angle
    assert fabric.warp == fabric_for(Weave.TWILL).warp


@pytest.mark.parametrize(
    "wrong",
    [
        {"warp": 0.0},
        {"weft": -1.0},
        {"shear": math.nan},
        {"locking_angle": 2.0},
        {"locked": -1.0},
        {"warp_limit": 0.0},
        {"weft_limit": math.inf},
    ],
)
def test_impossible_stiffnesses_are_refused(wrong):
    usual = {"warp": 1.0, "weft": 1.0, "shear": 1e-4, "locking_angle": 0.7}
    with pytest.raises(LimitError, match="cloth"):
        Fabric(**(usual | wrong))
