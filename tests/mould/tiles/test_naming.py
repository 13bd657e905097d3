"""Names of tiles by row, column and layer."""

from __future__ import annotations

import numpy as np

from laywright.mould.tiles.cuts import CutPlan
from laywright.mould.tiles.naming import tile_name


def plan_of(cuts):
    return CutPlan(np.eye(3), 0.0, (0, 0, 0), (60, 30, 20), cuts, np.eye(3), 0.0)


def test_names():
    one, many = plan_of(((), (), ())), plan_of(((), (), (10.0,)))
    assert tile_name((0, 0, 0), one) == "A1"
    assert tile_name((4, 2, 0), one) == "C5"
    assert tile_name((0, 25, 0), one) == "Z1"
    assert tile_name((0, 26, 0), one) == "AA1"
    assert tile_name((0, 701, 0), one) == "ZZ1"
    assert tile_name((1, 0, 1), many) == "A2-2"
