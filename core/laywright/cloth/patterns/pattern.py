"""Flat patterns: one outline to cut for every ply, draped on the surface that the ply takes.

A pattern is drawn as the cloth lies on the bench with its upper side up, the side that will
look away from the mould.  Its x axis runs along the warp, which is the length of the roll.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.cloth.cuts.cuts import CutSettings
from laywright.cloth.cuts.stagger import clashes
from laywright.cloth.drape.datum import Datum, default_datum
from laywright.cloth.drape.even_mesh import even_mesh, spacing_for
from laywright.cloth.drape.fabric import fabric_of
from laywright.cloth.drape.start_search import FindStart, find_start
from laywright.cloth.patterns.flat_pattern import Pattern, flat_pattern, goods_of
from laywright.cloth.patterns.pattern_settings import PatternSettings
from laywright.cloth.patterns.sheets import lay_sheets
from laywright.cloth.plies.cover import Zone, cover_of
from laywright.cloth.plies.cut_remarks import clash_remarks, cut_remarks
from laywright.cloth.plies.draped_ply import DrapedPly
from laywright.cloth.plies.end_remarks import end_remarks
from laywright.cloth.plies.lay import Proposal, lay_plies
from laywright.laminate.laminate import Laminate
from laywright.laminate.materials import Weave
from laywright.progress import Progress, part_of, silent
from laywright.stage import stage
from laywright.surface.face import MouldedFace
from laywright.surface.offset import offset
from laywright.surface.triangles import Surface

__all__ = ["Pattern", "PatternSet", "PatternSettings", "make_patterns"]

_VISIBLE_STRETCH = 0.005
_VISIBLE_LOCKED = 0.0005
_LOOSE = 0.05
_MESHING = 0.2


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
    sheets : tuple of Pattern
        Patterns of the plain sheets that are cut besides, their number of the ply 0.
    digest : str
        Of the inputs.
    """

    patterns: tuple[Pattern, ...]
    draped: tuple[DrapedPly, ...]
    remarks: tuple[str, ...]
    proposals: tuple[Proposal, ...] = ()
    datum: Datum | None = None
    zones: tuple[Zone, ...] = ()
    sheets: tuple[Pattern, ...] = ()
    digest: str = ""

    @property
    def main(self) -> DrapedPly:
        """The first ply that covers the whole face."""
        return next(ply for ply in self.draped if not ply.local)


@stage("Cloth Patterns", version=6)
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
            flat_pattern(goods_of(number, name, ply), lies, piece, settings)
            for piece in range(len(lies.pieces))
        ]
        patterns += pieces
        for pattern in pieces:
            remarks += _remarks(pattern, ply.cloth.weave, lies)
        remarks += cut_remarks(name, lies, laid.proposal(number), cuts)
    remarks += clash_remarks(clashes([ply.cuts for ply in laid.plies], cuts))
    remarks += end_remarks(laminate, cover, laid.plies)
    areas = {n: ply.covered(working) for n, ply in enumerate(laid.plies, 1)}
    zones = cover.zones(laminate.layup.throughout, areas)
    sheets, sheet_remarks = lay_sheets(offset(working, laminate.thickness), datum, settings)
    return PatternSet(
        tuple(patterns),
        laid.plies,
        (*remarks, *sheet_remarks),
        laid.proposals,
        datum,
        zones,
        sheets,
    )


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
