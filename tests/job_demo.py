"""A small job for tests: the hatch surface with three plies of glass."""

import math

import shapes
from laywright.cloth.patterns.pattern import PatternSettings
from laywright.cloth.roll.roll import RollSettings
from laywright.job import Job
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.mould.tiles.printer import load_printers

__all__ = ["hatch"]


def hatch(**changes):
    """Return the job; keyword arguments replace its inputs."""
    materials = load_materials()
    cloth = materials.cloth("E-glass twill weave 200 g/m^2")
    resin = materials.resin("Laminating epoxy, slow hardener")
    inputs = {
        "name": "Test hatch",
        "surface": shapes.hatch(),
        "pull": None,
        "layup": Layup(tuple(Ply(cloth, math.radians(a)) for a in (0, 45, 0)), resin),
        "printer": load_printers()["Medium, 220 x 220 x 250 mm"],
        "patterns": PatternSettings(),
        "roll": RollSettings(seconds=0.0),
    }
    return Job(**(inputs | changes))
