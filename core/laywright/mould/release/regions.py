"""Connected places of a surface that hold the part back."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

from laywright.arrays import FloatArray, Vector
from laywright.mould.release.visibility import TRACE
from laywright.surface.triangles import Surface

__all__ = ["UndercutRegion", "regions_of"]


@dataclass(frozen=True)
class UndercutRegion:
    """A connected place that holds the part back.

    Attributes
    ----------
    patch : str
        Face that holds most of it.
    area : float, mm^2
        Its area.
    depth : float, mm
        Its extent along the pull.
    worst_draft : float, radians
        Least draft in it.
    point : tuple of 3 float, mm
        Centroid of the facet with the least draft.
    """

    patch: str
    area: float
    depth: float
    worst_draft: float
    point: Vector


def regions_of(
    surface: Surface, pull: Vector, undercut: FloatArray, draft: FloatArray
) -> tuple[UndercutRegion, ...]:
    """Return the connected undercut places of a surface, largest first.

    Parameters
    ----------
    surface : Surface
        The surface, mm.
    pull : tuple of 3 float
        Unit direction.
    undercut : (m,) float
        Share of every facet that is undercut.
    draft : (m,) float, radians
        Draft of every facet.
    """
    table = surface.edges
    held = (undercut > TRACE) & (surface.areas > 0.0)
    facets = np.flatnonzero(held)
    if len(facets) == 0:
        return ()
    place = np.full(len(held), -1)
    place[facets] = np.arange(len(facets))
    left = np.where(table.left >= 0, place[table.left], -1)
    right = np.where(table.right >= 0, place[table.right], -1)
    joined = (left >= 0) & (right >= 0)
    links = (left[joined], right[joined])
    graph = coo_matrix((np.ones(len(links[0]), dtype=bool), links), (len(facets), len(facets)))
    label = connected_components(graph, directed=False)[1]
    order = np.argsort(label, kind="stable")
    height = surface.vertices @ np.array(pull)
    regions = []
    for some in np.split(facets[order], np.flatnonzero(np.diff(label[order])) + 1):
        area = surface.areas[some] * undercut[some]
        by_patch = np.bincount(surface.patches[some], weights=area)
        worst = int(some[np.argmin(draft[some])])
        x, y, z = surface.vertices[surface.triangles[worst]].mean(axis=0).tolist()
        regions.append(
            UndercutRegion(
                surface.patch_names[int(np.argmax(by_patch))],
                float(area.sum()),
                float(np.ptp(height[surface.triangles[some]])),
                float(draft[worst]),
                (x, y, z),
            )
        )
    return tuple(sorted(regions, key=lambda region: -region.area))
