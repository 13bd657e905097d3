"""A cut as one line of text, to be read, copied and changed by hand.

``ply 2: (70.5, 69.8, 9.1) to (42.2, 40.1, 81.0), lap, refused``: the points in mm, the one at
the edge first; the joint and the word ``refused`` may be left out, and ``every ply`` stands in
place of a number for all of them.
"""

from __future__ import annotations

import re

from laywright.arrays import Vector
from laywright.cloth.cuts.cuts import Answer, Cut, Joint, LaidCut
from laywright.errors import InputError

__all__ = ["cut_from_text", "cut_text", "laid_cut_text"]

_POINT = re.compile(r"\(([^()]*)\)")
_HEAD = re.compile(r"\s*(?:ply\s+(\d+)|every ply)\s*:", re.IGNORECASE)


def cut_text(cut: Cut) -> str:
    """Return a cut as text.

    Examples
    --------
    >>> cut_text(Cut(2, ((70.5, 69.8, 9.1), (42.2, 40.1, 81.0)), Joint.LAP))
    'ply 2: (70.5, 69.8, 9.1) to (42.2, 40.1, 81.0), lap'
    """
    head = f"ply {cut.ply}" if cut.ply else "every ply"
    words = [f"{head}: " + " to ".join(_point_text(point) for point in cut.points)]
    words += [] if cut.joint is None else [cut.joint.value]
    words += [] if cut.answer is Answer.MADE else [cut.answer.value]
    return ", ".join(words)


def laid_cut_text(cut: LaidCut) -> str:
    """Return a cut as it lies, by the points between which it runs straight."""
    return cut_text(Cut(cut.ply, cut.points, cut.joint))


def _point_text(point: Vector) -> str:
    return f"({', '.join(f'{value + 0.0:.1f}' for value in point)})"


def cut_from_text(text: str) -> Cut:
    """Return the cut that a text describes.

    Raises
    ------
    InputError
        If it cannot be read.

    Examples
    --------
    >>> cut_from_text("every ply: (0, -100, 9) to (0, -58, 81), refused").answer.value
    'refused'
    """
    head = _HEAD.match(text)
    points = [_numbers(found) for found in _POINT.findall(text)]
    words = [word.strip().lower() for word in re.split(r"\)\s*", text)[-1].split(",")]
    joints = {joint.value: joint for joint in Joint}
    answers = {answer.value: answer for answer in Answer}
    unknown = [word for word in words if word and word not in joints and word not in answers]
    if head is None or None in points or len(points) < 2 or unknown:
        raise InputError(
            "cut",
            repr(text),
            "a line such as 'ply 2: (70, 70, 9) to (42, 40, 81), lap'",
            "correct the line",
        )
    return Cut(
        int(head.group(1) or 0),
        tuple(point for point in points if point is not None),
        next((joints[word] for word in words if word in joints), None),
        next((answers[word] for word in words if word in answers), Answer.MADE),
    )


def _numbers(text: str) -> Vector | None:
    try:
        x, y, z = (float(part) for part in text.split(","))
    except ValueError:
        return None
    return x, y, z
