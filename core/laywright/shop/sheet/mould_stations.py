"""The stations of the job sheet up to a mould that is ready: part, print, assemble, release.

What the steps say on filling and sealing is common practice without a source; it yields to the
data sheet of the product.
"""

from __future__ import annotations

import math

from laywright.files.page import Note, Station, Steps, Table
from laywright.shop.bench.finish import FinishPlan
from laywright.shop.bench.release_coats import CoatingPlan
from laywright.shop.bench.strips import StripPlan
from laywright.shop.bench.summaries import (
    LaminateSummary,
    PartSummary,
    ReleaseSummary,
    TileSummary,
)
from laywright.shop.curing.cure import CurePlan
from laywright.shop.sheet import cautions
from laywright.shop.sheet.station_parts import BY_HAND, pictured, remarks_of, trimmed_mass

__all__ = ["assemble_station", "part_station", "print_station", "release_station"]


def part_station(part: PartSummary, release: ReleaseSummary, laminate: LaminateSummary) -> Station:
    """Return the page that says what is made, and what to check before anything is."""
    x, y, z = part.size
    facts = (
        ("Size along x, y, z", f"{x:.1f} x {y:.1f} x {z:.1f} mm"),
        ("Moulded area", _square_metres(part.area)),
        ("Process and resin", f"{laminate.process}, {laminate.resin}"),
        ("Thickness when cured", _thickness(laminate)),
        ("Mass when trimmed, about", f"{trimmed_mass(part, laminate):.0f} g"),
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
            *pictured("The part", part.picture, 58.0),
            Table("What is made", ("What", "Value"), facts),
            *remarks_of(release.remarks + laminate.remarks),
            Steps(
                (
                    "Compare the size above with the drawing of the part, in mm.",
                    "Compare the version code at the foot of this page with the one in the job.",
                    "Gather the data sheets of resin, hardener, release agent and sealer.",
                )
            ),
        ),
    )


def _thickness(laminate: LaminateSummary) -> str:
    number = len(laminate.plies)
    if not laminate.zones:
        return f"{laminate.thickness:.2f} mm in {number} plies"
    local = sum(1 for ply in laminate.plies if ply.extent)
    sizes = [zone.thickness for zone in laminate.zones]
    return f"{min(sizes):.2f} to {max(sizes):.2f} mm, {local} of {number} plies are local"


def print_station(tiles: TileSummary, cure: CurePlan) -> Station:
    """Return the page of the printer."""
    rows = tuple(
        (
            tile.name,
            f"{tile.row}, {tile.column}, {tile.layer}",
            " x ".join(f"{length:.1f}" for length in tile.size),
            f"{tile.mass:.0f}",
            f"{tile.hours:.1f}",
            tile.pose,
            BY_HAND,
        )
        for tile in tiles.tiles
    )
    total = math.fsum(tile.mass for tile in tiles.tiles)
    hours = math.fsum(tile.hours for tile in tiles.tiles)
    columns = (
        "Tile",
        "Row, column, layer",
        "Size on the printer, mm",
        "Mass, g",
        "Time, h",
        "Pose",
        "Done",
    )
    return Station(
        "Print",
        cautions.PRINT,
        (
            *pictured("The tiles pulled apart", tiles.picture, 65.0),
            Table(
                f"{len(rows)} tiles on {tiles.printer}: about {total:.0f} g with infill and "
                f"{hours:.0f} h without supports",
                columns,
                rows,
            ),
            Note(
                f"The mould softens at {cure.mould_softening_c:.0f} °C and must stay below "
                f"{cure.mould_limit_c:.0f} °C in use: keep it out of the sun."
            ),
            *remarks_of(tiles.remarks),
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


def assemble_station(tiles: TileSummary, finish: FinishPlan) -> Station:
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
                    *tiles.assembly,
                    "Measure the length, width and diagonals of the mould before the glue sets.",
                    "Smooth and seal it as in the table; waits are common practice, the data "
                    "sheet of the product goes first.",
                    "Hold the mould against a lamp and look for pinholes; seal them.",
                    "Check that scribe line and datum arrow are still to be seen.",
                )
            ),
            Table(
                f"Smooth and seal: adds about {finish.build_mm:.2f} mm to the face",
                ("What", "Hands, min", "Then wait, h", "Done at", "By"),
                tuple(
                    (
                        span.what,
                        f"{span.hands_minutes:.0f}",
                        f"{span.wait_minutes / 60.0:g}" if span.wait_minutes else "-",
                        BY_HAND,
                        BY_HAND,
                    )
                    for span in finish.spans
                ),
            ),
            Table(
                "Measured on the mould",
                ("What", "Planned, mm", "Measured, mm", "By"),
                tuple(
                    (what, planned, BY_HAND, BY_HAND)
                    for what, planned in zip(
                        ("Along x", "Along y", "Along z", "Diagonals"),
                        (*_lengths(tiles.mould_size), "equal"),
                        strict=True,
                    )
                ),
            ),
        ),
    )


def release_station(
    release: ReleaseSummary, coats: CoatingPlan, strips: StripPlan | None
) -> Station:
    """Return the page of the release agent."""
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
    tape = (
        (
            Note(
                f"{len(strips.lengths)} strips of tape side by side, {min(strips.lengths):.0f} to "
                f"{max(strips.lengths):.0f} mm long, {strips.total_mm / 1000.0:.1f} m in all."
            ),
            *remarks_of(strips.remarks),
        )
        if strips is not None
        else ()
    )
    return Station(
        "Release",
        cautions.RELEASE,
        (
            *undercut,
            Steps(
                (
                    "Lay a test piece first: the same plastic, sealer, release agent and resin.",
                    "Treat the flange, the edges and the holes as well; a missed spot as large as "
                    "a coin is enough to hold the part.",
                    "Numbers of coats and waits below are common practice: where the data sheet "
                    "of the product says otherwise, follow it.",
                )
            ),
            *tape,
            Table(
                f"{coats.agent.value.capitalize()}: ready after {coats.ready_minutes / 60.0:.1f} h",
                ("At, min", "What", "Done at", "By"),
                tuple(
                    (f"{step.start_minutes:.0f}", step.what, BY_HAND, BY_HAND)
                    for step in coats.steps
                ),
            ),
            Note(f"The part comes off along the direction {_direction(release.pull)}."),
        ),
    )


def _lengths(size: tuple[float, float, float] | None) -> tuple[str, ...]:
    return (BY_HAND,) * 3 if size is None else tuple(f"{length:.1f}" for length in size)


def _square_metres(area: float) -> str:
    return f"{area * 1e-6:.4f} m²"


def _gpa(modulus: float) -> str:
    return f"{modulus * 1e-3:.1f}"


def _degrees(angle: float) -> str:
    return f"{math.degrees(angle):.1f}°"


def _direction(vector: tuple[float, float, float]) -> str:
    x, y, z = (round(part, 3) + 0.0 for part in vector)
    return f"({x:g}, {y:g}, {z:g}) in x, y, z"
