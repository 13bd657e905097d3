"""The inside of a hollow mould: a wall of at least the asked thickness, ribs, a closed bottom.

The hollow's ceiling is the mould's upper surface worn down by a ball of the wall's radius: at
every place the highest point that no ball about the outer surface reaches (grey-scale erosion,
Serra, "Image Analysis and Mathematical Morphology", 1982).  It is taken on a grid, then lowered
where the distance to the outer surface, measured exactly, falls short.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
import shapely
from manifold3d import Manifold, OpType, triangulate
from scipy.ndimage import distance_transform_edt, grey_erosion, minimum_filter
from shapely import STRtree
from shapely.ops import polylabel

from laywright.arrays import FloatArray
from laywright.errors import GeometryError
from laywright.mould.body.base import close_down
from laywright.mould.body.heights import grid_heights
from laywright.mould.body.settings import Inside, MouldBuild
from laywright.mould.solid import block, bore, from_manifold, to_manifold
from laywright.surface.distance import triangle_distances
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES
from laywright.wording import three_figures

__all__ = ["Hollow", "deflection", "hollow_of", "sag_remarks"]

# Without another source: our own choice
_FEWEST, _MOST = 40, 160  # steps of the grid along the shorter and longer side, about
_ROUNDS = 8  # in which the ceiling is lowered until it is nowhere too near
_TRIES = 6  # with a wall a little thicker each time, until the least one measures enough
_CHUNK = 20000  # points that are measured at a time, for the sake of memory
_VENT = 6.0  # mm, bore through the bottom of each hollow
_BELOW = 5.0  # mm that bodies to be cut away reach below the base
_OPEN = 0.05  # mm below the base where the hollow is open: no skin stays
_OVER = 1.002  # of the wall, for round corners are chords, 32 a quarter
_CRUMB = 2.0  # walls, side of the cube whose volume a hollow must have to stay
_POISSON = 0.35  # of printed plastic; from memory
# Deflection over q a^4 / D in the middle of a clamped square plate, and of a clamped strip:
# Timoshenko and Woinowsky-Krieger, "Theory of Plates and Shells", 1959, table 35 and section 2
_SQUARE = 0.00126
_STRIP = 1.0 / 384.0


@dataclass(frozen=True, eq=False)
class Hollow:
    """What is taken out of a mould.

    Attributes
    ----------
    solid : Manifold
        In the mould's frame.
    least_wall : float, mm
        Least distance measured from its corners, edges and facets to the outer surface, at
        most twice the wall that was asked for.
    span : float, mm
        Widest stretch of wall without support.
    """

    solid: Manifold
    least_wall: float
    span: float


def hollow_of(body: Surface, upper: Surface, inside: Inside, base: int, patch: int) -> Hollow:
    """Return the hollow of a mould.

    Parameters
    ----------
    body : Surface
        The whole mould in its frame, closed.
    upper : Surface
        Its upper surface alone, or more of its outer faces; the lowest counts.
    inside : Inside
        Wall, ribs and bottom.
    base, patch : int
        Patch of the body's base, and of the hollow.

    Raises
    ------
    GeometryError
        If the body is too thin for the wall.
    """
    outer = body.part(body.patches != base)
    floor = float(body.vertices[:, 2].min())
    low, high = body.bounds
    step = float(np.clip(inside.wall / 2.0, (high - low)[:2].max() / _MOST, 1e9))
    step = min(step, float((high - low)[:2].min()) / _FEWEST) if step > 1.0 else step
    step = max(step, float((high - low)[:2].max()) / (2 * _MOST))
    number = np.ceil((high - low)[:2] / step).astype(int) + 3
    start = low[:2] - step
    level = grid_heights(upper, start, step, (int(number[0]), int(number[1])))
    deep = floor - _BELOW + 1.0
    ceiling = _carried_on(level)
    jumps = ceiling - minimum_filter(ceiling, 3) > 3.0 * step
    ceiling = np.where(jumps, minimum_filter(ceiling, 3), ceiling)
    bounds = np.array([[*low[:2], floor + inside.bottom], [*high[:2], high[2]]])
    cells = _cells(bounds, inside, patch)
    outline = _outline(body.part(body.patches == base))
    aim = inside.wall
    for _ in range(_TRIES):
        top = _worn(ceiling, upper, start, step, aim, deep)
        solid = to_manifold(close_down(top, deep - 1.0, 0, 0), "the hollow", patch)
        solid = solid ^ cells ^ _column(outline.buffer(-_OVER * aim, 32), bounds, patch)
        solid, least = _trimmed(solid, outer, floor, inside, patch)
        if least >= inside.wall:
            break
        aim += inside.wall - least + 1e-3 * inside.wall
    if solid.is_empty() or least < inside.wall:
        raise GeometryError(
            "the hollow of the mould body",
            f"no room behind a wall of {three_figures(inside.wall)} mm",
            "a body at least twice as thick as its wall",
            "raise the base, thin the wall or build it solid",
        )
    if inside.bottom > 0.0:
        solid = _vented(solid, floor, inside, patch)
    span = inside.rib_spacing - inside.rib_thickness
    if inside.build is MouldBuild.SHELL:
        span = _widest(solid, floor + inside.bottom + 0.01)
    return Hollow(solid, least, span)


def _outline(base: Surface) -> shapely.Geometry:
    """Return the plan area of a base."""
    area: shapely.Geometry = shapely.Polygon()
    for loop in base.boundary_loops:
        area = area.symmetric_difference(shapely.Polygon(base.vertices[loop][:, :2]))
    return area


def deflection(inside: Inside, span: float) -> float:
    """Return how far a flat wall gives way under the vacuum, mm.

    A square plate clamped at four ribs, or a long strip clamped at two sides for a shell
    (Timoshenko and Woinowsky-Krieger, "Theory of Plates and Shells", 1959, table 35 and
    section 2: ``0.00126 q a^4 / D`` and ``q a^4 / (384 D)``, ``D = E t^3 / 12 (1 - v^2)``).  A
    curved wall gives way less.

    Parameters
    ----------
    inside : Inside
        Wall, stiffness, vacuum.
    span : float, mm
        Between supports.

    Examples
    --------
    >>> round(deflection(Inside(MouldBuild.HOLLOW_WITH_RIBS, wall=4.0), 40.0), 4)
    0.0212
    """
    rigidity = inside.stiffness * inside.wall**3 / (12.0 * (1.0 - _POISSON**2))
    factor = _STRIP if inside.build is MouldBuild.SHELL else _SQUARE
    return factor * inside.vacuum * span**4 / rigidity


def sag_remarks(inside: Inside, span: float) -> tuple[str, ...]:
    """Return a sentence where walls give way under the vacuum more than a working area may."""
    sag, wanted = deflection(inside, span), TOLERANCES.working_area
    if sag <= wanted:
        return ()
    words = "more than its thickness" if sag > inside.wall else f"{three_figures(sag)} mm"
    return (
        f"Under a vacuum of {three_figures(inside.vacuum)} MPa a flat wall of "
        f"{three_figures(inside.wall)} mm gives way by {words} over {span:.0f} mm, wanted at most "
        f"{three_figures(wanted)} mm: thicken the wall, set the ribs closer or keep the bag off "
        "it.",
    )


def _worn(
    ceiling: FloatArray, upper: Surface, start: FloatArray, step: float, aim: float, deep: float
) -> Surface:
    """Return the hollow's ceiling as a surface over the whole grid."""
    reach = math.ceil(aim / step)
    side = step * np.arange(-reach, reach + 1)
    flat = side[:, None] ** 2 + side[None, :] ** 2
    ball = np.sqrt(np.maximum(aim**2 - flat, 0.0))
    level = grey_erosion(ceiling, footprint=flat <= aim**2, structure=ball, mode="nearest")
    level = np.maximum(level, deep)
    top = _grid_surface(level, start, step)
    for turn in range(_ROUNDS):
        above = np.flatnonzero(top.vertices[:, 2] > deep)
        short = aim - _gaps(top.vertices[above], upper, aim)
        lacking = short > 1e-9
        if not lacking.any():
            break
        points = top.vertices.copy()
        sunk = points[above[lacking], 2] - (1e-3 + 2.0**turn * short[lacking])
        points[above[lacking], 2] = deep if turn == _ROUNDS - 1 else np.maximum(sunk, deep)
        top = top.moved(points)
    return top


def _grid_surface(level: FloatArray, start: FloatArray, step: float) -> Surface:
    across, along = level.shape
    i, j = (a.ravel() for a in np.meshgrid(np.arange(across), np.arange(along), indexing="ij"))
    points = np.column_stack([start[0] + step * i, start[1] + step * j, level.ravel()])
    inner = (i < across - 1) & (j < along - 1)
    a = (i * along + j)[inner]
    b, c, d = a + along, a + along + 1, a + 1
    z = level.ravel()
    steep = np.abs(z[a] - z[c]) > np.abs(z[b] - z[d])
    one = np.where(steep[:, None], np.stack([a, b, d], 1), np.stack([a, b, c], 1))
    two = np.where(steep[:, None], np.stack([b, c, d], 1), np.stack([a, c, d], 1))
    return Surface.single(points, np.concatenate([one, two]))


def _cells(bounds: FloatArray, inside: Inside, patch: int) -> Manifold:
    low, high = bounds
    bottom = low[2] if inside.bottom > 0.0 else low[2] - _OPEN
    if inside.build is MouldBuild.SHELL:
        return block(np.array([low[0], low[1], bottom]), high, patch)
    middle = 0.5 * (low + high)[:2]
    half = 0.5 * (inside.rib_spacing - inside.rib_thickness)
    centres = []
    for axis in (0, 1):
        count = math.ceil((high[axis] - low[axis]) / inside.rib_spacing)
        place = (np.arange(count) - 0.5 * (count - 1)) * inside.rib_spacing
        centres.append(middle[axis] + place)
    return Manifold.compose(
        [
            block(
                np.array([x - half, y - half, bottom]),
                np.array([x + half, y + half, high[2]]),
                patch,
            )
            for x in centres[0]
            for y in centres[1]
        ]
    )


def _carried_on(level: FloatArray) -> FloatArray:
    """Return heights with those of the nearest known place where there are none."""
    _, place = distance_transform_edt(np.isnan(level), return_indices=True)
    return np.asarray(level[tuple(place)], dtype=np.float64)


def _column(plan: shapely.Geometry, bounds: FloatArray, patch: int) -> Manifold:
    """Return the upright column over a plan area, from below the base to above the mould."""
    pieces = []
    for piece in getattr(plan, "geoms", [plan]):
        if piece.is_empty:
            continue
        rings = [np.array(ring.coords)[:-1] for ring in (piece.exterior, *piece.interiors)]
        rings = [ring[:: 1 if shapely.is_ccw(shapely.LinearRing(ring)) else -1] for ring in rings]
        rings = [rings[0], *(ring[::-1] for ring in rings[1:])]
        flat = np.concatenate(rings)
        facets = np.asarray(triangulate(rings)).astype(np.int64)
        lid = Surface.single(np.column_stack([flat, np.full(len(flat), bounds[1, 2])]), facets)
        column = close_down(lid, float(bounds[0, 2]) - 2.0 * _BELOW, 0, 0)
        pieces.append(to_manifold(column, "the hollow", patch))
    return Manifold.compose(pieces)


def _trimmed(
    solid: Manifold, outer: Surface, floor: float, inside: Inside, patch: int
) -> tuple[Manifold, float]:
    """Return the hollow without crumbs, and its least wall."""
    roomy = (_CRUMB * inside.wall) ** 3
    solid = Manifold.compose([part for part in solid.decompose() if part.volume() > roomy])
    if solid.is_empty():
        return solid, 0.0
    surface = from_manifold(solid, ("",) * (patch + 1))
    middle = 0.5 * surface.vertices[surface.edges.ends].sum(axis=1)
    points = np.concatenate([surface.vertices, surface.centroids, middle])
    points = points[points[:, 2] > floor]
    return solid, float(_gaps(points, outer, 2.0 * inside.wall).min())


def _gaps(points: FloatArray, outer: Surface, limit: float) -> FloatArray:
    """Return the distance of points to a surface, those beyond a limit as the limit: (k,) mm."""
    low, high = outer.corners.min(axis=1) - limit, outer.corners.max(axis=1) + limit
    tree = STRtree(shapely.box(low[:, 0], low[:, 1], high[:, 0], high[:, 1]))
    gaps = np.full(len(points), limit)
    for first in range(0, len(points), _CHUNK):
        some = points[first : first + _CHUNK]
        place, facet = tree.query(shapely.points(some[:, :2]))
        level = some[place, 2]
        near = (level >= low[facet, 2]) & (level <= high[facet, 2])
        place, facet = place[near], facet[near]
        away = triangle_distances(some[place], outer.corners[facet])
        np.minimum.at(gaps, first + place, away)
    return gaps


def _vented(solid: Manifold, floor: float, inside: Inside, patch: int) -> Manifold:
    """Return the hollow with one bore through the bottom from each of its pieces."""
    pieces = [solid]
    for piece in solid.decompose():
        plan = _plan(piece, floor + inside.bottom + 0.01)
        if plan.is_empty:
            continue
        spot = polylabel(max(getattr(plan, "geoms", [plan]), key=lambda part: part.area), 0.5)
        wide = 2.0 * float(shapely.distance(spot, plan.boundary))
        low, high = floor - _BELOW, floor + inside.bottom + 0.5
        pieces.append(bore(np.array([spot.x, spot.y]), min(_VENT, wide), low, high, patch))
    return Manifold.batch_boolean(pieces, OpType.Add)


def _plan(solid: Manifold, height: float) -> shapely.Geometry:
    rings = [shapely.Polygon(ring) for ring in solid.slice(height).to_polygons() if len(ring) > 2]
    plan: shapely.Geometry = shapely.Polygon()
    for ring in rings:
        plan = plan.symmetric_difference(ring.buffer(0.0))
    return plan


def _widest(solid: Manifold, height: float) -> float:
    plan = _plan(solid, height)
    if plan.is_empty:
        return 0.0
    piece = max(getattr(plan, "geoms", [plan]), key=lambda part: part.area)
    return 2.0 * float(shapely.distance(polylabel(piece, 0.5), piece.boundary))
