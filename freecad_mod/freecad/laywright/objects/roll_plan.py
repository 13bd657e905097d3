"""Roll Plan: the patterns on the roll of each cloth."""

from dataclasses import replace

from freecad.laywright import bridge
from freecad.laywright.objects.base import Property, StageObject, fresh_result
from laywright.cloth.roll.roll import (
    Fault,
    Offcut,
    RollPlan,
    RollSettings,
    TurnOver,
    WidePatterns,
    plan_roll,
    roll_width,
)

__all__ = ["RollPlanObject"]

_BETWEEN = 200.0


class RollPlanObject(StageObject):
    """Length to buy and share used, with the grain of every piece kept along the roll."""

    stage = plan_roll
    result_type = RollPlan
    host_type = "Part::FeaturePython"
    icon = "roll_plan.svg"
    properties = (
        Property("Patterns", "Link", "The Cloth Patterns that are placed"),
        Property("Edge", "Length", "Unusable edge on each side of the roll (mm)", "10 mm"),
        Property("Gap", "Length", "Gap between the pieces (mm)", "5 mm"),
        Property("SearchTime", "Float", "Time spent looking for a shorter plan (s)", 5.0),
        Property(
            "Widths", "StringList", "Width of a roll where it is not the card's: cloth: 1.27 m"
        ),
        Property(
            "Offcuts", "StringList", "Offcuts that are used first: cloth: length x width in mm"
        ),
        Property(
            "Faults",
            "StringList",
            "Places on a roll that are left out: cloth: 1200 mm to 1230 mm, across 0 mm to 80 mm",
        ),
        Property("Parts", "Integer", "Number of parts that are cut at once", 1),
        Property("MirroredParts", "Integer", "Number of mirrored parts that are cut besides", 0),
        Property(
            "FaceDown",
            "Enumeration",
            "Whether pieces may be cut with the cloth face down",
            [choice.value for choice in TurnOver],
        ),
        Property(
            "WidePatterns",
            "Enumeration",
            "What happens to a pattern that is wider than its roll",
            [choice.value for choice in WidePatterns],
        ),
        Property("SoldBy", "Length", "Lengths that cloth is sold by (mm)", "100 mm"),
    )
    reports = (
        Property("Rolls", "StringList", "Length to cut and to buy (m), share used, of each cloth"),
        Property("ToBuy", "Length", "Cloth to buy, all rolls together (mm)"),
        Property("EdgeTape", "StringList", "Edge tape along the cut lines (m)"),
        Property("LeftOver", "StringList", "Largest rectangles that remain (mm)"),
        Property("CutList", "StringList", "Pieces in the order of cutting"),
        Property("Remarks", "StringList", "What to know about this plan"),
    )

    def inputs(self, obj):
        patterns = fresh_result(obj.Patterns, "Cloth Patterns", obj.Label)
        return patterns, RollSettings(
            widths=dict(roll_width(text) for text in obj.Widths),
            edge=obj.Edge.Value,
            gap=obj.Gap.Value,
            seconds=obj.SearchTime,
            offcuts=tuple(Offcut.read(text) for text in obj.Offcuts),
            faults=tuple(Fault.read(text) for text in obj.Faults),
            turn_over=TurnOver(obj.FaceDown),
            wide=WidePatterns(obj.WidePatterns),
            parts=obj.Parts,
            mirrored_parts=obj.MirroredParts,
            sold_by=obj.SoldBy.Value,
        )

    def coarse(self, inputs):
        patterns, settings = inputs
        return patterns, replace(settings, seconds=0.0)

    def show(self, obj, result):
        patterns = obj.Patterns.Proxy.kept(obj.Patterns)
        outlines, across = [], 0.0
        for layout in result.layouts:
            outlines += [
                (points, closed, (0.0, across)) for points, closed in layout.outlines(patterns)
            ]
            across += layout.width + _BETWEEN
        obj.Shape = bridge.lines_from_outlines(outlines)
        obj.Rolls = [_line(layout) for layout in result.layouts]
        obj.ToBuy = sum(layout.to_buy for layout in result.layouts)
        obj.EdgeTape = [
            f"{layout.title}: {layout.tape_20 / 1000:.1f} m of 20 mm tape, or "
            f"{layout.tape_50 / 1000:.1f} m of 50 mm tape, on one face"
            for layout in result.layouts
        ]
        obj.LeftOver = [
            f"{layout.title}: {b - a:.0f} x {high - low:.0f} mm"
            for layout in result.layouts
            for a, b, low, high in layout.left_over
        ]
        obj.CutList = [
            f"{layout.title}: {number}. {place.name}" + (", face down" if place.face_down else "")
            for layout in result.layouts
            for number, place in enumerate(layout.placements, 1)
        ]
        obj.Remarks = list(result.remarks)


def _line(layout):
    bought = f"buy {layout.to_buy / 1000:.2f} m, " if layout.to_buy else ""
    return (
        f"{layout.title}: {layout.length / 1000:.2f} m of {layout.width / 1000:.2f} m, "
        f"{bought}{100 * layout.share_used:.0f} % used"
    )
