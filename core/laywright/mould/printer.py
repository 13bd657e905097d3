"""The printer that the tiles are made on, and its cards.

A card is a TOML file; every number carries its unit::

    name = "Medium, 220 x 220 x 250 mm"
    volume = ["220 mm", "220 mm", "250 mm"]
    border = "5 mm"
    nozzle = "0.4 mm"
    layer_height = "0.2 mm"
    infill_share = "20 %"
    walls = 3
    speed = "60 mm/s"

    [material]
    name = "PETG"
    density = "1.27 g/cm^3"
    softening = "70 degC"
"""

from __future__ import annotations

import json
import re
import tomllib
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from laywright.arrays import Vector
from laywright.errors import FileError, LimitError
from laywright.quantities import magnitude

__all__ = ["Printer", "load_printers", "save_printer"]

_CARDS = Path(__file__).parent / "printers"
_USUAL = {"walls": "3", "speed": "60 mm/s"}
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

    def mass(self, volume: float, area: float) -> float:
        """Return the mass of a print in g.

        Parameters
        ----------
        volume : float, mm^3
            Volume it encloses.
        area : float, mm^2
            Its surface, printed solid as deep as the walls; the rest is filled by the infill
            share.
        """
        return self.density / 1000.0 * self._laid(volume, area)

    def hours(self, volume: float, area: float, height: float) -> float:
        """Return about how long a print takes, in hours.

        The plastic laid, at the cross-section of a line times the speed, and a moment for each
        layer; supports, heating and cooling not counted.

        Parameters
        ----------
        volume, area : float, mm^3 and mm^2
            As for `mass`.
        height : float, mm
            Of the print.
        """
        flow = _LINE * self.nozzle * self.layer_height * self.speed
        layers = height / self.layer_height
        return (self._laid(volume, area) / flow + layers * _LAYER_CHANGE) / 3600.0

    def _laid(self, volume: float, area: float) -> float:
        skin = min(volume, self.walls * self.nozzle * area)
        return skin + self.infill_share * (volume - skin)


def load_printers(folder: Path | None = None) -> dict[str, Printer]:
    """Return the printers by name: the cards that come along, then those of `folder`.

    Parameters
    ----------
    folder : Path or None
        Folder with cards of one's own; a card of the same name replaces the one that comes
        along.

    Raises
    ------
    FileError
        If a card cannot be read or lacks something.

    Examples
    --------
    >>> load_printers()["Medium, 220 x 220 x 250 mm"].usable
    (210.0, 210.0, 250.0)
    """
    paths = sorted(_CARDS.glob("*.toml"))
    if folder is not None:
        if not folder.is_dir():
            raise FileError(str(folder), "no folder", "a folder with printer cards", "set another")
        paths += sorted(folder.glob("*.toml"))
    printers = [_read(path) for path in paths]
    printers.sort(key=lambda printer: printer.volume)
    return {printer.name: printer for printer in printers}


def save_printer(printer: Printer, folder: Path) -> Path:
    """Write a printer's card into a folder of one's own, and return the card's path.

    `load_printers` of that folder gives the same printer back.

    Raises
    ------
    FileError
        If the card cannot be written.
    """
    x, y, z = printer.volume
    name = json.dumps(printer.name, ensure_ascii=False)
    material = json.dumps(printer.material, ensure_ascii=False)
    card = f"""name = {name}
volume = ["{x!r} mm", "{y!r} mm", "{z!r} mm"]
border = "{printer.border!r} mm"
nozzle = "{printer.nozzle!r} mm"
layer_height = "{printer.layer_height!r} mm"
infill_share = "{printer.infill_share!r}"
walls = {printer.walls}
speed = "{printer.speed!r} mm/s"

[material]
name = {material}
density = "{printer.density!r} g/cm^3"
softening = "{printer.softening_c!r} degC"
"""
    path = folder / f"{_file_stem(printer.name)}.toml"
    try:
        folder.mkdir(parents=True, exist_ok=True)
        path.write_text(card, encoding="utf-8")
    except OSError as problem:
        raise FileError(
            str(path), str(problem.strerror), "a folder to write to", "choose another"
        ) from problem
    return path


def _read(path: Path) -> Printer:
    try:
        card = _USUAL | tomllib.loads(path.read_text(encoding="utf-8"))
        material = card["material"]
        if len(card["volume"]) != 3:
            raise TypeError("the volume has not three sides")
        x, y, z = (magnitude(side, "mm", f"volume in {path.name}") for side in card["volume"])
        return Printer(
            name=str(card["name"]),
            volume=(x, y, z),
            border=_number(card, "border", "mm", path),
            nozzle=_number(card, "nozzle", "mm", path),
            layer_height=_number(card, "layer_height", "mm", path),
            infill_share=_number(card, "infill_share", "1", path),
            density=_number(material, "density", "g/cm^3", path),
            softening_c=_number(material, "softening", "degC", path),
            material=str(material["name"]),
            walls=round(_number(card, "walls", "1", path)),
            speed=_number(card, "speed", "mm/s", path),
        )
    except KeyError as problem:
        raise FileError(
            str(path), f"no entry {problem}", "every entry of a printer card", "add it"
        ) from problem
    except (OSError, UnicodeDecodeError, tomllib.TOMLDecodeError, TypeError) as problem:
        raise FileError(
            str(path),
            f"a file that cannot be read as a printer card ({problem})",
            "a TOML file as the cards that come along",
            "correct the file",
        ) from problem


def _file_stem(name: str) -> str:
    return re.sub(r"[^\w.-]+", "_", name).strip("._") or "printer"


def _number(table: dict[str, Any], key: str, unit: str, path: Path) -> float:
    return magnitude(str(table[key]), unit, f"{key} in {path.name}")
