"""Picking a region of a scan by points on it, bounded where the surface creases or ends."""

from __future__ import annotations

import numpy as np

from laywright.arrays import Vector, ints
from laywright.errors import InputError
from laywright.surface.distance import nearest_triangles
from laywright.surface.triangles import Surface
from laywright.surface.weld import smooth_patches
from laywright.tolerances import TOLERANCES
from laywright.wording import three_figures

__all__ = ["named_faces", "patches_at", "region_at"]

_NEAR = 0.01


def region_at(
    surface: Surface, points: tuple[Vector, ...], crease: float = TOLERANCES.sharp_edge
) -> Surface:
    """Return the smooth regions that given points lie on.

    Parameters
    ----------
    surface : Surface
        A welded mesh, mm.
    points : tuple of 3 float, mm
        One point on or close to each wanted region.
    crease : float, radians
        A region ends where neighbouring triangles meet at a larger turn.

    Returns
    -------
    Surface
        The triangles of these regions; patches called Region1, Region2 and so on in the order
        of the points, each region once.

    Raises
    ------
    InputError
        If a point lies far from the mesh.
    """
    return patches_at(smooth_patches(surface, crease, "Region"), points, "Region")


def patches_at(smooth: Surface, points: tuple[Vector, ...], title: str = "") -> Surface:
    """Return the patches that given points lie on; see `region_at`.

    Parameters
    ----------
    smooth : Surface
        A surface with patches, mm.
    points : tuple of 3 float, mm
        One point on or close to each wanted patch.
    title : str
        Patches are called by it and a number in the order of the points; empty keeps names.
    """
    if not points:
        raise InputError("picked region", "no point", "a point on the scan", "pick a point")
    places = np.array(points, dtype=np.float64)
    triangle, away = nearest_triangles(places, smooth)
    size = float(np.ptp(smooth.vertices, axis=0).max())
    worst = int(np.argmax(away))
    if not away[worst] <= _NEAR * size:
        x, y, z = points[worst]
        raise InputError(
            "picked region",
            f"a point ({x:.1f}, {y:.1f}, {z:.1f}) mm that lies {three_figures(away[worst])} "
            "mm off the mesh",
            f"a point within {three_figures(_NEAR * size)} mm of it",
            "pick a point on the mesh, in millimetres",
        )
    wanted = list(dict.fromkeys(smooth.patches[triangle].tolist()))
    place = np.full(len(smooth.patch_names), -1)
    place[wanted] = np.arange(len(wanted))
    part = smooth.part(np.isin(smooth.patches, wanted))
    names = tuple(
        f"{title}{i + 1}" if title else smooth.patch_names[patch] for i, patch in enumerate(wanted)
    )
    return Surface(part.vertices, part.triangles, ints(place[part.patches], -1), names)


def named_faces(surface: Surface, names: tuple[str, ...]) -> Surface:
    """Return the faces of a surface that bear given names.

    Raises
    ------
    InputError
        If there is no face of such a name.
    """
    for name in names:
        if name not in surface.patch_names:
            raise InputError(
                "picked faces",
                f"'{name}'",
                f"names from '{surface.patch_names[0]}' to '{surface.patch_names[-1]}'",
                "correct the name",
            )
    numbers = [surface.patch_names.index(name) for name in names]
    part = surface.part(np.isin(surface.patches, numbers))
    place = np.full(len(surface.patch_names), -1)
    place[numbers] = np.arange(len(numbers))
    return Surface(part.vertices, part.triangles, ints(place[part.patches], -1), tuple(names))
