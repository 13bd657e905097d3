"""The pages that come before the work: the clock and the shopping list."""

from __future__ import annotations

from laywright.files.page import Note, Station, Table
from laywright.shop.bench.shopping import ShoppingList
from laywright.shop.bench.timeline import Timeline, clock_text
from laywright.shop.sheet import cautions
from laywright.shop.sheet.station_parts import BY_HAND, remarks_of

__all__ = ["clock_station", "shopping_station"]


def clock_station(timeline: Timeline) -> Station:
    """Return the page that says when what begins."""
    rows = tuple(
        (
            clock_text(entry.start_minutes),
            entry.what,
            f"{entry.hands_minutes:.0f}" if entry.hands_minutes else "-",
            clock_text(entry.ready_minutes),
            BY_HAND,
        )
        for entry in timeline.entries
    )
    return Station(
        "Clock",
        cautions.CLOCK,
        (
            Note(
                f"Finished on {timeline.finish} at the earliest, with "
                f"{timeline.hands_minutes / 60.0:.1f} h of work. Printing comes before day 1."
            ),
            Table(
                "What begins when",
                ("Begins", "What", "Hands, min", "Over, waiting included", "Done at"),
                rows,
            ),
            *remarks_of(timeline.remarks),
        ),
    )


def shopping_station(shopping: ShoppingList) -> Station:
    """Return the page that goes to the shop."""
    parts = f"{shopping.parts} part{'s' if shopping.parts > 1 else ''}"
    rows = tuple(
        (
            line.item,
            f"{line.amount:g} {line.unit}",
            line.paid.value,
            "-" if line.price is None else f"{line.price:.2f} per {line.unit}",
            "-" if line.cost is None else _money(line.cost, shopping.currency),
            BY_HAND,
        )
        for line in shopping.lines
    )
    return Station(
        "Shopping list",
        cautions.SHOPPING,
        (
            Table(f"For {parts}", ("What", "Amount", "Paid", "Price", "Cost", "Got"), rows),
            _sum(shopping),
        ),
    )


def _sum(shopping: ShoppingList) -> Note:
    if len(shopping.unpriced) == len(shopping.lines):
        return Note("No prices yet: enter your own, and the cost of a part stands here.")
    missing = len(shopping.unpriced)
    gap = f" {missing} lines have no price yet and are not in it." if missing else ""
    return Note(
        f"One part costs {_money(shopping.each, shopping.currency)}, once paid is "
        f"{_money(shopping.once, shopping.currency)}; with its share of that "
        f"{_money(shopping.per_part, shopping.currency)} for each of {shopping.parts}, "
        f"{_money(shopping.total, shopping.currency)} in all.{gap}"
    )


def _money(amount: float, currency: str) -> str:
    return f"{amount:.2f} {currency}".strip()
