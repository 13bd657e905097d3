"""The energy and how it is brought to rest."""

import math

import numpy as np
import pytest

import shapes
from laywright.cloth.datum import Datum, start_place, warp_direction
from laywright.cloth.fabric import Fabric, Start
from laywright.cloth.flatten import flatten
from laywright.cloth.hold import hold_start
from laywright.cloth.solver import Energy, Mixer, settle
from laywright.errors import Cancelled
from laywright.progress import silent

CAP = shapes.cap(100, 0.9, 8)
FABRIC = Fabric(1.0, 0.7, 1e-2, math.radians(10.0), 0.3)


def energy_of(surface, fabric=FABRIC, start=Start.CROSS):
    datum = Datum((0, 0, 100), (1, 0, 0))
    place = start_place(surface, datum)
    return Energy(
        surface, fabric, hold_start(surface, place, warp_direction(surface, datum, 0), start)
    )


def flat(surface):
    """A flat map turned so that +x runs along +u at the top."""
    uv = flatten(surface)
    east = uv[int(np.argmax(surface.vertices @ [1.0, 0.0, 1e-6]))] - uv[0]
    c, s = east / np.linalg.norm(east)
    return (uv - uv[0]) @ np.array([[c, -s], [s, c]])


def wavy(surface, seed=0):
    uv = flat(surface)
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
    _, matrix, _ = energy.slope_and_curvature(flat)
    assert abs(matrix - matrix.T).max() < 1e-15
    step = np.random.default_rng(2).normal(0, 1e-6, flat.shape)
    order = energy.elimination
    predicted = np.empty(flat.size)
    predicted[order] = matrix @ step.ravel()[order]
    assert energy.slope(flat + step) == pytest.approx(predicted, rel=1e-3, abs=1e-12)


def test_a_turned_triangle_has_infinite_energy():
    energy = energy_of(CAP)
    assert energy.value(flatten(CAP) * [1, -1]) == math.inf


def test_rest_is_a_place_without_slope():
    energy = energy_of(CAP)
    settled = settle(energy, flat(CAP), silent, rest=1e-10)
    assert settled.at_rest
    scale = np.abs(energy.slope(flatten(CAP))).max()
    assert np.abs(energy.slope(settled.uv, settled.missed)).max() < 1e-8 * scale


def test_the_way_there_does_not_matter():
    energy = energy_of(CAP)
    first = settle(energy, flat(CAP), silent, rest=1e-9)
    second = settle(energy, wavy(CAP), silent, rest=1e-9)
    assert second.uv == pytest.approx(first.uv, abs=1e-5)
    again = settle(energy, first.uv, silent, missed=first.missed, rest=1e-9)
    assert again.uv == pytest.approx(first.uv, abs=1e-5)
    assert again.iterations <= 3


def test_stops_when_asked_and_tells_how_far_it_is():
    told = []

    def stop(share, doing=""):
        told.append(share)
        if len(told) == 3:
            raise Cancelled

    with pytest.raises(Cancelled):
        settle(energy_of(CAP), flatten(CAP), stop)
    assert len(told) == 3
    assert all(0.0 <= share <= 1.0 for share in told)


def test_says_when_it_did_not_come_to_rest():
    assert not settle(energy_of(CAP), flatten(CAP), silent, most=2).at_rest


def test_mixing_solves_a_linear_iteration_in_as_many_steps_as_it_has_modes():
    matrix = np.diag([0.9, 0.5, -0.7, 0.2])
    goal = np.array([[1.0, 2.0], [3.0, 4.0]])
    place, mixer = np.zeros((2, 2)), Mixer()
    for _ in range(7):
        step = (matrix @ (place - goal).ravel()).reshape(2, 2) + goal - place
        place = mixer.mix(place, step)
    assert place == pytest.approx(goal, abs=1e-9)
