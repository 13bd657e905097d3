from __future__ import annotations

import dataclasses

import pytest

from job_demo import hatch
from laywright.cloth.pattern import PatternSet
from laywright.job.links import ply_cloths
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Core


@dataclasses.dataclass(frozen=True)
class Cut:
    """What `ply_cloths` reads of a pattern."""

    ply: int
    cloth: str
    area: float
    net_area: float


def test_the_plies_on_a_core_hold_the_resin_that_bonds_it():
    plain = hatch().layup
    sheet = load_materials().core("Closed-cell PVC foam 80 kg/m^3")
    cored = dataclasses.replace(plain, core=Core(sheet, 5.0, 2))
    name = plain.plies[0].cloth.name
    patterns = PatternSet(tuple(Cut(ply, name, 1e6, 1e6) for ply in (1, 2, 3)), (), ())

    def resin(layup):
        pieces = ply_cloths(patterns, analyse(layup))
        return [piece.mass_g * piece.resin_share / (1 - piece.resin_share) for piece in pieces]

    before, after = resin(plain), resin(cored)
    extra = [late - early for early, late in zip(before, after, strict=True)]
    assert extra == pytest.approx([0.0, sheet.bond_resin, sheet.bond_resin], abs=1e-9)
    made = analyse(cored)
    assert sum(after) == pytest.approx(made.resin_areal, rel=1e-12)
