"""Where a mould is parted: fewest pieces, each leaving, lines along edges and silhouettes."""

from __future__ import annotations

import math
from functools import cache

import numpy as np
import pytest

import shapes
from laywright import values
from laywright.errors import LimitError
from laywright.mould.release.leaving import held_share
from laywright.mould.release.parting import Parting, PartingSettings, part_face, part_surface
from laywright.mould.release.release import check_release
from laywright.surface.face import take_face

UP = (0.0, 0.0, 1.0)


@cache
def tray_face(lip: float = 4.0):
    return take_face(shapes.tray(lip, turns=6, spacing=16.0), UP)


@cache
def tray_parting():
    return part_face(tray_face())


def sound(parting: Parting, area: float):
    """Every facet once, each piece connected and leaving, lines where pieces meet."""
    surface = parting.surface
    assert surface.area == pytest.approx(area, rel=1e-9)
    assert set(parting.piece.tolist()) == set(range(len(parting.pulls)))
    held = 0.0
    for number, pull in enumerate(parting.pulls):
        region = parting.region(number)
        assert region.components.max() == 0
        own = parting.piece == number
        held += held_share(surface, pull)[own] @ surface.areas[own]
    assert parting.undercut_area == pytest.approx(held, abs=1e-6 * area)
    table = surface.edges
    inner = (table.left >= 0) & (table.right >= 0)
    apart = inner & (parting.piece[table.left] != parting.piece[table.right])
    ends = surface.vertices[table.ends[apart]]
    length = np.linalg.norm(ends[:, 1] - ends[:, 0], axis=1).sum()
    assert sum(line.length for line in parting.lines) == pytest.approx(length, rel=1e-9)


def test_a_tray_with_a_lip_is_held_in_one_piece_and_leaves_in_two():
    surface = tray_face().working_surface()
    report = check_release(tray_face())
    assert {region.patch for region in report.regions} <= {"Lip", "Wall", "Bend"}
    lip = surface.patches == surface.patch_names.index("Lip")
    assert (report.undercut_share[lip] == 1.0).all()
    assert report.regions[0].area == pytest.approx(report.undercut_area)
    assert report.remarks[-2].endswith("part the mould.")
    assert len(report.piece_pulls) == 2
    parting = tray_parting()
    sound(parting, surface.area)
    assert len(parting.pulls) == 2
    assert parting.undercut_area == 0.0


def test_without_the_lip_one_piece_is_enough():
    parting = part_face(tray_face(0.0))
    assert len(parting.pulls) == 1
    assert parting.lines == ()
    np.testing.assert_allclose(parting.pulls[0], UP, atol=1e-6)
    assert parting.remarks == ("One piece is enough: the whole surface leaves along one pull.",)


def test_a_cavity_round_a_ball_is_parted_along_a_great_circle():
    ball = shapes.sphere(50.0, 20)
    surface = ball.part(ball.centroids[:, 2] < 45.0).flipped()
    parting = part_surface(surface, UP)
    sound(parting, surface.area)
    assert parting.undercut_area == 0.0
    assert len(parting.pulls) == 2
    np.testing.assert_allclose(parting.pulls[0], -np.array(parting.pulls[1]), atol=1e-12)
    for line in parting.lines:
        assert line.along_silhouette == pytest.approx(1.0)
        np.testing.assert_allclose(line.points @ np.array(parting.pulls[0]), 0.0, atol=1e-9)


def test_a_box_is_parted_along_its_sharp_edges():
    box = shapes.box(60.0, 40.0, 30.0)
    surface = box.part(box.patches != box.patch_names.index("top")).flipped()
    around = np.isin(surface.patches, [0, 1, 2, 3])
    lean = surface.vertices.copy()
    lean[lean[:, 2] > 1.0, :2] = 0.7 * (lean[lean[:, 2] > 1.0, :2] - [30, 20]) + [30, 20]
    surface = surface.moved(lean)
    assert (surface.normals[around, 2] < -0.05).all()
    parting = part_surface(surface, UP, PartingSettings(least_draft=0.0))
    sound(parting, surface.area)
    assert parting.undercut_area == 0.0
    assert 2 <= len(parting.pulls) <= 3
    length = sum(line.length for line in parting.lines)
    assert sum(line.length * line.along_sharp for line in parting.lines) > 0.4 * length


def test_turning_the_part_turns_the_pieces():
    turn = np.array([[0.0, -1.0, 0.0], [1.0, 0.0, 0.0], [0.0, 0.0, 1.0]])
    surface = tray_face().working_surface()
    other = part_surface(surface.moved(surface.vertices @ turn.T), UP)
    assert len(other.pulls) == len(tray_parting().pulls)
    assert other.undercut_area == 0.0


@pytest.mark.parametrize(
    ("settings", "where"),
    [({"most_pieces": 5}, "most pieces"), ({"least_draft": math.pi}, "wanted draft")],
)
def test_settings_out_of_range_are_named(settings, where):
    with pytest.raises(LimitError, match=where):
        PartingSettings(**settings)


def test_stored_and_stamped():
    parting = tray_parting()
    assert parting.digest == part_face.digest(tray_face())
    assert parting.digest != part_face.digest(tray_face(), 1.0)
    stored = values.pack(parting)
    assert values.pack(values.unpack(Parting, stored)) == stored


def test_triangles_that_are_a_little_off_need_no_more_pieces():
    # Like chords of faces that are curved two ways: some facets of the floor, of the rim and
    # along the crests face away from every pull, by less than triangles are exact.
    exact = shapes.tray(turns=4, spacing=30.0).flipped()
    off = np.random.default_rng(1).uniform(-0.02, 0.02, exact.vertices.shape)
    surface = exact.moved(exact.vertices + off)
    parting = part_surface(surface, UP)
    assert len(parting.pulls) == 2
    assert parting.undercut_area == 0.0
    assert {parting.region(number).components.max() for number in (0, 1)} == {0}
    assert any("they count as leaving" in remark for remark in parting.remarks)
