"""Moulds in two to four pieces: closed, apart, complete, releasing, together one way only."""

from __future__ import annotations

from functools import cache
from itertools import combinations

import numpy as np
import pytest

import shapes
from laywright import values
from laywright.errors import GeometryError, LimitError
from laywright.mould.body.pieces import MouldPieces, PieceSettings, build_pieces
from laywright.mould.release.parting import PartingSettings, part_face, part_surface
from laywright.mould.release.release import release_of
from laywright.mould.release.sampled import barely_hidden
from laywright.mould.solid import to_manifold
from laywright.surface.face import take_face
from laywright.tolerances import TOLERANCES

UP = (0.0, 0.0, 1.0)


@cache
def parting_of(part: str):
    if part == "ball":
        ball = shapes.sphere(50.0, 20)
        return part_surface(ball.part((ball.corners[..., 2] < 42.0).all(axis=1)).flipped(), UP)
    if part == "tray":
        return part_face(take_face(shapes.tray(turns=6, spacing=14.0), UP))
    lobes, depth = int(part[0]), 0.6 if part[0] == "3" else 0.7
    surface = shapes.lobed(lobes, 3, depth, around=24 * lobes, rows=9).flipped()
    return part_surface(surface, UP, PartingSettings(least_draft=0.0))


@cache
def pieces_of(part: str) -> MouldPieces:
    return build_pieces(parting_of(part), UP)


PARTS = ["ball", "tray", "3 lobes", "4 lobes"]

# Share of the working area that may still be held, and of the flange that may face away: none
# for two pieces with level lines, little where three or four meet in a point.
_HELD = {"ball": 0.0, "tray": 0.0, "3 lobes": 0.0, "4 lobes": 0.001}
_JAMS = {"ball": 0.0, "tray": 0.001, "3 lobes": 0.01, "4 lobes": 0.07}
# Volume that two pieces may share, mm^3, once corners nearer than 1e-4 mm are one.
_SHARED = {"ball": 1e-6, "tray": 1e-6, "3 lobes": 1e-6, "4 lobes": 0.02}


@pytest.mark.parametrize("part", PARTS)
def test_pieces_are_closed_apart_and_complete(part):
    mould, parting = pieces_of(part), parting_of(part)
    assert len(mould.pieces) == len(parting.pulls)
    solids = [to_manifold(piece.solid, piece.name) for piece in mould.pieces]
    for piece, solid in zip(mould.pieces, solids, strict=True):
        assert piece.solid.is_closed
        assert solid.volume() == pytest.approx(piece.volume, rel=1e-6)
    for one, other in combinations(solids, 2):
        assert (one ^ other).volume() < _SHARED[part]
    assert mould.overlap < 1e-6
    assert mould.largest_deviation < 1e-6
    area = sum(p.solid.areas[p.on_working_area].sum() for p in mould.pieces)
    assert area == pytest.approx(parting.surface.area, rel=1e-4 if part == "4 lobes" else 1e-6)
    assert mould.moved_area <= 0.001 * parting.surface.area


@pytest.mark.parametrize("part", PARTS)
def test_every_piece_leaves_along_its_own_pull(part):
    mould = pieces_of(part)
    for piece in mould.pieces:
        report = release_of(piece.solid, piece.pull)
        working = piece.on_working_area
        share = np.where(working, report.undercut_share, 0.0)
        some = np.flatnonzero(share)
        share[some[barely_hidden(piece.solid, piece.pull, some, TOLERANCES.chord)]] = 0.0
        held = share @ piece.solid.areas
        total = piece.solid.areas[working].sum()
        assert piece.undercut_area == pytest.approx(held, abs=1e-6 * total)
        told = " ".join(mould.remarks)
        assert held <= _HELD[part] * total + 1e-6 * total
        assert (held > 1e-6 * total) == (f"of {piece.name} hold the part back" in told)
        flange = piece.solid.areas[piece.solid.patches == piece.solid.patch_names.index("flange")]
        assert piece.flange_undercut_area <= _JAMS[part] * flange.sum()
        assert (piece.flange_undercut_area > 1.0) == (f"the flange of {piece.name} face" in told)


@pytest.mark.parametrize("part", PARTS)
def test_pieces_go_together_one_way_only(part):
    mould = pieces_of(part)
    flanges = len(mould.pieces) - 1
    without = sum("has no room for registration cones" in remark for remark in mould.remarks)
    assert len(mould.cones) == 3 * (flanges - without)
    assert without == 0 or part == "4 lobes"
    assert len(mould.bolts) >= 2 * (len(mould.pieces) - 1)
    assert mould.other_fits == 0


def test_a_ball_is_drawn_apart_without_touching():
    """The pieces, moved along their pulls, meet neither the other piece nor the ball."""
    mould = pieces_of("ball")
    sphere = shapes.sphere(50.0, 20)
    ball = to_manifold(sphere.moved(0.9999 * sphere.vertices), "a ball")
    solids = [to_manifold(piece.solid, piece.name) for piece in mould.pieces]
    for distance in (0.5, 5.0, 60.0):
        for number, piece in enumerate(mould.pieces):
            moved = solids[number].translate(tuple(-distance * np.array(piece.pull)))
            assert (moved ^ solids[1 - number]).volume() < 1e-6
            assert (moved ^ ball).volume() < 1e-6


def test_bad_input_is_named():
    whole = part_face(take_face(shapes.tray(0.0, turns=4, spacing=25.0), UP))
    with pytest.raises(GeometryError, match="the parting: found one piece"):
        build_pieces(whole, UP)
    with pytest.raises(LimitError, match="flange width"):
        PieceSettings(flange=5.0)
    with pytest.raises(LimitError, match="bolt spacing"):
        PieceSettings(bolt_spacing=0.0)


def test_stored_and_stamped():
    mould = pieces_of("ball")
    assert mould.digest == build_pieces.digest(parting_of("ball"), UP)
    stored = values.pack(mould)
    assert values.pack(values.unpack(MouldPieces, stored)) == stored
