"""What is added to or taken from the wanted shape, each item by name, size and place.

Some of it moves the working surface (laminate, coats), some of it scales the print (shrinkage,
growth at cure temperature), and the spring-in of bends opens the face or is only told, as asked.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

from laywright.arrays import Vector
from laywright.errors import LimitError
from laywright.surface.bends import Bend
from laywright.surface.opened import Opened
from laywright.wording import three_figures

__all__ = [
    "Allowance",
    "Allowances",
    "Compensation",
    "SpringInUse",
    "growth_scale",
    "print_scale",
    "scale_items",
    "spring_in_items",
    "surface_items",
]

_OFF = "not applied: switched off"
_BENDS = 20
_REACHED = math.radians(0.005)
_NO_STRETCH = 1e-6


class Allowance(Enum):
    """What can be allowed for."""

    LAMINATE = "laminate thickness"
    COATS = "release film and coats"
    SHRINKAGE = "print shrinkage"
    GROWTH = "growth of the mould at cure temperature"
    SPRING_IN = "spring-in of bends"


class SpringInUse(Enum):
    """What is done about the spring-in of bends."""

    LISTED = "listed"
    APPLIED = "applied"
    NOT_CONSIDERED = "not considered"


@dataclass(frozen=True)
class Allowances:
    """What is allowed for beside the laminate.

    Attributes
    ----------
    coats : float, mm
        Thickness that primer, sealer or film add to the printed surface.
    expansion : float, 1/K
        Thermal expansion of the plastic; 68e-6 for PLA (from memory: use the data sheet).
    warming : float, K
        How much warmer than the printed size's temperature the mould is when the resin gels.
    closing : float
        Share of its turn by which a bend closes after demoulding; it follows from the laminate.
    left_out : tuple of Allowance
        Allowances that are switched off.
    spring_in : SpringInUse
        Whether the bends that close are told, or the face is opened by as much.
    """

    coats: float = 0.0
    expansion: float = 0.0
    warming: float = 0.0
    closing: float = 0.0
    left_out: tuple[Allowance, ...] = ()
    spring_in: SpringInUse = SpringInUse.LISTED

    def __post_init__(self) -> None:
        for name, value, low, high, unit in (
            ("release film and coats", self.coats, 0.0, 5.0, "mm"),
            ("expansion of the plastic", self.expansion, 0.0, 5e-4, "1/K"),
            ("warming of the mould", self.warming, -100.0, 200.0, "K"),
            ("closing of bends", self.closing, -0.2, 0.2, "of the turn"),
        ):
            if not low <= value <= high:
                raise LimitError(
                    name,
                    f"{three_figures(value)} {unit}",
                    f"{three_figures(low)} to {three_figures(high)} {unit}",
                    "check it",
                )

    @property
    def opens(self) -> bool:
        """Whether the face is opened by what its bends close."""
        applied = self.spring_in is SpringInUse.APPLIED
        return applied and self.closing != 0.0 and Allowance.SPRING_IN not in self.left_out

    def size_of(self, kind: Allowance, size: float) -> float:
        """Return the size of an allowance, 0 where it is switched off."""
        return 0.0 if kind in self.left_out else size


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
        ``"mm"``, ``"%"`` or ``"deg"``.
    where : str
        Where it is applied, or why it is not.
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
                f"{three_figures(100.0 * share)} %",
                "-5 to 5 %",
                "measure a printed bar and set the share by which it is too short",
            )
    x, y, z = (1.0 / (1.0 - share) for share in shrinkage)
    return x, y, z


def growth_scale(expansion: float, warming: float) -> float:
    """Return the scale that makes a mould right at the temperature at which the resin gels.

    Parameters
    ----------
    expansion : float, 1/K
        Of the plastic.
    warming : float, K
        From the temperature at which it is measured to that at which the resin gels.

    Examples
    --------
    >>> round(300.0 * growth_scale(68e-6, 20.0), 3)
    299.593
    """
    return 1.0 / (1.0 + expansion * warming)


def surface_items(
    thickness: float, moved: float, allowances: Allowances
) -> tuple[Compensation, ...]:
    """Return the items that move the working surface.

    Parameters
    ----------
    thickness : float, mm
        Of the laminate.
    moved : float, mm
        By how much the laminate moves the working surface off the CAD face, were it switched
        on; 0 where the mould touches that face itself.
    allowances : Allowances
        Coats, and what is switched off.
    """
    if Allowance.LAMINATE in allowances.left_out and moved:
        laminate = Compensation(Allowance.LAMINATE.value, 0.0, "mm", _OFF)
    else:
        where = (
            "working surface, moved along its normals"
            if moved
            else f"not applied: the mould touches the CAD face, the "
            f"{three_figures(thickness)} mm lie "
            "on its other side"
        )
        laminate = Compensation(Allowance.LAMINATE.value, moved, "mm", where)
    items = [laminate]
    if allowances.coats:
        off = Allowance.COATS in allowances.left_out
        where = _OFF if off else "printed surface, set back along its normals"
        size = allowances.size_of(Allowance.COATS, allowances.coats)
        items.append(Compensation(Allowance.COATS.value, size, "mm", where))
    return tuple(items)


def scale_items(shrinkage: Vector, allowances: Allowances) -> tuple[Compensation, ...]:
    """Return the items that scale the print, in percent of length."""
    items = []
    off = Allowance.SHRINKAGE in allowances.left_out
    for axis, scale in zip("xyz", print_scale(shrinkage), strict=True):
        if scale != 1.0:
            where = _OFF if off else f"tiles as they are printed, along the printer's {axis}"
            size = allowances.size_of(Allowance.SHRINKAGE, 100.0 * (scale - 1.0))
            items.append(Compensation(f"print shrinkage along {axis}", size, "%", where))
    growth = growth_scale(allowances.expansion, allowances.warming)
    if growth != 1.0:
        off = Allowance.GROWTH in allowances.left_out
        where = _OFF if off else "tiles as they are printed, along all axes"
        size = allowances.size_of(Allowance.GROWTH, 100.0 * (growth - 1.0))
        items.append(Compensation(Allowance.GROWTH.value, size, "%", where))
    return tuple(items)


def spring_in_items(
    bends: tuple[Bend, ...], allowances: Allowances, opened: Opened | None = None
) -> tuple[Compensation, ...]:
    """Return one item for each of the longest bends, after one for an opened face.

    Parameters
    ----------
    bends : tuple of Bend
        Of the part, the longest first.
    allowances : Allowances
        By which share of its turn a bend closes, and what is done about it.
    opened : Opened or None
        The face as it is opened; None where the bends are only told.
    """
    if allowances.closing == 0.0:
        return ()
    if allowances.spring_in is SpringInUse.NOT_CONSIDERED:
        return (Compensation(Allowance.SPRING_IN.value, 0.0, "deg", "not considered"),)
    if opened is not None:
        return _opened_items(opened)
    off = Allowance.SPRING_IN in allowances.left_out
    items = []
    for number, bend in enumerate(bends[:_BENDS], 1):
        closes = math.degrees(allowances.closing * bend.turn)
        where = (
            f"not applied: {_place(bend)} and closes by this angle; have spring-in applied, which "
            "opens the mould by it, if it matters"
        )
        size = allowances.size_of(Allowance.SPRING_IN, closes)
        items.append(
            Compensation(f"spring-in of bend {number}", size, "deg", _OFF if off else where)
        )
    return tuple(items)


def _opened_items(opened: Opened) -> tuple[Compensation, ...]:
    stretch = three_figures(100.0 * max(opened.largest_stretch, _NO_STRETCH))
    items = [
        Compensation(
            Allowance.SPRING_IN.value,
            opened.largest_move,
            "mm",
            "working surface, opened so that the part closes to its shape; moved by at most this, "
            f"stretched by at most {stretch} %",
        )
    ]
    for number, one in enumerate(opened.bends[:_BENDS], 1):
        held = abs(one.asked - one.reached) > _REACHED
        reached = three_figures(math.degrees(one.reached))
        came = (
            f"the mould is opened by {reached} deg, the faces around it hold the rest"
            if held
            else "the mould is opened by this angle"
        )
        where = f"working surface: {_place(one.bend)}; {came}"
        asked = math.degrees(one.asked)
        items.append(Compensation(f"spring-in of bend {number}", asked, "deg", where))
    return tuple(items)


def _place(bend: Bend) -> str:
    x, y, z = (round(part, 1) + 0.0 for part in bend.point)
    shape = f"radius {three_figures(bend.radius)} mm" if bend.radius else "a sharp edge"
    return (
        f"{bend.where} turns by {math.degrees(bend.turn):.0f} deg, {shape}, over "
        f"{bend.length:.0f} mm near ({x:g}, {y:g}, {z:g}) mm"
    )
