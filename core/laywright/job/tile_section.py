"""The sections [printer] and [tiles]: machine, joints, marks, poses, wanted and unwanted cuts."""

from __future__ import annotations

import dataclasses
from pathlib import Path
from typing import Any

from laywright.errors import InputError
from laywright.job.sections import Section, choice, only
from laywright.job.setting_values import section_of
from laywright.mould.tiles.cuts import PrintPose
from laywright.mould.tiles.joint import JointKind
from laywright.mould.tiles.printer import CARD_KEYS, Printer, load_printers, printer_of
from laywright.mould.tiles.tile import TileSettings
from laywright.mould.tiles.wishes import CutWishes
from laywright.quantities import magnitude

__all__ = ["read_printer", "read_tiles"]

_UNITS = {
    "dowel_diameter": "mm",
    "dowel_depth": "mm",
    "clearance": "mm",
    "tongue_width": "mm",
    "tongue_length": "mm",
    "tongue_clearance": "mm",
    "ear_reach": "mm",
    "ear_thickness": "mm",
    "ear_height": "mm",
    "wall": "mm",
    "glue_gap": "mm",
    "glue_density": "g/cm^3",
    "least_tile": "mm",
    "mark_depth": "mm",
    "plan_seconds": "s",
}
_PINNED = ("pinned_x", "pinned_y", "pinned_z")
_FREE = ("free_x", "free_y", "free_z")
_CUTS = "[tiles.cuts]"


def read_printer(section: Section, folder: Path) -> Printer:
    """Return the printer.

    Parameters
    ----------
    section : mapping
        ``use`` names a card; ``cards`` is a folder with cards of one's own.  Any other entry
        of a card, such as ``infill_share``, stands in place of the card's; without ``use`` all
        of them are needed.
    folder : Path
        Where the job description lies; ``cards`` is found from there.
    """
    only(section, {"use", "cards", *CARD_KEYS}, "[printer]")
    entries = {key: value for key, value in section.items() if key not in ("use", "cards")}
    cards = section.get("cards")
    printers = load_printers(None if cards is None else folder / _text(cards, "cards"))
    if "use" not in section:
        if not entries:
            raise InputError(
                "[printer] use", "nothing", " or ".join(f"'{key}'" for key in printers), "add it"
            )
        return printer_of(entries, "[printer]")
    name = _text(section["use"], "use")
    if name not in printers:
        raise InputError(
            "[printer] use", f"'{name}'", " or ".join(f"'{key}'" for key in printers), "choose one"
        )
    return printer_of(entries, "[printer]", printers[name])


def read_tiles(section: Section) -> TileSettings:
    """Return how the body is cut; ``[tiles.cuts]`` holds what the maker wants of the cuts."""
    only(section, {*_UNITS, "joint", "pose", "cuts"}, "[tiles]")
    usual = TileSettings()
    values: dict[str, Any] = {
        key: _number(section[key], unit, f"[tiles] {key}")
        for key, unit in _UNITS.items()
        if key in section
    }
    if "joint" in section:
        values["joint"] = choice(JointKind, section["joint"], "[tiles] joint")
    if "pose" in section:
        values["pose"] = choice(PrintPose, section["pose"], "[tiles] pose")
    values["wishes"] = _wishes(section_of(section, "cuts"))
    return dataclasses.replace(usual, **values)


def _wishes(section: Section) -> CutWishes:
    only(section, {"turn", *_PINNED, *_FREE, "kept_whole"}, _CUTS)
    values: dict[str, Any] = {}
    if "turn" in section:
        values["turn"] = _number(section["turn"], "radian", f"{_CUTS} turn")
    for key in _PINNED:
        places = _list(section.get(key, []), f"{_CUTS} {key}")
        values[key] = tuple(_number(place, "mm", f"{_CUTS} {key}") for place in places)
    for key in _FREE:
        values[key] = _rows(section.get(key, []), 2, f"{_CUTS} {key}")
    values["kept_whole"] = _rows(section.get("kept_whole", []), 4, f"{_CUTS} kept_whole")
    return CutWishes(**values)


def _rows(value: object, count: int, where: str) -> tuple[tuple[float, ...], ...]:
    """Return a list of lists of as many lengths."""
    what = {2: "from and to", 4: "x, y, z and a radius"}[count]
    rows = []
    for row in _list(value, where):
        if not isinstance(row, list) or len(row) != count:
            raise InputError(
                where, repr(row), f"a list of {what}, each with its unit", "correct it"
            )
        rows.append(tuple(_number(number, "mm", where) for number in row))
    return tuple(rows)


def _list(value: object, where: str) -> list[Any]:
    if not isinstance(value, list):
        raise InputError(where, repr(value), "a list in square brackets", "correct it")
    return value


def _number(value: object, unit: str, where: str) -> float:
    if not isinstance(value, str):
        raise InputError(
            where, repr(value), "a number with its unit in quotes", f'write "{value} {unit}"'
        )
    return magnitude(value, unit, where)


def _text(value: object, key: str) -> str:
    if not isinstance(value, str) or not value.strip():
        raise InputError(f"[printer] {key}", repr(value), "a text in quotes", "correct it")
    return value
