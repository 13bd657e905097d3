"""A grid of cuts for tests of the tiles."""

from __future__ import annotations

import numpy as np

from laywright.mould.tiles.cuts import CutPlan
from laywright.surface.triangles import Surface

__all__ = ["plan_of"]


def plan_of(surface: Surface, cuts: tuple) -> CutPlan:
    """Return the grid, not turned, that cuts a surface at these places along each axis, mm."""
    low, high = surface.bounds.tolist()
    return CutPlan(np.eye(3), 0.0, tuple(low), tuple(high), cuts, np.eye(3), 0.0)
