"""An outline divided into short pieces, the surface itself unchanged."""

from __future__ import annotations

import numpy as np

from laywright.surface.triangles import Surface

__all__ = ["divided_outline"]


def divided_outline(surface: Surface, spacing: float) -> Surface:
    """Return the same surface with its boundary edges divided evenly.

    Parameters
    ----------
    surface : Surface
        Any.
    spacing : float, mm
        Longest boundary edge of the result.

    Returns
    -------
    Surface
        Triangles at divided edges are divided too, in their own plane.

    Examples
    --------
    >>> import numpy as np
    >>> points = np.array([[0, 0, 0], [3, 0, 0], [0, 4, 0]])
    >>> fine = divided_outline(Surface.single(points, np.array([[0, 1, 2]])), 1.0)
    >>> len(fine.boundary_loops[0]), fine.area
    (12, 6.0)
    """
    table = surface.edges
    outer = (table.left < 0) | (table.right < 0)
    ends = table.ends[outer]
    length = np.linalg.norm(surface.vertices[ends[:, 1]] - surface.vertices[ends[:, 0]], axis=1)
    pieces = np.maximum(1, np.ceil(length / spacing - 1e-9).astype(np.int64))
    points = [surface.vertices]
    inner: dict[tuple[int, int], list[int]] = {}
    count = len(surface.vertices)
    for (a, b), number in zip(ends.tolist(), pieces.tolist(), strict=True):
        if number > 1:
            share = (np.arange(1, number) / number)[:, None]
            points.append((1.0 - share) * surface.vertices[a] + share * surface.vertices[b])
            inner[a, b] = list(range(count, count + number - 1))
            inner[b, a] = inner[a, b][::-1]
            count += number - 1
    owner = np.maximum(table.left, table.right)[outer][pieces > 1]
    kept = np.ones(len(surface.triangles), dtype=bool)
    kept[owner] = False
    triangles = [surface.triangles[kept]]
    patches = [surface.patches[kept]]
    for facet in np.unique(owner).tolist():
        corners = surface.triangles[facet].tolist()
        ring: list[int] = []
        for start, end in zip(corners, [*corners[1:], corners[0]], strict=True):
            ring += [start, *inner.get((start, end), [])]
        points.append(surface.centroids[facet][None])
        following = [*ring[1:], ring[0]]
        triangles.append(np.array([[count, a, b] for a, b in zip(ring, following, strict=True)]))
        patches.append(np.full(len(ring), surface.patches[facet]))
        count += 1
    return Surface(
        np.concatenate(points),
        np.concatenate(triangles),
        np.concatenate(patches),
        surface.patch_names,
    )
