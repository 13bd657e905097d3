"""The printer that a mould is made on, with the plastic in it, and what a print takes there."""

from __future__ import annotations

from dataclasses import dataclass

from laywright.arrays import Vector
from laywright.errors import LimitError

__all__ = ["Printer"]

_LINE = 1.1  # width of a line over the nozzle; common practice, no source
_LAYER_CHANGE = 1.5  # s; common practice, no source


@dataclass(frozen=True)
class Printer:
    """A printer and the plastic in it.

    Attributes
    ----------
    name : str
        Name of the card.
    volume : tuple of 3 float, mm
        Width, depth and height that can be printed.
    border : float, mm
        Kept free along the four sides of the bed.
    nozzle, layer_height : float, mm
        Of the nozzle, and of a layer.
    infill_share : float
        Share of the inside that is filled, 0 to 1.
    density : float, g/cm^3
        Of the plastic.
    softening_c : float, degC
        Temperature at which it gives way under light load; see the plastic's data sheet.
    material : str
        Name of the plastic.
    walls : int
        Lines that are laid solid along every face.
    speed : float, mm/s
        Mean speed of the nozzle while it lays plastic.
    """

    name: str
    volume: Vector
    border: float = 5.0
    nozzle: float = 0.4
    layer_height: float = 0.2
    infill_share: float = 0.2
    density: float = 1.27
    softening_c: float = 70.0
    material: str = "PETG"
    walls: int = 3
    speed: float = 60.0

    def __post_init__(self) -> None:
        least = 2.0 * self.border
        if self.border < 0.0 or not min(self.volume[:2]) > least or not self.volume[2] > 0.0:
            raise LimitError(
                f"printer {self.name}",
                "a volume of {:.4g} x {:.4g} x {:.4g} mm".format(*self.volume)
                + f" with a border of {self.border:.3g} mm",
                "room between the borders",
                "correct the printer's card",
            )
        for what, value, high in (
            ("nozzle", self.nozzle, 5.0),
            ("layer height", self.layer_height, 5.0),
            ("density", self.density, 25.0),
            ("walls", self.walls, 100.0),
            ("speed", self.speed, 2000.0),
        ):
            if not 0.0 < value <= high:
                raise LimitError(
                    f"{what} of printer {self.name}",
                    f"{value:.3g}",
                    f"more than 0 and at most {high:.3g}",
                    "correct the printer's card",
                )
        if not 0.0 <= self.infill_share <= 1.0:
            raise LimitError(
                f"infill share of printer {self.name}",
                f"{100.0 * self.infill_share:.3g} %",
                "0 to 100 %",
                "correct the printer's card",
            )

    @property
    def usable(self) -> Vector:
        """Width, depth and height inside the border, mm."""
        x, y, z = self.volume
        return x - 2.0 * self.border, y - 2.0 * self.border, z

    @property
    def line(self) -> float:
        """Width of a line, mm: in the skin and in the flow alike."""
        return _LINE * self.nozzle

    @property
    def skin(self) -> float:
        """Depth below every face that is laid solid, mm."""
        return self.walls * self.line

    def laid(self, volume: float, area: float) -> float:
        """Return the plastic in a print, mm^3: a solid skin, and a share of what it encloses.

        Parameters
        ----------
        volume, area : float, mm^3 and mm^2
            Volume and surface of the print.
        """
        skin = min(volume, self.skin * area)
        return skin + self.infill_share * (volume - skin)

    def mass(self, volume: float, area: float) -> float:
        """Return the mass of a print in g.

        Parameters
        ----------
        volume, area : float, mm^3 and mm^2
            As for `laid`.
        """
        return self.density / 1000.0 * self.laid(volume, area)

    def hours(self, volume: float, area: float, height: float) -> float:
        """Return about how long a print takes, in hours.

        The plastic laid, at the cross-section of a line times the speed, and a moment for each
        layer; supports, heating and cooling not counted.

        Parameters
        ----------
        volume, area : float, mm^3 and mm^2
            As for `laid`.
        height : float, mm
            Of the print.
        """
        flow = self.line * self.layer_height * self.speed
        layers = height / self.layer_height
        return (self.laid(volume, area) / flow + layers * _LAYER_CHANGE) / 3600.0
