"""Which plies lie where: the height of each above the mould, and the zones that they make."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

import numpy as np
from scipy.spatial import cKDTree

from laywright.arrays import FloatArray, floats
from laywright.laminate.drop_off import LocalPly, local_plies
from laywright.laminate.laminate import Laminate
from laywright.surface.along import Along
from laywright.surface.level_line import above, divided_along
from laywright.surface.triangles import Surface

__all__ = ["Cover", "Zone", "cover_of", "share_above"]

_CRUMB = 1e-5
_HALVINGS = 40


@dataclass(frozen=True)
class Zone:
    """A part of the face that the same plies cover.

    Attributes
    ----------
    plies : tuple of int
        Their numbers, the one at the mould first.
    area : float, mm^2
        Of the working surface; all places together where there are several.
    """

    plies: tuple[int, ...]
    area: float


@dataclass(frozen=True, eq=False)
class Cover:
    """Which plies lie where on a working surface.

    Attributes
    ----------
    mesh : Surface
        The working surface in even triangles, mm.
    named : Surface
        The same with the faces of the part as its patches.
    local : tuple of LocalPly
    depths : (k, n) float, mm
        How far each point of the mesh lies within the end of each local ply.
    set_back : bool
        Whether the mould is set back by what lies on it.
    """

    mesh: Surface
    named: Surface
    local: tuple[LocalPly, ...]
    depths: FloatArray
    set_back: bool

    def heights(self, laminate: Laminate, number: int) -> float | FloatArray:
        """Return how high the middle of a ply lies above the mesh: (n,) float, mm, or one height.

        Where the mould is set back by the local plies, that is counted from the mesh as well.
        """
        even = float(laminate.ply_heights[number - 1])
        if number in laminate.layup.local:
            even -= sum(ply.thickness for ply in self.local if ply.ply < number)
        below = [ply.laid(d) for ply, d in zip(self.local, self.depths, strict=True)]
        rise = np.zeros(self.depths.shape[1])
        for ply, laid in zip(self.local, below, strict=True):
            rise += laid if ply.ply < number else 0.0
            rise -= laid if self.set_back else 0.0
        return even + rise if rise.any() else even

    def carried(self, values: float | FloatArray, points: FloatArray) -> float | FloatArray:
        """Return values of the mesh's points at other points on it."""
        if isinstance(values, float):
            return values
        owner = cKDTree(self.mesh.centroids).query(points)[1]
        corners = self.mesh.corners[owner]
        one, other = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
        off = points - corners[:, 0]
        normal = np.cross(one, other)
        size = np.einsum("ni,ni->n", normal, normal)
        u = np.einsum("ni,ni->n", np.cross(off, other), normal) / size
        v = np.einsum("ni,ni->n", np.cross(one, off), normal) / size
        share = np.clip(np.stack([1.0 - u - v, u, v], axis=1), 0.0, 1.0)
        share /= share.sum(axis=1, keepdims=True)
        return floats(np.einsum("ni,ni->n", share, values[self.mesh.triangles[owner]]), -1)

    def share(self, number: int, area: float) -> FloatArray:
        """Return the share of each triangle that a local ply covers: (m,) float.

        Parameters
        ----------
        number : int
            Of the ply.
        area : float, mm^2
            Of what it covers, which these shares add up to: its end is shifted by a part of the
            triangles' size for that, no further than by one side.
        """
        return share_above(self._depth(number, area)[self.mesh.triangles])

    def _depth(self, number: int, area: float) -> FloatArray:
        """Return how far each point lies within the end of a ply, shifted as `share` says."""
        depth = self.depths[[ply.ply for ply in self.local].index(number)]
        corners, areas = depth[self.mesh.triangles], self.mesh.areas
        high = float(np.sqrt(areas.mean()))
        low = -high
        for _ in range(_HALVINGS):
            shift = 0.5 * (low + high)
            over = float(areas @ share_above(corners + shift)) > area
            low, high = (low, shift) if over else (shift, high)
        return floats(depth + 0.5 * (low + high), -1)

    def zones(self, throughout: tuple[int, ...], areas: Mapping[int, float]) -> tuple[Zone, ...]:
        """Return the zones, the largest first; none where no ply is local.

        Parameters
        ----------
        throughout : tuple of int
            Numbers of the plies that cover the whole face.
        areas : mapping of int to float, mm^2
            What each local ply covers.
        """
        if not self.local:
            return ()
        surface = self.mesh
        numbers = np.array([ply.ply for ply in self.local])
        values = np.stack([self._depth(n, areas[n]) for n in numbers.tolist()], axis=1)
        for column in range(len(numbers)):
            surface, exact, values = divided_along(surface, values[:, column], values)
            values[:, column] = exact
        inside = np.stack([above(surface, column) for column in values.T], axis=1)
        sets, index = np.unique(inside, axis=0, return_inverse=True)
        found = [
            Zone(tuple(sorted((*throughout, *numbers[here].tolist()))), float(area))
            for here, area in zip(
                sets, np.bincount(index.reshape(-1), weights=surface.areas), strict=True
            )
            if area > _CRUMB * surface.area
        ]
        return tuple(sorted(found, key=lambda zone: -zone.area))


def cover_of(mesh: Surface, named: Surface, laminate: Laminate, *, set_back: bool) -> Cover:
    """Return which plies of a laminate lie where.

    Parameters
    ----------
    mesh : Surface
        The working surface in even triangles, mm.
    named : Surface
        The same with the faces of the part as its patches.
    laminate : Laminate
    set_back : bool
        Whether the mould is set back by what lies on it.
    """
    local = local_plies(laminate)
    along = Along(mesh, named)
    depths = [ply.depth(along) for ply in local]
    return Cover(mesh, named, local, floats(np.array(depths), -1, len(mesh.vertices)), set_back)


def share_above(corners: FloatArray) -> FloatArray:
    """Return the share of triangles where a value that is straight across them is above zero.

    Parameters
    ----------
    corners : (m, 3) float
        The value at their corners.

    Examples
    --------
    >>> share_above(np.array([[1.0, -1.0, -1.0], [2.0, 2.0, 1.0], [1.0, 1.0, -1.0]])).tolist()
    [0.25, 1.0, 0.75]
    """
    low, middle, high = np.sort(corners, axis=1).T
    found = np.where(high > 0.0, 1.0, 0.0)
    tip = (low < 0.0) & (high > 0.0) & (middle <= 0.0)
    rest = (low < 0.0) & (middle > 0.0)
    end, one, other = high[tip], low[tip], middle[tip]
    found[tip] = end / (end - one) * (end / (end - other))
    end, one, other = low[rest], middle[rest], high[rest]
    found[rest] = 1.0 - end / (end - one) * (end / (end - other))
    return floats(found, -1)
