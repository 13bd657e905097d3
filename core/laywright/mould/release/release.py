"""Will the part leave the mould along the pull, and where not.

A place of the working surface holds the part back if it *faces away* from the pull or if it
is *hidden*: another place of the mould hangs over it.  Draft is the angle between the pull and
the surface, ``asin(n . pull)``; below the wanted draft a part leaves with difficulty only.
"""

from __future__ import annotations

import dataclasses
import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray, Vector, floats, ints, unit_vector
from laywright.errors import GeometryError, LimitError
from laywright.mould.release.parting import PartingSettings, part_surface
from laywright.mould.release.pull import PullFound, find_pull
from laywright.mould.release.regions import UndercutRegion, regions_of
from laywright.mould.release.undercut import undercut_of
from laywright.mould.release.visibility import STANDING, TRACE
from laywright.mould.release.wanted_draft import check_wanted_draft
from laywright.progress import Progress, part_of, silent
from laywright.stage import stage
from laywright.surface.cap import smallest_cap
from laywright.surface.face import MouldedFace
from laywright.surface.triangles import Surface
from laywright.wording import three_figures

__all__ = [
    "BELOW_DRAFT",
    "GOOD",
    "UNDERCUT",
    "ReleaseReport",
    "ReleaseSettings",
    "UndercutRegion",
    "check_release",
    "release_of",
]

UNDERCUT = "undercut"
BELOW_DRAFT = "below the wanted draft"
GOOD = "good"

_SEARCHED = 50_000
_PARTED = 20_000


@dataclass(frozen=True)
class ReleaseSettings:
    """What counts as good draft.

    Attributes
    ----------
    least_draft : float, radians
        Wanted draft; 2 degrees by default (common practice, no source: 1 degree at least,
        2 to 3 preferred, more for deep or rough moulds; `wanted_draft` gives it by surface).
    reason : str
        Why that much is wanted; said where it is not met.
    most_pieces : int
        Where no direction releases the part, the fewest pieces of a mould that do are sought,
        at most so many; 1 leaves the search out.
    """

    least_draft: float = math.radians(2.0)
    reason: str = ""
    most_pieces: int = 4

    def __post_init__(self) -> None:
        check_wanted_draft(self.least_draft)
        if not 1 <= self.most_pieces <= 4:
            raise LimitError("most pieces", str(self.most_pieces), "1 to 4", "set 1, 2, 3 or 4")


@dataclass(frozen=True, eq=False)
class ReleaseReport:
    """How a surface releases along a pull.

    Attributes
    ----------
    draft : (m,) float, radians
        Draft of every facet; negative where it faces away.
    facing_away : (m,) bool
        Whether a facet faces away from the pull.
    hidden_share : (m,) float
        Share of a facet that faces the pull but has something above it, 0 to 1.
    undercut_share : (m,) float
        Share of a facet that holds the part back, facets cut where the surface turns away.
    area_by_class : tuple of (str, float)
        Area of `UNDERCUT`, `BELOW_DRAFT` and `GOOD`, mm^2.
    least_draft : float, radians
        Least draft of all facets.
    undercut_area : float, mm^2
        Area that holds the part back.
    regions : tuple of UndercutRegion
        Connected undercut places, largest first.
    best_pull : tuple of 3 float
        Pull with the largest least draft.
    best_least_draft : float, radians
        Least draft along `best_pull`; negative where no single pull sees the whole surface.
    wanted_draft : float, radians
        The draft that was asked for.
    remarks : tuple of str
        What the maker should know, one sentence each.
    releasing : PullFound or None
        The best pull by search, where something is held back and a search was made.
    piece_pulls : tuple of tuple of 3 float
        Unit directions in which the part leaves the fewest pieces of a mould, where no single
        direction releases it and pieces were found that do; else none.
    digest : str
        Digest of the inputs.
    """

    draft: FloatArray
    facing_away: Array
    hidden_share: FloatArray
    undercut_share: FloatArray
    area_by_class: tuple[tuple[str, float], ...]
    least_draft: float
    undercut_area: float
    regions: tuple[UndercutRegion, ...]
    best_pull: Vector
    best_least_draft: float
    wanted_draft: float
    remarks: tuple[str, ...]
    releasing: PullFound | None = None
    piece_pulls: tuple[Vector, ...] = ()
    digest: str = ""

    @property
    def facet_classes(self) -> IntArray:
        """Class of every facet as its place in `area_by_class`: (m,) int.

        A facet that the edge of an undercut crosses counts where most of it lies.
        """
        steep = np.where(self.draft < self.wanted_draft - STANDING, 1, 2)
        return ints(np.where(self.undercut_share > 0.5, 0, steep), -1)


@stage("Release Check", version=5)
def check_release(
    face: MouldedFace,
    settings: ReleaseSettings = ReleaseSettings(),
    *,
    progress: Progress = silent,
) -> ReleaseReport:
    """Check whether a part leaves the mould of a moulded face.

    Parameters
    ----------
    face : MouldedFace
        The picked faces and their pull.
    settings : ReleaseSettings
        The wanted draft.
    progress : Progress
        Told how far the check is.

    Returns
    -------
    ReleaseReport
        Per facet of ``face.surface``, in its order; where something is held back, with the
        best pull that a search finds, and where that releases nothing either, the directions
        of the fewest pieces that do.
    """
    surface = face.working_surface()
    report = release_of(surface, face.pull, settings, progress=part_of(progress, 0.0, 0.3))
    if report.undercut_area <= TRACE * surface.area or len(surface.triangles) > _SEARCHED:
        return report
    found = find_pull(surface, progress=part_of(progress, 0.3, 0.5))
    report = dataclasses.replace(
        report, releasing=found, remarks=(*report.remarks, _found_words(found))
    )
    if found.releases or settings.most_pieces == 1 or len(surface.triangles) > _PARTED:
        return report
    wanted = PartingSettings(settings.most_pieces, settings.least_draft)
    parting = part_surface(surface, face.pull, wanted, progress=part_of(progress, 0.5, 1.0))
    pulls = parting.pulls
    if parting.undercut_area > 0.0 or len(pulls) > settings.most_pieces:
        words = f"No mould in {settings.most_pieces} pieces was found that releases the part."
        return dataclasses.replace(report, remarks=(*report.remarks, words))
    return dataclasses.replace(
        report, piece_pulls=pulls, remarks=(*report.remarks, _piece_words(pulls))
    )


def release_of(
    surface: Surface,
    pull: Vector,
    settings: ReleaseSettings = ReleaseSettings(),
    *,
    progress: Progress = silent,
) -> ReleaseReport:
    """Return how any surface releases along a pull; closed solids too.

    Parameters
    ----------
    surface : Surface
        Normals point to the side that the part leaves to.
    pull : tuple of 3 float
        Direction, any length.
    settings : ReleaseSettings
        The wanted draft.
    progress : Progress
        Told how far the check is.

    Returns
    -------
    ReleaseReport
        For facets of no area the draft is zero.
    """
    direction = unit_vector(pull)
    if surface.area <= 0.0:
        raise GeometryError(
            ", ".join(surface.patch_names), "no area", "a face with area", "pick another face"
        )
    progress(0.0, "measuring draft")
    tilt = surface.normals @ np.array(direction)
    draft = np.arcsin(np.clip(tilt, -1.0, 1.0))
    facing_away = tilt < -STANDING
    progress(0.2, "looking along the pull")
    held = undercut_of(surface, direction, math.sin(settings.least_draft))
    areas = surface.areas
    by_class = (
        (UNDERCUT, float(areas @ held.undercut)),
        (BELOW_DRAFT, float(areas @ held.steep)),
        (GOOD, float(areas @ (1.0 - held.undercut - held.steep))),
    )
    progress(0.8, "finding the best pull")
    cap = smallest_cap(surface.normals)
    regions = regions_of(surface, direction, held.undercut, draft)
    usable = areas > 0.0
    least = float(draft[usable].min())
    return ReleaseReport(
        floats(draft, -1),
        facing_away,
        floats(held.hidden, -1),
        floats(held.undercut, -1),
        by_class,
        least,
        by_class[0][1],
        regions,
        cap.axis,
        cap.least_draft,
        settings.least_draft,
        _remarks(surface, settings, regions, draft, by_class[1][1], cap.least_draft),
    )


def _remarks(
    surface: Surface,
    settings: ReleaseSettings,
    regions: tuple[UndercutRegion, ...],
    draft: FloatArray,
    below: float,
    best: float,
) -> tuple[str, ...]:
    remarks = [
        f"{region.patch} holds the part back over {three_figures(region.area)} mm^2, "
        f"{three_figures(region.depth)} mm deep along the pull."
        for region in regions[:5]
    ]
    if len(regions) > 5:
        rest = sum(region.area for region in regions[5:])
        remarks.append(f"{len(regions) - 5} more undercut places hold {three_figures(rest)} mm^2.")
    if below > TRACE * surface.area:
        steep = np.where(draft >= -STANDING, draft, math.inf)
        worst = int(np.argmin(np.where(surface.areas > 0.0, steep, math.inf)))
        remarks.append(
            f"{surface.patch_names[surface.patches[worst]]} has a draft of "
            f"{math.degrees(max(draft[worst], 0.0)):.1f} deg, wanted "
            f"{math.degrees(settings.least_draft):.1f} deg, "
            f"over {three_figures(below)} mm^2 in all."
        )
        if settings.reason:
            remarks.append(f"That much is wanted because {settings.reason}.")
    if best < -STANDING:
        remarks.append("No single pull sees the whole surface: it needs a mould of several parts.")
    return tuple(remarks)


def _direction(pull: Vector) -> str:
    x, y, z = (0.0 + round(number, 3) for number in pull)
    return f"({x:g}, {y:g}, {z:g})"


def _piece_words(pulls: tuple[Vector, ...]) -> str:
    *others, last = (_direction(pull) for pull in pulls)
    return (
        f"A mould in {len(pulls)} pieces releases the part, no fewer were found: it leaves them "
        f"along {', '.join(others)} and {last}."
    )


def _found_words(found: PullFound) -> str:
    searched = (
        f", the best that a search down to {math.degrees(found.resolution):.2g} deg found"
        if found.resolution
        else ""
    )
    if found.releases:
        return (
            f"The part would leave along {_direction(found.pull)} with a least draft of "
            f"{math.degrees(found.least_draft):.1f} deg{searched}."
        )
    return (
        f"Along {_direction(found.pull)}{searched}, {three_figures(found.undercut_area)} mm^2 "
        "would still be "
        "held back: part the mould."
    )
