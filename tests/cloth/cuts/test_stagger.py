"""Cuts of neighbouring plies keep apart: distances on known lines."""

import numpy as np
import pytest

from laywright.cloth.cuts.cuts import CutSettings, Joint, LaidCut
from laywright.cloth.cuts.stagger import clashes


def cut(ply, x, lap=25.0):
    line = np.array([[x, 0.0, 0.0], [x, 80.0, 0.0]])
    return LaidCut(ply, line, Joint.LAP if lap else Joint.BUTT, lap, 80.0)


def test_the_distance_of_parallel_cuts():
    (found,) = clashes([[cut(1, 0.0)], [cut(2, 18.0)]], CutSettings())
    assert (found.ply, found.other) == (1, 2)
    assert found.distance == pytest.approx(18.0)
    assert found.needed == 25.0
    assert clashes([[cut(1, 0.0)], [cut(2, 26.0)]], CutSettings()) == ()


def test_laps_never_lie_on_laps_and_butts_need_only_the_stagger():
    settings = CutSettings(stagger=15.0)
    assert len(clashes([[cut(1, 0.0)], [cut(2, 18.0)]], settings)) == 1
    assert clashes([[cut(1, 0.0, 0.0)], [cut(2, 18.0, 0.0)]], settings) == ()


def test_after_enough_plies_a_cut_may_lie_over_another():
    plies = [[cut(1, 0.0)], [], [], [cut(4, 0.0)]]
    assert len(clashes(plies, CutSettings(plies_apart=3))) == 1
    assert clashes(plies, CutSettings(plies_apart=2)) == ()
