"""The flat region of a piece: closed forms, and cloth that would overlap itself."""

import numpy as np
import pytest

import shapes
from laywright.cloth.cuts.cutting import cut_surface
from laywright.cloth.cuts.piece_region import piece_region, region_within
from laywright.cloth.cuts.pieces import drape_pieces
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.even_mesh import even_mesh
from laywright.cloth.drape.fabric import fabric_for
from laywright.cloth.drape.flatten import flatten
from laywright.errors import GeometryError
from laywright.laminate.materials import Weave

MAT = fabric_for(Weave.MAT)


def test_the_largest_line_is_the_edge_and_the_others_are_holes():
    square = np.array([[0.0, 0.0], [40.0, 0.0], [40.0, 30.0], [0.0, 30.0]])
    hole = (square * 0.25 + 5.0)[::-1]
    assert region_within([hole, square], "a piece").area == pytest.approx(40 * 30 - 10 * 7.5)


def test_a_dart_that_just_touches_is_closed():
    dart = [[20.0, 0.0], [20.0, 15.0], [20.0, 0.0]]
    line = np.array([[0.0, 0.0], *dart, [40.0, 0.0], [40.0, 30.0], [0.0, 30.0]])
    assert region_within([line], "a piece").area == pytest.approx(40 * 30)


def test_cloth_that_would_lap_over_itself_is_refused():
    """Around a point of a saddle there is more surface than cloth, so a dart cannot close."""
    saddle = even_mesh(shapes.graph(lambda x, y: (x * x - y * y) / 50, (-50, 50), (-50, 50)), 6.0)
    flat = flatten(saddle)
    middle = flat[int(np.argmin(np.linalg.norm(saddle.vertices, axis=1)))]
    edge = flat[int(np.argmin(np.linalg.norm(saddle.vertices[:, :2] - [50, 0], axis=1)))]
    cut = cut_surface(saddle, flat, [np.stack([edge, middle])])
    laid = drape_pieces(cut, MAT, Datum((-25.0, 0.0, 12.5), (1, 0, 0)), 0.0)
    with pytest.raises(GeometryError, match="laps over itself"):
        piece_region(cut.surface, laid.drape.uv, "ply 1")
