"""A scanned or sculpted mesh as the part: unit, welding, mending, regions without a crease.

A mesh says nothing of its unit, so the person states it.  What was wrong with the mesh and what
was changed is listed, each with its count and places where to look.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, IntArray
from laywright.errors import GeometryError, UnitError
from laywright.progress import Progress, silent
from laywright.quantities import magnitude
from laywright.stage import stage
from laywright.surface.repair import RepairSettings, repair
from laywright.surface.triangles import Surface
from laywright.surface.weld import ONE_SIDED, Defect, smooth_patches, tidy
from laywright.tolerances import TOLERANCES
from laywright.wording import three_figures

__all__ = ["NO_UNIT", "MeshReading", "take_mesh"]

NO_UNIT = "not stated"
"""What stands for a unit that nobody has stated yet."""

_FATAL = ("edges with more than two triangles", ONE_SIDED)


@dataclass(frozen=True, eq=False)
class MeshReading:
    """A mesh as it was taken.

    Attributes
    ----------
    surface : Surface
        In mm, welded, turned one way, one patch for each region without a crease: Face1, Face2
        and so on by falling area.
    defects : tuple of Defect
        What was wrong with the mesh, by count and place.
    changes : tuple of Defect
        What was mended, where mending was asked for.
    digest : str
        Digest of the inputs.
    """

    surface: Surface
    defects: tuple[Defect, ...]
    changes: tuple[Defect, ...] = ()
    digest: str = ""


@stage("Scanned Part", version=2)
def take_mesh(
    vertices: FloatArray,
    triangles: IntArray,
    unit: str,
    crease: float = TOLERANCES.sharp_edge,
    mending: RepairSettings | None = None,
    name: str = "the mesh",
    *,
    progress: Progress = silent,
) -> MeshReading:
    """Take a heap of triangles as a part.

    Parameters
    ----------
    vertices : (n, 3) float
        Points, in `unit`.
    triangles : (m, 3) int
        Vertex indices; they need not share points nor be turned one way.
    unit : str
        Unit of the numbers, for example ``"mm"`` or ``"in"``.
    crease : float, radians
        Neighbouring triangles that meet at a larger turn belong to different regions.
    mending : RepairSettings or None
        What may be mended; None refuses edges with more than two triangles.
    name : str
        What the mesh is called in messages.
    progress : Progress
        Told how far it is.

    Raises
    ------
    UnitError
        If no unit is stated, or the size says that it is another one.
    GeometryError
        If there is no area, if edges have more than two triangles or the surface has one side.
    """
    if unit == NO_UNIT:
        raise UnitError(
            f"unit of {name}",
            "none stated; a mesh does not say what its numbers mean",
            "mm, cm, m or in",
            "state the unit that it was scanned or drawn in",
        )
    scale = magnitude(f"1 {unit}", "mm", f"unit of {name}")
    progress(0.0, "welding")
    surface, defects = tidy(scale * vertices, triangles)
    if len(surface.triangles) == 0:
        raise GeometryError(name, "no triangle with area", "a surface", "export it again")
    _ask_for_unit(name, surface, unit)
    changes: tuple[Defect, ...] = ()
    left = defects
    if mending is not None:
        progress(0.4, "mending")
        mended = repair(surface, mending)
        surface, changes, left = mended.surface, mended.changes, mended.left
    for defect in left:
        if defect.kind in _FATAL:
            raise GeometryError(
                name,
                str(defect),
                "a surface with at most two triangles on every edge and two sides",
                "repair the mesh",
            )
    progress(0.7, "finding regions")
    return MeshReading(smooth_patches(surface, crease), defects, changes)


def _ask_for_unit(name: str, surface: Surface, unit: str) -> None:
    """Refuse a size that says that the unit is another one."""
    size = float(np.ptp(surface.vertices, axis=0).max())
    if TOLERANCES.least_part <= size <= TOLERANCES.largest_part:
        return
    small = size < TOLERANCES.least_part
    raise UnitError(
        f"unit of {name}",
        f"a part {three_figures(size)} mm long when its numbers are read in '{unit}'",
        f"{TOLERANCES.least_part:g} mm to {TOLERANCES.largest_part / 1000:g} m",
        f"state its unit: are its numbers in {'metres or inches' if small else 'millimetres'}",
    )
