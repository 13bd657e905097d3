"""A part that one direction does not release gets a mould in pieces, or a clear refusal."""

from __future__ import annotations

import dataclasses
from functools import cache

import numpy as np
import pytest

import shapes
from laywright import values
from laywright.errors import GeometryError, LimitError
from laywright.mould.body.body import MouldBody, MouldBuild, MouldSettings, build_body
from laywright.mould.body.compensation import Allowances
from laywright.mould.body.in_pieces import held_by_patch
from laywright.mould.body.piece_settings import PieceSettings
from laywright.mould.body.settings import Edge, Feet, Inside, MarkedDatum
from laywright.mould.release.release import check_release
from laywright.surface.distance import distances
from laywright.surface.face import LaminateSide, MouldedFace, MouldSide, take_face

UP = (0.0, 0.0, 1.0)
COAT = 0.2


@cache
def tray():
    return take_face(shapes.tray(turns=6, spacing=14.0), UP)


@cache
def mould(build=MouldBuild.SHELL):
    settings = MouldSettings(
        inside=Inside(build=build),
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


def test_trim_line_and_edge_of_the_cloth_are_scribed():
    body = mould()
    solid = body.solid
    top = body.working.bounds[1, 2]
    for name in ("scribe line", "cloth line"):
        line = solid.part(solid.patches == body.patch(name))
        assert line.bounds[0, 2] == pytest.approx(top - 0.4, abs=0.01)
    off = distances(line.vertices[line.vertices[:, 2] < top - 0.3], body.working)
    np.testing.assert_allclose(off, 12.0 + 0.05 + 0.4, atol=0.2)
    assert "built in 2 pieces" in body.remarks[0]


def test_the_pieces_are_hollow_with_their_wall_kept():
    body, full = mould(), mould(MouldBuild.SOLID)
    assert body.solid.is_closed
    assert body.least_wall >= 4.0
    for piece, whole in zip(body.pieces, full.pieces, strict=True):
        assert piece.solid.is_closed
        assert piece.volume < 0.6 * whole.volume
        hollow = piece.solid.part(piece.solid.patches == piece.solid.patch_names.index("hollow"))
        outer = np.isin(
            piece.solid.patches,
            [piece.solid.patch_names.index(name) for name in ("hollow", "base")],
            invert=True,
        )
        inner = hollow.centroids[hollow.centroids[:, 2] > piece.solid.bounds[0, 2] + 0.01]
        assert distances(inner, piece.solid.part(outer)).min() >= 4.0 - 1e-6
        areas = (
            np.bincount(one.solid.patches, one.solid.areas, len(one.solid.patch_names))
            for one in (piece, whole)
        )
        made, wanted = (dict(zip(piece.solid.patch_names, area, strict=True)) for area in areas)
        for name in ("Wall", "Lip", "flange", "bolt hole", "head bore", "registration"):
            assert made[name] == pytest.approx(wanted[name], rel=1e-6)
    assert body.largest_deviation < 1e-6
    assert any("Under a vacuum" in remark for remark in body.remarks)


def test_what_is_not_made_in_pieces_is_told_with_its_reason():
    settings = MouldSettings(
        edge=Edge(flange=20.0, pry_pockets=4, air_port=6.0, bolt_holes=5.0, inscription="T1"),
        feet=Feet(4),
        datum=MarkedDatum((0.0, 0.0, 0.0), (1.0, 0.0, 0.0)),
    )
    told = build_body(tray(), 0.8, settings).remarks[-7:]
    assert [sentence.split(":")[0].split(" beside")[0] for sentence in told] == [
        "No flange of its own",
        "No pry pockets",
        "No air port",
        "No bolt holes",
        "No inscription",
        "No marks of the datum",
        "No feet",
    ]


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


def test_a_plug_that_the_part_closes_round_is_refused_and_a_cavity_named_that_is_built():
    face = take_face(shapes.cap(50.0, 2.0, 12), UP, mould_side=MouldSide.INSIDE)
    with pytest.raises(GeometryError, match="hold the part back") as caught:
        build_body(face, 0.0)
    assert caught.value.remedy.startswith(
        "set the Moulded Face's mould side to 'outside (cavity)' and turn its pull round: the part "
        "closes round a plug, but a mould in 2 pieces outside of it releases it"
    )
    cavity = dataclasses.replace(face, pull=(0.0, 0.0, -1.0), mould_side=MouldSide.OUTSIDE)
    assert len(build_body(cavity, 0.0).pieces) == 2


def test_stored():
    stored = values.pack(mould())
    assert values.pack(values.unpack(MouldBody, stored)) == stored
