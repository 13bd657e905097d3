"""What a laminate is loaded with, per width, in the axes of the layup."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.errors import InputError

__all__ = ["LoadCase", "Patch", "StrainCase"]

Triple = tuple[float, float, float]


@dataclass(frozen=True)
class Patch:
    """A force that presses on a small area, through the thickness.

    Attributes
    ----------
    force : float, N
    area : float, mm^2
    """

    force: float
    area: float

    def __post_init__(self) -> None:
        if not (np.isfinite(self.force) and self.force >= 0.0 and 0.0 < self.area < 1e8):
            raise InputError(
                "pressed patch",
                f"{self.force:g} N on {self.area:g} mm^2",
                "a force of zero or more on some area",
                "correct the two numbers",
            )


@dataclass(frozen=True)
class LoadCase:
    """Force and moment per width.

    Attributes
    ----------
    force : tuple of float, N/mm
        Along x, along y, in shear.
    moment : tuple of float, N
        About the middle: bending that stretches the far side along x, along y, and twist.
    shear : tuple of float, N/mm
        Transverse shear on the edges across x and across y; only a core is judged by it.
    patch : Patch or None
        Only a core is judged by it.
    """

    force: Triple = (0.0, 0.0, 0.0)
    moment: Triple = (0.0, 0.0, 0.0)
    shear: tuple[float, float] = (0.0, 0.0)
    patch: Patch | None = None

    def __post_init__(self) -> None:
        _some((*self.force, *self.moment, *self.shear, self.patch.force if self.patch else 0.0))


@dataclass(frozen=True)
class StrainCase:
    """Strain and curvature that something else forces on the laminate.

    Attributes
    ----------
    strain : tuple of float
        Of the middle: along x, along y, engineering shear.
    curvature : tuple of float, 1/mm
        Along x, along y, twice the twist.
    """

    strain: Triple = (0.0, 0.0, 0.0)
    curvature: Triple = (0.0, 0.0, 0.0)

    def __post_init__(self) -> None:
        _some((*self.strain, *self.curvature))


def _some(numbers: tuple[float, ...]) -> None:
    if not np.isfinite(numbers).all() or not any(numbers):
        raise InputError("load case", "no load", "a load of finite size", "set at least one")
