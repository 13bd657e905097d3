"""Blocks below each other on a page of a PDF: how high they are, and made a little smaller."""

from __future__ import annotations

from collections.abc import Iterator

from reportlab.platypus import CondPageBreak, Flowable

__all__ = ["Shrunk", "stacked_height"]


def stacked_height(flowables: list[Flowable], width: float) -> float:
    """Return the height that flowables take below each other within a width, points."""
    return sum(space + height for _, space, height in _stacked(flowables, width))


def _stacked(flowables: list[Flowable], width: float) -> Iterator[tuple[Flowable, float, float]]:
    """Yield each flowable, the space above it and its height; the larger space counts."""
    below = 0.0
    for number, flowable in enumerate(flowables):
        if isinstance(flowable, CondPageBreak):
            continue
        above = flowable.getSpaceBefore() if number else 0.0
        height = flowable.wrap(width, 1e6)[1]
        yield flowable, max(below, above), height
        below = flowable.getSpaceAfter()


class Shrunk(Flowable):  # type: ignore[misc]
    """Flowables as wide as the page below each other, all made smaller; they stay on one page.

    Parameters
    ----------
    flowables : list of Flowable
        Laid out for a width that is larger by as much as they are made smaller.
    scale : float
        Below 1.
    """

    def __init__(self, flowables: list[Flowable], scale: float) -> None:
        super().__init__()
        self.flowables = flowables
        self.scale = scale

    def wrap(self, width: float, height: float) -> tuple[float, float]:
        """Return the room that they take."""
        self.width = width
        self.height = self.scale * stacked_height(self.flowables, width / self.scale)
        return self.width, self.height

    def draw(self) -> None:
        """Paint them from the top down."""
        canvas, wide = self.canv, self.width / self.scale
        canvas.saveState()
        canvas.scale(self.scale, self.scale)
        top = self.height / self.scale
        for flowable, space, height in _stacked(self.flowables, wide):
            top -= space + height
            flowable.drawOn(canvas, 0.0, top)
        canvas.restoreState()
