"""Cuts as values and as text."""

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright import values
from laywright.cloth.cuts.cut_text import cut_from_text, cut_text
from laywright.cloth.cuts.cuts import Answer, Cut, CutSettings, Joint, LaidCut, Propose, joint_of
from laywright.errors import InputError, LimitError
from laywright.laminate.materials import Weave

NUMBER = st.integers(-9999, 9999).map(lambda tenths: tenths / 10.0)
POINT = st.tuples(NUMBER, NUMBER, NUMBER)
CUTS = st.builds(
    Cut,
    st.integers(0, 40),
    st.lists(POINT, min_size=2, max_size=4).map(tuple),
    st.sampled_from([None, *Joint]),
    st.sampled_from(Answer),
)


@given(CUTS)
def test_a_cut_survives_its_text_and_its_packing(cut):
    assert cut_from_text(cut_text(cut)) == cut
    settings = CutSettings((cut,), Propose.MADE, shear_limit=0.5)
    assert values.unpack(CutSettings, values.pack(settings)) == settings


@pytest.mark.parametrize(
    "text",
    ["", "ply 1", "ply 1: (0, 0, 0)", "ply x: (0,0,0) to (1,1,1)", "ply 1: (0,0) to (1,1,1)"],
)
def test_text_that_is_no_cut_is_refused(text):
    with pytest.raises(InputError, match="a line such as"):
        cut_from_text(text)


def test_woven_cloth_is_lapped_and_unidirectional_butted():
    assert {weave: joint_of(weave) for weave in Weave} == {
        weave: Joint.BUTT if weave is Weave.UNIDIRECTIONAL else Joint.LAP for weave in Weave
    }


@pytest.mark.parametrize(
    ("kind", "wrong"),
    [
        (LimitError, {"lap": 12.0}),
        (InputError, {"stagger": -1.0}),
        (InputError, {"plies_apart": -1}),
        (LimitError, {"shear_limit": 0.0}),
        (LimitError, {"shear_limit": 1.01 * math.pi / 2}),
    ],
)
def test_settings_out_of_range_are_refused(kind, wrong):
    with pytest.raises(kind):
        CutSettings(**wrong)
    assert CutSettings(lap=12.7, shear_limit=math.pi / 2).lap == 12.7


@pytest.mark.parametrize(
    ("ply", "points", "words"),
    [
        (-1, ((0.0, 0.0, 0.0), (1.0, 0.0, 0.0)), "cut in ply -1: found a number below 0"),
        (0, ((0.0, 0.0, 0.0),), "cut in every ply: found 1 points, needed at least 2"),
        (2, ((0.0, 0.0, 0.0), (1.0, math.nan, 0.0)), "cut in ply 2: found a point that is no"),
    ],
)
def test_a_cut_that_is_none_is_refused(ply, points, words):
    with pytest.raises(InputError, match=words):
        Cut(ply, points)


def test_which_cuts_a_ply_takes():
    points = ((0.0, 0.0, 0.0), (1.0, 1.0, 1.0))
    every, one = Cut(0, points), Cut(2, points)
    refused = Cut(2, points, answer=Answer.REFUSED)
    settings = CutSettings((every, one, refused))
    assert settings.made(1) == (every,)
    assert settings.made(2) == (every, one)
    assert settings.refused(2) == (refused,)


def test_a_bent_cut_is_told_by_points_along_it_a_straight_one_by_its_ends():
    turns = np.linspace(0.0, np.pi, 61)
    line = np.stack([np.cos(turns), np.sin(turns), 0.0 * turns], axis=1)
    straight = LaidCut(1, line, Joint.LAP, 25.0, np.pi)
    assert straight.points == straight.ends
    points = np.array(replace(straight, bent=True).points)
    assert 12 <= len(points) <= 26
    assert points[[0, -1]] == pytest.approx(line[[0, -1]])
    assert np.hypot(*points.T[:2]) == pytest.approx(1.0)
