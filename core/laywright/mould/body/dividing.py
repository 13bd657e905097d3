"""One body parted by sheets into the pieces of a mould."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import combinations

import numpy as np
import shapely
from manifold3d import Manifold, OpType

from laywright.arrays import Array, FloatArray, Vector, unit_vector
from laywright.errors import GeometryError
from laywright.mould.body.fastening import other_placements
from laywright.mould.body.flange import Sides, fastened, plan_view
from laywright.mould.body.parted_body import cloth_groove, parted_body, trim_groove
from laywright.mould.body.parting_sheet import lay_sheet
from laywright.mould.body.piece_settings import PieceSettings
from laywright.mould.frame import upright
from laywright.mould.release.parting import Parting
from laywright.mould.release.parting_lines import chains
from laywright.mould.solid import from_manifold, to_manifold
from laywright.surface.cap import smallest_cap
from laywright.surface.triangles import Surface
from laywright.wording import three_figures

__all__ = ["OWN_PATCHES", "Dividing", "Group"]

OWN_PATCHES = (
    "run-off",
    "filled hole",
    "sides",
    "base",
    "flange",
    "bolt hole",
    "head bore",
    "registration",
    "scribe line",
    "hollow",
    "cloth line",
)
"""Patches of a piece that are not of the working surface, in their order after those."""

Group = tuple[int, ...]

_CRUMB = 1e-7
_CRUMB_SHARE = 0.01
_LOOSE = 1.0
_NUDGE = 1e-6
_SPECK = 1e-6
_SLIVER = 0.02
_FLAT_FROM = 0.75
_LEAVES = 0.1
_MOVED = 0.01
_SLIMMEST = math.radians(20.0)
_WIDEST = math.radians(60.0)


@dataclass(frozen=True, eq=False)
class _Cut:
    """A body parted by a sheet, in the sheet's frame."""

    ones: Group
    others: Group
    sides: Sides
    turn: FloatArray
    moved_area: float


class Dividing:
    """What is known while a body is parted.

    Attributes
    ----------
    names : tuple of str
        Patches while the body is parted: those of the working surface once for each piece,
        then `OWN_PATCHES`.
    count : int
        Number of patches of the working surface.
    moved_area : float, mm^2
        Working area that came to another piece than the parting gave it to.
    bolts, cones : list of (3,) float, mm
        Centres of bolt holes and cones.
    other_fits : int
        Placements of cones, other than the right ones, in which they fit too.
    remarks : list of str
        What the maker should know.
    """

    def __init__(self, parting: Parting, mouth: Vector, settings: PieceSettings) -> None:
        self._parting, self._mouth, self._settings = parting, mouth, settings
        self._hollow: list[Manifold] = []
        self.count = len(parting.surface.patch_names)
        self.names = (*(parting.surface.patch_names * len(parting.pulls)), *OWN_PATCHES)
        self.moved_area = 0.0
        self.bolts: list[FloatArray] = []
        self.cones: list[FloatArray] = []
        self.other_fits = 0
        self.remarks: list[str] = []

    def number(self, name: str) -> int:
        """Return the number of one of `OWN_PATCHES`."""
        return len(self.names) - len(OWN_PATCHES) + OWN_PATCHES.index(name)

    def body(self, scribe: tuple[float, float, float]) -> Manifold:
        """Return the body round the whole working surface, in the part's coordinates.

        Parameters
        ----------
        scribe : (depth, width, margin), mm
            Of the scribed trim line, and from it to the line at the edge of the cloth; depth 0
            leaves both out, margin 0 the second.
        """
        turn, surface = upright(self._mouth), self._parting.surface
        by_piece = surface.patches + self.count * self._parting.piece
        flat = Surface(surface.vertices @ turn.T, surface.triangles, by_piece, self.names)
        run_off, filled, sides, base = (self.number(name) for name in OWN_PATCHES[:4])
        body = parted_body(flat, self._settings.flange, (run_off, filled, sides, base))
        solid = to_manifold(body.moved(body.vertices @ turn), "the mould's body")
        parts = (solid.hull() - solid).decompose()
        largest = max((part.volume() for part in parts), default=0.0)
        self._hollow = [part for part in parts if part.volume() > _SLIVER * largest]
        for line in self._scribed(flat, *scribe):
            solid = _whole(solid - line.transform(np.column_stack([turn.T, np.zeros(3)])))
        return solid

    def _scribed(self, flat: Surface, depth: float, width: float, margin: float) -> list[Manifold]:
        """Return what scribes the trim line and the edge of the cloth, in the mould's frame."""
        if depth <= 0.0:
            return []
        line = trim_groove(flat, depth, width, self.number("scribe line"))
        if line is None:
            self.remarks.append(
                "The trim line is not scribed: the working surface comes back too flat below the "
                "trim edge."
            )
            return []
        if margin <= 0.0:
            return [line]
        ring, mark = self._settings.flange, self.number("cloth line")
        edge = cloth_groove(flat, margin, ring, depth, width, mark)
        if edge is None:
            self.remarks.append(
                "The line at the edge of the cloth is left out: the ring round the trim line or "
                f"its outline has no room {three_figures(margin)} mm away."
            )
            return [line]
        return [line, edge]

    def divided(self, body: Manifold, group: Group) -> list[tuple[Group, Manifold]]:
        """Return the body of several pieces parted by one sheet.

        Of all ways to part the group and of all axes the first whose sheet leaves every facet
        at its piece, or else the one that gives least of the working area to another piece.
        """
        problem: GeometryError | None = None
        best: _Cut | None = None
        for ones, others in self._ways(group):
            for axis in self._axes(ones, others):
                if best is not None and best.moved_area == 0.0:
                    break
                try:
                    cut = self._cut(body, ones, others, axis)
                except GeometryError as found:
                    problem = problem or found
                    continue
                if best is None or cut.moved_area < best.moved_area:
                    best = cut
        if best is not None and best.moved_area <= _MOVED * self._parting.surface.area:
            self.moved_area += best.moved_area
            low, high = self._fastened(best)
            return [(best.ones, low), (best.others, high)]
        raise problem or GeometryError(
            f"the flange of {_named(group)}",
            "no axis along which they can be divided"
            if best is None
            else f"a sheet that cuts {three_figures(best.moved_area)} mm^2 into the working areas",
            "a sheet that meets them in the parting lines only",
            "allow one piece more or fewer, turn the pull, or add draft where they meet",
        )

    def _ways(self, group: Group) -> list[tuple[Group, Group]]:
        """Return all ways to part a group in two; first those whose halves hang together.

        Pieces that meet in no line have no sheet between them.
        """
        pairs = {line.pieces for line in self._parting.lines}

        def loose(way: tuple[Group, Group]) -> int:
            return sum(not _hangs_together(half, pairs) for half in way)

        return sorted(_halves(group), key=loose)

    def _axes(self, ones: Group, others: Group) -> list[Vector]:
        """Return axes for a sheet below which `ones` lie: they must leave it, and the others.

        First the axis across the parting lines, that makes the flattest sheet; then those
        along which the working areas below it look up and those above it down, most of their
        area or the worst of it.
        """
        pulls, surface = np.array(self._parting.pulls), self._parting.surface
        below, above = pulls[list(ones)], -pulls[list(others)]
        both = np.concatenate([below, above])
        own, rest = (np.isin(self._parting.piece, group) for group in (ones, others))
        facing = np.concatenate([surface.normals[own], -surface.normals[rest]])
        areas = np.concatenate([surface.areas[own], surface.areas[rest]])
        listed = [
            below.mean(axis=0) + above.mean(axis=0),
            areas @ facing,
            np.array(smallest_cap(facing).axis),
            *both,
        ]
        lines = _between(surface, own, rest)
        if lines:
            points = np.concatenate(lines)
            across = np.linalg.svd(points - points.mean(axis=0), full_matrices=False)[2][2]
            across = across if across @ listed[0] > 0.0 else -across
            if (both @ across).min() > _FLAT_FROM:
                listed.insert(0, across)
        units = [np.array(unit_vector(axis)) for axis in listed if np.linalg.norm(axis) > 1e-6]
        return [unit_vector(unit) for unit in units if (both @ unit).min() > _LEAVES]

    def _cut(self, body: Manifold, ones: Group, others: Group, axis: Vector) -> _Cut:
        turn = upright(axis)
        surface = self._parting.surface
        turned = surface.moved(surface.vertices @ turn.T)
        own, rest = np.isin(self._parting.piece, ones), np.isin(self._parting.piece, others)
        upright_body = body.transform(np.column_stack([turn, np.zeros(3)]))
        box = np.array(upright_body.bounding_box()).reshape(2, 3)
        bounds = box[:, :2] + np.array([[-5.0], [5.0]])
        where = f"the flange of {_named(ones)}"
        lines = _between(turned, own, rest)
        if not lines:
            raise GeometryError(
                where, "no line to the other pieces", "a parting line", "allow more pieces"
            )
        sheet = lay_sheet(lines, turned.part(own), turned.part(rest), bounds, where)
        under = sheet.below(float(min(box[0, 2], sheet.surface.bounds[0, 2])) - 5.0)
        mark = np.full(len(under.triangles), self.number("flange"))
        below = to_manifold(Surface(under.vertices, under.triangles, mark, self.names), where)
        low, high = upright_body.split(below)
        low, high = _without_crumbs(low, high, where)
        moved = self._area_of(low, others) + self._area_of(high, ones)
        trace = _SPECK * surface.area
        sides = Sides(low, high, below, sheet)
        return _Cut(ones, others, sides, turn, moved if moved > trace else 0.0)

    def _area_of(self, solid: Manifold, pieces: Group) -> float:
        """Return the working area on a solid that belongs to some pieces, mm^2."""
        made = from_manifold(solid, self.names)
        working = made.patches < self.number("run-off")
        return float(made.areas[working & np.isin(made.patches // self.count, pieces)].sum())

    def _fastened(self, cut: _Cut) -> tuple[Manifold, Manifold]:
        """Return both sides of a sheet, fastened, in the part's coordinates."""
        turn = cut.turn
        move = np.column_stack([turn, np.zeros(3)])
        views = [plan_view(part.transform(move)) for part in self._hollow]
        hollow = shapely.union_all(views).buffer(0.01)
        low, high, plan = fastened(cut.sides, hollow, self._lean(cut), self._settings, self.names)
        for places, found, what in (
            (plan.bolts, self.bolts, "bolts"),
            (plan.cones, self.cones, "registration cones"),
        ):
            heights = cut.sides.sheet.height(places)[:, :1]
            found += list(np.concatenate([places, heights], axis=1) @ turn)
            if len(places) == 0:
                self.remarks.append(
                    f"The flange of {_named(cut.ones)} has no room for {what}: make it wider."
                )
        if len(plan.cones):
            self.other_fits += other_placements(plan.cones, 2.0 * self._settings.clearance + 0.5)
        back = np.column_stack([turn.T, np.zeros(3)])
        return _whole(low).transform(back), _whole(high).transform(back)

    def _lean(self, cut: _Cut) -> float:
        """Return the half angle of a cone that comes out along all pulls, radians."""
        pulls = np.array(self._parting.pulls)
        axis = cut.turn[2]
        cosine = [*(pulls[list(cut.ones)] @ axis), *(-pulls[list(cut.others)] @ axis)]
        return min(_WIDEST, max(_SLIMMEST, math.acos(min(1.0, *cosine)) + 0.1))


def _without_crumbs(low: Manifold, high: Manifold, where: str) -> tuple[Manifold, Manifold]:
    """Return both sides of a sheet, crumbs that came off one side given to the other."""
    kept, crumbs = [], []
    for side in (low, high):
        parts = sorted(side.decompose(), key=lambda part: -part.volume())
        if not parts or parts[0].volume() <= _CRUMB:
            raise GeometryError(
                where, "nothing left on one side", "two solid sides", "widen the flange"
            )
        least = _CRUMB_SHARE * parts[0].volume()
        kept.append([part for part in parts if part.volume() > least])
        crumbs.append([part for part in parts if _CRUMB < part.volume() <= least])
    return _joined(kept[0], crumbs[1], -_NUDGE), _joined(kept[1], crumbs[0], _NUDGE)


def _joined(parts: list[Manifold], crumbs: list[Manifold], rise: float) -> Manifold:
    """Return parts with the crumbs that touch them in the sheet.

    A crumb whose sheet is divided otherwise than that of the parts may come out loose, and its
    working area would be lost; then it reaches across the sheet by a hair.
    """
    whole = Manifold.batch_boolean([*parts, *crumbs], OpType.Add)
    if len(whole.decompose()) <= len(parts):
        return whole
    across = [crumb.translate((0.0, 0.0, rise)) for crumb in crumbs]
    return Manifold.batch_boolean([*parts, *crumbs, *across], OpType.Add)


def _whole(solid: Manifold) -> Manifold:
    """Return a solid without loose specks below 1 mm^3: no printer lays so little by itself."""
    parts = [part for part in solid.decompose() if part.volume() > _LOOSE]
    return parts[0] if len(parts) == 1 else Manifold.compose(parts)


def _halves(group: Group) -> list[tuple[Group, Group]]:
    """Return all ways to part a group in two, one piece against the others first."""
    ways = []
    for size in range(1, len(group) // 2 + 1):
        for ones in combinations(group, size):
            if 2 * size < len(group) or ones[0] == group[0]:
                ways.append((ones, tuple(piece for piece in group if piece not in ones)))
    return ways


def _hangs_together(group: Group, pairs: set[tuple[int, int]]) -> bool:
    """Return whether pieces of a group are joined by lines between them."""
    reached = {group[0]}
    for _ in group:
        reached |= {b for pair in pairs for a, b in (pair, pair[::-1]) if a in reached}
        reached &= set(group)
    return len(reached) == len(group)


def _named(pieces: Group) -> str:
    numbers = " and ".join(str(piece + 1) for piece in pieces)
    return f"piece {numbers}" if len(pieces) == 1 else f"pieces {numbers}"


def _between(surface: Surface, own: Array, others: Array) -> list[FloatArray]:
    """Return the lines between two sets of facets as points, closed ones with the first again."""
    table = surface.edges
    inner = (table.left >= 0) & (table.right >= 0)
    left, right = table.left, table.right
    apart = inner & ((own[left] & others[right]) | (others[left] & own[right]))
    return [
        surface.vertices[[*path, path[0]] if closed else path]
        for path, closed, _ in chains(table.ends[apart])
    ]
