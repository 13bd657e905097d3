"""A part that was weighed, together with the plan that it was made by.

A plan goes on changing after a part was made; its record must not.  So the plan stays with it.
"""

from __future__ import annotations

from dataclasses import dataclass

from laywright.laminate.laminate import Laminate
from laywright.shop.mixing.mix_settings import PlyCloth
from laywright.shop.plan import ShopPlan
from laywright.shop.record.readings import Readings
from laywright.shop.record.record import Record, weigh_in
from laywright.stage import stage

__all__ = ["WeighedPart", "weigh_part"]


@dataclass(frozen=True, eq=False)
class WeighedPart:
    """What was read, what follows from it, and what was planned.

    Attributes
    ----------
    laminate : Laminate
    shop : ShopPlan
        As they were when the part was made.
    readings : Readings
    record : Record
    pieces : tuple of PlyCloth
        As they were cut.
    digest : str
        Of its inputs.
    """

    laminate: Laminate
    shop: ShopPlan
    readings: Readings
    record: Record
    pieces: tuple[PlyCloth, ...] = ()
    digest: str = ""


@stage("Weigh-in", version=1)
def weigh_part(
    laminate: Laminate, shop: ShopPlan, readings: Readings, pieces: tuple[PlyCloth, ...] = ()
) -> WeighedPart:
    """Return the record of a part with the plan that it was made by; see `weigh_in`."""
    return WeighedPart(laminate, shop, readings, weigh_in(laminate, shop, readings), pieces)
