"""What the bench must know about part, mould and cloth, gathered from the other rooms."""

from __future__ import annotations

import numpy as np

from laywright.arrays import FloatArray, ring_length
from laywright.cloth.patterns.pattern import PatternSet
from laywright.cloth.roll.roll import RollPlan
from laywright.laminate.laminate import Laminate
from laywright.laminate.materials import FibreKind
from laywright.mould.body.body import MouldBody
from laywright.mould.tiles.printer import load_printers
from laywright.mould.tiles.tiles import TileSet
from laywright.shop.bench.bench import BenchFacts, RollUse
from laywright.shop.bench.summaries import CoreLine
from laywright.shop.bench.trim import EdgeFacts
from laywright.surface.double_curvature import double_curvature
from laywright.surface.face import MouldedFace

__all__ = ["bench_facts", "core_line"]

_GLUE_DENSITY = 1.2  # g/cm^3; common practice, no source
_COATED = ("run-off", "filled hole")  # beside the working surface
_GLUE_LOST = 2.0  # as much again is scraped off


def bench_facts(
    face: MouldedFace,
    laminate: Laminate,
    body: MouldBody,
    tiles: TileSet,
    patterns: PatternSet,
    roll: RollPlan,
) -> BenchFacts:
    """Return what the bench must know."""
    solid, part = body.solid, face.surface
    sums = np.bincount(solid.patches, solid.areas, len(solid.patch_names)).tolist()
    area = dict(zip(solid.patch_names, sums, strict=True))
    beside = sum(area.get(name, 0.0) for name in _COATED)
    printer = load_printers().get(tiles.printer)
    cloths = [ply.cloth for ply in laminate.layup.plies]
    low, high = solid.bounds
    size = sorted(float(side) for side in high - low)
    return BenchFacts(
        part_area=part.area,
        mould_area=body.working.area + beside,
        run_off=area.get("run-off", 0.0) / ring_length(body.trim_line),
        outline=max((pattern.trim for pattern in patterns.patterns), key=_extent),
        curvature=double_curvature(patterns.main.surface),
        mould_size=(size[2], size[1], size[0]),
        pull=body.pull,
        trim_loops=tuple(part.vertices[loop] for loop in part.boundary_loops),
        cloth_edges=tuple(
            EdgeFacts(
                sum(ring_length(line) for line in (pattern.cut, *pattern.openings)),
                2 if cloths[pattern.ply - 1].fibre.kind is FibreKind.ARAMID else 1,
            )
            for pattern in patterns.patterns
        ),
        rolls=tuple(RollUse(layout.cloth, layout.to_buy / roll.parts) for layout in roll.rolls),
        plastic="" if printer is None else printer.material,
        print_g=sum(tile.mass for tile in tiles.tiles),
        glue_g=_GLUE_LOST * _GLUE_DENSITY * tiles.glue_area * tiles.glue_gap / 1000.0,
        process=laminate.layup.process,
        core=core_line(laminate),
        print_hours=sum(tile.hours for tile in tiles.tiles),
    )


def core_line(laminate: Laminate) -> CoreLine | None:
    """Return the core of a laminate for the sheets, if it has one."""
    core = laminate.layup.core
    return None if core is None else CoreLine(core.sheet.name, core.thickness, core.after)


def _extent(outline: FloatArray) -> float:
    return float(np.ptp(outline, axis=0).prod())
