"""Mix & Cure Plan: grams in cups, and hours at a temperature."""

from freecad.laywright.objects.base import Property, StageObject, fresh_result
from laywright.job.links import ply_cloths
from laywright.shop.cure import CureSettings
from laywright.shop.mix import MixSettings
from laywright.shop.plan import ShopPlan, ShopSettings, plan_shop

__all__ = ["MixCurePlanObject"]


class MixCurePlanObject(StageObject):
    """Cloth, resin and hardener by mass, cups in order, times by temperature."""

    stage = plan_shop
    result_type = ShopPlan
    icon = "mix_cure_plan.svg"
    properties = (
        Property("Patterns", "Link", "The Cloth Patterns whose cloth is wetted"),
        Property("Layup", "Link", "The Layup with its resin"),
        Property("Temperature", "Float", "Temperature of the shop (°C)", 21.0),
        Property("ExtraShare", "Percent", "Extra for cups and brush (%)", 5),
        Property("FixedLoss", "Float", "Loss that does not grow with the part (g)", 0.0),
        Property("CupLimit", "Float", "Most that is mixed in one cup (g)", 100.0),
        Property("ScaleStep", "Float", "Smallest step of the scale (g)", 1.0),
        Property("MouldSoftening", "Float", "Softening of the mould's plastic (°C)", 52.0),
    )
    reports = (
        Property("ClothMass", "Float", "Cloth (g)"),
        Property("ResinMass", "Float", "Resin without hardener (g)"),
        Property("HardenerMass", "Float", "Hardener (g)"),
        Property("Cups", "StringList", "Cups in order, with readings of the scale"),
        Property("Cure", "StringList", "Times at the shop's temperature"),
        Property("Remarks", "StringList", "What to watch"),
    )

    def inputs(self, obj):
        patterns = fresh_result(obj.Patterns, "Cloth Patterns", obj.Label)
        laminate = fresh_result(obj.Layup, "a Layup", obj.Label)
        mix = MixSettings(
            extra_share=obj.ExtraShare / 100.0,
            fixed_loss_g=obj.FixedLoss,
            cup_limit_g=obj.CupLimit,
            scale_resolution_g=obj.ScaleStep,
            temperature_c=obj.Temperature,
        )
        cure = CureSettings(temperature_c=obj.Temperature, mould_softening_c=obj.MouldSoftening)
        return ply_cloths(patterns, laminate), laminate, ShopSettings(mix, cure)

    def compute(self, obj, previous, inputs, progress):
        return self.stage.renew(previous, *inputs)

    def show(self, obj, result):
        mix, cure = result.mix, result.cure
        obj.ClothMass = mix.cloth_g
        obj.ResinMass = mix.resin_g
        obj.HardenerMass = mix.hardener_g
        obj.Cups = [
            f"cup {cup.number} for ply {', '.join(str(ply) for ply in cup.plies)}: "
            f"resin to {cup.scale_after_resin:g} g, hardener to {cup.scale_after_hardener:g} g, "
            f"use within {cup.use_by_minutes:.0f} min"
            for cup in mix.cups
        ]
        obj.Cure = list(cure.steps)
        obj.Remarks = [*mix.remarks, *cure.warnings]
