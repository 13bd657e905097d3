"""Every edge is found once, with the triangle on either side."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

import shapes
from laywright.errors import GeometryError
from laywright.surface.edge_table import edge_table
from laywright.surface.triangles import Surface


def test_edges_know_both_sides():
    box = shapes.box(1, 1, 1)
    table = box.edges
    assert len(table.ends) == 18
    for (a, b), left, right in zip(table.ends, table.left, table.right, strict=True):
        for facet, start, end in ((left, a, b), (right, b, a)):
            corners = box.triangles[facet].tolist()
            assert corners[(corners.index(start) + 1) % 3] == end


@given(st.integers(0, 10**6), st.integers(0, 20))
def test_in_order_and_as_a_plain_walk_finds_them(seed, taken):
    rng = np.random.default_rng(seed)
    torus = shapes.torus(40.0, 12.0, 7, 5)
    names = rng.permutation(len(torus.vertices))
    triangles = names[torus.triangles][rng.permutation(len(torus.triangles))[taken:]]
    walked = {}
    for facet, corners in enumerate(triangles.tolist()):
        for a, b in zip(corners, corners[1:] + corners[:1], strict=True):
            walked.setdefault((min(a, b), max(a, b)), [-1, -1])[int(a > b)] = facet
    table = edge_table(torus.vertices, triangles, "the torus")
    assert [tuple(ends) for ends in table.ends.tolist()] == sorted(walked)
    assert [
        list(sides) for sides in zip(table.left.tolist(), table.right.tolist(), strict=True)
    ] == [walked[key] for key in sorted(walked)]


def test_without_triangles_there_are_none():
    assert len(Surface.single(np.empty((0, 3)), np.empty((0, 3), int)).edges.ends) == 0


def test_a_fin_is_refused_with_its_place():
    fin = np.array([[0, 0, 0], [9, 0, 0], [0, 9, 0], [0, 0, 9], [0, -9, 0]], float)
    with pytest.raises(GeometryError, match=r"1 edges .* one at \(0.00, 0.00, 0.00\) mm"):
        _ = Surface.single(fin, np.array([[0, 1, 2], [0, 1, 3], [1, 0, 4]])).edges
