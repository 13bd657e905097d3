"""Remarks name the tiles, the number found and the number needed."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from laywright.mould.tiles.cuts import CutPlan
from laywright.mould.tiles.joint import JointKind
from laywright.mould.tiles.joints import BareSeam
from laywright.mould.tiles.seam_joints import SeamJoints
from laywright.mould.tiles.tile import TileSettings
from laywright.mould.tiles.tile_remarks import remarks_on

PLAN = CutPlan(np.eye(3), 0.0, (0, 0, 0), (9, 9, 9), ((3.0,), (), ()), np.eye(3), 120.0)
NONE = SeamJoints((), (), 0.0, (), {})
USUAL = TileSettings()
NO_GAP = (0.0, 0.0, 0.0)


def said(plan=PLAN, settings=USUAL, joints=NONE, unmarked=(), gaps=NO_GAP):
    return remarks_on(plan, settings, joints, unmarked, gaps)


def test_nothing_to_say():
    assert said() == ()


def test_what_pinned_and_forbidden_cuts_cost():
    (line,) = said(replace(PLAN, free_count=1, free_cost=80.0))
    assert "2 tiles, weighted seams of 120 mm" in line
    assert "1 tiles, 80 mm" in line


def test_a_search_that_was_ended_and_slivers_that_are_left():
    ended, thin = said(replace(PLAN, is_whole_search=False, slivers=3))
    assert "ended early" in ended
    assert thin.endswith("3.")


def test_seams_without_room_with_both_numbers():
    bare = replace(NONE, bare=(BareSeam((0, 0, 0), (1, 0, 0), 7.9),))
    (line,) = said(joints=bare)
    assert line == "No dowels at A1 to A2: 7.9 mm of section, 12.5 mm needed; glued flat."
    (line,) = said(settings=TileSettings(joint=JointKind.CLAMP_EARS), joints=bare)
    assert line == "No ears at A1 to A2: hold these by hand or by straps."


def test_marks_and_gaps():
    marks, gaps = said(unmarked=("A1", "A2"), gaps=(0.1, 0.0, 0.0))
    assert marks == "No room for a mark on A1, A2."
    assert "0.10, 0.00 and 0.00 mm" in gaps
    assert said(settings=TileSettings(mark_depth=0.0), unmarked=("A1",)) == ()
