"""Beyond the trim line: pry pockets, air port, bolt holes, and the inscription in a side."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import shapely
from manifold3d import Manifold, OpType

from laywright.arrays import FloatArray, IntArray
from laywright.errors import GeometryError
from laywright.mould.body.run_off import Rays, at_distance, rays_along, travelled
from laywright.mould.body.settings import Edge
from laywright.mould.marks import strokes
from laywright.mould.solid import bore, placed_block
from laywright.wording import three_figures

__all__ = ["bolt_places", "edge_cuts", "inscription"]

_POCKET = (20.0, 3.0)
_CLEAR = 1.0
_ABOVE = 30.0
_SHIFT = 3.0
_PEN, _DEEP, _SPACE = 0.8, 0.6, 5.5
_LEAST, _MOST = 3.0, 8.0


def edge_cuts(
    rays: Rays, lines: FloatArray, edge: Edge, floor: float, patches: dict[str, int]
) -> list[Manifold]:
    """Return what is cut out beyond the trim line.

    Parameters
    ----------
    rays : Rays
        Rays that leave the trim edge.
    lines : (rows, k, 3) float, mm
        Points along them to the mould's edge, the first row on the trim edge.
    edge : Edge
        What is wanted.
    floor : float, mm
        Height of the base.
    patches : dict of str to int
        Numbers of the patches ``"pry pocket"``, ``"air port"`` and ``"bolt hole"``.
    """
    cuts = [
        _pocket(rays, lines, ray, edge, patches["pry pocket"])
        for ray in _spread(lines[-1], edge.pry_pockets)
    ]
    top = float(lines[..., 2].max()) + _ABOVE
    if edge.air_port > 0.0:
        x, y = _port(rays, lines, edge)
        centre = np.array([x, y])
        cuts.append(bore(centre, edge.air_port, floor - 1.0, top, patches["air port"]))
    if edge.bolt_holes > 0.0:
        for centre in bolt_places(lines, edge):
            cuts.append(bore(centre, edge.bolt_holes, floor - 1.0, top, patches["bolt hole"]))
    return cuts


def bolt_places(lines: FloatArray, edge: Edge) -> FloatArray:
    """Return the plan places of the bolt holes: (4, 2) float, mm.

    They stand in the middle of the flange near its corners; the last is shifted along it by
    three diameters, so that nothing fits when it is turned round.
    """
    gone = travelled(lines)
    middle = at_distance(lines, gone, gone[-1] - 0.5 * edge.flange)[:, :2]
    centre = 0.5 * (middle.min(axis=0) + middle.max(axis=0))
    away = (middle - centre) / np.maximum(np.ptp(middle, axis=0), 1e-9)
    corners = np.array([[1, 1], [-1, 1], [-1, -1], [1, -1]])
    found = [int(np.argmax(away @ corner)) for corner in corners]
    after = np.linalg.norm(np.diff(middle, axis=0, append=middle[:1]), axis=1)
    along = np.cumsum(np.roll(after, -found[-1]))
    found[-1] = (found[-1] + 1 + int(np.searchsorted(along, _SHIFT * edge.bolt_holes))) % len(after)
    return np.asarray(middle[found], dtype=np.float64)


def _spread(tips: FloatArray, number: int) -> IntArray:
    """Return rays spread evenly along the mould's edge: (number,) int."""
    gone = np.cumsum(np.linalg.norm(np.diff(tips, axis=0, append=tips[:1]), axis=1))
    share = (np.arange(number) + 0.5) / max(number, 1)
    return np.asarray(np.searchsorted(gone, share * gone[-1]) % len(tips), dtype=np.int64)


def _pocket(rays: Rays, lines: FloatArray, ray: int, edge: Edge, patch: int) -> Manifold:
    """Return a flat pocket from the edge of the cloth, or the last straight, outwards."""
    wide, deep = _POCKET
    gone = travelled(lines)[:, ray]
    start = max(edge.cloth_margin + _CLEAR, float(gone[-2]))
    if start > gone[-1] - 3.0:
        raise GeometryError(
            "the pry pockets",
            f"{three_figures(max(gone[-1] - edge.cloth_margin, 0.0))} mm beyond the edge of "
            "the cloth",
            "at least 4 mm",
            "widen the run-off or the flange",
        )
    there = rays_along(rays, lines, float(gone[-1]))
    out, normal = there.along[ray], there.normal[ray]
    axes = np.stack([out, np.cross(normal, out), normal])
    low, high = np.array([start - gone[-1], -wide / 2, -deep]), np.array([5.0, wide / 2, deep])
    return placed_block(there.start[ray], axes, low, high, patch)


def _port(rays: Rays, lines: FloatArray, edge: Edge) -> tuple[float, float]:
    """Return the plan place of the air port: in the scrap, where it is clearest of the part."""
    place = 0.5 * edge.cloth_margin if edge.cloth_margin else 6.0
    there = rays_along(rays, lines, place).start
    trim = shapely.LinearRing(lines[0, :, :2])
    clear = shapely.distance(trim, shapely.points(there[:, :2]))
    best = int(np.argmax(clear))
    if clear[best] < edge.air_port / 2.0 + 1.5:
        raise GeometryError(
            "the air port",
            f"{three_figures(edge.air_port)} mm where the scrap reaches "
            f"{three_figures(2.0 * clear[best])} mm beyond "
            "the trim line, seen along the pull",
            f"at least {three_figures(edge.air_port + 3.0)} mm",
            "widen the cloth margin, narrow the port or leave it out",
        )
    x, y, _ = there[best].tolist()
    return x, y


def inscription(
    text: str, outline: FloatArray, floor: float, base: float, patch: int
) -> Manifold | None:
    """Return the solid that engraves a text into the straightest stretch of the sides.

    Parameters
    ----------
    text : str
        Letters, figures, "-" and blanks.
    outline : (k, 3) float, mm
        The mould's outer edge, counter-clockwise in the plan view.
    floor, base : float, mm
        Height of the base, and of the lowest point of the edge above it.
    patch : int
        Patch of the engraved faces.

    Returns
    -------
    Manifold or None
        None if the sides leave no room for letters 3 mm high.
    """
    high = min(_MOST, base - 3.0)
    ring = np.concatenate([outline, outline[:1]])[:, :2]
    gone = np.concatenate([[0.0], np.cumsum(np.linalg.norm(np.diff(ring, axis=0), axis=1))])
    size = high / 6.0
    length = _SPACE * size * len(text)
    if high < _LEAST or length > 0.5 * gone[-1]:
        return None

    def at(place: FloatArray) -> FloatArray:
        place = np.mod(place, gone[-1])
        return np.stack([np.interp(place, gone, ring[:, axis]) for axis in (0, 1)], axis=1)

    chord = np.linalg.norm(at(gone[:-1] + length) - at(gone[:-1]), axis=1)
    start = float(gone[int(np.argmax(chord))])
    bars = []
    for number, letter in enumerate(text):
        if letter == " ":
            continue
        left = start + _SPACE * size * number
        one, two = at(np.array([left, left + 4.0 * size]))
        along = np.array([*(two - one) / np.linalg.norm(two - one), 0.0])
        up = np.array([0.0, 0.0, 1.0])
        origin = np.array([*one, floor + 1.5])
        for line in strokes(letter):
            for first, second in pairwise(line * size):
                bars.append(_stroke(first, second, origin, along, up, patch))
    return Manifold.batch_boolean(bars, OpType.Add)


def _stroke(
    first: FloatArray,
    second: FloatArray,
    origin: FloatArray,
    along: FloatArray,
    up: FloatArray,
    patch: int,
) -> Manifold:
    way = (second - first) / np.linalg.norm(second - first)
    run = way[0] * along + way[1] * up
    outward = np.cross(along, up)
    axes = np.stack([run, np.cross(outward, run), outward])
    half = 0.5 * _PEN
    reach = float(np.linalg.norm(second - first)) + half
    place = origin + first[0] * along + first[1] * up
    low, high = np.array([-half, -half, -_DEEP]), np.array([reach, half, 1.0])
    return placed_block(place, axes, low, high, patch)
