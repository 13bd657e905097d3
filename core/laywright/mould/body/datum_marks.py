"""The datum on the mould: a tick on each of its four sides, and the figures 0 and 90.

A plane through the datum point holds the pull and the arrow, another the pull and the direction
across it.  Where they cross the run-off, its outermost stretch, a groove of the trim line's
section runs along them: a thread or a rule laid over two ticks shows the arrow on the mould.
The tick ahead carries 0, the angle of a ply whose warp follows the arrow, and the tick to its
left 90, the side towards which ply angles count.
"""

from __future__ import annotations

import numpy as np
from manifold3d import Manifold

from laywright.arrays import FloatArray, IntArray
from laywright.mould.body.ground import Ground, figure_beside
from laywright.mould.body.scribe import straight_groove
from laywright.surface.distance import nearest_triangles
from laywright.surface.triangles import Surface
from laywright.wording import three_figures

__all__ = ["datum_marks", "directions_at"]

_STEP, _EVERY = 0.1, 5
_LEAST, _LONGEST = 4.0, 30.0
_ON_PLANE = 1e-7
_UPRIGHT = 0.05
_NOTHING = np.empty((0, 3)), np.empty(0, dtype=np.int64)


def directions_at(flat: Surface, point: FloatArray, arrow: FloatArray) -> tuple[FloatArray, ...]:
    """Return where the datum lies on a surface, and its directions as seen along the pull.

    Parameters
    ----------
    flat : Surface
        The working surface in the mould's frame.
    point, arrow : (3,) float
        The datum, mm; the arrow of any length.

    Returns
    -------
    place : (2,) float, mm
        In the plan view.
    along, across : (2,) float
        Of the arrow laid into the surface, and to the left of it; shorter where they rise.
    """
    nearest = int(nearest_triangles(point[None], flat)[0][0])
    normal, corner = flat.normals[nearest], flat.corners[nearest, 0]
    arrow = arrow / max(float(np.linalg.norm(arrow)), 1e-300)
    along = arrow - (arrow @ normal) * normal
    length = float(np.linalg.norm(along))
    along = along / length if length > 1e-3 else np.zeros(3)
    foot = point - ((point - corner) @ normal) * normal
    return foot[:2], along[:2], np.cross(normal, along)[:2]


def datum_marks(
    ground: Ground,
    point: FloatArray,
    arrow: FloatArray,
    patches: tuple[int, int],
    remarks: list[str],
) -> list[Manifold]:
    """Return what cuts ticks and figures; what finds no room is told in the remarks.

    Parameters
    ----------
    ground : Ground
        Where they may lie.
    point, arrow : (3,) float
        The datum in the mould's frame, mm.
    patches : tuple of 2 int
        Of the ticks' sides and of the figures'.
    remarks : list of str
        What is not marked is added.
    """
    place, along, across = directions_at(ground.flat, point, arrow)
    if min(np.linalg.norm(along), np.linalg.norm(across)) < _UPRIGHT:
        remarks.append(
            "The datum is not marked: its arrow, or the direction across it, stands upright in "
            "the mould."
        )
        return []
    cuts, narrow, unnamed = [], 0, []
    for way, figure in ((along, "0"), (across, "90"), (-along, ""), (-across, "")):
        tick = _tick(ground, place, way / np.linalg.norm(way))
        if tick is None:
            narrow += 1
            continue
        points, normals = tick
        cuts.append(straight_groove(points, normals, ground.depth, ground.width, patches[0]))
        if figure:
            lines = figure_beside(ground, points, normals, figure)
            cuts += [
                straight_groove(*line, ground.depth, ground.width, patches[1]) for line in lines
            ]
            unnamed += [] if lines else [figure]
    if narrow:
        remarks.append(
            f"The datum is not marked on {narrow} of its 4 sides: the run-off leaves less than "
            f"{three_figures(_LEAST)} mm there; widen the run-off or the flange."
        )
    if unnamed:
        remarks.append(
            f"The datum's ticks go without the figure {' and '.join(unnamed)}: the run-off "
            "leaves no room beside them."
        )
    return cuts


def _tick(
    ground: Ground, place: FloatArray, way: FloatArray
) -> tuple[FloatArray, FloatArray] | None:
    """Return points of a tick from the inside outwards, and the normals there; None: no room."""
    corners, facets = _course(ground, place, way)
    if len(corners) < 2:
        return None
    gone = np.concatenate([[0.0], np.cumsum(np.linalg.norm(np.diff(corners, axis=0), axis=1))])
    at = np.arange(0.0, gone[-1], _STEP)
    points = np.stack([np.interp(at, gone, axis) for axis in corners.T], axis=1)
    clear = np.concatenate([[False], ground.clear(points), [False]])
    turns = np.flatnonzero(np.diff(clear.astype(np.int64)))
    if len(turns) == 0:
        return None
    starts, ends = turns[::2], turns[1::2]
    longest = int(np.argmax(ends - starts))
    first, last = int(starts[longest]), int(ends[longest]) - 1
    last = min(last, first + round(_LONGEST / _STEP))
    if (last - first) * _STEP < _LEAST:
        return None
    taken = np.unique(np.append(np.arange(first, last, _EVERY), last))
    segment = np.clip(np.searchsorted(gone, at[taken], side="right") - 1, 0, len(facets) - 1)
    return points[taken], ground.upper.normals[facets[segment]]


def _course(ground: Ground, place: FloatArray, way: FloatArray) -> tuple[FloatArray, IntArray]:
    """Return the outermost line in which an upright half plane cuts the run-off.

    Parameters
    ----------
    ground : Ground
        With the run-off.
    place, way : (2,) float, mm
        Where the half plane starts and where it goes, in the plan view.

    Returns
    -------
    corners : (k, 3) float, mm
        From the trim line to the rim; none where the half plane starts off the working area.
    facets : (k - 1,) int
        The triangles between them.
    """
    upper, table = ground.upper, ground.upper.edges
    beside = (upper.vertices[:, :2] - place) @ np.array([-way[1], way[0]])
    beside = np.where(np.abs(beside) < _ON_PLANE, _ON_PLANE, beside)
    one, other = beside[table.ends[:, 0]], beside[table.ends[:, 1]]
    crossed = np.flatnonzero(one * other < 0.0)
    share = (one[crossed] / (one[crossed] - other[crossed]))[:, None]
    start, end = (upper.vertices[table.ends[crossed, side]] for side in (0, 1))
    points = (1.0 - share) * start + share * end
    ahead = (points[:, :2] - place) @ way
    owners = np.stack([table.left[crossed], table.right[crossed]], axis=1)
    of_triangle: dict[int, list[int]] = {}
    for number, pair in enumerate(owners.tolist()):
        for triangle in pair:
            of_triangle.setdefault(triangle, []).append(number)
    rim = of_triangle.get(-1, [])
    here = max(rim, key=lambda number: float(ahead[number]), default=-1)
    if here < 0 or ahead[here] <= 0.0:
        return _NOTHING
    triangle = int(owners[here].max())
    line, facets = [here], []
    while triangle >= 0 and upper.patches[triangle] == ground.run_off:
        here = next(number for number in of_triangle[triangle] if number != here)
        line.append(here)
        facets.append(triangle)
        triangle = int(owners[here].sum()) - triangle
    if triangle < 0:
        return _NOTHING
    return points[line[::-1]], np.array(facets[::-1], dtype=np.int64)
