"""The files of a job: what the slicer, the cutting table and the bench take away.

Every file is made in memory first; only then is anything written.  Beside them stands
``job.json`` with the digests that the files were made from, so that anybody can see later
whether they still fit the job.
"""

from __future__ import annotations

import contextlib
import hashlib
import json
from collections.abc import Mapping
from pathlib import Path

from laywright.errors import FileError
from laywright.file_names import safe_name
from laywright.files.html import html_bytes
from laywright.files.paper import Paper
from laywright.files.pdf import pdf_bytes
from laywright.files.shell_deck import shell_deck
from laywright.files.stl import stl_bytes
from laywright.files.true_scale import drawing_pages
from laywright.job.analysis import shell_model
from laywright.job.cloth_files import cloth_files
from laywright.job.job import JobResult
from laywright.job.tables import table_files
from laywright.job.tile_files import tile_files
from laywright.job.trim_guide import trim_paper, trim_ring
from laywright.saving import made_folder, write_all, write_beside
from laywright.shop.bench.bench import TrimGuide

__all__ = ["files_of", "freshness", "write_files"]

_RECORD = "job.json"


def files_of(result: JobResult, paper: Paper = Paper.A4) -> dict[str, bytes]:
    """Return the contents of every file of a job by its path below the chosen folder.

    Parameters
    ----------
    result : JobResult
        What was computed.
    paper : Paper
        For true-scale pages and, where it can be held in the hand, for sheets.

    Returns
    -------
    dict of str to bytes
        Solids in mm, drawings at true scale in mm, tables with units in their heads; the same
        result gives the same bytes.
    """
    files = {
        **_mould_files(result),
        **cloth_files(result, paper),
        **_guide_files(result, paper),
        **_analysis_files(result),
        **table_files(result),
        "job sheet.html": html_bytes(result.sheet.sheet),
        f"job sheet {paper.sheets.value}.pdf": pdf_bytes(result.sheet.sheet, paper.sheets),
    }
    record = {
        "job": result.name,
        "version": result.version,
        "stages": result.digests,
        "files": {path: hashlib.sha256(content).hexdigest() for path, content in files.items()},
    }
    files[_RECORD] = (json.dumps(record, indent=1, ensure_ascii=False) + "\n").encode()
    return files


def _mould_files(result: JobResult) -> dict[str, bytes]:
    solid = result.body.solid
    return {
        f"mould/{safe_name(result.name)} mould body (mm).stl": stl_bytes(
            solid.vertices, solid.triangles
        ),
        **tile_files(result.tiles, result.name, result.version),
        **{
            f"mould/{safe_name(piece.name)} (mm).stl": stl_bytes(
                piece.solid.vertices, piece.solid.triangles
            )
            for piece in result.body.pieces
        },
    }


def _guide_files(result: JobResult, paper: Paper) -> dict[str, bytes]:
    """Return the trim guide, where one is wanted."""
    guide = result.sheet.bench.trim_guide
    number = result.laminate.layup.throughout[-1]
    last = [found for found in result.patterns.patterns if found.ply == number][-1]
    if guide is TrimGuide.PAPER:
        drawing = trim_paper(last, f"{result.name}, {result.version}")
        return {f"cloth/trim guide true scale {paper.value}.pdf": drawing_pages(drawing, paper)}
    if guide is TrimGuide.RING:
        ring = trim_ring(
            result.patterns.draped[number - 1], float(result.laminate.ply_thicknesses[number - 1])
        )
        return {"mould/trim guide (mm).stl": stl_bytes(ring.vertices, ring.triangles)}
    return {}


def _analysis_files(result: JobResult) -> dict[str, bytes]:
    """Return the part as a layered shell for a finite-element solver, where it is wanted."""
    if result.analysis is None:
        return {}
    model = shell_model(
        f"{result.name}, {result.version}",
        result.face,
        result.laminate,
        result.patterns,
        result.analysis,
    )
    # The solver cuts the names of its own files at the first space.
    return {"analysis/shell_mm_N_MPa.inp": shell_deck(model)}


def write_files(files: Mapping[str, bytes], folder: Path) -> list[Path]:
    """Write files below a folder: all of them lie there whole before the first takes its place.

    Files that an earlier job wrote there and this one does not (tile 9 of 9, when there are 6
    now) are taken away, unless somebody has changed them since.  While files take their places,
    ``job.json`` says of every stage that its files are out of date.

    Parameters
    ----------
    files : mapping of str to bytes
        As `files_of` gives them.
    folder : Path
        Made if it is not there; nothing outside of it is touched.

    Returns
    -------
    list of Path
        What was written; ``job.json`` comes last.

    Raises
    ------
    FileError
        If a file cannot be written.  Where the disk is full or may not be written to, every
        old file is still there.
    """
    earlier = _earlier_files(folder)
    record = [(folder / name, content) for name, content in files.items() if name == _RECORD]
    others = [(folder / name, content) for name, content in files.items() if name != _RECORD]
    for name in files:
        if not _is_inside(folder / name, folder):
            raise FileError(
                name, "a place outside the folder", f"a place inside {folder}", "rename"
            )
    for path in dict.fromkeys(path.parent for path, _ in (*others, *record)):
        made_folder(path)
    write_all([*((path, _between(files, earlier)) for path, _ in record), *others])
    for name, digests in earlier.items():
        path = folder / name
        if name not in files and _is_inside(path, folder):
            with contextlib.suppress(OSError):
                if hashlib.sha256(path.read_bytes()).hexdigest() in digests:
                    path.unlink()
    for path, content in record:
        write_beside(path, content)
    return [path for path, _ in (*others, *record)]


def _is_inside(path: Path, folder: Path) -> bool:
    return path.resolve().is_relative_to(folder.resolve())


def _between(files: Mapping[str, bytes], earlier: Mapping[str, set[str]]) -> bytes:
    """Return the record that stands while files take their places: any may be old or new."""
    here = {name: sorted(digests) for name, digests in earlier.items()}
    for name, content in files.items():
        if name != _RECORD:
            here[name] = [*here.get(name, ()), hashlib.sha256(content).hexdigest()]
    return (json.dumps({"stages": {}, "files": here}, indent=1) + "\n").encode()


def _earlier_files(folder: Path) -> dict[str, set[str]]:
    """Return what an earlier job wrote into a folder: by path the digests that it may have."""
    try:
        files = json.loads((folder / _RECORD).read_text(encoding="utf-8"))["files"]
        return {
            str(name): {digests} if isinstance(digests, str) else {str(each) for each in digests}
            for name, digests in files.items()
        }
    except (OSError, ValueError, KeyError, AttributeError, TypeError):
        return {}


def freshness(folder: Path, digests: Mapping[str, str]) -> tuple[str, ...] | None:
    """Return the titles of the stages whose files in a folder are out of date.

    Parameters
    ----------
    folder : Path
        Where files were written.
    digests : mapping of str to str
        Present digest by stage title, as `laywright.job.JobResult.digests`.

    Returns
    -------
    tuple of str or None
        Empty when all is up to date; None when the folder holds no files of a job.
    """
    try:
        made_from = json.loads((folder / _RECORD).read_text(encoding="utf-8"))["stages"]
        return tuple(title for title, digest in digests.items() if made_from.get(title) != digest)
    except (OSError, ValueError, KeyError, AttributeError, TypeError):
        return None
