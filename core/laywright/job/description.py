"""The job description: a TOML file that says the whole job in words and units.

Every number carries its unit in a string, such as ``"25 mm"`` or ``"5 %"``.  A file that
cannot be used is refused in one sentence that names the file, the section and the key.
"""

from __future__ import annotations

import tomllib
from dataclasses import replace
from pathlib import Path

from laywright.arrays import Vector
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.fabric import Sheeting
from laywright.cloth.patterns.pattern import PatternSettings
from laywright.errors import FileError, InputError
from laywright.job.analysis import AnalysisSettings
from laywright.job.cut_section import read_cuts
from laywright.job.job import Job
from laywright.job.layup_section import read_layup
from laywright.job.load_section import read_load
from laywright.job.mould_section import marks_datum, read_mould
from laywright.job.part_section import read_part
from laywright.job.roll_section import read_roll
from laywright.job.sections import Section, choice, only, text_of
from laywright.job.setting_values import section_of, settings_of, vector_of
from laywright.job.shop_section import SHOP_SECTIONS, read_bench, read_shop
from laywright.job.tile_section import read_printer, read_tiles
from laywright.laminate.materials import load_materials
from laywright.mould.release.release import ReleaseSettings
from laywright.surface.face import LaminateSide, MouldSide

__all__ = ["read_job"]

_LARGEST_FILE = 1_000_000
_BEST_PULL = "largest least draft"


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
    only(table, known | {"datum", "cuts", "roll", "load", "analysis"} | SHOP_SECTIONS, str(path))
    part = section_of(table, "part", required=True)
    materials = load_materials(materials_folder)
    surface = read_part(part, path.parent)
    return Job(
        name=text_of(table, "name", str(path)),
        surface=surface,
        pull=_pull(part.get("pull", _BEST_PULL)),
        layup=read_layup(section_of(table, "layup", required=True), materials),
        printer=read_printer(section_of(table, "printer", required=True), path.parent),
        laminate_side=choice(LaminateSide, part.get("laminate_side"), "[part] laminate_side"),
        mould_side=choice(MouldSide, part.get("mould_side"), "[part] mould_side"),
        datum=_datum(table.get("datum")),
        release=settings_of(ReleaseSettings, section_of(table, "release"), "release"),
        mould=read_mould(section_of(table, "mould")),
        marks_datum=marks_datum(section_of(table, "mould")),
        tiles=read_tiles(section_of(table, "tiles")),
        patterns=_patterns(section_of(table, "patterns")),
        cuts=read_cuts(section_of(table, "cuts")),
        roll=read_roll(section_of(table, "roll")),
        shop=read_shop(table),
        bench=read_bench(table, materials),
        loading=read_load(section_of(table, "load")),
        analysis=(
            settings_of(AnalysisSettings, section_of(table, "analysis"), "analysis")
            if "analysis" in table
            else None
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


def _pull(value: object) -> Vector | None:
    return None if value == _BEST_PULL else vector_of(value, "[part] pull")


def _datum(section: object) -> Datum | None:
    if section is None:
        return None
    if not isinstance(section, dict):
        raise InputError("[datum]", repr(section), "a section with point and direction", "add it")
    only(section, {"point", "direction"}, "[datum]")
    return Datum(
        vector_of(section.get("point"), "[datum] point"),
        vector_of(section.get("direction"), "[datum] direction"),
    )


def _patterns(section: Section) -> PatternSettings:
    """Return how patterns are drawn, and the plain sheets that are cut besides."""
    settings = settings_of(PatternSettings, section, "patterns", besides=("also_cut",))
    wanted = section.get("also_cut", [])
    sheets = wanted if isinstance(wanted, list) else [wanted]
    also_cut = tuple(choice(Sheeting, name, "[patterns] also_cut") for name in sheets)
    return replace(settings, also_cut=also_cut)
