"""The release check as a stage: classes, remarks, best pull."""

from __future__ import annotations

import math

import numpy as np
import pytest

import shapes
from laywright import values
from laywright.errors import GeometryError, LimitError
from laywright.mould.release.release import (
    BELOW_DRAFT,
    GOOD,
    UNDERCUT,
    ReleaseReport,
    ReleaseSettings,
    check_release,
    release_of,
)
from laywright.mould.release.wanted_draft import MouldFinish, wanted_draft
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


def test_progress_says_what_is_being_done():
    told = []
    release_of(shapes.mushroom(16), UP, progress=lambda *words: told.append(words))
    assert told == [
        (0.0, "measuring draft"),
        (0.2, "looking along the pull"),
        (0.8, "finding the best pull"),
    ]


def test_progress_of_the_whole_check_only_grows():
    told = []
    face = take_face(shapes.hatch(spacing=30.0), DOWN, LaminateSide.INSIDE, MouldSide.INSIDE)
    check_release(face, progress=lambda share, doing="": told.append(share))
    assert told[0] == 0.0
    assert told == sorted(told)
    assert told[-1] == pytest.approx(0.24), "the pull that releases is exact: nothing is searched"


def leaning(degrees, roof):
    """A wall of 20 x 10 mm that leans by some degrees, and a roof over a share of its length."""
    out = 10.0 * math.tan(math.radians(degrees))
    wall = [[0, 0, 10], [out, 0, 0], [out, 20, 0], [0, 20, 10]]
    cover = [[-5, 0, 20], [5, 0, 20], [5, 20 * roof, 20], [-5, 20 * roof, 20]]
    corners = np.array([[0, 1, 2], [0, 2, 3]])
    return Surface(
        np.array(wall + cover, float),
        np.concatenate([corners, corners + 4]),
        np.array([0, 0, 1, 1]),
        ("wall", "roof"),
    )


@pytest.mark.parametrize("roof", [0.25, 0.5, 1.0])
def test_what_is_hidden_is_not_counted_as_steep_as_well(roof):
    surface = leaning(3.0, roof)
    wall = 200.0 / math.cos(math.radians(3.0))
    report = release_of(surface, UP, ReleaseSettings(math.radians(5.0)))
    areas = dict(report.area_by_class)
    assert areas[UNDERCUT] == pytest.approx(wall * roof, rel=1e-9)
    assert areas[BELOW_DRAFT] == pytest.approx(wall * (1.0 - roof), rel=1e-9, abs=1e-9)
    assert areas[GOOD] == pytest.approx(200.0 * roof, rel=1e-9)
    assert report.least_draft == pytest.approx(math.radians(3.0), abs=1e-12)
    enough = dict(release_of(surface, UP, ReleaseSettings(math.radians(3.0))).area_by_class)
    assert enough[BELOW_DRAFT] == 0.0


def test_every_remark_is_a_whole_sentence():
    surface = leaning(3.0, 0.5)
    report = release_of(surface, UP, ReleaseSettings(math.radians(5.0), "it is rough"))
    assert report.remarks == (
        "wall holds the part back over 100 mm^2, 10 mm deep along the pull.",
        "wall has a draft of 3.0 deg, wanted 5.0 deg, over 100 mm^2 in all.",
        "That much is wanted because it is rough.",
    )
    closed = release_of(shapes.sphere(10.0, 24), UP).remarks
    assert closed[-1] == (
        "No single pull sees the whole surface: it needs a mould of several parts."
    )


@pytest.mark.parametrize("count", [5, 6, 8])
def test_of_many_places_the_largest_five_are_told_and_the_rest_added_up(count):
    sizes = np.arange(1.0, count + 1.0)
    corners, triangles = [], []
    for place, size in enumerate(sizes):
        corners += [[20 * place, 0, 0], [20 * place, size, 0], [20 * place + 2, 0, 0]]
        triangles.append([3 * place, 3 * place + 1, 3 * place + 2])
    report = release_of(Surface.single(np.array(corners, float), np.array(triangles)), UP)
    assert [region.area for region in report.regions] == pytest.approx(sizes[::-1])
    held = [text for text in report.remarks if "holds the part back" in text]
    assert len(held) == 5
    assert held[0].startswith(f"Face1 holds the part back over {count} mm^2, 0 mm deep")
    rest = [text for text in report.remarks if "more undercut" in text]
    area = sum(range(1, count - 4))
    assert rest == ([f"{count - 5} more undercut places hold {area} mm^2."] if count > 5 else [])


def test_bad_input_is_one_sentence():
    with pytest.raises(LimitError, match="wanted draft"):
        ReleaseSettings(math.radians(90.0))
    line = Surface.single(np.array([[0, 0, 0], [1, 0, 0], [2, 0, 0]], float), np.array([[0, 1, 2]]))
    with pytest.raises(GeometryError) as caught:
        release_of(line, UP)
    assert str(caught.value) == (
        "Face1: found no area, needed a face with area; pick another face."
    )
    tiny = Surface.single(1e-3 * np.eye(3), np.array([[0, 1, 2]]))
    assert release_of(tiny, (1.0, 1.0, 1.0)).undercut_area == 0.0


def test_where_the_pull_is_wrong_the_right_one_is_named():
    surface = shapes.hatch(spacing=20.0)
    wrong = check_release(take_face(surface, DOWN, LaminateSide.INSIDE, MouldSide.INSIDE))
    assert wrong.releasing.releases
    np.testing.assert_allclose(wrong.releasing.pull, UP, atol=1e-9)
    draft = math.degrees(wrong.releasing.least_draft)
    assert wrong.remarks[-1] == (
        f"The part would leave along (0, 0, 1) with a least draft of {draft:.1f} deg."
    )
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
