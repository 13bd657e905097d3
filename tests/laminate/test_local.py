from __future__ import annotations

import math

import numpy as np
import pytest

from laminate.stacks import CARBON, MATERIALS, TAPE, layup
from laywright.errors import InputError
from laywright.laminate.laminate import analyse
from laywright.laminate.local import DrapedPlaces, LocalLaminate, local_laminate
from laywright.laminate.plies import Core
from laywright.values import pack, unpack

MADE = analyse(layup(CARBON, 0, 45, 0))
ANGLES = np.array([ply.angle for ply in MADE.layup.plies])


def places(count, warp=ANGLES, shear=0.0, cover=1.0, areas=None):
    warp = np.broadcast_to(warp, (count, len(ANGLES)))
    return DrapedPlaces(
        warp,
        warp + math.pi / 2.0 - shear,
        np.full((count, len(ANGLES)), cover),
        np.full(count, 100.0) if areas is None else areas,
    )


def test_flat_cloth_is_the_laminate_everywhere():
    found = local_laminate(MADE, places(5))
    for spread in found.spreads:
        ends = (spread.low, spread.middle, spread.high, spread.mean)
        assert ends == pytest.approx((spread.planned,) * 4, rel=1e-9)
    assert found.mass == pytest.approx(MADE.areal_mass * 500e-6, rel=1e-12)
    assert found.spread("thickness").planned == MADE.thickness


def test_mass_grows_with_the_cloth_that_lies_there():
    found = local_laminate(MADE, places(3, shear=0.5, cover=1.0 / math.cos(0.5)))
    assert found.areal_mass == pytest.approx([MADE.areal_mass / math.cos(0.5)] * 3)
    assert found.thickness == pytest.approx([MADE.thickness / math.cos(0.5)] * 3)


def test_a_core_does_not_grow():
    core = Core(MATERIALS.core("Closed-cell PVC foam 80 kg/m^3"), 6.0, 1)
    made = analyse(layup(CARBON, 0, 0, 0, core=core))
    found = local_laminate(made, places(1, cover=1.2))
    skins = float(made.ply_thicknesses.sum())
    assert found.thickness == pytest.approx([6.0 + 1.2 * skins])
    extra = 0.2 * (made.areal_mass - made.core_areal - 2.0 * core.sheet.bond_resin)
    assert found.areal_mass == pytest.approx([made.areal_mass + extra])


def test_a_turned_ply_is_the_laminate_of_that_angle():
    turn = math.radians(20.0)
    tape = analyse(layup(TAPE, 0))
    found = local_laminate(tape, DrapedPlaces([[turn]], [[turn + math.pi / 2]], [[1.0]], [1.0]))
    plain = analyse(layup(TAPE, 20))
    assert found.e_x == pytest.approx([plain.in_plane.e_x], rel=1e-9)
    assert found.g_xy == pytest.approx([plain.in_plane.g_xy], rel=1e-9)


def test_spread_is_by_area():
    """Nine tenths of the area lie at 0 degrees, one tenth at 45."""
    tape = analyse(layup(TAPE, 0))
    warp = np.zeros((1000, 1))
    warp[900:] = math.radians(45.0)
    found = local_laminate(
        tape, DrapedPlaces(warp, warp + math.pi / 2, np.ones((1000, 1)), np.ones(1000))
    )
    spread = found.spread("modulus along")
    slanted = analyse(layup(TAPE, 45)).in_plane.e_x
    assert spread.low == pytest.approx(slanted, rel=1e-9)
    assert (spread.middle, spread.high) == pytest.approx((spread.planned,) * 2, rel=1e-9)
    assert spread.mean == pytest.approx(0.9 * spread.planned + 0.1 * slanted, rel=1e-9)
    weighted = places(2, areas=np.array([3.0, 1.0]))
    assert local_laminate(MADE, weighted).mass == pytest.approx(4e-6 * MADE.areal_mass)


def test_a_drape_of_another_layup_is_refused():
    with pytest.raises(InputError, match="that of 2 plies"):
        local_laminate(analyse(layup(CARBON, 0, 0)), places(2))


def test_result_survives_storage():
    found = local_laminate(MADE, places(4, shear=0.2))
    assert pack(unpack(LocalLaminate, pack(found))) == pack(found)
    inputs = places(4)
    assert pack(unpack(DrapedPlaces, pack(inputs))) == pack(inputs)
