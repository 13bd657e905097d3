"""What the printer and the gluing bench take away: solids, coupon, table and order of assembly."""

from __future__ import annotations

from laywright.file_names import safe_name
from laywright.files.csv import Cell, csv_bytes
from laywright.files.solid import Solid
from laywright.files.stl import stl_bytes
from laywright.files.threemf import three_mf_bytes
from laywright.mould.tiles.tile import Tile, TileSet

__all__ = ["tile_files", "tile_tables", "tile_words"]


def tile_files(tiles: TileSet, name: str, version: str) -> dict[str, bytes]:
    """Return tiles and joint coupon as files, 3MF and STL in mm, by their paths.

    Parameters
    ----------
    tiles : TileSet
        The tiles.
    name, version : str
        Of the job.
    """
    title = f"{name}, {version}"
    stem = safe_name(name)
    solids = [
        Solid(tile.name, tile.solid.vertices, tile.solid.triangles, tile.pose)
        for tile in tiles.tiles
    ]
    coupon = [
        Solid(piece.name, piece.solid.vertices, piece.solid.triangles) for piece in tiles.coupon
    ]
    files = {f"mould/{stem} tiles.3mf": three_mf_bytes(solids, title)}
    if coupon:
        files[f"mould/{stem} joint coupon.3mf"] = three_mf_bytes(coupon, f"{title}, joint coupon")
    for prefix, group in (("tile ", solids), ("", coupon)):
        for solid in group:
            path = f"mould/{prefix}{safe_name(solid.name)} (mm).stl"
            files[path] = stl_bytes(solid.placed, solid.triangles)
    return files


def tile_tables(tiles: TileSet, deviation: float) -> dict[str, bytes]:
    """Return the tables of a set of tiles as comma-separated text, by their paths.

    Parameters
    ----------
    tiles : TileSet
        The tiles.
    deviation : float, mm
        Largest distance between the CAD face and the triangles of the tiles' working area.
    """
    files = {"tables/tiles.csv": _table(tiles, deviation)}
    if tiles.steps:
        steps = enumerate(tiles.steps, 1)
        files["tables/assembly.csv"] = csv_bytes(("step", "what to do"), list(steps))
    if tiles.coupon:
        holes = [
            (number, clearance)
            for piece in tiles.coupon
            for number, clearance in enumerate(piece.clearances, 1)
        ]
        head = ("hole", "clearance per side (mm)")
        files["tables/joint coupon.csv"] = csv_bytes(head, holes)
    return files


def tile_words(tiles: TileSet) -> tuple[str, ...]:
    """Return supports, order of assembly and glue as sentences for the sheet.

    Parameters
    ----------
    tiles : TileSet
        The tiles.
    """
    hanging = [tile for tile in tiles.tiles if tile.standing.unsupported_share > 0.005]
    words = [
        f"{tile.name} needs support under {100.0 * tile.standing.unsupported_share:.0f} % of its "
        "working face."
        for tile in hanging
    ]
    if tiles.coupon:
        words.append(
            "Print the joint coupon first: take the clearance of the tightest hole that slides "
            "without force."
        )
    if tiles.glue_gap > 0.0 and len(tiles.tiles) > 1:
        words.append(
            f"Glue in the seams: {tiles.glue_g:.1f} g on {tiles.glue_area / 100.0:.0f} cm2 at "
            f"{tiles.glue_gap:.2f} mm; what is squeezed out comes on top."
        )
    return tuple(words)


def _table(tiles: TileSet, deviation: float) -> bytes:
    return csv_bytes(
        (
            "tile",
            "order of assembly",
            "row",
            "column",
            "layer",
            "x (mm)",
            "y (mm)",
            "z (mm)",
            "volume (cm3)",
            "mass (g)",
            "time (h)",
            "on the bed",
            "layer lines along the pull",
            "overhang past 45 deg (cm2)",
            "working face unsupported (%)",
            "largest mesh deviation (mm)",
        ),
        [_row(tile, deviation) for tile in tiles.tiles],
    )


def _row(tile: Tile, deviation: float) -> tuple[Cell, ...]:
    standing = tile.standing
    return (
        tile.name,
        tile.order,
        tile.row + 1,
        tile.column + 1,
        tile.layer + 1,
        *(round(float(side), 2) for side in tile.size),
        round(tile.volume / 1000.0, 2),
        round(tile.mass, 1),
        round(tile.hours, 2),
        standing.bed_face.value,
        "yes" if standing.is_along_pull else "no",
        round(standing.overhang / 100.0, 2),
        round(100.0 * standing.unsupported_share, 2),
        round(deviation, 4),
    )
