"""What sheet of metal or plastic is as stiff as a laminate, and what it weighs."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum

from laywright.laminate.laminate import Laminate
from laywright.laminate.supplies import PlainSheet

__all__ = ["EqualSheet", "Sameness", "equal_sheets"]


class Sameness(Enum):
    """In what the two are to be alike."""

    BENDING = "as stiff when bent"
    PULLING = "as stiff when pulled"


@dataclass(frozen=True)
class EqualSheet:
    """A plain sheet that is as stiff as a laminate.

    Attributes
    ----------
    name : str
    thickness : float, mm
    areal_mass : float, g/m^2
    mass_ratio : float
        Its mass over that of the laminate.
    """

    name: str
    thickness: float
    areal_mass: float
    mass_ratio: float


def equal_sheets(
    laminate: Laminate, sheets: Iterable[PlainSheet], sameness: Sameness = Sameness.BENDING
) -> tuple[EqualSheet, ...]:
    """Return plain sheets that are as stiff as the weaker direction of a laminate.

    A strip is compared with a strip: E t^3 / 12 when bent, E t when pulled, per width.

    Parameters
    ----------
    laminate : Laminate
    sheets : iterable of PlainSheet
    sameness : Sameness

    Returns
    -------
    tuple of EqualSheet
        The lightest first.
    """
    moduli = laminate.bending if sameness is Sameness.BENDING else laminate.in_plane
    weaker = min(moduli.e_x, moduli.e_y)
    found = []
    for sheet in sheets:
        ratio = weaker / sheet.modulus
        power = 1.0 / 3.0 if sameness is Sameness.BENDING else 1.0
        thickness = laminate.thickness * ratio**power
        mass = 1000.0 * sheet.density * thickness
        found.append(EqualSheet(sheet.name, thickness, mass, mass / laminate.areal_mass))
    return tuple(sorted(found, key=lambda sheet: sheet.areal_mass))
