"""Print Tiles in a document: joints, pinned and forbidden cuts, poses in words."""

import FreeCAD
import pytest

from freecad.laywright import preferences
from laywright.mould.tiles.printer import Printer

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
    assert tiles.MoreSeamCost != 0.0

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


def test_no_cut_passes_through_what_is_kept_whole(hatch):
    document, _, stages = hatch
    tiles = stages["PrintTiles"]
    plan = tiles.Proxy.kept(tiles).plan
    axis = next(i for i in range(3) if plan.cuts[i])
    x, y, z = (float(number) for number in plan.cuts[axis][0] * plan.axes[axis])
    tiles.KeptWhole = [x, y, z, 4.0]
    document.recompute()
    assert tiles.Status == "up to date"
    moved = tiles.Proxy.kept(tiles).plan
    for way, cuts in zip(moved.axes, moved.cuts, strict=True):
        assert all(abs(cut - way @ (x, y, z)) > 4.0 for cut in cuts)

    tiles.KeptWhole = [x, y, z]
    document.recompute()
    assert "found 3 numbers, needed x, y, z and radius of each ball" in tiles.Status


def test_marks_may_be_left_out_and_walls_be_thicker(hatch):
    document, _, stages = hatch
    tiles = stages["PrintTiles"]
    tiles.MarkDepth = "0 mm"
    tiles.JointWall = "4 mm"
    document.recompute()
    kept = tiles.Proxy.kept(tiles)
    mark = kept.tiles[0].solid.patch_names.index("mark")
    assert all((tile.solid.patches != mark).all() for tile in kept.tiles)
    assert (tiles.MoreTiles, tiles.MoreSeamCost) == (0, 0.0)


def test_a_printer_of_ones_own_is_kept_for_all_jobs(hatch, tmp_path):
    document, _, stages = hatch
    group = FreeCAD.ParamGet(preferences.GROUP)
    before = group.GetString("PrintersFolder", "")
    group.SetString("PrintersFolder", str(tmp_path / "cards"))
    try:
        mine = Printer("Mine", (300.0, 300.0, 300.0), walls=4)
        preferences.keep_printer(mine)
        assert preferences.printers()["Mine"] == mine
        stages["PrintTiles"].Printer = "Mine"
        document.recompute()
        assert stages["PrintTiles"].Status == "up to date"
        assert stages["PrintTiles"].Proxy.kept(stages["PrintTiles"]).printer == "Mine"
    finally:
        group.SetString("PrintersFolder", before)
