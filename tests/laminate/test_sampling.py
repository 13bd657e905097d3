from __future__ import annotations

import math

import numpy as np
import pytest

from laminate.stacks import MATERIALS, RESIN
from laywright.errors import InputError
from laywright.laminate.plies import Process
from laywright.laminate.sampling import Draws, Scatter, usual_scatter

CARDS = tuple(MATERIALS.cards.values())


def test_numbers_fill_the_range_of_the_card_in_kernel_units():
    found = Draws(CARDS, 20_000, 1).of(RESIN, "modulus")
    assert 2400.0 <= found.min() < 2450.0
    assert 4400.0 < found.max() <= 4500.0
    # a triangle from 2400 over 3100 to 4500 MPa
    assert found.mean() == pytest.approx((2400 + 3100 + 4500) / 3, rel=0.005)


def test_a_value_without_a_range_stays():
    draws = Draws(CARDS, 100, 1)
    assert np.ptp(draws.of(RESIN, "pot_life_mass_g")) == 0.0
    assert np.ptp(Draws((), 100, 1).of(RESIN, "modulus")) == 0.0
    assert draws.drawn == {}


def test_a_field_of_a_group():
    cloth = MATERIALS.cloth("Carbon twill weave 200 g/m^2")
    draws = Draws(CARDS, 1000, 1)
    found = draws.of(cloth, "strengths.shear")
    card = MATERIALS.cards[cloth.name].values["strengths.shear"]
    assert card.low <= found.min() < found.max() <= card.high
    assert list(draws.drawn) == [f"strength, shear of {cloth.name}"]


def test_the_same_seed_gives_the_same_numbers():
    first, again, other = (Draws(CARDS, 100, seed).of(RESIN, "density") for seed in (1, 1, 2))
    assert np.array_equal(first, again)
    assert not np.array_equal(first, other)


@pytest.mark.parametrize("process", Process)
def test_less_scatter_the_better_the_process(process):
    hand, usual = usual_scatter(Process.HAND), usual_scatter(process)
    assert usual.resin_share <= hand.resin_share
    assert usual.void_share <= hand.void_share


@pytest.mark.parametrize(
    "change", [{"resin_share": 0.5}, {"angle": math.nan}, {"samples": 10}, {"void_share": -0.1}]
)
def test_bad_scatter_is_refused(change):
    with pytest.raises(InputError):
        Scatter(**change)
