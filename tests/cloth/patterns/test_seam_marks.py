"""Marks across seams: on a plate they form one line when its pieces are laid together."""

import numpy as np
import pytest

import shapes
from laywright.cloth.cuts.cutting import cut_surface
from laywright.cloth.cuts.pieces import drape_pieces
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.even_mesh import even_mesh
from laywright.cloth.drape.fabric import fabric_for
from laywright.cloth.patterns.margins import EdgeMargins
from laywright.cloth.patterns.seam_marks import seam_marks
from laywright.cloth.patterns.seam_outline import seamed_outline
from laywright.cloth.plies.draped_ply import DrapedPly
from laywright.laminate.materials import Weave

LENGTH = 6.0


def marks_of(path, lap):
    """Marks of each piece of a plate 120 x 240 mm, and its outline, in the plate's own places."""
    plate = even_mesh(shapes.graph(lambda x, y: 0 * x, (-60, 60), (-120, 120), (12, 25)), 8.0)
    cut = cut_surface(plate, plate.vertices[:, :2].copy(), [np.array(path)])
    laid = drape_pieces(cut, fabric_for(Weave.MAT), Datum((-30.0, 0.0, 0.0), (1, 0, 0)), 0.0)
    whole = DrapedPly(cut.surface, laid.drape, laid.pieces, cut.seams)
    edge = EdgeMargins.by_side(20.0, {}, np.array([1.0, 0.0]), 0.05)
    found = []
    for number, piece in enumerate(laid.pieces):
        outline = seamed_outline(
            whole.part(number), laid.drape.uv, cut.seams, [lap], edge, whole.hole_vertices, "it"
        )
        marks = seam_marks(outline.runs, cut.seams, [lap], outline.cut, LENGTH)
        back = np.array(piece.datum.origin[:2])
        found.append((outline.cut, [mark + back for mark in marks], back))
    return found


@pytest.mark.parametrize("lap", [0.0, 25.0])
def test_marks_meet_when_the_pieces_are_laid_together(lap):
    (left_cut, left, back), (_, right, _) = marks_of([[0.0, -120.0], [0.0, 120.0]], lap)
    assert len(left) == len(right) == 2
    for one, other, y in zip(left, right, (-60.0, 60.0), strict=True):
        assert one[0] == pytest.approx([lap, y], abs=0.1)
        assert other[0] == pytest.approx([lap, y], abs=0.1)
        assert one[1] == pytest.approx([lap - LENGTH, y], abs=0.1)
        assert other[1] == pytest.approx([lap + LENGTH, y], abs=0.1)
        tip = one[0] - back
        assert np.abs(np.asarray(left_cut.exterior.coords)[:, 0] - tip[0]).min() < 0.1


def test_darts_have_none():
    ((_, marks, _),) = marks_of([[0.0, -120.0], [0.0, 0.0]], 25.0)
    assert marks == []
