"""Dividing an outline changes nothing but the number of its points."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.mould.body.divide import divided_outline


@settings(max_examples=20, deadline=None)
@given(st.floats(0.7, 40.0))
def test_same_surface_with_short_edges(spacing):
    surface = shapes.hatch(spacing=30.0)
    fine = divided_outline(surface, spacing)
    assert fine.area == pytest.approx(surface.area, rel=1e-12)
    assert fine.euler_characteristic == 1
    (loop,) = fine.boundary_loops
    points = fine.vertices[loop]
    steps = np.linalg.norm(np.roll(points, -1, axis=0) - points, axis=1)
    assert steps.max() <= spacing * (1 + 1e-9)
    assert steps.sum() == pytest.approx(surface.loop_length(surface.boundary_loops[0]), rel=1e-12)
    for patch in range(3):
        one, other = (s.areas[s.patches == patch].sum() for s in (surface, fine))
        assert one == pytest.approx(other, rel=1e-12)


def test_a_single_triangle_and_nothing_to_do():
    box = shapes.box(3, 4, 5)
    lone = box.part(np.arange(12) == 0)
    fine = divided_outline(lone, 1.0)
    assert fine.area == pytest.approx(lone.area, rel=1e-12)
    assert fine.normals == pytest.approx(np.tile(lone.normals, (len(fine.triangles), 1)))
    assert len(divided_outline(lone, 100.0).triangles) == 1
    assert len(divided_outline(box, 0.1).triangles) == 12
