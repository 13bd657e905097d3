"""Layups and patterns for the tests of the cloth's rooms; all numbers are invented."""

from __future__ import annotations

import math
from functools import cache

import numpy as np

import shapes
from laywright.arrays import floats
from laywright.cloth.patterns.pattern import Pattern, PatternSet, PatternSettings, make_patterns
from laywright.laminate.laminate import Laminate, analyse
from laywright.laminate.materials import Weave, load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.surface.face import MouldedFace, take_face

__all__ = ["hatch_face", "hatch_patterns", "laminate_of", "pattern_of"]

TWILL = "E-glass twill weave 200 g/m^2"


def laminate_of(*plies: tuple[str, float]) -> Laminate:
    """Laminate from names of cloths and angles in degrees."""
    materials = load_materials()
    cloths = [Ply(materials.cloth(name), math.radians(angle)) for name, angle in plies]
    return analyse(Layup(tuple(cloths), materials.resin(materials.resin_names[0])))


@cache
def hatch_face() -> MouldedFace:
    return take_face(shapes.hatch(), (0.0, 0.0, 1.0))


@cache
def hatch_patterns() -> PatternSet:
    """Three plies of twill on the hatch cover, on a coarse mesh."""
    laminate = laminate_of((TWILL, 0.0), (TWILL, 45.0), (TWILL, 0.0))
    return make_patterns(hatch_face(), laminate, None, PatternSettings(triangles=1500))


def pattern_of(
    outline: np.ndarray, ply: int, cloth: str, roll_width: float, weave: Weave = Weave.TWILL
) -> Pattern:
    """Pattern of a given outline without margin."""
    x, y = outline.T
    area = 0.5 * float((x * np.roll(y, -1) - np.roll(x, -1) * y).sum())
    middle = floats(outline.mean(axis=0), 2)
    return Pattern(
        ply,
        f"ply {ply}",
        cloth,
        weave,
        roll_width,
        0.9,
        0.0,
        floats(outline, -1, 2),
        (),
        floats(outline, -1, 2),
        (),
        middle,
        floats([1.0, 0.0], 2),
        middle,
        (),
        area,
        area,
        0.1,
        0.0,
    )
