"""What stands in a drawing, read back for tests."""

from __future__ import annotations

from laywright.files.drawing import Drawing, Label, Line

__all__ = ["lines", "texts"]


def lines(drawing: Drawing, layer: str) -> list[Line]:
    """Return the lines of a layer."""
    return [s for s in drawing.shapes if isinstance(s, Line) and s.layer == layer]


def texts(drawing: Drawing) -> list[str]:
    """Return the text of every label."""
    return [s.text for s in drawing.shapes if isinstance(s, Label)]
