"""Outlines along cuts: closed forms on a cone, which a dart lays flat exactly."""

import math

import numpy as np
import pytest
import shapely

import shapes
from laywright.cloth.cuts.cutting import cut_surface
from laywright.cloth.cuts.pieces import drape_pieces
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.even_mesh import even_mesh
from laywright.cloth.drape.fabric import fabric_for
from laywright.cloth.drape.flatten import flatten
from laywright.cloth.patterns.margins import EdgeMargins, with_margins
from laywright.cloth.patterns.seam_outline import seamed_outline
from laywright.cloth.plies.draped_ply import DrapedPly
from laywright.laminate.materials import Weave

MAT = fabric_for(Weave.MAT)
LAP, MARGIN = 25.0, 20.0


DEVIATION = 0.02
NO_HOLES = np.zeros(0, dtype=int)


def margins(common, deviation=DEVIATION, **by_side):
    return EdgeMargins.by_side(common, by_side, np.array([1.0, 0.0]), deviation)


def outlines_of(surface, flat, paths, joint, start, edge):
    """Outlines of the pieces of a surface with cuts, laps of `joint` mm."""
    cut = cut_surface(surface, flat, [np.array(path) for path in paths])
    laid = drape_pieces(cut, MAT, Datum(start, (1, 0, 0)), 0.0)
    whole = DrapedPly(cut.surface, laid.drape, laid.pieces, cut.seams)
    laps, holes = [joint] * len(paths), whole.hole_vertices
    return [
        seamed_outline(whole.part(k), laid.drape.uv, cut.seams, laps, edge, holes, "a piece")
        for k in range(len(laid.pieces))
    ]


def laid_plate(path, joint, edge=None):
    """A flat plate 120 x 80 mm with a cut."""
    plate = even_mesh(shapes.graph(lambda x, y: 0 * x, (-60, 60), (-40, 40), (12, 8)), 5.0)
    flat = plate.vertices[:, :2].copy()
    return outlines_of(plate, flat, [path], joint, (-30.0, 0.0, 0.0), edge or margins(MARGIN))


def round_corners(count, whole):
    """Area that a margin has less than a mitred one at its rounded corners."""
    return whole - count * (1.0 - math.pi / 4.0) * MARGIN**2


def test_pieces_of_a_splice_share_the_plate_and_one_carries_the_lap():
    right, left = sorted(
        laid_plate([[0.0, -40.0], [0.0, 40.0]], LAP), key=lambda piece: -piece.cut.area
    )
    for piece in (right, left):
        assert piece.region.area == pytest.approx(60.0 * 80.0, rel=1e-3)
    # The cut runs upwards, so the piece on its left (x < 0) is wider by the lap.
    tall = 80.0 + 2.0 * MARGIN
    assert right.cut.area == pytest.approx(round_corners(2, (60 + MARGIN + LAP) * tall), rel=2e-3)
    assert left.cut.area == pytest.approx(round_corners(2, (60 + MARGIN) * tall), rel=2e-3)
    assert right.laps == ()
    (line,) = left.laps
    assert np.linalg.norm(line[-1] - line[0]) == pytest.approx(80.0, rel=1e-3)


def test_butted_pieces_end_at_the_seam():
    for piece in laid_plate([[0.0, -40.0], [0.0, 40.0]], 0.0):
        tall = 80.0 + 2.0 * MARGIN
        assert piece.cut.area == pytest.approx(round_corners(2, (60 + MARGIN) * tall), rel=2e-3)
        assert piece.laps == ()


def test_a_dart_that_does_not_open_is_a_slit_through_the_margin():
    (piece,) = laid_plate([[0.0, -40.0], [0.0, 10.0]], LAP)
    assert piece.region.area == pytest.approx(120.0 * 80.0, rel=1e-3)
    (slit,) = piece.slits
    assert np.linalg.norm(slit[-1] - slit[0]) == pytest.approx(50.0 + MARGIN, abs=0.5)
    whole = round_corners(4, (120 + 2 * MARGIN) * (80 + 2 * MARGIN))
    assert piece.cut.area == pytest.approx(whole, rel=2e-3)


def coned(half_angle, path_end):
    """A cone cap, slit to near its apex, laid flat in mat."""
    slant = 80.0
    cone = shapes.cap(slant, 1.0, 20)
    polar = np.arccos(cone.vertices[:, 2] / slant)
    turn = np.arctan2(cone.vertices[:, 1], cone.vertices[:, 0])
    along = slant * polar
    across = along * math.sin(half_angle)
    cone = cone.moved(
        np.stack(
            [across * np.cos(turn), across * np.sin(turn), -along * math.cos(half_angle)], axis=1
        )
    )
    flat = flatten(cone)
    apex = int(np.argmax(cone.vertices[:, 2]))
    rim = cone.boundary_loops[0]
    mouth = flat[rim[0]]
    tip = flat[apex] + path_end * (mouth - flat[apex])
    cut = cut_surface(cone, flat, [np.stack([mouth, tip])])
    laid = drape_pieces(
        cut, MAT, Datum(tuple(cone.vertices[rim[len(rim) // 2]] * 0.5), (0, 1, 0)), 0
    )
    return cut, laid, slant


def test_a_cone_slit_to_its_apex_opens_by_the_angle_of_the_sector():
    """A cone of half angle a unrolls to a sector of 2 pi sin a: check DEV-01."""
    half_angle = math.radians(60.0)
    cut, laid, slant = coned(half_angle, 0.0)
    uv, seam = laid.drape.uv, cut.seams[0]
    sides = [uv[edges[0, 0]] - uv[edges[-1, 1]] for edges in (seam.left, seam.right)]
    cosine = sides[0] @ sides[1] / np.prod([np.linalg.norm(side) for side in sides])
    wedge = 2.0 * math.pi * (1.0 - math.sin(half_angle))
    assert math.acos(cosine) == pytest.approx(wedge, rel=0.01)
    assert laid.drape.yarn_stretch < 5e-3
    butt = seamed_outline(cut.surface, uv, cut.seams, [0.0], margins(0.0), NO_HOLES, "cone")
    lapped = seamed_outline(cut.surface, uv, cut.seams, [LAP], margins(0.0), NO_HOLES, "cone")
    sector = math.pi * math.sin(half_angle) * (slant * 1.0) ** 2
    assert butt.cut.area == pytest.approx(sector, rel=0.01)
    # The lap is a strip along one side, less the tip of it that has no room between the sides.
    lost = 0.5 * LAP**2 / math.tan(wedge)
    assert lapped.cut.area - butt.cut.area == pytest.approx(LAP * slant - lost, rel=0.04)
    assert shapely.covers(lapped.cut.buffer(0.1), butt.cut)
    assert len(lapped.slits) == len(lapped.laps) == 1
    assert butt.laps == ()


def test_margins_by_side_beside_a_dart():
    """The dart does not open: the margins are those of the plate without it, to the last corner."""
    edge = margins(MARGIN, ahead=40.0, left=10.0, behind=5.0, right=30.0)
    (piece,) = laid_plate([[0.0, -40.0], [0.0, 10.0]], LAP, edge)
    west, south, east, north = piece.region.bounds
    bounds = (west - 5.0, south - 30.0, east + 40.0, north + 10.0)
    assert piece.cut.bounds == pytest.approx(bounds, abs=0.1)
    whole = with_margins(piece.region, MARGIN, dict(edge.wanted), edge.arrow, DEVIATION)
    assert piece.cut.symmetric_difference(whole).area < 5.0
    (slit,) = piece.slits
    assert np.linalg.norm(slit[-1] - slit[0]) == pytest.approx(50.0 + 30.0, abs=0.5)


def test_margins_by_side_beside_a_splice():
    """Each piece takes those of the sides it has; the seam takes the lap, up to the margins."""
    edge = margins(MARGIN, ahead=40.0, left=10.0, behind=5.0, right=30.0)
    behind, ahead = sorted(
        laid_plate([[0.0, -40.0], [0.0, 40.0]], LAP, edge), key=lambda piece: len(piece.laps)
    )
    tall = 10.0 + 80.0 + 30.0
    fits = [(behind, 5.0 + 60.0 + LAP), (ahead, 60.0 + 40.0)]
    for piece, wide in fits:
        west, south, east, north = piece.cut.bounds
        assert (east - west, north - south) == pytest.approx((wide, tall), abs=0.1)
        assert piece.cut.area == pytest.approx(wide * tall, abs=0.1 * (wide + tall))


def test_a_slit_to_a_hole_that_does_not_open_keeps_both_margins():
    plate = shapes.graph(lambda x, y: 0 * x, (-60, 60), (-40, 40), (24, 16))
    plate = plate.part(np.abs(plate.centroids[:, :2]).max(axis=1) > 15.0)
    edge = margins(MARGIN, holes=6.0)
    flat = plate.vertices[:, :2].copy()
    path = [[0.0, -40.0], [0.0, -15.0]]
    (found,) = outlines_of(plate, flat, [path], LAP, (-30.0, 0.0, 0.0), edge)
    flange = (120.0 + 2.0 * MARGIN) * (80.0 + 2.0 * MARGIN)
    assert found.cut.area == pytest.approx(flange - 18.0**2, abs=3.0)
    (slit,) = found.slits
    assert np.linalg.norm(slit[-1] - slit[0]) == pytest.approx(MARGIN + 25.0 + 6.0, abs=0.2)


def flat_at(surface, flat, point):
    return flat[int(np.argmin(np.linalg.norm(surface.vertices - point, axis=1)))]


def test_a_cylinder_with_a_slanting_splice_has_its_areas_and_lengths():
    """A trough of 2 rad, R = 60 mm, parted through its middle: two equal trapezia."""
    radius, length, rise = 60.0, 160.0, 40.0
    trough = shapes.cylinder_patch(radius, 2.0, length, (24, 32))
    flat = flatten(trough)
    ends = [
        flat_at(trough, flat, [radius * math.sin(t), 0.5 * rise * t, radius * math.cos(t)])
        for t in (-1.0, 1.0)
    ]
    pieces = outlines_of(trough, flat, [ends], 0.0, (0.0, 50.0, radius), margins(0.0))
    seam = math.hypot(2.0 * radius, rise)
    assert len(pieces) == 2
    for piece in pieces:
        assert piece.cut.area == pytest.approx(radius * length, rel=1e-3)
        assert piece.cut.length == pytest.approx(2.0 * radius + length + seam, rel=1e-3)


@pytest.fixture(scope="module")
def parted_cone():
    """A cone of half angle 35 deg, slant 40 to 120 mm, 3 rad wide, parted at 80 mm."""
    cone = shapes.cone_patch(math.radians(35.0), 40.0, 120.0, 3.0, (30, 20))
    flat = flatten(cone)
    sine, cosine = math.sin(math.radians(35.0)), math.cos(math.radians(35.0))
    ring = [
        (80.0 * sine * math.sin(t), -80.0 * sine * math.cos(t), -80.0 * cosine)
        for t in np.linspace(-1.5, 1.5, 31)
    ]
    path = np.array([flat_at(cone, flat, point) for point in ring])
    start = (0.0, -100.0 * sine, -100.0 * cosine)

    def parted(joint, edge):
        return outlines_of(cone, flat, [path], joint, start, edge)

    return parted


def test_a_cone_parted_by_a_ring_has_its_areas_and_lengths(parted_cone):
    """It unrolls to a sector of 3 sin a; both sides of the seam are arcs of 80 mm."""
    angle = 3.0 * math.sin(math.radians(35.0))
    outer, inner = parted_cone(0.0, margins(0.0))
    for piece, (near, far) in ((outer, (80.0, 120.0)), (inner, (40.0, 80.0))):
        assert piece.cut.area == pytest.approx(0.5 * angle * (far**2 - near**2), rel=2e-3)
        around = angle * (near + far) + 2.0 * (far - near)
        assert piece.cut.length == pytest.approx(around, rel=1e-3)
    sides = [run for piece in (outer, inner) for run in piece.runs if run.side is not None]
    lengths = [shapely.LineString(run.points).length for run in sides]
    assert lengths == pytest.approx([80.0 * angle] * 2, rel=1e-3)
    assert lengths[0] == pytest.approx(lengths[1], rel=5e-4)


@pytest.mark.parametrize("deviation", [0.4, 0.1, 0.02])
@pytest.mark.parametrize("joint", [0.0, LAP])
def test_outlines_are_drawn_as_closely_as_is_stated(parted_cone, joint, deviation):
    """Against the same drawn a hundred times more closely; few points where much is allowed."""
    rough = parted_cone(joint, margins(MARGIN, deviation=deviation))
    fine = parted_cone(joint, margins(MARGIN, deviation=0.01 * deviation))
    for drawn, exact in zip(rough, fine, strict=True):
        cut = with_margins(drawn.cut, 0.0, {}, np.array([1.0, 0.0]), deviation)
        far = shapely.hausdorff_distance(cut.exterior, exact.cut.exterior, densify=0.02)
        assert far <= deviation
        assert len(cut.exterior.coords) < 30 + 40 / math.sqrt(deviation)
