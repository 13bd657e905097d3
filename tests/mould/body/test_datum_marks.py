"""Marks of the datum: their grooves' volume and place, and a working area that stays untouched."""

from __future__ import annotations

import dataclasses
import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.mould.body.body import build_body
from laywright.mould.body.datum_marks import directions_at
from laywright.mould.body.settings import Edge, MarkedDatum, MouldSettings
from laywright.mould.frame import upright
from laywright.surface.distance import distances
from laywright.surface.face import MouldSide, take_face
from laywright.values import pack, unpack

UP = (0.0, 0.0, 1.0)
PLATE = shapes.graph(lambda x, y: 0.0 * x, (0, 100), (0, 70), (10, 7))
CENTRE = (50.0, 35.0, 0.0)
ALONG_X = MarkedDatum(CENTRE, (1.0, 0.0, 0.0))
# Of the default run-off of 25 mm: 0.05 + 1.5 * 0.8 + 0.5 mm from the trim line, 1 mm from the rim.
LONG = 25.0 - 1.75 - 1.0
SLOT = np.array(
    [[-80, -60], [80, -60], [80, 60], [10, 60], [10, -10], [-10, -10], [-10, 60], [-80, 60]], float
)


def body_of(datum, surface=PLATE, side=MouldSide.INSIDE, **more):
    pull = UP if side is MouldSide.INSIDE else (0.0, 0.0, -1.0)
    face = take_face(surface, pull, mould_side=side)
    return build_body(face, 0.0, MouldSettings(datum=datum, **more))


def facets(body, name):
    return body.solid.part(body.solid.patches == body.patch(name))


def pointed(body, axis, sign):
    """Return the points of the ticks on one side of the plate's middle."""
    points = facets(body, "datum tick").vertices
    inside = np.abs(points[:, 1 - axis] - CENTRE[1 - axis]) < 25.0
    return points[inside & (sign * (points[:, axis] - CENTRE[axis]) > 0.0)]


def test_the_volume_is_that_of_four_grooves():
    marked, plain = body_of(ALONG_X), body_of(None)
    assert marked.solid.is_closed
    assert marked.remarks == ()
    depths = facets(marked, "datum tick")
    corners = depths.corners
    plan = 0.5 * np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])[:, 2]
    taken = float(-(corners[:, :, 2].mean(axis=1) * plan).sum())
    assert taken == pytest.approx(4.0 * LONG * 0.5 * 0.4 * 0.8, rel=0.01)
    figures = plain.volume - marked.volume - taken
    # "0": a ring 4 by 6 mm and its slash; "9": 6 + 4 + 3 + 4 mm; all but their crossings.
    strokes = 2 * (20.0 + math.hypot(4.0, 6.0)) + 17.0
    assert figures == pytest.approx(strokes * 0.16, rel=0.1)
    assert figures < strokes * 0.16


@pytest.mark.parametrize("turn", [0.0, 0.3, 1.2, 2.7, -1.9])
def test_ticks_lie_in_the_planes_of_the_arrow(turn):
    way = np.array([math.cos(turn), math.sin(turn)])
    points = facets(body_of(MarkedDatum(CENTRE, (*way, 0.0))), "datum tick").vertices
    away = (points[:, :2] - CENTRE[:2]) @ np.column_stack([way, [-way[1], way[0]]])
    assert np.abs(away).min(axis=1).max() == pytest.approx(0.4, abs=1e-6)
    for axis in (0, 1):
        own = away[np.abs(away[:, axis]) > np.abs(away[:, 1 - axis]), axis]
        assert own.min() < -35.0
        assert own.max() > 35.0


def test_the_figures_stand_ahead_and_to_the_left_seen_from_the_laminate():
    figures = facets(body_of(ALONG_X), "datum figure").vertices
    ahead, left = figures[figures[:, 0] > 100.0], figures[figures[:, 1] > 70.0]
    assert len(ahead) + len(left) == len(figures)
    assert np.ptp(left[:, 0]) > np.ptp(left[:, 1])  # two figures beside each other
    datum = MarkedDatum((0.0, 0.0, 60.0), (1.0, 0.0, 0.0))
    below = body_of(datum, shapes.cap(60.0, 0.7, 10), MouldSide.OUTSIDE)
    # Seen from above a cap, against the pull of a cavity below it, left is right.
    assert facets(below, "datum figure").vertices[:, 1].min() < -30.0


def test_the_working_area_is_the_same_without():
    surface = shapes.cap(80.0, 0.9, 10)
    for edge in (Edge(), Edge(flange=20.0, cloth_margin=18.0)):
        marked, plain = (
            body_of(datum, surface, edge=edge)
            for datum in (MarkedDatum((5.0, 0.0, 79.8), (1.0, 0.4, 0.0)), None)
        )
        assert marked.largest_deviation == plain.largest_deviation
        own = [
            body.solid.part(body.solid.patches < body.patch("run-off")) for body in (marked, plain)
        ]
        assert own[0].area == pytest.approx(own[1].area, rel=1e-12)
        marks = [facets(marked, name).vertices for name in ("datum tick", "datum figure")]
        away = distances(np.concatenate(marks), marked.working)
        assert away.min() > max(0.05 + 0.8, edge.cloth_margin)


def test_a_cross_on_a_slope_is_that_of_the_cloth():
    slope = shapes.graph(lambda x, y: 0.5 * x + 0.3 * y, (-50, 50), (-40, 40), (10, 8))
    place, along, across = directions_at(
        slope, np.array([0.0, 0.0, 3.0]), np.array([1.0, 1.0, 0.0])
    )
    normal = np.array([-0.5, -0.3, 1.0]) / math.sqrt(1.34)
    np.testing.assert_allclose(place, 3.0 * normal[2] * -normal[:2], atol=1e-12)
    raised = [np.append(way, way @ [0.5, 0.3]) for way in (along, across)]
    np.testing.assert_allclose(np.linalg.norm(raised, axis=1), 1.0)
    assert raised[0] @ raised[1] == pytest.approx(0.0, abs=1e-12)
    assert np.cross(*raised) @ normal == pytest.approx(1.0)


def test_another_pull_gives_the_same_marks():
    turn = upright((0.3, -0.5, 0.8))
    moved = PLATE.moved(PLATE.vertices @ turn)
    face = take_face(moved, (0.3, -0.5, 0.8), mould_side=MouldSide.INSIDE)
    datum = MarkedDatum(tuple(np.array(CENTRE) @ turn), tuple(np.array([1.0, 0.0, 0.0]) @ turn))
    body = build_body(face, 0.0, MouldSettings(datum=datum))
    assert body.volume == pytest.approx(body_of(ALONG_X).volume, rel=1e-9)


def test_what_finds_no_room_is_told():
    narrow = body_of(ALONG_X, run_off=6.0)
    assert narrow.solid.is_closed
    assert narrow.volume == body_of(None, run_off=6.0).volume
    assert narrow.remarks[0].startswith("The datum is not marked on 4 of its 4 sides")
    small = body_of(ALONG_X, run_off=9.0, scribe_width=1.5)
    assert small.remarks == (
        "The datum's ticks go without the figure 0 and 90: the run-off leaves no room beside them.",
    )
    standing = body_of(MarkedDatum(CENTRE, UP))
    assert standing.remarks[0].startswith("The datum is not marked: its arrow")
    assert standing.volume == body_of(None).volume
    without = body_of(ALONG_X, scribe_depth=0.0)
    assert without.remarks == ("The datum is not marked: scribed lines have no depth.",)


def test_across_a_slot_the_outermost_edge_is_marked():
    body = body_of(
        MarkedDatum((-40.0, 0.0, 0.0), (1.0, 0.0, 0.0)),
        shapes.plate(SLOT, lambda x, y: 0.0 * x, 8.0),
    )
    assert body.solid.is_closed
    assert np.abs(facets(body, "datum tick").vertices[:, 0] - 0.0).min() > 30.0


def test_it_survives_packing():
    wanted = MouldSettings(datum=ALONG_X)
    assert unpack(MouldSettings, pack(wanted)) == wanted
    assert dataclasses.replace(wanted, datum=None) == MouldSettings()


@settings(max_examples=25, deadline=None)
@given(
    st.floats(-20.0, 20.0),
    st.floats(-15.0, 15.0),
    st.floats(-math.pi, math.pi),
    st.floats(-12.0, 12.0),
    st.sampled_from([0.0, 15.0]),
)
def test_random_places_and_arrows_leave_one_closed_body(x, y, turn, crown, margin):
    surface = shapes.graph(
        lambda x, y: crown * ((x / 50.0) ** 2 + (y / 35.0) ** 2), (-50, 50), (-35, 35), (9, 7)
    )
    datum = MarkedDatum((x, y, 0.0), (math.cos(turn), math.sin(turn), 0.0))
    more = {"edge": Edge(flange=12.0, cloth_margin=margin)}
    body, plain = (body_of(wanted, surface, **more) for wanted in (datum, None))
    assert body.solid.is_closed
    assert body.solid.components.max() == 0
    assert body.largest_deviation == plain.largest_deviation
    assert 0.5 < plain.volume - body.volume < 35.0
