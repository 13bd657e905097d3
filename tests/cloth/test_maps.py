"""Maps of a drape: values, steps, legend."""

import math

import numpy as np
import pytest

import shapes
from laywright.cloth.datum import Datum
from laywright.cloth.drape import drape
from laywright.cloth.fabric import fabric_of
from laywright.cloth.lay import DrapedPly
from laywright.cloth.maps import MAPS, map_of
from laywright.cloth.pieces import Piece
from laywright.laminate.materials import load_materials


@pytest.fixture(scope="module")
def draped():
    cloth = load_materials().cloth("E-glass twill weave 200 g/m^2")
    cap = shapes.cap(100.0, math.radians(45.0), 14)
    datum = Datum((0.0, 0.0, 100.0), (1.0, 0.0, 0.0))
    result = drape(cap, fabric_of(cloth), datum)
    return DrapedPly(cap, result, (Piece(np.arange(len(cap.triangles)), datum),)), cloth


def test_shear_is_shown_in_steps_up_to_the_locking_angle(draped):
    ply, cloth = draped
    found = map_of(ply, cloth, MAPS[0])
    assert found.values == pytest.approx(np.degrees(np.abs(ply.drape.shear)))
    assert found.scale.limits[-1] == pytest.approx(math.degrees(cloth.locking_angle), abs=0.05)
    assert len(found.colours) == len(ply.surface.triangles)
    shares = [float(text.rsplit(":", 1)[1].rstrip(" %")) for _, text in found.rows]
    assert sum(shares) == pytest.approx(100.0, abs=0.3)
    # On a sphere shear grows outwards on the bias and stays away on the warp and the weft.
    middles = ply.surface.centroids
    outside = np.hypot(middles[:, 0], middles[:, 1]) > 55.0
    turn = np.degrees(np.arctan2(middles[:, 1], middles[:, 0])) % 90.0
    bias = outside & (np.abs(turn - 45.0) < 5.0)
    straight = outside & (np.minimum(turn, 90.0 - turn) < 4.0)
    assert found.values[bias].min() > 3.0 * found.values[straight].max()


@pytest.mark.parametrize("kind", MAPS[1:])
def test_stretch_is_shown_in_percent(draped, kind):
    found = map_of(*draped, kind)
    drape_values = {
        MAPS[1]: draped[0].drape.warp_stretch,
        MAPS[2]: draped[0].drape.weft_stretch,
    }
    assert found.values == pytest.approx(100.0 * drape_values[kind])
    assert found.scale.unit == "%"
