"""Where the maker wants cuts, and where none may go: pins, stretches kept free, things kept whole.

A grid's cuts run through the whole body, so a bolt or a pocket bars a stretch of each axis.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray
from laywright.errors import LimitError
from laywright.surface.triangles import Surface

__all__ = ["CutWishes", "Stretch", "barred", "obstacles"]

Stretch = tuple[float, float]
_KEPT_WHOLE = ("pocket", "bolt", "dowel", "port")


@dataclass(frozen=True)
class CutWishes:
    """What the maker wants of the cuts; positions lie along the grid's axes, in mm.

    With a turn of 0 and the pull along z the grid's axes are the part's x, y and z.  Positions
    mean something in one grid only: with any pin or free stretch the grid keeps `turn`.

    Attributes
    ----------
    turn : float or None, radians
        Turn of the grid about the pull; None leaves it to the search.
    pinned_x, pinned_y, pinned_z : tuple of float, mm
        Cuts that are wanted.
    free_x, free_y, free_z : tuple of (float, float), mm
        Stretches without any cut, from and to.
    kept_whole : tuple of (x, y, z, radius), mm
        Balls in the part's coordinates that no cut may pass through.
    """

    turn: float | None = None
    pinned_x: tuple[float, ...] = ()
    pinned_y: tuple[float, ...] = ()
    pinned_z: tuple[float, ...] = ()
    free_x: tuple[Stretch, ...] = ()
    free_y: tuple[Stretch, ...] = ()
    free_z: tuple[Stretch, ...] = ()
    kept_whole: tuple[tuple[float, float, float, float], ...] = ()

    def __post_init__(self) -> None:
        every = [*sum(self.pinned, ()), *(end for free in self.free for way in free for end in way)]
        every += [number for ball in self.kept_whole for number in ball]
        every += [] if self.turn is None else [self.turn]
        if not all(math.isfinite(number) for number in every):
            raise LimitError("cuts", "a place that is no number", "places in mm", "correct it")
        for axis, (pins, free) in enumerate(zip(self.pinned, self.free, strict=True)):
            for low, high in free:
                if not low < high:
                    raise LimitError(
                        f"stretch without cuts along {'xyz'[axis]}",
                        f"{low:.4g} to {high:.4g} mm",
                        "a start before its end",
                        "correct it",
                    )
                for pin in pins:
                    if low < pin < high:
                        raise LimitError(
                            f"pinned cut along {'xyz'[axis]}",
                            f"{pin:.4g} mm, in a stretch without cuts",
                            f"a place outside {low:.4g} to {high:.4g} mm",
                            "move one of them",
                        )

    @property
    def pinned(self) -> tuple[tuple[float, ...], tuple[float, ...], tuple[float, ...]]:
        """Pinned cuts along the three axes."""
        return self.pinned_x, self.pinned_y, self.pinned_z

    @property
    def free(self) -> tuple[tuple[Stretch, ...], tuple[Stretch, ...], tuple[Stretch, ...]]:
        """Stretches without cuts along the three axes."""
        return self.free_x, self.free_y, self.free_z

    @property
    def fixes_turn(self) -> bool:
        """Whether the grid may not be turned."""
        return self.turn is not None or any((*self.pinned, *self.free))


def obstacles(solid: Surface) -> list[FloatArray]:
    """Return the points of everything in a body that no cut may pass: (k, 3) float, mm each.

    Parameters
    ----------
    solid : Surface
        The body; patches named after pockets, bolts, dowels and ports are kept whole.
    """
    kept = [
        number
        for number, name in enumerate(solid.patch_names)
        if any(word in name.lower() for word in _KEPT_WHOLE)
    ]
    found = []
    mask = np.isin(solid.patches, kept)
    if mask.any():
        part = solid.part(mask)
        for piece in range(int(part.components.max()) + 1):
            found.append(part.corners[part.components == piece].reshape(-1, 3))
    return found


def barred(
    things: list[FloatArray], wishes: CutWishes, axes: FloatArray, axis: int, wall: float
) -> list[Stretch]:
    """Return the stretches of an axis where no cut may lie.

    Parameters
    ----------
    things : list of (k, 3) float, mm
        As `obstacles` gives them.
    wishes : CutWishes
        The maker's.
    axes : (3, 3) float
        Axes of the grid.
    axis : int
        Which of them.
    wall : float, mm
        Material left between a cut and a thing that is kept whole.
    """
    found = [*wishes.free[axis]]
    for points in things:
        along = points @ axes[axis]
        found.append((float(along.min()) - wall, float(along.max()) + wall))
    for x, y, z, radius in wishes.kept_whole:
        middle = float(np.array([x, y, z]) @ axes[axis])
        found.append((middle - radius - wall, middle + radius + wall))
    return found
