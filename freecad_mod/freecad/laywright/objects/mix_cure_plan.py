"""Mix & Cure Plan: grams in cups, and hours at a temperature."""

from freecad.laywright.objects.base import Property, StageObject, fresh_result
from laywright.job.links import ply_cloths, with_mould_of
from laywright.mould.tiles.printer import load_printers
from laywright.shop.coupons.coupon_plan import CouponSettings, SpanRule
from laywright.shop.curing.cure_settings import CureSettings, Support
from laywright.shop.curing.profile import TimeRule
from laywright.shop.mixing.mix import MixSettings
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
        Property("Tiles", "Link", "The Print Tiles whose plastic the mould is made of"),
        Property("Temperature", "Float", "Temperature of the shop (°C)", 21.0),
        Property("ExtraShare", "Percent", "Extra for cups and brush (%)", 5),
        Property("FixedLoss", "Float", "Loss that does not grow with the part (g)", 0.0),
        Property("CupLimit", "Float", "Most that is mixed in one cup (g)", 100.0),
        Property("ScaleStep", "Float", "Smallest step of the scale (g)", 1.0),
        Property("SealCoats", "Integer", "Coats of mix on the mould before ply 1", 0),
        Property("SealCoatWeight", "Float", "Mix in one seal coat (g/m²)", 60.0),
        Property("FillCoats", "Integer", "Coats of mix over the last ply, to fill the weave", 0),
        Property("FillCoatWeight", "Float", "Mix in one fill coat (g/m²)", 90.0),
        Property("LayingTime", "Float", "Hands lay and wet out a square metre in (min)", 60.0),
        Property("PlyTime", "Float", "Every piece of cloth takes besides (min)", 5.0),
        Property(
            "MouldSoftening",
            "Float",
            "Where the mould's plastic softens, 0 for that of the printer's card (°C)",
            0.0,
        ),
        Property("PostCure", "Float", "Temperature of a post-cure, 0 for none (°C)", 0.0),
        Property("PostCureTime", "Float", "How long it is held (h)", 8.0),
        Property("Ramp", "Float", "Warming and cooling in an hour (°C)", 10.0),
        Property(
            "PostCureOn",
            "Enumeration",
            "What holds the part during the post-cure",
            [kind.value for kind in (Support.CRADLE, Support.MOULD)],
        ),
        Property(
            "TimeRule",
            "Enumeration",
            "How times are taken to another temperature",
            [kind.value for kind in TimeRule],
        ),
        Property("Coupons", "Integer", "Test pieces laid up beside the part, 0 for none", 0),
        Property(
            "CouponSpan",
            "Enumeration",
            "Distance of the supports that the test pieces are bent over",
            [rule.value for rule in SpanRule],
        ),
    )
    reports = (
        Property("ClothMass", "Float", "Cloth (g)"),
        Property("ResinMass", "Float", "Resin without hardener (g)"),
        Property("HardenerMass", "Float", "Hardener (g)"),
        Property("LayingHours", "Float", "From the first stir until the last ply lies (h)"),
        Property("GlassTransition", "Float", "Where the cured part softens (°C)"),
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
            seal_coats=obj.SealCoats,
            seal_coat_weight=obj.SealCoatWeight,
            fill_coats=obj.FillCoats,
            fill_coat_weight=obj.FillCoatWeight,
            square_metre_minutes=obj.LayingTime,
            ply_minutes=obj.PlyTime,
        )
        cure = CureSettings(
            temperature_c=obj.Temperature,
            mould_softening_c=obj.MouldSoftening or None,
            post_cure_c=obj.PostCure or None,
            post_cure_hours=obj.PostCureTime,
            post_cure_support=Support(obj.PostCureOn),
            ramp=obj.Ramp,
            rule=TimeRule(obj.TimeRule),
        )
        coupons = CouponSettings(obj.Coupons, SpanRule(obj.CouponSpan))
        settings = ShopSettings(mix, cure, coupons)
        if obj.Tiles is not None:
            settings = with_mould_of(settings, load_printers()[obj.Tiles.Printer])
        return ply_cloths(patterns, laminate), laminate, settings

    def show(self, obj, result):
        mix, cure = result.mix, result.cure
        obj.ClothMass = mix.cloth_g
        obj.ResinMass = mix.resin_g
        obj.HardenerMass = mix.hardener_g
        obj.LayingHours = mix.laying_minutes / 60.0
        obj.GlassTransition = cure.glass_transition_c
        obj.Cups = [
            f"cup {cup.number} for {', '.join(cup.uses)}: stir at {cup.stir_at_minutes:.0f} min, "
            f"resin to {cup.scale_after_resin:g} g, hardener to {cup.scale_after_hardener:g} g, "
            f"use within {cup.use_by_minutes:.0f} min"
            for cup in mix.cups
        ]
        obj.Cure = list(cure.steps)
        obj.Remarks = [*mix.remarks, *cure.warnings]
