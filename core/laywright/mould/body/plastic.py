"""Plastic, time and money that printing a mould takes.

A print is a skin of full density over all its faces and a share of the space inside it, so

    printed = skin volume + infill * (volume - skin volume),  skin volume = area * skin,
    mass = printed * density,  time = printed / rate,  cost = mass * price

(common practice, no source).  Moves without printing, warming up and failed prints come on
top; so does whatever supports the printer adds.
"""

from __future__ import annotations

from dataclasses import dataclass

from laywright.errors import LimitError
from laywright.wording import three_figures

__all__ = ["PlasticEstimate", "PlasticSettings", "estimate_plastic"]


@dataclass(frozen=True)
class PlasticSettings:
    """What the estimate starts from; all invented defaults that the person replaces.

    Attributes
    ----------
    skin : float, mm
        Thickness of the full-density skin.
    infill : float
        Share of the space inside that is filled, 0 to 1.
    density : float, g/cm^3
        Of the plastic.
    rate : float, mm^3/s
        Plastic laid per second, averaged over a print.
    price : float
        Of a kilogram, in `currency`.
    currency : str
        As it is printed.
    """

    skin: float = 1.2
    infill: float = 0.2
    density: float = 1.27
    rate: float = 8.0
    price: float = 25.0
    currency: str = "EUR"

    def __post_init__(self) -> None:
        for name, value, low, high in (
            ("printed skin, mm", self.skin, 0.1, 100.0),
            ("infill", self.infill, 0.0, 1.0),
            ("density of the plastic, g/cm^3", self.density, 0.1, 10.0),
            ("printing rate, mm^3/s", self.rate, 0.1, 1000.0),
            ("price of a kilogram", self.price, 0.0, 1e6),
        ):
            if not low <= value <= high:
                raise LimitError(
                    name,
                    three_figures(value),
                    f"{three_figures(low)} to {three_figures(high)}",
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
    cost : float
        In `currency`.
    currency : str
    formula : str
        How it was computed, with its numbers.
    """

    printed: float
    mass_g: float
    hours: float
    cost: float
    currency: str
    formula: str


def estimate_plastic(volume: float, area: float, settings: PlasticSettings) -> PlasticEstimate:
    """Return mass, time and cost of printing a solid.

    Parameters
    ----------
    volume : float, mm^3
        Of the solid.
    area : float, mm^2
        Of all its faces.
    settings : PlasticSettings
        Skin, infill, density, rate, price.

    Examples
    --------
    >>> estimate_plastic(1e6, 6e4, PlasticSettings(density=1.0)).formula
    'skin 60000 mm2 x 1.2 mm + 20 % of the rest = 258 cm3; 258 g; 8.94 h at 8 mm3/s; 6.44 EUR'
    """
    skin = min(volume, area * settings.skin)
    printed = skin + settings.infill * (volume - skin)
    mass = printed * settings.density / 1000.0
    hours = printed / settings.rate / 3600.0
    cost = mass / 1000.0 * settings.price
    formula = (
        f"skin {three_figures(area)} mm2 x {settings.skin:g} mm + "
        f"{100.0 * settings.infill:g} % of the rest = {three_figures(printed / 1000.0)} cm3; "
        f"{three_figures(mass)} g; {three_figures(hours)} h at {settings.rate:g} mm3/s; "
        f"{cost:.2f} {settings.currency}"
    )
    return PlasticEstimate(printed, mass, hours, cost, settings.currency, formula)
