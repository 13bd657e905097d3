"""Where a mould is parted: the fewest pieces that all leave, and the lines between them.

Every facet belongs to a piece along whose pull it leaves.  Lines between pieces run along sharp
edges and silhouettes where these are near, and elsewhere, where a facet leaves along the pulls
of both pieces, straight across it in the plane half-way between them.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import combinations

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

from laywright.arrays import Array, FloatArray, IntArray, Vector, floats, ints, unit_vector
from laywright.errors import LimitError
from laywright.mould.release.cover import covers
from laywright.mould.release.labelling import NEVER, labelled
from laywright.mould.release.leaving import candidate_pulls, held_share, leaves_along, surely_leaves
from laywright.mould.release.parting_lines import PartingLine, parting_lines, sharp_edges
from laywright.mould.release.plane_split import split_along
from laywright.mould.release.pull import find_pull
from laywright.mould.release.visibility import STANDING, TRACE
from laywright.mould.release.wanted_draft import check_wanted_draft
from laywright.progress import Progress, part_of, silent
from laywright.stage import stage
from laywright.surface.cap import smallest_cap
from laywright.surface.face import MouldedFace
from laywright.surface.triangles import Surface
from laywright.wording import three_figures

__all__ = ["Parting", "PartingLine", "PartingSettings", "part_face", "part_surface"]

_ALONE = math.radians(3.0)
_LINE_PRICE = 0.2
_OBLIQUE = 0.3
_SHARP_PRICE = 0.15
_ASIDE = 5.0
_POOR = 20.0
_HELD = 1e4
_LOOKED_AT = 8_000


@dataclass(frozen=True)
class PartingSettings:
    """How a mould may be parted.

    Attributes
    ----------
    most_pieces : int
        At most so many pieces, 2 to 4.
    least_draft : float, radians
        Draft that is wanted at every piece; a piece without it still leaves, with difficulty.
    """

    most_pieces: int = 4
    least_draft: float = math.radians(2.0)

    def __post_init__(self) -> None:
        if not 2 <= self.most_pieces <= 4:
            raise LimitError("most pieces", str(self.most_pieces), "2 to 4", "set 2, 3 or 4")
        check_wanted_draft(self.least_draft)


@dataclass(frozen=True, eq=False)
class Parting:
    """A working surface divided among the pieces of its mould.

    Attributes
    ----------
    surface : Surface
        The working surface; facets that a line crosses are divided.
    piece : (m,) int
        Piece of every facet.
    pulls : tuple of tuple of 3 float
        Unit direction in which the part leaves each piece; the piece goes the other way.
    lines : tuple of PartingLine
        Lines between pieces, longest first.
    undercut_area : float, mm^2
        Area that still holds its piece back.
    below_draft_area : float, mm^2
        Area with less than the wanted draft, undercuts left out.
    remarks : tuple of str
        What the maker should know.
    digest : str
        Digest of the inputs.
    """

    surface: Surface
    piece: IntArray
    pulls: tuple[Vector, ...]
    lines: tuple[PartingLine, ...]
    undercut_area: float
    below_draft_area: float
    remarks: tuple[str, ...]
    digest: str = ""

    def region(self, piece: int) -> Surface:
        """Return the part of the working surface that belongs to a piece."""
        return self.surface.part(self.piece == piece)


@stage("Parting", version=2)
def part_face(
    face: MouldedFace,
    thickness: float = 0.0,
    settings: PartingSettings = PartingSettings(),
    *,
    progress: Progress = silent,
) -> Parting:
    """Part the mould of a moulded face.

    Parameters
    ----------
    face : MouldedFace
        The picked faces; its pull is tried first.
    thickness : float, mm
        Of the laminate.
    settings : PartingSettings
        Most pieces, wanted draft.
    progress : Progress
        Told how far it is.

    Returns
    -------
    Parting
        One piece where one pull leaves the whole surface.
    """
    return part_surface(face.working_surface(thickness), face.pull, settings, progress=progress)


def part_surface(
    surface: Surface,
    wanted: Vector,
    settings: PartingSettings = PartingSettings(),
    *,
    progress: Progress = silent,
) -> Parting:
    """Part the mould of any working surface; see `part_face`."""
    if smallest_cap(surface.normals).least_draft >= -STANDING:
        alone = find_pull(surface, _ALONE, progress=part_of(progress, 0.0, 0.1))
        if alone.releases:
            whole = np.zeros(len(surface.triangles), dtype=np.int64)
            return _result(_Division(surface, whole, (alone.pull,)), settings)
    pulls = candidate_pulls(surface, wanted)
    some, areas = _looked_at(surface)
    leaves = leaves_along(surface, pulls, some, part_of(progress, 0.1, 0.7))
    tilt = pulls @ surface.normals[some].T
    good = leaves & (tilt >= math.sin(settings.least_draft) - STANDING)
    sure: dict[int, Array] = {}
    best: tuple[tuple[float, ...], _Division] | None = None
    for count in range(2, settings.most_pieces + 1):
        progress(0.6 + 0.1 * count, "dividing the surface")
        if best is not None and best[0][0] == 0 and best[0][1] <= count - 1:
            break
        for chosen in covers(leaves, good, areas, count):
            rows = list(chosen)
            for row in set(rows) - set(sure):
                sure[row] = surely_leaves(surface, unit_vector(pulls[row]))
                leaves[row] = sure[row][some]
            known = np.stack([sure[row] for row in rows])
            division = _divided(surface, pulls[rows], known, settings)
            rank = (*_rank(division, settings, wanted), float(sum(chosen)))
            if best is None or rank < best[0]:
                best = (rank, division)
    assert best is not None
    return _result(best[1], settings)


def _looked_at(surface: Surface) -> tuple[IntArray, FloatArray]:
    """Return the facets at which pulls are sought, and the area that each stands for, mm^2.

    All of them, or of a fine mesh the largest and each so many of the others.
    """
    count, areas = len(surface.triangles), surface.areas
    if count <= _LOOKED_AT:
        return ints(np.arange(count), -1), areas
    order = np.argsort(-areas, kind="stable")
    large = order[: _LOOKED_AT // 4]
    small = np.sort(order[len(large) :])
    step = math.ceil(len(small) / (_LOOKED_AT - len(large)))
    kept = small[::step]
    share = float(areas[small].sum()) / max(float(areas[kept].sum()), 1e-300)
    return (
        ints(np.concatenate([large, kept]), -1),
        floats(np.concatenate([areas[large], share * areas[kept]]), -1),
    )


@dataclass(frozen=True, eq=False)
class _Division:
    surface: Surface
    piece: IntArray
    pulls: tuple[Vector, ...]


def _divided(
    surface: Surface, pulls: FloatArray, leaves: Array, settings: PartingSettings
) -> _Division:
    """Return the surface divided among pulls (k, 3) along which facets (k, m) leave."""
    pairs = list(combinations(range(len(pulls)), 2))
    planes = {pair: _plane(surface, pulls, leaves, pair) for pair in pairs}
    for (one, other), (normal, place) in planes.items():
        surface, parent = split_along(surface, leaves[one] & leaves[other], normal, place)
        leaves = leaves[:, parent]
    size = float(np.linalg.norm(np.ptp(surface.bounds, axis=0)))
    tilt = pulls @ surface.normals.T
    poor = tilt < math.sin(settings.least_draft) - STANDING
    cost = _POOR / size * surface.areas * (poor & ~poor.all(axis=0))
    none = ~leaves.any(axis=0)
    held = _HELD / size * surface.areas * (1.0 + np.maximum(-tilt, 0.0))
    cost += np.where(leaves, 0.0, np.where(none, held, 2.0 * NEVER))
    for (one, other), (normal, place) in planes.items():
        both = (leaves[one] & leaves[other]) * surface.areas * _ASIDE / size
        above = surface.centroids @ normal > place
        cost[one] += both * above
        cost[other] += both * ~above
    table = surface.edges
    inner = (table.left >= 0) & (table.right >= 0)
    start, end = (surface.vertices[table.ends[inner, i]] for i in (0, 1))
    price = np.linalg.norm(end - start, axis=1)
    price *= np.where(sharp_edges(surface)[inner], _SHARP_PRICE, 1.0)
    label = labelled(cost, np.stack([table.left[inner], table.right[inner]], axis=1), price)
    piece, of_label = _connected(surface, label)
    return _Division(surface, piece, tuple(unit_vector(pulls[k]) for k in of_label))


def _plane(
    surface: Surface, pulls: FloatArray, leaves: Array, pair: tuple[int, int]
) -> tuple[FloatArray, float]:
    """Return normal and place of the plane between two pulls.

    What leaves along the first pull only should lie below it, what leaves along the second
    only above it; where that leaves room, the plane lies in the middle of the surface.
    """
    one, other = pair
    across = pulls[one] - pulls[other]
    normal = np.array(unit_vector(across))
    height = surface.centroids @ normal
    corners = surface.vertices[np.unique(surface.triangles)] @ normal
    middle = 0.5 * float(corners.min() + corners.max())
    low = leaves[one] & ~leaves[other]
    high = leaves[other] & ~leaves[one]
    forced = np.flatnonzero(low | high)
    if len(forced) == 0:
        return normal, middle
    order = forced[np.argsort(height[forced], kind="stable")]
    area = surface.areas[order]
    wrong_below = np.concatenate([[0.0], np.cumsum(area * high[order])])
    wrong_above = np.concatenate([np.cumsum((area * low[order])[::-1])[::-1], [0.0]])
    wrong = wrong_below + wrong_above
    best = np.flatnonzero(wrong <= wrong.min() + TRACE * surface.area)
    bounds = np.concatenate([[corners.min()], height[order], [corners.max()]])
    distance = np.maximum(bounds[best] - middle, middle - bounds[best + 1])
    gap = int(best[np.argmin(np.maximum(distance, 0.0))])
    return normal, float(np.clip(middle, bounds[gap], bounds[gap + 1]))


def _connected(surface: Surface, label: IntArray) -> tuple[IntArray, list[int]]:
    """Return connected pieces, the largest first, and the label of each."""
    table = surface.edges
    inner = (table.left >= 0) & (table.right >= 0)
    left, right = table.left[inner], table.right[inner]
    same = label[left] == label[right]
    size = len(label)
    graph = coo_matrix((np.ones(same.sum()), (left[same], right[same])), (size, size))
    number, group = connected_components(graph, directed=False)
    order = np.argsort(-np.bincount(group, weights=surface.areas), kind="stable")
    place = np.empty(number, dtype=np.int64)
    place[order] = np.arange(number)
    first = np.full(number, size)
    np.minimum.at(first, place[group], np.arange(size))
    return ints(place[group], -1), label[first].tolist()


def _rank(
    division: _Division, settings: PartingSettings, wanted: Vector
) -> tuple[float, float, float]:
    """Return what is compared: undercut, pieces, and a sum of three.

    The sum is of the share of the area below the wanted draft, of the length of lines, and of
    how oblique the pulls run to the wanted one: pieces are built and handled best along it or
    across it.
    """
    surface = division.surface
    undercut, below = _areas(division, settings)
    table = surface.edges
    between = (table.left >= 0) & (table.right >= 0)
    between &= division.piece[table.left] != division.piece[table.right]
    start, end = (surface.vertices[table.ends[between, i]] for i in (0, 1))
    length = float(np.linalg.norm(end - start, axis=1).sum())
    size = float(np.linalg.norm(np.ptp(surface.bounds, axis=0)))
    rise = np.array(division.pulls) @ np.array(wanted)
    oblique = float(np.mean(2.0 * np.abs(rise) * np.sqrt(np.maximum(1.0 - rise**2, 0.0))))
    score = below / surface.area + _LINE_PRICE * length / size + _OBLIQUE * oblique
    return undercut, float(len(division.pulls)), round(score, 2)


def _areas(division: _Division, settings: PartingSettings) -> tuple[float, float]:
    """Return the undercut area and the area below the wanted draft, mm^2."""
    surface, undercut, below = division.surface, 0.0, 0.0
    for number, pull in enumerate(division.pulls):
        own = division.piece == number
        held = held_share(surface, pull)[own]
        areas = surface.areas[own]
        undercut += float(held @ areas)
        steep = surface.normals[own] @ np.array(pull) < math.sin(settings.least_draft) - STANDING
        below += float(((1.0 - held) * steep) @ areas)
    return (undercut if undercut > TRACE * surface.area else 0.0), below


def _result(division: _Division, settings: PartingSettings) -> Parting:
    surface, piece = division.surface, division.piece
    undercut, below = _areas(division, settings)
    table = surface.edges
    along = np.array(division.pulls)[piece]
    inner = (table.left >= 0) & (table.right >= 0)
    one = np.einsum("ij,ij->i", surface.normals[table.left], along[table.right])
    other = np.einsum("ij,ij->i", surface.normals[table.right], along[table.left])
    lines = parting_lines(surface, piece, inner & (one < -STANDING) & (other < -STANDING))
    return Parting(
        surface,
        ints(piece, -1),
        division.pulls,
        lines,
        undercut,
        below,
        _remarks(division, settings, lines, undercut, below),
    )


def _remarks(
    division: _Division,
    settings: PartingSettings,
    lines: tuple[PartingLine, ...],
    undercut: float,
    below: float,
) -> tuple[str, ...]:
    count = len(division.pulls)
    if count == 1:
        return ("One piece is enough: the whole surface leaves along one pull.",)
    remarks = [
        f"{count} pieces, {sum(line.length for line in lines):.0f} mm of parting lines between "
        "them."
    ]
    if count > settings.most_pieces:
        remarks.append(
            f"No division into {settings.most_pieces} pieces was found: allow more pieces, "
            "or change the part."
        )
    if undercut:
        remarks.append(
            f"{three_figures(undercut)} mm^2 still hold a piece back: add draft there, or "
            "change the part."
        )
    if below > TRACE * division.surface.area:
        remarks.append(
            f"{three_figures(below)} mm^2 have less than "
            f"{math.degrees(settings.least_draft):.1f} deg of "
            "draft along the pull of their piece."
        )
    return tuple(remarks)
