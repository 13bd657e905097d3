"""Which facets a piece of a mould can be drawn away from, and along which pulls.

A piece behind a facet leaves along the pull if the facet does not face away and if nothing of
the part lies in its way: a line from the facet against the pull, into the mould, must not meet
the working surface again.  That is the hidden test of `laywright.mould.release.visibility` on the
surface turned over, looked at from the other end.
"""

from __future__ import annotations

import math

import numpy as np

from laywright.arrays import Array, FloatArray, IntArray, Vector
from laywright.mould.frame import upright
from laywright.mould.release.pull import cap_directions
from laywright.mould.release.sampled import barely_hidden
from laywright.mould.release.visibility import STANDING, hidden_share
from laywright.progress import Progress, silent
from laywright.surface.cap import smallest_cap
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = ["barely_held", "candidate_pulls", "held_share", "leaves_along"]

_SPREAD = math.radians(25.0)
_ROUND = math.radians(15.0)
_ALIKE = math.cos(math.radians(1.5))
_TOUCHED = 1e-4
_FLAT_SHARE = 0.01
_MOST_FLAT = 12
_SLIGHT = math.sin(2.0 * TOLERANCES.chord_angle)


def held_share(surface: Surface, pull: Vector) -> FloatArray:
    """Return the share of every facet that a piece behind it cannot leave: (m,) float.

    Parameters
    ----------
    surface : Surface
        Normals from the mould into the laminate, mm.
    pull : tuple of 3 float
        Unit direction in which the part leaves the piece.

    Notes
    -----
    A ten-thousandth of a facet counts as none: facets that stand along the pull are looked at
    a hair outside.
    """
    tilt = surface.normals @ np.array(pull)
    x, y, z = pull
    met = hidden_share(surface.flipped(), (-x, -y, -z))
    return np.where(tilt < -STANDING, 1.0, np.where(met > _TOUCHED, met, 0.0))


def barely_held(surface: Surface, pull: Vector, facets: IntArray) -> Array:
    """Return which of some facets (k,) hold a piece by less than triangles are exact: (k,) bool.

    Parameters
    ----------
    surface : Surface
        Normals from the mould into the laminate, mm.
    pull : tuple of 3 float
        Unit direction in which the part leaves the piece.
    facets : (k,) int
        Facets that the piece cannot leave.

    Notes
    -----
    Chords of a face that is curved two ways stand across each other by up to their distance
    from the face, so a few facets along a silhouette face away though the face does not.  Set
    back into the mould by `TOLERANCES.chord`, such facets leave; a real undercut is deeper.
    """
    x, y, z = pull
    barely = surface.normals[facets] @ np.array(pull) >= -_SLIGHT
    turned = surface.flipped()
    barely[barely] = barely_hidden(turned, (-x, -y, -z), facets[barely], TOLERANCES.chord)
    return np.asarray(barely)


def leaves_along(
    surface: Surface, pulls: FloatArray, facets: IntArray, progress: Progress = silent
) -> Array:
    """Return which of some facets (s,) seem to leave along which pulls (k, 3): (k, s) bool.

    Those that barely hold a piece count as leaving.  Found at sample points of every facet;
    `held_share` knows exactly, and takes longer.
    """
    found = surface.normals[facets] @ pulls.T >= -_SLIGHT
    turned = surface.flipped()
    for index, (x, y, z) in enumerate(pulls.tolist()):
        progress(index / len(pulls), "looking along candidate pulls")
        some = found[:, index]
        away = (-x, -y, -z)
        found[some, index] = barely_hidden(turned, away, facets[some], TOLERANCES.chord)
    return np.asarray(found.T)


def candidate_pulls(surface: Surface, wanted: Vector) -> FloatArray:
    """Return directions that are worth trying as pulls, each with its opposite: (k, 3) float.

    First the wanted pull, the axes and directions across the wanted pull, 15 degrees apart,
    then the pull with the largest least draft, the normals of large flat places and the lines
    in which these meet (along them both stand), then directions spread over the sphere, 25
    degrees apart.
    """
    flats = _flat_normals(surface)
    lines = [np.cross(a, b) for i, a in enumerate(flats) for b in flats[:i]]
    rows = [
        np.array([wanted]),
        np.eye(3),
        _around(wanted),
        np.array([smallest_cap(surface.normals).axis]),
        flats,
        *(line[None] for line in lines if np.linalg.norm(line) > 0.2),
        cap_directions(np.array([0.0, 0.0, 1.0]), math.pi, _SPREAD),
    ]
    listed = np.concatenate(rows)
    listed = listed / np.linalg.norm(listed, axis=1, keepdims=True)
    kept = np.empty((0, 3))
    for axis in np.stack([listed, -listed], axis=1).reshape(-1, 3):
        if not (kept @ axis > _ALIKE).any():
            kept = np.concatenate([kept, axis[None]])
    return np.asarray(kept + 0.0, dtype=np.float64)


def _around(axis: Vector) -> FloatArray:
    """Return directions across an axis: (k, 3) float."""
    turn = np.arange(0.0, math.pi, _ROUND)
    level = np.stack([np.cos(turn), np.sin(turn), np.zeros(len(turn))], axis=1)
    return np.asarray(level @ upright(axis))


def _flat_normals(surface: Surface) -> FloatArray:
    """Return the normals of the largest flat places, by area: (k, 3) float."""
    rounded: IntArray = np.round(surface.normals * 500.0).astype(np.int64)
    _, first, index = np.unique(rounded, axis=0, return_index=True, return_inverse=True)
    area = np.bincount(index.reshape(-1), weights=surface.areas)
    order = np.argsort(-area, kind="stable")[:_MOST_FLAT]
    order = order[area[order] > _FLAT_SHARE * surface.area]
    return np.asarray(surface.normals[first[order]], dtype=np.float64)
