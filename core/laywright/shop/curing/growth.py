"""What a printed mould does between printer, shop and oven: growth with heat, shrinkage."""

from __future__ import annotations

from laywright.errors import InputError

__all__ = ["shrinkage_scale", "thermal_growth"]


def thermal_growth(length: float, expansion: float, temperature_change: float) -> float:
    """Return by how much a length grows, mm.

    Parameters
    ----------
    length : float, mm
    expansion : float, 1/K
    temperature_change : float, K

    Examples
    --------
    >>> round(thermal_growth(300.0, 68e-6, 20.0), 3)
    0.408
    """
    return length * expansion * temperature_change


def shrinkage_scale(shrinkage: float) -> float:
    """Return the factor by which a part is printed larger so that it shrinks to size.

    1 / (1 - s), which is a little more than 1 + s.

    Parameters
    ----------
    shrinkage : float
        Linear shrinkage of the print, as a share of the printed length.
    """
    if not -0.05 < shrinkage < 0.05:
        raise InputError(
            "print shrinkage",
            f"{shrinkage:.1%}",
            "less than 5 % either way",
            "measure a printed bar; 0.2 % to 0.8 % is usual",
        )
    return 1.0 / (1.0 - shrinkage)
