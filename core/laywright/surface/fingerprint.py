"""How a face is known again after an edit of the part.

A CAD program may give a face's name to another face when the part is edited.  Each face has a
fingerprint: area, centroid, mean normal and length of its edge.  After an edit of a dimension
every fingerprint has changed a little, so the question is not "is it equal" but "which face of
the part as it is now is nearest", under a distance that does not depend on size:

    d^2 = ln(area ratio)^2 + ln(edge ratio)^2 + (2 |change of mean normal|)^2
          + (shift of centroid / root of the picked face's area)^2

The rule:

1. A face with d <= `face_match` to the face of the same name is the same face.
2. Otherwise it is the same face if d <= 1.5 and every other face of the part is at least twice
   as far: the edit was moderate and no other face comes into question.
3. Otherwise the name is not trusted.  The error names the nearest face, so that it can be
   offered.

Where the fingerprints of *all* faces before the edit are at hand, a stretch and shift of the
whole part are taken out first: centroids count relative to the part's middle and spread along
each axis.  Limits 1.5 and 2 are our own choice: a box may grow by half in one direction, while
names swapped among the walls of a box or among neighbouring holes are refused.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, Vector
from laywright.errors import FaceError
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = ["FaceFingerprint", "difference", "fingerprint", "fingerprints", "match"]

_NORMAL_WEIGHT = 2.0
_MODERATE = 1.5
_CLEAR = 2.0


@dataclass(frozen=True)
class FaceFingerprint:
    """What tells a face from the others of a part.

    Attributes
    ----------
    name : str
        Name of the face.
    area : float, mm^2
        Its area.
    centroid : tuple of 3 float, mm
        Its centroid.
    normal : tuple of 3 float
        Mean normal: of length 1 on a flat face, 0 on a closed wall.
    boundary_length : float, mm
        Length of its edge.
    """

    name: str
    area: float
    centroid: Vector
    normal: Vector
    boundary_length: float


def fingerprint(surface: Surface, patch: int) -> FaceFingerprint:
    """Return the fingerprint of one patch."""
    return fingerprints(surface)[patch]


def fingerprints(surface: Surface) -> tuple[FaceFingerprint, ...]:
    """Return the fingerprints of all patches, in their order.

    Examples
    --------
    >>> import numpy as np
    >>> points = np.array([[0, 0, 0], [3, 0, 0], [0, 4, 0]])
    >>> triangle = Surface.single(points, np.array([[0, 1, 2]]), "Face7")
    >>> (found,) = fingerprints(triangle)
    >>> found.name, found.area, found.normal, found.boundary_length
    ('Face7', 6.0, (0.0, 0.0, 1.0), 12.0)
    """
    count = len(surface.patch_names)
    area = np.bincount(surface.patches, weights=surface.areas, minlength=count)
    safe = np.where(area > 0.0, area, 1.0)

    def mean(values: FloatArray) -> FloatArray:
        columns = [
            np.bincount(surface.patches, weights=surface.areas * column, minlength=count) / safe
            for column in values.T
        ]
        return np.stack(columns, axis=1)

    centroid, normal = mean(surface.centroids), mean(surface.normals)
    table = surface.edges
    length = np.linalg.norm(
        surface.vertices[table.ends[:, 1]] - surface.vertices[table.ends[:, 0]], axis=1
    )
    left = np.where(table.left >= 0, surface.patches[table.left], -1)
    right = np.where(table.right >= 0, surface.patches[table.right], -1)
    rim = np.zeros(count)
    for here, there in ((left, right), (right, left)):
        counted = (here >= 0) & (here != there)
        rim += np.bincount(here[counted], weights=length[counted], minlength=count)
    return tuple(
        FaceFingerprint(
            name,
            float(area[i]),
            _vector(centroid[i]),
            _vector(normal[i]),
            float(rim[i]),
        )
        for i, name in enumerate(surface.patch_names)
    )


def difference(one: FaceFingerprint, other: FaceFingerprint) -> float:
    """Return the size-free distance between two fingerprints; see the module's head."""
    root = math.sqrt(max(one.area, TOLERANCES.zero_area))
    shift = math.dist(one.centroid, other.centroid) / root
    turn = _NORMAL_WEIGHT * math.dist(one.normal, other.normal)
    growth = _log_ratio(one.area, other.area, root**2)
    rim = _log_ratio(one.boundary_length, other.boundary_length, root)
    return math.hypot(growth, rim, turn, shift)


def match(
    wanted: tuple[FaceFingerprint, ...],
    present: tuple[FaceFingerprint, ...],
    before: tuple[FaceFingerprint, ...] = (),
) -> None:
    """Check that every picked face still is the face of its name.

    Parameters
    ----------
    wanted : tuple of FaceFingerprint
        The picked faces, as they were when they were last taken.
    present : tuple of FaceFingerprint
        All faces of the part as it is now.
    before : tuple of FaceFingerprint
        All faces of the part when the picked ones were taken, if known: larger edits are then
        followed.

    Raises
    ------
    FaceError
        If a name is gone or cannot be trusted; it names the nearest face.
    """
    if before:
        wanted, present = _aligned(wanted, before, present)
    for face in wanted:
        _check(face, present)


def _check(face: FaceFingerprint, present: tuple[FaceFingerprint, ...]) -> None:
    ranked = sorted((difference(face, other), other.name) for other in present)
    same = [distance for distance, name in ranked if name == face.name]
    if not ranked:
        raise FaceError(face.name, "a part without faces", "the picked face", "pick a face again")
    nearest, best = ranked[0]
    if not same:
        raise FaceError(
            face.name,
            "no face of this name any more",
            "the face that was picked",
            f"pick it again; {best} is the most like it",
        )
    if same[0] <= TOLERANCES.face_match:
        return
    others = [distance for distance, name in ranked if name != face.name]
    if same[0] <= _MODERATE and (not others or _CLEAR * same[0] <= others[0]):
        return
    if best != face.name:
        remedy = f"pick it again; {best} is the most like it"
    else:
        remedy = "look whether it is the right one and pick it again"
    raise FaceError(
        face.name,
        f"a face that differs from the picked one by {same[0]:.2g} "
        f"(the nearest, {best}, by {nearest:.2g})",
        f"at most {_MODERATE} and every other face twice as far",
        remedy,
    )


def _aligned(
    wanted: tuple[FaceFingerprint, ...],
    before: tuple[FaceFingerprint, ...],
    present: tuple[FaceFingerprint, ...],
) -> tuple[tuple[FaceFingerprint, ...], tuple[FaceFingerprint, ...]]:
    """Return both with the part's own shift and stretch taken out of the centroids and areas."""
    size = math.sqrt(sum(face.area for face in before))
    return (
        tuple(_normalised(face, before, size) for face in wanted),
        tuple(_normalised(face, present, size) for face in present),
    )


def _normalised(
    face: FaceFingerprint, part: tuple[FaceFingerprint, ...], size: float
) -> FaceFingerprint:
    low, high = _extent(part)
    spread = np.maximum(high - low, 0.05 * float((high - low).max()) + 1e-12)
    place = (np.array(face.centroid) - 0.5 * (low + high)) / spread
    scale = size / math.sqrt(sum(other.area for other in part))
    return FaceFingerprint(
        face.name,
        face.area * scale**2,
        _vector(place * size / 2.0),
        face.normal,
        face.boundary_length * scale,
    )


def _extent(part: tuple[FaceFingerprint, ...]) -> tuple[FloatArray, FloatArray]:
    centroids = np.array([face.centroid for face in part])
    return centroids.min(axis=0), centroids.max(axis=0)


def _log_ratio(one: float, other: float, scale: float) -> float:
    least = 1e-6 * scale + 1e-12
    return math.log((other + least) / (one + least))


def _vector(values: FloatArray) -> Vector:
    x, y, z = (float(f"{value:.12g}") + 0.0 for value in values.tolist())
    return x, y, z
