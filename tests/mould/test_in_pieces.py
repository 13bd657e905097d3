"""A part that one direction does not release gets a mould in pieces, or a clear refusal."""

from __future__ import annotations

from functools import cache

import numpy as np
import pytest

import shapes
from laywright import values
from laywright.errors import GeometryError, LimitError
from laywright.mould.body import MouldBody, MouldBuild, MouldSettings, build_body
from laywright.mould.compensation import Allowances
from laywright.mould.in_pieces import held_by_patch
from laywright.mould.piece_settings import PieceSettings
from laywright.mould.release import check_release
from laywright.mould.settings import Edge, Inside
from laywright.surface.face import LaminateSide, MouldedFace, MouldSide, take_face

UP = (0.0, 0.0, 1.0)
COAT = 0.2


@cache
def tray():
    return take_face(shapes.tray(turns=6, spacing=14.0), UP)


@cache
def mould():
    settings = MouldSettings(
        inside=Inside(build=MouldBuild.SHELL),
        edge=Edge(cloth_margin=12.0),
        allowances=Allowances(coats=COAT),
    )
    return build_body(tray(), 0.8, settings)


def test_what_is_held_back_is_what_the_release_check_finds():
    face = tray()
    held = held_by_patch(face.working_surface(0.0), face.pull)
    assert held.sum() == pytest.approx(check_release(face).undercut_area, rel=1e-9)
    free = take_face(shapes.tray(0.0, turns=4, spacing=25.0), UP)
    assert held_by_patch(free.working_surface(0.0), free.pull) is None


def test_the_tray_gets_two_closed_pieces_that_release():
    body = mould()
    assert len(body.pieces) == 2
    assert body.solid.is_closed
    assert body.volume == pytest.approx(sum(piece.volume for piece in body.pieces), rel=1e-12)
    assert all(piece.undercut_area == 0.0 for piece in body.pieces)
    assert body.largest_deviation < 1e-6
    first, second = (np.array(piece.pull) for piece in body.pieces)
    assert first @ second < -0.9
    assert {line.pieces for line in body.lines} == {(0, 1)}


def test_every_piece_carries_its_share_of_the_working_area():
    body = mould()
    parts = body.parts()
    assert [part.number for part in parts] == [1, 2]
    assert all(part.solid.is_closed and not part.pieces for part in parts)
    assert sum(part.working.area for part in parts) == pytest.approx(body.working.area, rel=1e-6)
    assert sum(part.volume for part in parts) == pytest.approx(body.volume, rel=1e-12)
    whole = build_body(take_face(shapes.tray(0.0, turns=4, spacing=25.0), UP), 0.8)
    assert whole.parts() == (whole,)


def test_coats_stand_off_the_face_and_are_listed():
    body = mould()
    assert body.largest_from_cad == pytest.approx(COAT, rel=0.04)
    assert "release film and coats" in [item.name for item in body.compensations]


def test_the_trim_line_is_scribed_and_what_is_not_made_is_told():
    body = mould()
    solid = body.solid
    line = solid.part(solid.patches == body.patch("scribe line"))
    top = body.working.bounds[1, 2]
    assert line.bounds[0, 2] == pytest.approx(top - 0.4, abs=0.01)
    told = " ".join(body.remarks)
    assert "built in 2 pieces" in told
    assert "Not made on a mould in pieces: the hollow, the line at the edge of the cloth." in told


def test_a_part_that_another_pull_releases_is_not_parted():
    face = MouldedFace(shapes.hatch(), (0.0, 0.0, -1.0), LaminateSide.INSIDE, MouldSide.INSIDE, 0.0)
    with pytest.raises(GeometryError, match="hold the part back along the pull; it leaves along"):
        build_body(face, 0.0)


def test_one_piece_only_is_refused_with_the_face():
    with pytest.raises(GeometryError, match="hold the part back") as caught:
        build_body(tray(), 0.8, MouldSettings(pieces=PieceSettings(most_pieces=1)))
    assert caught.value.where == "Wall"
    with pytest.raises(LimitError, match="most pieces"):
        PieceSettings(most_pieces=5)


def test_a_plug_that_the_part_closes_round_is_refused():
    face = take_face(shapes.cap(50.0, 2.0, 12), UP, mould_side=MouldSide.INSIDE)
    with pytest.raises(GeometryError, match="hold the part back"):
        build_body(face, 0.0)


def test_stored():
    stored = values.pack(mould())
    assert values.pack(values.unpack(MouldBody, stored)) == stored
