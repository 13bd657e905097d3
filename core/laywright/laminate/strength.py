"""How much a laminate carries: the first ply to fail, and the last.

Loads are forces and moments per width on a laminate that is free to curl.  Stresses left over
from cooling are not counted.  The result is an estimate for comparing layups; a part on which
somebody's safety hangs is tested, not computed.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

import numpy as np
from numpy.typing import ArrayLike

from laywright.arrays import FloatArray
from laywright.errors import InputError, MaterialError
from laywright.laminate.cloth_ply import cloth_strengths
from laywright.laminate.criteria import Criterion, strength_factor
from laywright.laminate.lamina import Lamina, Strengths, reduced_stiffness, stress_rotation
from laywright.laminate.laminate import Laminate, laminae
from laywright.laminate.stiffness import (
    laminate_stiffness,
    ply_strains,
    ply_stresses,
    response,
)
from laywright.stage import stage

__all__ = [
    "Border",
    "LoadCase",
    "PlyMargin",
    "StrengthPly",
    "StrengthReport",
    "check_strength",
    "first_failure",
    "last_failure",
    "ply_factors",
]

_SAME = 1e-9
_CAUTION = (
    "An estimate for comparing layups, without residual stress, holes, impact, fatigue or damp. "
    "It says nothing about the protection of a person; load-bearing and protective parts need "
    "tests by an accredited laboratory."
)


class Border(Enum):
    """Which face of a ply."""

    MOULD_SIDE = "mould side"
    FAR_SIDE = "far side"


@dataclass(frozen=True)
class StrengthPly:
    """One ply of a laminate, as far as strength goes.

    Attributes
    ----------
    lamina : Lamina
    strengths : Strengths
    angle : float, radians
    thickness : float, mm
    """

    lamina: Lamina
    strengths: Strengths
    angle: float
    thickness: float


@dataclass(frozen=True)
class LoadCase:
    """Force and moment per width, in the axes of the layup.

    Attributes
    ----------
    force : tuple of float, N/mm
        Along x, along y, in shear.
    moment : tuple of float, N
        About the middle: bending that stretches the far side along x, along y, and twist.
    """

    force: tuple[float, float, float] = (0.0, 0.0, 0.0)
    moment: tuple[float, float, float] = (0.0, 0.0, 0.0)

    def __post_init__(self) -> None:
        if not np.isfinite([*self.force, *self.moment]).all() or not any(
            (*self.force, *self.moment)
        ):
            raise InputError("load case", "no load", "a force or a moment", "set at least one")


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
    """

    ply: int
    name: str
    factor: float
    border: Border


@dataclass(frozen=True)
class StrengthReport:
    """What a load case does to a laminate.

    Attributes
    ----------
    criterion : Criterion
    margins : tuple of PlyMargin
        One per ply, ply 1 first.
    first_factor, last_factor : float
        By which the load may grow until the first ply fails, and until none carries more.
    caution : str
    digest : str
        Of its inputs.
    """

    criterion: Criterion
    margins: tuple[PlyMargin, ...]
    first_factor: float
    last_factor: float
    caution: str
    digest: str = ""


def ply_factors(
    plies: tuple[StrengthPly, ...],
    force: ArrayLike,
    moment: ArrayLike,
    criterion: Criterion,
    sound: ArrayLike | None = None,
) -> FloatArray:
    """Return the factors of growth of the load until each border of each ply fails.

    Parameters
    ----------
    plies : tuple of StrengthPly
        Ply 1 first.
    force, moment : (3,) array_like, N/mm, N
    criterion : Criterion
    sound : (k,) array_like of bool, optional
        Plies that still carry; the others have no stiffness left.

    Returns
    -------
    numpy.ndarray
        (k, 2) float: mould side, far side; infinite for plies that do not carry.
    """
    carries = np.ones(len(plies), bool) if sound is None else np.asarray(sound, bool)
    matrices = np.stack([reduced_stiffness(ply.lamina) for ply in plies])
    matrices[~carries] = 0.0
    angles = np.array([ply.angle for ply in plies])
    thicknesses = np.array([ply.thickness for ply in plies])
    strain, curvature = response(laminate_stiffness(matrices, angles, thicknesses), force, moment)
    stresses = ply_stresses(matrices, angles, ply_strains(thicknesses, strain, curvature))
    own = (stress_rotation(angles)[:, None] @ stresses[..., None])[..., 0]
    return np.stack(
        [
            strength_factor(criterion, own[i], ply.strengths, ply.lamina)
            if carries[i]
            else np.full(2, np.inf)
            for i, ply in enumerate(plies)
        ]
    )


def first_failure(
    plies: tuple[StrengthPly, ...],
    force: ArrayLike,
    moment: ArrayLike = (0.0, 0.0, 0.0),
    criterion: Criterion = Criterion.TSAI_WU,
) -> float:
    """Return the factor of growth of the load at which the first ply fails."""
    return float(ply_factors(plies, force, moment, criterion).min())


def last_failure(
    plies: tuple[StrengthPly, ...],
    force: ArrayLike,
    moment: ArrayLike = (0.0, 0.0, 0.0),
    criterion: Criterion = Criterion.TSAI_WU,
) -> float:
    """Return the largest factor of growth of the load that the laminate ever carries.

    A ply that fails loses all its stiffness; the load then rests on the others (Kaw 2006,
    section 5.3: ply-by-ply failure with full discount).
    """
    sound = np.ones(len(plies), bool)
    highest = 0.0
    while sound.any():
        factors = ply_factors(plies, force, moment, criterion, sound).min(axis=1)
        lowest = float(factors.min())
        highest = max(highest, lowest)
        if not np.isfinite(lowest):
            break
        sound &= factors > lowest * (1.0 + _SAME)
    return highest


@stage("Strength Check", version=1)
def check_strength(
    laminate: Laminate, load: LoadCase, criterion: Criterion = Criterion.MAX_STRESS
) -> StrengthReport:
    """Return how far each ply is from failing under a load.

    Parameters
    ----------
    laminate : Laminate
    load : LoadCase
    criterion : Criterion
        For woven cloth, whose ply is taken as one even sheet, maximum stress fits best; the
        others were made for unidirectional plies.

    Raises
    ------
    MaterialError
        If the card of a cloth states no strengths.
    """
    plies = _strength_plies(laminate)
    factors = ply_factors(plies, load.force, load.moment, criterion)
    margins = tuple(
        PlyMargin(
            number,
            laminate.layup.ply_name(number),
            float(pair.min()),
            tuple(Border)[int(pair.argmin())],
        )
        for number, pair in enumerate(factors, start=1)
    )
    return StrengthReport(
        criterion,
        margins,
        float(factors.min()),
        last_failure(plies, load.force, load.moment, criterion),
        _CAUTION,
    )


def _strength_plies(laminate: Laminate) -> tuple[StrengthPly, ...]:
    found = []
    for ply, lamina, thickness, fraction in zip(
        laminate.layup.plies,
        laminae(laminate.layup),
        laminate.ply_thicknesses.tolist(),
        laminate.ply_fibre_fractions.tolist(),
        strict=True,
    ):
        strengths = cloth_strengths(ply.cloth, fraction)
        if strengths is None:
            raise MaterialError(
                ply.cloth.name,
                "no strengths on its card",
                "five strengths",
                "add them from coupons of your own or leave out the strength check",
            )
        found.append(StrengthPly(lamina, strengths, ply.angle, thickness))
    return tuple(found)
