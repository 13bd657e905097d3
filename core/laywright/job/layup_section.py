"""The layup of a job description: plies, resin, process and core."""

from __future__ import annotations

from laywright.errors import InputError
from laywright.job.sections import Section, choice, only, text_of
from laywright.laminate.extents import extent_from_text
from laywright.laminate.materials import Materials
from laywright.laminate.plies import DropOff, Layup, Process
from laywright.laminate.used_cards import NamedCore, NamedPly, layup_of
from laywright.quantities import magnitude

__all__ = ["read_layup"]

_KEYS = {
    "core",
    "drop_off",
    "drop_way",
    "plies",
    "process",
    "resin",
    "resin_share",
    "void_share",
}


def read_layup(section: Section, materials: Materials) -> Layup:
    """Return the layup that the section ``[layup]`` describes.

    Raises
    ------
    InputError
        If a key or value is missing or cannot be used.
    MaterialError
        If a name is on no card.
    """
    only(section, _KEYS, "[layup]")
    plies = section.get("plies")
    if not isinstance(plies, list) or not plies:
        raise InputError(
            "[layup] plies",
            "no ply" if not plies else repr(plies),
            'a list such as [{ cloth = "...", angle = "45 deg" }]',
            "add the plies, the one that touches the mould first",
        )
    laid = []
    for number, ply in enumerate(plies, 1):
        where = f"[layup] ply {number}"
        if not isinstance(ply, dict):
            raise InputError(where, repr(ply), "cloth and angle", "correct the ply")
        only(ply, {"cloth", "angle", "name", "extent"}, where)
        angle = magnitude(text_of(ply, "angle", where), "radian", f"{where} angle")
        extent = None
        if "extent" in ply:
            extent = extent_from_text(text_of(ply, "extent", where))
        laid.append(NamedPly(text_of(ply, "cloth", where), angle, ply.get("name", ""), extent))
    shares = {
        key: magnitude(text_of(section, key, "[layup]"), "1", f"[layup] {key}")
        for key in ("resin_share", "void_share")
        if key in section
    }
    return layup_of(
        materials,
        laid,
        text_of(section, "resin", "[layup]"),
        choice(Process, section.get("process"), "[layup] process"),
        shares.get("resin_share"),
        shares.get("void_share", 0.0),
        _core(section.get("core")),
        drop_off=_drop_off(section),
        drop_way=choice(DropOff, section.get("drop_way"), "[layup] drop_way"),
    )


def _drop_off(section: Section) -> float | None:
    if "drop_off" not in section:
        return None
    return magnitude(text_of(section, "drop_off", "[layup]"), "mm", "[layup] drop_off")


def _core(section: object) -> NamedCore | None:
    if section is None:
        return None
    where = "[layup] core"
    if not isinstance(section, dict):
        raise InputError(
            where,
            repr(section),
            '{ sheet = "...", thickness = "8 mm", after = 2 }',
            "correct the core",
        )
    only(section, {"sheet", "thickness", "after"}, where)
    after = section.get("after")
    if not isinstance(after, int) or isinstance(after, bool):
        raise InputError(
            f"{where} after",
            "nothing" if after is None else repr(after),
            "the number of the ply that it lies on",
            "add after = 1",
        )
    thickness = magnitude(text_of(section, "thickness", where), "mm", f"{where} thickness")
    return NamedCore(text_of(section, "sheet", where), thickness, after)
