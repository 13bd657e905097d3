from __future__ import annotations

import pytest

from laminate.stacks import CARBON, MATERIALS, layup
from laywright.laminate.equal_sheet import Sameness, equal_sheets
from laywright.laminate.laminate import analyse
from laywright.laminate.plies import Core
from laywright.laminate.supplies import PlainSheet

SHEETS = tuple(MATERIALS.sheets.values())


@pytest.mark.parametrize("sameness", Sameness)
def test_a_strip_of_each_sheet_is_as_stiff(sameness):
    made = analyse(layup(CARBON, 0, 45, 0))
    for sheet in equal_sheets(made, SHEETS, sameness):
        plain = MATERIALS.sheet(sheet.name)
        if sameness is Sameness.BENDING:
            ours, theirs = made.bending, plain.modulus * sheet.thickness**3
            stiffness = min(ours.e_x, ours.e_y) * made.thickness**3
        else:
            ours, theirs = made.in_plane, plain.modulus * sheet.thickness
            stiffness = min(ours.e_x, ours.e_y) * made.thickness
        assert theirs == pytest.approx(stiffness, rel=1e-12)
        assert sheet.areal_mass == pytest.approx(1000.0 * plain.density * sheet.thickness)
        assert sheet.mass_ratio == pytest.approx(sheet.areal_mass / made.areal_mass)


def test_the_lightest_comes_first():
    masses = [s.areal_mass for s in equal_sheets(analyse(layup(CARBON, 0, 0)), SHEETS)]
    assert len(masses) == 4
    assert masses == sorted(masses)


def test_a_sandwich_beats_every_sheet_in_bending():
    core = Core(MATERIALS.core("Closed-cell PVC foam 80 kg/m^3"), 8.0, 1)
    made = analyse(layup(CARBON, 0, 0, core=core))
    assert min(s.mass_ratio for s in equal_sheets(made, SHEETS)) > 3.0


def test_a_sheet_of_the_same_modulus_is_the_same_sheet():
    made = analyse(layup(CARBON, 0))
    same = PlainSheet("same", 1.5, made.bending.e_x, 0.3)
    (found,) = equal_sheets(made, (same,))
    assert found.thickness == pytest.approx(made.thickness, rel=1e-9)
