"""Trimming: how long the line is, how much tape its edges take, where the holes are."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, floats, ring_length
from laywright.errors import InputError
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.stage import stage

__all__ = ["EdgeFacts", "HolePlace", "TrimPlan", "plan_trim"]

_ROUND = 0.02  # of the diameter that a round hole may be out of round
_TAPE_ALLOWANCE = 1.1
_STYLES = {"trim": Style(0.5), "hole": Style(0.35), "label": Style(0.25), "axis": Style(0.25)}


@dataclass(frozen=True)
class EdgeFacts:
    """The cut edge of one piece of cloth.

    Attributes
    ----------
    length : float, mm
        Outline and openings together.
    sides : int
        Sides that are taped: 1, or 2 for aramid.
    """

    length: float
    sides: int = 1


@dataclass(frozen=True)
class HolePlace:
    """A hole in the part.

    Attributes
    ----------
    number : int
    centre : tuple of 3 float, mm
        In the coordinates of the part.
    diameter : float, mm
        Of the circle that fits its edge best.
    out_of_round : float, mm
        Largest distance of its edge from that circle.
    length : float, mm
        Of its edge.
    """

    number: int
    centre: tuple[float, float, float]
    diameter: float
    out_of_round: float
    length: float

    @property
    def is_round(self) -> bool:
        """Whether it can be drilled."""
        return self.out_of_round <= _ROUND * self.diameter


@dataclass(frozen=True, eq=False)
class TrimPlan:
    """What is cut, and how long.

    Attributes
    ----------
    line_mm : float, mm
        Outer trim line.
    holes_mm : float, mm
        Edges of all holes.
    cloth_tape_mm : float, mm
        Tape over the cut lines of the cloth, so that they do not fray.
    part_tape_mm : float, mm
        Tape along the trim line and the holes of the part, for a clean saw cut.
    holes : tuple of HolePlace
    picture : Drawing
        Trim line and holes, seen along the pull.
    digest : str
        Of its inputs.
    """

    line_mm: float
    holes_mm: float
    cloth_tape_mm: float
    part_tape_mm: float
    holes: tuple[HolePlace, ...]
    picture: Drawing
    digest: str = ""


@stage("Trim Plan", version=1)
def plan_trim(
    loops: tuple[FloatArray, ...],
    pull: tuple[float, float, float],
    cloth: tuple[EdgeFacts, ...],
) -> TrimPlan:
    """Return what is cut.

    Parameters
    ----------
    loops : tuple of (k, 3) float, mm
        Closed edges of the part, the outer one first, the last point not repeated.
    pull : tuple of 3 float
        Direction in which the part leaves the mould; the picture looks along it.
    cloth : tuple of EdgeFacts
        Every piece that is cut.

    Raises
    ------
    InputError
        If there is no edge.
    """
    if not loops or any(len(loop) < 3 for loop in loops):
        raise InputError("trim line", "no edge", "a closed edge of the part", "check the face")
    line = ring_length(loops[0])
    holes = tuple(_hole(number, loop) for number, loop in enumerate(loops[1:], start=1))
    inside = math.fsum(hole.length for hole in holes)
    return TrimPlan(
        line,
        inside,
        _TAPE_ALLOWANCE * math.fsum(edge.length * edge.sides for edge in cloth),
        _TAPE_ALLOWANCE * (line + inside),
        holes,
        _picture(loops, pull),
    )


def _hole(number: int, loop: FloatArray) -> HolePlace:
    """Fit a circle: the plane of least squares, then the circle in it (Kasa 1976)."""
    middle = loop.mean(axis=0)
    axes = np.linalg.svd(loop - middle)[2]
    flat = (loop - middle) @ axes[:2].T
    design = np.column_stack([2.0 * flat, np.ones(len(flat))])
    x, y, rest = np.linalg.lstsq(design, (flat**2).sum(axis=1), rcond=None)[0]
    radius = math.sqrt(max(rest + x * x + y * y, 0.0))
    off = np.abs(np.hypot(flat[:, 0] - x, flat[:, 1] - y) - radius)
    centre = middle + x * axes[0] + y * axes[1]
    return HolePlace(
        number,
        (float(centre[0]), float(centre[1]), float(centre[2])),
        2.0 * radius,
        float(off.max()),
        ring_length(loop),
    )


def _picture(loops: tuple[FloatArray, ...], pull: tuple[float, float, float]) -> Drawing:
    """Return the edges seen against the pull, x of the part to the right where it can be."""
    ahead = np.array(pull) / np.linalg.norm(pull)
    right = np.array([1.0, 0.0, 0.0]) if abs(ahead[0]) < 0.9 else np.array([0.0, 1.0, 0.0])
    right = right - (right @ ahead) * ahead
    right = right / np.linalg.norm(right)
    view = np.stack([right, np.cross(ahead, right)], axis=1)
    shapes: list[Line | Label] = [Line("trim", loops[0] @ view, closed=True)]
    size = float(np.ptp(shapes[0].points, axis=0).max()) if isinstance(shapes[0], Line) else 1.0
    for number, loop in enumerate(loops[1:], start=1):
        edge = floats(loop @ view, -1, 2)
        shapes.append(Line("hole", edge, closed=True))
        x, y = edge.max(axis=0).tolist()
        height = size / 40.0
        shapes.append(Label("label", f"H{number}", (x + 2.0 * height, y + height), height))
    return Drawing("Trim line and holes", tuple(shapes), _STYLES)
