"""A surface opened by what its bends close later, so that the skin springs into its shape.

A skin that closes by a share of its turn, whatever radius it turns with, asks at every fold of
the mould for the fold of the part divided by one plus that share; its lengths stay.  Where all
folds can have it, as in a channel, the flats between bends turn as they are.  Where they cannot,
because the skin is curved both ways or its bends run round a closed rim, it settles where a thin
elastic skin does: the least of bending and stretching together.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, IntArray, ints
from laywright.errors import GeometryError, LimitError
from laywright.progress import Progress, silent
from laywright.surface.bends import Bend, bends_of, turn_of
from laywright.surface.distance import distances
from laywright.surface.divided import with_short_edges
from laywright.surface.shell import folds, relaxed
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = ["Opened", "OpenedBend", "open_bends"]

_CELLS = 16
_MOST = 40_000
_THINNEST = 1e-3
_SAME = 0.1
_EXACT = 1e-6


@dataclass(frozen=True)
class OpenedBend:
    """What came of one bend.

    Attributes
    ----------
    bend : Bend
        Of the part.
    asked, reached : float, radians
        By which it should open, and by which it does.
    """

    bend: Bend
    asked: float
    reached: float


@dataclass(frozen=True, eq=False)
class Opened:
    """An opened surface.

    Attributes
    ----------
    surface : Surface
        The first points are those of the part, moved.  Its triangles are those of the part
        where these bend with it; else they are divided.
    parent : (m,) int
        Triangle of the part that each came from.
    bends : tuple of OpenedBend
        What was asked and reached, the longest bends first.
    largest_move : float, mm
        Of a point, the surface laid on the part by the best fit.
    largest_stretch : float
        Largest change of length in any direction of any triangle, as a share.
    """

    surface: Surface
    parent: IntArray
    bends: tuple[OpenedBend, ...]
    largest_move: float
    largest_stretch: float


def open_bends(
    surface: Surface, closing: float, thickness: float, *, progress: Progress = silent
) -> Opened:
    """Return a surface opened by what its bends close.

    Parameters
    ----------
    surface : Surface
        The part, connected along edges, mm.
    closing : float
        Share of its turn by which a bend closes after demoulding; negative where it opens.
    thickness : float, mm
        Of the skin: the thinner it is, the less it stretches where folds contradict each other.
    progress : Progress
        Told how far it is.

    Returns
    -------
    Opened
        With a share of 0 the very surface that was given.

    Raises
    ------
    LimitError
        If there are more triangles than are solved in about a minute.
    GeometryError
        If the opened surface folds over.
    """
    bends, whole = bends_of(surface), ints(np.arange(len(surface.triangles)), -1)
    if closing == 0.0:
        none = tuple(OpenedBend(bend, 0.0, 0.0) for bend in bends)
        return Opened(surface, whole, none, 0.0, 0.0)
    where = ", ".join(surface.patch_names)
    size = float(np.ptp(surface.vertices[np.unique(surface.triangles)], axis=0).max())
    fine, parent = with_short_edges(surface, size / _CELLS)
    if len(fine.triangles) > _MOST:
        raise LimitError(
            f"spring-in of {where}",
            f"{len(fine.triangles)} triangles to be opened",
            f"at most {_MOST}",
            "mesh the faces coarser, or have their spring-in listed instead of applied",
        )
    thick = max(thickness, _THINNEST * size)
    for still in (surface, fine):
        wanted = folds(still) / (1.0 + closing)
        skin = relaxed(still, wanted, thick, progress=progress)
        stretch = _stretch(still, skin)
        missing = float(np.abs(folds(skin) - wanted).max())
        if max(stretch, missing) < _EXACT:
            break
    turned = np.einsum("ij,ij->i", skin.normals, still.normals) <= 0.0
    if turned.any() or not math.isfinite(stretch):
        raise GeometryError(
            f"spring-in of {where}",
            "a surface that folds over when it is opened",
            "bends that open by less",
            "lower the share by which they close, or have it listed instead of applied",
        )
    coarse = surface.moved(skin.vertices[: len(surface.vertices)])
    bent = float(distances(skin.vertices, coarse).max())
    straight = bent <= _SAME * TOLERANCES.working_area
    asked = closing / (1.0 + closing)
    return Opened(
        coarse if straight else skin,
        whole if straight else ints(parent, -1),
        tuple(
            OpenedBend(bend, asked * bend.turn, bend.turn - turn_of(bend, coarse)) for bend in bends
        ),
        float(np.linalg.norm(skin.vertices - still.vertices, axis=1).max()),
        stretch,
    )


def _stretch(one: Surface, other: Surface) -> float:
    """Return the largest change of length in any direction of any triangle, as a share.

    Its extremes are the singular values of the triangle's map, an upper triangular matrix where
    the first side lies along the first axis on both surfaces.
    """
    (base, x, y), (new_base, new_x, new_y) = _laid_flat(one), _laid_flat(other)
    along, across = new_base / base, new_y / y
    aside = (new_x - x * along) / y
    total, apart = np.hypot(along + across, aside), np.hypot(along - across, aside)
    return float(
        np.maximum(np.abs(0.5 * (total + apart) - 1.0), np.abs(0.5 * (total - apart) - 1.0)).max()
    )


def _laid_flat(surface: Surface) -> tuple[FloatArray, FloatArray, FloatArray]:
    """Return the first side's length and the third corner's place from it: (m,) mm each."""
    corners = surface.corners
    side, other = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    length = np.linalg.norm(side, axis=1)
    return length, np.einsum("ij,ij->i", side, other) / length, 2.0 * surface.areas / length
