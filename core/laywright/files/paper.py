"""Paper sizes."""

from __future__ import annotations

from enum import StrEnum

from laywright.errors import InputError

__all__ = ["Paper", "paper_of"]


class Paper(StrEnum):
    """A paper size, upright."""

    A4 = "A4"
    LETTER = "Letter"
    A3 = "A3"

    @property
    def size(self) -> tuple[float, float]:
        """Width and height, mm (ISO 216; ANSI/ASME Y14.1)."""
        return {
            Paper.A4: (210.0, 297.0),
            Paper.LETTER: (215.9, 279.4),
            Paper.A3: (297.0, 420.0),
        }[self]

    @property
    def sheets(self) -> Paper:
        """The paper for sheets that are read at the bench: A4 in place of A3."""
        return Paper.A4 if self is Paper.A3 else self


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
            "the paper", f"'{paper}'", "'A4', 'Letter' or 'A3'", "choose one of them"
        ) from problem
