from __future__ import annotations

import numpy as np
import pytest

from laminate.stacks import CARBON, MATERIALS, TAPE, layup
from laywright.laminate.criteria import Criterion
from laywright.laminate.envelope import Envelope, LoadPair, failure_envelope
from laywright.laminate.knock_downs import KnockDowns
from laywright.laminate.laminate import analyse
from laywright.laminate.loads import LoadCase
from laywright.laminate.plies import Core
from laywright.laminate.strength import check_strength
from laywright.values import pack, unpack

WHOLE = KnockDowns()


def test_one_tape_by_maximum_stress_is_a_rectangle_of_its_strengths():
    made = analyse(layup(TAPE, 0))
    found = failure_envelope(made, LoadPair.PULLS, knock_downs=WHOLE)
    along = TAPE.strengths.tension_1 * made.fibre_volume_fraction / TAPE.strength_fibre_fraction
    pressed = along * TAPE.strengths.compression_1 / TAPE.strengths.tension_1
    low, high = found.first.min(axis=0), found.first.max(axis=0)
    assert high / made.thickness == pytest.approx([along, TAPE.strengths.tension_2], rel=1e-9)
    assert low / made.thickness == pytest.approx([-pressed, -TAPE.strengths.compression_2])
    assert np.allclose(found.first[0], found.first[-1])
    assert set(found.ply.tolist()) == {1.0}


@pytest.mark.parametrize("pair", LoadPair)
@pytest.mark.parametrize("criterion", [Criterion.MAX_STRESS, Criterion.TSAI_WU, Criterion.HASHIN])
def test_every_point_fails_at_exactly_its_load(pair, criterion):
    made = analyse(layup(TAPE, 0, 60, -60))
    found = failure_envelope(made, pair, criterion)
    for index in (0, 17, 60, 133):
        load = np.zeros(6)
        load[list({"N": (3, 4)}.get(found.unit, (0, 1 if pair is LoadPair.PULLS else 2)))] = (
            found.first[index]
        )
        report = check_strength(
            made, LoadCase(tuple(load[:3].tolist()), tuple(load[3:].tolist())), criterion
        )
        assert report.first_factor == pytest.approx(1.0, rel=1e-9)
        worst = min(report.margins, key=lambda margin: margin.factor)
        assert worst.factor == pytest.approx(report.margins[int(found.ply[index]) - 1].factor)


def test_the_last_ply_fails_outside_the_first():
    found = failure_envelope(analyse(layup(TAPE, 0, 90, 90, 0)))
    first = np.linalg.norm(found.first[:: (len(found.first) - 1) // 12], axis=1)
    last = np.linalg.norm(found.last[:: (len(found.last) - 1) // 12], axis=1)
    assert len(first) == len(last) == 13
    assert (last >= first * (1.0 - 1e-9)).all()
    assert (last > 1.2 * first).any()


def test_symmetric_laminates_take_shear_of_either_sign():
    points = failure_envelope(analyse(layup(CARBON, 0, 45, 45, 0)), LoadPair.PULL_AND_SHEAR).first
    assert np.allclose(points, points[::-1] * [1.0, -1.0], rtol=0.0, atol=1e-9)


def test_a_core_is_carried_along_and_not_judged():
    core = Core(MATERIALS.core("Closed-cell PVC foam 80 kg/m^3"), 5.0, 1)
    found = failure_envelope(analyse(layup(CARBON, 0, 0, core=core)), LoadPair.BENDINGS)
    assert set(found.ply.tolist()) <= {1.0, 2.0}
    assert np.isfinite(found.first).all()


def test_envelope_survives_storage():
    found = failure_envelope(analyse(layup(CARBON, 0)))
    assert pack(unpack(Envelope, pack(found))) == pack(found)
