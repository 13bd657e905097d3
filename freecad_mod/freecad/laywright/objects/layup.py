"""Layup: the plies, from the mould outwards, and the laminate that they make."""

import math

from freecad.laywright import preferences
from freecad.laywright.objects.base import Property, StageObject
from laywright.errors import InputError
from laywright.laminate.laminate import Laminate, analyse
from laywright.laminate.plies import Layup, Ply, Process

__all__ = ["LayupObject"]


class LayupObject(StageObject):
    """Plies by cloth and angle, resin and process; thickness, mass and stiffness come out."""

    stage = analyse
    result_type = Laminate
    icon = "layup.svg"
    properties = (
        Property("Cloths", "StringList", "Cloth of each ply by its card; ply 1 touches the mould"),
        Property(
            "Angles",
            "FloatList",
            "Angle of each ply's warp from the datum arrow (degrees), counter-clockwise seen "
            "from the side away from the mould",
        ),
        Property("Resin", "String", "Resin system by its card"),
        Property("Process", "Enumeration", "How it is laid up", [kind.value for kind in Process]),
        Property(
            "ResinShare",
            "Percent",
            "Resin with hardener as a share of the laminate's mass, 0 for the usual share of the "
            "process (%)",
            0,
        ),
    )
    reports = (
        Property("Thickness", "Length", "Thickness of the laminate (mm)"),
        Property("ArealMass", "Float", "Mass of the laminate (g/m²)"),
        Property("FibreVolume", "Float", "Fibre volume fraction (%)"),
        Property("StiffnessAlong", "Pressure", "Modulus in plane along the datum arrow"),
        Property("StiffnessAcross", "Pressure", "Modulus in plane across the datum arrow"),
        Property("BendingAlong", "Pressure", "Modulus in bending along the datum arrow"),
        Property("BendingAcross", "Pressure", "Modulus in bending across the datum arrow"),
        Property("Remarks", "StringList", "What to know about this layup"),
    )

    def inputs(self, obj):
        if len(obj.Cloths) != len(obj.Angles) or not obj.Cloths:
            raise InputError(
                "plies",
                f"{len(obj.Cloths)} cloths and {len(obj.Angles)} angles",
                "one cloth and one angle for each ply, one ply at least",
                "complete the list",
            )
        materials = preferences.materials()
        plies = tuple(
            Ply(materials.cloth(cloth), math.radians(angle))
            for cloth, angle in zip(obj.Cloths, obj.Angles, strict=True)
        )
        share = obj.ResinShare / 100.0 if obj.ResinShare else None
        return (Layup(plies, materials.resin(obj.Resin), Process(obj.Process), share),)

    def compute(self, obj, previous, inputs, progress):
        return self.stage.renew(previous, *inputs)

    def show(self, obj, result):
        obj.Thickness = result.thickness
        obj.ArealMass = result.areal_mass
        obj.FibreVolume = 100.0 * result.fibre_volume_fraction
        obj.StiffnessAlong = f"{result.in_plane.e_x} MPa"
        obj.StiffnessAcross = f"{result.in_plane.e_y} MPa"
        obj.BendingAlong = f"{result.bending.e_x} MPa"
        obj.BendingAcross = f"{result.bending.e_y} MPa"
        obj.Remarks = list(result.remarks)
