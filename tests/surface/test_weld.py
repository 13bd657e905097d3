"""A heap of triangles becomes one surface, and what was wrong with it is told."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.surface.weld import PLACES, smooth_patches, tidy


def soup(surface, seed=0):
    """The triangles without shared points, in any order, half of them turned over."""
    rng = np.random.default_rng(seed)
    triangles = surface.triangles[rng.permutation(len(surface.triangles))].copy()
    over = rng.random(len(triangles)) < 0.5
    triangles[over] = triangles[over][:, ::-1]
    return surface.vertices[triangles].reshape(-1, 3), np.arange(triangles.size).reshape(-1, 3)


@settings(max_examples=15, deadline=None)
@given(seed=st.integers(0, 10**6), kind=st.sampled_from(["box", "torus", "sphere"]))
def test_a_shuffled_soup_is_the_same_solid_again(seed, kind):
    wanted = {
        "box": shapes.box(10, 20, 30),
        "torus": shapes.torus(40, 12, 24, 12),
        "sphere": shapes.sphere(9.0, 8),
    }[kind]
    surface, defects = tidy(*soup(wanted, seed))
    assert defects == ()
    assert surface.is_closed
    assert surface.volume == pytest.approx(wanted.volume, rel=1e-12)
    assert surface.euler_characteristic == wanted.euler_characteristic


def test_single_precision_points_are_welded():
    wanted = shapes.torus(400, 120, 60, 30)
    points, triangles = soup(wanted)
    noise = np.random.default_rng(1).uniform(-2e-5, 2e-5, points.shape)
    surface, defects = tidy(points + noise, triangles)
    assert defects == ()
    assert surface.is_closed


def test_defects_are_counted_and_placed():
    box = shapes.box(10, 10, 10)
    open_box = box.triangles[box.patches != 5]
    extra = np.array([[0, 1, 1], open_box[0]])
    surface, defects = tidy(box.vertices, np.concatenate([open_box, extra]))
    found = {defect.kind: defect for defect in defects}
    assert set(found) == {"open edges", "triangles without area", "doubled triangles"}
    assert found["open edges"].count == 4
    assert {z for _, _, z in found["open edges"].points} == {10.0}
    assert found["doubled triangles"].count == found["triangles without area"].count == 1
    assert len(surface.triangles) == 10
    assert str(found["open edges"]).startswith("4 open edges at (")


def test_pieces_that_touch_in_a_point_or_share_an_edge_with_three():
    box = shapes.box(1, 1, 1)
    points = np.concatenate([box.vertices, box.vertices + 1.0])
    surface, defects = tidy(points, np.concatenate([box.triangles, box.triangles + 8]))
    assert [(d.kind, d.count, d.points) for d in defects] == [
        ("points where pieces touch", 1, ((1.0, 1.0, 1.0),))
    ]
    assert surface.volume == pytest.approx(2.0)
    fin = np.concatenate([box.vertices, [[-1.0, -1.0, 0.5]]])
    _, defects = tidy(fin, np.concatenate([box.triangles, [[0, 1, 8]]]))
    assert "edges with more than two triangles" in {d.kind for d in defects}


def test_of_a_few_all_places_are_told_and_of_many_some_spread_over_all():
    plate = shapes.graph(lambda x, y: 0.0 * x, (0, 100), (0, 80), (10, 8))
    few = np.ones(len(plate.triangles), dtype=bool)
    inner = np.flatnonzero((np.abs(plate.centroids - [50.0, 40.0, 0.0]) < 25.0).all(axis=1))
    torn = inner[[0, 20, 40]]
    few[torn] = False
    outer = (plate.edges.left < 0) | (plate.edges.right < 0)
    (defect,) = tidy(plate.vertices, plate.triangles[few])[1]
    middle = 0.5 * plate.vertices[plate.edges.ends].sum(axis=1)
    holes = np.isin(plate.edges.left, torn) | np.isin(plate.edges.right, torn)
    wanted = {tuple(point) for point in middle[outer | holes].tolist()}
    assert defect.count == len(wanted) == 45
    assert set(defect.points) == wanted
    assert defect.words(1).endswith("mm and 44 more")
    fine = shapes.graph(lambda x, y: 0.0 * x, (0, 100), (0, 80), (100, 80))
    (defect,) = tidy(fine.vertices, fine.triangles)[1]
    assert (defect.count, len(defect.points)) == (360, PLACES)
    assert np.ptp(np.array(defect.points), axis=0)[:2] == pytest.approx([100.0, 80.0], abs=2.0)


def test_a_band_with_one_side_is_told():
    turn = np.linspace(0.0, 2.0 * np.pi, 25)[:-1]
    middle = np.stack([30 * np.cos(turn), 30 * np.sin(turn), 0 * turn], axis=1)
    way = np.stack(
        [np.cos(turn / 2) * np.cos(turn), np.cos(turn / 2) * np.sin(turn), np.sin(turn / 2)], axis=1
    )
    points = np.concatenate([middle - 5 * way, middle + 5 * way])
    n = len(turn)
    triangles = []
    for i in range(n):
        a, b = i, i + n
        c, d = (i + 1, i + 1 + n) if i < n - 1 else (n, 0)
        triangles += [[a, b, d], [a, d, c]]
    _, defects = tidy(points, np.array(triangles))
    assert "pieces that cannot be turned one way" in {d.kind for d in defects}


def test_a_void_inside_stays_a_void():
    outer, inner = shapes.box(10, 10, 10), shapes.box(2, 2, 2)
    points = np.concatenate([outer.vertices, inner.vertices + 3.0])
    triangles = np.concatenate([outer.triangles, inner.triangles[:, ::-1] + 8])
    surface, _ = tidy(points, triangles)
    assert surface.volume == pytest.approx(992.0)
    inside_out, _ = tidy(outer.vertices, outer.triangles[:, ::-1])
    assert inside_out.volume == pytest.approx(1000.0)


def test_patches_follow_creases_largest_first():
    surface = smooth_patches(shapes.box(10, 20, 30), 0.35)
    areas = [surface.areas[surface.patches == i].sum() for i in range(6)]
    assert surface.patch_names == ("Face1", "Face2", "Face3", "Face4", "Face5", "Face6")
    np.testing.assert_allclose(areas, [600, 600, 300, 300, 200, 200])
    assert len(smooth_patches(shapes.sphere(5.0, 30), 0.35).patch_names) == 1


def test_noise_makes_no_regions_of_its_own_and_small_faces_stay():
    rng = np.random.default_rng(4)
    plate = shapes.graph(lambda x, y: 0.002 * x * y, (0, 100), (0, 80), (50, 40))
    points = np.array(plate.vertices)
    points[:, 2] += rng.normal(0.0, 0.11, len(points))
    noisy = plate.moved(points)
    inner = (noisy.edges.left >= 0) & (noisy.edges.right >= 0)
    sides = noisy.normals[noisy.edges.left[inner]], noisy.normals[noisy.edges.right[inner]]
    creased = np.einsum("ij,ij->i", *sides) < np.cos(0.35)
    assert creased.sum() > 50
    assert smooth_patches(noisy, 0.35).patch_names == ("Face1",)
    small = smooth_patches(shapes.box(100.0, 100.0, 2.0), 0.35)
    assert small.patch_areas.tolist() == pytest.approx([1e4, 1e4, 200, 200, 200, 200])
