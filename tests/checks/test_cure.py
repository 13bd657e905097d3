"""Cure kinetics and mould growth against closed forms."""

from __future__ import annotations

import dataclasses

from scipy.optimize import brentq

from checks import reference
from laywright.laminate.materials import load_materials
from laywright.mould.body.compensation import growth_scale, print_scale
from laywright.shop.curing.cure import plan_cure
from laywright.shop.curing.cure_settings import CureSettings, Support
from laywright.shop.kinetics import (
    adiabatic_rise,
    glass_transition,
    laminate_heat,
    nth_order_cure,
    rate_ratio,
    time_at,
)
from laywright.shop.mixing.cups import pot_life

RESIN = load_materials().resin("Laminating epoxy, slow hardener")


def energy_that_doubles(first: float, second: float) -> float:
    """Return the energy, kJ/mol, for which the rate doubles from the first temperature on."""
    return float(brentq(lambda e: rate_ratio(1e3 * e, first, second) - 2.0, 1.0, 500.0, xtol=1e-12))


def test_cur_01_energy_of_the_ten_degree_rule():
    reference.agree(
        "CUR-01",
        {
            "Ea_20_30": energy_that_doubles(20.0, 30.0),
            "Ea_60_70": energy_that_doubles(60.0, 70.0),
        },
    )


def test_cur_02_times():
    resin = dataclasses.replace(RESIN, pot_life_minutes=30.0, pot_life_temperature_c=25.0)
    reference.agree(
        "CUR-02",
        {
            "full_cure_30C": time_at(7.0, 20.0, 30.0),
            "full_cure_15C": time_at(7.0, 20.0, 15.0),
            "pot_life_35C": pot_life(resin, 35.0),
            "pot_life_18C": pot_life(resin, 18.0),
        },
    )


def test_cur_04_degree_of_cure():
    reference.agree(
        "CUR-04",
        {
            "n1": nth_order_cure(0.02, 100.0),
            "n2": nth_order_cure(0.02, 200.0, 2.0),
        },
    )


def test_cur_06_adiabatic_bound():
    neat = adiabatic_rise(400.0, 1.8)
    reference.agree(
        "CUR-06",
        {
            "dT_neat": neat,
            "T_neat": 22.0 + neat,
            "dT_laminate": adiabatic_rise(*laminate_heat(400.0, 1.8, 0.55, 0.8)),
        },
    )


def test_cur_08_glass_transition():
    reference.agree(
        "CUR-08",
        {
            "Tg_a0": glass_transition(0.0, -30.0, 90.0),
            "Tg_a0.8": glass_transition(0.8, -30.0, 90.0),
            "Tg_a1": glass_transition(1.0, -30.0, 90.0),
        },
    )


def test_mld_01_margin_to_the_softening_of_the_mould():
    """The row asks for a margin of at least 10 degC; one degree decides."""
    assert "margin >=10 C" in reference.row("MLD-01")["expected"][0]["value"]
    warned = {
        post_cure: any("too hot for the mould" in text for text in plan.warnings)
        for post_cure in (45.0, 46.0)
        for plan in (
            plan_cure(
                RESIN,
                CureSettings(21.0, 55.0, post_cure, 8.0, Support.MOULD),
                0.5,
            ),
        )
    }
    assert warned == {45.0: False, 46.0: True}


def test_mld_02_growth_of_a_printed_mould():
    scale, _, _ = print_scale((0.003, 0.0, 0.0))
    reference.agree(
        "MLD-02",
        {
            "growth": 300.0 / growth_scale(68e-6, 20.0) - 300.0,
            "scale_for_shrink": scale,
            "printed_length_before_shrink": 300.0 * scale,
        },
    )
