from __future__ import annotations

import dataclasses
import math

import numpy as np
import pytest

from laminate.stacks import CARBON, TAPE, layup
from laywright.errors import InputError, MaterialError
from laywright.laminate.criteria import Criterion
from laywright.laminate.failure import StrengthPly, last_failure, ply_factors
from laywright.laminate.knock_downs import KnockDowns, usual_knock_downs
from laywright.laminate.lamina import Lamina, Strengths
from laywright.laminate.laminate import analyse
from laywright.laminate.modes import Mode
from laywright.laminate.plies import Process
from laywright.laminate.strength import (
    Border,
    LoadCase,
    StrainCase,
    StrengthReport,
    check_strength,
    strength_plies,
)
from laywright.values import pack, unpack

WHOLE = KnockDowns()

PULL = LoadCase((10.0, 0.0, 0.0))


def test_one_tape_fails_at_its_strength_times_its_thickness():
    made = analyse(layup(TAPE, 0))
    report = check_strength(made, PULL, knock_downs=WHOLE)
    fraction = made.fibre_volume_fraction
    strength = TAPE.strengths.tension_1 * fraction / TAPE.strength_fibre_fraction
    assert report.first_factor == pytest.approx(strength * made.thickness / 10.0, rel=1e-9)
    assert report.last_factor == report.first_factor


def test_load_per_width_does_not_depend_on_how_much_resin_is_in():
    factors = [
        check_strength(analyse(layup(CARBON, 0, resin_share=share)), PULL).first_factor
        for share in (0.4, 0.5, 0.6)
    ]
    assert factors == pytest.approx([factors[0]] * 3, rel=1e-9)


@pytest.mark.parametrize("criterion", Criterion)
def test_cross_plies_fail_first_and_the_others_carry_on(criterion):
    report = check_strength(analyse(layup(TAPE, 0, 90, 90, 0)), PULL, criterion)
    along, across = report.margins[0].factor, report.margins[1].factor
    assert report.first_factor == across < along
    assert report.last_factor > report.first_factor
    assert report.margins[1].factor == pytest.approx(report.margins[2].factor, rel=1e-9)


def test_bending_fails_the_outer_ply_on_its_outer_face():
    report = check_strength(
        analyse(layup(CARBON, 0, 0, 0)), LoadCase(moment=(1.0, 0.0, 0.0)), knock_downs=WHOLE
    )
    factors = [margin.factor for margin in report.margins]
    assert report.margins[0].border is Border.MOULD_SIDE
    assert report.margins[2].border is Border.FAR_SIDE
    # the mould side is pressed, and cloth is weaker there
    assert factors[0] == min(factors)
    assert factors[2] / factors[0] == pytest.approx(450.0 / 320.0, rel=1e-9)


def test_bending_of_an_even_plate_is_the_beam_formula():
    made = analyse(layup(CARBON, 0, 0))
    report = check_strength(made, LoadCase(moment=(1.0, 0.0, 0.0)), knock_downs=WHOLE)
    strength = CARBON.strengths.compression_1 * made.fibre_volume_fraction / 0.42
    assert report.first_factor == pytest.approx(strength * made.thickness**2 / 6.0, rel=1e-9)


def test_turning_layup_and_load_together_changes_nothing():
    plain = check_strength(analyse(layup(TAPE, 0, 60, -60)), LoadCase((10.0, 4.0, 3.0)))
    turn = math.radians(25.0)
    c, s = math.cos(turn), math.sin(turn)
    force = (
        10.0 * c * c + 4.0 * s * s - 2.0 * 3.0 * c * s,
        10.0 * s * s + 4.0 * c * c + 2.0 * 3.0 * c * s,
        (10.0 - 4.0) * c * s + 3.0 * (c * c - s * s),
    )
    turned = check_strength(analyse(layup(TAPE, 25, 85, -35)), LoadCase(force))
    assert [m.factor for m in turned.margins] == pytest.approx(
        [m.factor for m in plain.margins], rel=1e-9
    )
    assert turned.last_factor == pytest.approx(plain.last_factor, rel=1e-9)


@pytest.mark.parametrize("criterion", Criterion)
def test_the_mirror_image_is_as_strong(criterion):
    """Angles, shear and twist turn their sign in a mirror along the datum arrow."""
    rng = np.random.default_rng(11)
    for _ in range(8):
        degrees = rng.uniform(-90.0, 90.0, 3)
        force, moment = rng.uniform(-20.0, 20.0, 3), rng.uniform(-5.0, 5.0, 3)
        flip = np.array([1.0, 1.0, -1.0])
        plain = check_strength(
            analyse(layup(TAPE, *degrees)), LoadCase(tuple(force), tuple(moment)), criterion
        )
        mirrored = check_strength(
            analyse(layup(TAPE, *-degrees)),
            LoadCase(tuple(flip * force), tuple(flip * moment)),
            criterion,
        )
        assert mirrored.last_factor == pytest.approx(plain.last_factor, rel=1e-9)
        for first, second in zip(plain.margins, mirrored.margins, strict=True):
            assert second.by_mode == pytest.approx(first.by_mode, rel=1e-7)


@pytest.mark.parametrize("criterion", Criterion)
def test_splitting_a_ply_does_not_move_the_first_failure(criterion):
    rng = np.random.default_rng(12)
    for _ in range(8):
        made = analyse(layup(TAPE, *rng.uniform(-90.0, 90.0, 3)))
        whole = strength_plies(made, KnockDowns())
        cut = rng.uniform(0.1, 0.9)
        halves = tuple(
            dataclasses.replace(whole[1], thickness=part * whole[1].thickness)
            for part in (cut, 1.0 - cut)
        )
        load = (rng.uniform(-20.0, 20.0, 3), rng.uniform(-5.0, 5.0, 3))
        split = (whole[0], *halves, whole[2])
        assert ply_factors(split, *load, criterion).min() == pytest.approx(
            ply_factors(whole, *load, criterion).min(), rel=1e-9
        )


def test_last_failure_is_never_below_the_first():
    rng = np.random.default_rng(2)
    for _ in range(20):
        made = analyse(layup(TAPE, *rng.uniform(-90.0, 90.0, 4)))
        report = check_strength(made, LoadCase(tuple(rng.uniform(-20.0, 20.0, 3))))
        assert report.last_factor >= report.first_factor * (1.0 - 1e-12)


def test_report_survives_storage_and_promises_nothing():
    report = check_strength(analyse(layup(CARBON, 0, 90)), PULL)
    assert unpack(StrengthReport, pack(report)) == report
    assert "nothing about the protection of a person" in report.caution
    assert report.criterion is Criterion.MAX_STRESS


@pytest.mark.parametrize("process", Process)
def test_knock_downs_of_the_process_are_stated_and_taken(process):
    made = analyse(layup(CARBON, 0, 90, process=process))
    usual = usual_knock_downs(process)
    report, whole = check_strength(made, PULL), check_strength(made, PULL, knock_downs=WHOLE)
    assert report.knock_downs == usual
    assert report.first_factor == pytest.approx(usual.tension * whole.first_factor, rel=1e-9)
    own = KnockDowns(tension=0.5)
    assert check_strength(made, PULL, knock_downs=own).first_factor == pytest.approx(
        0.5 * whole.first_factor, rel=1e-9
    )


@pytest.mark.parametrize(
    ("force", "mode"),
    [
        ((10.0, 0.0, 0.0), Mode.TENSION_1),
        ((-10.0, 0.0, 0.0), Mode.COMPRESSION_1),
        ((0.0, 10.0, 0.0), Mode.TENSION_2),
        ((0.0, -10.0, 0.0), Mode.COMPRESSION_2),
        ((0.0, 0.0, 10.0), Mode.SHEAR),
    ],
)
def test_the_mode_of_a_single_load_is_named(force, mode):
    made = analyse(layup(TAPE, 0, 0))
    report = check_strength(made, LoadCase(force))
    margin = report.margins[0]
    assert margin.mode is mode
    assert margin.by_mode[tuple(Mode).index(mode)] == margin.factor
    assert sum(factor < 1e9 * margin.factor for factor in margin.by_mode) == 1
    assert mode.value in report.finding
    assert f"at {report.first_factor:.2f} times" in report.finding


@pytest.mark.parametrize(
    "criterion", [Criterion.MAX_STRESS, Criterion.MAX_STRAIN, Criterion.HASHIN]
)
def test_the_least_mode_is_the_margin_where_modes_are_judged_alone(criterion):
    rng = np.random.default_rng(4)
    for _ in range(10):
        made = analyse(layup(TAPE, *rng.uniform(-90.0, 90.0, 3)))
        load = LoadCase(tuple(rng.uniform(-20.0, 20.0, 3)), tuple(rng.uniform(-5.0, 5.0, 3)))
        for margin in check_strength(made, load, criterion).margins:
            assert min(margin.by_mode) == pytest.approx(margin.factor, rel=1e-12)


@pytest.mark.parametrize("criterion", Criterion)
def test_strains_that_a_load_makes_give_the_margins_of_that_load(criterion):
    made = analyse(layup(TAPE, 0, 60, -60))
    load = LoadCase((10.0, 4.0, 3.0), (0.5, 0.2, -0.3))
    answer = np.linalg.solve(made.stiffness.matrix(), [*load.force, *load.moment])
    strains = StrainCase(tuple(answer[:3].tolist()), tuple(answer[3:].tolist()))
    by_load, by_strain = (check_strength(made, case, criterion) for case in (load, strains))
    for first, second in zip(by_load.margins, by_strain.margins, strict=True):
        assert first.by_mode == pytest.approx(second.by_mode, rel=1e-9)
        assert first.factor == pytest.approx(second.factor, rel=1e-9)
    # strains do not move from a failed ply to the others
    assert by_strain.last_factor == max(margin.factor for margin in by_strain.margins)


def test_voids_weaken_shear():
    sound, porous = (
        check_strength(analyse(layup(TAPE, 0, void_share=void)), LoadCase((0.0, 0.0, 1.0)))
        for void in (0.0, 0.03)
    )
    assert porous.first_factor / sound.first_factor == pytest.approx(
        0.79 / 0.97, rel=1e-9
    )  # the ply is also thicker by its voids


def test_a_cloth_without_strengths_is_named():
    cloth = dataclasses.replace(CARBON, strengths=None)
    with pytest.raises(MaterialError) as caught:
        check_strength(analyse(layup(cloth, 0)), PULL)
    assert caught.value.where == CARBON.name


@pytest.mark.parametrize("force", [(0.0, 0.0, 0.0), (math.nan, 0.0, 0.0)])
def test_no_load_is_refused(force):
    with pytest.raises(InputError, match="load case"):
        LoadCase(force)


def test_kernels_take_plies_alone():
    """The kernels need no layup: a caller with measured plies uses them directly."""
    ply = StrengthPly(
        Lamina(20e3, 20e3, 0.1, 3e3), Strengths(250.0, 200.0, 250.0, 200.0, 50.0), 0.0, 0.5
    )
    factors = ply_factors((ply,), (1.0, 0.0, 0.0), (0.0, 0.0, 0.0), Criterion.TSAI_WU)
    assert factors.min() == pytest.approx(125.0, rel=1e-9)
    assert last_failure((ply, ply), (1.0, 0.0, 0.0)) == pytest.approx(250.0, rel=1e-9)


@pytest.mark.parametrize("share", [0.0, 1.1, math.nan])
def test_a_knock_down_is_a_share(share):
    with pytest.raises(InputError, match="knock-down in shear"):
        KnockDowns(shear=share)
