"""How much of the face a ply covers: all of it, some of its faces, a round patch, a strip.

An extent says where a ply ends; the edge of the part and of its holes ends every ply.  Distances
are measured along the mould.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from typing import Protocol, TypeAlias

from laywright.arrays import FloatArray, Vector
from laywright.errors import InputError
from laywright.quantities import magnitude

__all__ = ["Extent", "Faces", "Measure", "Round", "Strip", "extent_from_text", "extent_text"]

_WIDEST = 1e5
_NUMBER = r"[-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?"
_ROUND = re.compile(rf"(.+?) round \(?({_NUMBER}),\s*({_NUMBER}),\s*({_NUMBER})\)?(?:\s*mm)?$")
_FORMS = '"30 mm round 10, 20, 5", "25 mm along the edge" or "faces Face3, Face5"'


class Measure(Protocol):
    """What measures along a surface; `laywright.surface.along.Along` does."""

    def from_point(self, point: Vector) -> FloatArray:
        """Return the distance of every place from a point, mm."""

    def from_edge(self) -> FloatArray:
        """Return the distance of every place from the outer edge, mm."""

    def into_patches(self, names: tuple[str, ...]) -> FloatArray:
        """Return how far every place lies inside some patches, mm, negative outside."""


@dataclass(frozen=True)
class Round:
    """A round patch, for example about a bolt hole.

    Attributes
    ----------
    centre : tuple of 3 float, mm
        On the part; the nearest place of the face, with its holes filled, is taken.
    radius : float, mm
    """

    centre: Vector
    radius: float

    def __post_init__(self) -> None:
        _check("radius of a round patch", self.radius)
        if not all(math.isfinite(part) for part in self.centre):
            raise InputError(
                "middle of a round patch", f"{self.centre}", "three numbers in mm", "correct it"
            )

    def depth(self, along: Measure) -> FloatArray:
        """Return how far every place lies inside, mm; negative outside."""
        return self.radius - along.from_point(self.centre)


@dataclass(frozen=True)
class Strip:
    """A strip along the outer edge of the part.

    Attributes
    ----------
    width : float, mm
    """

    width: float

    def __post_init__(self) -> None:
        _check("width of a strip", self.width)

    def depth(self, along: Measure) -> FloatArray:
        """Return how far every place lies inside, mm; negative outside."""
        return self.width - along.from_edge()


@dataclass(frozen=True)
class Faces:
    """Some of the faces of the part.

    Attributes
    ----------
    names : tuple of str
        As in the Moulded Face.
    """

    names: tuple[str, ...]

    def __post_init__(self) -> None:
        if not self.names or not all(self.names):
            raise InputError(
                "faces that a ply covers", "no name", "one face at least", "pick its faces"
            )

    def depth(self, along: Measure) -> FloatArray:
        """Return how far every place lies inside, mm; negative outside."""
        return along.into_patches(self.names)


Extent: TypeAlias = Round | Strip | Faces


def _check(what: str, size: float) -> None:
    if not (math.isfinite(size) and 0.0 < size <= _WIDEST):
        raise InputError(what, f"{size:g} mm", "more than 0 mm", "correct it")


def extent_from_text(text: str) -> Extent | None:
    """Return the extent that a text describes; None, the whole face, for an empty one.

    Raises
    ------
    InputError
        If it is none of the forms.

    Examples
    --------
    >>> extent_from_text("3 cm round 10, 20, 5")
    Round(centre=(10.0, 20.0, 5.0), radius=30.0)
    >>> extent_from_text("25 mm along the edge")
    Strip(width=25.0)
    >>> extent_from_text("faces Face3, Face5")
    Faces(names=('Face3', 'Face5'))
    """
    words = text.strip()
    if not words:
        return None
    found = _ROUND.match(words)
    if found:
        try:
            x, y, z = (float(part) for part in found.groups()[1:])
        except ValueError:
            raise _unread(text) from None
        return Round((x, y, z), magnitude(found.group(1), "mm", "radius of a round patch"))
    width, along, rest = words.partition(" along the edge")
    if along and not rest:
        return Strip(magnitude(width, "mm", "width of a strip"))
    head, _, names = words.partition(" ")
    if head in ("face", "faces") and names:
        return Faces(tuple(name.strip() for name in names.split(",")))
    raise _unread(text)


def _unread(text: str) -> InputError:
    return InputError("extent of a ply", f"'{text}'", _FORMS, "write it in one of these ways")


def extent_text(extent: Extent | None) -> str:
    """Return an extent as a text that `extent_from_text` reads.

    Examples
    --------
    >>> extent_text(Round((10.0, 20.0, 5.5), 30.0))
    '30 mm round 10, 20, 5.5'
    """
    if extent is None:
        return ""
    if isinstance(extent, Round):
        places = ", ".join(f"{round(part, 3) + 0.0:.10g}" for part in extent.centre)
        return f"{extent.radius:.10g} mm round {places}"
    if isinstance(extent, Strip):
        return f"{extent.width:.10g} mm along the edge"
    return f"face{'s' if len(extent.names) > 1 else ''} {', '.join(extent.names)}"
