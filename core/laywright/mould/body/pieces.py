"""The mould built in pieces: working areas, flanges between them, bolts and registration.

One body is built round the whole working surface and then parted, sheet by sheet; each sheet
passes exactly through parting lines and is a graph along an axis that suits the pulls on both
sides.  So pieces never overlap and meet without a gap.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from manifold3d import Manifold

from laywright.arrays import Array, FloatArray, Vector, floats, ints
from laywright.errors import GeometryError
from laywright.mould.body.dividing import OWN_PATCHES, Dividing, Group
from laywright.mould.body.hollow_pieces import hollowed
from laywright.mould.body.inside import Hollow
from laywright.mould.body.piece_settings import PieceSettings
from laywright.mould.body.settings import Inside, MouldBuild
from laywright.mould.frame import upright
from laywright.mould.release.parting import Parting
from laywright.mould.release.release import release_of
from laywright.mould.release.sampled import barely_hidden
from laywright.mould.solid import from_manifold
from laywright.progress import Progress, silent
from laywright.stage import stage
from laywright.surface.distance import distances, largest_distance, nearest_triangles
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES
from laywright.wording import three_figures

__all__ = ["MouldPiece", "MouldPieces", "PieceSettings", "build_pieces", "together"]

_SPECK = 1e-6
_TURNED = 1e-3
_JAMS = 1.0
_ON_IT = 1e-4


@dataclass(frozen=True, eq=False)
class MouldPiece:
    """One piece of a mould, in the part's coordinates.

    Attributes
    ----------
    name : str
        ``"piece 1"`` and so on.
    solid : Surface
        Closed, normals outwards; its patches are those of the working surface, then
        ``"run-off"``, ``"filled hole"``, ``"sides"``, ``"base"``, ``"flange"``,
        ``"bolt hole"`` (what a bolt clamps), ``"head bore"`` (room for heads and nuts),
        ``"registration"``, ``"scribe line"``, ``"hollow"`` and ``"cloth line"``.
    pull : tuple of 3 float
        Unit direction in which the part leaves it.
    undercut_area : float, mm^2
        Of its working area, in the presence of its own solid, by more than triangles are exact.
    flange_undercut_area : float, mm^2
        Of its flange and registration, by facing: what would jam as the piece is drawn away.
    volume : float, mm^3
        Of the solid.
    """

    name: str
    solid: Surface
    pull: Vector
    undercut_area: float
    flange_undercut_area: float
    volume: float

    @property
    def on_working_area(self) -> Array:
        """Whether each triangle lies on the working area: (m,) bool."""
        return np.asarray(self.solid.patches < self.solid.patch_names.index(OWN_PATCHES[0]))


@dataclass(frozen=True, eq=False)
class MouldPieces:
    """A mould in pieces.

    Attributes
    ----------
    pieces : tuple of MouldPiece
        The pieces.
    bolts, cones : (k, 3) float, mm
        Centres of bolt holes and registration cones on the flanges.
    largest_deviation : float, mm
        Between the working areas of all pieces together and the wanted one.
    moved_area : float, mm^2
        Working area that came to another piece than the parting gave it to, along the lines.
    overlap : float, mm^3
        Largest volume that two pieces have in common.
    other_fits : int
        Placements of a flange's cones, other than the right one, in which they fit too.
    remarks : tuple of str
        What the maker should know.
    least_wall : float or None, mm
        Least wall measured around the hollows; None where all pieces are full.
    span : float, mm
        Widest stretch of wall without support.
    digest : str
        Digest of the inputs.
    """

    pieces: tuple[MouldPiece, ...]
    bolts: FloatArray
    cones: FloatArray
    largest_deviation: float
    moved_area: float
    overlap: float
    other_fits: int
    remarks: tuple[str, ...]
    least_wall: float | None = None
    span: float = 0.0
    digest: str = ""


@stage("Mould Pieces", version=5)
def build_pieces(
    parting: Parting,
    mouth: Vector,
    settings: PieceSettings = PieceSettings(),  # noqa: B008
    scribe: tuple[float, float, float] = (0.4, 0.8, 0.0),
    inside: Inside = Inside(),  # noqa: B008
    *,
    progress: Progress = silent,
) -> MouldPieces:
    """Build the pieces of a parted mould.

    Parameters
    ----------
    parting : Parting
        The divided working surface.
    mouth : tuple of 3 float
        Direction in which the mould is open: the moulded face's pull.
    settings : PieceSettings
        Flange, bolts, cones.
    scribe : (depth, width, margin), mm
        Of the scribed trim line, and from it to the line at the edge of the cloth; depth 0
        leaves both out, margin 0 the second.
    inside : Inside
        Full, or hollow and how.
    progress : Progress
        Told how far it is.

    Returns
    -------
    MouldPieces
        Each a closed solid, checked.

    Raises
    ------
    GeometryError
        If no sheet parts the pieces along their lines, or the working area does not come out.
    """
    if len(parting.pulls) < 2:
        raise GeometryError(
            "the parting",
            "one piece",
            "two pieces or more",
            "build a Mould Body: the part leaves it along one pull",
        )
    work = Dividing(parting, mouth, settings)
    waiting: list[tuple[Group, Manifold]] = [(tuple(range(len(parting.pulls))), work.body(scribe))]
    made: list[tuple[int, Manifold]] = []
    while waiting:
        group, solid = waiting.pop()
        if len(group) == 1:
            made.append((group[0], solid))
            continue
        progress(0.8 * len(made) / len(parting.pulls), "parting the body")
        waiting += reversed(work.divided(solid, group))
    made.sort(key=lambda entry: entry[0])
    full = [solid for _, solid in made]
    hollows: list[Hollow] = []
    if inside.build is not MouldBuild.SOLID:
        progress(0.6, "hollowing the pieces")
        made, hollows = _hollowed(work, made, mouth, inside, settings)
    progress(0.8, "checking the pieces")
    overlap = max(
        (one ^ other).volume() for i, (_, one) in enumerate(made) for _, other in made[:i]
    )
    pieces = tuple(
        _finished(work, parting, piece, solid, before)
        for (piece, solid), before in zip(made, full, strict=True)
    )
    deviation = _deviation(parting.surface, pieces)
    if deviation > TOLERANCES.working_area:
        raise GeometryError(
            "the mould's working area",
            f"an area that is off by {three_figures(deviation)} mm",
            f"at most {three_figures(TOLERANCES.working_area)} mm",
            "smooth the trim edge of the picked faces, or set their pull along the mouth",
        )
    return MouldPieces(
        pieces,
        floats(np.array(work.bolts).reshape(-1, 3), -1, 3),
        floats(np.array(work.cones).reshape(-1, 3), -1, 3),
        deviation,
        work.moved_area,
        max(float(overlap), 0.0),
        work.other_fits,
        (*work.remarks, *_remarks(pieces, work.moved_area)),
        min((hollow.least_wall for hollow in hollows), default=None),
        max((hollow.span for hollow in hollows), default=0.0),
    )


def _hollowed(
    work: Dividing,
    made: list[tuple[int, Manifold]],
    mouth: Vector,
    inside: Inside,
    settings: PieceSettings,
) -> tuple[list[tuple[int, Manifold]], list[Hollow]]:
    """Return the pieces hollowed where that is possible, and their hollows."""
    fastenings = floats(np.array([*work.bolts, *work.cones]).reshape(-1, 3), -1, 3)
    solids, hollows = [], []
    for piece, solid in made:
        name, turn = f"Piece {piece + 1}", upright(mouth)
        one = hollowed(name, solid, work.names, turn, fastenings, inside, settings)
        solids.append((piece, one.solid))
        if one.hollow is None:
            work.remarks.append(one.remark)
        else:
            hollows.append(one.hollow)
    return solids, hollows


def together(surfaces: tuple[Surface, ...]) -> Surface:
    """Return surfaces with the same patches as one, their points not shared."""
    first = np.cumsum([0] + [len(surface.vertices) for surface in surfaces])
    return Surface(
        np.concatenate([surface.vertices for surface in surfaces]),
        np.concatenate([s.triangles + n for s, n in zip(surfaces, first, strict=False)]),
        np.concatenate([surface.patches for surface in surfaces]),
        surfaces[0].patch_names,
    )


def _finished(
    work: Dividing, parting: Parting, piece: int, solid: Manifold, full: Manifold
) -> MouldPiece:
    """Return a piece with its checks made; its release on the full one, which is the same."""
    surface = _surface(work, parting, solid)
    if not surface.is_closed or surface.volume <= 0.0:
        raise GeometryError(
            f"piece {piece + 1}",
            "a piece with gaps",
            "a closed piece",
            "coarsen the mesh of the picked faces a little and try again",
        )
    pull = parting.pulls[piece]
    whole = surface if full is solid else _surface(work, parting, full)
    areas, working = whole.areas, whole.patches < work.count
    share = np.where(working, release_of(whole, pull).undercut_share, 0.0)
    some = ints(np.flatnonzero(share), -1)
    share[some[barely_hidden(whole, pull, some, TOLERANCES.chord)]] = 0.0
    held = float(share @ areas)
    trace = _SPECK * float(areas[working].sum())
    mating = [work.count + OWN_PATCHES.index(name) for name in ("flange", "registration")]
    jams = np.isin(whole.patches, mating) & (whole.normals @ np.array(pull) < -_TURNED)
    return MouldPiece(
        f"piece {piece + 1}",
        surface,
        pull,
        held if held > trace else 0.0,
        float(areas[jams].sum()),
        surface.volume,
    )


def _surface(work: Dividing, parting: Parting, solid: Manifold) -> Surface:
    """Return a piece as a surface, the working area's patches named once."""
    made = _relabelled(from_manifold(solid, work.names), work, parting.surface)
    first = work.number(OWN_PATCHES[0])
    working = made.patches < first
    return Surface(
        made.vertices,
        made.triangles,
        np.where(working, made.patches % work.count, made.patches - first + work.count),
        (*parting.surface.patch_names, *OWN_PATCHES),
    )


def _relabelled(made: Surface, work: Dividing, wanted: Surface) -> Surface:
    """Return a piece whose flange facets that lie on the working surface are named after it.

    Where a sheet runs along an upright working surface, a film without thickness may stay on
    the wrong side; what it leaves bare is the same place under the flange's name.
    """
    flange = np.flatnonzero(made.patches == work.number("flange"))
    if len(flange) == 0:
        return made
    corners = made.corners[flange]
    points = np.concatenate([corners, corners.mean(axis=1, keepdims=True)], axis=1)
    away = distances(points.reshape(-1, 3), wanted).reshape(-1, 4).max(axis=1)
    flange = flange[away < _ON_IT]
    if len(flange) == 0:
        return made
    nearest, _ = nearest_triangles(made.centroids[flange], wanted)
    along = np.einsum("ij,ij->i", made.normals[flange], wanted.normals[nearest]) > 0.9
    patches = made.patches.copy()
    patches[flange[along]] = wanted.patches[nearest[along]]
    return Surface(made.vertices, made.triangles, patches, made.patch_names)


def _deviation(wanted: Surface, pieces: tuple[MouldPiece, ...]) -> float:
    """Return the largest distance of the working areas together from the wanted one, mm."""
    areas = tuple(piece.solid.part(piece.on_working_area) for piece in pieces)
    return largest_distance(wanted, together(areas))


def _remarks(pieces: tuple[MouldPiece, ...], moved_area: float) -> tuple[str, ...]:
    remarks = [
        f"{three_figures(piece.undercut_area)} mm^2 of {piece.name} hold the part back."
        for piece in pieces
        if piece.undercut_area
    ]
    remarks += [
        f"{three_figures(piece.flange_undercut_area)} mm^2 of the flange of {piece.name} face "
        "away from "
        "its pull and may jam."
        for piece in pieces
        if piece.flange_undercut_area > _JAMS
    ]
    if moved_area:
        remarks.append(
            f"Along the parting lines {three_figures(moved_area)} mm^2 came to the "
            "neighbouring piece."
        )
    return tuple(remarks)
