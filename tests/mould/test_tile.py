"""The settings of tiles refuse what cannot be printed."""

from __future__ import annotations

import pytest

from laywright import values
from laywright.errors import LimitError
from laywright.mould.cuts import PrintPose
from laywright.mould.tile import TileSettings


def test_settings_are_stored_whole():
    settings = TileSettings(clearance=0.2, pose=PrintPose.ANY_SIDE)
    assert values.unpack(TileSettings, values.pack(settings)) == settings


@pytest.mark.parametrize(
    ("wrong", "where"),
    [
        ({"dowel_diameter": -1.0}, "dowel diameter"),
        ({"dowel_depth": 500.0}, "dowel depth"),
        ({"clearance": 5.0}, "dowel clearance"),
        ({"wall": -0.1}, "wall around dowels"),
        ({"glue_gap": float("nan")}, "glue gap"),
        ({"least_tile": 0.0}, "least tile"),
        ({"mark_depth": 4.0}, "mark depth"),
        ({"least_tile": 20.0}, "dowel depth"),
    ],
)
def test_out_of_reason(wrong, where):
    with pytest.raises(LimitError) as caught:
        TileSettings(**wrong)
    assert caught.value.where == where


def test_without_dowels_their_depth_does_not_matter():
    assert TileSettings(dowel_diameter=0.0, least_tile=10.0).least_tile == 10.0
