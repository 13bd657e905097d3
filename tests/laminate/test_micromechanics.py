from __future__ import annotations

import dataclasses
import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laminate.stacks import CARBON, GLASS, RESIN
from laywright.errors import LimitError
from laywright.laminate.lamina import Lamina
from laywright.laminate.micromechanics import (
    HEXAGONAL_PACKING,
    check_fraction,
    constituents_of,
    fibre_volume_fraction,
    halpin_tsai,
    mixture,
    ply_thickness,
    straight_plies,
    unidirectional,
)

densities = st.floats(0.9, 3.0)
shares = st.floats(0.05, 0.9)
voids = st.floats(0.0, 0.09)


@given(shares, densities, densities, voids)
def test_mass_and_volume_fraction_say_the_same(share, fibre, resin, void):
    volume = fibre_volume_fraction(share, fibre, resin, void)
    mass = volume * fibre / (volume * fibre + (1.0 - volume - void) * resin)
    assert mass == pytest.approx(share, rel=1e-9)


@given(shares, densities, densities, voids, st.floats(20.0, 600.0))
def test_mass_is_density_times_thickness(share, fibre, resin, void, areal):
    volume = fibre_volume_fraction(share, fibre, resin, void)
    thickness = ply_thickness(areal, fibre, volume)
    density = mixture((fibre, resin), (volume, 1.0 - volume - void))
    assert 1000.0 * density * thickness == pytest.approx(areal / share, rel=1e-9)


@given(st.floats(1e3, 4e5), st.floats(1e3, 1e4), shares)
def test_halpin_tsai_lies_between_the_two_mixtures(fibre, resin, share):
    between = halpin_tsai(fibre, resin, share, 2.0)
    low = 1.0 / mixture((1.0 / fibre, 1.0 / resin), (share, 1.0 - share))
    high = mixture((fibre, resin), (share, 1.0 - share))
    assert low * (1.0 - 1e-9) <= between <= high * (1.0 + 1e-9)


@given(st.floats(0.01, 0.9))
def test_fibre_like_the_resin_makes_a_ply_like_the_resin(share):
    shear = RESIN.modulus / (2.0 * (1.0 + RESIN.poisson))
    same = dataclasses.replace(
        GLASS.fibre,
        axial_modulus=RESIN.modulus,
        transverse_modulus=RESIN.modulus,
        shear_modulus=shear,
        poisson=RESIN.poisson,
        expansion_axial=RESIN.expansion,
        expansion_transverse=RESIN.expansion,
    )
    ply = unidirectional(same, RESIN, share)
    resin = (RESIN.modulus, RESIN.modulus, RESIN.poisson, shear, 60e-6, 60e-6)
    even = Lamina(*resin, shear_13=shear, shear_23=shear)
    for field in dataclasses.fields(Lamina):
        if not field.name.startswith("swelling"):
            assert getattr(ply, field.name) == pytest.approx(getattr(even, field.name), rel=1e-9)


@given(shares)
def test_swelling_balances_the_forces(share):
    """Along the fibres the swelling resin and the dry fibre hold each other."""
    fibre = CARBON.fibre
    ply = unidirectional(fibre, RESIN, share)
    force = share * fibre.axial_modulus * ply.swelling_1
    force += (1.0 - share) * RESIN.modulus * (ply.swelling_1 - RESIN.swelling)
    assert abs(force) < 1e-9 * RESIN.modulus
    assert ply.swelling_2 > ply.swelling_1


@given(shares, st.floats(0.0, 0.05))
def test_many_plies_at_once_are_each_the_single_ply(share, void):
    fractions = np.array([share, 0.5 * share, 0.3])
    many = straight_plies(constituents_of(CARBON.fibre, RESIN), fractions, void)
    for number, fraction in enumerate(fractions.tolist()):
        one = unidirectional(CARBON.fibre, RESIN, fraction, void)
        for name in ("modulus_1", "modulus_2", "poisson_12", "shear_12"):
            assert getattr(many, name)[number] == pytest.approx(getattr(one, name), rel=1e-12)


@given(shares)
def test_axial_expansion_balances_the_forces(share):
    """Schapery: along the fibres the two constituents hold each other without outer force."""
    fibre = CARBON.fibre
    ply = unidirectional(fibre, RESIN, share)
    force = share * fibre.axial_modulus * (ply.expansion_1 - fibre.expansion_axial)
    force += (1.0 - share) * RESIN.modulus * (ply.expansion_1 - RESIN.expansion)
    assert abs(force) < 1e-9 * RESIN.modulus


def test_voids_weaken_across_the_fibres_and_hardly_along_them():
    sound, porous = (unidirectional(CARBON.fibre, RESIN, 0.4, void) for void in (0.0, 0.06))
    assert sound.modulus_1 - porous.modulus_1 == pytest.approx(0.06 * RESIN.modulus, rel=1e-9)
    # the resin is a tenth softer; across the fibres the ply loses most of that tenth
    assert 0.90 < porous.modulus_2 / sound.modulus_2 < 0.95


@pytest.mark.parametrize("fraction", [0.0, -0.1, HEXAGONAL_PACKING + 1e-9, math.nan])
def test_more_fibre_than_can_be_packed_is_refused(fraction):
    with pytest.raises(LimitError, match="densest packing"):
        check_fraction(fraction, "ply 1")
