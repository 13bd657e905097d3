"""Surfaces to solids and back, with the patch of every triangle kept.

Solids are cut and joined by manifold3d in double precision; its results are closed by
construction.  Every triangle carries the number of its patch through all cuts, as a place in
one list of names that all partners of an operation share.
"""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np
from manifold3d import CrossSection, Error, FillRule, Manifold, Mesh64, OpType
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

from laywright.arrays import FloatArray, IntArray
from laywright.errors import GeometryError
from laywright.surface.triangles import Surface

__all__ = [
    "ball",
    "block",
    "bore",
    "extruded",
    "from_manifold",
    "joined",
    "placed_block",
    "prism",
    "prism_mesh",
    "side_by_side",
    "to_manifold",
    "tube",
]

_SPECK = 1e-4
_ROUND = 24


def to_manifold(surface: Surface, where: str, first: int = 0) -> Manifold:
    """Return a closed surface as a solid.

    Parameters
    ----------
    surface : Surface
        Closed, normals outwards, mm.
    where : str
        Name for the message.
    first : int
        Number of the surface's patch 0 in the shared list of names.

    Raises
    ------
    GeometryError
        If the surface is not closed or encloses no volume.
    """
    mesh = Mesh64(
        np.array(surface.vertices, dtype=np.float64, order="C"),
        np.array(surface.triangles, dtype=np.uint64, order="C"),
        face_id=np.array(surface.patches + first, dtype=np.uint64),
    )
    solid = Manifold(mesh)
    if solid.status() != Error.NoError or solid.volume() <= 0.0:
        raise GeometryError(
            where,
            "a shape that does not close into a solid",
            "a closed shape that encloses a volume",
            "check the picked faces for gaps and folds",
        )
    return solid


def from_manifold(solid: Manifold, names: tuple[str, ...]) -> Surface:
    """Return a solid as a closed surface; its patches are places in `names`."""
    mesh = solid.to_mesh64()
    vertices = np.asarray(mesh.vert_properties, dtype=np.float64)[:, :3]
    triangles = np.asarray(mesh.tri_verts).astype(np.int64)
    source, target = np.asarray(mesh.merge_from_vert), np.asarray(mesh.merge_to_vert)
    if len(source):
        merged = np.arange(len(vertices))
        merged[source.astype(np.int64)] = target.astype(np.int64)
        used, index = np.unique(merged[triangles], return_inverse=True)
        vertices, triangles = vertices[used], index.reshape(-1, 3)
    return _without_specks(
        Surface(vertices, triangles, np.asarray(mesh.face_id).astype(np.int64), names)
    )


def _without_specks(surface: Surface) -> Surface:
    """Return a closed surface whose shortest edges are drawn together.

    Files keep coordinates in single precision: points closer than that would become one in
    whatever reads them, and leave triangles without area behind.
    """
    corners = np.ascontiguousarray(surface.triangles.T)
    squares = [np.zeros(len(surface.triangles)) for _ in range(3)]
    for along in surface.vertices.T:
        a, b, c = np.ascontiguousarray(along)[corners]
        for square, run in zip(squares, (a - b, b - c, c - a), strict=True):
            np.add(square, run * run, out=square)
    near = [square < _SPECK**2 for square in squares]
    if not any(side.any() for side in near):
        return surface
    short = np.concatenate(
        [surface.triangles[side][:, [i, (i + 1) % 3]] for i, side in enumerate(near)]
    )
    count = len(surface.vertices)
    graph = coo_matrix((np.ones(len(short)), (short[:, 0], short[:, 1])), shape=(count, count))
    _, group = connected_components(graph, directed=False)
    first = np.full(group.max() + 1, count)
    np.minimum.at(first, group, np.arange(count))
    triangles = first[group][surface.triangles]
    whole = (
        (triangles[:, 0] != triangles[:, 1])
        & (triangles[:, 1] != triangles[:, 2])
        & (triangles[:, 2] != triangles[:, 0])
    )
    drawn = Surface(surface.vertices, triangles, surface.patches, surface.patch_names).part(whole)
    try:
        return drawn if drawn.is_closed else surface
    except GeometryError:
        return surface


def joined(solids: Iterable[Manifold]) -> Manifold:
    """Return the union of solids."""
    every = list(solids)
    return every[0] if len(every) == 1 else Manifold.batch_boolean(every, OpType.Add)


def block(low: FloatArray, high: FloatArray, patch: int) -> Manifold:
    """Return the box between two corners; all its sides carry `patch`."""
    outline = np.array([[low[0], low[1]], [high[0], low[1]], [high[0], high[1]], [low[0], high[1]]])
    return prism(outline, float(low[2]), float(high[2]), patch)


def prism(outline: FloatArray, low: float, high: float, patch: int) -> Manifold:
    """Return the upright prism over a convex (k, 2) outline; all its sides carry `patch`."""
    return side_by_side([prism_mesh(outline, low, high)], patch)


def prism_mesh(outline: FloatArray, low: float, high: float) -> tuple[FloatArray, IntArray]:
    """Return points and triangles of the upright prism over a convex (k, 2) outline."""
    size = len(outline)
    here = np.arange(size)
    after = (here + 1) % size
    fan = np.stack([np.zeros(size - 2, dtype=int), here[1:-1], after[1:-1]], axis=1)
    points = np.concatenate(
        [np.column_stack([outline, np.full(size, height)]) for height in (low, high)]
    )
    sides = np.concatenate(
        [
            np.stack([here, after, after + size], axis=1),
            np.stack([here, after + size, here + size], axis=1),
        ]
    )
    return points, np.concatenate([fan[:, ::-1], fan + size, sides])


def side_by_side(meshes: Iterable[tuple[FloatArray, IntArray]], patch: int) -> Manifold:
    """Return closed meshes that nowhere overlap as one solid; all sides carry `patch`."""
    points, triangles, count = [], [], 0
    for corners, mesh in meshes:
        points.append(corners)
        triangles.append(mesh + count)
        count += len(corners)
    return _numbered(np.concatenate(points), np.concatenate(triangles), patch)


def extruded(shape: Iterable[FloatArray], low: float, high: float, patch: int) -> Manifold:
    """Return the upright solid over the union of outlines (k, 2); all sides carry `patch`."""
    flat = CrossSection([np.ascontiguousarray(outline) for outline in shape], FillRule.NonZero)
    mesh = flat.extrude(high - low).to_mesh64()
    points = np.asarray(mesh.vert_properties, dtype=np.float64)[:, :3] + np.array([0.0, 0.0, low])
    return _numbered(points, np.asarray(mesh.tri_verts).astype(np.int64), patch)


def tube(sections: FloatArray, patch: int) -> Manifold:
    """Return the ring whose cross-sections run round: (k, c, 3) float, mm, counter-clockwise.

    The corners of each section run counter-clockwise seen along the direction of the run.
    """
    count, size = sections.shape[:2]
    i, j = (a.ravel() for a in np.meshgrid(np.arange(count), np.arange(size), indexing="ij"))
    i1, j1 = (i + 1) % count, (j + 1) % size
    a, b, c, d = i * size + j, i1 * size + j, i1 * size + j1, i * size + j1
    triangles = np.concatenate([np.stack([a, b, c], axis=1), np.stack([a, c, d], axis=1)])
    return _numbered(sections.reshape(-1, 3), triangles, patch)


def _numbered(points: FloatArray, triangles: IntArray, patch: int) -> Manifold:
    return Manifold(
        Mesh64(
            np.array(points, dtype=np.float64, order="C"),
            np.array(triangles, dtype=np.uint64, order="C"),
            face_id=np.full(len(triangles), patch, dtype=np.uint64),
        )
    )


def placed_block(
    origin: FloatArray, axes: FloatArray, low: FloatArray, high: FloatArray, patch: int
) -> Manifold:
    """Return the box between two corners that are measured along axes from an origin.

    Parameters
    ----------
    origin : (3,) float, mm
        Where the axes start.
    axes : (3, 3) float
        Three unit vectors square to each other, one in each row, right-handed.
    low, high : (3,) float, mm
        Corners along the axes.
    patch : int
        Patch of all sides.
    """
    frame = np.column_stack([np.asarray(axes).T, origin])
    return block(low, high, patch).transform(frame)


def ball(centre: FloatArray, radius: float, patch: int) -> Manifold:
    """Return a ball about a point (3,) of facets outside of its sphere, mm."""
    mesh = Manifold.sphere(1.0, _ROUND).to_mesh64()
    points = np.asarray(mesh.vert_properties, dtype=np.float64)[:, :3]
    triangles = np.asarray(mesh.tri_verts).astype(np.int64)
    nearest = np.linalg.norm(points[triangles].mean(axis=1), axis=1).min()
    return _numbered(centre + radius / nearest * points, triangles, patch)


def bore(centre: FloatArray, diameter: float, low: float, high: float, patch: int) -> Manifold:
    """Return the upright cylinder of 32 sides about a plan point (2,), its area exact."""
    turn = 2.0 * np.pi * (np.arange(32) + 0.5) / 32
    radius = 0.5 * diameter * np.sqrt(np.pi / (16.0 * np.sin(np.pi / 16.0)))
    circle = np.stack([np.cos(turn), np.sin(turn)], axis=1)
    return prism(centre + radius * circle, low, high, patch)
