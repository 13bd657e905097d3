"""The geometric tolerances that several rooms share, each with its meaning.

What only one module needs stands at the head of that module.
"""

from __future__ import annotations

from dataclasses import dataclass

__all__ = ["TOLERANCES", "Tolerances"]


@dataclass(frozen=True)
class Tolerances:
    """Geometric tolerances; lengths in mm, angles in radians.

    Attributes
    ----------
    weld : float
        Points closer than this are one point.
    zero_area : float
        A triangle of smaller area (mm^2) has no usable normal.
    chord : float
        Largest distance between a CAD face and the triangles that stand for it.
    chord_angle : float
        Largest turn between neighbouring triangles of a smooth face.
    face_match : float
        Relative difference up to which a face is taken for the one that was picked.
    working_area : float
        Largest deviation of a mould's working area from the wanted surface.
    sharp_edge : float
        Patches that meet at a larger turn than this meet in an edge, not smoothly.
    outline : float
        Largest deviation of a simplified pattern outline from the computed one.
    least_part, largest_part : float
        Parts shorter or longer than this have most likely been given in another unit.
    """

    weld: float = 1e-5
    zero_area: float = 1e-10
    chord: float = 0.05
    chord_angle: float = 0.15
    face_match: float = 1e-3
    working_area: float = 0.1
    sharp_edge: float = 0.35
    outline: float = 0.05
    least_part: float = 2.0
    largest_part: float = 5000.0


TOLERANCES = Tolerances()
