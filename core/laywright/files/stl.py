"""Binary STL: 80 bytes of header, a count, and 50 bytes per triangle.

The format has no unit and no names; the header says that lengths are mm.  It must not begin
with the word by which the text form of the format is known.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from laywright.arrays import Array, FloatArray, floats
from laywright.files.solid import Solid

__all__ = ["stl_bytes"]

_HEADER = b"Laywright, binary STL, lengths in mm".ljust(80)
_CHUNK = 65536  # triangles at a time, so that the work stays in the cache
_RECORD = np.dtype([("normal", "<f4", 3), ("corners", "<f4", (3, 3)), ("attribute", "<u2")])


def stl_bytes(vertices: Array, triangles: Array) -> bytes:
    """Return a binary STL file.

    Parameters
    ----------
    vertices : (n, 3) float, mm
        Points; written as 32-bit floats, which keeps 3e-5 mm on a part of 300 mm.
    triangles : (m, 3) int
        Vertex indices, counter-clockwise seen from outside.

    Returns
    -------
    bytes
        84 + 50 m bytes.

    Raises
    ------
    GeometryError
        If a point is no number or a triangle names a point that does not exist.
    """
    solid = Solid("the mesh", vertices, triangles)
    points = solid.vertices.astype(np.float32)
    records = np.zeros(len(solid.triangles), dtype=_RECORD)
    for start in range(0, len(records), _CHUNK):
        corners = points[solid.triangles[start : start + _CHUNK]]
        records["corners"][start : start + _CHUNK] = corners
        records["normal"][start : start + _CHUNK] = _normals(corners)
    return _HEADER + len(records).to_bytes(4, "little") + records.tobytes()


def _normals(corners: NDArray[np.float32]) -> FloatArray:
    """Return unit normals, zero where a triangle has no area."""
    x, y, z = (corners[:, :, axis].astype(np.float64) for axis in range(3))
    along: FloatArray = np.stack(
        [
            (a[:, 1] - a[:, 0]) * (b[:, 2] - b[:, 0]) - (b[:, 1] - b[:, 0]) * (a[:, 2] - a[:, 0])
            for a, b in ((y, z), (z, x), (x, y))
        ],
        axis=1,
    )
    lengths = np.sqrt(np.einsum("ij,ij->i", along, along))
    return floats(along / np.where(lengths > 0.0, lengths, 1.0)[:, None], -1, 3)
