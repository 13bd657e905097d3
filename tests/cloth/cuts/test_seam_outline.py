"""Outlines along cuts: closed forms on a cone, which a dart lays flat exactly."""

import math

import numpy as np
import pytest
import shapely

import shapes
from laywright.cloth.cuts.cutting import cut_surface
from laywright.cloth.cuts.pieces import drape_pieces
from laywright.cloth.cuts.seam_outline import piece_region, seamed_outline
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.even_mesh import even_mesh
from laywright.cloth.drape.fabric import fabric_for
from laywright.cloth.drape.flatten import flatten
from laywright.errors import GeometryError
from laywright.laminate.materials import Weave

MAT = fabric_for(Weave.MAT)
LAP, MARGIN = 25.0, 20.0


def laid_plate(path, joint):
    """A flat plate 120 x 80 mm with a cut, and its outline with a lap of `joint` mm."""
    plate = even_mesh(shapes.graph(lambda x, y: 0 * x, (-60, 60), (-40, 40), (12, 8)), 5.0)
    cut = cut_surface(plate, plate.vertices[:, :2].copy(), [np.array(path)])
    laid = drape_pieces(cut, MAT, Datum((-30.0, 0.0, 0.0), (1, 0, 0)), 0.0)
    outlines = []
    for piece in laid.pieces:
        surface = type(plate)(
            cut.surface.vertices,
            cut.surface.triangles[piece.triangles],
            cut.surface.patches[piece.triangles],
        )
        outlines.append(
            seamed_outline(surface, laid.drape.uv, cut.seams, [joint], MARGIN, "a piece")
        )
    return outlines


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
    butt = seamed_outline(cut.surface, uv, cut.seams, [0.0], 0.0, "cone")
    lapped = seamed_outline(cut.surface, uv, cut.seams, [LAP], 0.0, "cone")
    sector = math.pi * math.sin(half_angle) * (slant * 1.0) ** 2
    assert butt.cut.area == pytest.approx(sector, rel=0.01)
    # The lap is a strip along one side, less the tip of it that has no room between the sides.
    lost = 0.5 * LAP**2 / math.tan(wedge)
    assert lapped.cut.area - butt.cut.area == pytest.approx(LAP * slant - lost, rel=0.04)
    assert shapely.covers(lapped.cut.buffer(0.1), butt.cut)
    assert len(lapped.slits) == len(lapped.laps) == 1
    assert butt.laps == ()


def test_cloth_that_would_lap_over_itself_is_refused():
    """Around a point of a saddle there is more surface than cloth, so a dart cannot close."""
    saddle = even_mesh(shapes.graph(lambda x, y: (x * x - y * y) / 50, (-50, 50), (-50, 50)), 6.0)
    flat = flatten(saddle)
    middle = flat[int(np.argmin(np.linalg.norm(saddle.vertices, axis=1)))]
    edge = flat[int(np.argmin(np.linalg.norm(saddle.vertices[:, :2] - [50, 0], axis=1)))]
    cut = cut_surface(saddle, flat, [np.stack([edge, middle])])
    laid = drape_pieces(cut, MAT, Datum((-25.0, 0.0, 12.5), (1, 0, 0)), 0.0)
    with pytest.raises(GeometryError, match="laps over itself"):
        piece_region(cut.surface, laid.drape.uv, "ply 1")
