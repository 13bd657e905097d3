"""The cards of printers: those that come along, and those of one's own.

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
from collections.abc import Mapping
from functools import partial
from pathlib import Path
from typing import Any

from laywright.errors import FileError
from laywright.file_names import safe_name
from laywright.mould.machine import Printer
from laywright.quantities import magnitude
from laywright.saving import is_card_of, made_folder, own_place, write_beside

__all__ = [
    "CARD_KEYS",
    "Printer",
    "card_of",
    "drop_printer",
    "load_printers",
    "own_printers",
    "printer_of",
    "save_printer",
]

_CARDS = Path(__file__).parent / "printers"
_USUAL = {"walls": "3", "speed": "60 mm/s"}
_MATERIAL_KEYS = {"name", "density", "softening"}
CARD_KEYS = {
    "name",
    "volume",
    "border",
    "nozzle",
    "layer_height",
    "infill_share",
    "walls",
    "speed",
    "material",
}
"""What a printer's card says."""


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
    printers = [_read(path) for path in sorted(_CARDS.glob("*.toml"))]
    if folder is not None:
        if not folder.is_dir():
            raise FileError(str(folder), "no folder", "a folder with printer cards", "set another")
        printers += [printer for printer, _ in own_printers(folder).values()]
    known = {printer.name: printer for printer in printers}
    return dict(sorted(known.items(), key=lambda entry: entry[1].volume))


def own_printers(folder: Path) -> dict[str, tuple[Printer, Path]]:
    """Return printer and card of every card in a folder of one's own, by the printer's name.

    Raises
    ------
    FileError
        If a card cannot be read or lacks something.
    """
    found = [(_read(path), path) for path in sorted(folder.glob("*.toml"))]
    return {printer.name: (printer, path) for printer, path in found}


def drop_printer(name: str, folder: Path) -> None:
    """Take the card of a printer out of a folder of one's own.

    One of the same name that comes along is seen again.

    Raises
    ------
    FileError
        If there is no card of that name, or it cannot be taken away.
    """
    cards = [path for path in sorted(folder.glob("*.toml")) if _read(path).name == name]
    if not cards:
        raise FileError(
            str(folder),
            f"no card of '{name}'",
            "a card of your own; those that come along stay",
            "choose another printer",
        )
    try:
        for path in cards:
            path.unlink()
    except OSError as problem:
        raise FileError(
            str(path), str(problem.strerror), "a card that can be taken away", "free it"
        ) from problem


def save_printer(printer: Printer, folder: Path) -> Path:
    """Write a printer's card into a folder of one's own, and return the card's path.

    `load_printers` of that folder gives the same printer back.

    Raises
    ------
    FileError
        If the card cannot be written.
    """
    entries = card_of(printer)
    material = entries.pop("material")
    lines = [f"{key} = {json.dumps(value, ensure_ascii=False)}" for key, value in entries.items()]
    lines += ["", "[material]"]
    lines += [f"{key} = {json.dumps(value, ensure_ascii=False)}" for key, value in material.items()]
    card = "\n".join(lines) + "\n"
    stem = safe_name(re.sub(r"[^\w.-]+", "_", printer.name).strip("._") or "printer")
    path = own_place(made_folder(folder), stem, ".toml", partial(is_card_of, printer.name))
    write_beside(path, card.encode())
    return path


def printer_of(card: Mapping[str, Any], where: str, usual: Printer | None = None) -> Printer:
    """Return the printer that a card describes.

    Parameters
    ----------
    card : mapping
        Entries as in a card; each number is a text with its unit.
    where : str
        Name of the card, for the message.
    usual : Printer, optional
        Where the entries come from that the card leaves out.

    Raises
    ------
    FileError
        If an entry is missing, or not known.
    """
    known = _USUAL | ({} if usual is None else card_of(usual))
    material = card.get("material", {})
    if not isinstance(material, Mapping):
        raise FileError(
            f"material in {where}", repr(material), "a section of its own", "correct the card"
        )
    strange = (set(card) - CARD_KEYS) | (set(material) - _MATERIAL_KEYS)
    if strange:
        raise FileError(
            where,
            f"an entry '{min(strange)}'",
            f"one of {', '.join(sorted(CARD_KEYS | _MATERIAL_KEYS))}",
            "correct it",
        )
    plastic = {**known.get("material", {}), **material}
    known = known | dict(card)
    try:
        if not isinstance(known["volume"], list) or len(known["volume"]) != 3:
            raise FileError(
                f"volume in {where}",
                repr(known["volume"]),
                "width, depth and height in a list",
                "correct it",
            )
        x, y, z = (magnitude(str(side), "mm", f"volume in {where}") for side in known["volume"])
        return Printer(
            name=str(known["name"]),
            volume=(x, y, z),
            border=_number(known, "border", "mm", where),
            nozzle=_number(known, "nozzle", "mm", where),
            layer_height=_number(known, "layer_height", "mm", where),
            infill_share=_number(known, "infill_share", "1", where),
            density=_number(plastic, "density", "g/cm^3", where),
            softening_c=_number(plastic, "softening", "degC", where),
            material=str(plastic["name"]),
            walls=round(_number(known, "walls", "1", where)),
            speed=_number(known, "speed", "mm/s", where),
        )
    except KeyError as problem:
        raise FileError(
            where, f"no entry {problem}", "every entry of a printer card", "add it"
        ) from problem


def card_of(printer: Printer) -> dict[str, Any]:
    """Return what a printer's card says, every number as a text with its unit.

    `printer_of` gives the same printer back.
    """
    return {
        "name": printer.name,
        "volume": [f"{side!r} mm" for side in printer.volume],
        "border": f"{printer.border!r} mm",
        "nozzle": f"{printer.nozzle!r} mm",
        "layer_height": f"{printer.layer_height!r} mm",
        "infill_share": f"{100.0 * printer.infill_share:.15g} %",
        "walls": str(printer.walls),
        "speed": f"{printer.speed!r} mm/s",
        "material": {
            "name": printer.material,
            "density": f"{printer.density!r} g/cm^3",
            "softening": f"{printer.softening_c!r} degC",
        },
    }


def _read(path: Path) -> Printer:
    try:
        card = tomllib.loads(path.read_text(encoding="utf-8"))
    except (OSError, UnicodeDecodeError, tomllib.TOMLDecodeError) as problem:
        raise FileError(
            str(path),
            f"a file that cannot be read as a printer card ({problem})",
            "a TOML file as the cards that come along",
            "correct the file",
        ) from problem
    return printer_of(card, path.name)


def _number(table: Mapping[str, Any], key: str, unit: str, where: str) -> float:
    return magnitude(str(table[key]), unit, f"{key} in {where}")
