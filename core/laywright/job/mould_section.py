"""The section [mould] and its parts: inside, edge, allowances, plastic, feet, pieces."""

from __future__ import annotations

import dataclasses
from typing import Any

from laywright.errors import InputError
from laywright.job.sections import Section, choice
from laywright.job.setting_values import section_of, settings_of
from laywright.mould.body.compensation import Allowance, Allowances
from laywright.mould.body.piece_settings import PieceSettings
from laywright.mould.body.plastic import PlasticSettings
from laywright.mould.body.settings import Edge, Feet, Inside, MouldSettings

__all__ = ["marks_datum", "read_mould"]

_MOULD_PARTS: dict[str, type] = {
    "inside": Inside,
    "edge": Edge,
    "allowances": Allowances,
    "plastic": PlasticSettings,
    "feet": Feet,
    "pieces": PieceSettings,
}
# What of the plastic is looked for here, and the entry of the printer's card that says it.
_ON_THE_CARD = {
    "skin": "walls",
    "infill": "infill_share",
    "density": "material",
    "rate": "speed",
}
_MARKS = "mark_datum"


def read_mould(section: Section) -> MouldSettings:
    """Return the mould's settings; each of its parts is a section of its own."""
    _refuse_card(section_of(section, "plastic"))
    parts: dict[str, Any] = {
        name: settings_of(kind, section_of(section, name), f"mould.{name}")
        for name, kind in _MOULD_PARTS.items()
        if name in section
    }
    allowances = parts.get("allowances")
    if allowances is not None:
        left_out = tuple(
            choice(Allowance, name, "[mould.allowances] left_out")
            for name in section["allowances"].get("left_out", [])
        )
        parts["allowances"] = dataclasses.replace(allowances, left_out=left_out)
    besides = {*_MOULD_PARTS, _MARKS}
    return dataclasses.replace(
        settings_of(MouldSettings, section, "mould", besides=besides), **parts
    )


def marks_datum(section: Section) -> bool:
    """Return whether the mould carries the marks of the datum that the cloth is laid from."""
    value = section.get(_MARKS, False)
    if not isinstance(value, bool):
        raise InputError(f"[mould] {_MARKS}", repr(value), "true or false", "choose one of them")
    return value


def _refuse_card(plastic: Section) -> None:
    """Refuse in [mould.plastic] what stands on the printer's card."""
    for key, entry in _ON_THE_CARD.items():
        if key in plastic:
            raise InputError(
                "[mould.plastic]",
                f"the key '{key}'",
                "price and currency; all else is taken from the printer's card",
                f"take it out and set {entry} in [printer]",
            )
