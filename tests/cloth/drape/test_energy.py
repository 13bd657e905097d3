"""The strain energy, its slope and its matrix."""

import math

import numpy as np
import pytest

import shapes
from laywright.cloth.drape.datum import Datum, start_place, warp_direction
from laywright.cloth.drape.energy import Energy, Factors, Sheet
from laywright.cloth.drape.fabric import Fabric, Start
from laywright.cloth.drape.flatten import flatten
from laywright.cloth.drape.hold import first_threads, hold_start
from laywright.cloth.drape.strain import jacobians

CAP = shapes.cap(100, 0.9, 8)
FABRIC = Fabric(1.0, 0.7, 1e-2, math.radians(10.0), 0.3)


def energy_of(surface, fabric=FABRIC, reading=None):
    datum = Datum((0, 0, 100), (1, 0, 0))
    place = start_place(surface, datum)
    threads = first_threads(
        surface, place, warp_direction(surface, datum, 0.0), surface.vertex_normals
    )
    rows = hold_start(surface, threads, Start.CROSS, fabric.shear)
    return Energy(Sheet(surface), fabric, rows, reading)


def wavy(surface, seed=0):
    uv = flatten(surface)
    return uv + np.random.default_rng(seed).normal(0, 0.3, uv.shape)


@pytest.mark.parametrize("rounded", [False, True])
def test_slope_is_half_the_derivative_of_the_value(rounded):
    uv = wavy(CAP)
    energy = energy_of(CAP, reading=Sheet(CAP).rounded(uv) if rounded else None)
    _, slope = energy.value_and_slope(uv)
    for unknown in (0, 7, 100, 2 * len(uv) - 1):
        step = np.zeros(2 * len(uv))
        step[unknown] = 1e-5
        step = step.reshape(-1, 2)
        rise = energy.value_and_slope(uv + step)[0] - energy.value_and_slope(uv - step)[0]
        assert rise / 4e-5 == pytest.approx(slope[unknown], rel=1e-5, abs=1e-9)


def test_matrix_is_symmetric_and_predicts_the_slope_of_an_isometry():
    """Where no strain is left, Gauss-Newton's matrix is the true one."""
    plate = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (5, 5))
    energy = energy_of(plate)
    flat = plate.vertices[:, :2].copy()
    matrix = energy.matrix(flat)
    assert abs(matrix - matrix.T).max() < 1e-15
    step = np.random.default_rng(2).normal(0, 1e-6, flat.shape)
    order = energy.sheet.elimination
    predicted = np.empty(flat.size)
    predicted[order] = matrix @ step.ravel()[order]
    _, before = energy.value_and_slope(flat)
    _, after = energy.value_and_slope(flat + step)
    assert after - before == pytest.approx(predicted, rel=1e-3, abs=1e-12)


def test_a_turned_triangle_has_infinite_energy():
    for reading in (None, Sheet(CAP).rounded(flatten(CAP))):
        energy = energy_of(CAP, reading=reading)
        assert energy.value_and_slope(flatten(CAP) * [1, -1])[0] == math.inf


def test_value_is_the_mean_of_the_squares_over_the_area():
    """A plate whose cloth is stretched by 10 % along the warp and sheared by 20 degrees."""
    plate = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (5, 5))
    shear = math.radians(20.0)
    yarns = np.array([[1.1, 0.0], [math.sin(shear), math.cos(shear)]])
    uv = plate.vertices[:, :2] @ np.linalg.inv(yarns)
    held, _ = energy_of(plate, Fabric(1e-12, 1e-12, 1e-12, 1.5)).value_and_slope(uv)
    expected = 0.1**2 + 1e-2 * shear**2 + 0.3 * (shear - math.radians(10.0)) ** 2
    assert energy_of(plate).value_and_slope(uv)[0] - held == pytest.approx(expected, rel=1e-9)


def test_factors_divide_in_the_order_of_the_vertices():
    energy, uv = energy_of(CAP), wavy(CAP)
    _, slope = energy.value_and_slope(uv)
    matrix, order = energy.matrix(uv), energy.sheet.elimination
    divided = Factors(matrix, order).divide(slope)
    assert (matrix @ divided[order]) == pytest.approx(slope[order], rel=1e-6, abs=1e-12)


def test_a_sheet_reads_facets_as_they_are_and_rounded_ones_exactly_for_quadratic_maps():
    uv = wavy(CAP)
    assert energy_of(CAP).jacobians(uv) == pytest.approx(jacobians(CAP, uv), abs=1e-12)
    plate = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (8, 8))
    x, y = plate.vertices[:, 0], plate.vertices[:, 1]
    bent = np.stack([x + 0.01 * x * y, y - 0.01 * y * y], axis=1)
    sheet = Sheet(plate)
    read = energy_of(plate, reading=sheet.rounded(bent)).jacobians(bent)
    cx, cy = plate.centroids[:, 0], plate.centroids[:, 1]
    exact = (1 + 0.01 * cy) * (1 - 0.02 * cy)  # d(u, v)/d(x, y) has a zero in its corner
    assert np.linalg.det(read) == pytest.approx(exact, abs=1e-6)
    assert np.abs(np.linalg.det(jacobians(plate, bent)) - exact).max() > 1e-3
    assert cx.shape == cy.shape


def test_triangles_that_are_too_coarse_stay_flat():
    """A map that turns within one triangle: what the facet misses would crush it."""
    plate = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (4, 4))
    x, y = plate.vertices[:, 0], plate.vertices[:, 1]
    wild = np.stack([x + 0.09 * x * x, y], axis=1)
    sheet = Sheet(plate)
    difference = abs(sheet.rounded(wild) - sheet.facets).sum(axis=1).reshape(-1, 2).sum(axis=1)
    assert (difference == 0.0).any()
    gentle = np.stack([x + 0.001 * x * x, y], axis=1)
    difference = abs(sheet.rounded(gentle) - sheet.facets).sum(axis=1).reshape(-1, 2).sum(axis=1)
    assert (difference > 0.0).all()
