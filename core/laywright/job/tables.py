"""The tables of a job for a spreadsheet, every number with its unit in the head."""

from __future__ import annotations

import math

from laywright.files.csv import csv_bytes
from laywright.job.cut_list import cut_table
from laywright.job.job import JobResult
from laywright.job.laminate_table import laminate_table
from laywright.job.links import ply_cloths
from laywright.job.tile_files import tile_tables
from laywright.job.zones import zone_csv, zones_of
from laywright.laminate.extents import extent_text
from laywright.shop.bench.timeline import clock_text

__all__ = ["table_files"]


def table_files(result: JobResult) -> dict[str, bytes]:
    """Return the tables of a job as comma-separated text, by path."""
    zones = zones_of(result.laminate, result.patterns)
    return {
        **tile_tables(result.tiles, result.face.deviation + result.body.largest_deviation),
        "tables/plies.csv": _plies(result),
        "tables/allowances.csv": _allowances(result),
        "tables/cutting.csv": cut_table(result.roll, result.patterns.patterns),
        "tables/laminate.csv": laminate_table(result.laminate),
        **({"tables/zones.csv": zone_csv(zones)} if zones else {}),
        "tables/cups.csv": _cups(result),
        "tables/cure.csv": _cure(result),
        "tables/clock.csv": _clock(result),
        "tables/shopping.csv": _shopping(result),
    }


def _allowances(result: JobResult) -> bytes:
    rows = [
        (item.name, round(item.size, 5), item.unit, item.where)
        for item in result.body.compensations
    ]
    return csv_bytes(("allowed for", "size", "unit", "where"), rows)


def _plies(result: JobResult) -> bytes:
    head = (
        "ply",
        "cloth",
        "angle (deg)",
        "cut area (m2)",
        "cloth (g)",
        "resin with hardener (g)",
        "largest shear (deg)",
        "share past locking (%)",
        "covers",
    )
    rows = [
        (
            pattern.ply,
            pattern.cloth,
            round(math.degrees(pattern.angle), 3),
            round(pattern.area / 1e6, 5),
            round(piece.mass_g, 2),
            round(piece.resin_g(result.shop.mix.resin_share), 2),
            round(math.degrees(pattern.largest_shear), 2),
            round(100.0 * pattern.locked_share, 2),
            extent_text(result.laminate.layup.plies[pattern.ply - 1].extent) or "whole face",
        )
        for pattern, piece in zip(
            result.patterns.patterns, ply_cloths(result.patterns, result.laminate), strict=True
        )
    ]
    return csv_bytes(head, rows)


def _cups(result: JobResult) -> bytes:
    head = (
        "cup",
        "for",
        "resin (g)",
        "hardener (g)",
        "scale after both (g)",
        "stir at (min)",
        "use within (min)",
    )
    rows = [
        (
            cup.number,
            ", ".join(cup.uses),
            cup.resin_g,
            cup.hardener_g,
            cup.scale_after_hardener,
            round(cup.stir_at_minutes),
            round(cup.use_by_minutes),
        )
        for cup in result.shop.mix.cups
    ]
    return csv_bytes(head, rows)


def _cure(result: JobResult) -> bytes:
    head = ("what", "after (h)", "degree of cure (%)", "softens near (degC)")
    rows = [
        (
            event.what,
            round(event.hours, 2),
            None if event.cure is None else round(100.0 * event.cure, 1),
            None if event.glass_transition_c is None else round(event.glass_transition_c, 1),
        )
        for event in result.shop.cure.events
    ]
    return csv_bytes(head, rows)


def _clock(result: JobResult) -> bytes:
    rows = [
        (
            clock_text(entry.start_minutes),
            entry.what,
            round(entry.hands_minutes, 1),
            clock_text(entry.ready_minutes),
        )
        for entry in result.sheet.bench.timeline.entries
    ]
    return csv_bytes(("begins", "what", "hands (min)", "over"), rows)


def _shopping(result: JobResult) -> bytes:
    shopping = result.sheet.bench.shopping
    head = ("item", "amount", "unit", "paid", "price of one unit", "cost", "currency")
    rows = [
        (
            line.item,
            line.amount,
            line.unit,
            line.paid.value,
            line.price,
            None if line.cost is None else round(line.cost, 2),
            shopping.currency,
        )
        for line in shopping.lines
    ]
    return csv_bytes(head, rows)
