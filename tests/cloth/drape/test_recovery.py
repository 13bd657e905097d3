"""Fitted gradients and what facets miss of a curved map."""

import math

import numpy as np
import pytest

import shapes
from cloth.drape.reading import strain_of
from laywright.cloth.drape.recovery import Recovery, strain_at_vertices
from laywright.cloth.drape.strain import jacobians, strain_from


def uneven_plate(cells, seed=0):
    """Square plate with jittered inner points."""
    plate = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (cells, cells))
    points = plate.vertices.copy()
    inner = np.abs(points[:, :2]).max(axis=1) < 9.9
    jitter = np.random.default_rng(seed).uniform(-0.25, 0.25, (len(points), 2)) * 20 / cells
    points[inner, :2] += jitter[inner]
    return plate.moved(points)


def missed_of(surface, uv):
    return (Recovery(surface).missed @ uv).reshape(2, -1, 2).transpose(1, 2, 0)


def test_gradients_of_quadratic_fields_are_exact():
    plate = uneven_plate(8)
    x, y = plate.vertices[:, 0], plate.vertices[:, 1]
    recovery = Recovery(plate)
    found = recovery.gradients(np.stack([x * x - 3 * x * y, y * y + 2 * x], axis=1))
    in_space = np.einsum("nwa,nai->nwi", found, np.stack(recovery.axes, axis=1))
    assert in_space[:, 0, 0] == pytest.approx(2 * x - 3 * y, abs=1e-5)
    assert in_space[:, 0, 1] == pytest.approx(-3 * x, abs=1e-5)
    assert in_space[:, 1, 0] == pytest.approx(2.0, abs=1e-5)
    assert in_space[:, 1, 1] == pytest.approx(2 * y, abs=1e-5)


def test_facets_with_what_they_miss_are_exact_for_quadratic_maps():
    """On a plate the corrected gradient is that of the quadratic at the facet's middle."""
    plate = uneven_plate(8)
    x, y = plate.vertices[:, 0], plate.vertices[:, 1]
    uv = np.stack([x + 0.01 * x * y, y + 0.02 * x * x - 0.01 * y * y], axis=1)
    strain = strain_from(jacobians(plate, uv) + missed_of(plate, uv))
    cx, cy = plate.centroids[:, 0], plate.centroids[:, 1]
    exact = strain_from(
        np.stack(
            [
                np.stack([1 + 0.01 * cy, 0.01 * cx], axis=1),
                np.stack([0.04 * cx, 1 - 0.02 * cy], axis=1),
            ],
            axis=1,
        )
    )
    assert strain.shear == pytest.approx(exact.shear, abs=1e-6)
    assert strain.warp == pytest.approx(exact.warp, abs=1e-6)
    assert np.abs(strain_of(plate, uv).shear - exact.shear).max() > 1e-2


def test_shear_at_vertices_converges_in_the_second_order():
    """The paraboloid's net is known (check DRP-06): u, v are the lengths of the parabolas."""
    p = 100.0

    def worst(cells):
        dish = shapes.graph(
            lambda x, y: (x * x + y * y) / (2 * p), (-80, 80), (-80, 80), (cells,) * 2
        )
        x, y = dish.vertices[:, 0] / p, dish.vertices[:, 1] / p
        uv = p / 2 * np.stack([t * np.sqrt(1 + t * t) + np.arcsinh(t) for t in (x, y)], axis=1)
        exact = np.arcsin(x * y / np.sqrt((1 + x * x) * (1 + y * y)))
        inner = np.maximum(np.abs(x), np.abs(y)) < 0.6
        return np.abs(strain_at_vertices(dish, uv).shear - exact)[inner].max()

    errors = [worst(cells) for cells in (20, 40, 80)]
    assert errors[0] / errors[1] == pytest.approx(4.0, rel=0.15)
    assert errors[1] / errors[2] == pytest.approx(4.0, rel=0.15)


def test_beside_a_sharp_edge_nothing_is_added():
    ridge = shapes.graph(lambda x, y: -np.abs(x), (-10, 10), (-10, 10), (10, 10))
    uv = ridge.vertices[:, :2] * [math.sqrt(2.0), 1.0]
    uv = uv + 0.01 * uv**2
    missed = missed_of(ridge, uv)
    beside = np.abs(ridge.centroids[:, 0]) < 2.0
    assert (missed[beside] == 0.0).all()
    assert (np.abs(missed[~beside]).max(axis=(1, 2)) > 0.0).all()


def test_normals_of_a_sphere_are_right_in_the_second_order_also_at_the_edge():
    errors = []
    for rings in (10, 20, 40):
        cap = shapes.cap(100, 1.0, rings)
        exact = cap.vertices / 100.0
        errors.append(np.linalg.norm(Recovery(cap).normals - exact, axis=1).max())
    assert errors[0] / errors[1] > 3.0
    assert errors[1] / errors[2] > 3.0


def test_unrolled_length_has_the_same_gradient_everywhere_on_a_cylinder():
    """Arc length around a cylinder, at the rim too: neighbours count at their true distance."""
    radius = 50.0
    cylinder = shapes.cylinder_patch(radius, 2.0, 120, (24, 12))
    arc = radius * np.arctan2(cylinder.vertices[:, 0], cylinder.vertices[:, 2])
    recovery = Recovery(cylinder)
    gradient = recovery.gradients(arc[:, None])[:, 0]
    assert np.linalg.norm(gradient, axis=1) == pytest.approx(1.0, abs=2e-4)
