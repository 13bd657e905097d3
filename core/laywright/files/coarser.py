"""Fewer triangles for a picture.

Good enough to look at, never to measure or to make: the mesh that is printed or cut is not
touched.  In a closed mesh, edges are collapsed as far as its points may move; in an open one,
points that share a cell of a grid become one point (vertex clustering, Rossignac and Borrel,
1993).
"""

from __future__ import annotations

import numpy as np
from manifold3d import Error, Manifold, Mesh

from laywright.arrays import Array, FloatArray, IntArray, floats, ints
from laywright.files.edges import facet_normals, sides
from laywright.tolerances import TOLERANCES

__all__ = ["coarser"]

_MOVES = (1 / 4000, 1 / 2000, 1 / 1000, 1 / 500, 1 / 250, 1 / 125, 1 / 50)  # of the size
_TURN = 0.6  # length of the sum of the two unit ways out of a point where an edge turns by 35 deg


def coarser(vertices: Array, triangles: Array, most: int) -> tuple[FloatArray, IntArray]:
    """Return a mesh of at most `most` triangles.

    Parameters
    ----------
    vertices : (n, 3) float, mm
        Points.
    triangles : (m, 3) int
        Vertex indices.
    most : int
        Largest number of triangles; a mesh that has no more comes back as it is.

    Returns
    -------
    vertices : (k, 3) float, mm
        Points.
    triangles : (j, 3) int
        Triangles with three different corners.  A closed mesh stays closed as long as no point
        has to move by more than a fiftieth of its size.
    """
    points, faces = floats(vertices, -1, 3), ints(triangles, -1, 3)
    if len(faces) > most and not len(sides(faces).lone):
        points, faces = _collapsed(points, faces, most)
    if len(faces) > most:
        points, faces = _clustered(points, faces, most)
    return points, faces


def _collapsed(points: FloatArray, faces: IntArray, most: int) -> tuple[FloatArray, IntArray]:
    """Return a closed mesh with edges collapsed, the less the better."""
    solid = Manifold(Mesh(points.astype(np.float32), faces.astype(np.uint32)))
    if solid.status() != Error.NoError:
        return points, faces
    reach = float(np.ptp(points, axis=0).max())
    found = points, faces
    for share in _MOVES:
        simpler = solid.simplify(reach * share).to_mesh()
        if 0 < len(simpler.tri_verts) < len(found[1]):
            found = floats(simpler.vert_properties[:, :3], -1, 3), ints(simpler.tri_verts, -1, 3)
        if len(found[1]) <= most:
            break
    return found


def _clustered(points: FloatArray, faces: IntArray, most: int) -> tuple[FloatArray, IntArray]:
    """Return a mesh whose points are the means of those that share a cell of a grid.

    Points on edges and corners outweigh the others, so that edges stay straight.
    """
    low = points.min(axis=0)
    reach = float(np.ptp(points, axis=0).max())
    weights = _weights(points, faces)
    across = 2.0 * np.sqrt(most)
    while across > 1.0:
        cells = np.floor((points - low) * (across / reach)).astype(np.int64)
        names, number = np.unique(cells, axis=0, return_inverse=True)
        number, count = number.reshape(-1), len(names)
        joined = number[faces]
        whole = (joined != np.roll(joined, 1, axis=1)).all(axis=1)
        joined = joined[whole]
        _, first = np.unique(np.sort(joined, axis=1), axis=0, return_index=True)
        if len(first) <= most:
            total = np.bincount(number, weights, count)
            means = [np.bincount(number, weights * axis, count) / total for axis in points.T]
            return floats(np.stack(means, axis=1), -1, 3), ints(joined[np.sort(first)], -1, 3)
        across *= 0.85
    return floats(np.zeros((0, 3)), -1, 3), ints(np.zeros((0, 3)), -1, 3)


def _weights(points: FloatArray, faces: IntArray) -> FloatArray:
    """Return how much each point counts: 1, a thousand on an edge, a million at a corner.

    A corner is where three edges meet, or where the run of an edge turns.
    """
    normals = facet_normals(points[faces])
    found = sides(faces)
    bend = np.einsum("ij,ij->i", normals[found.first // 3], normals[found.second // 3])
    sharp = np.concatenate([found.first[bend < np.cos(TOLERANCES.sharp_edge)], found.lone])
    starts, ends = faces.ravel()[sharp], np.roll(faces, -1, axis=1).ravel()[sharp]
    way = points[ends] - points[starts]
    way /= np.maximum(np.linalg.norm(way, axis=1), 1e-12)[:, None]
    both, out = np.concatenate([starts, ends]), np.concatenate([way, -way])
    met = np.bincount(both, minlength=len(points))
    sums = np.stack([np.bincount(both, axis, len(points)) for axis in out.T], axis=1)
    corner = (met > 2) | (np.linalg.norm(sums, axis=1) > _TURN)
    return floats(np.select([met == 0, ~corner], [1.0, 1e3], 1e6), -1)
