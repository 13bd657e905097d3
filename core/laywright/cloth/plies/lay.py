"""Laying the plies: every ply on its own surface, with its cuts, one after the other."""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise

import numpy as np

from laywright.arrays import FloatArray, Vector, line_length
from laywright.cloth.cuts.cuts import Cut, CutSettings, Joint, LaidCut, Propose, joint_of
from laywright.cloth.cuts.cutting import cut_surface
from laywright.cloth.cuts.pieces import Piece, drape_pieces
from laywright.cloth.cuts.propose import propose
from laywright.cloth.cuts.trial import Ground
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.drape import drape
from laywright.cloth.drape.even_mesh import even_mesh, spacing_for
from laywright.cloth.drape.fabric import Fabric, Start, fabric_of
from laywright.cloth.drape.flatten import flatten
from laywright.cloth.drape.kin import Kin
from laywright.cloth.drape.place import nearest_place
from laywright.cloth.drape.trouble import limits_of
from laywright.cloth.plies.cover import Cover
from laywright.cloth.plies.draped_ply import DrapedPly
from laywright.cloth.plies.local_ply import lay_on_region
from laywright.errors import InputError
from laywright.laminate.laminate import Laminate
from laywright.laminate.plies import Ply
from laywright.progress import Progress, part_of, silent
from laywright.surface.offset import offset
from laywright.surface.triangles import Surface

__all__ = ["DrapedPly", "LaidPlies", "Proposal", "lay_plies"]

_COARSE = 900
_HALF = 0.5


@dataclass(frozen=True, eq=False)
class Proposal:
    """Cuts that are proposed for a ply.

    Attributes
    ----------
    ply : int
        Number of the ply.
    cuts : tuple of LaidCut
        None where no cuts were found that help.
    share_before, share_after : float
        Share of the area past a limit, on the coarse mesh of the search.
    """

    ply: int
    cuts: tuple[LaidCut, ...]
    share_before: float
    share_after: float


@dataclass(frozen=True, eq=False)
class LaidPlies:
    """All plies of a layup.

    Attributes
    ----------
    plies : tuple of DrapedPly
        Ply 1 first.
    proposals : tuple of Proposal
        For the plies that pass a limit.
    """

    plies: tuple[DrapedPly, ...]
    proposals: tuple[Proposal, ...]

    def proposal(self, number: int) -> Proposal | None:
        """Return what is proposed for a ply, if anything."""
        return next((found for found in self.proposals if found.ply == number), None)


def lay_plies(
    working: Surface,
    laminate: Laminate,
    datum: Datum,
    start: Start | None,
    cuts: CutSettings,
    *,
    cover: Cover | None = None,
    progress: Progress = silent,
) -> LaidPlies:
    """Drape every ply on its own surface.

    Parameters
    ----------
    working : Surface
        The working surface in even triangles, mm.
    laminate : Laminate
        Plies and their thicknesses.
    datum : Datum
        Start point and arrow.
    start : Start or None
        What the hand lays straight first; None takes what is usual for each cloth.
    cuts : CutSettings
        Cuts to make, and whether to propose more.
    cover : Cover or None
        Which plies lie where; None where every ply covers the whole face.
    progress : Progress
        Told how far it is.

    Returns
    -------
    LaidPlies
    """
    laying = _Laying(working, datum, start, cuts)
    plies = laminate.layup.plies
    for index, ply in enumerate(plies):
        inner = part_of(progress, index / len(plies), (index + 1) / len(plies))
        inner(0.0, f"draping {laminate.layup.ply_name(index + 1)}")
        height: float | FloatArray = float(laminate.ply_heights[index])
        if cover is not None:
            height = cover.heights(laminate, index + 1)
        if cover is not None and ply.extent is not None:
            laying.lay_local(index + 1, ply, height, cover, inner)
        else:
            laying.lay(index + 1, ply, height, inner)
    return LaidPlies(tuple(laying.done), tuple(laying.proposals))


class _Laying:
    """The plies laid so far and what the next ones can take over from them."""

    def __init__(
        self, working: Surface, datum: Datum, start: Start | None, cuts: CutSettings
    ) -> None:
        self._working = working
        self._datum = datum
        self._start = start
        self._cuts = cuts
        self._flat: FloatArray | None = None
        self._kin = Kin()
        self._coarse: tuple[Surface, FloatArray] | None = None
        self._grounds: dict[tuple[str, float], Ground] = {}
        self._known: dict[tuple[str, float], tuple[FloatArray, ...]] = {}
        self._proposed: dict[int, tuple[LaidCut, ...]] = {}
        self.done: list[DrapedPly] = []
        self.proposals: list[Proposal] = []

    def lay_local(
        self,
        number: int,
        ply: Ply,
        height: float | FloatArray,
        cover: Cover,
        progress: Progress,
    ) -> None:
        """Lay a ply that covers a part of the face."""
        if any(cut.ply == number for cut in self._cuts.cuts):
            raise InputError(
                f"cut in ply {number}",
                "a ply that covers a part of the face",
                "a ply that covers the whole face",
                "take the cut out, or split the extent of the ply into two plies",
            )
        flat = self._flat_of(self._working)
        self.done.append(
            lay_on_region(
                number, ply, height, cover, flat, self._datum, self._start, progress=progress
            )
        )

    def lay(self, number: int, ply: Ply, height: float | FloatArray, progress: Progress) -> None:
        """Lay one ply on those laid so far."""
        surface = offset(self._working, height)
        fabric = fabric_of(ply.cloth)
        wanted = [(cut, False) for cut in self._cuts.made(number)]
        if self._cuts.propose is not Propose.NOTHING and not wanted:
            found = self._proposal(number, ply, fabric, part_of(progress, 0.0, _HALF))
            if self._cuts.propose is Propose.MADE:
                wanted += [(_as_cut(cut), True) for cut in found]
            progress = part_of(progress, _HALF, 1.0)
        if wanted:
            self.done.append(self._cut_ply(number, ply, surface, fabric, wanted, progress))
            return
        found_drape = drape(
            surface,
            fabric,
            self._datum,
            ply.angle,
            start=self._start,
            first=self._flat_of(surface),
            kin=self._kin,
            progress=progress,
        )
        whole = Piece(np.arange(len(surface.triangles)), self._datum)
        self.done.append(DrapedPly(surface, found_drape, (whole,)))

    def _cut_ply(
        self,
        number: int,
        ply: Ply,
        surface: Surface,
        fabric: Fabric,
        wanted: list[tuple[Cut, bool]],
        progress: Progress,
    ) -> DrapedPly:
        flat = self._flat_of(surface)
        paths = [_in_flat(surface, flat, cut.points) for cut, _ in wanted]
        opened = cut_surface(surface, flat, paths, f"ply {number}")
        laid = drape_pieces(
            opened, fabric, self._datum, ply.angle, start=self._start, progress=progress
        )
        cuts = [
            self._laid_cut(number, ply, seam.line, cut, proposed=proposed)
            for seam, (cut, proposed) in zip(opened.seams, wanted, strict=True)
        ]
        return DrapedPly(opened.surface, laid.drape, laid.pieces, opened.seams, tuple(cuts))

    def _laid_cut(
        self, number: int, ply: Ply, line: FloatArray, cut: Cut | None, *, proposed: bool
    ) -> LaidCut:
        """Return a cut as it lies, `cut` what was asked for."""
        joint = (cut.joint if cut else None) or joint_of(ply.cloth.weave)
        lap = self._cuts.lap if joint is Joint.LAP else 0.0
        length = line_length(line)
        bent = cut is not None and len(cut.points) > 2
        return LaidCut(number, line, joint, lap, length, proposed, bent)

    def _flat_of(self, surface: Surface) -> FloatArray:
        """Return a flat map; offset surfaces with the same triangles share one."""
        if not np.array_equal(surface.triangles, self._working.triangles):
            return flatten(surface)
        if self._flat is None:
            self._flat = flatten(self._working)
        return self._flat

    def _proposal(
        self, number: int, ply: Ply, fabric: Fabric, progress: Progress
    ) -> tuple[LaidCut, ...]:
        """Return the cuts proposed for a ply."""
        ground = self._ground(ply, fabric)
        near = range(number - self._cuts.plies_apart, number)
        avoid = [cut.line for n in near for cut in self._cuts_of(n)]
        avoid += [between(cut.points, ground.spacing) for cut in self._cuts.refused(number)]
        key = (ply.cloth.name, ply.angle)
        known = self._known.get(key, ())
        found = propose(ground, avoid, self._apart(ply), known, progress=progress)
        if found.bare.clear:
            return ()
        best = found.best or found.bare
        self._known[key] = best.paths
        laid = [
            self._laid_cut(number, ply, ground.on_surface(path), None, proposed=True)
            for path in best.paths
        ]
        cuts = tuple(
            replace(cut, bent=len(path) > 2) for cut, path in zip(laid, best.paths, strict=True)
        )
        self._proposed[number] = cuts
        self.proposals.append(Proposal(number, cuts, found.bare.share, best.share))
        return cuts

    def _ground(self, ply: Ply, fabric: Fabric) -> Ground:
        """Return the coarse mesh that cuts in a cloth at an angle are tried on."""
        if self._coarse is None:
            coarse = even_mesh(self._working, spacing_for(self._working, _COARSE))
            self._coarse = coarse, flatten(coarse)
        key = (ply.cloth.name, ply.angle)
        if key not in self._grounds:
            limits = limits_of(fabric, self._cuts.shear_limit)
            self._grounds[key] = Ground(
                *self._coarse, fabric, self._datum, ply.angle, self._start, limits
            )
        return self._grounds[key]

    def _apart(self, ply: Ply) -> float:
        """Return how far cuts of neighbouring plies stay apart; laps never lie over laps."""
        lap = self._cuts.lap if joint_of(ply.cloth.weave) is Joint.LAP else 0.0
        return max(self._cuts.stagger, lap)

    def _cuts_of(self, number: int) -> tuple[LaidCut, ...]:
        if not 1 <= number <= len(self.done):
            return ()
        return self.done[number - 1].cuts or self._proposed.get(number, ())


def _as_cut(cut: LaidCut) -> Cut:
    """Return a proposed cut as one to be made: straight between its points in the flat map."""
    return Cut(cut.ply, cut.points, cut.joint)


def _in_flat(surface: Surface, flat: FloatArray, points: tuple[Vector, ...]) -> FloatArray:
    """Return points near a surface in its flat map: (k, 2) float, mm."""
    places = [nearest_place(surface, np.array(point)) for point in points]
    return np.stack([place.value(surface, flat) for place in places])


def between(points: tuple[Vector, ...], step: float) -> FloatArray:
    """Return the straight line through points with a point about every `step` mm."""
    parts = [np.array(points[:1])]
    for start, end in pairwise(np.array(points)):
        count = max(1, int(np.ceil(np.linalg.norm(end - start) / step)))
        parts.append(start + (end - start) * (np.arange(count)[:, None] + 1) / count)
    return np.concatenate(parts)
