"""Zones of the part, where some plies cover a part of the face only, for page and spreadsheet."""

from __future__ import annotations

from laywright.cloth.patterns.pattern import PatternSet
from laywright.files.csv import csv_bytes
from laywright.files.page import Table
from laywright.laminate.laminate import Laminate
from laywright.laminate.zones import ZoneLaminate, zone_laminate

__all__ = ["zone_csv", "zone_table", "zones_of"]


def zones_of(laminate: Laminate, patterns: PatternSet) -> tuple[ZoneLaminate, ...]:
    """Return the laminate of every zone, the largest zone first; none without local plies."""
    return tuple(zone_laminate(laminate, zone.plies, zone.area) for zone in patterns.zones)


def zone_table(zones: tuple[ZoneLaminate, ...]) -> Table:
    """Return the zones for the job sheet."""
    low, high = min(z.thickness for z in zones), max(z.thickness for z in zones)
    mass = sum(zone.mass for zone in zones)
    return Table(
        f"Zones: {low:.2f} to {high:.2f} mm thick, {mass:.0f} g in all, of flat plies",
        (
            "Plies",
            "Area, cm^2",
            "Thickness, mm",
            "Mass, g",
            "Moduli along, across, GPa",
            "Bending along, across, N m",
        ),
        tuple(
            (
                ", ".join(f"{ply}" for ply in zone.plies),
                f"{zone.area / 100.0:.1f}",
                f"{zone.thickness:.2f}",
                f"{zone.mass:.1f}",
                f"{zone.e_x / 1e3:.1f}, {zone.e_y / 1e3:.1f}",
                f"{zone.bending_x / 1e3:.3g}, {zone.bending_y / 1e3:.3g}",
            )
            for zone in zones
        ),
    )


def zone_csv(zones: tuple[ZoneLaminate, ...]) -> bytes:
    """Return the zones as comma-separated text."""
    head = (
        "plies",
        "area (mm2)",
        "thickness (mm)",
        "mass (g/m2)",
        "mass (g)",
        "E along (MPa)",
        "E across (MPa)",
        "bending along (N mm)",
        "bending across (N mm)",
    )
    rows = [
        (
            " ".join(f"{ply}" for ply in zone.plies),
            round(zone.area, 1),
            round(zone.thickness, 4),
            round(zone.areal_mass, 2),
            round(zone.mass, 3),
            round(zone.e_x, 1),
            round(zone.e_y, 1),
            round(zone.bending_x, 2),
            round(zone.bending_y, 2),
        )
        for zone in zones
    ]
    return csv_bytes(head, rows)
