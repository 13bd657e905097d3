"""Classical laminated plate theory against textbook examples and closed forms."""

from __future__ import annotations

import math

import numpy as np
import pytest

from checks import reference
from laywright.laminate.lamina import Lamina, lamina_of_stiffness, reduced_stiffness
from laywright.laminate.rotation import invariants, rotated_stiffness, stress_rotation
from laywright.laminate.stiffness import (
    Stiffness,
    bending_moduli,
    free_resultants,
    in_plane_moduli,
    laminate_stiffness,
    ply_strains,
    ply_stresses,
    response,
)

CARBON = Lamina(181e3, 10.3e3, 0.28, 7.17e3, 0.02e-6, 22.5e-6)
THREE = np.radians([0.0, 30.0, -45.0])


def stack(lamina: Lamina, count: int):
    return np.broadcast_to(reduced_stiffness(lamina), (count, 3, 3))


def expansions(*laminae: Lamina):
    return [(lamina.expansion_1, lamina.expansion_2, 0.0) for lamina in laminae]


def entries(matrix, letter: str, factor: float) -> dict[str, float]:
    places = {"11": (0, 0), "12": (0, 1), "16": (0, 2), "22": (1, 1), "26": (1, 2), "66": (2, 2)}
    return {f"{letter}{name}": factor * matrix[place] for name, place in places.items()}


def test_clt_01_reduced_stiffness():
    q = reduced_stiffness(CARBON) / 1e3
    reference.agree("CLT-01", {"Q11": q[0, 0], "Q12": q[0, 1], "Q22": q[1, 1], "Q66": q[2, 2]})


def test_clt_02_transformed_stiffness():
    turned = rotated_stiffness(reduced_stiffness(CARBON), math.radians(60.0))
    compliance = np.linalg.inv(turned)
    reference.agree(
        "CLT-02",
        {
            **entries(turned, "Qb", 1e-3),
            "Sbar11": compliance[0, 0] * 1e-6,
            "Sbar16": compliance[0, 2] * 1e-6,
            "Ex": 1e-3 / compliance[0, 0],
            "nu_xy": -compliance[0, 1] / compliance[0, 0],
        },
    )


def test_clt_03_stiffness_of_an_unsymmetric_laminate():
    found = laminate_stiffness(stack(CARBON, 3), THREE, [5.0] * 3)
    reference.agree(
        "CLT-03",
        {
            **entries(found.a, "A", 1e3),
            **entries(found.b, "B", 1.0),
            **entries(found.d, "D", 1e-3),
        },
    )


def test_clt_04_response_and_ply_stresses():
    plies, thicknesses = stack(CARBON, 3), [5.0] * 3
    strain, curvature = response(laminate_stiffness(plies, THREE, thicknesses), (1.0, 1.0, 0.0))
    stresses = ply_stresses(plies, THREE, ply_strains(thicknesses, strain, curvature))
    top = stresses[1, 0]
    own = stress_rotation(THREE[1]) @ top
    reference.agree(
        "CLT-04",
        {
            "eps_x0": strain[0],
            "eps_y0": strain[1],
            "gam_xy0": strain[2],
            "kx": curvature[0] * 1e3,
            "ky": curvature[1] * 1e3,
            "kxy": curvature[2] * 1e3,
            "sx_top_of_30_ply": top[0] * 1e6,
            "sy_top_of_30_ply": top[1] * 1e6,
            "txy_top_of_30_ply": top[2] * 1e6,
            "s1_top_of_30_ply": own[0] * 1e6,
            "s2_top_of_30_ply": own[1] * 1e6,
            "sum_of_ply_Nx": float((stresses[:, :, 0].mean(axis=1) * 5.0).sum() * 1e3),
        },
    )


def test_clt_05_thermal_response():
    plies, angles, thicknesses = stack(CARBON, 2), np.radians([0.0, 90.0]), [5.0, 5.0]
    change = -75.0
    force, moment = free_resultants(plies, expansions(CARBON, CARBON), angles, thicknesses)
    strain, curvature = response(
        laminate_stiffness(plies, angles, thicknesses), change * force, change * moment
    )
    stresses = ply_stresses(
        plies,
        angles,
        ply_strains(thicknesses, strain, curvature),
        change * np.array(expansions(CARBON, CARBON)),
    )
    reference.agree(
        "CLT-05",
        {
            "NTx": change * force[0] * 1e3,
            "NTy": change * force[1] * 1e3,
            "MTx": change * moment[0],
            "MTy": change * moment[1],
            "eps_x0": strain[0],
            "eps_y0": strain[1],
            "kx": curvature[0] * 1e3,
            "ky": curvature[1] * 1e3,
            "sx_bottom_90": stresses[1, 1, 0] * 1e6,
            "sy_bottom_90": stresses[1, 1, 1] * 1e6,
        },
    )


def test_clt_06_invariants():
    u = invariants(reduced_stiffness(CARBON)) / 1e3
    reference.agree("CLT-06", {f"U{i + 1}": u[i] for i in range(5)})


def test_clt_07_quasi_isotropic():
    def moduli(degrees):
        angles = np.radians([*degrees, *reversed(degrees)])
        found = laminate_stiffness(stack(CARBON, len(angles)), angles, [0.125] * len(angles))
        return found.a, in_plane_moduli(found, 0.125 * len(angles))

    a, four = moduli([0.0, 45.0, -45.0, 90.0])
    _, three = moduli([0.0, 60.0, -60.0])
    reference.agree(
        "CLT-07",
        {
            "E_iso": four.e_x / 1e3,
            "G_iso": four.g_xy / 1e3,
            "nu_iso": four.nu_xy,
            "E_iso_pi3": three.e_x / 1e3,
            "A11_minus_A12_minus_2A66_rel": (a[0, 0] - a[0, 1] - 2.0 * a[2, 2]) / a[0, 0],
        },
    )
    u = invariants(reduced_stiffness(CARBON))
    assert four.e_x == pytest.approx((u[0] ** 2 - u[3] ** 2) / u[0], rel=1e-12)
    assert four.e_y == pytest.approx(four.e_x, rel=1e-12)


def test_clt_08_expansion_of_a_quasi_isotropic_laminate():
    angles = np.radians([0.0, 45.0, -45.0, 90.0, 90.0, -45.0, 45.0, 0.0])
    plies, thicknesses = stack(CARBON, 8), [0.125] * 8
    resultants = free_resultants(plies, expansions(*[CARBON] * 8), angles, thicknesses)
    strain, _ = response(laminate_stiffness(plies, angles, thicknesses), *resultants)
    x, y, shear = (1e6 * strain).tolist()
    reference.agree("CLT-08", {"alpha_x": x, "alpha_y": y, "alpha_xy": shear})


def test_clt_09_isotropic_limit():
    even = Lamina(70e3, 70e3, 0.33, 70e3 / 2.66)
    found = laminate_stiffness(
        stack(even, 4), np.radians([0.0, 17.0, 63.0, -38.0]), [0.3, 0.5, 0.2, 1.0]
    )
    reference.agree(
        "CLT-09",
        {
            "A11": found.a[0, 0] * 1e3,
            "A66": found.a[2, 2] * 1e3,
            "B_max_over_A11h": float(np.abs(found.b).max()) / (found.a[0, 0] * 2.0),
            "D11": found.d[0, 0] * 1e-3,
            "D16_over_D11": found.d[0, 2] / found.d[0, 0],
        },
    )


def test_clt_10_bimetal():
    metal = Lamina(70e3, 70e3, 0.3, 70e3 / 2.6, 23e-6, 23e-6)
    plastic = Lamina(3e3, 3e3, 0.3, 3e3 / 2.6, 60e-6, 60e-6)
    plies = np.stack([reduced_stiffness(metal), reduced_stiffness(plastic)])
    thicknesses = [0.5, 2.0]
    force, moment = free_resultants(plies, expansions(metal, plastic), [0.0, 0.0], thicknesses)
    stiffness = laminate_stiffness(plies, [0.0, 0.0], thicknesses)
    _, curvature = response(stiffness, 20.0 * force, 20.0 * moment)
    reference.agree("CLT-10", {"kappa_abs": abs(curvature[0]) * 1e3})


def test_clt_15_bending_and_in_plane_modulus():
    glass = Lamina(45.6e3, 16.2e3, 0.278, 5.83e3)
    found: Stiffness = laminate_stiffness(
        stack(glass, 4), np.radians([0.0, 90.0, 90.0, 0.0]), [0.25] * 4
    )
    reference.agree(
        "CLT-15",
        {
            "D11": found.d[0, 0] * 1e-3,
            "D22": found.d[1, 1] * 1e-3,
            "E_flex_x": bending_moduli(found, 1.0).e_x / 1e3,
            "E_inplane_x": in_plane_moduli(found, 1.0).e_x / 1e3,
        },
    )


def test_clt_13_published_laminae_keep_their_constants():
    for item in reference.row("CLT-13")["expected"]:
        e1, e2, nu, g, *_, a1, a2 = item["value"]
        lamina = Lamina(e1 * 1e3, e2 * 1e3, nu, g * 1e3, a1 * 1e-6, a2 * 1e-6)
        back = lamina_of_stiffness(reduced_stiffness(lamina), (a1 * 1e-6, a2 * 1e-6))
        for name in ("modulus_1", "modulus_2", "poisson_12", "shear_12"):
            assert getattr(back, name) == pytest.approx(getattr(lamina, name), rel=1e-12)
