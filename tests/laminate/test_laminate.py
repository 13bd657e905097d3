from __future__ import annotations

import dataclasses
import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laminate.stacks import CARBON, GLASS, MAT, MATERIALS, RESIN, TAPE, layup
from laywright.errors import LimitError
from laywright.laminate.laminate import Laminate, analyse
from laywright.laminate.layers import laminae
from laywright.laminate.plies import Layup, Ply, Process
from laywright.values import pack, unpack


@pytest.mark.parametrize(
    ("density", "name", "areal", "share", "thickness", "fraction"),
    [
        (2.55, "E-glass plain weave 163 g/m^2", 163.0, 0.5, 0.206, 0.31),
        (2.55, "E-glass plain weave 163 g/m^2", 163.0, 0.4, 0.158, 0.40),
        (1.78, "Carbon twill weave 200 g/m^2", 200.0, 0.5, 0.286, 0.39),
        (1.78, "Carbon twill weave 200 g/m^2", 200.0, 0.4, 0.228, 0.49),
        (1.44, "Aramid plain weave 170 g/m^2", 170.0, 0.5, 0.266, 0.44),
    ],
)
def test_ply_thickness_table(density, name, areal, share, thickness, fraction):
    """Thickness and fibre fraction as they are tabulated in handbooks for such cloths."""
    cloth = MATERIALS.cloth(name)
    fibre = dataclasses.replace(cloth.fibre, density=density)
    made = analyse(
        layup(dataclasses.replace(cloth, fibre=fibre, areal_weight=areal), 0, resin_share=share)
    )
    assert made.thickness == pytest.approx(thickness, abs=0.0006)
    assert made.fibre_volume_fraction == pytest.approx(fraction, abs=0.006)


@given(
    st.lists(st.sampled_from([CARBON, GLASS, TAPE, MAT]), min_size=1, max_size=5),
    st.floats(0.2, 0.8),
    st.floats(0.0, 0.1),
)
def test_volumes_and_masses_are_conserved(cloths, share, void):
    made = analyse(
        Layup(tuple(Ply(c, 0.3) for c in cloths), RESIN, resin_share=share, void_share=void)
    )
    assert made.cloth_areal + made.resin_areal == pytest.approx(made.areal_mass, rel=1e-12)
    assert made.resin_share == pytest.approx(share, rel=1e-12)
    volume = (
        sum(c.areal_weight / c.fibre.density for c in cloths) + made.resin_areal / RESIN.density
    )
    assert made.thickness * (1.0 - void) * 1000.0 == pytest.approx(volume, rel=1e-12)
    assert float(made.ply_thicknesses.sum()) == pytest.approx(made.thickness, rel=1e-12)
    fibre = float(made.ply_fibre_fractions @ made.ply_thicknesses) / made.thickness
    assert made.fibre_volume_fraction == pytest.approx(fibre, rel=1e-12)


def test_heights_count_from_the_mould():
    made = analyse(Layup((Ply(GLASS, 0.0), Ply(CARBON, 0.0)), RESIN))
    first, second = made.ply_thicknesses.tolist()
    assert made.ply_heights.tolist() == pytest.approx([first / 2.0, first + second / 2.0])


def test_a_bag_makes_the_same_cloth_thinner_lighter_and_stiffer():
    hand, bagged = (
        analyse(layup(CARBON, 0, 45, 45, 0, process=process))
        for process in (Process.HAND, Process.BAGGED)
    )
    assert bagged.thickness / hand.thickness == pytest.approx(0.80, abs=0.01)
    assert bagged.areal_mass / hand.areal_mass == pytest.approx(5.0 / 6.0, rel=1e-12)
    assert bagged.in_plane.e_x > 1.2 * hand.in_plane.e_x


def test_angles_turn_counter_clockwise():
    """A tape at +30 degrees is stiffest along +30 degrees, not along -30."""
    made = analyse(layup(TAPE, 30))
    assert made.a[0, 2] > 0.0
    assert made.a[1, 2] > 0.0
    assert analyse(layup(TAPE, -30)).a[0, 2] == pytest.approx(-made.a[0, 2], rel=1e-12)


def test_ply_1_lies_at_the_mould():
    """Tape along x at the mould and across x away from it: B11 is negative."""
    assert analyse(layup(TAPE, 0, 90)).b[0, 0] < 0.0
    assert analyse(layup(TAPE, 90, 0)).b[0, 0] > 0.0


def test_symmetric_balanced_layup_is_not_remarked_on():
    made = analyse(layup(CARBON, 0, 45, 45, 0))
    assert made.remarks == ()
    assert np.abs(made.warp).max() < 1e-15


def test_unsymmetric_tape_is_said_to_curl():
    made = analyse(layup(TAPE, 0, 90))
    (remark,) = made.remarks
    assert "it will curl when it cools from cure" in remark
    rise = abs(made.warp[0]) * 10.0 * 300.0**2 / 8.0
    assert f"about {rise:.1f} mm" in remark
    assert made.warp[0] == pytest.approx(-made.warp[1], rel=1e-9)


def test_unsymmetric_angles_are_said_to_twist():
    made = analyse(layup(TAPE, 45, -45))
    (remark,) = made.remarks
    assert "it will twist when it cools from cure" in remark
    assert "curl" not in remark
    lift = abs(made.warp[2]) * 10.0 * 300.0**2 / 2.0
    assert f"lifts a corner by about {lift:.1f} mm" in remark


def test_unsymmetric_balanced_cloth_twists_but_hardly_warps():
    (remark,) = analyse(layup(CARBON, 0, 45)).remarks
    assert "bends or twists when it is pulled" in remark


def test_unbalanced_angles_are_remarked_on():
    assert "also shears" in " ".join(analyse(layup(TAPE, 30, 30)).remarks)
    assert analyse(layup(TAPE, 30, -30, -30, 30)).remarks == ()


@pytest.mark.parametrize(
    ("share", "process", "words"),
    [
        (0.25, Process.HAND, "may stay dry"),
        (0.75, Process.HAND, "heavy and weak"),
        (0.60, Process.BAGGED, "where bagged work usually gives"),
    ],
)
def test_unlikely_fibre_fraction_is_remarked_on(share, process, words):
    made = analyse(layup(CARBON, 0, resin_share=share, process=process))
    assert words in " ".join(made.remarks)
    assert made.remarks[0].startswith("Ply 1 would hold")


def test_more_fibre_than_fits_is_refused():
    aramid = MATERIALS.cloth("Aramid plain weave 170 g/m^2")
    with pytest.raises(LimitError) as caught:
        analyse(layup(aramid, 0, resin_share=0.05))
    assert caught.value.where == "ply 1: fibre volume fraction"


def test_result_survives_storage_and_knows_its_inputs():
    stack = layup(CARBON, 0, 45, 45, 0)
    made = analyse(stack)
    back = unpack(Laminate, pack(made))
    assert pack(back) == pack(made)
    assert back.digest == analyse.digest(stack) != analyse.digest(layup(CARBON, 0, 45, 0, 45))
    assert np.array_equal(back.a, made.a)


def test_laminae_follow_the_plies():
    found = laminae(layup(TAPE, 0, 45))
    assert found[0] == found[1]
    assert found[0].modulus_1 > 8.0 * found[0].modulus_2


def test_hand_laid_moduli_are_of_the_usual_size():
    """Carbon twill 35 to 50 GPa, glass plain 12 to 20 GPa: handbook ranges, from memory."""
    assert 35e3 < analyse(layup(CARBON, 0)).in_plane.e_x < 50e3
    assert 12e3 < analyse(layup(GLASS, 0)).in_plane.e_x < 20e3
    turned = analyse(layup(CARBON, 45)).in_plane
    assert turned.e_x < 0.3 * analyse(layup(CARBON, 0)).in_plane.e_x
    assert math.isclose(turned.e_x, turned.e_y, rel_tol=1e-9)
