"""Local plies from extent to pattern: sizes, margins, order, pieces, ends that are checked."""

import math

import numpy as np
import pytest
import shapely

import shapes
from laywright import values
from laywright.cloth.cuts.cuts import Cut, CutSettings
from laywright.cloth.drape.datum import Datum
from laywright.cloth.patterns.landing import landing_drawing, landings
from laywright.cloth.patterns.pattern import PatternSet, PatternSettings, make_patterns
from laywright.cloth.plies.end_remarks import ends_apart
from laywright.errors import InputError
from laywright.files.drawing import Label, Line
from laywright.laminate.extents import Faces, Round, Strip
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Core, DropOff, Layup, Ply
from laywright.surface.face import LaminateSide, MouldSide, take_face
from laywright.surface.triangles import Surface

CARDS = load_materials()
TWILL = CARDS.cloth("E-glass twill weave 200 g/m^2")
RESIN = CARDS.resin(CARDS.resin_names[0])
PLATE = shapes.graph(lambda x, y: 0.0 * x, (-100, 100), (-60, 60), (4, 4))
COARSE = PatternSettings(triangles=1200)
PATCH = Round((25.0, 10.0, 0.0), 25.0)
ALONG = Datum((0.0, 0.0, 0.0), (1.0, 0.0, 0.0))


def laminate_of(*plies, **settings):
    laid = tuple(Ply(TWILL, math.radians(angle), "", extent) for angle, extent in plies)
    return analyse(Layup(laid, RESIN, **settings))


def patterns_of(surface, *plies, cuts=CutSettings(), **settings):
    laminate = laminate_of(*plies, **settings)
    return make_patterns(take_face(surface, (0, 0, 1.0)), laminate, ALONG, COARSE, cuts)


@pytest.fixture(scope="module")
def reinforced():
    return patterns_of(PLATE, (0, None), (0, PATCH), (45, PATCH), (0, PATCH), (90, None))


def test_every_local_ply_has_its_pattern_in_its_place_in_the_order(reinforced):
    assert [(p.ply, p.name) for p in reinforced.patterns] == [
        (number, f"ply {number}") for number in range(1, 6)
    ]
    areas = [pattern.net_area for pattern in reinforced.patterns[1:4]]
    closed = [math.pi * radius**2 for radius in (25.0, 19.0, 13.0)]
    assert areas == pytest.approx(closed, rel=4e-3)
    assert [p.area for p in reinforced.patterns[1:4]] == pytest.approx(areas, rel=2e-3)
    assert reinforced.main is reinforced.draped[0]
    again = values.unpack(PatternSet, values.pack(reinforced))
    assert values.digest(again) == values.digest(reinforced)


def test_ends_lie_the_set_way_apart_on_the_mould(reinforced):
    for lower in (2, 3):
        far, _ = ends_apart(reinforced.draped[lower - 1], reinforced.draped[lower])
        assert far == pytest.approx(6.0, abs=0.2)
    assert not [remark for remark in reinforced.remarks if "mm apart" in remark]
    assert ends_apart(reinforced.draped[0], reinforced.draped[1]) is None


def test_further_out_and_by_another_way():
    found = patterns_of(
        PLATE, (0, None), (0, PATCH), (0, PATCH), drop_off=9.0, drop_way=DropOff.OUT
    )
    sizes = [math.sqrt(pattern.net_area / math.pi) for pattern in found.patterns[1:]]
    assert sizes == pytest.approx([25.0, 34.0], abs=0.1)


def test_mass_is_that_of_areas_and_areal_weights(reinforced):
    by_zone = {}
    for zone in reinforced.zones:
        for ply in zone.plies:
            by_zone[ply] = by_zone.get(ply, 0.0) + zone.area
    nets = {pattern.ply: pattern.net_area for pattern in reinforced.patterns}
    for ply, area in by_zone.items():
        assert area == pytest.approx(nets[ply], rel=6e-3)
    covered = [ply.share @ reinforced.main.surface.areas for ply in reinforced.draped[1:4]]
    assert covered == pytest.approx([by_zone[n] for n in (2, 3, 4)], rel=6e-3)


def test_angles_count_from_the_datum_arrow_carried_to_the_patch(reinforced):
    for pattern in reinforced.patterns[1:4]:
        seen = math.atan2(pattern.datum_direction[1], pattern.datum_direction[0])
        assert seen == pytest.approx(-pattern.angle, abs=5e-3)
    starts = [ply.pieces[0].datum.origin for ply in reinforced.draped]
    assert starts[1] == pytest.approx((25.0, 10.0, 0.0), abs=0.2)
    assert starts[0] == (0.0, 0.0, 0.0)


def test_a_patch_has_margin_at_the_edge_of_the_part_and_none_inside():
    """Half a disc on the edge: a rectangle of the margin's width is added below its diameter."""
    found = patterns_of(PLATE, (0, None), (0, Round((100.0, 0.0, 0.0), 30.0)), (0, Strip(15.0)))
    half = found.patterns[1]
    assert half.net_area == pytest.approx(0.5 * math.pi * 900.0, rel=5e-3)
    assert half.area - half.net_area == pytest.approx(60.0 * 20.0, rel=0.04)
    assert max(np.ptp(half.cut, axis=0)) == pytest.approx(60.0, abs=2.0)
    strip = found.patterns[2]
    outer = shapely.box(0, 0, 200, 120).buffer(20.0)
    assert strip.area == pytest.approx(outer.area - 170.0 * 90.0, rel=2e-3)
    assert len(strip.openings) == 1


def test_a_patch_on_a_cylinder_develops_exactly():
    """At the height of its middle: an ellipse, as long as the patch and narrower by the radius."""
    radius = 80.0
    surface = shapes.cylinder_patch(radius, 1.6, 140.0, (60, 30))
    laminate = laminate_of((0, None), (0, Round((0.0, 0.0, radius), 30.0)))
    found = make_patterns(
        take_face(surface, (0, 0, 1.0)),
        laminate,
        Datum((0.0, 0.0, radius), (0.0, 1.0, 0.0)),
        COARSE,
    )
    narrower = (radius - float(laminate.ply_heights[1])) / radius
    pattern, drape = found.patterns[1], found.draped[1].drape
    assert pattern.net_area == pytest.approx(math.pi * 900.0 * narrower, rel=3e-3)
    assert np.ptp(pattern.cut, axis=0) == pytest.approx([60.0, 60.0 * narrower], abs=0.15)
    assert drape.yarn_stretch < 1e-4
    assert drape.largest_shear < 3e-3


def test_a_mould_far_behind_the_picked_point_does_not_shrink_the_patch():
    """With a thick core the mould lies 20 mm behind the face; the patch keeps its radius."""
    core = Core(CARDS.core(CARDS.core_names[0]), 20.0, 2)
    laminate = laminate_of((0, None), (0, PATCH), (0, None), core=core)
    face = take_face(PLATE, (0, 0, 1.0), LaminateSide.INSIDE, MouldSide.INSIDE)
    found = make_patterns(face, laminate, ALONG, COARSE)
    assert found.patterns[1].net_area == pytest.approx(math.pi * 625.0, rel=4e-3)


def test_an_extent_in_two_parts_gives_two_patterns_of_one_ply():
    named = np.where(np.abs(PLATE.centroids[:, 0]) > 50.0, 1, 0)
    surface = Surface(PLATE.vertices, PLATE.triangles, named, ("Middle", "Ends"))
    found = patterns_of(surface, (0, None), (0, Faces(("Ends",))))
    assert [(p.ply, p.piece) for p in found.patterns] == [(1, 0), (2, 1), (2, 2)]
    assert sum(p.net_area for p in found.patterns[1:]) == pytest.approx(12000.0, rel=2e-3)
    assert any("falls apart into 2 pieces" in remark for remark in found.remarks)


def test_a_ply_first_on_the_mould_may_be_local():
    found = patterns_of(PLATE, (0, PATCH), (0, None))
    assert found.main is found.draped[1]
    assert found.patterns[0].net_area == pytest.approx(math.pi * 625.0, rel=4e-3)
    over = found.draped[1].surface.vertices
    near = np.linalg.norm(over[:, :2] - [25.0, 10.0], axis=1) < 24.0
    heights = np.abs(over[:, 2])
    assert heights[near].mean() == pytest.approx(3.0 * heights[~near].min(), rel=0.02)


def test_ends_that_come_too_close_are_told_with_their_place():
    found = patterns_of(
        PLATE, (0, None), (0, PATCH), (0, Round((25.0, 10.0, 0.0), 27.0)), drop_off=5.0
    )
    (remark,) = (remark for remark in found.remarks if "mm apart" in remark)
    assert remark.startswith("Ply 2 and ply 3 end 1.9")
    assert "at least 5 mm are wanted" in remark


def test_an_extent_over_everything_is_laid_and_told():
    found = patterns_of(PLATE, (0, None), (0, Round((0.0, 0.0, 0.0), 500.0)))
    assert found.patterns[1].net_area == pytest.approx(24000.0, rel=1e-6)
    assert found.patterns[1].area == pytest.approx(found.patterns[0].area, rel=1e-3)
    assert any("covers the whole face" in remark for remark in found.remarks)


def test_a_ring_starts_on_itself():
    found = patterns_of(PLATE, (0, None), (0, Strip(20.0)))
    x, y, _ = found.draped[1].pieces[0].datum.origin
    assert min(100.0 - abs(x), 60.0 - abs(y)) == pytest.approx(10.0, abs=4.0)


def test_the_view_along_the_pull_shows_where_local_plies_end(reinforced):
    drawing = landing_drawing(reinforced, (0.0, 0.0, 1.0))
    rings = [s for s in drawing.shapes if isinstance(s, Line) and s.layer == "local"]
    sizes = sorted(float(np.ptp(np.asarray(ring.points), axis=0).max()) for ring in rings)
    assert sizes == pytest.approx([26.0, 38.0, 50.0], abs=0.4)
    numbers = {s.text for s in drawing.shapes if isinstance(s, Label)}
    assert {"2", "3", "4"} <= numbers
    assert sum(len(landing.names) for landing in landings(reinforced, (0.0, 0.0, 1.0))) == 5


def test_cuts_of_every_ply_leave_local_ones_alone_and_cuts_in_them_are_refused():
    across = ((0.0, 60.0, 0.0), (0.0, 25.0, 0.0))
    every = CutSettings((Cut(0, across),))
    found = patterns_of(PLATE, (0, None), (0, PATCH), cuts=every)
    assert [len(ply.cuts) for ply in found.draped] == [1, 0]
    with pytest.raises(InputError, match=r"cut in ply 2.*part of the face"):
        patterns_of(PLATE, (0, None), (0, PATCH), cuts=CutSettings((Cut(2, across),)))
