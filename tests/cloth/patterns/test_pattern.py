"""Flat patterns of a layup."""

import math

import numpy as np
import pytest
import shapely
from shapely.geometry import Point, Polygon

import shapes
from cloth_demo import TWILL, hatch_face, hatch_patterns, laminate_of
from laywright import values
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.fabric import Start
from laywright.cloth.drape.start_search import FindStart
from laywright.cloth.patterns.pattern import PatternSet, PatternSettings, make_patterns
from laywright.errors import Cancelled, GeometryError, InputError
from laywright.surface.face import LaminateSide, MouldSide, take_face

PLAIN = "E-glass plain weave 163 g/m^2"
MAT = "E-glass chopped strand mat 300 g/m^2"
COARSE = PatternSettings(triangles=500)


def test_one_pattern_for_each_ply_with_its_angle():
    found = hatch_patterns()
    assert [(p.ply, p.name, p.cloth) for p in found.patterns] == [
        (1, "ply 1", TWILL),
        (2, "ply 2", TWILL),
        (3, "ply 3", TWILL),
    ]
    assert [math.degrees(p.angle) for p in found.patterns] == pytest.approx([0.0, 45.0, 0.0])
    for pattern in found.patterns:
        seen = math.atan2(pattern.datum_direction[1], pattern.datum_direction[0])
        assert seen == pytest.approx(-pattern.angle, abs=1e-2)
        assert pattern.cut.min(axis=0) == pytest.approx([0.0, 0.0], abs=1e-9)


def test_cut_surrounds_trim_by_the_margin():
    for pattern in hatch_patterns().patterns:
        cut, trim = Polygon(pattern.cut), Polygon(pattern.trim)
        assert cut.contains(trim)
        apart = [trim.exterior.distance(Point(point)) for point in pattern.cut]
        assert apart == pytest.approx([20.0] * len(apart), abs=0.2)
        assert cut.area == pytest.approx(pattern.area)
        assert trim.area == pytest.approx(pattern.net_area, rel=1e-3)
        for point in (pattern.datum, pattern.centre):
            assert trim.contains(Point(point))
        for outside, inside in pattern.notches:
            assert cut.exterior.distance(Point(outside)) < 1e-6
            assert np.linalg.norm(outside - inside) == pytest.approx(6.0)


def test_drape_and_pattern_share_their_coordinates():
    found = hatch_patterns()
    for pattern, ply in zip(found.patterns, found.draped, strict=True):
        flat = ply.drape.uv + pattern.datum
        edge = flat[ply.surface.boundary_loops[0]]
        off = shapely.distance(shapely.points(edge), Polygon(pattern.trim).exterior)
        assert off.max() <= 0.05 + 1e-9
        assert pattern.largest_shear == ply.drape.largest_shear


def test_what_unrolls_gives_its_developed_area_and_outline():
    """A trough of 2 rad: the flat ply is a rectangle; the second lies one ply further in."""
    radius, length = 60.0, 200.0
    trough = shapes.cylinder_patch(radius, 2.0, length, (80, 40)).flipped()
    face = take_face(trough, (0, 0, -1), LaminateSide.INSIDE, MouldSide.OUTSIDE)
    laminate = laminate_of((TWILL, 0.0), (TWILL, 0.0))
    found = make_patterns(face, laminate, Datum((0, 0, radius), (0, 1, 0)), COARSE)
    for pattern, height in zip(found.patterns, laminate.ply_heights, strict=True):
        width = 2.0 * (radius + height)
        assert pattern.net_area == pytest.approx(width * length, rel=2e-3)
        assert np.ptp(pattern.trim, axis=0) == pytest.approx([length, width], rel=2e-3)
        assert np.ptp(pattern.cut, axis=0) == pytest.approx([length + 40, width + 40], rel=2e-3)
        assert pattern.largest_shear < math.radians(0.5)


def test_plies_lie_on_the_side_of_the_mould_they_are_laid_from():
    """On a plug the second ply lies further out than the first, in a cavity further in."""
    for side, grows in ((MouldSide.INSIDE, True), (MouldSide.OUTSIDE, False)):
        face = take_face(shapes.cap(80, 0.7, 16), None, LaminateSide.INSIDE, side)
        found = make_patterns(face, laminate_of((MAT, 0.0), (MAT, 0.0)), None, COARSE)
        first, second = (ply.surface.area for ply in found.draped)
        assert (second > first) is grows


def test_holes_are_kept_and_closed_by_the_margin():
    plate = shapes.graph(lambda x, y: -(x * x) / 800, (-100, 100), (-60, 60), (50, 30))
    plate = plate.part(np.hypot(plate.centroids[:, 0], plate.centroids[:, 1]) > 35.0)
    face = take_face(plate, (0, 0, 1))
    pattern = make_patterns(face, laminate_of((TWILL, 0.0)), None, COARSE).patterns[0]
    assert len(pattern.holes) == len(pattern.openings) == 1
    hole, opening = Polygon(pattern.holes[0]), Polygon(pattern.openings[0])
    assert hole.contains(opening)
    assert opening.area < 0.4 * hole.area


def test_shear_past_locking_is_said_in_plain_words():
    face = take_face(shapes.cap(60, math.radians(85), 16), None, mould_side=MouldSide.INSIDE)
    found = make_patterns(face, laminate_of((PLAIN, 0.0)), None, COARSE)
    pattern = found.patterns[0]
    assert pattern.largest_shear > pattern.locking_angle
    assert pattern.locked_share > 0.0
    assert len(found.remarks) >= 1
    assert f"{100 * pattern.locked_share:.1f} % of its area shears past" in found.remarks[0]
    assert "Have cuts proposed" in found.remarks[0]
    gentle = take_face(shapes.cap(200, 0.3, 12), None, mould_side=MouldSide.INSIDE)
    assert make_patterns(gentle, laminate_of((TWILL, 0.0)), None, COARSE).remarks == ()


def test_the_way_the_first_threads_are_laid_can_be_chosen():
    laminate = laminate_of((TWILL, 45.0))
    shear = {}
    for start in (Start.CROSS, Start.EASED, Start.POINT):
        settings = PatternSettings(triangles=3000, start=start)
        found = make_patterns(hatch_face(), laminate, None, settings)
        draped = found.draped[0]
        shear[start] = draped.surface.areas @ draped.drape.shear**2
    assert shear[Start.POINT] < shear[Start.EASED] < shear[Start.CROSS]


def test_inputs_and_results_are_stored_and_read_back():
    settings = PatternSettings(margin=25.0, start=Start.CROSS)
    assert values.unpack(PatternSettings, values.pack(settings)) == settings
    found = hatch_patterns()
    again = values.unpack(PatternSet, values.pack(found))
    assert again.digest == found.digest != ""
    assert values.digest(again.patterns) == values.digest(found.patterns)
    assert values.digest(again.draped) == values.digest(found.draped)


def test_the_same_inputs_give_the_same_patterns():
    laminate = laminate_of((TWILL, 10.0))
    first = make_patterns(hatch_face(), laminate, None, COARSE)
    second = make_patterns(hatch_face(), laminate, None, COARSE)
    assert values.digest(first.patterns) == values.digest(second.patterns)
    assert first.digest == make_patterns.digest(hatch_face(), laminate, None, COARSE)
    wider = PatternSettings(triangles=500, margin=30.0)
    assert first.digest != make_patterns.digest(hatch_face(), laminate, None, wider)


def test_progress_rises_and_the_work_can_be_stopped():
    told = []
    laminate = laminate_of((TWILL, 0.0), (TWILL, 0.0))
    make_patterns(
        hatch_face(), laminate, None, COARSE, progress=lambda share, doing="": told.append(share)
    )
    assert told[-1] == pytest.approx(1.0)
    assert min(told) >= 0.0

    def stop(share, doing=""):
        if share > 0.5:
            raise Cancelled

    with pytest.raises(Cancelled):
        make_patterns(hatch_face(), laminate, None, COARSE, progress=stop)


@pytest.mark.parametrize(
    "wrong", [{"margin": -1.0}, {"notch": math.nan}, {"deviation": 0.0}, {"triangles": 10}]
)
def test_settings_that_cannot_be_are_refused(wrong):
    with pytest.raises(InputError):
        PatternSettings(**wrong)


def test_a_face_too_tight_for_its_laminate_is_refused():
    tight = take_face(shapes.cylinder_patch(0.3, 2.5, 40, (20, 20)), None)
    with pytest.raises(GeometryError):
        make_patterns(tight, laminate_of(*[(MAT, 0.0)] * 2), None, COARSE)


def test_a_searched_start_is_told_and_is_not_worse():
    cap = shapes.cap(100.0, 1.2, 16)
    face = take_face(cap.part(cap.centroids[:, 0] > -20.0), (0, 0, 1.0))
    laminate = laminate_of((TWILL, 0.0))
    middle = make_patterns(face, laminate, None, COARSE)
    searched = PatternSettings(triangles=500, find=FindStart.LEAST_SHEAR)
    found = make_patterns(face, laminate, None, searched)
    assert found.remarks[0].startswith("Searched start point (")
    assert found.datum != middle.datum
    assert found.patterns[0].largest_shear < middle.patterns[0].largest_shear
