"""Opened bends: exact where all folds can have what they ask, honest where they cannot."""

from __future__ import annotations

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.errors import LimitError
from laywright.surface.opened import open_bends
from laywright.surface.triangles import Surface

SHARE = 0.007


def section(turns, radius, leg=40.0, length=120.0, steps=8):
    """Flat legs with a bend of each turn between them, and which strips are flat."""
    heading, place = 0.0, np.zeros(2)
    profile, flat = [place], []
    for turn in (*turns, None):
        place = place + leg * np.array([math.cos(heading), math.sin(heading)])
        profile.append(place)
        flat.append(len(profile) - 2)
        if turn is None:
            break
        for _ in range(steps):
            chord = 2.0 * radius * math.sin(abs(turn) / steps / 2.0)
            middle = heading + turn / steps / 2.0
            place = place + chord * np.array([math.cos(middle), math.sin(middle)])
            profile.append(place)
            heading += turn / steps
    line = np.array(profile)
    count, i = len(line), np.arange(len(line) - 1)
    points = np.concatenate([np.column_stack([line, np.full(count, z)]) for z in (0.0, length)])
    triangles = np.concatenate(
        [
            np.stack([i, i + 1, i + 1 + count], axis=1),
            np.stack([i, i + 1 + count, i + count], axis=1),
        ]
    )
    return Surface.single(points, triangles, "Section"), flat


def edge_lengths(surface):
    ends = surface.vertices[surface.edges.ends]
    return np.linalg.norm(ends[:, 1] - ends[:, 0], axis=1)


@settings(max_examples=12, deadline=None)
@given(
    turns=st.lists(
        st.floats(0.4, 1.4).flatmap(lambda t: st.sampled_from([t, -t])), min_size=1, max_size=3
    ),
    radius=st.floats(1.0, 12.0),
    share=st.floats(-0.03, 0.03),
)
def test_open_sections_open_exactly_and_their_flats_stay_flat(turns, radius, share):
    surface, flats = section(turns, radius)
    made = open_bends(surface, share, 0.8)
    opened = made.surface
    np.testing.assert_allclose(edge_lengths(opened), edge_lengths(surface), rtol=2e-6)
    between = len(surface.triangles) // 2
    before, after = (s.normals[flats] for s in (surface, opened))
    for i, turn in enumerate(turns):
        was, now = (
            math.atan2(np.linalg.norm(np.cross(n[i], n[i + 1])), n[i] @ n[i + 1])
            for n in (before, after)
        )
        assert was == pytest.approx(abs(turn), rel=1e-9)
        assert now == pytest.approx(abs(turn) / (1.0 + share), abs=1e-6)
    twins = np.array(flats) + between
    np.testing.assert_allclose(opened.normals[twins], after, atol=1e-6)
    assert made.largest_stretch < 2e-6


def test_the_two_legs_of_a_channel_move_apart_as_trigonometry_says():
    surface, _ = section([math.pi / 2.0, math.pi / 2.0], 6.0)
    made = open_bends(surface, SHARE, 0.8)
    assert len(made.bends) == 2
    asked = 0.5 * math.pi * SHARE / (1.0 + SHARE)
    for bend in made.bends:
        assert bend.asked == pytest.approx(asked, rel=1e-9)
        assert bend.reached == pytest.approx(asked, rel=1e-5)
    tips = [0, len(surface.vertices) // 2 - 1]
    was, now = (
        float(np.linalg.norm(s.vertices[tips[0]] - s.vertices[tips[1]]))
        for s in (surface, made.surface)
    )
    step = math.pi / 2.0 / 8
    line, heading = 0.0j, 0.0
    for leg in range(3):
        line += 40.0 * np.exp(1j * heading)
        if leg == 2:
            break
        for _ in range(8):
            # A facet of the arc keeps its length; the folds beside it open.
            ways = heading + step / (1.0 + SHARE) / 2.0
            line += 2.0 * 6.0 * math.sin(step / 2.0) * np.exp(1j * ways)
            heading += step / (1.0 + SHARE)
    assert now == pytest.approx(abs(line), abs=1e-4)
    assert now > was


def test_a_sharp_edge_opens_as_a_round_one_does():
    points = np.array([[0.0, 0, 0], [90, 0, 0], [0, 50, 0], [90, 50, 0], [0, 0, 50], [90, 0, 50]])
    triangles = np.array([[0, 1, 3], [0, 3, 2], [1, 0, 4], [1, 4, 5]])
    made = open_bends(Surface.single(points, triangles), SHARE, 0.8)
    (bend,) = made.bends
    assert bend.bend.radius == 0.0
    assert bend.reached == pytest.approx(bend.asked, rel=1e-6)
    assert made.largest_stretch < 2e-6


@pytest.mark.parametrize("slant", [0.0, 0.5])
def test_a_wide_curve_opens_too_however_its_mesh_runs(slant):
    """Radius R becomes R (1 + share): a curve need not be narrow to close."""
    radius, across = 80.0, np.array([math.cos(slant), math.sin(slant)])
    half = 40.0
    outline = np.array([[-half, -half], [half, -half], [half, half], [-half, half]])
    surface = shapes.plate(
        outline, lambda x, y: np.sqrt(radius**2 - (x * across[0] + y * across[1]) ** 2), 8.0
    )
    made = open_bends(surface, 0.02, 0.8)
    points = made.surface.vertices
    plan = np.stack([points[:, :2] @ across, points[:, 2]], axis=1)
    fit = np.linalg.lstsq(
        np.column_stack([2.0 * plan, np.ones(len(plan))]), (plan**2).sum(axis=1), rcond=None
    )[0]
    found = math.sqrt(fit[2] + fit[0] ** 2 + fit[1] ** 2)
    assert found / radius - 1.0 == pytest.approx(0.02, rel=0.02)


def test_flat_plates_and_no_closing_change_nothing():
    flat = shapes.graph(lambda x, y: 0.0 * x, (-50.0, 50.0), (-30.0, 30.0), (8, 6))
    made = open_bends(flat, 0.02, 1.0)
    np.testing.assert_allclose(made.surface.vertices, flat.vertices, atol=1e-10)
    assert made.bends == ()
    bent, _ = section([1.0], 5.0)
    none = open_bends(bent, 0.0, 1.0)
    assert none.surface is bent
    assert none.largest_move == 0.0
    assert [bend.reached for bend in none.bends] == [0.0]


def test_closing_again_gives_the_part_back():
    surface, _ = section([1.2, -0.7], 5.0)
    made = open_bends(surface, SHARE, 0.8).surface
    back = open_bends(made, 1.0 / (1.0 + SHARE) - 1.0, 0.8).surface
    np.testing.assert_allclose(back.vertices, surface.vertices, atol=1e-5)


def test_a_closed_rim_says_what_it_does_not_reach():
    made = open_bends(shapes.tray(0.0, turns=6, spacing=20.0), SHARE, 0.8)
    assert len(made.bends) >= 1
    for bend in made.bends:
        assert 0.0 < bend.reached < bend.asked
    assert 1e-6 < made.largest_stretch < 0.2 * SHARE
    assert 0.0 < made.largest_move < 1.0


def test_a_finer_mesh_gives_the_same_answer():
    moves = [
        open_bends(shapes.cap(60.0, 0.8, rings), 0.02, 2.0).largest_move for rings in (6, 12, 20)
    ]
    assert moves[:2] == pytest.approx([moves[2]] * 2, rel=0.06)


def test_what_would_take_minutes_is_refused_in_a_sentence():
    wide = shapes.graph(lambda x, y: 1e-3 * x * x, (-50.0, 50.0), (-50.0, 50.0), (150, 150))
    with pytest.raises(LimitError) as caught:
        open_bends(wide, SHARE, 1.0)
    assert "45000 triangles" in caught.value.found
