"""How much a surface is curved both ways: Gauss curvature from the angles of its triangles.

The angles around an inner point miss 2 pi by the curvature that the point stands for (Gauss
and Bonnet).  Single points are noisy, so they are summed over cells, a handful across the face.
"""

from __future__ import annotations

import numpy as np

from laywright.surface.triangles import Surface

__all__ = ["double_curvature"]

_CELLS = 5  # along the side of a square of the same area
_SHARE = 0.9
_FULL = 0.3  # of a cell that must be filled for it to count


def double_curvature(surface: Surface) -> float:
    """Return the Gauss curvature that nine tenths of a surface stay below, 1/mm^2.

    Parameters
    ----------
    surface : Surface
        With triangles of even size.

    Returns
    -------
    float
        Without its sign; zero where there is no inner point.
    """
    count = len(surface.vertices)
    index = surface.triangles.ravel()
    missing = 2.0 * np.pi - np.bincount(index, surface.angles.ravel(), count)
    area = np.bincount(index, np.repeat(surface.areas / 3.0, 3), count)
    inner = np.bincount(index, minlength=count) > 0
    for loop in surface.boundary_loops:
        inner[loop] = False
    if not inner.any():
        return 0.0
    middle = surface.vertices - surface.vertices[inner].mean(axis=0)
    axes = np.linalg.svd(middle[inner], full_matrices=False)[2][:2]
    size = np.sqrt(surface.area) / _CELLS
    places = np.floor(middle[inner] @ axes.T / size + 0.5).astype(np.int64)
    _, cell = np.unique(places, axis=0, return_inverse=True)
    total = np.bincount(cell.ravel(), missing[inner])
    share = np.bincount(cell.ravel(), area[inner])
    full = share >= min(_FULL * size**2, float(share.max()))
    curved, share = np.abs(total[full]) / share[full], share[full]
    order = np.argsort(curved)
    below = np.cumsum(share[order]) / share.sum()
    return float(curved[order][np.searchsorted(below, _SHARE)])
