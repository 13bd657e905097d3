"""The laminate of a zone is that of its plies alone."""

import pytest

from laywright.laminate.extents import Round
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.laminate.zones import zone_laminate

CARDS = load_materials()
TWILL = CARDS.cloth("E-glass twill weave 200 g/m^2")
PATCH = Round((0.0, 0.0, 0.0), 40.0)


def layup(*extents):
    plies = tuple(Ply(TWILL, 0.4 * number, "", extent) for number, extent in enumerate(extents))
    return Layup(plies, CARDS.resin(CARDS.resin_names[0]))


def test_a_zone_has_the_figures_of_its_own_plies():
    laminate = analyse(layup(None, PATCH, None))
    zone = zone_laminate(laminate, (1, 2, 3), 5e4)
    alone = analyse(layup(None, None, None))
    assert zone.thickness == alone.thickness
    assert zone.e_x == alone.in_plane.e_x
    assert (zone.bending_x, zone.bending_y) == alone.bending_stiffness
    assert zone.mass == pytest.approx(alone.areal_mass * 0.05)
    rest = zone_laminate(laminate, (1, 3), 1.0)
    assert rest.thickness == laminate.thickness
