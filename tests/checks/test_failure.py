"""Failure criteria and ply-by-ply failure against textbook examples."""

from __future__ import annotations

import math

import numpy as np

from checks import reference
from laywright.laminate.criteria import (
    Criterion,
    HillStrengths,
    hashin_indices,
    max_stress_factor,
    tsai_hill_factor,
    tsai_wu_factor,
)
from laywright.laminate.failure import StrengthPly, last_failure, ply_factors
from laywright.laminate.lamina import Lamina, Strengths, reduced_stiffness
from laywright.laminate.rotation import stress_rotation
from laywright.laminate.stiffness import laminate_stiffness, response

CARBON = Lamina(181e3, 10.3e3, 0.28, 7.17e3)
STRENGTHS = Strengths(1500.0, 1500.0, 40.0, 246.0, 68.0)


def test_fail_01_one_lamina_by_four_criteria():
    own = stress_rotation(math.radians(60.0)) @ (2.0, -3.0, 4.0)
    reference.agree(
        "FAIL-01",
        {
            "S_max_stress": float(max_stress_factor(own, STRENGTHS)),
            "S_TsaiHill_tensile_strengths": float(
                tsai_hill_factor(own, STRENGTHS, HillStrengths.TENSILE)
            ),
            "S_TsaiHill_signed_strengths": float(
                tsai_hill_factor(own, STRENGTHS, HillStrengths.BY_SIGN)
            ),
            "S_TsaiWu": float(tsai_wu_factor(own, STRENGTHS)),
        },
    )


def test_fail_02_first_and_last_ply():
    angles = np.radians([0.0, 90.0, 0.0])
    plies = tuple(StrengthPly(CARBON, STRENGTHS, float(angle), 5.0) for angle in angles)
    load = (1.0, 0.0, 0.0)
    factors = ply_factors(plies, load, (0.0, 0.0, 0.0), Criterion.TSAI_WU)
    first = float(factors.min())
    matrices = np.stack([reduced_stiffness(CARBON)] * 3)
    strain, _ = response(laminate_stiffness(matrices, angles, [5.0] * 3), (first, 0.0, 0.0))
    reference.agree(
        "FAIL-02",
        {
            "Nx_FPF": first * 1e3,
            "SR_0_ply": float(factors[0].min()) * 1e3,
            "Nx_LPF": last_failure(plies, load) * 1e3,
            "eps_x_FPF": strain[0],
        },
    )


def test_fail_03_off_axis_tension():
    strengths = Strengths(2280.0, 1725.0, 57.0, 228.0, 76.0)
    found = {}
    for angle in (10, 45):
        own = stress_rotation(math.radians(angle)) @ (1.0, 0.0, 0.0)
        found[f"max_stress_{angle}"] = float(max_stress_factor(own, strengths))
        found[f"TsaiHill_{angle}"] = float(tsai_hill_factor(own, strengths))
        found[f"TsaiWu_{angle}"] = float(tsai_wu_factor(own, strengths))
    reference.agree("FAIL-03", found)


def test_fail_06_hashin():
    strengths = Strengths(1140.0, 570.0, 35.0, 114.0, 72.0)
    found = hashin_indices([(1000.0, -50.0, 40.0), (-300.0, 20.0, 40.0)], strengths, 57.0)
    reference.agree(
        "FAIL-06",
        {
            "A_fibre_tension": found.fibre_tension[0],
            "A_matrix_compression": found.matrix_compression[0],
            "B_fibre_compression": found.fibre_compression[1],
            "B_matrix_tension": found.matrix_tension[1],
        },
    )
