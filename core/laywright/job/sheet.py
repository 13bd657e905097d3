"""The job sheet of a whole job: gathers what every stage found and has it set out on pages."""

from __future__ import annotations

from laywright.arrays import Vector
from laywright.cloth.patterns.landing import landing_drawing
from laywright.cloth.patterns.pattern import PatternSet
from laywright.cloth.patterns.pattern_drawing import pattern_drawing
from laywright.cloth.roll.roll import RollPlan
from laywright.files.projection import picture
from laywright.job.bench import bench_facts, core_line
from laywright.job.cut_list import landing_lines, roll_lines
from laywright.job.laminate_page import laminate_details
from laywright.job.links import ply_cloths
from laywright.job.pictures import exploded_picture, ply_picture
from laywright.job.tile_files import tile_words
from laywright.job.zones import zones_of
from laywright.laminate.extents import extent_text
from laywright.laminate.laminate import Laminate
from laywright.laminate.loading import Loading
from laywright.mould.body.body import MouldBody
from laywright.mould.release.release import ReleaseReport
from laywright.mould.tiles.tiles import TileSet
from laywright.shop.bench.bench import BenchSettings, plan_bench
from laywright.shop.bench.summaries import (
    LaminateSummary,
    PartSummary,
    PatternLine,
    PlyLine,
    ReleaseSummary,
    Size,
    TileLine,
    TileSummary,
    ZoneLine,
)
from laywright.shop.plan import ShopPlan
from laywright.shop.sheet.traveller import JobSheet, make_sheet, version_code
from laywright.stage import stage
from laywright.surface.face import MouldedFace
from laywright.surface.triangles import Surface

__all__ = ["make_job_sheet"]


@stage("Job Sheet", version=9)
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
    settings: BenchSettings,
    loading: Loading | None = None,
) -> JobSheet:
    """Plan the bench and return the job sheet; every page carries the version of these inputs.

    Parameters
    ----------
    name : str
        Name of the job.
    face, release, laminate, body, tiles, patterns, roll, shop
        Results of the stages.
    settings : BenchSettings
        How the bench works: finish, release, bag, clock, prices.
    loading : Loading or None
        What the laminate is asked to carry.

    Returns
    -------
    JobSheet
    """
    version = version_code(
        make_job_sheet.digest(
            name, face, release, laminate, body, tiles, patterns, roll, shop, settings, loading
        )
    )
    facts = bench_facts(face, laminate, body, tiles, patterns, roll)
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
        _laminate(laminate, patterns, loading, face.pull),
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
        roll_lines(roll, patterns.patterns),
        shop,
        plan_bench(facts, shop, settings),
        version,
    )


def _size(surface: Surface) -> Size:
    low, high = surface.bounds
    x, y, z = (float(side) for side in high - low)
    return x, y, z


def _laminate(
    laminate: Laminate, patterns: PatternSet, loading: Loading | None, pull: Vector
) -> LaminateSummary:
    layup = laminate.layup
    seen = {pattern.ply: ply_picture(pattern) for pattern in reversed(patterns.patterns)}
    return LaminateSummary(
        layup.process.value,
        layup.resin.name,
        tuple(
            PlyLine(
                number,
                layup.ply_name(number),
                ply.cloth.name,
                ply.angle,
                float(thickness),
                seen.get(number),
                extent_text(ply.extent),
            )
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
        core_line(laminate),
        laminate_details(laminate, patterns, loading),
        landing_drawing(patterns, pull),
        landing_lines(patterns, pull),
        tuple(
            ZoneLine(zone.plies, zone.area, zone.thickness, zone.areal_mass)
            for zone in zones_of(laminate, patterns)
        ),
    )


def _tiles(tiles: TileSet, body: MouldBody) -> TileSummary:
    return TileSummary(
        tiles.printer,
        tuple(
            TileLine(
                tile.name,
                tile.row + 1,
                tile.column + 1,
                tile.size,
                tile.mass,
                tile.layer + 1,
                tile.hours,
                tile.standing.bed_face.value,
            )
            for tile in tiles.tiles
        ),
        tiles.glue_gap,
        exploded_picture(tiles, body.pull),
        (*tiles.remarks, *tile_words(tiles)),
        _size(body.solid),
        tiles.steps,
    )
