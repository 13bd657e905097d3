"""Cloth Patterns: the flat pattern of every ply."""

import math
from dataclasses import replace

from freecad.laywright import bridge
from freecad.laywright.objects.base import Property, StageObject, fresh_result
from laywright.cloth.datum import Datum
from laywright.cloth.pattern import PatternSet, PatternSettings, make_patterns

__all__ = ["ClothPatternsObject"]

_BESIDE = 30.0
_COARSE = 1200  # triangles


class ClothPatternsObject(StageObject):
    """Patterns with margin, datum arrow and labels, laid out beside each other."""

    stage = make_patterns
    result_type = PatternSet
    host_type = "Part::FeaturePython"
    icon = "cloth_patterns.svg"
    properties = (
        Property("Face", "Link", "The Moulded Face that the cloth covers"),
        Property("Layup", "Link", "The Layup whose plies are cut"),
        Property("Margin", "Length", "Cloth beyond the trim line on every side (mm)", "20 mm"),
        Property(
            "DatumFrom",
            "Enumeration",
            "Where the datum arrow comes from",
            ["middle of the face, along it", "point and direction below"],
        ),
        Property("DatumPoint", "Vector", "Point of the datum arrow on the face (mm)"),
        Property("DatumDirection", "Vector", "Direction of the arrow", bridge.vector((1, 0, 0))),
    )
    reports = (
        Property("Count", "Integer", "Number of patterns"),
        Property("Patterns", "StringList", "Each pattern with its area (m²) and largest shear"),
        Property("LargestShear", "Angle", "Largest shear of any ply (degrees)"),
        Property("CutArea", "Area", "Area of all patterns (mm²)"),
        Property("Remarks", "StringList", "Where the cloth will not lie down by itself"),
    )

    def inputs(self, obj):
        face = fresh_result(obj.Face, "a Moulded Face", obj.Label)
        laminate = fresh_result(obj.Layup, "a Layup", obj.Label)
        datum = None
        if obj.DatumFrom != obj.getEnumerationsOfProperty("DatumFrom")[0]:
            point, direction = obj.DatumPoint, obj.DatumDirection
            datum = Datum((point.x, point.y, point.z), (direction.x, direction.y, direction.z))
        return face, laminate, datum, PatternSettings(margin=obj.Margin.Value)

    def coarse(self, inputs):
        *rest, settings = inputs
        return (*rest, replace(settings, triangles=min(_COARSE, settings.triangles)))

    def show(self, obj, result):
        outlines, along = [], 0.0
        for pattern in result.patterns:
            low = pattern.cut.min(axis=0)
            shift = (along - low[0], -low[1])
            outlines.append((pattern.cut, True, shift))
            outlines.append((pattern.trim, True, shift))
            along += pattern.cut[:, 0].max() - low[0] + _BESIDE
        obj.Shape = bridge.lines_from_outlines(outlines)
        obj.Count = len(result.patterns)
        obj.Patterns = [
            f"{p.name}: {p.cloth}, {math.degrees(p.angle):g}°, {p.area / 1e6:.4f} m², "
            f"largest shear {math.degrees(p.largest_shear):.1f}°"
            for p in result.patterns
        ]
        obj.LargestShear = math.degrees(max(p.largest_shear for p in result.patterns))
        obj.CutArea = sum(p.area for p in result.patterns)
        obj.Remarks = list(result.remarks)
