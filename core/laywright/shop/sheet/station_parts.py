"""What the stations of the job sheet share."""

from __future__ import annotations

from laywright.files.drawing import Drawing
from laywright.files.page import Note, Picture
from laywright.shop.bench.summaries import LaminateSummary, PartSummary

__all__ = ["ANGLES", "BY_HAND", "pictured", "remarks_of", "trimmed_mass"]

BY_HAND = ""
"""An empty cell: room to write."""

ANGLES = (
    "Angles run from the datum arrow, counter-clockwise seen from the side away from the mould. "
    "Ply 1 touches the mould."
)


def pictured(caption: str, drawing: Drawing | None, height: float) -> tuple[Picture, ...]:
    """Return a picture block, or nothing where there is no drawing."""
    return () if drawing is None else (Picture(caption, drawing, height),)


def remarks_of(remarks: tuple[str, ...]) -> tuple[Note, ...]:
    """Return remarks as paragraphs."""
    return tuple(Note(f"Note: {remark}") for remark in remarks)


def trimmed_mass(part: PartSummary, laminate: LaminateSummary) -> float:
    """Return the mass of the part inside the trim line, g."""
    if laminate.zones:
        return sum(zone.areal_mass * zone.area for zone in laminate.zones) * 1e-6
    return laminate.areal_mass * part.area * 1e-6
