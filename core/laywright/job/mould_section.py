"""The section [mould] and its parts: inside, edge, allowances, plastic, feet, pieces."""

from __future__ import annotations

import dataclasses
from typing import Any

from laywright.job.sections import Section, choice
from laywright.job.setting_values import section_of, settings_of
from laywright.mould.body.compensation import Allowance, Allowances
from laywright.mould.body.piece_settings import PieceSettings
from laywright.mould.body.plastic import PlasticSettings
from laywright.mould.body.settings import Edge, Feet, Inside, MouldSettings

__all__ = ["read_mould"]

_MOULD_PARTS: dict[str, type] = {
    "inside": Inside,
    "edge": Edge,
    "allowances": Allowances,
    "plastic": PlasticSettings,
    "feet": Feet,
    "pieces": PieceSettings,
}


def read_mould(section: Section) -> MouldSettings:
    """Return the mould's settings; each of its parts is a section of its own."""
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
    return dataclasses.replace(
        settings_of(MouldSettings, section, "mould", besides=_MOULD_PARTS), **parts
    )
