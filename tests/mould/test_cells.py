"""Cut cells keep the volume; glue gaps take exactly their slabs."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from manifold3d import Manifold, OpType

import shapes
from laywright.mould.cells import cells_of, glue_gaps
from laywright.mould.cuts import CutPlan
from laywright.mould.solid import from_manifold, to_manifold


def plan_of(surface, cuts):
    low, high = surface.bounds.tolist()
    return CutPlan(np.eye(3), 0.0, tuple(low), tuple(high), cuts, np.eye(3), 0.0)


@settings(max_examples=15, deadline=None)
@given(*[st.lists(st.floats(-45.0, 45.0), max_size=3, unique=True).map(sorted)] * 3)
def test_volume_is_kept_and_every_piece_is_closed(xs, ys, zs):
    torus = shapes.torus(40.0, 12.0, 36, 18)
    plan = plan_of(torus, (tuple(xs), tuple(ys), tuple(zs)))
    cells = cells_of(to_manifold(torus, "torus"), plan, 1)
    total = sum(piece.volume() for _, piece in cells)
    assert total == pytest.approx(torus.volume, rel=1e-9)
    for place, piece in cells:
        low, high = plan.cell(place)
        box = np.array(piece.bounding_box()).reshape(2, 3)
        assert (box[0] >= low - 1e-9).all()
        assert (box[1] <= high + 1e-9).all()
        assert from_manifold(piece, ("torus", "seam")).is_closed


def test_gaps_of_a_box():
    box = shapes.box(100.0, 60.0, 40.0)
    plan = plan_of(box, ((30.0, 60.0), (20.0,), ()))
    cells = dict(cells_of(to_manifold(box, "box"), plan, 6))
    middle = cells[1, 0, 0]
    cut = middle - Manifold.batch_boolean(glue_gaps(plan, (1, 0, 0), 0.2, 6), OpType.Add)
    assert cut.volume() == pytest.approx((30.0 - 0.2) * (20.0 - 0.1) * 40.0, rel=1e-12)
    corner = cells[0, 1, 0]
    cut = corner - Manifold.batch_boolean(glue_gaps(plan, (0, 1, 0), 0.2, 6), OpType.Add)
    assert cut.volume() == pytest.approx((30.0 - 0.1) * (40.0 - 0.1) * 40.0, rel=1e-12)
    assert glue_gaps(plan, (0, 0, 0), 0.0, 6) == []
