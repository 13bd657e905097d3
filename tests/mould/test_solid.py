"""Surfaces become solids and come back with their patches."""

from __future__ import annotations

import numpy as np
import pytest

import shapes
from laywright.errors import GeometryError
from laywright.mould.solid import block, from_manifold, prism, to_manifold, tube


def test_there_and_back_keeps_volume_and_patches():
    box = shapes.box(10, 20, 30)
    again = from_manifold(to_manifold(box, "box"), box.patch_names)
    assert again.volume == pytest.approx(6000.0, rel=1e-12)
    areas = np.bincount(again.patches, weights=again.areas)
    np.testing.assert_allclose(areas, np.bincount(box.patches, weights=box.areas), rtol=1e-12)


def test_patches_go_through_a_cut():
    ball = to_manifold(shapes.sphere(50.0, 24), "ball")
    half = from_manifold(
        ball ^ block(np.array([-60.0, -60, 0]), np.array([60.0, 60, 60]), 1), ("ball", "cut")
    )
    assert half.is_closed
    section = half.part(half.patches == 1)
    assert np.abs(section.vertices[:, 2]).max() < 1e-12
    assert np.linalg.norm(half.part(half.patches == 0).vertices, axis=1) == pytest.approx(
        50.0, rel=0.01
    )


def test_prism_and_tube_have_their_volumes():
    outline = np.array([[0, 0], [4, 0], [5, 2], [1, 3]], float)
    assert prism(outline, -1.0, 2.0, 0).volume() == pytest.approx(3.0 * 10.5)
    turn = 2 * np.pi * np.arange(90) / 90
    square = np.array([[-1, -1], [1, -1], [1, 1], [-1, 1]], float)
    sections = np.stack(
        [
            np.stack([(20 + r) * np.cos(turn), (20 + r) * np.sin(turn), 0 * turn + z], axis=1)
            for r, z in square
        ],
        axis=1,
    )
    chord = np.sin(2 * np.pi / 90) / (2 * np.pi / 90)
    volume = 4.0 * 2 * np.pi * 20 * chord
    assert tube(sections[:, ::-1], 0).volume() == pytest.approx(-volume, rel=1e-9)
    assert tube(sections, 0).volume() == pytest.approx(volume, rel=1e-9)


def test_an_open_or_inverted_surface_is_refused_by_name():
    box = shapes.box(1, 1, 1)
    for bad in (box.part(box.patches != 0), box.flipped()):
        with pytest.raises(GeometryError) as caught:
            to_manifold(bad, "the part")
        assert caught.value.where == "the part"


def test_specks_are_drawn_together_and_real_edges_kept():
    box = to_manifold(shapes.box(10, 10, 10), "box")
    low, high = np.array([5.0, -1, -1]), np.array([11.0, 11, 10 - 2e-5])
    nearly = from_manifold(box - block(low, high, 6), (*shapes.box(1, 1, 1).patch_names, "cut"))
    table = nearly.edges
    length = np.linalg.norm(
        nearly.vertices[table.ends[:, 0]] - nearly.vertices[table.ends[:, 1]], axis=1
    )
    assert nearly.is_closed
    assert length.min() > 1e-4
    assert nearly.volume == pytest.approx(500.0, abs=0.01)
    ball = shapes.sphere(50.0, 24)
    assert len(from_manifold(to_manifold(ball, "ball"), ("ball",)).triangles) == len(ball.triangles)
