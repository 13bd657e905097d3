"""The section [part]: a mesh, all of it, or faces by name, or regions by points on them."""

from __future__ import annotations

from pathlib import Path

from laywright.errors import InputError
from laywright.job.sections import Section, only, text_of
from laywright.job.setting_values import section_of, settings_of, vector_of
from laywright.quantities import magnitude
from laywright.surface.read import read_mesh
from laywright.surface.region import named_faces, region_at
from laywright.surface.repair import RepairSettings
from laywright.surface.triangles import Surface

__all__ = ["read_part"]


def read_part(part: Section, folder: Path) -> Surface:
    """Return the part's mesh: the whole of it, faces by name, or regions by points on them."""
    known = {"mesh", "unit", "faces", "region", "crease", "mend"}
    only(part, known | {"pull", "laminate_side", "mould_side"}, "[part]")
    crease = magnitude(part.get("crease", "0.35 radian"), "radian", "[part] crease")
    mending = None
    if "mend" in part:
        mending = settings_of(RepairSettings, section_of(part, "mend"), "part.mend")
    mesh, unit = (text_of(part, key, "[part]") for key in ("mesh", "unit"))
    surface = read_mesh(folder / mesh, unit, crease, mending).surface
    faces, region = part.get("faces"), part.get("region")
    if faces is not None and region is not None:
        raise InputError("[part]", "both faces and region", "one of the two", "leave one out")
    if faces is not None:
        if not (isinstance(faces, list) and faces and all(isinstance(f, str) for f in faces)):
            raise InputError(
                "[part] faces", repr(faces), 'names such as ["Face1", "Face2"]', "correct it"
            )
        return named_faces(surface, tuple(faces))
    if region is not None:
        if not isinstance(region, list):
            raise InputError(
                "[part] region", repr(region), "points such as [[0, 0, 5]] in mm", "correct it"
            )
        return region_at(surface, tuple(vector_of(p, "[part] region") for p in region), crease)
    return surface
