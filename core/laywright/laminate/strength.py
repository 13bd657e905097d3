"""How much a laminate carries: the first ply to fail and how, the last, and the core.

Stresses left over from cooling are not counted.  The result is an estimate for comparing
layups; a part on which somebody's safety hangs is tested, not computed.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

import numpy as np

from laywright.arrays import FloatArray
from laywright.errors import MaterialError
from laywright.laminate.cloth_ply import cloth_strengths
from laywright.laminate.criteria import Criterion, strength_factor
from laywright.laminate.failure import StrengthPly, last_failure, own_stresses, stiffness_of
from laywright.laminate.knock_downs import KnockDowns, knocked_down, usual_knock_downs
from laywright.laminate.laminate import Laminate, main_of
from laywright.laminate.layers import layers
from laywright.laminate.loads import LoadCase, StrainCase
from laywright.laminate.modes import Mode, mode_factors
from laywright.laminate.sandwich_check import SandwichMargins, check_sandwich
from laywright.laminate.stiffness import response
from laywright.stage import stage

__all__ = [
    "Border",
    "LoadCase",
    "PlyMargin",
    "StrainCase",
    "StrengthReport",
    "check_strength",
    "strength_plies",
]

_CAUTION = (
    "An estimate for comparing layups, without residual stress, holes, impact, fatigue or damp "
    "other than by the knock-downs. It says nothing about the protection of a person; "
    "load-bearing and protective parts need tests by an accredited laboratory."
)


class Border(Enum):
    """Which face of a ply."""

    MOULD_SIDE = "mould side"
    FAR_SIDE = "far side"


@dataclass(frozen=True)
class PlyMargin:
    """How far a ply is from failing.

    Attributes
    ----------
    ply : int
        Number, from 1.
    name : str
    factor : float
        By which the load may grow until this ply fails.
    border : Border
        On which of its faces it fails.
    mode : Mode
        How it fails; for criteria that judge all modes together, the one nearest to failing.
    by_mode : tuple of float
        Factor of each mode, in the order of `Mode`, each on its worse face.
    """

    ply: int
    name: str
    factor: float
    border: Border
    mode: Mode
    by_mode: tuple[float, ...]


@dataclass(frozen=True)
class StrengthReport:
    """What a load case does to a laminate.

    Attributes
    ----------
    criterion : Criterion
    knock_downs : KnockDowns
        Shares of the card's strengths that were counted on.
    margins : tuple of PlyMargin
        One per ply, ply 1 first.
    first_factor, last_factor : float
        By which the load may grow until the first ply fails, and until none carries more.
    sandwich : SandwichMargins or None
        Of the core and the faces on it.
    least_factor : float
        The smaller of `first_factor` and the least of the sandwich.
    finding : str
        What fails first, as a sentence.
    caution : str
    digest : str
        Of its inputs.
    """

    criterion: Criterion
    knock_downs: KnockDowns
    margins: tuple[PlyMargin, ...]
    first_factor: float
    last_factor: float
    sandwich: SandwichMargins | None
    least_factor: float
    finding: str
    caution: str
    digest: str = ""


@stage("Strength Check", version=2)
def check_strength(
    laminate: Laminate,
    load: LoadCase | StrainCase,
    criterion: Criterion = Criterion.MAX_STRESS,
    knock_downs: KnockDowns | None = None,
) -> StrengthReport:
    """Return how far each ply is from failing under a load.

    Parameters
    ----------
    laminate : Laminate
    load : LoadCase or StrainCase
        Forces and moments per width on a laminate that is free to curl, or strains.
    criterion : Criterion
        For woven cloth, whose ply is taken as one even sheet, maximum stress fits best; the
        others were made for unidirectional plies.
    knock_downs : KnockDowns or None
        Shares of the card's strengths that are counted on; None takes what is usual for the
        process.

    Raises
    ------
    MaterialError
        If the card of a cloth states no strengths.
    """
    knock_downs = knock_downs or usual_knock_downs(laminate.layup.process)
    laminate = main_of(laminate)
    plies = strength_plies(laminate, knock_downs)
    if isinstance(load, StrainCase):
        strain, curvature = np.array(load.strain), np.array(load.curvature)
    else:
        strain, curvature = response(stiffness_of(plies), load.force, load.moment)
    own = own_stresses(plies, strain, curvature)
    numbers = iter(range(1, len(plies) + 1))
    margins = tuple(
        _margin(next(numbers), laminate, ply, stress, criterion)
        for ply, stress in zip(plies, own, strict=True)
        if ply.strengths is not None
    )
    first = min(margin.factor for margin in margins)
    if isinstance(load, StrainCase):
        last = max(margin.factor for margin in margins)
    else:
        last = last_failure(plies, load.force, load.moment, criterion)
    sandwich = check_sandwich(laminate.layup, load, knock_downs.core)
    least = first if sandwich is None else min(first, sandwich.least)
    return StrengthReport(
        criterion,
        knock_downs,
        margins,
        first,
        last,
        sandwich,
        least,
        _finding(margins, sandwich, least),
        _CAUTION,
    )


def _margin(
    number: int,
    laminate: Laminate,
    ply: StrengthPly,
    stress: FloatArray,
    criterion: Criterion,
) -> PlyMargin:
    assert ply.strengths is not None
    both = strength_factor(criterion, stress, ply.strengths, ply.lamina)
    worse = int(both.argmin())
    modes = mode_factors(criterion, stress, ply.strengths, ply.lamina)
    return PlyMargin(
        number,
        laminate.layup.ply_name(number),
        float(both[worse]),
        tuple(Border)[worse],
        tuple(Mode)[int(modes[worse].argmin())],
        tuple(modes.min(axis=0).tolist()),
    )


def _finding(margins: tuple[PlyMargin, ...], sandwich: SandwichMargins | None, least: float) -> str:
    if not np.isfinite(least):
        return "This load stresses nothing that is judged."
    if sandwich is not None and sandwich.least == least:
        what = {
            sandwich.core_shear: "The core shears",
            sandwich.wrinkling_mould_side: "The face at the mould wrinkles",
            sandwich.wrinkling_far_side: "The face away from the mould wrinkles",
            sandwich.indentation: "The core is crushed under the pressed patch",
        }[least]
        return f"{what} first, at {least:.2f} times this load."
    worst = min(margins, key=lambda margin: margin.factor)
    return (
        f"{worst.name.capitalize()} fails first, {worst.mode.value}, on its "
        f"{worst.border.value}, at {least:.2f} times this load."
    )


def strength_plies(laminate: Laminate, knock_downs: KnockDowns) -> tuple[StrengthPly, ...]:
    """Return the layers of a laminate with the strengths that are counted on.

    Raises
    ------
    MaterialError
        If the card of a cloth states no strengths.
    """
    laminate = main_of(laminate)
    layup = laminate.layup
    found = []
    for layer in layers(layup):
        strengths = None
        if layer.ply is not None:
            cloth = layup.plies[layer.ply - 1].cloth
            known = cloth_strengths(cloth, float(laminate.ply_fibre_fractions[layer.ply - 1]))
            if known is None:
                raise MaterialError(
                    cloth.name,
                    "no strengths on its card",
                    "five strengths",
                    "add them from coupons of your own or leave out the strength check",
                )
            strengths = knocked_down(known, knock_downs, layup.void_share)
        found.append(StrengthPly(layer.lamina, strengths, layer.angle, layer.thickness))
    return tuple(found)
