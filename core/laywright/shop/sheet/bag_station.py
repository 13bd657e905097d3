"""The page of the vacuum bag, where the process has one."""

from __future__ import annotations

from laywright.files.page import Note, Station, Steps, Table
from laywright.shop.bench.bag import BagPlan
from laywright.shop.sheet import cautions
from laywright.shop.sheet.station_parts import BY_HAND, remarks_of

__all__ = ["bag_station"]


def bag_station(bag: BagPlan, soaked: tuple[str, ...] = ()) -> Station:
    """Return the page of what lies on the laminate and over it.

    Parameters
    ----------
    bag : BagPlan
    soaked : tuple of str
        What to watch because of the resin that goes into it.
    """
    hose = f", hose {bag.hose_mm / 1000.0:.1f} m" if bag.hose_mm else ""
    return Station(
        "Bag",
        cautions.BAG,
        (
            Table(
                "Cut before any resin is mixed, in the order of laying",
                ("What", "Card", "Length, mm", "Width, mm", "Cut"),
                tuple(
                    (p.item, p.card, f"{p.length:.0f}", f"{p.width:.0f}", BY_HAND)
                    for p in bag.pieces
                ),
            ),
            Note(f"{bag.tape_card} {bag.tape_mm / 1000.0:.1f} m, with {bag.pleats} pleats{hose}."),
            *remarks_of(bag.remarks + soaked),
            Steps(bag.steps),
            Table(
                "Leak test",
                ("When", "Vacuum at the start, mbar", "After ten minutes, mbar", "By"),
                tuple((when, *(BY_HAND,) * 3) for when in ("Dry", "Closed over the wet laminate")),
            ),
        ),
    )
