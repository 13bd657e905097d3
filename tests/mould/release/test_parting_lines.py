"""Lines between pieces: length, ends, and what they run along."""

from __future__ import annotations

import numpy as np
import pytest

import shapes
from laywright.mould.release.parting_lines import chains, parting_lines, sharp_edges


def test_the_equator_of_a_sphere_is_one_closed_line():
    surface = shapes.sphere(50.0, 20)
    piece = (surface.centroids[:, 2] > 0.0).astype(np.int64)
    (line,) = parting_lines(surface, piece, np.zeros(len(surface.edges.ends), bool))
    assert line.closed
    assert line.pieces == (0, 1)
    assert line.length == pytest.approx(40 * 2 * 50.0 * np.sin(np.pi / 40), rel=1e-12)
    assert (line.along_sharp, line.along_silhouette) == (0.0, 0.0)


def test_three_pieces_of_a_box_meet_in_points():
    surface = shapes.box(10.0, 20.0, 30.0)
    piece = np.repeat([0, 0, 1, 1, 2, 2], 2)
    assert sharp_edges(surface).sum() == 12
    found = parting_lines(surface, piece, np.zeros(len(surface.edges.ends), bool))
    assert {line.pieces for line in found} == {(0, 1), (0, 2), (1, 2)}
    assert all(line.along_sharp == 1.0 and not line.closed for line in found)
    assert sum(line.length for line in found) == pytest.approx(4 * (30 + 20 + 10))


def test_chains_end_where_edges_branch():
    found = chains(np.array([[0, 1], [1, 2], [2, 3], [2, 4], [5, 6], [6, 7], [7, 5]]))
    assert sorted((len(path), closed) for path, closed, _ in found) == [
        (2, False),
        (2, False),
        (3, False),
        (3, True),
    ]
    assert sorted(edge for _, _, used in found for edge in used) == list(range(7))
