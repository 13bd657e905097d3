"""Where patterns land on the mould: start points, and where the threads through them leave.

Everything is seen straight along the pull, from the side away from the mould, with the datum
arrow pointing to the right.  Distances are those of that view, as a square and a rule
above the mould measure them, not along the curved surface.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import shapely

from laywright.arrays import Array, FloatArray, Vector, floats, unit_vector
from laywright.cloth.patterns.drawing_marks import arrow, cross, drawing_of
from laywright.cloth.patterns.pattern import PatternSet
from laywright.cloth.plies.draped_ply import DrapedPly
from laywright.errors import InputError
from laywright.files.drawing import Drawing, Label, Line
from laywright.surface.triangles import Surface

__all__ = ["Landing", "landing_drawing", "landings"]

_SAME = 1.0
_WORDS = ("warp ahead", "weft left", "warp behind", "weft right")
_LETTER = 7.0


@dataclass(frozen=True, eq=False)
class Landing:
    """Where a pattern lands, in the view along the pull.

    Attributes
    ----------
    names : tuple of str
        Names of the patterns that land alike, to 1 mm.
    start : (2,) float, mm
        Start point: along the datum arrow from the rearmost point of the trim line, and to the
        left from its rightmost point.
    notches : dict of str to (2,) float, mm
        Where the warp and the weft thread through the start point first leave the part, seen
        from the start point: along the arrow and to its left.  The notches of the pattern lie
        on the same threads, farther out by the margin.
    threads : tuple of (2, 2) float, mm
        The two threads as short pieces, as `start`.
    """

    names: tuple[str, ...]
    start: FloatArray
    notches: dict[str, FloatArray]
    threads: tuple[FloatArray, ...]


def landings(patterns: PatternSet, pull: Vector) -> tuple[Landing, ...]:
    """Return where every pattern lands; those that land alike are told once.

    Parameters
    ----------
    patterns : PatternSet
        The patterns with their drapes.
    pull : tuple of 3 float
        Direction of the pull; the side away from the mould is looked at either way.

    Raises
    ------
    InputError
        If the datum arrow points along the pull.
    """
    axes = _axes(patterns, pull)
    corner = _outline(patterns, axes).min(axis=0)
    found: list[Landing] = []
    counted: dict[int, int] = {}
    for pattern in patterns.patterns:
        piece = counted.get(pattern.ply, 0)
        counted[pattern.ply] = piece + 1
        ply = patterns.draped[pattern.ply - 1]
        one = _landing(pattern.name, ply, piece, axes, corner)
        for index, other in enumerate(found):
            if _alike(one, other):
                names = (*other.names, pattern.name)
                found[index] = Landing(names, other.start, other.notches, other.threads)
                break
        else:
            found.append(one)
    return tuple(found)


def landing_drawing(patterns: PatternSet, pull: Vector) -> Drawing:
    """Return the view along the pull: trim line, start points, arrow, threads, measures.

    Parameters
    ----------
    patterns : PatternSet
        The patterns with their drapes.
    pull : tuple of 3 float
        Direction of the pull; the side away from the mould is looked at either way.
    """
    axes = _axes(patterns, pull)
    outline = _outline(patterns, axes)
    corner = outline.min(axis=0)
    surface = patterns.main.surface
    shapes: list[Line | Label] = [
        Line("trim", surface.vertices[loop] @ axes.T - corner, closed=True)
        for loop in surface.boundary_loops
    ]
    shapes += _ends(patterns, axes, corner)
    reach = np.ptp(outline, axis=0)
    size = 0.18 * float(reach.min())
    seen: list[FloatArray] = []
    for number, landing in enumerate(landings(patterns, pull)):
        shapes += [Line("warp", piece) for piece in landing.threads]
        if any(np.hypot(*(landing.start - other)) < _SAME for other in seen):
            continue
        seen.append(landing.start)
        shapes += cross("datum", landing.start, 0.25 * size)
        if number == 0:
            shapes += arrow("datum", landing.start, np.array([1.0, 0.0]), size)
        shapes += _measures(landing.start)
    return drawing_of("where the start point lies", shapes)


def _ends(patterns: PatternSet, axes: FloatArray, corner: FloatArray) -> list[Line | Label]:
    """Return the ends of local plies inside the face, each with the number of its ply."""
    shapes: list[Line | Label] = []
    for number, ply in enumerate(patterns.draped, 1):
        if ply.ends is None or not len(ply.ends):
            continue
        seen = ply.surface.vertices @ axes.T - corner
        lines = shapely.line_merge(shapely.multilinestrings(shapely.linestrings(seen[ply.ends])))
        for line in shapely.get_parts(lines):
            points = shapely.get_coordinates(line)
            shapes.append(Line("local", points))
            turn = 0.6 * number  # so that numbers of one reinforcement stand beside each other
            x, y = points[int(np.argmax(points @ [np.cos(turn), np.sin(turn)]))].tolist()
            shapes.append(Label("label", f"{number}", (x, y), 0.7 * _LETTER))
    return shapes


def _measures(start: FloatArray) -> list[Line | Label]:
    """Return two lines from the edges to the start point with their lengths."""
    x, y = start.tolist()
    below = np.array([[0.0, -2.0 * _LETTER], [x, -2.0 * _LETTER]])
    beside = np.array([[-2.0 * _LETTER, 0.0], [-2.0 * _LETTER, y]])
    tick = 0.5 * _LETTER
    shapes: list[Line | Label] = [Line("label", below), Line("label", beside)]
    for line, aside in ((below, np.array([0.0, tick])), (beside, np.array([tick, 0.0]))):
        shapes += [Line("label", np.stack([end - aside, end + aside])) for end in line]
    shapes.append(Label("label", f"{x:.0f} mm", (0.5 * x, -3.4 * _LETTER), _LETTER))
    shapes.append(Label("label", f"{y:.0f} mm", (-3.4 * _LETTER, 0.5 * y), _LETTER, 0.5 * np.pi))
    return shapes


def _axes(patterns: PatternSet, pull: Vector) -> FloatArray:
    """Return right and up of the view as rows: (2, 3) float."""
    surface = patterns.main.surface
    away = surface.areas @ surface.normals  # from the mould into the laminate
    eye = np.array(unit_vector(pull))
    eye = -eye if eye @ away < 0.0 else eye
    along = np.array(unit_vector(patterns.main.pieces[0].datum.direction))
    right = along - (along @ eye) * eye
    if np.linalg.norm(right) < 1e-3:
        raise InputError(
            "the view of the layup",
            "a datum arrow along the pull",
            "an arrow across it",
            "turn the datum arrow",
        )
    right /= np.linalg.norm(right)
    return floats(np.stack([right, np.cross(eye, right)]), 2, 3)


def _outline(patterns: PatternSet, axes: FloatArray) -> FloatArray:
    """Return the boundary points of the first ply in the view: (k, 2) float, mm."""
    surface = patterns.main.surface
    points = np.concatenate([surface.vertices[loop] for loop in surface.boundary_loops])
    return floats(points @ axes.T, -1, 2)


def _landing(
    name: str, ply: DrapedPly, piece: int, axes: FloatArray, corner: FloatArray
) -> Landing:
    surface, uv = ply.part(piece), ply.drape.uv
    start = np.array(ply.pieces[piece].datum.origin) @ axes.T
    notches: dict[str, FloatArray] = {}
    threads: list[FloatArray] = []
    for across, along in ((1, 0), (0, 1)):
        threads += [ends @ axes.T - corner for ends in _thread(surface, uv, across)]
        points, reach = _leaving(surface, uv, across, along)
        for sign in (1.0, -1.0):
            side = np.flatnonzero(sign * reach > 0.0)
            if len(side):
                nearest = side[int(np.argmin(np.abs(reach[side])))]
                word = _WORDS[along + (0 if sign > 0.0 else 2)]
                notches[word] = floats(points[nearest] @ axes.T - start, 2)
    return Landing(
        (name,), floats(start - corner, 2), notches, tuple(floats(t, 2, 2) for t in threads)
    )


def _thread(surface: Surface, uv: FloatArray, across: int) -> list[Array]:
    """Return the line where a flat coordinate is zero, one piece for each triangle it crosses."""
    values = uv[surface.triangles][:, :, across]
    crossed = np.flatnonzero((values.min(axis=1) < 0.0) & (values.max(axis=1) >= 0.0))
    found = []
    for triangle in crossed.tolist():
        corners, heights = surface.corners[triangle], values[triangle]
        ends = [
            corners[i] + heights[i] / (heights[i] - heights[j]) * (corners[j] - corners[i])
            for i, j in ((0, 1), (1, 2), (2, 0))
            if (heights[i] < 0.0) != (heights[j] < 0.0)
        ]
        found.append(np.stack(ends))
    return found


def _leaving(surface: Surface, uv: FloatArray, across: int, along: int) -> tuple[Array, Array]:
    """Return where the boundary crosses a thread: points (k, 3), and the other coordinate (k,)."""
    ends = np.concatenate(
        [np.stack([loop, np.roll(loop, -1)], axis=1) for loop in surface.boundary_loops]
    )
    heights = uv[ends][:, :, across]
    ends, heights = (
        part[(heights[:, 0] < 0.0) != (heights[:, 1] < 0.0)] for part in (ends, heights)
    )
    share = (heights[:, 0] / (heights[:, 0] - heights[:, 1]))[:, None]
    points = surface.vertices[ends[:, 0]] * (1.0 - share) + surface.vertices[ends[:, 1]] * share
    flat = uv[ends[:, 0]] * (1.0 - share) + uv[ends[:, 1]] * share
    return points, flat[:, along]


def _alike(one: Landing, other: Landing) -> bool:
    if one.notches.keys() != other.notches.keys() or np.hypot(*(one.start - other.start)) > _SAME:
        return False
    return all(
        float(np.hypot(*(point - other.notches[word]))) <= _SAME
        for word, point in one.notches.items()
    )
