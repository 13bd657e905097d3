"""The settings of tiles refuse what cannot be printed."""

from __future__ import annotations

import pytest

from laywright import values
from laywright.errors import LimitError
from laywright.mould.tiles.cuts import PrintPose
from laywright.mould.tiles.joint import JointKind
from laywright.mould.tiles.tile import TileSettings
from laywright.mould.tiles.wishes import CutWishes


def test_settings_are_stored_whole():
    wishes = CutWishes(turn=0.1, pinned_x=(3.0,), free_y=((1.0, 2.0),), kept_whole=((0, 0, 0, 5),))
    settings = TileSettings(
        JointKind.TONGUES, clearance=0.2, pose=PrintPose.ANY_SIDE, wishes=wishes
    )
    assert values.unpack(TileSettings, values.pack(settings)) == settings


@pytest.mark.parametrize(
    ("wrong", "where"),
    [
        ({"dowel_diameter": -1.0}, "dowel diameter"),
        ({"dowel_depth": 500.0}, "dowel depth"),
        ({"clearance": 5.0}, "dowel clearance"),
        ({"wall": -0.1}, "wall around joints"),
        ({"glue_gap": float("nan")}, "glue gap"),
        ({"least_tile": 0.0}, "least tile"),
        ({"mark_depth": 4.0}, "mark depth"),
        ({"least_tile": 20.0}, "dowel depth"),
        ({"least_tile": 12.0, "joint": JointKind.TONGUES}, "tongue length"),
        ({"least_tile": 12.0, "joint": JointKind.CLAMP_EARS}, "ear thickness"),
        ({"tongue_width": 1.0}, "tongue width"),
        ({"plan_seconds": -1.0}, "time for the cuts"),
    ],
)
def test_out_of_reason(wrong, where):
    with pytest.raises(LimitError) as caught:
        TileSettings(**wrong)
    assert caught.value.where == where


def test_without_dowels_their_depth_does_not_matter():
    assert TileSettings(dowel_diameter=0.0, least_tile=10.0).least_tile == 10.0
