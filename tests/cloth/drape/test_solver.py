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
from laywright.cloth.drape.solver import REST, Below, _damped, settle, share_done
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


@pytest.mark.parametrize("end", [1e-5, 5e-3])
def test_the_share_done_goes_by_the_order_of_what_still_moves(end):
    assert share_done(end, end) == share_done(0.0, end) == 1.0
    assert share_done(1.0, end) == share_done(7.0, end) == 0.0
    assert share_done(math.sqrt(end), end) == pytest.approx(0.5)
    assert share_done(end ** (1 / 3), end) == pytest.approx(1 / 3)


def test_every_step_is_told_once_rough_ones_first():
    told = []
    settled = settle(SHEET, FABRIC, HELD, flat(), lambda *words: told.append(words))
    assert len(told) == settled.steps
    assert {words for _, words in told} == {"the cloth settles"}
    shares = np.array([share for share, _ in told])
    rough = int(np.argmax(shares > 0.4))
    assert 0 < rough < len(shares)
    assert (shares[:rough] <= 0.4).all()
    assert (shares[rough:] >= 0.4).all()
    assert shares[-1] == pytest.approx(1.0)


def test_the_factors_at_the_end_are_of_a_positive_matrix():
    settled = settle(SHEET, FABRIC, HELD, flat(), silent)
    rng = np.random.default_rng(1)
    one, other = rng.normal(size=(2, 2 * len(CAP.vertices)))
    solved = settled.factors.divide(one).ravel()
    assert one @ solved > 0.0
    assert other @ solved == pytest.approx(one @ settled.factors.divide(other).ravel(), rel=1e-6)


def test_the_same_cloth_begins_where_the_ply_below_came_to_rest():
    first = settle(SHEET, FABRIC, HELD, flat(), silent)
    again = settle(SHEET, FABRIC, HELD, flat(), silent, below=Below(first.uv, first.factors))
    assert again.at_rest
    assert again.steps < 0.5 * first.steps
    assert again.uv == pytest.approx(first.uv, abs=20 * REST * math.sqrt(CAP.area))
    bare = settle(SHEET, FABRIC, HELD, flat(), silent, below=Below(first.uv, None))
    assert bare.steps <= again.steps + 1


def test_a_place_below_with_turned_triangles_is_not_begun_from():
    first = settle(SHEET, FABRIC, HELD, flat(), silent)
    over = Below(first.uv * [1.0, -1.0], first.factors)
    assert turned_over(CAP, over.uv) > 0
    again = settle(SHEET, FABRIC, HELD, flat(), silent, below=over)
    assert again.steps == first.steps
    assert np.array_equal(again.uv, first.uv)


@pytest.mark.parametrize("damping", [1e-3, 1.0])
def test_a_damped_step_goes_down_and_says_how_far(damping):
    energy, uv = Energy(SHEET, FABRIC, HELD[0]), flat()
    before, _ = energy.value_and_slope(uv)
    place, moved, easier = _damped(energy, uv, damping)
    after, _ = energy.value_and_slope(place)
    assert after < before
    assert moved == pytest.approx(np.abs(place - uv).max())
    assert easier == pytest.approx(0.1 * damping)


def test_damping_shortens_the_step_and_nothing_moves_at_rest():
    energy, uv = Energy(SHEET, FABRIC, HELD[0]), flat()
    free, stiff = (_damped(energy, uv, damping)[1] for damping in (1e-6, 100.0))
    assert stiff < 0.5 * free
    for _ in range(40):
        uv, moved, _ = _damped(energy, uv, 1e-9)
    assert moved < 1e-6
    assert _damped(energy, uv, 1e9) == (pytest.approx(uv), 0.0, 1e9)
