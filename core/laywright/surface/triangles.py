"""The triangles that stand for a part: points, facets, and the patch each facet lies on.

Words: a *patch* is the set of triangles that came from one CAD face (or one smooth region of
a scan); a *boundary loop* is a closed run of edges that have a triangle on one side only.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray, floats, ints
from laywright.errors import GeometryError
from laywright.surface.edge_table import EdgeTable, edge_table
from laywright.tolerances import TOLERANCES

__all__ = ["Surface"]


@dataclass(frozen=True, eq=False)
class Surface:
    """An oriented triangle surface with patches.

    Attributes
    ----------
    vertices : (n, 3) float, mm
        Points; triangles that meet share them, also across patches.
    triangles : (m, 3) int
        Vertex indices, counter-clockwise seen from the side the normal points to.
    patches : (m,) int
        Patch of each triangle: an index into `patch_names`.
    patch_names : tuple of str
        Name of each patch, for example ``"Face3"``.
    """

    vertices: FloatArray
    triangles: IntArray
    patches: IntArray
    patch_names: tuple[str, ...] = ("Face1",)

    def __post_init__(self) -> None:
        object.__setattr__(self, "vertices", floats(self.vertices, -1, 3))
        object.__setattr__(self, "triangles", ints(self.triangles, -1, 3))
        object.__setattr__(self, "patches", ints(self.patches, -1))
        if len(self.patches) != len(self.triangles):
            raise ValueError(
                f"{len(self.patches)} patch numbers came for {len(self.triangles)} triangles"
            )
        lost = ~np.isfinite(self.vertices).all(axis=1)
        if lost.any():
            raise GeometryError(
                ", ".join(self.patch_names),
                f"{int(lost.sum())} points that are no numbers",
                "finite coordinates in mm",
                "repair the shape",
            )
        if len(self.triangles) and (
            self.triangles.min() < 0 or self.triangles.max() >= len(self.vertices)
        ):
            raise GeometryError(
                ", ".join(self.patch_names),
                "a triangle that names a point which does not exist",
                f"point numbers from 0 to {len(self.vertices) - 1}",
                "repair the mesh file",
            )

    @classmethod
    def single(cls, vertices: Array, triangles: Array, name: str = "Face1") -> Surface:
        """Return a surface of one patch."""
        return cls(
            floats(vertices, -1, 3),
            ints(triangles, -1, 3),
            np.zeros(len(triangles), dtype=np.int64),
            (name,),
        )

    @cached_property
    def corners(self) -> FloatArray:
        """Corner points of every triangle: (m, 3, 3) float, mm."""
        return self.vertices[self.triangles]

    @cached_property
    def _cross(self) -> tuple[FloatArray, FloatArray, FloatArray]:
        """Cross product of two sides of every triangle, component by component: (m,) each."""
        a, b, c = (np.ascontiguousarray(self.triangles[:, corner]) for corner in range(3))
        sides = []
        for axis in range(3):
            along = np.ascontiguousarray(self.vertices[:, axis])
            start = along[a]
            sides.append((along[b] - start, along[c] - start))
        (ux, vx), (uy, vy), (uz, vz) = sides
        return uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx

    @cached_property
    def areas(self) -> FloatArray:
        """Area of every triangle: (m,) float, mm^2."""
        x, y, z = self._cross
        return floats(0.5 * np.sqrt(x * x + y * y + z * z), -1)

    @cached_property
    def normals(self) -> FloatArray:
        """Unit normal of every triangle: (m, 3) float; zero where a triangle has no area."""
        doubled = 2.0 * self.areas
        usable = doubled > 2.0 * TOLERANCES.zero_area
        inverse = np.divide(1.0, doubled, out=np.zeros_like(doubled), where=usable)
        normals = np.empty((len(doubled), 3))
        for axis, component in enumerate(self._cross):
            np.multiply(component, inverse, out=normals[:, axis])
        normals.flags.writeable = False
        return normals

    @cached_property
    def area(self) -> float:
        """Area of the whole surface, mm^2."""
        return float(self.areas.sum())

    @cached_property
    def patch_areas(self) -> FloatArray:
        """Area of every patch: (patches,) float, mm^2."""
        return floats(np.bincount(self.patches, self.areas, len(self.patch_names)), -1)

    @cached_property
    def centroids(self) -> FloatArray:
        """Centroid of every triangle: (m, 3) float, mm."""
        return floats(self.corners.mean(axis=1), -1, 3)

    @cached_property
    def angles(self) -> FloatArray:
        """Corner angles of every triangle: (m, 3) float, radians."""
        corners = self.corners
        angle = np.empty((len(corners), 3))
        for corner in range(3):
            u = corners[:, (corner + 1) % 3] - corners[:, corner]
            v = corners[:, (corner + 2) % 3] - corners[:, corner]
            angle[:, corner] = np.arctan2(
                np.linalg.norm(np.cross(u, v), axis=1), np.einsum("ij,ij->i", u, v)
            )
        return angle

    @cached_property
    def vertex_normals(self) -> FloatArray:
        """Unit normal at every vertex, weighted by corner angle: (n, 3) float."""
        total = np.zeros_like(self.vertices)
        for corner in range(3):
            at, weight = self.triangles[:, corner], self.angles[:, corner]
            for axis in range(3):
                total[:, axis] += np.bincount(
                    at, weights=self.normals[:, axis] * weight, minlength=len(total)
                )
        length = np.linalg.norm(total, axis=1, keepdims=True)
        return floats(np.divide(total, length, out=total, where=length > 0), -1, 3)

    @cached_property
    def edges(self) -> EdgeTable:
        """The edge table.

        Raises
        ------
        GeometryError
            If an edge has more than two triangles, or two that run the same way.
        """
        return edge_table(self.vertices, self.triangles, ", ".join(self.patch_names))

    @cached_property
    def boundary_loops(self) -> tuple[IntArray, ...]:
        """Boundary loops as vertex indices, longest first.

        Each loop runs so that the surface lies on its left, seen from the side the normals
        point to; the last point joins the first.

        Raises
        ------
        GeometryError
            If two loops touch in a point.
        """
        table = self.edges
        open_right, open_left = table.right < 0, table.left < 0
        starts = np.concatenate([table.ends[open_right, 0], table.ends[open_left, 1]])
        ends = np.concatenate([table.ends[open_right, 1], table.ends[open_left, 0]])
        if len(np.unique(starts)) != len(starts):
            doubled = starts[np.flatnonzero(np.bincount(starts)[starts] > 1)[0]]
            x, y, z = self.vertices[doubled]
            raise GeometryError(
                ", ".join(self.patch_names),
                f"an outline that touches itself at ({x:.2f}, {y:.2f}, {z:.2f}) mm",
                "an outline that passes each point once",
                "pick faces that share an edge and not only a corner",
            )
        following = dict(zip(starts.tolist(), ends.tolist(), strict=True))
        loops = []
        while following:
            point, after = following.popitem()
            loop = [point]
            while after != loop[0]:
                loop.append(after)
                after = following.pop(after)
            loops.append(ints(loop, -1))
        loops.sort(key=lambda loop: -self.loop_length(loop))
        return tuple(_from_lowest(loop) for loop in loops)

    def loop_length(self, loop: IntArray) -> float:
        """Return the length of a closed loop of vertex indices, mm."""
        points = self.vertices[loop]
        return float(np.linalg.norm(np.roll(points, -1, axis=0) - points, axis=1).sum())

    @cached_property
    def components(self) -> IntArray:
        """Connected piece that each triangle belongs to, counted from 0: (m,) int."""
        from scipy.sparse import coo_matrix  # noqa: PLC0415
        from scipy.sparse.csgraph import connected_components  # noqa: PLC0415

        inner = (self.edges.left >= 0) & (self.edges.right >= 0)
        rows, columns = self.edges.left[inner], self.edges.right[inner]
        size = len(self.triangles)
        graph = coo_matrix((np.ones(len(rows)), (rows, columns)), shape=(size, size))
        return ints(connected_components(graph, directed=False)[1], -1)

    @cached_property
    def euler_characteristic(self) -> int:
        """Vertices in use minus edges plus triangles: 1 for a disk, 2 for a sphere."""
        used = len(np.unique(self.triangles))
        return used - len(self.edges.ends) + len(self.triangles)

    @property
    def is_closed(self) -> bool:
        """Whether every edge has two triangles."""
        return bool((self.edges.left >= 0).all() and (self.edges.right >= 0).all())

    @property
    def volume(self) -> float:
        """Volume enclosed by a closed surface, mm^3, by the divergence theorem."""
        start = self.vertices[self.triangles[:, 0]].T
        return float(sum(a @ b for a, b in zip(start, self._cross, strict=True)) / 6.0)

    @property
    def bounds(self) -> FloatArray:
        """Lowest and highest corner: (2, 3) float, mm."""
        return np.stack([self.vertices.min(axis=0), self.vertices.max(axis=0)])

    def flipped(self) -> Surface:
        """Return the same surface with its normals turned round."""
        return Surface(self.vertices, self.triangles[:, ::-1], self.patches, self.patch_names)

    def moved(self, vertices: FloatArray) -> Surface:
        """Return the same triangles on other points."""
        return Surface(vertices, self.triangles, self.patches, self.patch_names)

    def part(self, mask: Array) -> Surface:
        """Return the triangles where `mask` (m,) is true, with the points they use."""
        triangles = self.triangles[mask]
        used = np.zeros(len(self.vertices), dtype=bool)
        used[triangles] = True
        index = np.cumsum(used) - 1
        return Surface(self.vertices[used], index[triangles], self.patches[mask], self.patch_names)


def _from_lowest(loop: IntArray) -> IntArray:
    return ints(np.roll(loop, -int(np.argmin(loop))), -1)
