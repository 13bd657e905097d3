"""From the CAD face to the surface that is printed, and what was allowed for on the way."""

from __future__ import annotations

import dataclasses
import math

import numpy as np

from laywright.arrays import Vector
from laywright.laminate.drop_off import Buildup
from laywright.mould.body.compensation import (
    Allowance,
    Compensation,
    growth_scale,
    print_scale,
    scale_items,
    spring_in_items,
    surface_items,
)
from laywright.mould.body.local_plies import local_items, set_back_locally, thickness_throughout
from laywright.mould.body.settings import MouldSettings
from laywright.progress import Progress, silent
from laywright.surface.bends import bends_of
from laywright.surface.face import MouldedFace, MouldSide
from laywright.surface.offset import offset
from laywright.surface.opened import Opened, open_bends
from laywright.surface.triangles import Surface

__all__ = ["compensations_of", "opened_face", "opened_remarks", "printed_surface", "scale_of"]

_NOTICED = 0.1  # degrees
_CELLS = 16


def opened_face(
    face: MouldedFace,
    thickness: float | Buildup,
    settings: MouldSettings,
    *,
    progress: Progress = silent,
) -> Opened | None:
    """Return the picked faces opened by what their bends close, where that is asked for.

    Their triangles are divided, so that the map of distances can show what varies over a flat.

    Parameters
    ----------
    face : MouldedFace
        The picked faces.
    thickness : float, mm, or Buildup
        Of the laminate.
    settings : MouldSettings
        Its allowances.
    progress : Progress
        Told how far it is.
    """
    if not settings.allowances.opens:
        return None
    return open_bends(
        face.surface,
        settings.allowances.closing,
        thickness_throughout(thickness),
        progress=progress,
    )


def opened_remarks(face: MouldedFace, opened: Opened | None) -> tuple[str, ...]:
    """Return what opening does to the least draft along the pull, where it can be noticed."""
    if opened is None:
        return ()
    toward = 1.0 if face.mould_side is MouldSide.INSIDE else -1.0
    was, now = (
        math.degrees(math.asin(np.clip((toward * s.normals @ np.array(face.pull)).min(), -1, 1)))
        for s in (face.surface, opened.surface)
    )
    if abs(now - was) < _NOTICED:
        return ()
    found, drawn = (round(draft, 1) + 0.0 for draft in (now, was))
    return (
        f"Opened for spring-in, the mould has a least draft of {found:.1f} deg along the pull; the "
        f"part's own shape, which the Release Check looks at, has {drawn:.1f} deg.",
    )


def printed_surface(
    face: MouldedFace,
    thickness: float | Buildup,
    settings: MouldSettings,
    opened: Opened | None = None,
) -> Surface:
    """Return the working surface as it is printed: coats still to come.

    Parameters
    ----------
    face : MouldedFace
        The picked faces.
    thickness : float, mm, or Buildup
        Of the laminate.
    settings : MouldSettings
        Its allowances.
    opened : Opened or None
        As `opened_face` gives it.
    """
    if opened is not None:
        face = dataclasses.replace(face, surface=opened.surface)
    allowances = settings.allowances
    laid = allowances.size_of(Allowance.LAMINATE, thickness_throughout(thickness))
    working = set_back_locally(face, face.working_surface(laid), thickness, allowances)
    return offset(working, -allowances.size_of(Allowance.COATS, allowances.coats))


def compensations_of(
    face: MouldedFace,
    thickness: float | Buildup,
    settings: MouldSettings,
    opened: Opened | None = None,
) -> tuple[Compensation, ...]:
    """Return everything that is allowed for; see `printed_surface`."""
    listed = settings.allowances.closing and opened is None
    bends = bends_of(face.surface) if listed else ()
    throughout = thickness_throughout(thickness)
    moved = throughout if face.set_back else 0.0
    return (
        *surface_items(throughout, moved, settings.allowances),
        *local_items(face, thickness, settings.allowances),
        *scale_items(settings.shrinkage, settings.allowances),
        *spring_in_items(bends, settings.allowances, opened),
    )


def scale_of(settings: MouldSettings) -> Vector:
    """Return the scale of the print along its axes: shrinkage and growth made up for."""
    allowances = settings.allowances
    growth = growth_scale(allowances.expansion, allowances.warming)
    if Allowance.GROWTH in allowances.left_out:
        growth = 1.0
    scale = print_scale(settings.shrinkage)
    if Allowance.SHRINKAGE in allowances.left_out:
        scale = (1.0, 1.0, 1.0)
    x, y, z = (growth * part for part in scale)
    return x, y, z
