"""What a laminate does besides what is asked of it, in words.

A laminate that is not symmetric about its middle bends or twists when it is pulled, cooled or
soaked; one whose angles are not balanced shears when it is pulled; even a symmetric one may twist
when it is bent.  The amounts are given for pieces that a person can picture.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray
from laywright.laminate.stiffness import Stiffness

__all__ = ["State", "coupling_words", "free_shape_words", "state_of"]

_EVEN = 1e-6
_SAMPLE = 300.0
_COOLING = 10.0
_VISIBLE = 0.05
_PULL = 1e-3
_NOTICED = 0.01


@dataclass(frozen=True)
class State:
    """Whether a laminate is even.

    Attributes
    ----------
    symmetric : bool
        Whether stretching and bending leave each other alone.
    balanced : bool
        Whether stretching and shearing leave each other alone.
    bends_straight : bool
        Whether bending and twisting leave each other alone.
    """

    symmetric: bool
    balanced: bool
    bends_straight: bool


def state_of(stiffness: Stiffness, thickness: float) -> State:
    """Return whether a laminate is symmetric and balanced.

    Parameters
    ----------
    stiffness : Stiffness
        Of one laminate.
    thickness : float, mm
    """
    scale = float(np.abs(stiffness.a).max())
    return State(
        bool(np.abs(stiffness.b).max() <= _EVEN * scale * thickness),
        bool(np.abs(stiffness.a[:2, 2]).max() <= _EVEN * scale),
        bool(np.abs(stiffness.d[:2, 2]).max() <= _EVEN * scale * thickness**2),
    )


def free_shape_words(warp: FloatArray, swell_warp: FloatArray, water: float) -> tuple[str, ...]:
    """Return how a flat piece changes its shape by itself when it cools and when it is soaked.

    Parameters
    ----------
    warp : (3,) float, 1/(mm K)
        Curvature per kelvin.
    swell_warp : (3,) float, 1/mm
        Curvature for a unit of water in the resin.
    water : float
        Share of water in the mass of the resin after long soaking.

    Returns
    -------
    tuple of str
        Sentences without a full stop; none for changes too small to be seen.
    """
    cooled = f"for each {_COOLING:.0f} degC"
    soaked = f"with {water:.1%} of water, which its resin takes up in the long run"
    words: list[str] = []
    for curvature, cause, amount in (
        (-_COOLING * warp, "when it cools from cure", cooled),
        (water * swell_warp, "when it takes up water", soaked),
    ):
        rises = np.abs(curvature[:2]) * _SAMPLE**2 / 8.0
        if rises.max() > _VISIBLE:
            where = ("along", "across")[int(rises.argmax())]
            words.append(
                f"it will curl {cause}, a flat strip of {_SAMPLE:.0f} mm {where} the datum arrow "
                f"rises by about {rises.max():.1f} mm {amount}"
            )
        lift = abs(float(curvature[2])) * _SAMPLE**2 / 2.0
        if lift > _VISIBLE:
            words.append(
                f"it will twist {cause}, a flat square of {_SAMPLE:.0f} mm lifts a corner by "
                f"about {lift:.1f} mm {amount}"
            )
    return tuple(words)


def coupling_words(stiffness: Stiffness) -> tuple[str, ...]:
    """Return what else happens when a laminate is pulled or bent along or across the arrow.

    Parameters
    ----------
    stiffness : Stiffness
        Of one laminate.

    Returns
    -------
    tuple of str
        Sentences; none where nothing worth a word happens.
    """
    compliance = np.linalg.inv(stiffness.matrix())
    words: list[str] = []
    for axis, where in enumerate(("along", "across")):
        pulled = _PULL * compliance[:, axis] / compliance[axis, axis]
        bent = compliance[:, 3 + axis] / compliance[3 + axis, 3 + axis]
        shear, twist = abs(pulled[2]), abs(pulled[5]) * _SAMPLE**2 / 2.0
        rise = float(np.abs(pulled[3:5]).max()) * _SAMPLE**2 / 8.0
        head = f"Pulled by {_PULL:.1%} {where} the datum arrow"
        if shear > _NOTICED * _PULL:
            words.append(f"{head}, it shears by {shear:.2%}.")
        if rise > _VISIBLE:
            words.append(f"{head}, a flat strip of {_SAMPLE:.0f} mm bends by {rise:.1f} mm.")
        if twist > _VISIBLE:
            words.append(f"{head}, a square of {_SAMPLE:.0f} mm lifts a corner by {twist:.1f} mm.")
        if abs(bent[5]) > _NOTICED:
            words.append(
                f"Bent {where} the datum arrow, it also twists: {abs(bent[5]):.2f} of twist for "
                "each unit of bending."
            )
    return tuple(words)
