"""Cut cells keep the volume; glue gaps take exactly their slabs."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.mould.solid import from_manifold, to_manifold
from laywright.mould.tiles.cells import cell_block, cells_of, places
from tile_demo import plan_of


def cut(surface, plan, gap=0.0):
    cutters = {place: cell_block(plan, place, gap, 6) for place in places(plan)}
    return cells_of(to_manifold(surface, "part"), plan, cutters)


@settings(max_examples=15, deadline=None)
@given(*[st.lists(st.floats(-45.0, 45.0), max_size=3, unique=True).map(sorted)] * 3)
def test_volume_is_kept_and_every_piece_is_closed(xs, ys, zs):
    torus = shapes.torus(40.0, 12.0, 36, 18)
    plan = plan_of(torus, (tuple(xs), tuple(ys), tuple(zs)))
    cells = cut(torus, plan)
    total = sum(piece.volume() for _, piece in cells)
    assert total == pytest.approx(torus.volume, rel=1e-9)
    for place, piece in cells:
        low, high = plan.cell(place)
        box = np.array(piece.bounding_box()).reshape(2, 3)
        assert (box[0] >= low - 1e-9).all()
        assert (box[1] <= high + 1e-9).all()
        assert from_manifold(piece, ("torus",) * 7).is_closed


def test_gaps_of_a_box():
    box = shapes.box(100.0, 60.0, 40.0)
    plan = plan_of(box, ((30.0, 60.0), (20.0,), ()))
    cells = dict(cut(box, plan, 0.2))
    assert len(cells) == 6
    assert cells[1, 0, 0].volume() == pytest.approx((30 - 0.2) * (20 - 0.1) * 40, rel=1e-12)
    assert cells[0, 1, 0].volume() == pytest.approx((30 - 0.1) * (40 - 0.1) * 40, rel=1e-12)
    kept = sum(piece.volume() for piece in cells.values())
    assert kept == pytest.approx((100 - 0.4) * (60 - 0.2) * 40, rel=1e-12)


def test_empty_cells_are_left_out():
    torus = shapes.torus(40.0, 5.0, 36, 18)
    plan = plan_of(torus, ((-15.0, 15.0), (-15.0, 15.0), ()))
    found = {place for place, _ in cut(torus, plan)}
    assert found == set(places(plan)) - {(1, 1, 0)}
