"""Pictures of solids: shaded, outlined, seen along one direction without perspective.

Painter's algorithm: the farthest triangle is painted first and the nearest last, each with
those of its edges that a person would draw.  Words: an *outline* edge is where the surface
turns away from the eye or ends; a *ridge* is where two facets meet at an angle.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from laywright.arrays import Array, FloatArray, IntArray, Vector, unit_vector
from laywright.errors import GeometryError
from laywright.files.coarser import coarser
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.edges import Sides, facet_normals, sides
from laywright.files.framing import extent
from laywright.files.lettering import width_of
from laywright.files.solid import Solid
from laywright.tolerances import TOLERANCES

__all__ = ["FROM_ABOVE", "picture", "picture_of_several", "view_from"]

FROM_ABOVE: Vector = (0.9, -1.4, 1.1)
"""From the part to the eye: in front, to the right, above."""

_SHADES = 12
_DARKEST, _LIGHTEST = 0.62, 0.97
_LETTER = 3.2
_NONE, _RIDGE, _OUTLINE = 0, 1, 2
_FINEST = 14.0  # large triangles are split until this many span the picture

_Kinds = NDArray[np.int8]


@dataclass(frozen=True, eq=False)
class _Facets:
    """Triangles in the plane of the picture, (x, y, depth), nearer is deeper in the list."""

    corners: FloatArray
    light: FloatArray
    kinds: _Kinds


def picture(
    vertices: Array,
    triangles: Array,
    view: Vector = FROM_ABOVE,
    *,
    name: str = "part",
    size: tuple[float, float] = (160.0, 100.0),
    most: int = 3000,
) -> Drawing:
    """Return a picture of one surface or solid.

    Parameters
    ----------
    vertices : (n, 3) float, mm
        Points; z is up.
    triangles : (m, 3) int
        Vertex indices, counter-clockwise seen from outside.
    view : vector
        From the part to the eye.
    name : str
        Title of the drawing.
    size : tuple of 2 float, mm
        Box on the page that the picture fills.
    most : int
        Largest number of triangles; a finer mesh is made coarser for the picture.  For the
        best picture hand in a mesh that is coarse already.

    Returns
    -------
    Drawing
        In mm of the page, lowest corner at the origin; grey, so that it copies well.

    Raises
    ------
    GeometryError
        If there is nothing to see.

    See Also
    --------
    picture_of_several : several solids, each with its name on it.
    """
    return _paint(name, (Solid(name, vertices, triangles),), view, size, most, ())


def view_from(pull: Vector) -> Vector:
    """Return a view like `FROM_ABOVE` for things whose upper side looks along `pull`.

    Examples
    --------
    >>> view_from((0.0, 0.0, 1.0)) == FROM_ABOVE
    True
    """
    top = np.array(unit_vector(pull))
    along = np.array([1.0, 0.0, 0.0]) if abs(top[0]) < 0.9 else np.array([0.0, 1.0, 0.0])
    right = np.array(unit_vector(along - (along @ top) * top))
    x, y, z = FROM_ABOVE
    a, b, c = (x * right + y * np.cross(top, right) + z * top).tolist()
    return a, b, c


def picture_of_several(
    name: str,
    solids: Sequence[Solid],
    view: Vector = FROM_ABOVE,
    *,
    size: tuple[float, float] = (160.0, 110.0),
    most: int = 4000,
) -> Drawing:
    """Return a picture of several solids where their transforms put them, named on the picture.

    Parameters
    ----------
    name : str
        Title of the drawing.
    solids : sequence of Solid
        For an exploded picture, each with a transform that moves it apart from the others.
    view, size, most
        As for `picture`; `most` counts all solids together.

    Raises
    ------
    GeometryError
        If there is nothing to see.
    """
    return _paint(name, tuple(solids), view, size, most, tuple(solid.name for solid in solids))


def _paint(
    name: str,
    solids: tuple[Solid, ...],
    view: Vector,
    size: tuple[float, float],
    most: int,
    labels: tuple[str, ...],
) -> Drawing:
    axes = _axes(view)
    total = sum(len(solid.triangles) for solid in solids)
    parts, places = [], []
    for solid in solids:
        share = max(60, most * len(solid.triangles) // max(total, 1)) if total > most else most
        points, triangles = coarser(solid.placed, solid.triangles, share)
        if len(triangles):
            flat = points @ axes.T
            whole = len(triangles) == len(solid.triangles)
            ridge = TOLERANCES.sharp_edge if whole else 3.0 * TOLERANCES.sharp_edge
            parts.append(_facets(flat, triangles, ridge))
            seen = flat[np.unique(triangles), :2]
            places.append(0.5 * (seen.min(axis=0) + seen.max(axis=0)))
    if not parts or not sum(len(part.light) for part in parts):
        raise GeometryError(name, "nothing to see", "at least one triangle", "make the part first")
    scene = _Facets(
        np.concatenate([part.corners for part in parts]),
        np.concatenate([part.light for part in parts]),
        np.concatenate([part.kinds for part in parts]),
    )
    low = scene.corners[:, :, :2].min(axis=(0, 1))
    reach = np.maximum(scene.corners[:, :, :2].max(axis=(0, 1)) - low, 1e-9)
    scale = float(np.min(np.array(size) / reach))
    scene = _split(scene, float(reach.max()) / _FINEST, most)
    shapes: list[Line | Label] = list(_shapes(scene, low, scale))
    for text, place in zip(labels, places, strict=False):
        shapes += _tag(text, (place - low) * scale)
    drawing = Drawing(name, tuple(shapes), _styles())
    corner = np.minimum(extent(drawing)[0], 0.0)
    return drawing.moved(-float(corner[0]), -float(corner[1]))


def _axes(view: Vector) -> FloatArray:
    """Return right, up and towards the eye as the rows of a turn: (3, 3) float."""
    eye = np.array(unit_vector(view))
    up = np.array([0.0, 0.0, 1.0]) if abs(eye[2]) < 0.999 else np.array([0.0, 1.0, 0.0])
    right = np.cross(up, eye)
    right /= np.linalg.norm(right)
    return np.stack([right, np.cross(eye, right), eye])


def _facets(points: FloatArray, triangles: IntArray, ridge: float) -> _Facets:
    """Return the triangles that may be seen, with their light and the kinds of their edges."""
    corners = points[triangles]
    normals = facet_normals(corners)
    found = sides(triangles)
    kinds = _edge_kinds(found, normals, ridge)
    facing = normals[:, 2]
    shown = (np.abs(facing) > 1e-9) if len(found.lone) else (facing > 1e-9)
    lamp = np.array(unit_vector((-0.5, 0.7, 0.9)))
    turned = np.where(facing[:, None] < 0.0, -normals, normals)
    light = np.clip(turned @ lamp, 0.0, 1.0) * np.where(facing < 0.0, 0.75, 1.0)
    return _Facets(corners[shown], light[shown], kinds[shown])


def _edge_kinds(found: Sides, normals: FloatArray, ridge: float) -> _Kinds:
    """Return what each side of each triangle is: (m, 3)."""
    one, other = normals[found.first // 3], normals[found.second // 3]
    bend = np.einsum("ij,ij->i", one, other)
    away = one[:, 2] * other[:, 2] <= 0.0
    kind = np.where(away, _OUTLINE, np.where(bend < np.cos(ridge), _RIDGE, _NONE))
    kinds = np.full(3 * len(normals), _OUTLINE, dtype=np.int8)
    kinds[found.first] = kind
    kinds[found.second] = kind
    return kinds.reshape(-1, 3)


def _split(scene: _Facets, longest: float, most: int) -> _Facets:
    """Return the scene with large triangles halved, so that their order is told apart."""
    corners, light, kinds = scene.corners, scene.light, scene.kinds
    for _ in range(24):
        sides = np.linalg.norm(np.roll(corners, -1, axis=1) - corners, axis=2)
        worst = sides.argmax(axis=1)
        length = sides.max(axis=1)
        room = most - len(corners)
        chosen = np.flatnonzero(length > longest)
        if not len(chosen) or room <= 0:
            break
        chosen = chosen[np.argsort(-length[chosen], kind="stable")][:room]
        turn = (worst[chosen, None] + np.arange(3)) % 3
        a, b, c = (corners[chosen, turn[:, k]] for k in range(3))
        ab, bc, ca = (kinds[chosen, turn[:, k]] for k in range(3))
        middle, inner = 0.5 * (a + b), np.zeros_like(ab)
        rest = np.ones(len(corners), dtype=bool)
        rest[chosen] = False
        corners = np.concatenate(
            [corners[rest], np.stack([a, middle, c], 1), np.stack([middle, b, c], 1)]
        )
        light = np.concatenate([light[rest], light[chosen], light[chosen]])
        kinds = np.concatenate(
            [kinds[rest], np.stack([ab, inner, ca], 1), np.stack([ab, bc, inner], 1)]
        )
    return _Facets(corners, light, kinds)


def _shapes(scene: _Facets, low: FloatArray, scale: float) -> list[Line]:
    """Return triangles and drawn edges, the farthest first.

    An edge comes after every triangle that touches one of its ends, so that none of them
    covers half of its width.
    """
    count = len(scene.light)
    shade = np.minimum((scene.light * _SHADES).astype(int), _SHADES - 1)
    flat = (scene.corners[:, :, :2] - low) * scale
    rank = np.empty(count)
    rank[np.argsort(scene.corners[:, :, 2].mean(axis=1), kind="stable")] = np.arange(count)
    cells = np.rint(scene.corners.reshape(-1, 3) * (scale * 1e4)).astype(np.int64)
    points, number = np.unique(cells, axis=0, return_inverse=True)
    number = number.reshape(-1, 3)
    latest = np.zeros(len(points))
    np.maximum.at(latest, number, rank[:, None])
    owner, side = np.nonzero(scene.kinds)
    following = (side + 1) % 3
    edge_rank = np.maximum(latest[number[owner, side]], latest[number[owner, following]]) + 0.5
    order = np.argsort(np.concatenate([rank, edge_rank]), kind="stable")
    layers = {_RIDGE: "ridge", _OUTLINE: "outline"}
    shapes = []
    for index in order.tolist():
        if index < count:
            grey = _grey(int(shade[index]))
            layer = f"shade {shade[index] + 1}"
            shapes.append(Line(layer, flat[index], closed=True, fill=(grey, grey, grey)))
        else:
            edge = index - count
            ends = flat[owner[edge], [side[edge], following[edge]]]
            shapes.append(Line(layers[int(scene.kinds[owner[edge], side[edge]])], ends))
    return shapes


def _grey(shade: int) -> float:
    return _DARKEST + (_LIGHTEST - _DARKEST) * shade / (_SHADES - 1)


def _styles() -> dict[str, Style]:
    shades = {f"shade {shade + 1}": Style(0.2, (), (_grey(shade),) * 3) for shade in range(_SHADES)}
    return shades | {
        "outline": Style(0.4),
        "ridge": Style(0.2),
        "tag": Style(0.2),
    }


def _tag(text: str, at: FloatArray) -> list[Line | Label]:
    """Return a name on a white field."""
    half = np.array([0.5 * width_of(text, _LETTER) + 0.8, 0.5 * _LETTER + 1.0])
    corners = at + half * np.array([[-1, -1], [1, -1], [1, 1], [-1, 1]])
    return [
        Line("tag", corners, closed=True, fill=(1.0, 1.0, 1.0)),
        Label("tag", text, (float(at[0]), float(at[1])), _LETTER),
    ]
