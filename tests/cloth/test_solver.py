"""How the cloth is brought to rest."""

import math

import numpy as np
import pytest

import shapes
from laywright.cloth.datum import Datum, start_place, warp_direction
from laywright.cloth.energy import Energy, Sheet
from laywright.cloth.fabric import Fabric, Start
from laywright.cloth.flatten import flatten
from laywright.cloth.hold import first_threads, hold_start
from laywright.cloth.solver import settle
from laywright.errors import Cancelled
from laywright.progress import silent

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


def flat(surface):
    """A flat map turned so that +x runs along +u at the top."""
    uv = flatten(surface)
    east = uv[int(np.argmax(surface.vertices @ [1.0, 0.0, 1e-6]))] - uv[0]
    c, s = east / np.linalg.norm(east)
    return (uv - uv[0]) @ np.array([[c, -s], [s, c]])


def wavy(surface, seed=0):
    uv = flat(surface)
    return uv + np.random.default_rng(seed).normal(0, 0.3, uv.shape)


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
