"""The job sheet of a whole job: gathers what every stage found and has it set out on pages."""

from __future__ import annotations

from laywright.arrays import Vector
from laywright.cloth.pattern import PatternSet
from laywright.cloth.pattern_drawing import pattern_drawing, roll_drawing
from laywright.cloth.roll import RollPlan
from laywright.files.drawing import Drawing
from laywright.files.projection import picture, picture_of_several, view_from
from laywright.files.solid import Solid
from laywright.job.links import ply_cloths
from laywright.laminate.laminate import Laminate
from laywright.mould.body import MouldBody
from laywright.mould.exploded import exploded
from laywright.mould.release import ReleaseReport
from laywright.mould.tiles import TileSet
from laywright.shop.plan import ShopPlan
from laywright.shop.summaries import (
    LaminateSummary,
    PartSummary,
    PatternLine,
    PlyLine,
    ReleaseSummary,
    RollLine,
    Size,
    TileLine,
    TileSummary,
)
from laywright.shop.traveller import JobSheet, make_sheet, version_code
from laywright.stage import stage
from laywright.surface.face import MouldedFace
from laywright.surface.triangles import Surface

__all__ = ["make_job_sheet"]

_APART = 25.0


@stage("Job Sheet", version=1)
def make_job_sheet(
    name: str,
    face: MouldedFace,
    release: ReleaseReport,
    laminate: Laminate,
    body: MouldBody,
    tiles: TileSet,
    patterns: PatternSet,
    roll: RollPlan,
    shop: ShopPlan,
) -> JobSheet:
    """Return the job sheet; every page carries the version code of these inputs.

    Parameters
    ----------
    name : str
        Name of the job.
    face, release, laminate, body, tiles, patterns, roll, shop
        Results of the stages.

    Returns
    -------
    JobSheet
    """
    version = version_code(
        make_job_sheet.digest(name, face, release, laminate, body, tiles, patterns, roll, shop)
    )
    return make_sheet(
        name,
        PartSummary(
            _size(face.surface),
            face.surface.area,
            face.deviation,
            picture(face.surface.vertices, face.surface.triangles, name="the moulded face"),
        ),
        ReleaseSummary(
            face.pull,
            release.least_draft,
            release.wanted_draft,
            release.undercut_area,
            release.remarks,
        ),
        _laminate(laminate),
        _tiles(tiles, body),
        tuple(
            PatternLine(
                pattern.ply,
                pattern.cloth,
                pattern.angle,
                pattern.area,
                piece.mass_g,
                pattern.largest_shear,
                pattern.locked_share,
                pattern_drawing(pattern),
            )
            for pattern, piece in zip(
                patterns.patterns, ply_cloths(patterns, laminate), strict=True
            )
        ),
        tuple(
            RollLine(
                layout.cloth,
                layout.width,
                layout.length,
                layout.share_used,
                roll_drawing(layout, patterns.patterns),
            )
            for layout in roll.rolls
        ),
        shop,
        version,
    )


def _size(surface: Surface) -> Size:
    low, high = surface.bounds
    x, y, z = (float(side) for side in high - low)
    return x, y, z


def _laminate(laminate: Laminate) -> LaminateSummary:
    layup = laminate.layup
    return LaminateSummary(
        layup.process.value,
        layup.resin.name,
        tuple(
            PlyLine(number, layup.ply_name(number), ply.cloth.name, ply.angle, float(thickness))
            for number, (ply, thickness) in enumerate(
                zip(layup.plies, laminate.ply_thicknesses, strict=True), 1
            )
        ),
        laminate.thickness,
        laminate.areal_mass,
        laminate.fibre_volume_fraction,
        laminate.in_plane.e_x,
        laminate.in_plane.e_y,
        laminate.in_plane.g_xy,
        laminate.bending.e_x,
        laminate.bending.e_y,
        laminate.remarks,
    )


def _tiles(tiles: TileSet, body: MouldBody) -> TileSummary:
    return TileSummary(
        tiles.printer,
        tuple(
            TileLine(tile.name, tile.row + 1, tile.column + 1, tile.size, tile.mass, tile.layer + 1)
            for tile in tiles.tiles
        ),
        tiles.glue_gap,
        _exploded_picture(tiles, body.pull),
        tiles.remarks,
        _size(body.solid),
    )


def _exploded_picture(tiles: TileSet, pull: Vector) -> Drawing:
    return picture_of_several(
        "the tiles",
        [
            Solid(tile.name, solid.vertices, solid.triangles)
            for tile, solid in zip(tiles.tiles, exploded(tiles, _APART), strict=True)
        ],
        view_from(pull),
    )
