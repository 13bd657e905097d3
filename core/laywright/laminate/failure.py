"""Ply by ply failure: by which factor a load may grow until plies fail, one after another.

Loads are forces and moments per width on a laminate that is free to curl.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from laywright.arrays import FloatArray
from laywright.laminate.criteria import Criterion, strength_factor
from laywright.laminate.lamina import Lamina, Strengths, reduced_stiffness
from laywright.laminate.rotation import stress_rotation
from laywright.laminate.stiffness import (
    Stiffness,
    laminate_stiffness,
    ply_strains,
    ply_stresses,
    response,
)

__all__ = [
    "StrengthPly",
    "last_failure",
    "own_stresses",
    "ply_factors",
    "stiffness_of",
]

_SAME = 1e-9


@dataclass(frozen=True)
class StrengthPly:
    """One layer of a laminate, as far as strength goes.

    Attributes
    ----------
    lamina : Lamina
    strengths : Strengths or None
        None for a core, which is judged by `laywright.laminate.sandwich_check` instead.
    angle : float, radians
    thickness : float, mm
    """

    lamina: Lamina
    strengths: Strengths | None
    angle: float
    thickness: float


def stiffness_of(plies: tuple[StrengthPly, ...], sound: ArrayLike | None = None) -> Stiffness:
    """Return A, B and D of layers; those that are not sound have no stiffness left."""
    return laminate_stiffness(_matrices(plies, sound), _angles(plies), _thicknesses(plies))


def own_stresses(
    plies: tuple[StrengthPly, ...],
    strain: ArrayLike,
    curvature: ArrayLike,
    sound: ArrayLike | None = None,
) -> FloatArray:
    """Return the stresses at both borders of each layer in its own axes.

    Parameters
    ----------
    plies : tuple of StrengthPly
        The one at the mould first.
    strain, curvature : (..., 3) array_like, 1 and 1/mm
        Of the middle.
    sound : (k,) array_like of bool, optional
        Layers that still carry.

    Returns
    -------
    numpy.ndarray
        (..., k, 2, 3) float, MPa: mould side, far side.
    """
    angles = _angles(plies)
    strains = ply_strains(_thicknesses(plies), strain, curvature)
    stresses = ply_stresses(_matrices(plies, sound), angles, strains)
    return np.asarray((stress_rotation(angles)[:, None] @ stresses[..., None])[..., 0])


def ply_factors(
    plies: tuple[StrengthPly, ...],
    force: ArrayLike,
    moment: ArrayLike,
    criterion: Criterion,
    sound: ArrayLike | None = None,
) -> FloatArray:
    """Return the factors of growth of the load until each border of each layer fails.

    Parameters
    ----------
    plies : tuple of StrengthPly
        The one at the mould first.
    force, moment : (..., 3) array_like, N/mm, N
    criterion : Criterion
    sound : (k,) array_like of bool, optional
        Layers that still carry; the others have no stiffness left.

    Returns
    -------
    numpy.ndarray
        (..., k, 2) float: mould side, far side; infinite for layers that do not carry or have
        no strengths.
    """
    strain, curvature = response(stiffness_of(plies, sound), force, moment)
    own = own_stresses(plies, strain, curvature, sound)
    return np.stack(
        [
            np.full((*own.shape[:-3], 2), np.inf)
            if ply.strengths is None or not carries
            else strength_factor(criterion, own[..., i, :, :], ply.strengths, ply.lamina)
            for i, (ply, carries) in enumerate(zip(plies, _carries(plies, sound), strict=True))
        ],
        axis=-2,
    )


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
    judged = np.array([ply.strengths is not None for ply in plies])
    highest = 0.0
    while (sound & judged).any():
        factors = ply_factors(plies, force, moment, criterion, sound).min(axis=1)
        lowest = float(factors.min())
        highest = max(highest, lowest)
        if not np.isfinite(lowest):
            break
        sound &= factors > lowest * (1.0 + _SAME)
    return highest


def _carries(plies: tuple[StrengthPly, ...], sound: ArrayLike | None) -> FloatArray:
    return np.ones(len(plies), bool) if sound is None else np.asarray(sound, bool)


def _matrices(plies: tuple[StrengthPly, ...], sound: ArrayLike | None) -> FloatArray:
    matrices = np.stack([reduced_stiffness(ply.lamina) for ply in plies])
    matrices[~_carries(plies, sound)] = 0.0
    return matrices


def _angles(plies: tuple[StrengthPly, ...]) -> FloatArray:
    return np.array([ply.angle for ply in plies])


def _thicknesses(plies: tuple[StrengthPly, ...]) -> FloatArray:
    return np.array([ply.thickness for ply in plies])
