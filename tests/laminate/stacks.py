"""Layups for tests, from the shipped cards."""

from __future__ import annotations

import math

from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply, Process

__all__ = ["CARBON", "GLASS", "MAT", "MATERIALS", "RESIN", "TAPE", "layup"]

MATERIALS = load_materials()
RESIN = MATERIALS.resin("Laminating epoxy, slow hardener")
CARBON = MATERIALS.cloth("Carbon twill weave 200 g/m^2")
GLASS = MATERIALS.cloth("E-glass plain weave 163 g/m^2")
TAPE = MATERIALS.cloth("Carbon unidirectional 150 g/m^2")
MAT = MATERIALS.cloth("E-glass chopped strand mat 300 g/m^2")


def layup(cloth, *degrees: float, **settings) -> Layup:
    settings.setdefault("process", Process.HAND)
    return Layup(tuple(Ply(cloth, math.radians(a)) for a in degrees), RESIN, **settings)
