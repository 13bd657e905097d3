"""Settings of the stages, read from sections of the job description by name and unit."""

from __future__ import annotations

import dataclasses
from collections.abc import Collection
from enum import Enum
from typing import Any, TypeVar, get_type_hints

from laywright.arrays import Vector
from laywright.cloth.cuts.cuts import CutSettings, Propose
from laywright.cloth.drape.fabric import Start
from laywright.cloth.drape.start_search import FindStart
from laywright.cloth.patterns.pattern import PatternSettings
from laywright.cloth.roll.roll import RollSettings, TurnOver, WidePatterns
from laywright.errors import InputError
from laywright.job.analysis import AnalysisSettings, EdgeHold
from laywright.job.sections import Section, choice, only
from laywright.mould.body.compensation import Allowances, SpringInUse
from laywright.mould.body.piece_settings import PieceSettings
from laywright.mould.body.plastic import PlasticSettings
from laywright.mould.body.settings import Edge, Feet, Inside, MouldBuild, MouldSettings
from laywright.mould.release.release import ReleaseSettings
from laywright.quantities import magnitude
from laywright.shop.bench.bag import BagSettings, BagStyle
from laywright.shop.bench.finish import FinishSettings
from laywright.shop.bench.release_coats import CoatingSettings, MouldState, ReleaseAgent
from laywright.shop.bench.strips import StripSettings
from laywright.shop.bench.timeline import WorkingDay
from laywright.shop.coupons.coupon_plan import CouponSettings, SpanRule
from laywright.shop.curing.cure_settings import CureSettings, Support
from laywright.shop.curing.profile import TimeRule
from laywright.shop.mixing.mix import MixSettings
from laywright.surface.repair import RepairSettings
from laywright.values import from_tree

__all__ = ["section_of", "settings_of", "vector_of"]

T = TypeVar("T")

# Unit of every setting that is a number; a setting that is not here is not a number.
_UNITS: dict[type, dict[str, str]] = {
    ReleaseSettings: {"least_draft": "radian", "most_pieces": ""},
    MouldSettings: {
        "run_off": "mm",
        "base": "mm",
        "scribe_depth": "mm",
        "scribe_width": "mm",
        "shrinkage": "1",
    },
    Inside: {
        "wall": "mm",
        "rib_spacing": "mm",
        "rib_thickness": "mm",
        "bottom": "mm",
        "stiffness": "MPa",
        "vacuum": "MPa",
    },
    Edge: {
        "flange": "mm",
        "blend": "mm",
        "cloth_margin": "mm",
        "pry_pockets": "",
        "air_port": "mm",
        "bolt_holes": "mm",
        "inscription": "",
    },
    Allowances: {
        "coats": "mm",
        "expansion": "1/K",
        "warming": "delta_degC",
        "closing": "1",
        "left_out": "",
    },
    PlasticSettings: {
        "price": "",
        "currency": "",
    },
    Feet: {"number": "", "height": "mm", "diameter": "mm"},
    PieceSettings: {
        "most_pieces": "",
        "least_draft": "radian",
        "flange": "mm",
        "bolt_spacing": "mm",
        "bolt_diameter": "mm",
        "clamped": "mm",
        "cone_diameter": "mm",
        "clearance": "mm",
    },
    RepairSettings: {"scrap": "1", "hole": "mm"},
    PatternSettings: {
        "margin": "mm",
        "margins": "mm",
        "notch": "mm",
        "deviation": "mm",
        "triangles": "",
    },
    CutSettings: {"lap": "mm", "stagger": "mm", "plies_apart": "", "shear_limit": "radian"},
    RollSettings: {
        "edge": "mm",
        "gap": "mm",
        "seconds": "s",
        "widths": "mm",
        "sold_by": "mm",
        "parts": "",
        "mirrored_parts": "",
    },
    MixSettings: {
        "extra_share": "1",
        "fixed_loss_g": "g",
        "cup_limit_g": "g",
        "scale_resolution_g": "g",
        "seal_coats": "",
        "seal_coat_weight": "g/m^2",
        "fill_coats": "",
        "fill_coat_weight": "g/m^2",
        "square_metre_minutes": "minute",
        "ply_minutes": "minute",
    },
    AnalysisSettings: {"triangles": "", "pressure": "MPa"},
    CureSettings: {
        "mould_softening_c": "degC",
        "post_cure_c": "degC",
        "post_cure_hours": "hour",
        "ramp": "delta_degC/hour",
    },
    CouponSettings: {"count": ""},
    FinishSettings: {
        "grits": "",
        "primer_coats": "",
        "sealer_coats": "",
        "filler_hours": "hour",
        "primer_hours": "hour",
        "sealer_hours": "hour",
        "sanding_minutes": "minute",
    },
    CoatingSettings: {
        "wait_minutes": "minute",
        "dry_minutes": "minute",
        "square_metre_minutes": "minute",
    },
    StripSettings: {"width": "mm", "lap": "mm", "beyond": "mm"},
    BagSettings: {"beyond": "mm", "slack": "mm", "pleat_every": "mm", "pleat_height": "mm"},
    WorkingDay: {"begins": "", "ends": ""},
}
_PLAIN: dict[Any, str] = {
    int: "a whole number",
    int | None: "a whole number",
    float: "a number",
    float | None: "a number",
    str: "a text in quotes",
    tuple[int, ...]: "whole numbers in brackets",
}
_CHOICES: dict[str, type[Enum]] = {
    "start": Start,
    "find": FindStart,
    "propose": Propose,
    "post_cure_support": Support,
    "build": MouldBuild,
    "spring_in": SpringInUse,
    "turn_over": TurnOver,
    "wide": WidePatterns,
    "edge": EdgeHold,
    "rule": TimeRule,
    "span": SpanRule,
    "agent": ReleaseAgent,
    "state": MouldState,
    "style": BagStyle,
}


def section_of(table: Section, name: str, *, required: bool = False) -> Section:
    """Return a section of a table, an empty one where it may be missing."""
    section = table.get(name)
    if section is None and not required:
        return {}
    if not isinstance(section, dict):
        raise InputError(
            f"[{name}]",
            "no such section" if section is None else "a single value",
            f"a section [{name}] with keys and values",
            "add it to the job description",
        )
    return section


def settings_of(kind: type[T], section: Section, name: str, besides: Collection[str] = ()) -> T:
    """Return settings of a kind, read from a section; see `_UNITS` for what each key means.

    Keys in `besides` are somebody else's to read.
    """
    units = _UNITS[kind]
    allowed = {f.name for f in dataclasses.fields(kind)} & (set(units) | set(_CHOICES))  # type: ignore[arg-type]
    only(section, allowed | set(besides), f"[{name}]")
    values: dict[str, Any] = {}
    for key, value in section.items():
        if key in besides:
            continue
        where = f"[{name}] {key}"
        if units.get(key) == "":
            values[key] = _as_written(kind, key, value, where)
        elif key in _CHOICES and key not in units:
            values[key] = choice(_CHOICES[key], value, where)
        elif isinstance(value, list):
            values[key] = tuple(magnitude(item, units[key], where) for item in value)
        elif isinstance(value, dict):
            values[key] = {k: magnitude(v, units[key], f"{where} {k}") for k, v in value.items()}
        elif isinstance(value, str):
            values[key] = magnitude(value, units[key], where)
        else:
            raise InputError(
                where, repr(value), "a number with its unit in quotes", f'write "{value} unit"'
            )
    return kind(**values)


def _as_written(kind: type, key: str, value: object, where: str) -> Any:
    """Return a value without a unit: a count, a text, a list of such."""
    wanted = get_type_hints(kind)[key]
    if wanted not in _PLAIN:
        return value
    try:
        return from_tree(wanted, value)
    except (TypeError, ValueError) as problem:
        raise InputError(where, repr(value), _PLAIN[wanted], "correct it") from problem


def vector_of(value: object, where: str) -> Vector:
    """Return three numbers."""
    if (
        isinstance(value, list)
        and len(value) == 3
        and all(isinstance(number, (int, float)) for number in value)
    ):
        x, y, z = (float(number) for number in value)
        return x, y, z
    raise InputError(where, repr(value), "three numbers such as [0, 0, 1]", "correct it")
