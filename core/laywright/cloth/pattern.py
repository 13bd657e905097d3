"""Flat patterns: one outline to cut for every ply, draped on the surface that the ply takes.

A pattern is drawn as the cloth lies on the bench with its upper side up, the side that will
look away from the mould.  Its x axis runs along the warp, which is the length of the roll.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field

import numpy as np
import shapely

from laywright.arrays import FloatArray, floats
from laywright.cloth.cover import Zone, cover_of
from laywright.cloth.cut_remarks import clash_remarks, cut_remarks
from laywright.cloth.cuts import CutSettings
from laywright.cloth.datum import Datum, default_datum
from laywright.cloth.draped_ply import DrapedPly
from laywright.cloth.end_remarks import end_remarks
from laywright.cloth.even_mesh import even_mesh, spacing_for
from laywright.cloth.fabric import Start, fabric_of
from laywright.cloth.lay import Proposal, lay_plies
from laywright.cloth.local_outline import local_outline
from laywright.cloth.margins import check_margins, with_margins
from laywright.cloth.outline import (
    flat_region,
    notches_of,
    refuse_runaway,
    ring,
    smooth_region,
)
from laywright.cloth.place import nearest_place
from laywright.cloth.seam_outline import seamed_outline
from laywright.cloth.stagger import clashes
from laywright.cloth.start_search import FindStart, find_start
from laywright.cloth.strain import image_of
from laywright.errors import InputError
from laywright.laminate.laminate import Laminate
from laywright.laminate.materials import Weave
from laywright.laminate.plies import Ply
from laywright.progress import Progress, part_of, silent
from laywright.stage import stage
from laywright.surface.face import MouldedFace
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = ["Pattern", "PatternSet", "PatternSettings", "make_patterns"]

_VISIBLE_STRETCH = 0.005
_VISIBLE_LOCKED = 0.0005
_LOOSE = 0.05
_FEWEST = 200
_MESHING = 0.2


@dataclass(frozen=True)
class PatternSettings:
    """How patterns are drawn and how the cloth is laid.

    Attributes
    ----------
    margin : float, mm
        Cloth beyond the edge of the part; 20 mm is common practice, no source.
    notch : float, mm
        Length of the notches where the threads through the start point meet the cut edge.
    deviation : float, mm
        Largest distance between the drawn outlines and the computed ones.
    start : Start or None
        What the hand lays straight first; None takes what is usual for each cloth.
    triangles : int
        Number of even triangles that the face is meshed with for the drape.
    find : FindStart
        Where the datum comes from when none is set.
    margins : dict of str to float, mm
        Margin by side, where it differs: ``ahead``, ``left``, ``behind`` and ``right`` as seen
        along the datum arrow, and ``holes``.  A ply that is laid with cuts takes `margin` all
        round; a local ply takes it where it reaches the edge of the part, and none where it ends
        inside.
    """

    margin: float = 20.0
    notch: float = 6.0
    deviation: float = TOLERANCES.outline
    start: Start | None = None
    triangles: int = 8000
    find: FindStart = FindStart.MIDDLE
    margins: dict[str, float] = field(default_factory=dict)

    def __post_init__(self) -> None:
        check_margins(self.margins)
        for name, least in (("margin", 0.0), ("notch", 0.0), ("deviation", 1e-6)):
            value = getattr(self, name)
            if not (math.isfinite(value) and value >= least):
                raise InputError(
                    f"{name} of the patterns",
                    f"{value:g} mm",
                    f"at least {least:g} mm",
                    "correct the setting",
                )
        if self.triangles < _FEWEST:
            raise InputError(
                "triangles for the drape",
                f"{self.triangles}",
                f"at least {_FEWEST}",
                "correct the setting",
            )


@dataclass(frozen=True, eq=False)
class Pattern:
    """The flat pattern of one ply; coordinates in mm, x along the warp, lowest corner at zero.

    Attributes
    ----------
    ply : int
        Number of the ply; ply 1 touches the mould.
    name : str
        Name of the ply.
    cloth : str
        Name of the cloth that it is cut from.
    weave : Weave
        How the yarns of that cloth lie.
    roll_width : float, mm
        Width of the roll, from the cloth's card.
    locking_angle : float, radians
        Shear at which the cloth begins to wrinkle.
    angle : float, radians
        Ply angle from the datum arrow.
    cut : (k, 2) float, mm
        Outline to cut, margin included, counter-clockwise, not repeated at its end.
    openings : tuple of (i, 2) float, mm
        Openings to cut, smaller than the holes by the margin; small holes have none.
    trim : (j, 2) float, mm
        Edge of the part.
    holes : tuple of (i, 2) float, mm
        Edges of the holes in the part.
    datum : (2,) float, mm
        Start point.
    datum_direction : (2,) float
        Unit direction of the datum arrow on the cloth.
    centre : (2,) float, mm
        Where the middle of the part's area lies.
    notches : tuple of (2, 2) float, mm
        From the cut edge inwards, where the threads through the start point run.
    area : float, mm^2
        Cloth within the cut line.
    net_area : float, mm^2
        Cloth within the edge of the part.
    largest_shear : float, radians
        Largest shear, without its sign.
    locked_share : float
        Share of the area whose shear is past the locking angle.
    piece : int
        Number of the piece where the ply is laid in several, 0 where it is laid in one.
    slits : tuple of (k, 2) float, mm
        Lines to cut inside the cut line, from the edge inwards, where darts lap over.
    laps : tuple of (k, 2) float, mm
        Lines up to which this pattern laps over its neighbour, or over itself at a dart.
    deviation : float, mm
        Largest distance between the outlines drawn and the smooth ones that were computed.
    """

    ply: int
    name: str
    cloth: str
    weave: Weave
    roll_width: float
    locking_angle: float
    angle: float
    cut: FloatArray
    openings: tuple[FloatArray, ...]
    trim: FloatArray
    holes: tuple[FloatArray, ...]
    datum: FloatArray
    datum_direction: FloatArray
    centre: FloatArray
    notches: tuple[FloatArray, ...]
    area: float
    net_area: float
    largest_shear: float
    locked_share: float
    piece: int = 0
    slits: tuple[FloatArray, ...] = ()
    laps: tuple[FloatArray, ...] = ()
    deviation: float = TOLERANCES.outline


@dataclass(frozen=True, eq=False)
class PatternSet:
    """The patterns of a layup.

    Attributes
    ----------
    patterns : tuple of Pattern
        One for each ply, or for each piece of a ply, ply 1 first.
    draped : tuple of DrapedPly
        The drape of each ply, ply 1 first; its (u, v) plus `Pattern.datum` of the piece are
        pattern coordinates.
    remarks : tuple of str
        What a maker should know about them.
    proposals : tuple of Proposal
        Cuts that are proposed, for each ply that passes a limit.
    datum : Datum or None
        Start point and arrow that the plies were laid by.
    zones : tuple of Zone
        Which plies lie where, the largest zone first; none where every ply covers the face.
    digest : str
        Of the inputs.
    """

    patterns: tuple[Pattern, ...]
    draped: tuple[DrapedPly, ...]
    remarks: tuple[str, ...]
    proposals: tuple[Proposal, ...] = ()
    datum: Datum | None = None
    zones: tuple[Zone, ...] = ()
    digest: str = ""

    @property
    def main(self) -> DrapedPly:
        """The first ply that covers the whole face."""
        return next(ply for ply in self.draped if not ply.local)


@stage("Cloth Patterns", version=5)
def make_patterns(
    face: MouldedFace,
    laminate: Laminate,
    datum: Datum | None = None,
    settings: PatternSettings = PatternSettings(),
    cuts: CutSettings = CutSettings(),
    *,
    progress: Progress = silent,
) -> PatternSet:
    """Drape every ply on its own surface and draw its flat pattern.

    Parameters
    ----------
    face : MouldedFace
        The moulded face.
    laminate : Laminate
        Plies and their thicknesses.
    datum : Datum or None
        Start point and arrow; None takes what `PatternSettings.find` says.
    settings : PatternSettings
        Margin, notches, outlines.
    cuts : CutSettings
        Darts and splices to make, and whether they are proposed where a limit is passed.
    progress : Progress
        Told how far it is; may raise `laywright.errors.Cancelled`.

    Returns
    -------
    PatternSet

    Raises
    ------
    GeometryError
        If the face cannot be laid flat in one piece, or a pattern would overlap itself.
    """
    named = face.working_surface(laminate.thickness)
    working = even_mesh(
        named, spacing_for(named, settings.triangles), progress=part_of(progress, 0.0, _MESHING)
    )
    cover = cover_of(working, named, laminate, set_back=face.set_back)
    remarks: list[str] = []
    if datum is None:
        datum = _datum_for(working, laminate, settings, remarks, progress)
    laid = lay_plies(
        working,
        laminate,
        datum,
        settings.start,
        cuts,
        cover=cover,
        progress=part_of(progress, _MESHING, 1.0),
    )
    patterns: list[Pattern] = []
    for number, (ply, lies) in enumerate(zip(laminate.layup.plies, laid.plies, strict=True), 1):
        name = laminate.layup.ply_name(number)
        pieces = [
            _pattern(number, name, ply, lies, piece, settings) for piece in range(len(lies.pieces))
        ]
        patterns += pieces
        for pattern in pieces:
            remarks += _remarks(pattern, ply.cloth.weave, lies)
        remarks += cut_remarks(name, lies, laid.proposal(number), cuts)
    remarks += clash_remarks(clashes([ply.cuts for ply in laid.plies], cuts))
    remarks += end_remarks(laminate, cover, laid.plies)
    zones = cover.zones(laminate.layup.throughout)
    return PatternSet(tuple(patterns), laid.plies, tuple(remarks), laid.proposals, datum, zones)


def _datum_for(
    working: Surface,
    laminate: Laminate,
    settings: PatternSettings,
    remarks: list[str],
    progress: Progress,
) -> Datum:
    """Return the datum where none is set, and remark on a searched one."""
    if settings.find is FindStart.MIDDLE:
        return default_datum(working)
    plies = [(fabric_of(ply.cloth), ply.angle) for ply in laminate.layup.main.plies]
    found = find_start(
        working, plies, settings.start, progress=part_of(progress, _MESHING, _MESHING)
    )
    (x, y, z), (a, b, c) = found.datum.origin, found.datum.direction
    remarks.append(
        f"Searched start point ({x:.0f}, {y:.0f}, {z:.0f}) mm, datum arrow along "
        f"({a:.2f}, {b:.2f}, {c:.2f}): largest shear about {math.degrees(found.shear):.0f} deg, "
        f"{math.degrees(found.usual_shear):.0f} deg from the middle of the face along it."
    )
    return found.datum


def _pattern(
    number: int, name: str, ply: Ply, lies: DrapedPly, piece: int, settings: PatternSettings
) -> Pattern:
    surface, uv, own = lies.part(piece), lies.drape.uv, lies.pieces[piece]
    direction = floats(image_of(surface, uv, own.datum.origin, own.datum.direction), 2)
    within = settings.deviation
    several = len(lies.pieces) > 1
    name = f"{name}, piece {piece + 1}" if several else name
    if lies.seams:
        laps = [cut.lap for cut in lies.cuts]
        seamed = seamed_outline(surface, uv, lies.seams, laps, settings.margin, name)
        region, slits, lap_lines = seamed.region, seamed.slits, seamed.laps
        refuse_runaway(region, surface, name)
        cut = with_margins(seamed.cut, 0.0, {}, direction, within)
    else:
        region, slits, lap_lines = flat_region(surface, uv, name), (), ()
        refuse_runaway(region, surface, name)
        region = smooth_region(region, 0.5 * within)
        if lies.ends is None:
            cut = with_margins(region, settings.margin, settings.margins, direction, within)
        else:
            cut = local_outline(region, surface, uv, lies.ends, settings.margin)
            cut = with_margins(cut, 0.0, {}, direction, within)
    trim = shapely.simplify(region, 0.5 * within)
    shift = -np.array(cut.bounds[:2])
    middle = nearest_place(surface, (surface.areas / surface.area) @ surface.centroids)
    notches = notches_of(cut, settings.notch)
    shear = np.abs(lies.drape.shear[own.triangles])
    return Pattern(
        number,
        name,
        ply.cloth.name,
        ply.cloth.weave,
        ply.cloth.roll_width,
        ply.cloth.locking_angle,
        ply.angle,
        ring(cut.exterior) + shift,
        tuple(ring(inner) + shift for inner in cut.interiors),
        ring(trim.exterior) + shift,
        tuple(ring(inner) + shift for inner in trim.interiors),
        floats(shift, 2),
        direction,
        floats(middle.value(surface, uv) + shift, 2),
        tuple(notch + shift for notch in notches),
        float(cut.area),
        float(region.area),
        float(shear.max()),
        float(surface.areas[shear > ply.cloth.locking_angle].sum() / surface.area),
        piece + 1 if several else 0,
        tuple(slit + shift for slit in slits),
        tuple(line + shift for line in lap_lines),
        within,
    )


def _remarks(pattern: Pattern, weave: Weave, ply: DrapedPly) -> list[str]:
    """Return what a maker should know about one pattern, in plain words."""
    remarks = []
    degrees = math.degrees(pattern.angle)
    head = f"{pattern.name} ({pattern.cloth}, {degrees:.0f} deg)"
    if pattern.locked_share > _VISIBLE_LOCKED:
        piece = ply.pieces[max(pattern.piece - 1, 0)].triangles
        worst = piece[int(np.argmax(np.abs(ply.drape.shear[piece])))]
        x, y, z = ply.surface.centroids[worst]
        remarks.append(
            f"{head}: {100.0 * pattern.locked_share:.1f} % of its area shears past the locking "
            f"angle of {math.degrees(pattern.locking_angle):.0f} deg, up to "
            f"{math.degrees(pattern.largest_shear):.0f} deg near ({x:.0f}, {y:.0f}, {z:.0f}) mm; "
            "the cloth will wrinkle there. Have cuts proposed, turn the ply, move the start "
            "point or take a looser cloth."
        )
    if ply.drape.yarn_stretch > (_LOOSE if weave is Weave.MAT else _VISIBLE_STRETCH):
        remarks.append(
            f"{head}: the cloth would have to stretch or gather by "
            f"{100.0 * ply.drape.yarn_stretch:.1f} % on average; make a trial in cheap cloth "
            "before you cut."
        )
    if not ply.drape.at_rest:
        remarks.append(
            f"{head}: the computation stopped before the cloth had come to rest; take the "
            "pattern as a rough guide and leave more margin."
        )
    return remarks
