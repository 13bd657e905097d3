"""A job whose part one direction does not release: its mould is built and printed in pieces."""

from __future__ import annotations

import dataclasses
import io

import pytest
import trimesh

import shapes
from job_demo import hatch
from laywright.cloth.patterns.pattern import PatternSettings
from laywright.errors import GeometryError
from laywright.job import files_of, run
from laywright.mould.release.release import ReleaseSettings


def job():
    return dataclasses.replace(
        hatch(patterns=PatternSettings(triangles=600)),
        name="Tray",
        surface=shapes.tray(turns=4, spacing=20.0),
        pull=(0.0, 0.0, 1.0),
    )


@pytest.fixture(scope="module")
def result():
    return run(job())


def test_the_mould_is_parted_as_far_as_the_release_check_is_told():
    with pytest.raises(GeometryError, match="hold the part back"):
        run(dataclasses.replace(job(), release=ReleaseSettings(most_pieces=1)))


def test_the_pieces_go_on_to_the_tiles(result):
    assert len(result.body.pieces) == 2
    assert {tile.piece for tile in result.tiles.tiles} == {0, 1}
    assert all(tile.solid.is_closed for tile in result.tiles.tiles)
    assert abs(result.tiles.volume_error) < 1e-6


def test_the_files_hold_every_piece_and_its_tiles(result):
    files = files_of(result)
    for piece in result.body.pieces:
        read = trimesh.load(io.BytesIO(files[f"mould/{piece.name} (mm).stl"]), file_type="stl")
        assert read.is_watertight
        assert read.volume == pytest.approx(piece.volume, rel=1e-5)
    names = {tile.name for tile in result.tiles.tiles}
    assert {f"mould/tile {name} (mm).stl" for name in names} <= set(files)
    sheet = files["job sheet.html"].decode()
    assert "The part leaves piece 1 along" in sheet
    assert "Put piece 1 and piece 2 together and bolt them." in sheet
