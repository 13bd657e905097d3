"""The face as it is printed: opened for spring-in where that is asked for, and what it says."""

from __future__ import annotations

import dataclasses
import math
from functools import cache

import numpy as np
import pytest

import shapes
from laywright import values
from laywright.mould.body.as_printed import compensations_of, opened_face, printed_surface
from laywright.mould.body.body import build_body
from laywright.mould.body.compensation import Allowance, Allowances, SpringInUse
from laywright.mould.body.settings import MouldSettings
from laywright.surface.face import LaminateSide, MouldSide, take_face
from laywright.surface.triangles import Surface

CLOSING = 0.0075
UP = (0.0, 0.0, 1.0)


def channel(radius=8.0, drop=40.0, half=30.0, length=160.0, steps=8, draft=0.0):
    """A floor with two legs downwards, normals upwards: a plug lies below it."""
    turn = math.pi / 2.0 - draft
    arc = np.linspace(0.0, turn, steps + 1)
    bow = radius * np.stack([np.sin(arc), np.cos(arc) - 1.0], axis=1) + [half, 0.0]
    tip = bow[-1] + drop * np.array([math.cos(turn), -math.sin(turn)])
    right = np.concatenate([bow, [tip]])
    line = np.concatenate([right[::-1] * [-1.0, 1.0], right])
    count, i = len(line), np.arange(len(line) - 1)
    points = np.concatenate(
        [np.column_stack([line[:, 0], np.full(count, y), line[:, 1]]) for y in (0.0, length)]
    )
    triangles = np.concatenate(
        [
            np.stack([i, i + 1, i + 1 + count], axis=1),
            np.stack([i, i + 1 + count, i + count], axis=1),
        ]
    )
    return Surface.single(points, triangles, "Channel")


def allowing(spring_in, closing=CLOSING, **others):
    return MouldSettings(allowances=Allowances(closing=closing, spring_in=spring_in, **others))


@cache
def face():
    return take_face(channel(draft=math.radians(3.0)), UP, LaminateSide.OUTSIDE, MouldSide.INSIDE)


@cache
def moulds():
    return {use: build_body(face(), 1.0, allowing(use)) for use in SpringInUse}


def spring_rows(body):
    return [item for item in body.compensations if item.name.startswith("spring-in")]


def leg_angle(surface):
    """Angle between the two legs, by the normals of their largest facets."""
    sides = [np.flatnonzero(sign * surface.normals[:, 0] > 0.8) for sign in (1, -1)]
    one, other = (surface.normals[side[np.argmax(surface.areas[side])]] for side in sides)
    return math.atan2(np.linalg.norm(np.cross(one, other)), one @ other)


def test_the_mould_of_a_channel_is_open_by_what_its_bends_close():
    plain, opened = (moulds()[use] for use in (SpringInUse.LISTED, SpringInUse.APPLIED))
    turn = leg_angle(plain.working)
    assert turn == pytest.approx(math.radians(174.0), abs=1e-9)
    assert leg_angle(opened.working) == pytest.approx(turn / (1.0 + CLOSING), abs=1e-7)
    assert opened.working.area == pytest.approx(plain.working.area, rel=1e-6)
    assert opened.largest_deviation < 1e-6
    assert opened.solid.is_closed
    on_area = opened.solid.part(opened.on_working_area)
    assert leg_angle(on_area) == pytest.approx(turn / (1.0 + CLOSING), abs=1e-6)


def test_three_states_leave_the_mould_alone_list_or_open_it():
    none, listed, applied = (
        moulds()[use]
        for use in (SpringInUse.NOT_CONSIDERED, SpringInUse.LISTED, SpringInUse.APPLIED)
    )
    np.testing.assert_array_equal(none.working.vertices, listed.working.vertices)
    np.testing.assert_array_equal(none.working.vertices, face().working_surface(1.0).vertices)
    (row,) = spring_rows(none)
    assert (row.size, row.where) == (0.0, "not considered")
    closes = math.degrees(CLOSING * math.radians(87.0))
    rows = spring_rows(listed)
    assert [row.size for row in rows] == pytest.approx([closes] * 2)
    assert all(row.where.startswith("not applied: Channel turns by 87 deg") for row in rows)
    whole, *rows = spring_rows(applied)
    assert (whole.unit, whole.size) == ("mm", pytest.approx(applied.largest_from_cad, rel=0.1))
    assert [row.size for row in rows] == pytest.approx([closes / (1.0 + CLOSING)] * 2)
    assert all(row.where.endswith("the mould is opened by this angle") for row in rows)


def test_what_is_switched_off_by_name_opens_nothing():
    off = allowing(SpringInUse.APPLIED, left_out=(Allowance.SPRING_IN,))
    assert opened_face(face(), 1.0, off) is None
    rows = [item for item in compensations_of(face(), 1.0, off) if "spring-in" in item.name]
    assert {row.where for row in rows} == {"not applied: switched off"}
    same = printed_surface(face(), 1.0, allowing(SpringInUse.APPLIED, 0.0))
    np.testing.assert_array_equal(same.vertices, face().working_surface(1.0).vertices)


def test_the_map_of_distances_holds_the_opening_with_its_side():
    opened = moulds()[SpringInUse.APPLIED]
    away = opened.from_cad
    tip = opened.working.vertices[:, 2] < opened.working.vertices[:, 2].min() + 1.0
    outward = 40.0 * CLOSING * math.radians(87.0)
    assert away[tip].min() > 0.4 * outward
    assert away.min() < -0.02
    assert moulds()[SpringInUse.LISTED].largest_from_cad < 1e-9


def test_laminate_and_coats_lie_on_the_opened_shape():
    inner = dataclasses.replace(face(), laminate_side=LaminateSide.INSIDE)
    settings = allowing(SpringInUse.APPLIED, coats=0.3)
    opened = opened_face(inner, 1.2, settings)
    back = printed_surface(inner, 1.2, settings, opened)
    assert leg_angle(back) == pytest.approx(leg_angle(opened.surface), abs=1e-9)
    flat = np.abs(opened.surface.normals[:, 2]) > 0.999
    drop = (opened.surface.centroids - back.centroids)[flat] @ np.array(UP)
    np.testing.assert_allclose(drop, 1.5, atol=1e-3)


def test_the_draft_of_what_is_moulded_is_told():
    half = math.degrees(0.5 * leg_angle(moulds()[SpringInUse.APPLIED].working))
    remarks = [text for text in moulds()[SpringInUse.APPLIED].remarks if "spring-in" in text]
    assert len(remarks) == 1
    assert f"least draft of {90.0 - half:.1f} deg" in remarks[0]
    assert "has 3.0 deg" in remarks[0]
    assert not [text for text in moulds()[SpringInUse.LISTED].remarks if "spring-in" in text]


def test_legs_without_draft_release_when_the_mould_is_opened():
    """Upright legs that close by spring-in would grip a plug; opened, they leave it."""
    upright = take_face(channel(), UP, LaminateSide.OUTSIDE, MouldSide.INSIDE)
    body = build_body(upright, 1.0, allowing(SpringInUse.APPLIED))
    assert not body.pieces
    assert body.working.normals[:, 2].min() > 0.0


def test_a_mould_in_pieces_is_opened_too():
    tray = take_face(shapes.tray(turns=6, spacing=14.0), UP)
    plain, opened = (
        build_body(tray, 0.8, allowing(use)) for use in (SpringInUse.LISTED, SpringInUse.APPLIED)
    )
    assert len(opened.pieces) == len(plain.pieces) == 2
    assert opened.solid.is_closed
    assert opened.largest_deviation < 1e-6
    assert plain.largest_from_cad < 1e-9
    assert 0.02 < opened.largest_from_cad < 1.0
    whole, *rows = spring_rows(opened)
    assert "stretched by at most 0.0" in whole.where
    assert any("the faces around it hold the rest" in row.where for row in rows)


def test_settings_and_body_survive_storage():
    settings = allowing(SpringInUse.APPLIED)
    assert values.unpack(MouldSettings, values.pack(settings)) == settings
    assert values.digest(settings) != values.digest(allowing(SpringInUse.LISTED))
