"""From the CAD face to the surface that is printed, and what was allowed for on the way."""

from __future__ import annotations

from laywright.arrays import Vector
from laywright.mould.compensation import (
    Allowance,
    Compensation,
    growth_scale,
    print_scale,
    scale_items,
    spring_in_items,
    surface_items,
)
from laywright.mould.settings import MouldSettings
from laywright.surface.bends import bends_of
from laywright.surface.face import LaminateSide, MouldedFace, MouldSide
from laywright.surface.offset import offset
from laywright.surface.triangles import Surface

__all__ = ["compensations_of", "printed_surface", "scale_of"]

_BENDS = 20


def printed_surface(face: MouldedFace, thickness: float, settings: MouldSettings) -> Surface:
    """Return the working surface as it is printed: coats still to come.

    Parameters
    ----------
    face : MouldedFace
        The picked faces.
    thickness : float, mm
        Of the laminate.
    settings : MouldSettings
        Its allowances.
    """
    allowances = settings.allowances
    laid = allowances.size_of(Allowance.LAMINATE, thickness)
    working = face.working_surface(laid)
    return offset(working, -allowances.size_of(Allowance.COATS, allowances.coats))


def compensations_of(
    face: MouldedFace, thickness: float, settings: MouldSettings
) -> tuple[Compensation, ...]:
    """Return everything that is allowed for; see `printed_surface`."""
    bends = bends_of(face.surface)[:_BENDS] if settings.allowances.closing else ()
    inside = face.mould_side is MouldSide.INSIDE
    moved = thickness if inside == (face.laminate_side is LaminateSide.INSIDE) else 0.0
    return (
        *surface_items(thickness, moved, settings.allowances),
        *scale_items(settings.shrinkage, settings.allowances),
        *spring_in_items(bends, settings.allowances),
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
