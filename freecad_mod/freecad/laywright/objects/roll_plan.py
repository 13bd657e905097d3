"""Roll Plan: the patterns on the roll of each cloth."""

from dataclasses import replace

from freecad.laywright import bridge
from freecad.laywright.objects.base import Property, StageObject, fresh_result
from laywright.cloth.roll import RollPlan, RollSettings, plan_roll

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
    )
    reports = (Property("Rolls", "StringList", "Length to cut (m) and share used for each cloth"),)

    def inputs(self, obj):
        patterns = fresh_result(obj.Patterns, "Cloth Patterns", obj.Label)
        return patterns, RollSettings(
            edge=obj.Edge.Value, gap=obj.Gap.Value, seconds=obj.SearchTime
        )

    def coarse(self, inputs):
        patterns, settings = inputs
        return patterns, replace(settings, seconds=0.0)

    def show(self, obj, result):
        patterns = obj.Patterns.Proxy.kept(obj.Patterns)
        outlines, across = [], 0.0
        for roll in result.rolls:
            outlines += [
                (points, closed, (0.0, across)) for points, closed in roll.outlines(patterns)
            ]
            across += roll.width + _BETWEEN
        obj.Shape = bridge.lines_from_outlines(outlines)
        obj.Rolls = [
            f"{roll.cloth}: {roll.length / 1000:.2f} m of {roll.width / 1000:.2f} m, "
            f"{100 * roll.share_used:.0f} % used"
            for roll in result.rolls
        ]
