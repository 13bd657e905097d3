"""Paper sizes."""

from __future__ import annotations

from enum import StrEnum

from laywright.errors import InputError

__all__ = ["Paper", "paper_of"]


class Paper(StrEnum):
    """A paper size, upright."""

    A4 = "A4"
    LETTER = "Letter"

    @property
    def size(self) -> tuple[float, float]:
        """Width and height, mm (ISO 216; ANSI/ASME Y14.1)."""
        return {Paper.A4: (210.0, 297.0), Paper.LETTER: (215.9, 279.4)}[self]


def paper_of(paper: Paper | str) -> Paper:
    """Return the paper of that name.

    Raises
    ------
    InputError
        If there is no such paper.

    Examples
    --------
    >>> paper_of("Letter").size
    (215.9, 279.4)
    """
    try:
        return Paper(paper)
    except ValueError as problem:
        raise InputError(
            "the paper", f"'{paper}'", "'A4' or 'Letter'", "choose one of the two"
        ) from problem
