"""Files of the tiles as other libraries read them, the table, and the words for the sheet."""

from __future__ import annotations

import csv
import io

import numpy as np
import pytest
import trimesh

from job_demo import hatch
from laywright.files.page import Table
from laywright.job import run
from laywright.job.tile_files import tile_files, tile_tables, tile_words


@pytest.fixture(scope="module")
def result():
    return run(hatch())


def rows_of(content):
    return list(csv.DictReader(io.StringIO(content.decode("utf-8-sig"))))


def test_every_tile_is_an_stl_in_mm_of_its_printed_size(result):
    files = tile_files(result.tiles, "Hatch", "abc")
    for tile in result.tiles.tiles:
        mesh = trimesh.load_mesh(
            io.BytesIO(files[f"mould/tile {tile.name} (mm).stl"]), file_type="stl"
        )
        assert mesh.is_watertight, tile.name
        np.testing.assert_allclose(mesh.extents, tile.size, atol=1e-3)
        assert mesh.volume == pytest.approx(tile.printed().volume, rel=1e-5)


def test_the_package_holds_every_tile_by_its_name(result):
    files = tile_files(result.tiles, "Hatch", "abc")
    scene = trimesh.load_scene(io.BytesIO(files["mould/Hatch tiles.3mf"]), file_type="3mf")
    assert set(scene.geometry) == {tile.name for tile in result.tiles.tiles}
    assert scene.units == "millimeter"
    coupon = trimesh.load_scene(io.BytesIO(files["mould/Hatch joint coupon.3mf"]), file_type="3mf")
    assert set(coupon.geometry) == {piece.name for piece in result.tiles.coupon}


def test_the_table_says_name_size_mass_time_and_pose(result):
    rows = rows_of(tile_tables(result.tiles, 0.0123)["tables/tiles.csv"])
    assert [row["tile"] for row in rows] == [tile.name for tile in result.tiles.tiles]
    for row, tile in zip(rows, result.tiles.tiles, strict=True):
        size = [float(row[f"{axis} (mm)"]) for axis in "xyz"]
        assert size == pytest.approx(tile.size, abs=0.005)
        assert float(row["mass (g)"]) == pytest.approx(tile.mass, abs=0.05)
        assert float(row["time (h)"]) == pytest.approx(tile.hours, abs=0.005)
        assert row["on the bed"] == tile.standing.bed_face.value
        assert float(row["largest mesh deviation (mm)"]) == 0.0123


def test_the_sheet_has_the_same_table_and_the_glue_by_area(result):
    station = next(s for s in result.sheet.sheet.stations if s.title == "Print")
    (table,) = (block for block in station.blocks if isinstance(block, Table))
    for row, tile in zip(table.rows, result.tiles.tiles, strict=True):
        assert row[0] == tile.name
        assert row[2] == " x ".join(f"{side:.1f}" for side in tile.size)
        assert row[3] == f"{tile.mass:.0f}"
        assert row[4] == f"{tile.hours:.1f}"
        assert row[5] == tile.standing.bed_face.value
    words = tile_words(result.tiles)
    (glue,) = (line for line in words if line.startswith("Glue in the seams"))
    assert f"{result.tiles.glue_g:.1f} g on {result.tiles.glue_area / 100.0:.0f} cm2" in glue
