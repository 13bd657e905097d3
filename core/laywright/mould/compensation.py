"""What is added to or taken from the wanted shape, each item by name, size and place."""

from __future__ import annotations

from dataclasses import dataclass

from laywright.arrays import Vector
from laywright.errors import LimitError

__all__ = ["Compensation", "print_scale", "shrinkage_items", "thickness_item"]


@dataclass(frozen=True)
class Compensation:
    """One allowance.

    Attributes
    ----------
    name : str
        What it allows for.
    size : float
        How much, in `unit`.
    unit : str
        ``"mm"`` or ``"%"``.
    where : str
        Where it is applied.
    """

    name: str
    size: float
    unit: str
    where: str


def print_scale(shrinkage: Vector) -> Vector:
    """Return the scale along the printer's axes that makes up for shrinkage.

    Parameters
    ----------
    shrinkage : tuple of 3 float
        Share by which a print is shorter than its file, along the printer's x, y and z.

    Returns
    -------
    tuple of 3 float
        ``1 / (1 - s)``, which is not ``1 + s``.

    Raises
    ------
    LimitError
        If a share is not between -5 and 5 percent.

    Examples
    --------
    >>> print_scale((0.003, 0.0, 0.0))
    (1.0030090270812437, 1.0, 1.0)
    """
    for axis, share in zip("xyz", shrinkage, strict=True):
        if not abs(share) <= 0.05:
            raise LimitError(
                f"print shrinkage along {axis}",
                f"{100.0 * share:.3g} %",
                "-5 to 5 %",
                "measure a printed bar and set the share by which it is too short",
            )
    x, y, z = (1.0 / (1.0 - share) for share in shrinkage)
    return x, y, z


def thickness_item(offset: float) -> Compensation:
    """Return the item for a laminate that moves the working surface by `offset` mm."""
    where = (
        "working surface, moved along its normals"
        if offset
        else "not applied: the mould touches the CAD face itself"
    )
    return Compensation("laminate thickness", offset, "mm", where)


def shrinkage_items(shrinkage: Vector) -> tuple[Compensation, ...]:
    """Return one item for every axis of the printer with shrinkage, in percent of length."""
    return tuple(
        Compensation(
            f"print shrinkage along {axis}",
            100.0 * (scale - 1.0),
            "%",
            f"tiles as they are printed, along the printer's {axis}",
        )
        for axis, scale in zip("xyz", print_scale(shrinkage), strict=True)
        if scale != 1.0
    )
