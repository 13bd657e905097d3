from __future__ import annotations

from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.shop.curing.cure_settings import CureSettings
from laywright.shop.mixing.mix import PlyCloth
from laywright.shop.plan import ShopSettings, plan_shop
from laywright.shop.record.record import Readings, weigh_in
from laywright.shop.record.weighed_part import WeighedPart, weigh_part
from laywright.values import pack, unpack

MATERIALS = load_materials()
CLOTH = MATERIALS.cloth("E-glass twill weave 200 g/m^2")
LAMINATE = analyse(
    Layup((Ply(CLOTH, 0.0),) * 3, MATERIALS.resin("Laminating epoxy, slow hardener"))
)
PIECES = tuple(PlyCloth(n, CLOTH.name, 4e5, 200.0) for n in (1, 2, 3))
SHOP = plan_shop(PIECES, LAMINATE, ShopSettings(cure=CureSettings(mould_softening_c=70.0)))
READINGS = Readings(SHOP.mix.cloth_g, 260.0, 480.0, (0.75, 0.8), date="2026-11-25")


def test_the_record_stays_what_it_was_when_the_plan_goes_on():
    """From the stored part alone the very same record comes out again."""
    part = weigh_part(LAMINATE, SHOP, READINGS, PIECES)
    assert part.record == weigh_in(LAMINATE, SHOP, READINGS)
    stored = unpack(WeighedPart, pack(part))
    inputs = (stored.laminate, stored.shop, stored.readings, stored.pieces)
    assert weigh_part.digest(*inputs) == part.digest
    assert weigh_part(*inputs).record == part.record
