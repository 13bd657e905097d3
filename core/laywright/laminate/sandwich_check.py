"""How far a sandwich is from failing in its core or by wrinkling of a face."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray
from laywright.laminate.cores import CoreSheet
from laywright.laminate.layers import layers, stack_of
from laywright.laminate.loads import LoadCase, StrainCase
from laywright.laminate.plies import Layup
from laywright.laminate.rotation import at_angles, stress_rotation
from laywright.laminate.sandwich import wrinkling_stress
from laywright.laminate.stiffness import integrated, laminate_stiffness, response
from laywright.laminate.transverse import shear_flow

__all__ = ["SandwichMargins", "check_sandwich"]

_DIRECTIONS = np.radians(np.arange(0.0, 180.0, 5.0))


@dataclass(frozen=True)
class SandwichMargins:
    """Factors by which the load may grow; infinite where it does nothing of the kind.

    Attributes
    ----------
    core_shear : float
        Until the core shears, under the transverse shear of the load case.
    wrinkling_mould_side, wrinkling_far_side : float
        Until a pressed face wrinkles into or off the core.
    indentation : float
        Until the core is crushed under the pressed patch; the help of the face, which spreads
        the force, is not counted.
    """

    core_shear: float
    wrinkling_mould_side: float
    wrinkling_far_side: float
    indentation: float

    @property
    def least(self) -> float:
        """The smallest of them."""
        return min(
            self.core_shear, self.wrinkling_mould_side, self.wrinkling_far_side, self.indentation
        )


def check_sandwich(
    layup: Layup, load: LoadCase | StrainCase, share: float = 1.0
) -> SandwichMargins | None:
    """Return the margins of a layup with a core, None without one.

    Parameters
    ----------
    layup : Layup
    load : LoadCase or StrainCase
    share : float
        Share of the strengths of core and wrinkling that is counted on.
    """
    if layup.core is None:
        return None
    core, sheet = layup.core, layup.core.sheet
    stack = stack_of(layers(layup))
    order = (stack.stiffness, stack.angles, stack.thicknesses)
    place = core.after
    if isinstance(load, StrainCase):
        strain, curvature = np.array(load.strain), np.array(load.curvature)
        shear, crushed = np.zeros(2), 0.0
    else:
        strain, curvature = response(laminate_stiffness(*order), load.force, load.moment)
        shear = np.array(load.shear)
        crushed = load.patch.force / load.patch.area if load.patch is not None else 0.0
    flow = np.array([shear_flow(*order, direction)[place] for direction in (0.0, np.pi / 2.0)])
    strengths = np.array([sheet.shear_strength_along, sheet.shear_strength_across])
    sheared = float(np.hypot(*(flow * shear / strengths)))
    middles = np.cumsum(stack.thicknesses) - (stack.thicknesses + stack.thicknesses.sum()) / 2.0
    wrinkling = []
    for face in (slice(None, place), slice(place + 1, None)):
        turned = at_angles(stack.stiffness[face], stack.angles[face])
        thicknesses = stack.thicknesses[face]
        strains = strain + middles[face, None] * curvature
        force = np.einsum("k,kij,kj->i", thicknesses, turned, strains)
        wrinkling.append(_wrinkling_load(turned, thicknesses, force, sheet))
    return SandwichMargins(
        *(
            share / load_share if load_share > 0.0 else np.inf
            for load_share in (sheared, *wrinkling, crushed / sheet.compressive_strength)
        )
    )


def _wrinkling_load(
    turned: FloatArray, thicknesses: FloatArray, force: FloatArray, sheet: CoreSheet
) -> float:
    """Return the pressure in a face over that at which it wrinkles, in the worst direction.

    Wrinkles are long waves: across them the face bends as a plate does, with no strain along.
    """
    thickness = float(thicknesses.sum())
    bending = np.linalg.inv(np.linalg.inv(integrated(turned, thicknesses).matrix())[3:, 3:])
    worst = 0.0
    for direction in _DIRECTIONS.tolist():
        rotation = stress_rotation(direction)
        pressure = -float((rotation @ force)[0]) / thickness
        if pressure <= 0.0:
            continue
        modulus = 12.0 / thickness**3 * float(rotation[0] @ bending @ rotation[0])
        shear = 1.0 / (
            np.cos(direction) ** 2 / sheet.shear_along + np.sin(direction) ** 2 / sheet.shear_across
        )
        worst = max(worst, pressure / wrinkling_stress(modulus, sheet.modulus, shear))
    return worst
