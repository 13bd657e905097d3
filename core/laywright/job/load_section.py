"""The load of a job description: forces, strains, a panel, and how they are judged."""

from __future__ import annotations

from typing import Any

from laywright.job.sections import Section, choice, only, text_of
from laywright.job.setting_values import section_of
from laywright.laminate.criteria import Criterion
from laywright.laminate.knock_downs import KnockDowns
from laywright.laminate.loading import Loading
from laywright.laminate.loads import LoadCase, Patch, StrainCase
from laywright.laminate.plate import Plate, Support
from laywright.quantities import magnitude

__all__ = ["read_load"]

_FORCES = ("pull_along", "pull_across", "shear")
_MOMENTS = ("bend_along", "bend_across", "twist")
_THROUGH = ("through_along", "through_across")
_PATCH = ("pressed_force", "pressed_area")
_STRAINS = ("along", "across", "shear")
_CURVATURES = ("curvature_along", "curvature_across", "twist")
_COUNTED = ("tension", "compression", "shear", "core")


def read_load(section: Section) -> Loading | None:
    """Return the load that the section ``[load]`` describes, None where there is none.

    Forces are per width of laminate (``"12 N/mm"``), moments per width (``"8 N"``), in the axes
    of the layup.  ``[load.strain]`` forces strains on it, ``[load.panel]`` is a flat rectangle
    of it, ``[load.counted_on]`` holds the shares of the cards' strengths that are counted on.

    Raises
    ------
    InputError
        If a key or value is unknown, lacks its unit or cannot be used.
    """
    if not section:
        return None
    forces = {*_FORCES, *_MOMENTS, *_THROUGH, *_PATCH}
    only(section, {*forces, "criterion", "strain", "panel", "counted_on"}, "[load]")
    return Loading(
        _load(section) if forces & set(section) else None,
        _strain(section_of(section, "strain")),
        _plate(section_of(section, "panel")),
        choice(Criterion, section.get("criterion"), "[load] criterion"),
        _counted_on(section_of(section, "counted_on")),
    )


def _load(section: Section) -> LoadCase:
    patch = None
    if set(_PATCH) & set(section):
        force, area = (text_of(section, key, "[load]") for key in _PATCH)
        patch = Patch(
            magnitude(force, "N", "[load] pressed_force"),
            magnitude(area, "mm^2", "[load] pressed_area"),
        )
    return LoadCase(
        _numbers(section, _FORCES, "N/mm", "[load]"),
        _numbers(section, _MOMENTS, "N", "[load]"),
        _numbers(section, _THROUGH, "N/mm", "[load]"),
        patch,
    )


def _strain(section: Section) -> StrainCase | None:
    if not section:
        return None
    where = "[load.strain]"
    only(section, {*_STRAINS, *_CURVATURES}, where)
    return StrainCase(
        _numbers(section, _STRAINS, "1", where), _numbers(section, _CURVATURES, "1/mm", where)
    )


def _plate(section: Section) -> Plate | None:
    if not section:
        return None
    where = "[load.panel]"
    only(section, {"length", "width", "edges", "pressure", *_FORCES}, where)
    length, width = (
        magnitude(text_of(section, key, where), "mm", f"{where} {key}")
        for key in ("length", "width")
    )
    (pressure,) = _numbers(section, ("pressure",), "MPa", where)
    return Plate(
        length,
        width,
        choice(Support, section.get("edges"), f"{where} edges"),
        pressure,
        _numbers(section, _FORCES, "N/mm", where),
    )


def _counted_on(section: Section) -> KnockDowns | None:
    if not section:
        return None
    where = "[load.counted_on]"
    only(section, set(_COUNTED), where)
    return KnockDowns(
        **{
            key: magnitude(text_of(section, key, where), "1", f"{where} {key}")
            for key in _COUNTED
            if key in section
        }
    )


def _numbers(section: Section, keys: tuple[str, ...], unit: str, where: str) -> Any:
    """Return a number for each key, zero where it is not given."""
    return tuple(
        magnitude(text_of(section, key, where), unit, f"{where} {key}") if key in section else 0.0
        for key in keys
    )
