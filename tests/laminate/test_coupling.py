from __future__ import annotations

import dataclasses

import numpy as np
import pytest

from laminate.stacks import CARBON, MATERIALS, TAPE, layup
from laywright.laminate.coupling import State, coupling_words, free_shape_words, state_of
from laywright.laminate.laminate import analyse
from laywright.laminate.plies import Core


@pytest.mark.parametrize(
    ("degrees", "state"),
    [
        ((0, 90, 90, 0), State(True, True, True)),
        ((30, -30, -30, 30), State(True, True, False)),
        ((30, 30), State(True, False, False)),
        ((0, 90), State(False, True, True)),
        ((45, -45), State(False, True, True)),
        ((0, 45), State(False, False, False)),
    ],
)
def test_state_of_tape_laminates(degrees, state):
    made = analyse(layup(TAPE, *degrees))
    assert made.state == state
    assert state_of(made.stiffness, made.thickness) == state


def test_a_core_off_the_middle_is_not_symmetric():
    core = Core(MATERIALS.core("Closed-cell PVC foam 80 kg/m^3"), 6.0, 1)
    assert not analyse(layup(CARBON, 0, 0, 0, core=core)).state.symmetric


def test_an_even_laminate_needs_no_words():
    made = analyse(layup(TAPE, 0, 90, 90, 0))
    assert made.couplings == ()
    assert free_shape_words(made.warp, made.swell_warp, 0.03) == ()


@pytest.mark.parametrize(
    ("degrees", "words"),
    [
        ((30, 30), ("shears by",)),
        ((0, 90), ("a flat strip of 300 mm bends by",)),
        ((45, -45), ("a square of 300 mm lifts a corner by",)),
        ((30, -30, -30, 30), ("it also twists",)),
    ],
)
def test_each_coupling_is_named_alone(degrees, words):
    said = " ".join(analyse(layup(TAPE, *degrees)).couplings)
    every = ("shears by", "bends by", "lifts a corner", "it also twists")
    for word in words:
        assert word in said
    expected = {word for word in every if any(word in w for w in words) or word in words}
    if degrees != (30, 30):  # one angle alone shears, and twists when bent
        assert {word for word in every if word in said} == expected


def test_amounts_are_those_of_the_theory():
    made = analyse(layup(TAPE, 30, 30))
    compliance = np.linalg.inv(made.stiffness.matrix())
    shear = 1e-3 * abs(compliance[2, 0] / compliance[0, 0])
    assert f"Pulled by 0.1% along the datum arrow, it shears by {shear:.2%}." in made.couplings
    assert coupling_words(made.stiffness) == made.couplings


def test_water_bends_the_other_way_and_is_said():
    made = analyse(layup(TAPE, 0, 90))
    words = free_shape_words(made.warp, made.swell_warp, 0.03)
    assert len(words) == 2
    assert "it will curl when it cools from cure" in words[0]
    assert "it will curl when it takes up water" in words[1]
    # cooling shrinks what swelling stretches
    assert np.sign(-made.warp[0]) == -np.sign(made.swell_warp[0])
    rise = 0.03 * abs(made.swell_warp[0]) * 300.0**2 / 8.0
    assert f"rises by about {rise:.1f} mm with 3.0% of water" in words[1]
    drier = dataclasses.replace(layup(TAPE, 0, 90).resin, water_uptake=0.01)
    remarks = " ".join(analyse(dataclasses.replace(layup(TAPE, 0, 90), resin=drier)).remarks)
    assert f"rises by about {rise / 3.0:.1f} mm with 1.0% of water" in remarks


def test_swelling_of_a_symmetric_laminate_is_held_by_its_fibres():
    made = analyse(layup(TAPE, 0, 90, 90, 0))
    assert np.abs(made.swell_warp).max() < 1e-12
    free = MATERIALS.resin("Laminating epoxy, slow hardener").swelling
    assert 0.0 < made.swelling[0] < 0.1 * free
    assert made.swelling[0] == pytest.approx(made.swelling[1], rel=1e-9)
