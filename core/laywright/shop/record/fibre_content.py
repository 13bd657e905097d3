"""How much fibre a part really holds: by weighing, by measuring its thickness."""

from __future__ import annotations

from laywright.errors import InputError

__all__ = ["by_thickness", "by_weighing"]


def _share(part: float, whole: float, where: str) -> float:
    if not 0.0 < part < whole:
        raise InputError(
            where, f"{part:g} g of {whole:g} g", "a part of the whole", "check the weighing"
        )
    return part / whole


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
