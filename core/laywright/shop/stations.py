"""The stations of the job sheet, each from the summaries that it needs.

Waits and numbers of coats that stand in the steps are common practice without a source; every
one of them yields to the data sheet of the product.
"""

from __future__ import annotations

import math

import numpy as np

from laywright.files.charts import Curve, Level, line_chart
from laywright.files.drawing import Drawing
from laywright.files.framing import gathered
from laywright.files.page import Block, Note, Picture, Station, Steps, Table
from laywright.shop import cautions
from laywright.shop.cure import CurePlan
from laywright.shop.mix import MixPlan
from laywright.shop.plan import ShopPlan
from laywright.shop.release_coats import CoatingSettings, plan_coats
from laywright.shop.summaries import (
    LaminateSummary,
    PartSummary,
    PatternLine,
    ReleaseSummary,
    RollLine,
    TileSummary,
)

__all__ = [
    "assemble_station",
    "cure_station",
    "cut_station",
    "lay_up_station",
    "mix_station",
    "part_station",
    "print_station",
    "record_station",
    "release_station",
    "trim_station",
]

_BY_HAND = ""
_PATTERNS = 6  # pictures of patterns on a page
_ANGLES = (
    "Angles run from the datum arrow, counter-clockwise seen from the side away from the mould. "
    "Ply 1 touches the mould."
)


def part_station(part: PartSummary, release: ReleaseSummary, laminate: LaminateSummary) -> Station:
    """Return the page that says what is made, and what to check before anything is."""
    x, y, z = part.size
    facts = (
        ("Size along x, y, z", f"{x:.1f} x {y:.1f} x {z:.1f} mm"),
        ("Moulded area", _square_metres(part.area)),
        ("Process and resin", f"{laminate.process}, {laminate.resin}"),
        ("Thickness when cured", f"{laminate.thickness:.2f} mm in {len(laminate.plies)} plies"),
        ("Mass when trimmed, about", f"{_trimmed_mass(part, laminate):.0f} g"),
        ("Fibre volume", f"{100.0 * laminate.fibre_volume_fraction:.0f} % of the laminate"),
        (
            "Moduli when pulled: along, across, shear",
            f"{_gpa(laminate.e_x)}, {_gpa(laminate.e_y)}, {_gpa(laminate.g_xy)} GPa",
        ),
        (
            "Moduli when bent: along, across",
            f"{_gpa(laminate.bending_x)}, {_gpa(laminate.bending_y)} GPa",
        ),
        ("Triangles off the drawn part by", f"at most {part.deviation:.3f} mm"),
        (
            "Least draft",
            f"{_degrees(release.least_draft)}, wanted {_degrees(release.wanted_draft)}",
        ),
        ("Undercut area", f"{release.undercut_area:.0f} mm²"),
    )
    return Station(
        "Part and check",
        cautions.PART,
        (
            *_picture("The part", part.picture, 75.0),
            Table("What is made", ("What", "Value"), facts),
            *_remarks(release.remarks + laminate.remarks),
            Steps(
                (
                    "Compare the size above with the drawing of the part, in mm.",
                    "Compare the version code at the foot of this page with the one in the job.",
                    "Gather the data sheets of resin, hardener, release agent and sealer.",
                )
            ),
        ),
    )


def print_station(tiles: TileSummary, cure: CurePlan) -> Station:
    """Return the page of the printer."""
    rows = tuple(
        (
            tile.name,
            f"{tile.row}, {tile.column}, {tile.layer}",
            " x ".join(f"{length:.1f}" for length in tile.size),
            f"{tile.mass:.0f}",
            _BY_HAND,
        )
        for tile in tiles.tiles
    )
    total = math.fsum(tile.mass for tile in tiles.tiles)
    columns = ("Tile", "Row, column, layer", "Size on the printer, mm", "Mass if solid, g", "Done")
    return Station(
        "Print",
        cautions.PRINT,
        (
            *_picture("The tiles pulled apart", tiles.picture, 65.0),
            Table(f"{len(rows)} tiles on {tiles.printer}, {total:.0f} g if solid", columns, rows),
            Note(
                f"The mould must stay below {cure.mould_limit_c:.0f} °C in use. Choose its plastic "
                "and keep it out of the sun accordingly."
            ),
            *_remarks(tiles.remarks),
            Steps(
                (
                    "Load the files as mm and compare the size of each tile with the table.",
                    "Print a piece of a joint first and try its fit.",
                    "Print every tile in the pose of its file; the moulded face looks up or "
                    "sideways, never onto the bed.",
                    "Measure each tile and tick it off; sort them by row and column.",
                )
            ),
        ),
    )


def assemble_station(tiles: TileSummary) -> Station:
    """Return the page on which tiles become a mould."""
    joint = (
        f"Glue the joints; the plan counts on {tiles.glue_gap:.2f} mm of glue in each. Scrape off "
        "what comes out on the moulded face."
        if len(tiles.tiles) > 1
        else "One tile: nothing to be glued."
    )
    return Station(
        "Assemble and seal",
        cautions.ASSEMBLE,
        (
            Steps(
                (
                    "Put the tiles together dry on a flat board; marks of row and column agree.",
                    joint,
                    "Measure the length, width and diagonals of the mould before the glue sets.",
                    "Fill seams and layer lines, let the filler cure, sand from 80 to 400 grit.",
                    "Seal with two thin coats, each dried as its data sheet says; sand between.",
                    "Hold the mould against a lamp and look for pinholes; seal them.",
                    "Check that scribe line and datum arrow are still to be seen.",
                )
            ),
            Table(
                "Measured on the mould",
                ("What", "Planned, mm", "Measured, mm", "By"),
                tuple(
                    (what, planned, _BY_HAND, _BY_HAND)
                    for what, planned in zip(
                        ("Along x", "Along y", "Along z", "Diagonals"),
                        (*_lengths(tiles.mould_size), "equal"),
                        strict=True,
                    )
                ),
            ),
        ),
    )


def release_station(release: ReleaseSummary, area: float) -> Station:
    """Return the page of the release agent, for a moulded area in mm^2."""
    undercut = (
        (
            Note(
                f"{release.undercut_area:.0f} mm² of the face hold the part back: it will lock on "
                "the mould there. Do not lay up before the mould or the pull is changed."
            ),
        )
        if release.undercut_area > 0.0
        else ()
    )
    coats = plan_coats(area, CoatingSettings())
    return Station(
        "Release",
        cautions.RELEASE,
        (
            *undercut,
            Steps(
                (
                    "Lay a test piece first: the same plastic, sealer, release agent and resin.",
                    "Wax the flange, the edges and the holes as well; a missed spot as large as a "
                    "coin is enough to hold the part.",
                    "Numbers of coats and waits below are common practice: where the data sheet "
                    "of the product says otherwise, follow it.",
                )
            ),
            Table(
                f"Wax on a new mould: ready after {coats.ready_minutes / 60.0:.1f} h",
                ("At, min", "What", "Done at", "By"),
                tuple(
                    (f"{step.start_minutes:.0f}", step.what, _BY_HAND, _BY_HAND)
                    for step in coats.steps
                ),
            ),
            Note(f"The part comes off along the direction {_direction(release.pull)}."),
        ),
    )


def cut_station(patterns: tuple[PatternLine, ...], rolls: tuple[RollLine, ...]) -> Station:
    """Return the page of shears and scale."""
    blocks: list[Block] = [
        Table(
            "Rolls",
            ("Cloth", "Width of the roll, mm", "Length to be cut, mm", "Used, %"),
            tuple(
                (r.cloth, f"{r.width:.0f}", f"{r.length:.0f}", f"{100.0 * r.share_used:.0f}")
                for r in rolls
            ),
        )
    ]
    for roll in rolls:
        blocks += _picture(f"{roll.cloth}: the warp runs along the roll", roll.drawing, 60.0)
    blocks += [
        Steps(
            (
                "Paper patterns: both bars on every page must measure 100 mm.",
                "Lay each pattern with its warp arrow along the roll and the written side up.",
                "Tape over the cut line, then cut; write ply and arrow on the tape.",
                "Weigh every piece before any resin is poured and write it down.",
            )
        ),
        Table(
            "Weigh-in of the dry cloth",
            ("Ply", "Cloth", "Angle, °", "Area, m²", "Planned, g", "Weighed, g", "By"),
            tuple(
                (
                    f"{p.ply}",
                    p.cloth,
                    f"{math.degrees(p.angle):.0f}",
                    f"{p.area * 1e-6:.4f}",
                    f"{p.mass:.1f}",
                    _BY_HAND,
                    _BY_HAND,
                )
                for p in patterns
            ),
        ),
        Table(
            "What the drape asks of the cloth",
            ("Ply", "Largest shear, °", "Area past locking, %"),
            tuple(
                (
                    f"{p.ply}",
                    f"{math.degrees(p.largest_shear):.1f}",
                    f"{100.0 * p.locked_share:.1f}",
                )
                for p in patterns
            ),
        ),
        Note(f"{_ANGLES} Where area is past locking, expect wrinkles: cut a dart or a splice."),
    ]
    shown = [p.drawing.without("check bar") for p in patterns if p.drawing is not None]
    for start in range(0, len(shown), _PATTERNS):
        some = gathered("Patterns", shown[start : start + _PATTERNS])
        blocks.append(Picture("Patterns with their arrows", some, 190.0))
    return Station("Cut cloth", cautions.CUT, tuple(blocks))


def mix_station(laminate: LaminateSummary, mix: MixPlan) -> Station:
    """Return the page of scale and cups."""
    cups = tuple(
        (
            f"{cup.number}",
            ", ".join(str(ply) for ply in cup.plies),
            f"{cup.scale_after_resin:g}",
            f"{cup.scale_after_hardener:g}",
            f"{cup.use_by_minutes:.0f}",
            _BY_HAND,
            _BY_HAND,
        )
        for cup in mix.cups
    )
    columns = (
        "Cup",
        "Ply",
        "Scale after resin, g",
        "Scale after hardener, g",
        "Use within, min",
        "Stirred at",
        "Empty at",
    )
    return Station(
        "Mix",
        cautions.MIX,
        (
            Note(
                f"{laminate.resin}. In all {mix.resin_g:g} g of resin and {mix.hardener_g:g} g of "
                f"hardener, {mix.mix_g:g} g together, for {mix.cloth_g:.1f} g of dry cloth."
            ),
            Table("The same ratio in three ways", ("Ratio",), tuple((t,) for t in mix.ratio_texts)),
            Table("Cups: scale set to zero with the empty cup on it", columns, cups),
            *_remarks(mix.remarks),
            Steps(mix.steps),
            Table(
                "Batches",
                ("What", "Product", "Batch number", "Temperature, °C"),
                (("Resin", *(_BY_HAND,) * 3), ("Hardener", *(_BY_HAND,) * 3)),
            ),
        ),
    )


def lay_up_station(laminate: LaminateSummary, mix: MixPlan) -> Station:
    """Return the page of the mould: ply after ply."""
    cups = {ply: f"{cup.number}" for cup in reversed(mix.cups) for ply in cup.plies}
    rows = tuple(
        (
            f"{ply.ply}",
            ply.cloth if ply.name in ("", f"ply {ply.ply}") else f"{ply.cloth} ({ply.name})",
            f"{math.degrees(ply.angle):.0f}",
            f"{ply.thickness:.2f}",
            cups.get(ply.ply, "-"),
            _BY_HAND,
            _BY_HAND,
        )
        for ply in laminate.plies
    )
    columns = ("Ply", "Cloth", "Angle, °", "Thickness, mm", "Cup", "Laid at", "By")
    return Station(
        "Lay up",
        cautions.LAY_UP,
        (
            Note(_ANGLES),
            Table("Plies in the order of laying", columns, rows),
            Steps(
                (
                    "Brush a thin coat of mix onto the mould.",
                    "Lay the ply with its centre mark on the start point and its arrow along the "
                    "datum; work outwards from there.",
                    "Wet it out from below, press it into every corner, take off what is surplus: "
                    "the cloth looks wet, not shiny.",
                    "Look for bridges in corners, dry spots and air before the next ply.",
                    "Tick the ply off in the table before the next one is taken up.",
                    "Keep laps away from the seams of the mould and from each other.",
                )
            ),
            Table(
                "Shop",
                ("When", "Temperature, °C", "Humidity, %"),
                (("At the start", _BY_HAND, _BY_HAND), ("At the end", _BY_HAND, _BY_HAND)),
            ),
        ),
    )


def cure_station(cure: CurePlan) -> Station:
    """Return the page of the clock."""
    rows = (
        ("Pot life in the cup", f"{cure.pot_life_minutes:.0f} min", _BY_HAND),
        ("Gelled", f"{cure.gel_hours:.1f} h", _BY_HAND),
        (
            "Edge can be cut with a knife",
            f"{cure.trim_from_hours:.1f} to {cure.trim_until_hours:.1f} h",
            _BY_HAND,
        ),
        ("May leave the mould", f"{cure.demould_hours:.1f} h", _BY_HAND),
        ("Fully cured", f"{cure.cure_hours:.0f} h", _BY_HAND),
    )
    return Station(
        "Cure",
        cautions.CURE,
        (
            Table(
                f"Times from the first stir, at {cure.temperature_c:g} °C",
                ("What", "After", "Clock time"),
                rows,
            ),
            Picture("Temperature of shop and mould, and when what may be done", _clock(cure), 60.0),
            *_remarks(cure.warnings),
            Steps(cure.steps),
            Note(
                f"The cured resin softens near {cure.glass_transition_c:.0f} °C; the mould must "
                f"stay below {cure.mould_limit_c:.0f} °C."
            ),
        ),
    )


def trim_station(cure: CurePlan) -> Station:
    """Return the page of knife and saw."""
    return Station(
        "Trim",
        cautions.TRIM,
        (
            Steps(
                (
                    f"With a knife, {cure.trim_from_hours:.1f} to {cure.trim_until_hours:.1f} h "
                    "after the first stir: cut along the scribe line. Gloves, it is not cured.",
                    "Weigh the untrimmed part once it is off the mould, and write it down.",
                    "Loosen all edges with thin wedges before you pull; no metal on the moulded "
                    "face.",
                    f"Saw, disc or paper: only when fully cured, after {cure.cure_hours:.0f} h.",
                    "Stay outside the line, then sand to it, wet.",
                    "Seal cut edges with a thin coat of mix against water.",
                )
            ),
        ),
    )


def record_station(part: PartSummary, laminate: LaminateSummary, shop: ShopPlan) -> Station:
    """Return the page on which planned and found stand side by side."""
    untrimmed = shop.mix.cloth_g + shop.mix.laminate_resin_g
    fibre = 100.0 * (1.0 - shop.mix.resin_share)
    rows = (
        ("Dry cloth", f"{shop.mix.cloth_g:.1f} g"),
        ("Resin and hardener mixed", f"{shop.mix.mix_g:g} g"),
        ("Mix left over in cups and tools", f"{shop.mix.mix_g - shop.mix.laminate_resin_g:.1f} g"),
        ("Part before trimming", f"{untrimmed:.1f} g"),
        ("Part after trimming", f"{_trimmed_mass(part, laminate):.1f} g"),
        ("Cloth over untrimmed part, by mass", f"{fibre:.0f} %"),
        ("Thickness, place 1", f"{laminate.thickness:.2f} mm"),
        ("Thickness, place 2", f"{laminate.thickness:.2f} mm"),
        ("Thickness, place 3", f"{laminate.thickness:.2f} mm"),
    )
    return Station(
        "Record",
        cautions.RECORD,
        (
            Table(
                "Planned and found",
                ("What", "Planned", "Found"),
                tuple((*row, _BY_HAND) for row in rows),
            ),
            Table(
                "What was seen",
                ("Look for", "Where and how much"),
                tuple(
                    (what, _BY_HAND)
                    for what in (
                        "Dry spots, pinholes",
                        "Bridges, air",
                        "Wrinkles",
                        "Damage at release",
                        "Bend test of a sample",
                    )
                ),
            ),
            Table("Signed", ("Name", "Date"), ((_BY_HAND, _BY_HAND),)),
            Note(
                "Enter what was found into the job: it corrects the resin share of the next part. "
                "Keep this sheet with the part."
            ),
        ),
    )


def _clock(cure: CurePlan) -> Drawing:
    """Return the times of the cure along one axis."""
    end = 1.25 * cure.demould_hours
    shop = np.array([[0.0, cure.temperature_c], [end, cure.temperature_c]])
    return line_chart(
        "Cure",
        "hours after the first stir, h",
        "temperature, °C",
        (Curve("shop", shop),),
        (
            Level("the mould must stay below this", cure.mould_limit_c),
            Level("shop", cure.temperature_c),
        ),
        marks=(
            Level("gelled", cure.gel_hours),
            Level("too hard for a knife", cure.trim_until_hours),
            Level("may leave the mould", cure.demould_hours),
        ),
        size=(150.0, 42.0),
    )


def _picture(caption: str, drawing: Drawing | None, height: float) -> tuple[Picture, ...]:
    return () if drawing is None else (Picture(caption, drawing, height),)


def _remarks(remarks: tuple[str, ...]) -> tuple[Note, ...]:
    return tuple(Note(f"Note: {remark}") for remark in remarks)


def _lengths(size: tuple[float, float, float] | None) -> tuple[str, ...]:
    return (_BY_HAND,) * 3 if size is None else tuple(f"{length:.1f}" for length in size)


def _trimmed_mass(part: PartSummary, laminate: LaminateSummary) -> float:
    return laminate.areal_mass * part.area * 1e-6


def _square_metres(area: float) -> str:
    return f"{area * 1e-6:.4f} m²"


def _gpa(modulus: float) -> str:
    return f"{modulus * 1e-3:.1f}"


def _degrees(angle: float) -> str:
    return f"{math.degrees(angle):.1f}°"


def _direction(vector: tuple[float, float, float]) -> str:
    x, y, z = (round(part, 3) + 0.0 for part in vector)
    return f"({x:g}, {y:g}, {z:g}) in x, y, z"
