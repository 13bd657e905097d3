"""The files of the cloth: patterns and rolls as DXF and SVG, patterns on paper."""

from __future__ import annotations

from laywright.cloth.patterns.alike import alike_groups
from laywright.cloth.patterns.pattern import Pattern
from laywright.cloth.patterns.pattern_drawing import pattern_drawing
from laywright.cloth.roll.roll_drawing import roll_drawing
from laywright.cloth.roll.roll_layout import RollPlan
from laywright.file_names import safe_names
from laywright.files.drawing import Drawing
from laywright.files.dxf import dxf_bytes
from laywright.files.paper import Paper
from laywright.files.plotter import fits_a_sheet, whole_sheets
from laywright.files.svg import svg_bytes
from laywright.files.true_scale import drawing_pages
from laywright.job.job import JobResult

__all__ = ["cloth_files", "paper_patterns"]


def cloth_files(result: JobResult, paper: Paper) -> dict[str, bytes]:
    """Return the files of the cloth by path.

    Parameters
    ----------
    result : JobResult
        What was computed.
    paper : Paper
        For the true-scale pages.
    """
    patterns = result.patterns.patterns
    label = f"{result.name}, {result.version}"
    seams = _seams(patterns, result.roll)
    drawings = [
        pattern_drawing(pattern, label, (), result.roll.parts, seams[index])
        for index, pattern in enumerate(patterns)
    ]
    drawings += [
        pattern_drawing(sheet, label, (), result.roll.parts) for sheet in result.patterns.sheets
    ]
    on_paper = paper_patterns(result)
    layouts = result.roll.layouts
    rolls = [roll_drawing(layout, patterns) for layout in layouts]
    names = safe_names([_file_name(p) for p in (*patterns, *result.patterns.sheets)])
    roll_names = safe_names(
        [
            layout.cloth if layout.name == "roll" else f"{layout.cloth}, {layout.name}"
            for layout in layouts
        ]
    )
    files = {
        "cloth/patterns (mm).dxf": dxf_bytes(drawings),
        f"cloth/patterns true scale {paper.value}.pdf": drawing_pages(
            [drawing.without("check bar") for drawing in on_paper], paper
        ),
    }
    plotted = [drawing for drawing in (*on_paper, *rolls) if fits_a_sheet(drawing)]
    if plotted:
        files["cloth/whole sheets for a plotter.pdf"] = whole_sheets(plotted)
    for name, drawing in zip(names, drawings, strict=True):
        files[f"cloth/{name} (mm).svg"] = svg_bytes(drawing)
    for name, drawing in zip(roll_names, rolls, strict=True):
        files[f"cloth/roll {name} (mm).dxf"] = dxf_bytes(drawing)
        files[f"cloth/roll {name} (mm).svg"] = svg_bytes(drawing)
    return files


def _file_name(pattern: Pattern) -> str:
    """Return number, piece where there are several, and cloth of a pattern."""
    if not pattern.ply:
        return f"over the last ply {pattern.cloth}"
    piece = f" piece {pattern.piece}" if pattern.piece else ""
    return f"ply {pattern.ply:02d}{piece} {pattern.cloth}"


def paper_patterns(result: JobResult) -> list[Drawing]:
    """Return one drawing for each group of patterns that are alike, with its quantity."""
    patterns = result.patterns.patterns
    label = f"{result.name}, {result.version}"
    seams = _seams(patterns, result.roll)
    return [
        pattern_drawing(
            patterns[group[0]],
            label,
            [patterns[index].ply for index in group],
            len(group) * result.roll.parts,
            seams[group[0]],
        )
        for group in alike_groups(patterns)
    ] + [pattern_drawing(sheet, label, (), result.roll.parts) for sheet in result.patterns.sheets]


def _seams(patterns: tuple[Pattern, ...], roll: RollPlan) -> list[list[float]]:
    """Return where each pattern is split to fit its roll: the cuts of all its strips."""
    found: list[set[float]] = [set() for _ in patterns]
    for layout in roll.layouts:
        for place in layout.placements:
            if place.strip is not None:
                found[place.pattern].update(round(edge, 6) for edge in place.strip)
    return [sorted(edges)[1:-1] for edges in found]
