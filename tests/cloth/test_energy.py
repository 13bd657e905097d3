"""The strain energy, its slope and its matrix."""

import math

import numpy as np
import pytest

import shapes
from laywright.cloth.datum import Datum, start_place, warp_direction
from laywright.cloth.energy import Energy, Factors, Sheet
from laywright.cloth.fabric import Fabric, Start
from laywright.cloth.flatten import flatten
from laywright.cloth.hold import first_threads, hold_start
from laywright.cloth.strain import jacobians

CAP = shapes.cap(100, 0.9, 8)
FABRIC = Fabric(1.0, 0.7, 1e-2, math.radians(10.0), 0.3)


def energy_of(surface, fabric=FABRIC):
    datum = Datum((0, 0, 100), (1, 0, 0))
    place = start_place(surface, datum)
    threads = first_threads(
        surface, place, warp_direction(surface, datum, 0.0), surface.vertex_normals
    )
    rows = hold_start(surface, threads, Start.CROSS, fabric.shear)
    return Energy(Sheet(surface), fabric, rows)


def wavy(surface, seed=0):
    uv = flatten(surface)
    return uv + np.random.default_rng(seed).normal(0, 0.3, uv.shape)


def test_slope_is_half_the_derivative_of_the_value():
    energy, uv = energy_of(CAP), wavy(CAP)
    missed = np.random.default_rng(1).normal(0, 0.01, (len(CAP.triangles), 2, 2))
    slope = energy.slope(uv, missed)
    for unknown in (0, 7, 100, 2 * len(uv) - 1):
        step = np.zeros(2 * len(uv))
        step[unknown] = 1e-5
        step = step.reshape(-1, 2)
        rise = energy.value(uv + step, missed) - energy.value(uv - step, missed)
        assert rise / 4e-5 == pytest.approx(slope[unknown], rel=1e-5, abs=1e-9)


def test_matrix_is_symmetric_and_predicts_the_slope_of_an_isometry():
    """Where no strain is left, Gauss-Newton's matrix is the true one."""
    plate = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (5, 5))
    energy = energy_of(plate)
    flat = plate.vertices[:, :2] - start_place(plate, Datum((0, 0, 100), (1, 0, 0))).value(
        plate, plate.vertices[:, :2]
    )
    _, matrix = energy.slope_and_curvature(flat)
    assert abs(matrix - matrix.T).max() < 1e-15
    step = np.random.default_rng(2).normal(0, 1e-6, flat.shape)
    order = energy.sheet.elimination
    predicted = np.empty(flat.size)
    predicted[order] = matrix @ step.ravel()[order]
    assert energy.slope(flat + step) == pytest.approx(predicted, rel=1e-3, abs=1e-12)


def test_a_turned_triangle_has_infinite_energy():
    energy = energy_of(CAP)
    assert energy.value(flatten(CAP) * [1, -1]) == math.inf


def test_value_is_the_mean_of_the_squares_over_the_area():
    """A plate whose cloth is stretched by 10 % along the warp and sheared by 20 degrees."""
    plate = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (5, 5))
    shear = math.radians(20.0)
    yarns = np.array([[1.1, 0.0], [math.sin(shear), math.cos(shear)]])
    uv = plate.vertices[:, :2] @ np.linalg.inv(yarns)
    held = energy_of(plate, Fabric(1e-12, 1e-12, 1e-12, 1.5)).value(uv)
    expected = 0.1**2 + 1e-2 * shear**2 + 0.3 * (shear - math.radians(10.0)) ** 2
    assert energy_of(plate).value(uv) - held == pytest.approx(expected, rel=1e-9)


def test_factors_solve_in_the_order_of_the_vertices():
    energy, uv = energy_of(CAP), wavy(CAP)
    slope, matrix = energy.slope_and_curvature(uv)
    order = energy.sheet.elimination
    step = Factors(matrix, order).step(slope)
    assert (matrix @ step.ravel()[order]) == pytest.approx(-slope[order], rel=1e-6, abs=1e-12)


def test_a_sheet_reads_the_gradients_of_its_facets():
    uv = wavy(CAP)
    assert Sheet(CAP).jacobians(uv) == pytest.approx(jacobians(CAP, uv), abs=1e-12)
