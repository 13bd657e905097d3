"""Chapter 6, split: the account of cut solids."""

from __future__ import annotations

import numpy as np
import pytest

import shapes
from checks.reference import agree, row
from laywright.mould.solid import from_manifold, to_manifold
from laywright.mould.tiles.cells import cell_block, cells_of, places
from laywright.mould.tiles.cuts import CutPlan, fewest_counts
from laywright.mould.tiles.tile import TileSettings

NAMES = ("part", "seam")


def cut(surface, *cuts):
    """The pieces of a solid along a grid of cuts, as surfaces by place."""
    low, high = surface.bounds.tolist()
    plan = CutPlan(np.eye(3), 0.0, tuple(low), tuple(high), cuts, np.eye(3), 0.0)
    single = type(surface).single(surface.vertices, surface.triangles, "part")
    cutters = {place: cell_block(plan, place, 0.0, 1) for place in places(plan)}
    cells = cells_of(to_manifold(single, "part"), plan, cutters)
    return {place: from_manifold(piece, NAMES) for place, piece in cells}


def test_sphere_cut_by_a_plane():
    surface = shapes.sphere(50.0, 90)
    pieces = cut(surface, (), (), (20.0,))
    lower, upper = pieces[0, 0, 0], pieces[0, 0, 1]
    assert lower.is_closed
    assert upper.is_closed
    total = lower.volume + upper.volume
    agree(
        "SPL-01",
        {
            "V_upper": upper.volume,
            "V_sum": total,
            "A_sum": lower.area + upper.area,
            "euler_upper": upper.euler_characteristic,
            "euler_lower": lower.euler_characteristic,
            "V_conservation_rel": abs(total - surface.volume) / surface.volume,
        },
    )
    assert total == pytest.approx(surface.volume, rel=1e-12)
    seam = [piece.areas[piece.patches == 1].sum() for piece in (lower, upper)]
    assert seam[0] == pytest.approx(seam[1], rel=1e-12)


def test_torus_cut_through_and_across_its_axis():
    surface = shapes.torus(40.0, 12.0, 240, 120)
    rings = cut(surface, (0.0,), (), ())
    halves = list(rings.values())
    bagels = list(cut(surface, (), (), (0.0,)).values())
    eulers = {piece.euler_characteristic for piece in halves}
    flat = {piece.euler_characteristic for piece in bagels}
    assert len(eulers) == len(flat) == 1
    assert all(piece.is_closed for piece in (*halves, *bagels))
    agree(
        "SPL-03",
        {
            "pieces_axis_cut": len(halves),
            "euler_each_half_ring": eulers.pop(),
            "euler_each_bagel_half": flat.pop(),
            "V_total": sum(piece.volume for piece in halves),
        },
    )


def test_number_of_tiles():
    part = (520.0, 310.0, 140.0)

    def tiles(bed):
        return int(np.prod(fewest_counts(part, (bed, bed, bed))[0]))

    agree(
        "SPL-04",
        {
            "tiles": tiles(256.0),
            "tiles_with_10mm_loss": tiles(246.0),
            "tiles_220_bed": tiles(220.0),
        },
    )
    assert fewest_counts((512.0, 10.0, 10.0), (256.0, 256.0, 256.0))[0] == (2, 1, 1)
    assert fewest_counts((512.01, 10.0, 10.0), (256.0, 256.0, 256.0))[0] == (3, 1, 1)


def test_box_cut_by_three_planes():
    box = shapes.box(120.0, 80.0, 50.0)
    centred = box.moved(box.vertices - np.array([60.0, 40.0, 25.0]))
    pieces = cut(centred, (10.0,), (-5.0,), (0.0,))
    assert all(piece.is_closed and len(piece.triangles) == 12 for piece in pieces.values())
    agree(
        "SPL-06",
        {
            "pieces": len(pieces),
            "V": sum(piece.volume for piece in pieces.values()),
            "A": sum(piece.area for piece in pieces.values()),
        },
    )


def test_the_default_clearance_is_a_sliding_fit():
    text = row("SPL-10")["expected"][0]["value"]
    assert text.startswith("0.2-0.4 mm sliding")
    assert 0.2 <= 2.0 * TileSettings().clearance <= 0.4
    agree("SPL-10", {"diametral_clearance": text})
