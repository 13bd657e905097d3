"""From where the part leaves the mould: the best pull, or the pull along a picked axis.

- The pull with the largest least draft is exact (`laywright.surface.cap`); if it sees the whole
  surface and nothing hides any of it, it is the answer.
- Where something is hidden along it, or no direction sees all normals, directions are searched
  from coarse to fine for the one with the least undercut area, and among equals for the
  largest least draft.  The area that faces away is known at once and can only grow by hidden
  places, so directions are looked along in that order until it rules out the rest.  The search
  looks at sample points; the leading directions are measured exactly in the end.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

import numpy as np

from laywright.arrays import FloatArray, Vector, unit_vector
from laywright.errors import GeometryError, InputError, LimitError
from laywright.mould.frame import upright
from laywright.mould.release.sampled import sampled_hidden
from laywright.mould.release.visibility import STANDING, TRACE, hidden_share
from laywright.progress import Progress, silent
from laywright.stage import stage
from laywright.surface.cap import smallest_cap
from laywright.surface.face import MouldSide
from laywright.surface.triangles import Surface
from laywright.wording import three_figures

__all__ = [
    "PullFound",
    "PullMethod",
    "cap_directions",
    "find_pull",
    "held_area",
    "pull_along",
    "toward",
]

_COARSE = math.radians(12.0)
_KEPT = 3
_MEASURED = 8
_GOLDEN = math.pi * (3.0 - math.sqrt(5.0))


class PullMethod(Enum):
    """How a pull was found."""

    EXACT = "largest least draft, exact"
    SEARCH = "least undercut, by search"


@dataclass(frozen=True)
class PullFound:
    """The best pull of a surface.

    Attributes
    ----------
    pull : tuple of 3 float
        Unit direction.
    least_draft : float, radians
        Least draft of all facets along it; negative where some face away.
    undercut_area : float, mm^2
        Area of the facets that face away or are hidden along it.
    method : PullMethod
        Exact, or by search.
    resolution : float, radians
        A search looked this close around its answer; 0 where the answer is exact.
    looks : int
        Directions along which hidden places were looked for.
    digest : str
        Digest of the inputs.
    """

    pull: Vector
    least_draft: float
    undercut_area: float
    method: PullMethod
    resolution: float
    looks: int
    digest: str = ""

    @property
    def releases(self) -> bool:
        """Whether nothing holds the part back along the pull."""
        return self.undercut_area == 0.0


@stage("Best Pull", version=3)
def find_pull(
    surface: Surface,
    resolution: float = math.radians(1.0),
    *,
    progress: Progress = silent,
) -> PullFound:
    """Return the pull along which least of a surface is held back.

    Parameters
    ----------
    surface : Surface
        Normals from the mould into the laminate, mm.
    resolution : float, radians
        Angle down to which a search goes, 0.1 to 12 degrees.
    progress : Progress
        Told how far the search is.

    Returns
    -------
    PullFound
        Exact where the pull with the largest least draft holds nothing back.

    Raises
    ------
    GeometryError
        If the surface has no area.
    LimitError
        If the resolution is out of range.
    """
    if not math.radians(0.1) - 1e-12 <= resolution <= _COARSE + 1e-12:
        raise LimitError(
            "resolution of the pull search",
            f"{three_figures(math.degrees(resolution))} deg",
            "0.1 to 12 deg",
            "set an angle such as 1 deg",
        )
    if surface.area <= 0.0:
        raise GeometryError(
            ", ".join(surface.patch_names), "no area", "a face with area", "pick another face"
        )
    search = _Search(surface)
    cap = smallest_cap(surface.normals)
    if held_area(surface, cap.axis) == 0.0:
        return PullFound(cap.axis, cap.least_draft, 0.0, PullMethod.EXACT, 0.0, 1)
    seen_whole = cap.least_draft > STANDING
    reach = math.pi / 2 if seen_whole else math.pi
    step = max(min(_COARSE, 0.5 * cap.least_draft if seen_whole else _COARSE), resolution)
    search.look_along(cap_directions(np.array(cap.axis), reach, step))
    rounds = max(1, math.ceil(math.log2(step / resolution)))
    for done in range(rounds):
        progress(done / rounds, "looking for a pull that releases")
        step = max(0.5 * step, resolution)
        for axis in search.best(_KEPT):
            search.look_along(cap_directions(axis, 2.0 * step, step))
    axis, held = search.measured_best()
    return PullFound(
        unit_vector(axis),
        math.asin(max(-1.0, min(1.0, search.least_tilt(axis)))),
        held,
        PullMethod.SEARCH,
        step,
        search.looks,
    )


def held_area(surface: Surface, pull: Vector) -> float:
    """Return the area of the facets that face away from a pull or are hidden along it, mm^2.

    Facets count whole by their own tilt; areas below a millionth of the surface count as none.
    """
    held = float(_facing_away(surface, np.array(unit_vector(pull))[None])[0])
    return _beyond_trace(
        held + float(surface.areas @ hidden_share(surface, unit_vector(pull))), surface
    )


def pull_along(surface: Surface, axis: Vector, mould_side: MouldSide) -> Vector:
    """Return the pull along a picked axis, in the sense that the mould of a part needs.

    Parameters
    ----------
    surface : Surface
        Picked faces, normals out of the part, mm.
    axis : tuple of 3 float
        Its sense does not count.
    mould_side : MouldSide
        Where the mould stands.
    """
    outward = 1.0 if mould_side is MouldSide.INSIDE else -1.0
    return toward(outward * surface.normals, surface.areas, axis)


def toward(normals: FloatArray, areas: FloatArray, axis: Vector) -> Vector:
    """Return the sense of an axis that more of a surface faces.

    Parameters
    ----------
    normals : (m, 3) float
        Unit normals from the mould into the laminate.
    areas : (m,) float, mm^2
        Of the facets.
    axis : tuple of 3 float
        Along an edge, around a cylinder or square to a plane; its sense does not count.

    Raises
    ------
    InputError
        If the axis has no direction.

    Examples
    --------
    >>> toward(np.array([[0.0, 0.0, 1.0]]), np.array([2.0]), (0.0, 0.0, -5.0))
    (0.0, 0.0, 1.0)
    """
    try:
        direction = np.array(unit_vector(axis))
    except ValueError as problem:
        raise InputError(
            "pull axis", str(problem), "an axis with a direction", "pick another edge or face"
        ) from problem
    seen = float(np.maximum(normals @ direction, 0.0) @ areas)
    behind = float(np.maximum(-(normals @ direction), 0.0) @ areas)
    return unit_vector(direction if seen >= behind else -direction)


def cap_directions(axis: FloatArray, reach: float, step: float) -> FloatArray:
    """Return directions spread evenly over a cap, its axis first: (k, 3) float.

    Parameters
    ----------
    axis : (3,) float
        Axis of the cap.
    reach : float, radians
        Angle from the axis to the edge; pi is the whole sphere.
    step : float, radians
        No direction of the cap is much farther than this from the nearest one.

    Notes
    -----
    A spiral with a golden turn (Vogel, 1979, eq. 1, carried to the sphere by equal areas).
    """
    share = math.sin(0.5 * reach) ** 2
    count = max(6, math.ceil(4.0 * math.pi * share / step**2))
    height = 1.0 - 2.0 * share * (np.arange(count) + 0.5) / count
    across = np.sqrt(np.maximum(1.0 - height**2, 0.0))
    turn = _GOLDEN * np.arange(count)
    local = np.stack([across * np.cos(turn), across * np.sin(turn), height], axis=1)
    x, y, z = axis.tolist()
    return np.asarray(np.concatenate([axis[None], local @ upright((x, y, z))]), dtype=np.float64)


def _facing_away(surface: Surface, directions: FloatArray) -> FloatArray:
    """Return the area that faces away from each of the directions (k, 3): (k,) mm^2."""
    area = np.empty(len(directions))
    for first in range(0, len(directions), 64):
        tilt = surface.normals @ directions[first : first + 64].T
        area[first : first + 64] = surface.areas @ (tilt < -STANDING)
    return area


def _beyond_trace(area: float, surface: Surface) -> float:
    return area if area > TRACE * surface.area else 0.0


class _Search:
    """Directions looked along so far, with what was found."""

    def __init__(self, surface: Surface) -> None:
        self._surface = surface
        self._usable = surface.normals[surface.areas > 0.0]
        self._found: dict[tuple[float, ...], tuple[float, float]] = {}

    @property
    def looks(self) -> int:
        """Number of directions along which hidden places were looked for."""
        return len(self._found)

    def least_tilt(self, axis: FloatArray) -> float:
        """Return the sine of the least draft along a direction."""
        return float((self._usable @ axis).min())

    def look(self, axis: FloatArray) -> float:
        """Return the undercut area along a direction as far as samples show it, mm^2."""
        key = tuple(axis.tolist())
        if key not in self._found:
            x, y, z = key
            hidden = float(self._surface.areas @ sampled_hidden(self._surface, (x, y, z)))
            away = float(_facing_away(self._surface, axis[None])[0])
            self._found[key] = (
                _beyond_trace(away + hidden, self._surface),
                -self.least_tilt(axis),
            )
        return self._found[key][0]

    def look_along(self, axes: FloatArray) -> None:
        """Look along all directions (k, 3) that can still be the best of them."""
        bound = _facing_away(self._surface, axes)
        bound = np.where(bound > TRACE * self._surface.area, bound, 0.0)
        tilt = (self._usable @ axes.T).min(axis=0)
        least = math.inf
        for index in np.lexsort((-tilt, bound)).tolist():
            if bound[index] >= least:
                return
            least = min(least, self.look(axes[index]))

    def measured_best(self) -> tuple[FloatArray, float]:
        """Return the best direction and its undercut area, the leading ones measured exactly."""
        leading = self.best(_MEASURED)
        areas = []
        for x, y, z in (axis.tolist() for axis in leading):
            areas.append(held_area(self._surface, (x, y, z)))
            if areas[-1] == 0.0:
                break
        best = int(np.argmin(areas))
        return leading[best], areas[best]

    def best(self, count: int) -> list[FloatArray]:
        """Return the best directions, the best one first."""
        order = sorted(self._found, key=lambda key: self._found[key])
        return [np.array(key) for key in order[:count]]
