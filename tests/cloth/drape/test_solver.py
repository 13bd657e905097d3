"""How the cloth is brought to rest."""

import math

import numpy as np
import pytest

import shapes
from laywright.cloth.drape.datum import Datum, start_place, warp_direction
from laywright.cloth.drape.energy import Energy, Sheet
from laywright.cloth.drape.fabric import Fabric, Start
from laywright.cloth.drape.flatten import flatten
from laywright.cloth.drape.hold import first_threads, hold_start
from laywright.cloth.drape.solver import settle
from laywright.cloth.drape.strain import turned_over
from laywright.errors import Cancelled
from laywright.progress import silent

CAP = shapes.cap(100, 0.9, 8)
SHEET = Sheet(CAP)
FABRIC = Fabric(1.0, 0.7, 1e-2, math.radians(10.0), 0.3)


def rows(start):
    datum = Datum((0, 0, 100), (1, 0, 0))
    place = start_place(CAP, datum)
    threads = first_threads(CAP, place, warp_direction(CAP, datum, 0.0), CAP.vertex_normals)
    return hold_start(CAP, threads, start, FABRIC.shear)


HELD = (rows(Start.CROSS), rows(Start.EASED))


def flat():
    """A flat map turned so that +x runs along +u at the top."""
    uv = flatten(CAP)
    east = uv[int(np.argmax(CAP.vertices @ [1.0, 0.0, 1e-6]))] - uv[0]
    c, s = east / np.linalg.norm(east)
    return (uv - uv[0]) @ np.array([[c, -s], [s, c]])


def test_rest_is_a_place_without_slope():
    settled = settle(SHEET, FABRIC, HELD, flat(), silent, rest=1e-10)
    assert settled.at_rest
    energy = Energy(SHEET, FABRIC, HELD[1], SHEET.rounded(settled.uv))
    _, before = energy.value_and_slope(flat())
    _, after = energy.value_and_slope(settled.uv)
    assert np.abs(after).max() < 1e-7 * np.abs(before).max()
    assert settled.jacobians == pytest.approx(energy.jacobians(settled.uv), abs=1e-12)


def test_the_way_there_does_not_matter():
    first = settle(SHEET, FABRIC, HELD, flat(), silent, rest=1e-9)
    wavy = flat() + np.random.default_rng(0).normal(0, 0.3, (len(CAP.vertices), 2))
    second = settle(SHEET, FABRIC, HELD, wavy, silent, rest=1e-9)
    assert second.uv == pytest.approx(first.uv, abs=1e-4)


def test_from_a_crumpled_start_no_triangle_turns_over():
    crumpled = flat() * [1.8, 0.3]
    settled = settle(SHEET, FABRIC, HELD, crumpled, silent)
    assert settled.at_rest
    assert turned_over(CAP, settled.uv) == 0


def test_stops_when_asked_and_tells_how_far_it_is():
    told = []

    def stop(share, doing=""):
        told.append(share)
        if len(told) == 5:
            raise Cancelled

    with pytest.raises(Cancelled):
        settle(SHEET, FABRIC, HELD, flat(), stop)
    assert len(told) == 5
    assert all(0.0 <= share <= 1.0 for share in told)
