"""The job description: a TOML file that says the whole job in words and units.

Every number carries its unit in a string, such as ``"25 mm"`` or ``"5 %"``.  A file that
cannot be used is refused in one sentence that names the file, the section and the key.
"""

from __future__ import annotations

import dataclasses
import tomllib
from enum import Enum
from pathlib import Path
from typing import Any, TypeVar

from laywright.arrays import Vector
from laywright.cloth.datum import Datum
from laywright.cloth.fabric import Start
from laywright.cloth.pattern import PatternSettings
from laywright.cloth.roll import RollSettings
from laywright.errors import FileError, InputError
from laywright.job.job import Job
from laywright.job.layup_section import read_layup
from laywright.job.sections import Section, choice, only, text_of
from laywright.laminate.materials import load_materials
from laywright.mould.body import MouldSettings
from laywright.mould.printer import Printer, load_printers
from laywright.mould.release import ReleaseSettings
from laywright.mould.tiles import TileSettings
from laywright.quantities import magnitude
from laywright.shop.cure_settings import CureSettings, Support
from laywright.shop.mix import MixSettings
from laywright.shop.plan import ShopSettings
from laywright.surface.face import LaminateSide, MouldSide
from laywright.surface.read import read_surface

__all__ = ["read_job"]

T = TypeVar("T")

_LARGEST_FILE = 1_000_000
_BEST_PULL = "largest least draft"

# Unit of every setting that is a number; a setting that is not here is not a number.
_UNITS: dict[type, dict[str, str]] = {
    ReleaseSettings: {"least_draft": "radian"},
    MouldSettings: {
        "run_off": "mm",
        "base": "mm",
        "scribe_depth": "mm",
        "scribe_width": "mm",
        "shrinkage": "1",
    },
    TileSettings: {
        "dowel_diameter": "mm",
        "clearance": "mm",
        "glue_gap": "mm",
        "least_tile": "mm",
    },
    PatternSettings: {"margin": "mm", "notch": "mm", "deviation": "mm", "triangles": ""},
    RollSettings: {"edge": "mm", "gap": "mm", "seconds": "s", "widths": "mm"},
    MixSettings: {
        "extra_share": "1",
        "fixed_loss_g": "g",
        "cup_limit_g": "g",
        "scale_resolution_g": "g",
    },
    CureSettings: {"mould_softening_c": "degC", "post_cure_c": "degC", "post_cure_hours": "hour"},
}
_CHOICES: dict[str, type[Enum]] = {"start": Start, "post_cure_support": Support}


def read_job(path: Path, materials_folder: Path | None = None) -> Job:
    """Read a job description and the mesh that it names.

    Parameters
    ----------
    path : Path
        The TOML file; the mesh is found from the folder it lies in.
    materials_folder : Path, optional
        Folder of the user's own material cards.

    Returns
    -------
    Job

    Raises
    ------
    FileError
        If a file cannot be read.
    InputError
        If a section, key or value is missing or cannot be used.
    """
    table = _toml(path)
    known = {"name", "part", "layup", "printer", "release", "mould", "tiles", "patterns"}
    only(table, known | {"datum", "roll", "mix", "cure"}, str(path))
    part = _section(table, "part", required=True)
    only(part, {"mesh", "unit", "faces", "pull", "laminate_side", "mould_side"}, "[part]")
    surface = read_surface(
        path.parent / text_of(part, "mesh", "[part]"), text_of(part, "unit", "[part]")
    )
    shop = _section(table, "mix")
    temperature = shop.get("temperature", "21 degC")
    degrees = magnitude(temperature, "degC", "[mix] temperature")
    mix = _settings(MixSettings, {k: v for k, v in shop.items() if k != "temperature"}, "mix")
    cure = _settings(CureSettings, _section(table, "cure"), "cure")
    return Job(
        name=text_of(table, "name", str(path)),
        surface=surface,
        pull=_pull(part.get("pull", _BEST_PULL)),
        layup=read_layup(_section(table, "layup", required=True), load_materials(materials_folder)),
        printer=_printer(_section(table, "printer", required=True)),
        laminate_side=choice(LaminateSide, part.get("laminate_side"), "[part] laminate_side"),
        mould_side=choice(MouldSide, part.get("mould_side"), "[part] mould_side"),
        datum=_datum(table.get("datum")),
        release=_settings(ReleaseSettings, _section(table, "release"), "release"),
        mould=_settings(MouldSettings, _section(table, "mould"), "mould"),
        tiles=_settings(TileSettings, _section(table, "tiles"), "tiles"),
        patterns=_settings(PatternSettings, _section(table, "patterns"), "patterns"),
        roll=_settings(RollSettings, _section(table, "roll"), "roll"),
        shop=ShopSettings(
            dataclasses.replace(mix, temperature_c=degrees),
            dataclasses.replace(cure, temperature_c=degrees),
        ),
    )


def _toml(path: Path) -> Section:
    try:
        if path.stat().st_size > _LARGEST_FILE:
            raise FileError(
                str(path), f"{path.stat().st_size} bytes", "a job description", "name another file"
            )
        return tomllib.loads(path.read_text(encoding="utf-8"))
    except OSError as problem:
        if isinstance(problem, FileError):
            raise
        raise FileError(
            str(path),
            f"a file that cannot be read ({problem.strerror})",
            "a job description",
            "check its name and folder",
        ) from problem
    except (tomllib.TOMLDecodeError, UnicodeDecodeError) as problem:
        raise FileError(
            str(path),
            f"text that is not TOML ({problem})",
            "a job description",
            "correct that line",
        ) from problem


def _section(table: Section, name: str, *, required: bool = False) -> Section:
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


def _settings(kind: type[T], section: Section, name: str) -> T:
    units = _UNITS[kind]
    allowed = {f.name for f in dataclasses.fields(kind)} & (set(units) | set(_CHOICES))  # type: ignore[arg-type]
    only(section, allowed, f"[{name}]")
    values: dict[str, Any] = {}
    for key, value in section.items():
        where = f"[{name}] {key}"
        if key in _CHOICES:
            values[key] = choice(_CHOICES[key], value, where)
        elif isinstance(value, list):
            values[key] = tuple(magnitude(item, units[key], where) for item in value)
        elif isinstance(value, dict):
            values[key] = {k: magnitude(v, units[key], f"{where} {k}") for k, v in value.items()}
        elif units[key] == "":
            values[key] = value
        elif isinstance(value, str):
            values[key] = magnitude(value, units[key], where)
        else:
            raise InputError(
                where, repr(value), "a number with its unit in quotes", f'write "{value} unit"'
            )
    return kind(**values)


def _vector(value: object, where: str) -> Vector:
    if (
        isinstance(value, list)
        and len(value) == 3
        and all(isinstance(number, (int, float)) for number in value)
    ):
        x, y, z = (float(number) for number in value)
        return x, y, z
    raise InputError(where, repr(value), "three numbers such as [0, 0, 1]", "correct it")


def _pull(value: object) -> Vector | None:
    return None if value == _BEST_PULL else _vector(value, "[part] pull")


def _datum(section: object) -> Datum | None:
    if section is None:
        return None
    if not isinstance(section, dict):
        raise InputError("[datum]", repr(section), "a section with point and direction", "add it")
    only(section, {"point", "direction"}, "[datum]")
    return Datum(
        _vector(section.get("point"), "[datum] point"),
        _vector(section.get("direction"), "[datum] direction"),
    )


def _printer(section: Section) -> Printer:
    only(section, {"use"}, "[printer]")
    printers = load_printers()
    name = text_of(section, "use", "[printer]")
    if name not in printers:
        raise InputError(
            "[printer] use", f"'{name}'", " or ".join(f"'{key}'" for key in printers), "choose one"
        )
    return printers[name]
