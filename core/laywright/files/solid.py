"""A solid as plain values: a name and the closed triangles that bound it."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, IntArray, floats, ints
from laywright.errors import GeometryError

__all__ = ["Solid"]


@dataclass(frozen=True, eq=False)
class Solid:
    """A solid, ready to be written or pictured.

    Attributes
    ----------
    name : str
        Name, as people read it.
    vertices : (n, 3) float, mm
        Points.
    triangles : (m, 3) int
        Vertex indices, counter-clockwise seen from outside.
    transform : (4, 4) float or None
        Where it is placed: a point p goes to ``transform @ (p, 1)``; None leaves it in place.
    """

    name: str
    vertices: FloatArray
    triangles: IntArray
    transform: FloatArray | None = None

    def __post_init__(self) -> None:
        object.__setattr__(self, "vertices", floats(self.vertices, -1, 3))
        object.__setattr__(self, "triangles", ints(self.triangles, -1, 3))
        if self.transform is not None:
            object.__setattr__(self, "transform", floats(self.transform, 4, 4))
        if not np.isfinite(self.vertices).all():
            raise GeometryError(
                self.name, "points that are no numbers", "finite coordinates", "repair the shape"
            )
        if len(self.triangles) and (
            self.triangles.min() < 0 or self.triangles.max() >= len(self.vertices)
        ):
            raise GeometryError(
                self.name,
                "a triangle that names a point which does not exist",
                f"point numbers from 0 to {len(self.vertices) - 1}",
                "repair the mesh",
            )

    @property
    def placed(self) -> FloatArray:
        """The points where the transform puts them: (n, 3) float, mm."""
        if self.transform is None:
            return self.vertices
        turned: FloatArray = self.vertices @ self.transform[:3, :3].T + self.transform[:3, 3]
        return turned
