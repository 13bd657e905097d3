"""How sure the figures of a laminate are: bands from the ranges of what it is made of.

Many parts are drawn at random (Monte Carlo) from the ranges on the cards and from what usually
varies in the work; nine of ten lie in the band that is given.  What matters most is the input
whose square of correlation with the result is largest.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray
from laywright.laminate.criteria import Criterion
from laywright.laminate.drawn_parts import draw_parts, margins_of
from laywright.laminate.knock_downs import KnockDowns, usual_knock_downs
from laywright.laminate.laminate import analyse
from laywright.laminate.loads import LoadCase
from laywright.laminate.plies import Layup
from laywright.laminate.sampling import Draws, Scatter, usual_scatter
from laywright.laminate.stiffness import laminate_stiffness
from laywright.laminate.strength import check_strength
from laywright.stage import stage

__all__ = ["Band", "Certainty", "how_sure"]

_ENDS = (5.0, 50.0, 95.0)


@dataclass(frozen=True)
class Band:
    """Between what and what a figure lies in nine parts of ten.

    Attributes
    ----------
    name, unit : str
    planned : float
        By the values on the cards.
    low, middle, high : float
        5, 50 and 95 parts of 100 lie below.
    matters : str
        The input that moves it most.
    share : float
        Share of the variance that goes with that input.
    """

    name: str
    unit: str
    planned: float
    low: float
    middle: float
    high: float
    matters: str
    share: float

    @property
    def sentence(self) -> str:
        """Return the band in words."""
        planned, low, high = (
            f"{float(f'{number:.3g}'):g}" for number in (self.planned, self.low, self.high)
        )
        text = (
            f"{self.name}: planned {planned} {self.unit}, nine of ten parts {low} to {high} "
            f"{self.unit}"
        )
        return f"{text}; what matters most is the {self.matters}." if self.matters else f"{text}."


@dataclass(frozen=True)
class Certainty:
    """How sure the figures of a laminate are.

    Attributes
    ----------
    bands : tuple of Band
        Thickness, mass, moduli, bending stiffness, and the margin where a load is given.
    varied : tuple of str
        What was varied.
    samples : int
    remarks : tuple of str
        What the bands leave out.
    digest : str
        Of its inputs.
    """

    bands: tuple[Band, ...]
    varied: tuple[str, ...]
    samples: int
    remarks: tuple[str, ...]
    digest: str = ""

    def band(self, name: str) -> Band:
        """Return the band of this name."""
        return next(band for band in self.bands if band.name == name)


@stage("Certainty", version=1)
def how_sure(
    layup: Layup,
    load: LoadCase | None = None,
    criterion: Criterion = Criterion.MAX_STRESS,
    knock_downs: KnockDowns | None = None,
    scatter: Scatter | None = None,
) -> Certainty:
    """Return the bands of thickness, mass, stiffness and margin.

    Parameters
    ----------
    layup : Layup
        With its cards.
    load : LoadCase or None
        For the margin until the first ply fails; None leaves it out.
    criterion, knock_downs
        As for `laywright.laminate.strength.check_strength`.
    scatter : Scatter or None
        What varies in the work; None takes what is usual for the process.
    """
    scatter = scatter or usual_scatter(layup.process)
    knock_downs = knock_downs or usual_knock_downs(layup.process)
    layup = layup.main
    planned = analyse(layup)
    draws = Draws(layup.cards, scatter.samples, scatter.seed)
    parts = draw_parts(layup, draws, scatter, None if load is None else knock_downs)
    found = laminate_stiffness(parts.stiffness, parts.angles, parts.thicknesses)
    thickness = parts.thicknesses.sum(axis=-1)
    compliance = np.linalg.inv(found.matrix())
    results: list[tuple[str, str, float, FloatArray]] = [
        ("thickness", "mm", planned.thickness, thickness),
        ("mass", "g/m^2", planned.areal_mass, parts.areal_mass),
        ("modulus along", "MPa", planned.in_plane.e_x, 1.0 / compliance[:, 0, 0] / thickness),
        ("modulus across", "MPa", planned.in_plane.e_y, 1.0 / compliance[:, 1, 1] / thickness),
        (
            "bending stiffness along",
            "N mm",
            planned.bending.e_x * planned.thickness**3 / 12.0,
            1.0 / compliance[:, 3, 3],
        ),
        (
            "bending stiffness across",
            "N mm",
            planned.bending.e_y * planned.thickness**3 / 12.0,
            1.0 / compliance[:, 4, 4],
        ),
    ]
    if load is not None:
        factor = check_strength(planned, load, criterion, knock_downs).first_factor
        if np.isfinite(factor):
            results.append(("margin", "times the load", factor, margins_of(parts, load, criterion)))
    return Certainty(
        tuple(_band(*result, draws) for result in results),
        tuple(draws.drawn),
        scatter.samples,
        _remarks(layup),
    )


def _band(name: str, unit: str, planned: float, values: FloatArray, draws: Draws) -> Band:
    low, middle, high = np.percentile(values, _ENDS).tolist()
    matters, share = "", 0.0
    if float(values.std()) > 1e-9 * abs(planned):
        shares = {
            cause: sum(float(np.corrcoef(number, values)[0, 1]) ** 2 for number in numbers)
            for cause, numbers in draws.drawn.items()
        }
        matters = max(shares, key=lambda cause: shares[cause]) if shares else ""
        share = shares.get(matters, 0.0)
    return Band(name, unit, planned, low, middle, high, matters, share)


def _remarks(layup: Layup) -> tuple[str, ...]:
    remarks = [
        "The bands hold what is on the cards and what usually varies in the work; they know "
        "nothing of mistakes, and nothing of what the theory itself leaves out."
    ]
    if not layup.cards:
        remarks.append("The layup carries no cards: only the work was varied.")
    if layup.core is not None:
        remarks.append("The margin is that of the plies; the core is not judged here.")
    return tuple(remarks)
