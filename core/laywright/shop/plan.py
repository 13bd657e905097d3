"""Mixing, curing and coupons of one job, from its laminate and the cloth of its plies."""

from __future__ import annotations

import dataclasses
import math
from dataclasses import dataclass, field

from laywright.errors import InputError
from laywright.laminate.laminate import Laminate
from laywright.shop.coupons.coupon_plan import CouponPlan, CouponSettings, plan_coupons
from laywright.shop.curing.cure import CurePlan, plan_cure
from laywright.shop.curing.cure_settings import CureSettings
from laywright.shop.mixing.mix import MixPlan, MixSettings, PlyCloth, plan_mix
from laywright.stage import stage

__all__ = ["ShopPlan", "ShopSettings", "plan_shop"]


@dataclass(frozen=True)
class ShopSettings:
    """Settings of the mixing, of the curing and of the coupons beside the part.

    Attributes
    ----------
    mix : MixSettings
    cure : CureSettings
    coupons : CouponSettings
    """

    mix: MixSettings = field(default_factory=MixSettings)
    cure: CureSettings = field(default_factory=CureSettings)
    coupons: CouponSettings = field(default_factory=CouponSettings)


@dataclass(frozen=True, eq=False)
class ShopPlan:
    """The mixing and the curing of one job.

    Attributes
    ----------
    mix : MixPlan
    cure : CurePlan
    core_g : float, g
        Core in the part; zero where there is none.
    coupons : CouponPlan or None
        Test pieces that are laid up beside the part.
    digest : str
        Of its inputs.
    """

    mix: MixPlan
    cure: CurePlan
    core_g: float = 0.0
    coupons: CouponPlan | None = None
    digest: str = ""


@stage("Mix & Cure Plan", version=4)
def plan_shop(plies: tuple[PlyCloth, ...], laminate: Laminate, settings: ShopSettings) -> ShopPlan:
    """Return the mixing and the curing for the plies of a laminate.

    Parameters
    ----------
    plies : tuple of PlyCloth
        The cloth of each ply; where a ply states no resin share of its own, that of the layup
        is taken.
    laminate : Laminate
    settings : ShopSettings

    Raises
    ------
    InputError
        If a ply is not in the layup, or nothing says where the mould softens.
    """
    layup = laminate.layup
    for piece in plies:
        if not 1 <= piece.ply <= len(layup.plies):
            raise InputError(
                "mixing plan",
                f"cloth for ply {piece.ply}",
                f"plies 1 to {len(layup.plies)} of the layup",
                "bring layup and patterns into agreement",
            )
    shared = tuple(
        piece
        if piece.resin_share is not None
        else dataclasses.replace(piece, resin_share=layup.ply_resin_share(piece.ply))
        for piece in plies
    )
    area = (
        math.fsum(piece.covered_mm2 for piece in plies if piece.ply == layup.throughout[0]) * 1e-6
    )
    wanted = settings.coupons
    coupons = plan_coupons(laminate, wanted.span, wanted.count) if wanted.count else None
    plate_g = 0.0 if coupons is None else coupons.resin_g
    return ShopPlan(
        plan_mix(shared, layup.resin, laminate.resin_share, settings.mix, plate_g),
        plan_cure(layup.resin, settings.cure, laminate.resin_share),
        laminate.core_areal * area,
        coupons,
    )
