"""How a long computation tells how far it is, and how it is stopped.

A stage calls its `Progress` now and then with the share done.  Whoever wants it stopped
raises `laywright.errors.Cancelled` from inside that call; since stages are pure functions,
nothing has to be undone.
"""

from __future__ import annotations

from typing import Protocol

__all__ = ["Progress", "part_of", "silent"]


class Progress(Protocol):
    """Called with the share done, 0 to 1, and a word on what is being done."""

    def __call__(self, share: float, doing: str = "", /) -> None:
        """Report; raise `laywright.errors.Cancelled` to stop the computation."""


def silent(share: float, doing: str = "", /) -> None:
    """Report to nobody."""


def part_of(progress: Progress, start: float, end: float) -> Progress:
    """Return a progress whose 0 to 1 is `start` to `end` of the given one.

    Examples
    --------
    >>> inner = part_of(lambda share, doing="": print(round(share, 3), doing), 0.5, 1.0)
    >>> inner(0.5, "cutting")
    0.75 cutting
    """

    def inner(share: float, doing: str = "", /) -> None:
        progress(start + (end - start) * share, doing)

    return inner
