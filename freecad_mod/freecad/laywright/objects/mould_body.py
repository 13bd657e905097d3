"""Mould Body: the closed solid that is printed, in one piece still."""

from freecad.laywright import bridge
from freecad.laywright.objects.base import Property, StageObject, fresh_result
from laywright.mould.body import MouldBody, MouldSettings, build_body

__all__ = ["MouldBodyObject"]


class MouldBodyObject(StageObject):
    """Moulded face offset for the laminate, run-off, base and scribed trim line."""

    stage = build_body
    result_type = MouldBody
    host_type = "Mesh::FeaturePython"
    icon = "mould_body.svg"
    properties = (
        Property("Face", "Link", "The Moulded Face that it forms"),
        Property("Layup", "Link", "The Layup whose thickness it allows for"),
        Property("RunOff", "Length", "Width of the run-off beyond the trim line (mm)", "25 mm"),
        Property("BaseHeight", "Length", "Height below the lowest point of the edge (mm)", "8 mm"),
        Property("ScribeDepth", "Length", "Depth of the scribed trim line (mm)", "0.4 mm"),
        Property("ScribeWidth", "Length", "Width of the scribed trim line (mm)", "0.8 mm"),
        Property(
            "PrintShrinkage",
            "Vector",
            "Shrinkage of the print along x, y, z (%), made up for by a larger body",
        ),
    )
    reports = (
        Property("Volume", "Volume", "Volume of the body (mm³)"),
        Property(
            "LargestDeviation",
            "Length",
            "Largest distance of the working area from the wanted surface, the chord of the "
            "triangles included (mm)",
        ),
        Property("Remarks", "StringList", "What was allowed for, and what is not done"),
    )

    def inputs(self, obj):
        face = fresh_result(obj.Face, "a Moulded Face", obj.Label)
        laminate = fresh_result(obj.Layup, "a Layup", obj.Label)
        shrinkage = obj.PrintShrinkage
        settings = MouldSettings(
            run_off=obj.RunOff.Value,
            base=obj.BaseHeight.Value,
            scribe_depth=obj.ScribeDepth.Value,
            scribe_width=obj.ScribeWidth.Value,
            shrinkage=(shrinkage.x / 100.0, shrinkage.y / 100.0, shrinkage.z / 100.0),
        )
        return face, laminate.thickness, settings

    def show(self, obj, result):
        obj.Mesh = bridge.mesh_from_solids([result.solid])
        obj.Volume = result.volume
        face = obj.Face.Proxy.kept(obj.Face)
        obj.LargestDeviation = face.deviation + result.largest_deviation
        obj.Remarks = list(result.remarks)
