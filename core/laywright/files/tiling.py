"""How a drawing at true scale is spread over pages of ordinary paper.

Words: the *window* of a page is the part of the drawing that it shows; neighbouring windows
share a strip, the *overlap*, that is glued under.
"""

from __future__ import annotations

import itertools
import math
from dataclasses import dataclass, replace

import numpy as np
import shapely

from laywright.errors import LimitError
from laywright.files.drawing import Drawing, Label
from laywright.files.framing import extent
from laywright.files.paper import Paper, paper_of

__all__ = ["MARGIN", "OVERLAP", "Tiling", "page_name", "tiling"]

MARGIN = 15.0
"""Edge of the paper that is left free of the drawing, mm."""

OVERLAP = 10.0
"""Width of the strip that neighbouring pages share, mm."""

_MOST_PAGES = 400
_SHIFTS = (0.5, 0.0, 1.0)  # of the spare width: in the middle, or aside if that saves pages


@dataclass(frozen=True)
class Tiling:
    """How a drawing is spread over pages.

    Attributes
    ----------
    corner : tuple of 2 float, mm
        Lowest corner of the first window, in the drawing.
    window : tuple of 2 float, mm
        Width and height of a window.
    columns, rows : int
        Windows across and up.
    kept : tuple of (row, column)
        The windows that show any of the drawing; the others are not printed.
    """

    corner: tuple[float, float]
    window: tuple[float, float]
    columns: int
    rows: int
    kept: tuple[tuple[int, int], ...]

    def place(self, row: int, column: int) -> tuple[float, float]:
        """Return the lowest corner of a window in the drawing, mm."""
        return (
            self.corner[0] + column * (self.window[0] - OVERLAP),
            self.corner[1] + row * (self.window[1] - OVERLAP),
        )


def tiling(drawing: Drawing, paper: Paper | str = Paper.A4) -> Tiling:
    """Return how a drawing is spread over pages of a paper.

    Raises
    ------
    LimitError
        If it would take more than 400 pages.
    """
    size = paper_of(paper).size
    window = (size[0] - 2.0 * MARGIN, size[1] - 2.0 * MARGIN)
    low, high = extent(drawing)
    reach = high - low
    columns, rows = (
        max(1, math.ceil((float(reach[axis]) - OVERLAP) / (window[axis] - OVERLAP) - 1e-9))
        for axis in range(2)
    )
    if columns * rows > _MOST_PAGES:
        raise LimitError(
            drawing.name,
            f"{columns * rows} pages for {reach[0]:.0f} x {reach[1]:.0f} mm",
            f"at most {_MOST_PAGES} pages",
            "check that the drawing is in mm, or have it plotted on a roll",
        )
    spare = [
        count * (window[axis] - OVERLAP) + OVERLAP - float(reach[axis])
        for axis, count in enumerate((columns, rows))
    ]
    ink = _ink(drawing)
    shapely.prepare(ink)
    plans = [
        _kept(
            Tiling(
                (float(low[0]) - x * spare[0], float(low[1]) - y * spare[1]),
                window,
                columns,
                rows,
                (),
            ),
            ink,
        )
        for x, y in itertools.product(_SHIFTS, _SHIFTS)
    ]
    return min(plans, key=lambda plan: len(plan.kept))


def _kept(plan: Tiling, ink: shapely.Geometry) -> Tiling:
    """Return the plan with the windows that hold ink, the top row first."""
    every = list(itertools.product(range(plan.rows - 1, -1, -1), range(plan.columns)))
    low = np.array([plan.place(row, column) for row, column in every])
    high = low + np.array(plan.window)
    inked = shapely.intersects(ink, shapely.box(low[:, 0], low[:, 1], high[:, 0], high[:, 1]))
    kept = tuple(place for place, used in zip(every, inked.tolist(), strict=True) if used)
    return replace(plan, kept=kept)


def _ink(drawing: Drawing) -> shapely.Geometry:
    """Return all that is drawn; a closed line counts with what it encloses."""
    shapes: list[shapely.Geometry] = []
    for shape in drawing.shapes:
        if isinstance(shape, Label):
            one = extent(Drawing("", (shape,), drawing.styles))
            shapes.append(shapely.box(*one[0], *one[1]))
        elif shape.closed and len(shape.points) > 2:
            shapes.append(shapely.make_valid(shapely.Polygon(shape.points)))
        else:
            shapes.append(shapely.LineString(shape.points))
    return shapely.union_all(shapes)


def page_name(plan: Tiling, row: int, column: int) -> str:
    """Return for example ``B3``: the second row from the top, third page from the left."""
    from_top = plan.rows - 1 - row
    letters = ""
    while True:
        letters = chr(ord("A") + from_top % 26) + letters
        from_top = from_top // 26 - 1
        if from_top < 0:
            return f"{letters}{column + 1}"
