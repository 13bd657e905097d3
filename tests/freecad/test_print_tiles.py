"""Print Tiles in a document: joints, pinned and forbidden cuts, poses in words."""

import pytest

pytestmark = pytest.mark.freecad


def test_joints_poses_and_the_cost_of_a_pinned_cut(hatch):
    document, _, stages = hatch
    tiles = stages["PrintTiles"]
    count = tiles.Count
    assert len(tiles.Poses) == len(tiles.Tiles) == count
    assert all("layer lines along the pull" in line for line in tiles.Poses)
    assert tiles.GlueMass > 0.0
    assert tiles.Assembly[0].startswith("Glue A1")

    tiles.PinnedX = [150.0]
    document.recompute()
    assert "150.0" in tiles.Cuts[0]
    assert any(line.startswith("With the pinned and forbidden cuts") for line in tiles.Remarks)

    tiles.PinnedX = []
    tiles.Joint = "keyed tongues"
    document.recompute()
    kept = tiles.Proxy.kept(tiles)
    assert {joint.kind.value for joint in kept.joints} == {"keyed tongues"}
    assert abs(tiles.VolumeError) < 1e-6
    assert [piece.name for piece in kept.coupon] == ["joint coupon", "joint coupon tongue"]


def test_a_free_stretch_needs_both_ends(hatch):
    document, _, stages = hatch
    tiles = stages["PrintTiles"]
    tiles.FreeX = [10.0]
    document.recompute()
    assert "found 1 numbers, needed pairs of from and to" in tiles.Status
