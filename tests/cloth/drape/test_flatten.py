"""The first flat map."""

import math

import numpy as np
import pytest

import shapes
from cloth.drape.reading import principal_stretches
from laywright.cloth.drape.flatten import check_disk, conformal_map, disk_map, flatten
from laywright.cloth.drape.strain import turned_over
from laywright.errors import Cancelled, GeometryError
from laywright.surface.triangles import Surface


@pytest.mark.parametrize(
    "surface",
    [
        shapes.cylinder_patch(40, 2 * math.pi, 100, (64, 8)),
        shapes.cone_patch(0.5, 20, 90, 3.0, (40, 12)),
        shapes.graph(lambda x, y: -2.0 * np.abs(x), (-10, 10), (-10, 10), (6, 6)),
    ],
    ids=["cylinder", "cone", "ridge"],
)
def test_what_unrolls_is_unrolled_exactly(surface):
    assert principal_stretches(surface, flatten(surface)) == pytest.approx(1.0, abs=1e-9)


def test_conformal_map_of_a_cap_is_the_stereographic_projection():
    """Its scale is 1 / (1 + cos a) up to a constant: sec^2(a/2) over the whole cap."""
    angle = math.radians(60.0)
    cap = shapes.cap(100, angle, 40)
    uv = conformal_map(cap)
    polar = np.arccos(cap.vertices[:, 2] / 100)
    radius = np.linalg.norm(uv - uv[0], axis=1)
    ratio = radius[1:] / np.tan(polar[1:] / 2)
    assert np.ptp(ratio) / ratio.mean() < 2e-3


@pytest.mark.parametrize("angle", [0.3, 1.0, 1.6, 2.2])
def test_no_triangle_turns_over_and_the_scale_is_true_in_the_mean(angle):
    cap = shapes.cap(100, angle, 16)
    uv = flatten(cap)
    assert turned_over(cap, uv) == 0
    flat = cap.moved(np.column_stack([uv, np.zeros(len(uv))]))
    assert flat.area == pytest.approx(cap.area, rel=0.2)


def test_disk_map_turns_nothing_over_even_on_a_nearly_closed_sphere():
    cap = shapes.cap(100, 3.0, 16)
    assert turned_over(cap, disk_map(cap)) == 0
    assert turned_over(cap, flatten(cap)) == 0


def with_hole():
    plate = shapes.graph(lambda x, y: 0.01 * x * y, (-10, 10), (-10, 10), (20, 20))
    return plate.part(np.hypot(*plate.centroids[:, :2].T) > 4.0)


def test_holes_stay_open():
    plate = with_hole()
    uv = flatten(plate)
    assert turned_over(plate, uv) == 0
    assert turned_over(plate, disk_map(plate)) == 0
    assert principal_stretches(plate, uv) == pytest.approx(1.0, abs=0.05)


def two_pieces():
    plate = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (4, 4))
    return plate.part(np.abs(plate.centroids[:, 0]) > 5.0)


def handle():
    """A torus without one triangle: one loop, but no disk."""
    torus = shapes.torus(30, 10, 12, 8)
    return torus.part(np.arange(len(torus.triangles)) != 5)


def loose_point():
    return Surface.single(np.eye(4, 3), np.array([[0, 1, 2]]))


@pytest.mark.parametrize(
    ("surface", "words"),
    [
        (shapes.sphere(10, 6), "closes on itself"),
        (two_pieces(), "2 pieces"),
        (handle(), "tunnel"),
        (loose_point(), "belong to no triangle"),
        (Surface.single(np.zeros((0, 3)), np.zeros((0, 3))), "no triangles"),
    ],
    ids=["closed", "pieces", "tunnel", "loose point", "empty"],
)
def test_what_cannot_be_laid_flat_is_refused_in_one_sentence(surface, words):
    for function in (check_disk, flatten):
        with pytest.raises(GeometryError, match=words):
            function(surface)


def test_stops_when_asked():
    def stop(share, doing=""):
        raise Cancelled

    with pytest.raises(Cancelled):
        flatten(shapes.cap(10, 1.0, 4), progress=stop)
