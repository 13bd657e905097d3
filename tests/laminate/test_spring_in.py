from __future__ import annotations

import dataclasses

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laminate.stacks import CARBON, GLASS, MAT, RESIN, TAPE, layup
from laywright.laminate.laminate import analyse
from laywright.laminate.spring_in import (
    FreeStrain,
    SpringIn,
    closing_share,
    cure_strain,
    spring_in,
    thermal_strain,
)
from laywright.values import pack, unpack

expansions = st.floats(-1e-6, 1e-4)


@given(st.floats(0.1, 3.0), expansions, st.floats(-150.0, 50.0))
def test_a_skin_that_shrinks_alike_all_over_keeps_its_angle(swept, expansion, change):
    assert spring_in(swept, expansion, expansion, change).total == 0.0


@given(expansions, expansions, st.floats(-150.0, 0.0))
def test_closing_is_proportional_to_the_turn(in_plane, through, change):
    one = spring_in(1.0, in_plane, through, change).total
    assert spring_in(2.5, in_plane, through, change).total == pytest.approx(2.5 * one, abs=1e-15)


@given(st.floats(0.2, 3.0), expansions, expansions, st.floats(-150.0, -1.0))
def test_arc_of_inner_and_outer_skin_give_the_formula(swept, in_plane, through, change):
    """Arcs shrink by the in-plane strain, their distance by the strain through: exact."""
    inner, outer = 5.0, 7.0
    length = (1.0 + in_plane * change) * swept
    turned = (length * outer - length * inner) / ((outer - inner) * (1.0 + through * change))
    assert spring_in(swept, in_plane, through, change).total == pytest.approx(
        turned - swept, abs=1e-12
    )


def test_through_strain_of_pure_resin_is_that_of_the_resin():
    fibre = dataclasses.replace(
        GLASS.fibre,
        axial_modulus=RESIN.modulus,
        transverse_modulus=RESIN.modulus,
        shear_modulus=RESIN.modulus / (2.0 * (1.0 + RESIN.poisson)),
        poisson=RESIN.poisson,
        expansion_axial=RESIN.expansion,
        expansion_transverse=RESIN.expansion,
    )
    cloth = dataclasses.replace(GLASS, fibre=fibre, crimp_angle=0.0)
    strain = thermal_strain(analyse(layup(cloth, 0, 30)))
    assert strain.through == pytest.approx(RESIN.expansion, rel=1e-9)
    assert strain.in_plane[:2] == pytest.approx((RESIN.expansion, RESIN.expansion), rel=1e-9)


def test_held_resin_expands_more_through_the_thickness():
    """Fibres hold the resin in the plane, so a laminate moves more through its thickness."""
    for cloth in (CARBON, GLASS, TAPE, MAT):
        strain = thermal_strain(analyse(layup(cloth, 0, 90, 90, 0)))
        assert strain.through > max(strain.in_plane[:2])
    crossed = thermal_strain(analyse(layup(TAPE, 0, 90, 90, 0)))
    alone = thermal_strain(analyse(layup(TAPE, 0)))
    assert crossed.through > alone.through


def test_in_plane_strain_is_that_of_the_symmetric_laminate():
    made = analyse(layup(TAPE, 0, 45, -45, 90, 90, -45, 45, 0))
    strain = thermal_strain(made)
    assert strain.in_plane == pytest.approx(made.expansion.tolist(), abs=1e-12)
    assert strain.in_plane[1] == pytest.approx(strain.in_plane[0], rel=1e-9)


def test_cure_shrinks_the_resin_and_not_the_fibre():
    made = analyse(layup(TAPE, 0))
    strain = cure_strain(made)
    assert strain.through < 0.0
    assert abs(strain.in_plane[0]) < 0.1 * abs(strain.in_plane[1])
    double = dataclasses.replace(RESIN, cure_shrinkage=2.0 * RESIN.cure_shrinkage)
    doubled = analyse(dataclasses.replace(made.layup, resin=double))
    assert cure_strain(doubled).through == pytest.approx(2.0 * strain.through, rel=1e-12)


def test_a_room_cured_corner_closes_by_cure_alone():
    closed = 90.0 * closing_share(analyse(layup(CARBON, 0, 45, 45, 0)), 0.0)
    assert 0.1 < closed < 1.5  # usual size of spring-in, from memory


def test_values_survive_storage():
    strain = FreeStrain((1e-6, 2e-6, 0.0), 5e-5)
    closed = SpringIn(0.01, 0.02)
    assert unpack(FreeStrain, pack(strain)) == strain
    assert unpack(SpringIn, pack(closed)) == closed
