"""Core sheets: what keeps the two faces of a sandwich apart."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from laywright.errors import LimitError
from laywright.laminate.lamina import Expansion, Lamina
from laywright.laminate.limits import Limits, check_limits

__all__ = ["CoreSheet", "core_lamina"]

_STIFFNESS_PER_DENSITY = (150.0, 60e3)
_IN_PLANE = 5.0

Density = Annotated[float, Limits("g/cm^3", 0.01, 2.0)]
Modulus = Annotated[float, Limits("MPa", 1.0, 9.5e3)]
Strength = Annotated[float, Limits("MPa", 0.05, 60.0)]


@dataclass(frozen=True)
class CoreSheet:
    """A core sheet; "along" is the direction marked on it, which is laid along the datum arrow.

    Attributes
    ----------
    name : str
        Name on its card.
    density : float, g/cm^3
    modulus : float, MPa
        Through its thickness.
    modulus_in_plane : float, MPa
    poisson : float
        In the plane.
    shear_along, shear_across : float, MPa
        Shear modulus between the faces, when the sandwich bends along and across.
    shear_strength_along, shear_strength_across : float, MPa
    compressive_strength : float, MPa
        Through its thickness.
    expansion : float, 1/K
        In the plane.
    bond_resin : float, g/m^2
        Resin that each of its two sides takes up when it is bonded.
    """

    name: str
    density: Density
    modulus: Modulus
    modulus_in_plane: Annotated[float, Limits("MPa", 1.0, 9e3)]
    poisson: Annotated[float, Limits("1", 0.0, 0.5)]
    shear_along: Annotated[float, Limits("MPa", 0.5, 1e3)]
    shear_across: Annotated[float, Limits("MPa", 0.5, 1e3)]
    shear_strength_along: Strength
    shear_strength_across: Strength
    compressive_strength: Strength
    expansion: Expansion
    bond_resin: Annotated[float, Limits("g/m^2", 5.0, 2000.0)]

    def __post_init__(self) -> None:
        check_limits(self, self.name)
        low, high = _STIFFNESS_PER_DENSITY
        if not low <= self.modulus / self.density <= high:
            raise LimitError(
                f"{self.name}: modulus",
                f"{self.modulus:g} MPa at {self.density:g} g/cm^3",
                f"{low * self.density:.3g} to {high * self.density:.3g} MPa at such a density",
                "check both numbers and their units",
            )
        if self.modulus_in_plane > _IN_PLANE * self.modulus:
            raise LimitError(
                f"{self.name}: modulus_in_plane",
                f"{self.modulus_in_plane:g} MPa",
                f"at most {_IN_PLANE * self.modulus:g} MPa, {_IN_PLANE:g} times that through it",
                "check both numbers and their units",
            )


def core_lamina(core: CoreSheet) -> Lamina:
    """Return a core sheet as a ply of a laminate, axis 1 along its marked direction."""
    modulus = core.modulus_in_plane
    return Lamina(
        modulus,
        modulus,
        core.poisson,
        max(1.0, modulus / (2.0 * (1.0 + core.poisson))),
        core.expansion,
        core.expansion,
        shear_13=core.shear_along,
        shear_23=core.shear_across,
    )
