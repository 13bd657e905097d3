"""Surfaces with known closed forms, for tests and benchmarks."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import shapely
from scipy.spatial import Delaunay

from laywright.surface.triangles import Surface

__all__ = [
    "box",
    "cap",
    "cone_patch",
    "cylinder_patch",
    "frustum",
    "graph",
    "hatch",
    "lobed",
    "mushroom",
    "plate",
    "revolved",
    "sphere",
    "torus",
    "tray",
]


def _grid(across: int, along: int, wrap_across: bool = False, wrap_along: bool = False):
    """Triangles of a grid of points numbered ``i * along + j``."""
    i = np.arange(across if wrap_across else across - 1)
    j = np.arange(along if wrap_along else along - 1)
    i, j = (a.ravel() for a in np.meshgrid(i, j, indexing="ij"))
    i1, j1 = (i + 1) % across, (j + 1) % along
    a, b, c, d = i * along + j, i1 * along + j, i1 * along + j1, i * along + j1
    flip = ((i + j) % 2 == 0)[:, None]
    first = np.where(flip, np.stack([a, b, c], 1), np.stack([a, b, d], 1))
    second = np.where(flip, np.stack([a, c, d], 1), np.stack([b, c, d], 1))
    return np.concatenate([first, second])


def graph(
    height: Callable[[np.ndarray, np.ndarray], np.ndarray],
    x: tuple[float, float],
    y: tuple[float, float],
    cells: tuple[int, int] = (40, 40),
) -> Surface:
    """Surface ``z = height(x, y)`` over a rectangle, mm, normals upwards."""
    xs, ys = np.linspace(*x, cells[0] + 1), np.linspace(*y, cells[1] + 1)
    gx, gy = (a.ravel() for a in np.meshgrid(xs, ys, indexing="ij"))
    points = np.stack([gx, gy, height(gx, gy) + 0.0 * gx], axis=1)
    return Surface.single(points, _grid(cells[0] + 1, cells[1] + 1))


def cap(radius: float, angle: float, rings: int = 24) -> Surface:
    """Sphere cap about +z of polar angle `angle` (radians), centre at the origin."""
    points, triangles = [np.zeros((1, 2))], []
    start, inner = 1, np.zeros(1, dtype=int)
    for ring in range(1, rings + 1):
        count = 6 * ring
        around = 2.0 * np.pi * np.arange(count) / count
        points.append(ring / rings * np.stack([np.cos(around), np.sin(around)], axis=1))
        outer = start + np.arange(count)
        a = b = 0
        while a < len(inner) * (ring > 1) or b < count:
            pa = (a + 1) / max(len(inner), 1) if ring > 1 else 2.0
            pb = (b + 1) / count
            if pb <= pa + 1e-12 and b < count:
                triangles.append([inner[a % len(inner)], outer[b], outer[(b + 1) % count]])
                b += 1
            else:
                triangles.append(
                    [inner[a % len(inner)], outer[b % count], inner[(a + 1) % len(inner)]]
                )
                a += 1
        start, inner = start + count, outer
    flat = np.concatenate(points)
    polar = angle * np.linalg.norm(flat, axis=1)
    turn = np.arctan2(flat[:, 1], flat[:, 0])
    return Surface.single(
        radius
        * np.stack([np.sin(polar) * np.cos(turn), np.sin(polar) * np.sin(turn), np.cos(polar)], 1),
        np.array(triangles),
    )


def cylinder_patch(radius: float, turn: float, length: float, cells=(40, 40)) -> Surface:
    """Part of a cylinder about the y axis, `turn` radians wide, normals outwards."""
    a = np.linspace(-turn / 2, turn / 2, cells[0] + 1)
    y = np.linspace(-length / 2, length / 2, cells[1] + 1)
    ga, gy = (v.ravel() for v in np.meshgrid(a, y, indexing="ij"))
    points = np.stack([radius * np.sin(ga), gy, radius * np.cos(ga)], axis=1)
    return Surface.single(points, _grid(cells[0] + 1, cells[1] + 1))


def cone_patch(half_angle: float, near: float, far: float, turn: float, cells=(40, 40)) -> Surface:
    """Part of a cone with its apex at the origin and axis -z, slant `near` to `far`, mm."""
    a = np.linspace(-turn / 2, turn / 2, cells[0] + 1)
    s = np.linspace(near, far, cells[1] + 1)
    ga, gs = (v.ravel() for v in np.meshgrid(a, s, indexing="ij"))
    r = gs * np.sin(half_angle)
    points = np.stack([r * np.sin(ga), -r * np.cos(ga), -gs * np.cos(half_angle)], axis=1)
    return Surface.single(points, _grid(cells[0] + 1, cells[1] + 1))


def revolved(profile: np.ndarray, around: int = 128) -> Surface:
    """Closed solid of revolution about z from an (k, 2) profile of (r, z), ends on the axis.

    The profile runs from the lower end on the axis to the upper end, material inside.
    """
    turn = 2.0 * np.pi * np.arange(around) / around
    inner = profile[1:-1]
    points = np.concatenate(
        [
            [[0.0, 0.0, profile[0, 1]]],
            *[
                np.stack([r * np.cos(turn), r * np.sin(turn), np.full(around, z)], axis=1)
                for r, z in inner
            ],
            [[0.0, 0.0, profile[-1, 1]]],
        ]
    )
    sides = _grid(len(inner), around, wrap_along=True) + 1
    here = np.arange(around)
    after = (here + 1) % around
    low = np.stack([np.zeros(around, dtype=int), 1 + after, 1 + here], axis=1)
    top = 1 + (len(inner) - 1) * around
    high = np.stack([np.full(around, len(points) - 1), top + here, top + after], axis=1)
    return Surface.single(points, np.concatenate([sides[:, ::-1], low, high]))


def sphere(radius: float, rings: int = 90) -> Surface:
    """Closed sphere about the origin."""
    polar = np.linspace(np.pi, 0.0, rings + 1)
    return revolved(radius * np.stack([np.sin(polar), np.cos(polar)], axis=1), 2 * rings)


def frustum(r_base: float, r_top: float, height: float, around: int = 720) -> Surface:
    """Closed frustum on z = 0."""
    return revolved(np.array([[0, 0], [r_base, 0], [r_top, height], [0, height]], float), around)


def mushroom(around: int = 512) -> Surface:
    """Stem r 12, h 40 mm on z = 0 under a cap R 30, 6 mm thick."""
    profile = [[0, 0], [12, 0], [12, 40], [30, 40], [30, 46], [0, 46]]
    return revolved(np.array(profile, float), around)


def torus(ring: float, tube: float, around: int = 120, section: int = 60) -> Surface:
    """Closed torus about z."""
    a = 2.0 * np.pi * np.arange(around) / around
    b = 2.0 * np.pi * np.arange(section) / section
    ga, gb = (v.ravel() for v in np.meshgrid(a, b, indexing="ij"))
    r = ring + tube * np.cos(gb)
    points = np.stack([r * np.cos(ga), r * np.sin(ga), tube * np.sin(gb)], axis=1)
    return Surface.single(points, _grid(around, section, True, True))


def box(x: float, y: float, z: float) -> Surface:
    """Closed box, one corner at the origin, one patch per side."""
    points = np.array([[i, j, k] for i in (0, x) for j in (0, y) for k in (0, z)], float)
    quads = [[0, 1, 3, 2], [4, 6, 7, 5], [0, 4, 5, 1], [2, 3, 7, 6], [0, 2, 6, 4], [1, 5, 7, 3]]
    triangles = [t for a, b, c, d in quads for t in ([a, b, c], [a, c, d])]
    names = ("left", "right", "front", "back", "bottom", "top")
    return Surface(points, np.array(triangles), np.repeat(np.arange(6), 2), names)


def hatch(
    length: float = 420.0,
    width: float = 300.0,
    corner: float = 40.0,
    spacing: float = 8.0,
    rim_depth: float = 14.0,
    rim_angle: float = np.radians(40.0),
    fillet: float = 20.0,
    radii: tuple[float, float] = (900.0, 600.0),
) -> Surface:
    """Crowned plate with a turned-down rim and rounded corners, centre top at z = 0.

    Invented demo part.  The crown is ``-x^2/(2 r_x) - y^2/(2 r_y)``; within the rim the plate
    bends down by a fillet and then a straight slope.  Patches: Crown, Fillet, Rim.
    """
    across = fillet * np.sin(rim_angle)
    slope = (rim_depth - fillet * (1.0 - np.cos(rim_angle))) / np.tan(rim_angle)
    inset = slope + across
    half = np.array([length / 2, width / 2])

    def height(points: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        beyond = np.abs(points) - half + corner
        inside = np.minimum(beyond.max(axis=1), 0.0)
        t = corner - np.linalg.norm(np.maximum(beyond, 0.0), axis=1) - inside
        drop = np.where(
            t < slope,
            rim_depth - t * np.tan(rim_angle),
            fillet - np.sqrt(fillet**2 - np.clip(inset - t, 0.0, across) ** 2),
        )
        return t, -(points**2 / (2.0 * np.array(radii))).sum(axis=1) - np.where(
            t < inset, drop, 0.0
        )

    turns = max(3, round(corner * np.pi / 2 / (0.6 * spacing)))
    counts = [max(1, round(2 * (h - corner) / spacing)) for h in half]
    outline, outward = [], []
    for quarter in range(4):
        turn = quarter * np.pi / 2 + np.pi / 2 * np.arange(turns + 1) / turns
        sign = np.sign([np.cos(turn[:2].mean()), np.sin(turn[:2].mean())])
        centre = sign * (half - corner)
        normal = np.stack([np.cos(turn), np.sin(turn)], axis=1)
        outline.append(centre + corner * normal)
        outward.append(normal)
        run = counts[quarter % 2]
        along = np.array([-np.sin(turn[-1]), np.cos(turn[-1])])
        reach = 2 * (half - corner) @ np.abs(along)
        steps = np.arange(1, run) / run
        outline.append(outline[-1][-1] + reach * steps[:, None] * along)
        outward.append(np.tile(normal[-1], (run - 1, 1)))
    edge, normal = np.concatenate(outline), np.concatenate(outward)
    insets = np.concatenate(
        [
            np.linspace(0.0, slope, max(2, round(slope / spacing) + 1)),
            slope + across * np.linspace(0.0, 1.0, max(4, round(across / (0.4 * spacing)) + 1))[1:],
        ]
    )
    rings = [edge - t * normal for t in insets]
    n = [int((2 * h - 2 * inset) // spacing) for h in half]
    grid = np.stack(
        np.meshgrid(*[(np.arange(k + 1) - k / 2) * spacing for k in n], indexing="ij"), axis=-1
    ).reshape(-1, 2)
    grid = grid[height(grid)[0] > inset + 0.6 * spacing]
    flat = np.concatenate([*rings, grid])
    triangles = Delaunay(flat).simplices.astype(np.int64)
    a, b, c = flat[triangles].transpose(1, 0, 2)
    area = (b - a)[:, 0] * (c - a)[:, 1] - (b - a)[:, 1] * (c - a)[:, 0]
    triangles[area < 0] = triangles[area < 0][:, ::-1]
    triangles = triangles[np.abs(area) > 1e-6]
    t, z = height(flat)
    middle = t[triangles].mean(axis=1)
    patches = np.where(middle > inset, 0, np.where(middle > slope, 1, 2))
    points = np.column_stack([flat, z])
    return Surface(points, triangles, patches, ("Crown", "Fillet", "Rim"))


def plate(
    outline: np.ndarray,
    height: Callable[[np.ndarray, np.ndarray], np.ndarray],
    spacing: float = 6.0,
    holes: tuple[np.ndarray, ...] = (),
) -> Surface:
    """Surface ``z = height(x, y)`` over a plan outline (k, 2) with holes, normals upwards."""
    shape = shapely.Polygon(outline, holes)
    edge = np.concatenate(
        [
            np.array(shapely.segmentize(ring, spacing).coords)[:-1]
            for ring in (shape.exterior, *shape.interiors)
        ]
    )
    x0, y0, x1, y1 = shape.bounds
    grid = np.stack(
        np.meshgrid(np.arange(x0, x1, spacing), np.arange(y0, y1, spacing), indexing="ij"), axis=-1
    ).reshape(-1, 2)
    grid = grid[shapely.contains_xy(shape.buffer(-0.6 * spacing), grid)]
    flat = np.concatenate([edge, grid])
    triangles = Delaunay(flat).simplices.astype(np.int64)
    a, b, c = flat[triangles].transpose(1, 0, 2)
    area = (b - a)[:, 0] * (c - a)[:, 1] - (b - a)[:, 1] * (c - a)[:, 0]
    triangles[area < 0] = triangles[area < 0][:, ::-1]
    inside = shapely.contains_xy(shape, flat[triangles].mean(axis=1)) & (np.abs(area) > 1e-6)
    triangles = triangles[inside]
    assert np.isclose(0.5 * np.abs(area[inside]).sum(), shape.area, rtol=1e-9)
    points = np.column_stack([flat, height(flat[:, 0], flat[:, 1]) + 0.0 * flat[:, 0]])
    used, index = np.unique(triangles, return_inverse=True)
    return Surface.single(points[used], index.reshape(-1, 3))


def dish(profile: np.ndarray, around: int = 96) -> Surface:
    """Open surface of revolution from an (k, 2) profile of (r, z) that starts on the axis.

    Normals point upwards where the profile runs outwards.
    """
    turn = 2.0 * np.pi * np.arange(around) / around
    rings = [
        np.stack([r * np.cos(turn), r * np.sin(turn), np.full(around, z)], axis=1)
        for r, z in profile[1:]
    ]
    points = np.concatenate([[[0.0, 0.0, profile[0, 1]]], *rings])
    here = np.arange(around)
    after = (here + 1) % around
    fan = np.stack([np.zeros(around, dtype=int), 1 + here, 1 + after], axis=1)
    sides = _grid(len(rings), around, wrap_along=True) + 1
    return Surface.single(points, np.concatenate([fan, sides]))


def tray(
    lip: float = 4.0,
    half: tuple[float, float] = (98.0, 58.0),
    corner: float = 40.0,
    turns: int = 10,
    spacing: float = 9.0,
) -> Surface:
    """Outside of a tray open at the top, its wall drawn inward by `lip` mm below the rim.

    Invented demo part.  Normals out of the part; floor on z = 0, rim at z = 44.  Patches:
    Floor, Bend, Wall, Lip, Rim.
    """
    draft, bend, knee, top = np.radians(4.0), 10.0, 32.0, 44.0
    arc = np.linspace(0.0, np.pi / 2 - draft, 6)
    rows = [(0, bend * np.sin(a) - bend, bend - bend * np.cos(a)) for a in arc]
    out, low = rows[-1][1:]
    patch = [1] * 5
    for z in np.linspace(low, knee, 4)[1:]:
        rows.append((0, out + (z - low) * np.tan(draft), z))
        patch.append(2)
    wide = rows[-1][1]
    for share in (0.5, 1.0):
        rows.append((0, wide - lip * share, knee + share * (top - knee)))
        patch.append(3)
    for share in (0.5, 1.0):
        rows.append((0, wide - lip + 12.0 * share, top))
        patch.append(4)
    outline, outward = [], []
    for quarter in range(4):
        turn = quarter * np.pi / 2 + np.pi / 2 * np.arange(turns + 1) / turns
        normal = np.stack([np.cos(turn), np.sin(turn)], axis=1)
        sign = np.sign(normal[turns // 2])
        centre = sign * (np.array(half) - corner)
        outline.append(centre + corner * normal)
        outward.append(normal)
        reach = 2.0 * (half[0] if quarter % 2 == 0 else half[1]) - 2.0 * corner
        steps = np.arange(1, max(2, round(reach / spacing))) / max(2, round(reach / spacing))
        along = np.array([-np.sin(turn[-1]), np.cos(turn[-1])])
        outline.append(outline[-1][-1] + reach * steps[:, None] * along)
        outward.append(np.tile(normal[-1], (len(steps), 1)))
    edge, normal = np.concatenate(outline), np.concatenate(outward)
    around = len(edge)
    rings = [np.column_stack([edge + x * normal, np.full(around, z)]) for _, x, z in rows]
    shares = (0.25, 0.5, 0.75)
    inner = [np.column_stack([share * rings[0][:, :2], np.zeros(around)]) for share in shares]
    points = np.concatenate([[[0.0, 0.0, 0.0]], *inner, *rings])
    here = np.arange(around)
    fan = np.stack([np.zeros(around, int), 1 + here, 1 + (here + 1) % around], axis=1)
    sides = _grid(len(inner) + len(rings), around, wrap_along=True) + 1
    strips = np.repeat([0] * len(inner) + patch, around)
    patches = np.concatenate([np.zeros(around, int), strips, strips])
    names = ("Floor", "Bend", "Wall", "Lip", "Rim")
    return Surface(points, np.concatenate([fan, sides])[:, ::-1], patches, names)


def lobed(
    lobes: int, waves: int = 1, depth: float = 0.35, around: int = 96, rows: int = 10
) -> Surface:
    """Outside of a cup with round lobes, open at the top, 60 mm high.

    Invented demo part.  Normals out of the part.  The hollows between the lobes face as many
    directions, and its waves (half ones, 1 for a barrel) keep it from leaving upwards.
    Patches: Floor, Wall.
    """
    turn = 2.0 * np.pi * (np.arange(around) + 0.5) / around
    plan = 40.0 * (1.0 + depth * np.cos(lobes * turn))
    heights = np.linspace(0.0, 60.0, rows + 1)
    rings = [
        np.column_stack(
            [
                share * plan * np.cos(turn),
                share * plan * np.sin(turn),
                np.full(around, z),
            ]
        )
        for share, z in [(0.35, 0.0), (0.7, 0.0)]
        + [(1.0 + 0.18 / waves * np.sin(np.pi * waves * z / 60.0), z) for z in heights]
    ]
    points = np.concatenate([[[0.0, 0.0, 0.0]], *rings])
    here = np.arange(around)
    fan = np.stack([np.zeros(around, int), 1 + here, 1 + (here + 1) % around], axis=1)
    sides = _grid(len(rings), around, wrap_along=True) + 1
    strips = np.repeat([0, 0] + [1] * rows, around)
    patches = np.concatenate([np.zeros(around, int), strips, strips])
    return Surface(points, np.concatenate([fan, sides])[:, ::-1], patches, ("Floor", "Wall"))
