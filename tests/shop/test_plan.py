from __future__ import annotations

import pytest

from laywright.errors import InputError
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.shop.coupons.coupon_plan import CouponSettings
from laywright.shop.curing.cure import plan_cure
from laywright.shop.curing.cure_settings import CureSettings
from laywright.shop.mixing.mix import MixSettings, PlyCloth
from laywright.shop.plan import ShopPlan, ShopSettings, plan_shop
from laywright.values import pack, unpack

MATERIALS = load_materials()
RESIN = MATERIALS.resin("Laminating epoxy, slow hardener")
MAT = MATERIALS.cloth("E-glass chopped strand mat 300 g/m^2")
GLASS = MATERIALS.cloth("E-glass plain weave 163 g/m^2")
LAMINATE = analyse(Layup((Ply(MAT, 0.0), Ply(GLASS, 0.0)), RESIN))
SETTINGS = ShopSettings(cure=CureSettings(mould_softening_c=70.0))
PLIES = (PlyCloth(1, MAT.name, 2e5, 300.0), PlyCloth(2, GLASS.name, 2e5, 163.0))


def test_each_ply_gets_the_resin_of_its_cloth():
    plan = plan_shop(PLIES, LAMINATE, SETTINGS)
    assert plan.mix.ply_resin_g == pytest.approx((120.0, 32.6))
    mass = plan.mix.cloth_g + plan.mix.laminate_resin_g
    assert mass == pytest.approx(LAMINATE.areal_mass * 0.2, rel=1e-12)
    assert plan.mix.resin_share == pytest.approx(LAMINATE.resin_share, rel=1e-12)


def test_cure_is_that_of_the_resin():
    settings = ShopSettings(MixSettings(temperature_c=25.0), CureSettings(25.0, 70.0))
    plan = plan_shop(PLIES, LAMINATE, settings)
    assert pack(plan.cure) == pack(plan_cure(RESIN, settings.cure, LAMINATE.resin_share))
    assert plan.mix.cups[0].use_by_minutes == plan.cure.pot_life_minutes


def test_plan_survives_storage_and_knows_its_inputs():
    plan = plan_shop(PLIES, LAMINATE, SETTINGS)
    assert pack(unpack(ShopPlan, pack(plan))) == pack(plan)
    assert unpack(ShopSettings, pack(SETTINGS)) == SETTINGS
    assert plan.digest == plan_shop.digest(PLIES, LAMINATE, SETTINGS)
    other = analyse(Layup((Ply(MAT, 0.1), Ply(GLASS, 0.0)), RESIN))
    assert plan.digest != plan_shop.digest(PLIES, other, SETTINGS)


@pytest.mark.parametrize("number", [0, 3])
def test_cloth_of_a_ply_that_is_not_there(number):
    with pytest.raises(InputError, match="plies 1 to 2 of the layup"):
        plan_shop((PlyCloth(number, "cloth", 1e5, 200.0),), LAMINATE, SETTINGS)


def test_a_mould_of_unknown_plastic_is_asked_about():
    with pytest.raises(InputError, match="softening temperature of the mould"):
        plan_shop(PLIES, LAMINATE, ShopSettings())


def test_coupons_beside_the_part_take_their_mix_from_its_cups():
    settings = ShopSettings(SETTINGS.mix, SETTINGS.cure, CouponSettings(5))
    plan = plan_shop(PLIES, LAMINATE, settings)
    assert plan.coupons is not None
    assert plan.mix.coupon_g == plan.coupons.resin_g
    assert plan.mix.cloth_g == plan_shop(PLIES, LAMINATE, SETTINGS).mix.cloth_g
    assert pack(unpack(ShopPlan, pack(plan))) == pack(plan)
    assert unpack(ShopSettings, pack(settings)) == settings
