"""Runs of the edge of a piece: the face's own edge, and the sides of cuts, as smooth lines."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from functools import cached_property
from itertools import pairwise

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray, floats
from laywright.cloth.cuts.cutting import Seam
from laywright.cloth.patterns.smooth_line import headings_of_run, smooth_line, smooth_run
from laywright.surface.triangles import Surface

__all__ = [
    "Dart",
    "Neighbours",
    "Run",
    "Side",
    "darts_of",
    "in_turn",
    "lengthened",
    "loops_of",
    "runs_of",
    "smoothed",
]

_BACK = 3


class Side(Enum):
    """Which side of a cut a line is."""

    LEFT = "left"
    RIGHT = "right"


@dataclass(frozen=True, eq=False)
class Run:
    """A run of boundary edges: of the face's own edge, or along one side of a cut.

    Attributes
    ----------
    cut : int
        Which of the cuts, -1 for none.
    side : Side or None
        None for the face's own edge.
    hole : bool
        Whether it is the edge of a hole in the face.
    mesh : (k, 2) float, mm
        Its points on the flat mesh, the piece on their left.
    points : (n, 2) float, mm
        The smooth line through them.
    steps : (k - 1,) int
        Which step of the cut each of its edges is, -1 for none.
    """

    cut: int
    side: Side | None
    hole: bool
    mesh: FloatArray
    points: FloatArray
    steps: IntArray

    @property
    def closed(self) -> bool:
        """Whether it ends where it starts."""
        return bool(np.array_equal(self.mesh[0], self.mesh[-1]))

    @cached_property
    def outwards(self) -> tuple[Array, Array]:
        """Unit directions to its right at its start and at its end: (2,) float each."""
        start, end = (
            np.array([math.sin(heading), -math.cos(heading)])
            for heading in headings_of_run(self.mesh)
        )
        return start, end

    @property
    def beyond_start(self) -> Array:
        """Unit direction straight on from its start, away from the run: (2,) float."""
        way: Array = self.mesh[0] - self.mesh[min(_BACK, len(self.mesh) - 1)]
        return np.asarray(way / np.linalg.norm(way))

    @property
    def beyond_end(self) -> Array:
        """Unit direction straight on from its end: (2,) float."""
        way: Array = self.mesh[-1] - self.mesh[max(len(self.mesh) - 1 - _BACK, 0)]
        return np.asarray(way / np.linalg.norm(way))


Neighbours = tuple[Run, Run, Run]
"""The run before one, the one itself, and the run after it."""


def runs_of(
    surface: Surface, uv: FloatArray, seams: Sequence[Seam], holes: IntArray
) -> list[list[Run]]:
    """Return the runs of every boundary loop, each with its last point, not yet smooth.

    Parameters
    ----------
    surface : Surface
        The piece, by the vertex numbers of the seams.
    uv : (n, 2) float, mm
        Flat coordinates.
    seams : sequence of Seam
        Cuts of the ply.
    holes : (h,) int
        Vertices at the edges of holes in the face.
    """
    known: dict[tuple[int, int], tuple[int, Side, int]] = {
        (int(a), int(b)): (number, side, step)
        for number, seam in enumerate(seams)
        for side, edges in ((Side.LEFT, seam.left), (Side.RIGHT, seam.right[:, ::-1]))
        for step, (a, b) in enumerate(edges)
    }
    inner = set(holes.tolist())
    return [_loop_runs(loop.tolist(), uv, known, inner) for loop in surface.boundary_loops]


def _loop_runs(
    loop: list[int],
    uv: FloatArray,
    known: dict[tuple[int, int], tuple[int, Side, int]],
    holes: set[int],
) -> list[Run]:
    found = [known.get(edge) for edge in pairwise([*loop, loop[0]])]
    keys = [None if edge is None else edge[:2] for edge in found]
    breaks = [k for k in range(len(loop)) if keys[k] != keys[k - 1]] or [0]
    runs = []
    for start, end in zip(breaks, [*breaks[1:], breaks[0] + len(loop)], strict=True):
        vertices = [loop[k % len(loop)] for k in range(start, end + 1)]
        edges = [found[k % len(loop)] for k in range(start, end)]
        key = keys[start]
        runs.append(
            Run(
                -1 if key is None else key[0],
                None if key is None else key[1],
                key is None and holes.issuperset(vertices),
                floats(uv[vertices], -1, 2),
                floats(uv[vertices], -1, 2),
                np.array([-1 if edge is None else edge[2] for edge in edges]),
            )
        )
    return runs


def smoothed(runs: Sequence[Run], deviation: float) -> list[Run]:
    """Return runs as smooth lines, drawn within a deviation, mm; both ends stay."""
    return [
        Run(run.cut, run.side, run.hole, run.mesh, _smooth(run, deviation), run.steps)
        for run in runs
    ]


def _smooth(run: Run, deviation: float) -> FloatArray:
    if not run.closed:
        return smooth_run(run.mesh, deviation)
    line = smooth_line(run.mesh[:-1], deviation)
    return floats(np.concatenate([line, line[:1]]), -1, 2)


def loops_of(runs: Sequence[Sequence[Run]]) -> list[FloatArray]:
    """Return each loop as one line, its first point not repeated."""
    return [floats(np.concatenate([run.points[:-1] for run in loop]), -1, 2) for loop in runs]


@dataclass(frozen=True, eq=False)
class Dart:
    """The two sides of a dart.

    Attributes
    ----------
    down, up : Run
        From its mouth to its tip, and back.
    before, after : Run
        The runs on either side of its mouth.
    """

    down: Run
    up: Run
    before: Run
    after: Run


def darts_of(loop: Sequence[Run]) -> list[Dart]:
    """Return the darts whose tips a loop passes."""
    count = len(loop)
    found = []
    for at, run in enumerate(loop):
        up = loop[(at + 1) % count]
        both = run.side is not None and run.cut == up.cut and run.side is not up.side
        if count > 1 and both and bool(np.allclose(run.mesh[-1], up.mesh[0])):
            found.append(Dart(run, up, loop[at - 1], loop[(at + 2) % count]))
    return found


def in_turn(loop: Sequence[Run]) -> list[Neighbours]:
    """Return every run of a loop between the one before and the one after."""
    return list(zip([loop[-1], *loop[:-1]], loop, [*loop[1:], loop[0]], strict=True))


def lengthened(run: Run, start: float, end: float) -> FloatArray:
    """Return the line of a run, longer by `start` and `end` mm straight on at its ends."""
    parts = [run.points]
    if start > 0.0:
        parts.insert(0, (run.points[0] + start * run.beyond_start)[None])
    if end > 0.0:
        parts.append((run.points[-1] + end * run.beyond_end)[None])
    return floats(np.concatenate(parts), -1, 2)
