"""Plastic, time and money that printing a mould takes, reckoned as that of its tiles.

Both ask the printer's card, `laywright.mould.machine`; here the mould is taken before it is cut,
each of its pieces printed by itself with its base on the bed, so the skins at the cuts come on
top.  So do moves without printing, warming up, failed prints, and whatever supports are added.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import Vector
from laywright.errors import LimitError
from laywright.mould.frame import upright
from laywright.mould.machine import Printer
from laywright.surface.triangles import Surface
from laywright.wording import three_figures

__all__ = ["PlasticEstimate", "PlasticSettings", "estimate_plastic"]


@dataclass(frozen=True)
class PlasticSettings:
    """What the estimate starts from.

    Attributes
    ----------
    price : float or None
        Of a kilogram, in `currency`; None where there is none.
    currency : str
        As it is printed.
    printer : Printer or None
        The card of the printer; None leaves the estimate out.
    """

    price: float | None = None
    currency: str = ""
    printer: Printer | None = None

    def __post_init__(self) -> None:
        if self.price is not None and not 0.0 <= self.price <= 1e6:
            raise LimitError(
                "price of a kilogram",
                three_figures(self.price),
                f"0 to {three_figures(1e6)}",
                "set another value",
            )


@dataclass(frozen=True)
class PlasticEstimate:
    """What printing takes.

    Attributes
    ----------
    printed : float, mm^3
        Volume of plastic.
    mass_g : float, g
    hours : float, h
    cost : float or None
        In `currency`; None without a price.
    currency : str
    formula : str
        How it was computed, with its numbers.
    price : float or None
        Of a kilogram, in `currency`.
    """

    printed: float
    mass_g: float
    hours: float
    cost: float | None
    currency: str
    formula: str
    price: float | None = None

    def cost_of(self, mass_g: float) -> str:
        """Return what so many grams cost, as it is printed; empty without a price."""
        if self.price is None:
            return ""
        return f"{mass_g / 1000.0 * self.price:.2f} {self.currency}".rstrip()


def estimate_plastic(
    solids: tuple[Surface, ...], pull: Vector, scale: Vector, settings: PlasticSettings
) -> PlasticEstimate | None:
    """Return mass, time and cost of printing solids; None without a printer.

    Parameters
    ----------
    solids : tuple of Surface
        Closed, each printed by itself.
    pull : tuple of 3 float
        Unit direction that stands upright on the bed.
    scale : tuple of 3 float
        By which a print is larger along the printer's axes.
    settings : PlasticSettings
        Printer and price.
    """
    printer = settings.printer
    if printer is None:
        return None
    turn = np.diag(scale) @ upright(pull)
    placed = [solid.moved(solid.vertices @ turn.T) for solid in solids]
    area = math.fsum(solid.area for solid in placed)
    printed = math.fsum(printer.laid(solid.volume, solid.area) for solid in placed)
    mass = printer.density / 1000.0 * printed
    hours = math.fsum(
        printer.hours(solid.volume, solid.area, float(np.ptp(solid.vertices[:, 2])))
        for solid in placed
    )
    price = settings.price
    cost = None if price is None else mass / 1000.0 * price
    estimate = PlasticEstimate(printed, mass, hours, cost, settings.currency, "", price)
    money = f"; {estimate.cost_of(mass)}" if price is not None else ""
    formula = (
        f"before cutting, card '{printer.name}': skin {three_figures(area)} mm2 x "
        f"{printer.skin:.4g} mm + {100.0 * printer.infill_share:.4g} % of the rest = "
        f"{three_figures(printed / 1000.0)} cm3; {three_figures(mass)} g; "
        f"{three_figures(hours)} h at {printer.speed:.4g} mm/s{money}"
    )
    return PlasticEstimate(printed, mass, hours, cost, settings.currency, formula, price)
