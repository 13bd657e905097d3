"""Scanned Part: a mesh from elsewhere, with its unit, its defects and its smooth regions."""

import math

from freecad.laywright import bridge
from freecad.laywright.objects.base import Property, StageObject
from laywright.errors import InputError
from laywright.surface.repair import RepairSettings
from laywright.surface.scan import NO_UNIT, MeshReading, take_mesh

__all__ = ["ScannedPartObject"]

_UNITS = [NO_UNIT, "mm", "cm", "m", "in"]
_LISTED = 40
_PLACES = 20


class ScannedPartObject(StageObject):
    """A mesh taken as the part; a Moulded Face takes its regions."""

    stage = take_mesh
    result_type = MeshReading
    host_type = "Mesh::FeaturePython"
    icon = "scanned_part.svg"
    properties = (
        Property("Source", "Link", "The mesh that is the part"),
        Property("Unit", "Enumeration", "Unit of the mesh's numbers", _UNITS),
        Property("Crease", "Angle", "A region ends where the surface turns by more", "20 deg"),
        Property("Mend", "Bool", "Whether small faults are mended; no point is moved", False),
        Property(
            "Scrap", "Float", "Pieces with a smaller share of the largest are left out (%)", 1.0
        ),
        Property("Hole", "Length", "Holes with a shorter edge are closed (mm)", "20 mm"),
    )
    reports = (
        Property("Facets", "Integer", "Number of triangles"),
        Property("Size", "Vector", "Length, width and height (mm)"),
        Property("Area", "Area", "Area of the mesh (mm²)"),
        Property("Regions", "StringList", "Smooth regions by falling area (mm²)"),
        Property("Defects", "StringList", "What was wrong with the mesh, and where (mm)"),
        Property("Changes", "StringList", "What was mended, and where (mm)"),
    )

    def inputs(self, obj):
        source = obj.Source
        if source is None or getattr(source, "Mesh", None) is None:
            raise InputError(obj.Label, "no mesh", "a mesh object of the document", "link one")
        points, triangles = self._arrays(source)
        mending = RepairSettings(obj.Scrap / 100.0, obj.Hole.Value) if obj.Mend else None
        crease = math.radians(obj.Crease.Value)
        return points, triangles, obj.Unit, crease, mending, source.Label

    def _arrays(self, source):
        """Return points and triangles; read once for each state of the mesh."""
        known = bridge.mesh_signature(source)
        if self._read is None or self._read[0] != known:
            self._read = (known, *bridge.mesh_arrays(source))
        return self._read[1:]

    def _forget(self):
        super()._forget()
        self._read = None

    def show(self, obj, result):
        surface = result.surface
        obj.Mesh = bridge.mesh_from_solids([surface])
        obj.Facets = len(surface.triangles)
        low, high = surface.bounds
        obj.Size = bridge.vector(high - low)
        obj.Area = surface.area
        areas = surface.patch_areas
        names = surface.patch_names[:_LISTED]
        obj.Regions = [
            f"{name}: {area:.0f} mm²" for name, area in zip(names, areas, strict=False)
        ] + ([f"and {len(areas) - _LISTED} more"] if len(areas) > _LISTED else [])
        obj.Defects = [defect.words(_PLACES) for defect in result.defects]
        obj.Changes = [change.words(_PLACES) for change in result.changes]
