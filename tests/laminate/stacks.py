"""Layups for tests, from the shipped cards."""

from __future__ import annotations

import math

from hypothesis import strategies as st

from laywright.laminate.lamina import Lamina
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply, Process

__all__ = ["CARBON", "GLASS", "MAT", "MATERIALS", "RESIN", "TAPE", "laminae", "layup"]

MATERIALS = load_materials()
RESIN = MATERIALS.resin("Laminating epoxy, slow hardener")
CARBON = MATERIALS.cloth("Carbon twill weave 200 g/m^2")
GLASS = MATERIALS.cloth("E-glass plain weave 163 g/m^2")
TAPE = MATERIALS.cloth("Carbon unidirectional 150 g/m^2")
MAT = MATERIALS.cloth("E-glass chopped strand mat 300 g/m^2")


def layup(cloth, *degrees: float, **settings) -> Layup:
    settings.setdefault("process", Process.HAND)
    return Layup(tuple(Ply(cloth, math.radians(a)) for a in degrees), RESIN, **settings)


@st.composite
def laminae(draw):
    """Draw a lamina that keeps its energy."""
    moduli = st.floats(1e3, 3e5)
    first, second = draw(moduli), draw(moduli)
    bound = 0.95 * math.sqrt(first / second)
    poisson = draw(st.floats(-min(bound, 0.9), min(bound, 0.9)))
    return Lamina(first, second, poisson, draw(st.floats(5e2, 1e5)), 1e-6, 3e-5)
