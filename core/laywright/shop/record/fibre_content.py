"""How much fibre a part really holds: by burning, by weighing, by measuring its thickness."""

from __future__ import annotations

from dataclasses import dataclass

from laywright.errors import InputError

__all__ = ["FibreContent", "by_burning", "by_thickness", "by_weighing"]

_IMPOSSIBLE = -0.005


@dataclass(frozen=True)
class FibreContent:
    """Make-up of a laminate.

    Attributes
    ----------
    mass_fraction : float
        Fibre in the mass.
    fibre, resin, voids : float
        Shares of the volume; `voids` below zero means that the densities or the weighing do
        not fit each other.
    """

    mass_fraction: float
    fibre: float
    resin: float
    voids: float

    @property
    def contradictory(self) -> bool:
        """Whether the voids come out clearly below zero, so that an input must be wrong."""
        return self.voids < _IMPOSSIBLE


def _content(
    mass_fraction: float, density: float, fibre_density: float, resin_density: float
) -> FibreContent:
    fibre = mass_fraction * density / fibre_density
    resin = (1.0 - mass_fraction) * density / resin_density
    return FibreContent(mass_fraction, fibre, resin, 1.0 - fibre - resin)


def _share(part: float, whole: float, where: str) -> float:
    if not 0.0 < part < whole:
        raise InputError(
            where, f"{part:g} g of {whole:g} g", "a part of the whole", "check the weighing"
        )
    return part / whole


def by_burning(
    dry: float, residue: float, density: float, fibre_density: float, resin_density: float
) -> FibreContent:
    """Return the make-up of a glass laminate whose resin was burnt off (ISO 1172, ASTM D2584).

    Carbon, aramid and plant fibres burn too; for those use `by_weighing` or `by_thickness`.
    Burning resin gives off dangerous fumes: a matter for a laboratory furnace.

    Parameters
    ----------
    dry, residue : float, g
        Mass before and after.
    density : float, g/cm^3
        Of the specimen, by weighing in air and water.
    fibre_density, resin_density : float, g/cm^3
    """
    return _content(_share(residue, dry, "burnt specimen"), density, fibre_density, resin_density)


def by_weighing(cloth: float, part: float) -> float:
    """Return the fibre mass fraction from dry cloth (g) and the untrimmed part (g)."""
    return _share(cloth, part, "weighed part")


def by_thickness(cloth_areal: float, fibre_density: float, thickness: float) -> float:
    """Return the fibre volume fraction from the measured thickness.

    Parameters
    ----------
    cloth_areal : float, g/m^2
        Dry cloth of all plies.
    fibre_density : float, g/cm^3
    thickness : float, mm

    Examples
    --------
    >>> round(by_thickness(1000.0, 2.55, 1.26), 2)
    0.31
    """
    if not thickness > 0.0:
        raise InputError("thickness", f"{thickness:g} mm", "more than 0 mm", "measure it again")
    return cloth_areal / (1000.0 * fibre_density * thickness)
