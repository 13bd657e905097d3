from __future__ import annotations

import dataclasses

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.shop.curing.cure_settings import CureSettings
from laywright.shop.mixing.mix import MixSettings, PlyCloth
from laywright.shop.plan import ShopSettings, plan_shop
from laywright.shop.record.learning import learn
from laywright.shop.record.record import Readings, weigh_in

MATERIALS = load_materials()
CLOTH = MATERIALS.cloth("E-glass twill weave 200 g/m^2")
LAMINATE = analyse(
    Layup((Ply(CLOTH, 0.0),) * 3, MATERIALS.resin("Laminating epoxy, slow hardener"))
)
PIECES = tuple(PlyCloth(n, CLOTH.name, 4e5, 200.0) for n in (1, 2, 3))
SETTINGS = MixSettings()
SHOP = plan_shop(PIECES, LAMINATE, ShopSettings(SETTINGS, CureSettings(mould_softening_c=70.0)))


def made(share: float, lost: float = 0.05, pace: float = 1.0):
    """A part with this resin share, this loss and this pace; demo data, invented."""
    cloth = SHOP.mix.cloth_g
    held = cloth * share / (1.0 - share)
    mixing = 8.0 * len(SHOP.mix.cups)
    return weigh_in(
        LAMINATE,
        SHOP,
        Readings(
            cloth,
            held * (1.0 + lost),
            cloth + held,
            laying_minutes=mixing + pace * sum(SHOP.mix.ply_minutes),
        ),
    )


@given(
    st.lists(
        st.tuples(st.floats(0.3, 0.7), st.floats(0.0, 0.4), st.floats(0.3, 3.0)),
        min_size=1,
        max_size=5,
    )
)
def test_what_was_done_comes_back_as_means(parts):
    learnt = learn([made(*part) for part in parts], 0.5, SETTINGS)
    count = len(parts)
    share, lost, pace = (sum(column) / count for column in zip(*parts, strict=True))
    assert learnt.resin_share.proposed == pytest.approx(100.0 * share)
    assert learnt.extra_share.proposed == pytest.approx(100.0 * lost, abs=1e-6)
    assert learnt.square_metre_minutes.proposed == pytest.approx(60.0 * pace)
    assert learnt.ply_minutes.proposed == pytest.approx(5.0 * pace)
    assert learnt.resin_share.records.count == count


def test_a_lesson_is_shown_before_it_is_taken():
    learnt = learn([made(0.44, 0.12), made(0.46, 0.16)], 0.5, SETTINGS)
    assert [str(lesson) for lesson in learnt.lessons] == [
        "resin share: 45 +- 1.4 % from 2 records, the plan has 50 %",
        "extra for losses: 14 +- 2.8 % from 2 records, the plan has 5 %",
    ]
    assert learnt.extra_share.proposed == pytest.approx(14.0)


def test_a_plan_that_was_met_teaches_nothing():
    assert learn([made(0.5)], 0.5, SETTINGS).lessons == ()
    nothing = learn([], 0.5, SETTINGS)
    assert nothing.lessons == ()


def test_the_next_plan_with_what_was_learnt_meets_the_part():
    learnt = learn([made(0.44, 0.12, 1.4)], 0.5, SETTINGS)
    better = dataclasses.replace(
        SETTINGS,
        extra_share=learnt.extra_share.proposed / 100.0,
        square_metre_minutes=learnt.square_metre_minutes.proposed,
        ply_minutes=learnt.ply_minutes.proposed,
    )
    shop = plan_shop(
        tuple(
            dataclasses.replace(p, resin_share=learnt.resin_share.proposed / 100.0) for p in PIECES
        ),
        LAMINATE,
        ShopSettings(better, CureSettings(mould_softening_c=70.0)),
    )
    record = made(0.44, 0.12, 1.4)
    assert shop.mix.untrimmed_g == pytest.approx(record.part_g)
    assert shop.mix.mix_g == pytest.approx(1.12 * shop.mix.laminate_resin_g, abs=4.0)
    assert sum(shop.mix.ply_minutes) == pytest.approx(1.4 * sum(SHOP.mix.ply_minutes))


@given(st.floats(0.5, 2.0), st.floats(0.5, 2.0))
def test_the_same_hands_teach_nothing_twice(pace, taken):
    """A record planned at another pace still says the same minutes."""
    settings = dataclasses.replace(
        SETTINGS, square_metre_minutes=60.0 * taken, ply_minutes=5.0 * taken
    )
    (lesson,) = [
        lesson
        for lesson in [learn([made(0.5, pace=pace)], 0.5, settings).square_metre_minutes]
        if lesson is not None
    ]
    assert lesson.present == 60.0 * taken
    assert lesson.proposed == pytest.approx(60.0 * pace)
