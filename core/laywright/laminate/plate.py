"""A quick estimate of a flat rectangle: how far it bends, when it buckles, what fails first.

For the panel between ribs, the lid, the floor.  Small deflections of a flat rectangle on edges
that do not give way, by Ritz's method with transverse shear (`laywright.laminate.ritz`).  Of a
layup that is not symmetric the reduced bending stiffness D - B A^-1 B is taken (Ashton 1969).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.errors import InputError, MaterialError
from laywright.laminate.criteria import Criterion
from laywright.laminate.knock_downs import KnockDowns
from laywright.laminate.laminate import Laminate
from laywright.laminate.loads import LoadCase
from laywright.laminate.ritz import PlateState, RitzPlate, Support
from laywright.laminate.strength import check_strength
from laywright.stage import stage

__all__ = ["Plate", "PlateReport", "Support", "check_plate"]

_RIGID = 1e4
_THICK = 0.1
_LONGEST = 10.0
_NEGLIGIBLE = 1e-9

_LIMITS = (
    "A quick estimate for a flat rectangle on edges that do not give way, under an even pressure, "
    "with small deflections. Curvature makes the real part stiffer, soft edges, holes and joints "
    "make it softer.",
)


@dataclass(frozen=True)
class Plate:
    """A rectangle of laminate and what it carries.

    Attributes
    ----------
    length, width : float, mm
        Along the datum arrow and across it.
    support : Support
        How all four edges are held.
    pressure : float, MPa
        From the mould's side outwards; 1 kPa is 0.001 MPa.
    force : tuple of float, N/mm
        In-plane force per width along x, along y and in shear; negative where it presses.
    """

    length: float
    width: float
    support: Support = Support.SIMPLE
    pressure: float = 0.0
    force: tuple[float, float, float] = (0.0, 0.0, 0.0)

    def __post_init__(self) -> None:
        if not (5.0 <= self.length <= 1e5 and 5.0 <= self.width <= 1e5):
            raise InputError(
                "plate",
                f"{self.length:g} x {self.width:g} mm",
                "sides from 5 mm to 100 m",
                "correct the sides",
            )
        if max(self.length, self.width) > _LONGEST * min(self.length, self.width):
            raise InputError(
                "plate",
                f"{self.length:g} x {self.width:g} mm",
                f"sides that differ by a factor of {_LONGEST:g} at most",
                f"take a shorter piece, for beyond {_LONGEST:g} widths the length hardly matters",
            )
        numbers = (self.pressure, *self.force)
        if not np.isfinite(numbers).all() or not any(numbers):
            raise InputError("plate", "no load", "a pressure or an in-plane force", "set one")
        if abs(self.pressure) > 10.0:
            raise InputError(
                "pressure on the plate",
                f"{self.pressure:g} MPa",
                "10 MPa at most",
                "check the unit: 1 kPa is 0.001 MPa",
            )


@dataclass(frozen=True)
class PlateReport:
    """What a rectangle of laminate does.

    Attributes
    ----------
    deflection : float, mm
        Of the middle under the pressure.
    shear_share : float
        Share of it that comes from transverse shear.
    buckling_factor : float
        By which the in-plane forces may grow until it buckles; infinite where nothing presses.
    moment : tuple of float, N
        Per width in the middle: along x, along y, twist.
    strength_factor : float or None
        By which the pressure may grow until something fails in the middle or at the middle of
        an edge; None without pressure or where a card states no strengths.
    finding : str
        What fails first, as a sentence.
    limits : tuple of str
        What the estimate holds for, and where this plate leaves that.
    digest : str
        Of its inputs.
    """

    deflection: float
    shear_share: float
    buckling_factor: float
    moment: tuple[float, float, float]
    strength_factor: float | None
    finding: str
    limits: tuple[str, ...]
    digest: str = ""


@stage("Plate", version=1)
def check_plate(
    laminate: Laminate,
    plate: Plate,
    criterion: Criterion = Criterion.MAX_STRESS,
    knock_downs: KnockDowns | None = None,
) -> PlateReport:
    """Return how far a rectangle bends, when it buckles and what fails first.

    Parameters
    ----------
    laminate : Laminate
    plate : Plate
    criterion, knock_downs
        As for `laywright.laminate.strength.check_strength`.
    """
    bending = laminate.d - laminate.b @ np.linalg.solve(laminate.a, laminate.b)
    size = (plate.length, plate.width)
    ritz = RitzPlate(bending, laminate.shear, size, plate.support)
    rigid = RitzPlate(bending, _RIGID * laminate.shear, size, plate.support)
    coefficients = ritz.deflected(plate.pressure)
    middle = ritz.at(coefficients, 0.0, 0.0)
    without = rigid.at(rigid.deflected(plate.pressure), 0.0, 0.0).deflection
    loaded = plate.pressure != 0.0
    edges = [ritz.at(coefficients, *place) for place in ((1.0, 0.0), (0.0, 1.0))]
    factor, finding = _weakest(laminate, [middle, *edges], criterion, knock_downs)
    mx, my, mxy = middle.moment.tolist()
    return PlateReport(
        middle.deflection,
        1.0 - without / middle.deflection if loaded else 0.0,
        ritz.buckling(plate.force),
        (mx, my, mxy),
        factor if loaded else None,
        finding if loaded else "",
        _limits(laminate, plate, middle.deflection),
    )


def _weakest(
    laminate: Laminate,
    places: list[PlateState],
    criterion: Criterion,
    knock_downs: KnockDowns | None,
) -> tuple[float | None, str]:
    """Return the least factor of the places, and what fails there."""
    reports = []
    names = ("in the middle", "at the edges across x", "at the edges across y")
    largest = max(float(np.abs(state.moment).max()) for state in places)
    for name, state in zip(names, places, strict=True):
        moment = np.where(np.abs(state.moment) > _NEGLIGIBLE * largest, state.moment, 0.0)
        shear = state.shear
        if not moment.any() and not shear.any():
            continue
        mx, my, mxy = moment.tolist()
        qx, qy = shear.tolist()
        try:
            report = check_strength(
                laminate, LoadCase(moment=(mx, my, mxy), shear=(qx, qy)), criterion, knock_downs
            )
        except MaterialError as problem:
            return None, str(problem)
        reports.append((report.least_factor, f"{name.capitalize()}: {report.finding}"))
    return min(reports) if reports else (None, "")


def _limits(laminate: Laminate, plate: Plate, deflection: float) -> tuple[str, ...]:
    limits = list(_LIMITS)
    if abs(deflection) > laminate.thickness / 2.0:
        limits.append(
            f"The deflection of {abs(deflection):.1f} mm is more than half the thickness: the "
            "plate then also stretches and bends less than this says."
        )
    if not laminate.state.symmetric:
        limits.append(
            "The layup is not symmetric: the coupling of stretching and bending is only "
            "followed as a loss of bending stiffness."
        )
    if laminate.thickness > _THICK * min(plate.length, plate.width):
        limits.append(
            "The plate is thick for its size: transverse shear governs it, and the estimate is "
            "rough."
        )
    if any(plate.force) and plate.pressure != 0.0:
        limits.append("Pressure and in-plane forces are looked at one without the other.")
    return tuple(limits)
