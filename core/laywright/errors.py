"""Every error that Laywright raises, with one root and one way of saying things.

A message is one sentence that a maker can act on::

    <where>: found <found>, needed <needed>; <remedy>.

``where`` names the face, ply, setting or file at fault.  The four parts are kept as
attributes, so that a task panel can set the message beside the right field and a test can
assert on the parts and not on the prose.  Each class is also the natural built-in, so code
that knows nothing of Laywright can still catch it.
"""

from __future__ import annotations

__all__ = [
    "Cancelled",
    "FaceError",
    "FileError",
    "GeometryError",
    "InputError",
    "LaywrightError",
    "LimitError",
    "MaterialError",
    "UnitError",
]


class LaywrightError(Exception):
    """Root of all errors raised by Laywright.

    Parameters
    ----------
    where : str
        The face, ply, setting or file at fault, by the name its owner gave it.
    found : str
        What was found there, with its unit.
    needed : str
        What is needed instead, with its unit.
    remedy : str
        What the person can do about it.

    Examples
    --------
    >>> str(InputError("roll width", "0 mm", "more than 0 mm", "set the width of the roll"))
    'roll width: found 0 mm, needed more than 0 mm; set the width of the roll.'
    """

    def __init__(self, where: str, found: str, needed: str, remedy: str) -> None:
        self.where = where
        self.found = found
        self.needed = needed
        self.remedy = remedy
        super().__init__(f"{where}: found {found}, needed {needed}; {remedy}.")

    def __reduce__(self) -> tuple[type[LaywrightError], tuple[str, str, str, str]]:
        """Pickle by the four parts, so that an error crosses process borders whole."""
        return type(self), (self.where, self.found, self.needed, self.remedy)


class InputError(LaywrightError, ValueError):
    """A setting holds a value that cannot be worked with."""


class UnitError(InputError):
    """A quantity has the wrong dimension, or none where one is needed."""


class LimitError(InputError):
    """A value is outside what physics or the machine allows."""


class MaterialError(LaywrightError, LookupError):
    """A material card is missing, incomplete or contradicts itself."""


class GeometryError(LaywrightError, ValueError):
    """A shape cannot be worked with: open, folded, empty or too tight."""


class FaceError(GeometryError):
    """A picked face is no longer the face that was picked."""


class FileError(LaywrightError, OSError):
    """A file cannot be read or written."""


class Cancelled(LaywrightError):
    """The person stopped a long computation; nothing was changed."""

    def __init__(
        self,
        where: str = "the computation",
        found: str = "a request to stop",
        needed: str = "time to finish",
        remedy: str = "nothing was changed, start it again when it suits",
    ) -> None:
        super().__init__(where, found, needed, remedy)
