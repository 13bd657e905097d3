from __future__ import annotations

import dataclasses
import math

import numpy as np
import pytest

from laminate.stacks import MATERIALS
from laywright.laminate.certainty import Certainty, how_sure
from laywright.laminate.criteria import Criterion
from laywright.laminate.laminate import analyse
from laywright.laminate.loads import LoadCase
from laywright.laminate.sampling import Scatter
from laywright.laminate.strength import check_strength
from laywright.laminate.used_cards import NamedCore, NamedPly, layup_of
from laywright.values import pack, unpack

STILL = Scatter(0.0, 0.0, 0.0, 100)
TWILL = "Carbon twill weave 200 g/m^2"
TAPE = "Carbon unidirectional 150 g/m^2"
RESIN = "Laminating epoxy, slow hardener"
LOAD = LoadCase((10.0, 3.0, 2.0), (0.5, 0.0, 0.2))


def stack(*plies, **settings):
    named = [NamedPly(cloth, math.radians(angle)) for cloth, angle in plies]
    return layup_of(MATERIALS, named, RESIN, **settings)


LAYUP = stack((TWILL, 0), (TAPE, 30), (TAPE, -60), (TWILL, 45))


@pytest.mark.parametrize("criterion", Criterion)
def test_without_scatter_every_part_is_the_planned_one(criterion):
    """The kernels for many parts at once agree with those for one."""
    bare = dataclasses.replace(LAYUP, cards=())
    found = how_sure(bare, LOAD, criterion, scatter=STILL)
    made = analyse(bare)
    margin = check_strength(made, LOAD, criterion).first_factor
    assert [band.name for band in found.bands][-1] == "margin"
    for band in found.bands:
        assert (band.low, band.high) == pytest.approx((band.planned, band.planned), rel=1e-9)
        assert (band.matters, band.share) == ("", 0.0)
    assert found.band("margin").planned == pytest.approx(margin, rel=1e-12)
    assert found.band("thickness").planned == made.thickness
    assert found.varied == ()


def test_a_single_range_gives_the_band_of_its_triangle():
    """Only the areal weight varies: mass and thickness are proportional to it."""
    layup = stack((TWILL, 0), (TWILL, 0))
    only = tuple(
        dataclasses.replace(
            card, values={k: v for k, v in card.values.items() if k == "areal_weight"}
        )
        for card in layup.cards
        if card.name == TWILL
    )
    found = how_sure(
        dataclasses.replace(layup, cards=only), scatter=dataclasses.replace(STILL, samples=20_000)
    )
    low, high = 1.0 - 10.0 / 200.0, 1.0 + 10.0 / 200.0
    ends = (low + math.sqrt(0.05 * 0.1 * 0.05), high - math.sqrt(0.05 * 0.1 * 0.05))
    for name in ("mass", "thickness"):
        band = found.band(name)
        assert band.low / band.planned == pytest.approx(ends[0], abs=1e-3)
        assert band.high / band.planned == pytest.approx(ends[1], abs=1e-3)
        assert band.matters == f"areal weight of {TWILL}"
        assert band.share == pytest.approx(1.0, abs=1e-9)


def test_bands_hold_the_plan_and_name_what_matters():
    found = how_sure(LAYUP, LOAD)
    for band in found.bands:
        assert band.low < band.planned < band.high
        assert band.low < band.middle < band.high
        assert 0.1 < band.share <= 1.0
        assert band.matters in band.sentence
    assert found.band("mass").matters == "resin share"
    assert "strength" in found.band("margin").matters
    assert "nothing of mistakes" in " ".join(found.remarks)


def test_shares_of_the_variance_add_up():
    """Inputs are drawn apart, so their shares add up to less than one, near one if straight."""
    layup = stack((TWILL, 0), (TWILL, 45), (TWILL, 0))
    small = Scatter(0.01, 0.005, 0.01, 5000)
    wide = how_sure(layup, scatter=small)
    assert 0.0 < wide.band("thickness").share < 1.0
    askew = how_sure(
        dataclasses.replace(layup, cards=()), scatter=Scatter(0.0, 0.0, 0.3, 2000)
    ).band("modulus along")
    assert askew.matters == "angles of the plies"
    assert askew.high < 1.02 * askew.planned


def test_the_seed_fixes_the_result():
    first, again = (how_sure(LAYUP, scatter=Scatter(samples=200, seed=7)) for _ in range(2))
    assert first == again
    assert first != how_sure(LAYUP, scatter=Scatter(samples=200, seed=8))


def test_a_core_varies_in_mass_and_is_not_judged():
    cored = stack((TWILL, 0), (TWILL, 0), core=NamedCore("End-grain balsa 150 kg/m^3", 20.0, 1))
    found = how_sure(cored, LoadCase((10.0, 0.0, 0.0)))
    assert found.band("mass").matters == "density of End-grain balsa 150 kg/m^3"
    assert "the core is not judged" in " ".join(found.remarks)


def test_result_survives_storage():
    found = how_sure(LAYUP, LOAD, scatter=Scatter(samples=100))
    assert unpack(Certainty, pack(found)) == found
    assert np.isfinite(found.band("margin").high)
