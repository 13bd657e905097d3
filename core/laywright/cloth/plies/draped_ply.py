"""A ply as it lies on the part: its surface, its drape, its pieces and cuts."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from laywright.arrays import FloatArray, IntArray, ints
from laywright.cloth.cuts.cuts import LaidCut
from laywright.cloth.cuts.cutting import Seam
from laywright.cloth.cuts.pieces import Piece
from laywright.cloth.drape.drape import Drape
from laywright.surface.triangles import Surface

__all__ = ["DrapedPly"]


@dataclass(frozen=True, eq=False)
class DrapedPly:
    """A ply on its own surface.

    Attributes
    ----------
    surface : Surface
        Surface of the middle of the ply, mm, open along its cuts.
    drape : Drape
        How the cloth lies on it.
    pieces : tuple of Piece
        Its pieces; one where no cut parts it.
    seams : tuple of Seam
        Its cuts.
    cuts : tuple of LaidCut
        The same as lines, with their joints.
    ends : (e, 2) int or None
        Of a local ply: boundary edges at which it ends inside the face, the ply on their left.
    share : (m,) float or None
        Of a local ply: how much of each triangle of the whole face it covers.
    """

    surface: Surface
    drape: Drape
    pieces: tuple[Piece, ...]
    seams: tuple[Seam, ...] = ()
    cuts: tuple[LaidCut, ...] = ()
    ends: IntArray | None = None
    share: FloatArray | None = None

    @property
    def local(self) -> bool:
        """Whether it covers a part of the face only."""
        return self.ends is not None

    def covered(self, face: Surface) -> float:
        """Return how much of the whole face it covers, mm^2."""
        return face.area if self.share is None else float(self.share @ face.areas)

    @property
    def uncut(self) -> Surface:
        """The surface with its cuts closed again."""
        if not self.seams:
            return self.surface
        return self._closed[0]

    @cached_property
    def hole_vertices(self) -> IntArray:
        """Vertices of the surface at the edges of holes in the face: (h,) int."""
        closed, index = self._closed
        loops = closed.boundary_loops
        outer = int(np.argmax([_enclosed(closed.vertices[loop]) for loop in loops]))
        holes = [loop for number, loop in enumerate(loops) if number != outer]
        at_hole = np.isin(index, np.concatenate([*holes, np.zeros(0, dtype=np.int64)]))
        return ints(np.flatnonzero(at_hole), -1)

    @cached_property
    def _closed(self) -> tuple[Surface, IntArray]:
        """The surface with its cuts closed, and the vertex of it that each of this one is."""
        points, index = np.unique(self.surface.vertices, axis=0, return_inverse=True)
        number: IntArray = index.reshape(-1)
        return Surface(
            points, number[self.surface.triangles], self.surface.patches, self.surface.patch_names
        ), number

    def part(self, piece: int) -> Surface:
        """Return a piece, by the vertices of the whole surface."""
        chosen: IntArray = self.pieces[piece].triangles
        surface = self.surface
        return Surface(
            surface.vertices,
            surface.triangles[chosen],
            surface.patches[chosen],
            surface.patch_names,
        )


def _enclosed(points: FloatArray) -> float:
    """Return the size of the area that a closed line spans, mm^2."""
    from_first = points - points[0]
    return 0.5 * float(np.linalg.norm(np.cross(from_first[:-1], from_first[1:]).sum(axis=0)))
