from __future__ import annotations

import itertools
import math

import numpy as np
import pytest

from laminate.stacks import CARBON, GLASS, MATERIALS, RESIN, TAPE
from laywright.errors import InputError
from laywright.laminate.candidates import Choices, Prices, candidates
from laywright.laminate.choice import Aim, Ranking, Wish, rank_layups
from laywright.laminate.laminate import analyse
from laywright.laminate.plies import Core, Layup, Ply, Process
from laywright.values import pack, unpack

ANGLES = tuple(math.radians(angle) for angle in (0, 45, -45, 90))
CHOICES = Choices((GLASS, TAPE), ANGLES, RESIN, most_plies=5)
FOAM = MATERIALS.core("Closed-cell PVC foam 80 kg/m^3")


def by_hand(choices: Choices):
    """Every symmetric and balanced layup, one by one."""
    for plies in range(1, choices.most_plies + 1):
        half = (plies + 1) // 2
        for row in itertools.product(choices.options, repeat=half):
            stack = [*row, *reversed(row[: half - plies % 2])]
            made = analyse(Layup(tuple(Ply(c, a) for c, a in stack), RESIN, choices.process))
            if made.state.balanced:
                yield made


def test_every_symmetric_balanced_layup_is_there_with_the_figures_of_the_stage():
    choices = Choices((GLASS, TAPE), ANGLES, RESIN, Process.BAGGED, most_plies=3)
    found = candidates(choices)
    for index, made in enumerate(by_hand(choices)):
        stack = [choices.options[number] for number in found.stack(index)]
        assert [(ply.cloth, ply.angle) for ply in made.layup.plies] == stack
        assert found.plies[index] == len(stack)
        assert found.thickness[index] == pytest.approx(made.thickness, rel=1e-12)
        assert found.mass[index] == pytest.approx(made.areal_mass, rel=1e-12)
        strip = made.bending.e_x * made.thickness**3 / 12.0
        assert found.bending[index, 0] == pytest.approx(strip, rel=1e-9)
        assert found.pull[index, 1] == pytest.approx(made.in_plane.e_y * made.thickness, rel=1e-9)
    assert index + 1 == len(found.mass)


def test_the_best_is_the_best_of_all_that_fit():
    wish = Wish(Aim.MASS, bending_along=4000.0, bending_across=2000.0)
    ranking = rank_layups(CHOICES, wish)
    found = candidates(CHOICES)
    fits = (found.bending >= [4000.0, 2000.0]).all(axis=1)
    assert ranking.fitting == fits.sum() < ranking.tried == len(found.mass)
    assert ranking.best[0].areal_mass == pytest.approx(found.mass[fits].min())
    masses = [candidate.areal_mass for candidate in ranking.best]
    assert masses == sorted(masses)
    for candidate in ranking.best:
        plies = tuple(
            Ply(MATERIALS.cloth(cloth), angle)
            for cloth, angle in zip(candidate.cloths, candidate.angles, strict=True)
        )
        made = analyse(Layup(plies, RESIN))
        assert made.state.symmetric
        assert made.state.balanced
        assert made.areal_mass == pytest.approx(candidate.areal_mass, rel=1e-12)
        assert made.bending.e_x * made.thickness**3 / 12.0 >= 4000.0 * (1.0 - 1e-9)


def test_a_balanced_weave_turned_by_a_right_angle_is_no_other_layup():
    """Of one balanced weave at 0, 45, -45 and 90 degrees there are two different plies."""
    ranking = rank_layups(Choices((CARBON,), ANGLES, RESIN, most_plies=2), Wish(), count=50)
    assert [candidate.angles for candidate in ranking.best] == [
        (0.0,),
        (math.pi / 4.0,),
        (0.0, 0.0),
        (math.pi / 4.0, math.pi / 4.0),
    ]
    assert ranking.tried == 8


@pytest.mark.parametrize(
    ("aim", "key"),
    [
        (Aim.THICKNESS, lambda c: c.thickness),
        (Aim.COST, lambda c: c.cost),
        (Aim.BENDING, lambda c: -min(c.bending_along, c.bending_across)),
    ],
)
def test_other_aims(aim, key):
    prices = Prices({GLASS.name: 8.0, TAPE.name: 35.0}, resin=25.0)
    choices = Choices((GLASS, TAPE), ANGLES, RESIN, most_plies=4, prices=prices)
    ranking = rank_layups(choices, Wish(aim, mass=900.0))
    ranks = [key(candidate) for candidate in ranking.best]
    assert ranks == sorted(ranks)
    assert all(candidate.areal_mass <= 900.0 for candidate in ranking.best)


def test_cost_is_cloth_and_resin():
    prices = Prices({CARBON.name: 30.0}, resin=20.0, core=12.0)
    core = Core(FOAM, 5.0, 1)
    choices = Choices((CARBON,), (0.0,), RESIN, most_plies=2, core=core, prices=prices)
    (only,) = rank_layups(choices, Wish(Aim.COST)).best
    resin = 2.0 * 200.0 + 2.0 * FOAM.bond_resin
    assert only.cost == pytest.approx(2.0 * 30.0 + resin * 0.02 + 12.0)
    made = analyse(Layup((Ply(CARBON, 0.0),) * 2, RESIN, core=core))
    assert only.areal_mass == pytest.approx(made.areal_mass)
    assert only.thickness == pytest.approx(made.thickness)
    assert only.bending_along == pytest.approx(made.bending.e_x * made.thickness**3 / 12.0)


def test_nothing_is_lighter_and_stiffer_than_the_front():
    ranking = rank_layups(CHOICES, Wish())
    found = candidates(CHOICES)
    weaker = found.bending.min(axis=1)
    for mass, stiffness in ranking.front:
        assert not ((found.mass < mass - 1e-6) & (weaker >= stiffness)).any()
    assert (np.diff(ranking.front, axis=0) > 0.0).all()


def test_a_wish_beyond_reach_says_what_is_to_be_had():
    with pytest.raises(InputError, match=r"they weigh 300 to \d+ g/m\^2 and reach"):
        rank_layups(CHOICES, Wish(bending_along=1e9))


def test_rules_of_thumb_are_marked_and_promise_nothing():
    notes = " ".join(rank_layups(CHOICES, Wish()).notes)
    assert "common practice, no source" in notes
    assert "no protection level is computed or claimed" in notes


def test_result_survives_storage():
    ranking = rank_layups(CHOICES, Wish())
    assert pack(unpack(Ranking, pack(ranking))) == pack(ranking)


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"most_plies": 0}, "most plies"),
        ({"angles": ()}, "no angle"),
        ({"most_plies": 20}, "at most 300000"),
        ({"prices": Prices({GLASS.name: 1.0})}, "none for Carbon uni"),
    ],
)
def test_bad_choices_are_refused(change, words):
    settings = {"cloths": (GLASS, TAPE), "angles": ANGLES, "resin": RESIN} | change
    with pytest.raises(InputError, match=words):
        Choices(**settings)


def test_cost_without_prices_is_refused():
    with pytest.raises(InputError, match="no prices"):
        rank_layups(CHOICES, Wish(Aim.COST))
