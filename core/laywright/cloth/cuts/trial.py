"""A trial of cuts on a coarse mesh: how far the cloth stays past its limits with them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np
import shapely
from scipy.spatial import cKDTree

from laywright.arrays import Array, FloatArray, IntArray
from laywright.cloth.cuts.cutting import CutSurface, cut_surface
from laywright.cloth.cuts.piece_region import piece_region
from laywright.cloth.cuts.pieces import PiecedDrape, drape_pieces
from laywright.cloth.drape.datum import Datum, start_place
from laywright.cloth.drape.even_mesh import carried
from laywright.cloth.drape.fabric import Fabric, Start
from laywright.cloth.drape.trouble import CLEAR, Limits, excess
from laywright.errors import GeometryError
from laywright.progress import Progress, silent
from laywright.surface.triangles import Surface

__all__ = ["Ground", "Trial"]

_ROUGHLY = 2e-4


@dataclass(frozen=True, eq=False)
class Trial:
    """What some cuts bring.

    Attributes
    ----------
    paths : tuple of (k, 2) float, mm
        The cuts in the flat map.
    cut : CutSurface
        The surface with them.
    laid : PiecedDrape
        The cloth on it.
    over : (m,) float
        By how much each triangle is strained past its limits, as a share of them; the
        triangles at the tips of darts count as none.
    share : float
        Share of the area past a limit.
    trouble : float
        Mean of `over` over the area.
    length : float, mm
        Length of all cuts.
    laps : bool
        Whether the flat cloth laps over itself, so that it cannot be cut from one layer.
    """

    paths: tuple[FloatArray, ...]
    cut: CutSurface
    laid: PiecedDrape
    over: FloatArray
    share: float
    trouble: float
    length: float
    laps: bool = False

    @property
    def clear(self) -> bool:
        """Whether it can be cut and next to nothing is past a limit."""
        return self.share <= CLEAR and not self.laps


@dataclass(frozen=True, eq=False)
class Ground:
    """A coarse mesh and the cloth that is tried on it.

    Attributes
    ----------
    surface : Surface
        Even triangles, mm.
    flat : (n, 2) float, mm
        A flat map of it.
    fabric : Fabric
    datum : Datum
    angle : float, radians
    start : Start or None
    limits : Limits
    """

    surface: Surface
    flat: FloatArray
    fabric: Fabric
    datum: Datum
    angle: float
    start: Start | None
    limits: Limits

    @cached_property
    def spacing(self) -> float:
        """Side of the triangles, mm."""
        return float(np.sqrt(self.surface.area / len(self.surface.triangles) * 4.0 / np.sqrt(3.0)))

    @cached_property
    def rim(self) -> IntArray:
        """Vertices at the edge."""
        return np.concatenate(self.surface.boundary_loops)

    @cached_property
    def depth(self) -> FloatArray:
        """Distance of every triangle from the edge in the flat map: (m,) float, mm."""
        tree = cKDTree(self.flat[self.rim])
        depth: FloatArray = tree.query(self.middles)[0]
        return depth

    @cached_property
    def middles(self) -> FloatArray:
        """Middle of every triangle in the flat map: (m, 2) float, mm."""
        middles: FloatArray = self.flat[self.surface.triangles].mean(axis=1)
        return middles

    @cached_property
    def start_point(self) -> FloatArray:
        """Where the cloth is laid first, in the flat map: (2,) float, mm."""
        return start_place(self.surface, self.datum).value(self.surface, self.flat)

    @cached_property
    def region(self) -> shapely.Polygon:
        """The face in the flat map."""
        outer, *holes = (self.flat[loop] for loop in self.surface.boundary_loops)
        return shapely.Polygon(outer, holes)

    def on_surface(self, path: FloatArray) -> FloatArray:
        """Return a path as points in space, a point about every spacing: (k, 3) float, mm."""
        line = shapely.LineString(path)
        count = max(2, int(np.ceil(line.length / self.spacing)) + 1)
        points = shapely.get_coordinates(
            shapely.line_interpolate_point(line, np.linspace(0.0, line.length, count))
        )
        return carried(self.surface, self.flat, points)[0]

    @cached_property
    def bare(self) -> Trial:
        """The cloth without cuts.

        Raises
        ------
        GeometryError
            If it cannot cover the face.
        """
        return self._trial([])

    def attempt(self, paths: Sequence[FloatArray], progress: Progress = silent) -> Trial | None:
        """Return what cuts bring, or None where they cannot be made or cloth is lacking."""
        progress(0.0, "trying cuts")
        try:
            return self._trial(paths)
        except GeometryError:
            return None

    def _trial(self, paths: Sequence[FloatArray]) -> Trial:
        cut = cut_surface(self.surface, self.flat, paths)
        laid = drape_pieces(
            cut, self.fabric, self.datum, self.angle, start=self.start, rest=_ROUGHLY
        )
        laps = False
        try:
            for piece in laid.pieces:
                piece_region(_only(cut.surface, piece.triangles), laid.drape.uv, "a trial")
        except GeometryError:
            if paths:
                raise
            laps = True
        over = np.maximum(excess(laid.drape, self.limits) - 1.0, 0.0)
        over[_at_tips(cut)] = 0.0
        areas = self.surface.areas / self.surface.area
        return Trial(
            tuple(paths),
            cut,
            laid,
            over,
            float(areas[over > 0.0].sum()),
            float(areas @ over),
            sum(seam.length for seam in cut.seams),
            laps,
        )


def _only(surface: Surface, triangles: IntArray) -> Surface:
    return Surface(
        surface.vertices,
        surface.triangles[triangles],
        surface.patches[triangles],
        surface.patch_names,
    )


def _at_tips(cut: CutSurface) -> Array:
    """Return which triangles touch the tip of a dart: (m,) bool."""
    tips = [seam.left[-1, 1] for seam in cut.seams if seam.left[-1, 1] == seam.right[-1, 1]]
    touching: Array = np.isin(cut.surface.triangles, tips).any(axis=1)
    return touching
