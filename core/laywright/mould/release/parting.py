"""Where a mould is parted: the fewest pieces that all leave, and the lines between them.

Every facet belongs to a piece along whose pull it leaves.  Lines between pieces run along sharp
edges and silhouettes where these are near, and elsewhere, where a facet leaves along the pulls
of both pieces, straight across it in the plane half-way between them.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import IntArray, Vector, ints
from laywright.errors import LimitError
from laywright.mould.release.division import Division, divided
from laywright.mould.release.leaving import barely_held, candidate_pulls, held_share
from laywright.mould.release.parting_lines import PartingLine, parting_lines
from laywright.mould.release.pull import find_pull
from laywright.mould.release.pull_search import PullSearch
from laywright.mould.release.visibility import STANDING, TRACE
from laywright.mould.release.wanted_draft import check_wanted_draft
from laywright.progress import Progress, part_of, silent
from laywright.stage import stage
from laywright.surface.cap import smallest_cap
from laywright.surface.face import MouldedFace
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES
from laywright.wording import three_figures

__all__ = ["Parting", "PartingLine", "PartingSettings", "part_face", "part_surface"]

_ALONE = math.radians(3.0)
_LINE_PRICE = 0.2
_OBLIQUE = 0.3


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
        Area that still holds its piece back, by more than triangles are exact.
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


@stage("Parting", version=3)
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
            return _result(Division(surface, whole, (alone.pull,)), settings)
    pulls = candidate_pulls(surface, wanted)
    search = PullSearch(surface, pulls, settings.least_draft, part_of(progress, 0.1, 0.7))
    best: tuple[tuple[float, ...], Division] | None = None
    for count in range(2, settings.most_pieces + 1):
        progress(0.6 + 0.1 * count, "dividing the surface")
        for sets in search.rounds(count):
            for chosen in sets:
                known = search.leaves(chosen)
                division = divided(surface, pulls[list(chosen)], *known, settings.least_draft)
                rank = (*_rank(division, settings, wanted), float(sum(chosen)))
                if best is None or rank < best[0]:
                    best = (rank, division)
            if best is not None and best[0][0] == 0 and best[0][1] <= count:
                return _result(best[1], settings)
    assert best is not None
    return _result(best[1], settings)


def _rank(division: Division, settings: PartingSettings, wanted: Vector) -> tuple[float, ...]:
    """Return what is compared: undercut, pieces, and a sum of three.

    The sum is of the share of the area below the wanted draft, of the length of lines, and of
    how oblique the pulls run to the wanted one: pieces are built and handled best along it or
    across it.
    """
    surface = division.surface
    undercut, _, below = _areas(division, settings)
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


def _areas(division: Division, settings: PartingSettings) -> tuple[float, float, float]:
    """Return the areas that hold a piece, barely hold one, lack the wanted draft, mm^2."""
    surface, undercut, barely, below = division.surface, 0.0, 0.0, 0.0
    for number, pull in enumerate(division.pulls):
        held = np.where(division.piece == number, held_share(surface, pull), 0.0)
        some = np.flatnonzero(held)
        slight = barely_held(surface, pull, some)
        area = held[some] * surface.areas[some]
        undercut += float(area[~slight].sum())
        barely += float(area[slight].sum())
        tilt = surface.normals @ np.array(pull)
        steep = (division.piece == number) & (tilt < math.sin(settings.least_draft) - STANDING)
        below += float(((1.0 - held) * steep) @ surface.areas)
    trace = TRACE * surface.area
    return undercut if undercut > trace else 0.0, barely if barely > trace else 0.0, below


def _result(division: Division, settings: PartingSettings) -> Parting:
    surface, piece = division.surface, division.piece
    undercut, barely, below = _areas(division, settings)
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
        _remarks(division, settings, lines, (undercut, barely, below)),
    )


def _remarks(
    division: Division,
    settings: PartingSettings,
    lines: tuple[PartingLine, ...],
    areas: tuple[float, float, float],
) -> tuple[str, ...]:
    undercut, barely, below = areas
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
    if barely:
        remarks.append(
            f"{three_figures(barely)} mm^2 hold a piece by less than "
            f"{three_figures(TOLERANCES.chord)} mm, as triangles along the crest of a round face "
            "do; they count as leaving."
        )
    if below > TRACE * division.surface.area:
        remarks.append(
            f"{three_figures(below)} mm^2 have less than "
            f"{math.degrees(settings.least_draft):.1f} deg of "
            "draft along the pull of their piece."
        )
    return tuple(remarks)
