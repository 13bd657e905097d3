"""Cuts in a mesh: topology by Euler's formula, points on the surface, triangles kept."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.cloth.cuts.cutting import cut_surface
from laywright.cloth.drape.even_mesh import even_mesh
from laywright.cloth.drape.flatten import flatten
from laywright.cloth.drape.strain import turned_over
from laywright.errors import GeometryError

RADIUS = 100.0
CAP = even_mesh(shapes.cap(RADIUS, 1.2, 24), 8.0)
FLAT = flatten(CAP)
MIDDLE = FLAT[int(np.argmax(CAP.vertices[:, 2]))]
REACH = float(np.linalg.norm(FLAT[CAP.boundary_loops[0]] - MIDDLE, axis=1).mean())


def at(share, turn):
    return MIDDLE + share * REACH * np.array([math.cos(turn), math.sin(turn)])


@given(st.integers(1, 5), st.floats(0.0, 6.2), st.floats(0.3, 0.75))
@settings(max_examples=15)
def test_darts_leave_one_disk_of_the_same_triangles(count, turn, depth):
    turns = turn + 2.0 * math.pi * np.arange(count) / count
    cut = cut_surface(CAP, FLAT, [np.stack([at(1.0, t), at(depth, t)]) for t in turns])
    assert len(cut.surface.triangles) == len(CAP.triangles)
    assert np.array_equal(cut.origin[cut.surface.triangles], CAP.triangles)
    assert cut.surface.euler_characteristic == 1
    assert len(cut.surface.boundary_loops) == 1
    assert cut.surface.components.max() == 0
    assert turned_over(cut.surface, cut.flat) == 0
    # Points inside move along the smooth sphere; those on the rim along its chords, whose
    # heights are side^2 / 8 r: 0.10 mm for the even mesh and 0.02 mm for the cap it came from.
    assert np.abs(np.linalg.norm(cut.surface.vertices, axis=1) - RADIUS).max() < 0.13
    for seam, t in zip(cut.seams, turns, strict=True):
        tip = seam.line[-1]
        wanted = CAP.vertices[int(np.argmin(np.linalg.norm(FLAT - at(depth, t), axis=1)))]
        assert np.linalg.norm(tip - wanted) < 8.0
        assert seam.left[-1, 1] == seam.right[-1, 1]  # joined at the tip
        assert not set(seam.left[:, 0]) & set(seam.right[:, 0])  # apart before it


def test_a_straight_cut_is_drawn_straight():
    plate = even_mesh(shapes.graph(lambda x, y: 0 * x, (-60, 60), (-40, 40), (12, 8)), 5.0)
    flat = plate.vertices[:, :2].copy()
    cut = cut_surface(plate, flat, [np.array([[-60.0, 3.0], [20.0, 11.0]])])
    line = cut.seams[0].line
    off = line[:, 1] - (3.0 + (line[:, 0] + 60.0) * 0.1)
    assert np.abs(off[1:]).max() < 1e-9
    assert line[-1] == pytest.approx([20.0, 11.0, 0.0])
    assert cut.seams[0].length == pytest.approx(math.hypot(80.0, 8.0), rel=0.01)
    assert cut.surface.area == pytest.approx(plate.area, rel=1e-12)


def test_splices_part_the_face_and_gores_meet():
    halves = cut_surface(CAP, FLAT, [np.stack([at(1.0, 0.2), at(1.0, 0.2 + math.pi)])])
    assert halves.surface.components.max() + 1 == 2
    gores = cut_surface(
        CAP,
        FLAT,
        [np.stack([at(1.0, 0.2), at(1.0, 0.2 + math.pi)])]
        + [np.stack([at(1.0, 0.2 + t), MIDDLE]) for t in (math.pi / 2, -math.pi / 2)],
    )
    areas = np.bincount(gores.surface.components, weights=gores.surface.areas)
    assert len(areas) == 4
    assert areas == pytest.approx(CAP.area / 4.0, rel=0.08)


@pytest.mark.parametrize(
    ("paths", "found"),
    [
        ([np.stack([at(0.4, 0.0), at(0.1, 0.0)])], "away from every edge"),
        ([np.stack([at(1.0, 0.0), at(0.97, 0.0)])], "a cut of about"),
        ([np.stack([at(1.0, 0.0), at(0.4, 0.0)])] * 2, "cut"),
    ],
)
def test_cuts_that_cannot_be_made_are_refused(paths, found):
    with pytest.raises(GeometryError, match=found):
        cut_surface(CAP, FLAT, paths, "ply 1")
