"""The stations of the job sheet from roll to mould: cut cloth, mix, lay up."""

from __future__ import annotations

import math

from laywright.files.framing import gathered
from laywright.files.page import Block, Card, Cards, Note, Picture, Station, Steps, Table
from laywright.shop.bench.roll_summary import RollLine
from laywright.shop.bench.summaries import (
    LaminateSummary,
    PatternLine,
)
from laywright.shop.mixing.mix import MixPlan
from laywright.shop.sheet import cautions
from laywright.shop.sheet.station_parts import ANGLES, BY_HAND, pictured, remarks_of

__all__ = ["cut_station", "lay_up_station", "mix_station"]

_PATTERNS = 9  # pictures of patterns on a page
_ACROSS, _CELL = 3, (54.0, 32.0)  # mm, of each
_ROLL = (85.0, 30.0)  # mm


def cut_station(patterns: tuple[PatternLine, ...], rolls: tuple[RollLine, ...]) -> Station:
    """Return the page of shears and scale."""
    blocks: list[Block] = [
        Table(
            "Cloth",
            (
                "From",
                "Width, mm",
                "Cut, mm",
                "Buy, m",
                "Used, %",
                "Tape 20 | 50 mm, m",
                "Rest, mm",
            ),
            tuple(
                (
                    r.cloth,
                    f"{r.width:.0f}",
                    f"{r.length:.0f}",
                    f"{r.to_buy / 1000.0:.2f}" if r.to_buy else "at hand",
                    f"{100.0 * r.share_used:.0f}",
                    f"{r.tape[0] / 1000.0:.1f} | {r.tape[1] / 1000.0:.1f}",
                    " ".join(f"{long:.0f} x {wide:.0f}" for long, wide in r.left_over[:1])
                    or "none",
                )
                for r in rolls
            ),
        )
    ]
    drawn = [roll.drawing for roll in rolls if roll.drawing is not None]
    side_by_side = drawn[0] if len(drawn) == 1 else gathered("Rolls", drawn, cell=_ROLL)
    blocks += pictured("The warp runs along the roll", side_by_side if drawn else None, 42.0)
    blocks += [
        Steps(
            (
                "Paper patterns: both bars on every page must measure 100 mm.",
                "Lay each pattern with its warp arrow along the roll and the written side up.",
                "Tape over the cut line, half on either side, then cut through the tape; write ply "
                "and arrow on it. Aramid is taped on both faces: twice that length.",
                "Weigh every piece before any resin is poured and write it down.",
            )
        ),
        *_cut_lists(rolls),
        Table(
            "Weigh-in of the dry cloth",
            ("Ply", "Cloth", "Angle, °", "Area, m²", "Shear, °", "Planned, g", "Weighed, g"),
            tuple(
                (
                    f"{p.ply}",
                    p.cloth,
                    f"{math.degrees(p.angle):.0f}",
                    f"{p.area * 1e-6:.4f}",
                    f"{math.degrees(p.largest_shear):.0f}",
                    f"{p.mass:.1f}",
                    BY_HAND,
                )
                for p in patterns
            ),
        ),
        *_wrinkles(patterns),
    ]
    shown = [p.drawing.without("check bar", "label") for p in patterns if p.drawing is not None]
    for start in range(0, len(shown), _PATTERNS):
        some = gathered("Patterns", shown[start : start + _PATTERNS], _ACROSS, _CELL)
        high = 42.0 * math.ceil(min(_PATTERNS, len(shown) - start) / _ACROSS)
        blocks.append(Picture("Patterns: solid datum arrow, dotted warp arrow", some, high))
    return Station("Cut cloth", cautions.CUT, tuple(blocks))


def _cut_lists(rolls: tuple[RollLine, ...]) -> tuple[Table, ...]:
    """Return the pieces of every length of cloth, from its free end."""
    return tuple(
        Table(
            f"{roll.cloth}: order of cutting from the free end; arrow ahead: away from it",
            (
                "No.",
                "Piece",
                "Along, mm",
                "Across, mm",
                "Length, mm",
                "Width, mm",
                "Face, arrow",
                "Cut",
            ),
            tuple(
                (
                    f"{line.number}",
                    line.piece,
                    f"{line.at[0]:.0f}",
                    f"{line.at[1]:.0f}",
                    f"{line.size[0]:.0f}",
                    f"{line.size[1]:.0f}",
                    f"{'down' if line.face_down else 'up'}, {'back' if line.turned else 'ahead'}",
                    BY_HAND,
                )
                for line in roll.pieces
            ),
        )
        for roll in rolls
        if roll.pieces
    )


def _wrinkles(patterns: tuple[PatternLine, ...]) -> tuple[Note, ...]:
    """Return which plies will wrinkle, if any."""
    locked = [f"{p.ply} ({p.locked_share:.0%} of it)" for p in patterns if p.locked_share > 0.0]
    if not locked:
        return ()
    return (
        Note(
            f"Ply {', '.join(locked)} shears past the angle at which its cloth locks: expect "
            "wrinkles there, and cut a dart or a splice."
        ),
    )


def mix_station(laminate: LaminateSummary, mix: MixPlan) -> Station:
    """Return the page of scale and cups."""
    cups = tuple(
        (
            f"{cup.number}",
            ", ".join(cup.uses),
            f"{cup.scale_after_resin:g}",
            f"{cup.scale_after_hardener:g}",
            f"{cup.stir_at_minutes:.0f}",
            f"{cup.use_by_minutes:.0f}",
            BY_HAND,
            BY_HAND,
        )
        for cup in mix.cups
    )
    columns = (
        "Cup",
        "For",
        "Scale after resin, g",
        "Scale after hardener, g",
        "Stir at, min",
        "Use within, min",
        "Stirred at",
        "Empty by",
    )
    return Station(
        "Mix",
        cautions.MIX,
        (
            Note(
                f"{laminate.resin}. In all {mix.resin_g:g} g of resin and {mix.hardener_g:g} g of "
                f"hardener, {mix.mix_g:g} g together, for {mix.cloth_g:.1f} g of dry cloth"
                + (f" and {mix.coats_g:.0f} g in coats" if mix.coats_g else "")
                + (f" and {mix.coupon_g:.0f} g in the plate of coupons" if mix.coupon_g else "")
                + "."
            ),
            Note("The same ratio in three ways: " + "; ".join(mix.ratio_texts) + "."),
            Table(
                "Cups: scale set to zero with the empty cup on it; minutes from the first stir",
                columns,
                cups,
            ),
            *remarks_of(mix.remarks),
            Steps(mix.steps),
            Table(
                "Batches",
                ("What", "Product", "Batch number", "Temperature, °C"),
                (("Resin", *(BY_HAND,) * 3), ("Hardener", *(BY_HAND,) * 3)),
            ),
        ),
    )


def lay_up_station(laminate: LaminateSummary, mix: MixPlan) -> Station:
    """Return the page of the mould: ply after ply, each with its picture and a box to tick."""
    minutes = dict(zip(mix.ply_numbers, mix.ply_minutes, strict=True))
    plies = tuple(
        Card(
            f"Ply {ply.ply}",
            (
                ply.cloth if ply.name in ("", f"ply {ply.ply}") else f"{ply.cloth} ({ply.name})",
                *((f"only {ply.extent}",) if ply.extent else ()),
                f"{math.degrees(ply.angle):.0f}° from the arrow; {ply.thickness:.2f} mm",
                f"{_cups_of(ply.ply, mix)}; about {minutes.get(ply.ply, 0.0):.0f} min",
                "Laid at, by:",
                BY_HAND,
            ),
            ply.drawing,
        )
        for ply in laminate.plies
    )
    core = laminate.core
    if core is not None:
        lines = (
            f"{core.name}, {core.thickness:g} mm",
            "ends chamfered 20 to 30°, pressed into wet resin, no air below it",
            "Laid at, by:",
            BY_HAND,
        )
        plies = (*plies[: core.after], Card("Core", lines), *plies[core.after :])
    return Station(
        "Lay up",
        cautions.LAY_UP,
        (
            Note(
                f"{ANGLES} On every picture the datum arrow points to the right; dotted lines run "
                "along the warp."
            ),
            Cards(
                "In the order of laying",
                (*_coat_cards("seal", mix), *plies, *_coat_cards("fill", mix)),
            ),
            Steps(
                (
                    "Brush a thin coat of mix onto the mould.",
                    "Centre mark on the start point, arrow along the datum; work outwards.",
                    "Wet it out from below, press it into every corner, take off what is surplus: "
                    "the cloth looks wet, not shiny. Look for bridges, dry spots and air.",
                    "Tick the ply off before the next. Keep laps off seams and off each other.",
                )
            ),
            *_landings(laminate),
            Table(
                "Shop",
                ("First stir at", "°C", "Humidity, %", "Last ply laid at", "°C", "Humidity, %"),
                ((BY_HAND,) * 6,),
            ),
        ),
    )


def _landings(laminate: LaminateSummary) -> tuple[Block, ...]:
    """Return where start points and notches come to lie on the mould, where that is known."""
    if laminate.view is None:
        return ()
    words = list(dict.fromkeys(word for line in laminate.landings for word, _ in line.notches))
    return (
        Picture(
            "From above, along the pull; dotted threads leave the part where the notches point",
            laminate.view,
            50.0,
        ),
        Table(
            "Where patterns land, mm along the arrow | to its left, measured level",
            (
                "Pattern",
                "Start point from rear | right edge",
                *(f"{word.capitalize()} from the start" for word in words),
            ),
            tuple(
                (line.names, _pair(line.start), *(_pair(dict(line.notches).get(w)) for w in words))
                for line in laminate.landings
            ),
        ),
    )


def _pair(place: tuple[float, float] | None) -> str:
    return "-" if place is None else " | ".join(f"{round(part) + 0:d}" for part in place)


def _cups_of(ply: int, mix: MixPlan) -> str:
    numbers = [f"{cup.number}" for cup in mix.cups if ply in cup.plies]
    return f"cup{'s' if len(numbers) > 1 else ''} {', '.join(numbers) or '-'}"


def _coat_cards(kind: str, mix: MixPlan) -> tuple[Card, ...]:
    """Return a card for each seal or fill coat."""
    found = []
    for cup in mix.cups:
        for use in cup.uses:
            if use.startswith(kind):
                when = f"at {cup.stir_at_minutes / 60.0:.1f} h, when the rest has gelled"
                line = "before ply 1" if kind == "seal" else when
                found.append(
                    Card(use.capitalize(), (f"cup {cup.number}, {line}", "Done at, by:", BY_HAND))
                )
    return tuple(found)
