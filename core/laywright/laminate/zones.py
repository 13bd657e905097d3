"""The laminate of a zone: a part of the face that the same plies cover."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from laywright.laminate.laminate import Laminate, analyse

__all__ = ["ZoneLaminate", "zone_laminate"]


@dataclass(frozen=True)
class ZoneLaminate:
    """Thickness, mass and stiffness of a zone, of flat plies.

    Attributes
    ----------
    plies : tuple of int
        Numbers of the plies that cover it.
    area : float, mm^2
    thickness : float, mm
    areal_mass : float, g/m^2
    e_x, e_y : float, MPa
        Moduli when pulled along the datum arrow and across it.
    bending_x, bending_y : float, N mm
        Stiffness of a strip bent along and across, per width.
    """

    plies: tuple[int, ...]
    area: float
    thickness: float
    areal_mass: float
    e_x: float
    e_y: float
    bending_x: float
    bending_y: float

    @property
    def mass(self) -> float:
        """Of the whole zone, g."""
        return self.areal_mass * self.area * 1e-6


def zone_laminate(laminate: Laminate, plies: Sequence[int], area: float) -> ZoneLaminate:
    """Return the laminate of a zone.

    Parameters
    ----------
    laminate : Laminate
        Of the whole part.
    plies : sequence of int
        Numbers of the plies that cover the zone.
    area : float, mm^2
    """
    found = analyse(laminate.layup.at(plies))
    bent = found.bending_stiffness
    return ZoneLaminate(
        tuple(plies),
        area,
        found.thickness,
        found.areal_mass,
        found.in_plane.e_x,
        found.in_plane.e_y,
        bent[0],
        bent[1],
    )
