from __future__ import annotations

import dataclasses
import math

import numpy as np
import pytest

from laminate.stacks import CARBON, GLASS, MATERIALS, TAPE, layup
from laywright.errors import InputError, LimitError
from laywright.laminate.knock_downs import KnockDowns
from laywright.laminate.laminate import Laminate, analyse
from laywright.laminate.layers import layers
from laywright.laminate.loads import LoadCase, Patch
from laywright.laminate.plies import Core
from laywright.laminate.sandwich import wrinkling_stress
from laywright.laminate.sandwich_check import check_sandwich
from laywright.laminate.strength import StrengthReport, check_strength
from laywright.values import pack, unpack

FOAM = MATERIALS.core("Closed-cell PVC foam 80 kg/m^3")
COMB = MATERIALS.core("Aramid paper honeycomb 48 kg/m^3, 3.2 mm cells")


def cored(cloth, *degrees: float, sheet=FOAM, thickness=8.0, after=None, **settings):
    core = Core(sheet, thickness, after or len(degrees) // 2)
    return layup(cloth, *degrees, core=core, **settings)


def test_a_core_lies_in_its_place_and_weighs_what_it_weighs():
    plain, made = analyse(layup(GLASS, 0, 45, 45, 0)), analyse(cored(GLASS, 0, 45, 45, 0))
    assert made.thickness == pytest.approx(plain.thickness + 8.0, rel=1e-12)
    bond = 2.0 * FOAM.bond_resin
    assert made.areal_mass == pytest.approx(plain.areal_mass + 80.0 * 8.0 + bond, rel=1e-12)
    assert made.core_areal == pytest.approx(640.0)
    assert made.resin_areal == pytest.approx(plain.resin_areal + bond, rel=1e-12)
    assert made.ply_heights == pytest.approx(plain.ply_heights + np.array([0.0, 0.0, 8.0, 8.0]))
    assert made.fibre_volume_fraction == pytest.approx(plain.fibre_volume_fraction)
    assert [layer.name for layer in layers(made.layup)] == [
        "ply 1",
        "ply 2",
        "core",
        "ply 3",
        "ply 4",
    ]
    assert made.state.symmetric
    assert unpack(Laminate, pack(made)).layup == made.layup


def test_bending_stiffness_is_that_of_the_faces_apart():
    made = analyse(cored(CARBON, 0, 0))
    face = analyse(layup(CARBON, 0))
    distance = 8.0 + face.thickness
    parts = face.a[0, 0] * distance**2 / 2.0 + 2.0 * face.d[0, 0]
    core = FOAM.modulus_in_plane / (1.0 - FOAM.poisson**2) * 8.0**3 / 12.0
    assert made.d[0, 0] == pytest.approx(parts + core, rel=1e-9)
    assert made.shear[0] == pytest.approx(FOAM.shear_along * distance**2 / 8.0, rel=0.01)


def test_a_core_needs_plies_on_both_sides():
    for after in (0, 2):
        with pytest.raises(InputError, match="between two plies"):
            layup(GLASS, 0, 0, core=Core(FOAM, 8.0, after))
    with pytest.raises(InputError, match="core thickness"):
        Core(FOAM, 0.0, 1)


def test_core_shear_is_force_over_distance_and_honeycomb_has_a_weak_direction():
    for sheet in (FOAM, COMB):
        made = analyse(cored(CARBON, 0, 0, sheet=sheet))
        distance = 8.0 + made.ply_thicknesses[0]
        for shear, strength in (
            ((5.0, 0.0), sheet.shear_strength_along),
            ((0.0, 5.0), sheet.shear_strength_across),
        ):
            margins = check_sandwich(made.layup, LoadCase(shear=shear))
            assert margins.core_shear == pytest.approx(strength * distance / 5.0, rel=0.01)
            assert math.isinf(margins.wrinkling_far_side)
            assert margins.least == margins.core_shear


@pytest.mark.parametrize("sign", [1.0, -1.0])
def test_the_pressed_face_wrinkles(sign):
    made = analyse(cored(CARBON, 0, 0))
    margins = check_sandwich(made.layup, LoadCase(moment=(sign * 50.0, 0.0, 0.0)))
    pressed, pulled = margins.wrinkling_mould_side, margins.wrinkling_far_side
    if sign < 0.0:  # the far side is stretched by a positive moment
        pressed, pulled = pulled, pressed
    face = analyse(layup(CARBON, 0))
    strength = wrinkling_stress(face.bending.e_x, FOAM.modulus, FOAM.shear_along)
    stress = 50.0 / (8.0 + face.thickness) / face.thickness
    assert pressed == pytest.approx(strength / stress, rel=0.03)
    assert pulled > 20.0 * pressed  # what is left across the bending, by Poisson's ratio


def test_wrinkling_looks_in_every_direction():
    """Turning layup and load together changes nothing."""
    plain = check_sandwich(cored(TAPE, 0, 90, 90, 0), LoadCase((-20.0, 0.0, 0.0)))
    turn = math.radians(45.0)
    c, s = math.cos(turn), math.sin(turn)
    force = (-20.0 * c * c, -20.0 * s * s, -20.0 * c * s)
    turned = check_sandwich(cored(TAPE, 45, 135, 135, 45), LoadCase(force))
    assert turned.wrinkling_far_side == pytest.approx(plain.wrinkling_far_side, rel=1e-6)


def test_a_small_foot_crushes_the_core():
    made = cored(GLASS, 0, 0)
    margins = check_sandwich(made, LoadCase(patch=Patch(100.0, 400.0)), share=0.5)
    assert margins.indentation == pytest.approx(0.5 * FOAM.compressive_strength / 0.25)
    assert math.isinf(margins.core_shear)


def test_the_strength_report_holds_the_sandwich_and_names_what_comes_first():
    made = analyse(cored(CARBON, 0, 0))
    load = LoadCase(moment=(10.0, 0.0, 0.0), shear=(6.0, 0.0), patch=Patch(50.0, 400.0))
    report = check_strength(made, load, knock_downs=KnockDowns())
    assert report.sandwich == check_sandwich(made.layup, load)
    assert [margin.ply for margin in report.margins] == [1, 2]
    assert report.least_factor == report.sandwich.core_shear < report.first_factor
    assert report.finding.startswith("The core shears first, at ")
    assert unpack(StrengthReport, pack(report)) == report
    weaker = check_strength(made, load, knock_downs=KnockDowns(core=0.5))
    assert weaker.least_factor == pytest.approx(0.5 * report.least_factor, rel=1e-9)
    assert check_strength(analyse(layup(CARBON, 0, 0)), load).sandwich is None


def test_the_last_failure_leaves_the_core():
    report = check_strength(analyse(cored(TAPE, 0, 90, 90, 0)), LoadCase((10.0, 0.0, 0.0)))
    assert np.isfinite(report.last_factor)
    assert report.last_factor >= report.first_factor


def test_a_core_of_the_wrong_unit_is_caught():
    with pytest.raises(LimitError, match="at such a density"):
        dataclasses.replace(MATERIALS.core("End-grain balsa 150 kg/m^3"), modulus=4.0)
