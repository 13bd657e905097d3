"""The page of the job sheet on the laminate: what it is, how stiff, how sure."""

from __future__ import annotations

from laywright.files.page import Note, Station
from laywright.shop.bench.summaries import LaminateDetails
from laywright.shop.sheet import cautions
from laywright.shop.sheet.station_parts import ANGLES, pictured

__all__ = ["laminate_station"]


def laminate_station(details: LaminateDetails) -> Station:
    """Return the page on the laminate."""
    return Station(
        "Laminate",
        (cautions.ESTIMATES,),
        (
            Note(ANGLES),
            *pictured("The stack, away from the mould on top", details.section, 55.0),
            *pictured("Modulus in each direction", details.polar, 80.0),
            *pictured("What it carries", details.envelope, 80.0),
            *details.tables,
            *(Note(note) for note in details.notes),
        ),
    )
