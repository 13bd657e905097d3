"""The release check as a stage: classes, remarks, best pull."""

from __future__ import annotations

import math

import numpy as np
import pytest

import shapes
from laywright import values
from laywright.errors import GeometryError, LimitError
from laywright.mould.release import (
    BELOW_DRAFT,
    GOOD,
    UNDERCUT,
    ReleaseReport,
    ReleaseSettings,
    check_release,
    release_of,
)
from laywright.mould.wanted_draft import MouldFinish, wanted_draft
from laywright.surface.face import LaminateSide, MouldSide, take_face
from laywright.surface.triangles import Surface

UP, DOWN = (0.0, 0.0, 1.0), (0.0, 0.0, -1.0)


def test_a_hatch_leaves_a_plug_upwards_and_a_cavity_downwards():
    surface = shapes.hatch(spacing=15.0)
    for pull, side in ((UP, MouldSide.INSIDE), (DOWN, MouldSide.OUTSIDE)):
        report = check_release(take_face(surface, pull, LaminateSide.INSIDE, side))
        assert report.undercut_area == 0.0
        assert dict(report.area_by_class)[GOOD] == pytest.approx(surface.area, rel=1e-12)
        assert report.remarks == ()
        np.testing.assert_allclose(report.best_pull, pull, atol=1e-9)
        assert report.best_least_draft == pytest.approx(report.least_draft, abs=1e-9)


def test_the_wrong_side_is_undercut_whole():
    surface = shapes.hatch(spacing=15.0)
    report = check_release(take_face(surface, DOWN, LaminateSide.INSIDE, MouldSide.INSIDE))
    assert report.undercut_area == pytest.approx(surface.area, rel=1e-12)
    assert report.regions[0].area == pytest.approx(surface.area, rel=1e-12)
    assert "Crown holds the part back" in report.remarks[0]


def test_draft_below_the_wanted_one_is_named_with_its_face():
    surface = shapes.frustum(40.0, 34.0, 60.0, 90)
    wall = surface.part(np.abs(surface.normals[:, 2]) < 0.5)
    good = release_of(wall, UP, ReleaseSettings(math.radians(5.0)))
    poor = release_of(wall, UP, ReleaseSettings(math.radians(6.0)))
    assert dict(good.area_by_class) == pytest.approx(
        {UNDERCUT: 0.0, BELOW_DRAFT: 0.0, GOOD: wall.area}, rel=1e-12
    )
    assert dict(poor.area_by_class)[BELOW_DRAFT] == pytest.approx(wall.area, rel=1e-12)
    assert poor.remarks[0].startswith("Face1 has a draft of 5.7 deg, wanted 6.0 deg")


def test_zero_draft_is_below_and_not_undercut():
    report = release_of(shapes.cylinder_patch(10.0, 2 * math.pi, 20.0), (0.0, 1.0, 0.0))
    assert dict(report.area_by_class)[UNDERCUT] == 0.0
    assert report.least_draft == pytest.approx(0.0, abs=1e-12)


def test_a_closed_solid_needs_several_parts():
    report = release_of(shapes.sphere(10.0, 24), UP)
    assert report.best_least_draft < 0.0
    assert "mould of several parts" in report.remarks[-1]


def test_stored_and_stamped():
    face = take_face(shapes.hatch(spacing=30.0), UP, LaminateSide.INSIDE, MouldSide.INSIDE)
    report = check_release(face)
    assert report.digest == check_release.digest(face)
    assert report.digest != check_release.digest(face, ReleaseSettings(0.1))
    stored = values.pack(report)
    again = values.unpack(ReleaseReport, stored)
    assert values.pack(again) == stored
    assert again.facing_away.dtype == bool


def test_progress_runs_from_start_to_near_the_end():
    told = []
    release_of(shapes.mushroom(16), UP, progress=lambda share, doing="": told.append(share))
    assert told == sorted(told)
    assert told[0] == 0.0


def test_bad_input_is_one_sentence():
    with pytest.raises(LimitError, match="wanted draft"):
        ReleaseSettings(math.radians(90.0))
    line = Surface.single(np.array([[0, 0, 0], [1, 0, 0], [2, 0, 0]], float), np.array([[0, 1, 2]]))
    with pytest.raises(GeometryError, match="no area"):
        release_of(line, UP)


def test_where_the_pull_is_wrong_the_right_one_is_named():
    surface = shapes.hatch(spacing=20.0)
    wrong = check_release(take_face(surface, DOWN, LaminateSide.INSIDE, MouldSide.INSIDE))
    assert wrong.releasing.releases
    np.testing.assert_allclose(wrong.releasing.pull, UP, atol=1e-9)
    assert "would leave along (0, 0, 1) with a least draft of" in wrong.remarks[-1]
    right = check_release(take_face(surface, UP, LaminateSide.INSIDE, MouldSide.INSIDE))
    assert right.releasing is None


def test_the_reason_for_the_wanted_draft_is_given_where_it_is_not_met():
    wanted = wanted_draft(MouldFinish.LAYERED)
    surface = shapes.frustum(40.0, 36.0, 60.0, 60)
    wall = surface.part(np.abs(surface.normals[:, 2]) < 0.5)
    settings = ReleaseSettings(wanted.angle, wanted.reason)
    assert "because layer lines 0.05 mm deep" in release_of(wall, UP, settings).remarks[1]
    steep = shapes.frustum(40.0, 30.0, 60.0, 60)
    wall = steep.part(np.abs(steep.normals[:, 2]) < 0.5)
    assert release_of(wall, UP, settings).remarks == ()


def test_the_fewest_pieces_that_release_the_part_are_named_with_their_directions():
    face = take_face(shapes.tray(turns=4, spacing=25.0), UP)
    report = check_release(face)
    assert not report.releasing.releases
    first, second = (np.array(pull) for pull in report.piece_pulls)
    assert first @ second < -0.9
    (line,) = [text for text in report.remarks if "pieces releases" in text]
    assert line.startswith("A mould in 2 pieces releases the part, no fewer were found")
    assert line.count("(") == 2
    alone = check_release(face, ReleaseSettings(most_pieces=1))
    assert alone.piece_pulls == ()
    assert alone.remarks == report.remarks[:-1]
    kept = values.unpack(ReleaseReport, values.pack(report))
    assert kept.piece_pulls == report.piece_pulls
    np.testing.assert_array_equal(kept.draft, report.draft)


def test_where_no_few_pieces_do_that_is_said():
    face = take_face(shapes.lobed(3, 3, 0.6, around=48, rows=6), UP)
    report = check_release(face, ReleaseSettings(most_pieces=2))
    assert report.piece_pulls == ()
    assert report.remarks[-1] == "No mould in 2 pieces was found that releases the part."
