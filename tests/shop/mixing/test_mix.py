from __future__ import annotations

import dataclasses
import math
import re
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError, MaterialError
from laywright.laminate import materials
from laywright.laminate.materials import load_materials
from laywright.shop.mixing.mix import (
    MixPlan,
    MixSettings,
    PlyCloth,
    plan_mix,
)
from laywright.values import pack, unpack

RESIN = load_materials().resin("Laminating epoxy, slow hardener")
EXACT = MixSettings(
    extra_share=0.0, scale_resolution_g=0.01, square_metre_minutes=0.0, ply_minutes=0.0
)
QUICK = dataclasses.replace(MixSettings(), square_metre_minutes=0.0, ply_minutes=0.0)


def cloth(*masses: float) -> tuple[PlyCloth, ...]:
    """Plies of the given dry masses in g, cut from cloth of 200 g/m^2."""
    return tuple(
        PlyCloth(number, "cloth", mass / 200.0 * 1e6, 200.0)
        for number, mass in enumerate(masses, start=1)
    )


@given(
    st.lists(st.floats(1.0, 400.0), min_size=1, max_size=8),
    st.floats(0.2, 0.7),
    st.floats(0.0, 0.5),
    st.floats(0.0, 30.0),
    st.floats(30.0, 300.0),
    st.sampled_from([0.01, 0.1, 0.5, 1.0, 2.0]),
    st.floats(10.0, 110.0),
)
def test_cups_add_up_hold_enough_and_keep_the_limit(masses, share, extra, loss, limit, step, ratio):
    resin = dataclasses.replace(RESIN, hardener_ratio=ratio)
    settings = MixSettings(extra, loss, limit, step)
    held = sum(masses) * share / (1.0 - share)
    wanted = held * (1.0 + extra) + loss
    hardener = wanted * ratio / (100.0 + ratio) / math.ceil(wanted / limit)
    if hardener < 25.0 * step:  # where the scale may be too coarse, another test asks for more
        return
    plan = plan_mix(cloth(*masses), resin, share, settings)
    assert plan.resin_g == math.fsum(cup.resin_g for cup in plan.cups)
    assert plan.hardener_g == math.fsum(cup.hardener_g for cup in plan.cups)
    assert plan.mix_g == plan.resin_g + plan.hardener_g
    assert plan.laminate_resin_g == pytest.approx(held, rel=1e-9)
    assert wanted - 1e-6 <= plan.mix_g <= wanted + len(plan.cups) * step * (3.0 + ratio / 50.0)

    for number, cup in enumerate(plan.cups, start=1):
        assert cup.number == number
        assert cup.resin_g + cup.hardener_g <= limit + 1e-9
        assert cup.scale_after_resin == cup.resin_g
        assert cup.scale_after_hardener == pytest.approx(cup.resin_g + cup.hardener_g, abs=1e-9)
        for reading in (cup.scale_after_resin, cup.scale_after_hardener):
            assert reading / step == pytest.approx(round(reading / step), abs=1e-6)
        off = abs(cup.hardener_g - cup.resin_g * ratio / 100.0)
        assert off <= max(0.5, 1.0 - ratio / 100.0) * step + 1e-9

    order = [ply for cup in plan.cups for ply in cup.plies]
    assert order == sorted(order)
    assert set(order) == set(range(1, len(masses) + 1))


@given(st.lists(st.floats(5.0, 60.0), min_size=1, max_size=7), st.floats(70.0, 200.0))
def test_no_order_of_laying_needs_fewer_cups(masses, limit):
    """Against a walk through all ways of closing a cup after a ply."""
    settings = dataclasses.replace(EXACT, cup_limit_g=limit)
    plan = plan_mix(cloth(*masses), RESIN, 0.5, settings)
    room = limit - 0.01 * (2.5 + 2.0 * RESIN.hardener_ratio / 100.0)
    fewest = len(masses)
    for pattern in range(2 ** (len(masses) - 1)):
        groups = [[masses[0]]]
        for place, mass in enumerate(masses[1:]):
            if pattern >> place & 1:
                groups.append([mass])
            else:
                groups[-1].append(mass)
        if all(math.fsum(group) <= room for group in groups):
            fewest = min(fewest, len(groups))
    assert len(plan.cups) == fewest


def test_a_small_worked_example():
    """60 g and 40 g of cloth at 50:50: 100 g of mix at 100:30 are 76.9 g and 23.1 g."""
    plan = plan_mix(cloth(60.0, 40.0), RESIN, 0.5, dataclasses.replace(EXACT, cup_limit_g=101.0))
    (cup,) = plan.cups
    assert cup.plies == (1, 2)
    assert cup.resin_g == pytest.approx(76.93, abs=0.011)
    assert cup.hardener_g == pytest.approx(23.08, abs=0.011)
    assert plan.cloth_g == pytest.approx(100.0)
    assert plan.ply_cloth_g == pytest.approx((60.0, 40.0))
    assert plan.ply_resin_g == pytest.approx((60.0, 40.0))
    assert plan.ratio_texts == (
        "50% resin and 50% cloth, by mass of the laminate",
        "100.0 parts of resin to 100 parts of cloth, by mass",
        "100 g of resin for 100 g of cloth",
    )


def test_the_trap_of_forty_to_sixty():
    """100 g of cloth at 40 percent resin take 66.7 g, not 40 g and not 150 g."""
    plan = plan_mix(cloth(100.0), RESIN, 0.40, EXACT)
    assert plan.laminate_resin_g == pytest.approx(200.0 / 3.0)
    assert plan.ratio_texts[0].startswith("40% resin and 60% cloth")
    assert plan.ratio_texts[1].startswith("66.7 parts")


def test_pieces_of_one_ply_are_taken_together_and_order_does_not_matter():
    pieces = (
        PlyCloth(2, "cloth", 1e5, 200.0),
        PlyCloth(1, "cloth", 2e5, 200.0),
        PlyCloth(2, "cloth", 3e5, 200.0),
    )
    plan = plan_mix(pieces, RESIN, 0.5, EXACT)
    assert plan.ply_numbers == (1, 2)
    assert plan.ply_cloth_g == pytest.approx((40.0, 80.0))
    again = plan_mix(pieces[::-1], RESIN, 0.5, EXACT)
    assert again.cups == plan.cups


def test_a_ply_may_have_a_resin_share_of_its_own():
    pieces = (
        PlyCloth(1, "mat", 1e5, 300.0, 2.0 / 3.0),
        PlyCloth(2, "cloth", 1e5, 200.0),
    )
    plan = plan_mix(pieces, RESIN, 0.5, EXACT)
    assert plan.ply_resin_g == pytest.approx((60.0, 20.0))
    assert plan.resin_share == pytest.approx(80.0 / 130.0)


def test_a_coarse_scale_is_remarked_on():
    coarse = plan_mix(cloth(45.0), RESIN, 0.5, QUICK)
    assert "coarse for cup 1" in " ".join(coarse.remarks)
    fine = plan_mix(cloth(45.0), RESIN, 0.5, EXACT)
    assert "coarse" not in " ".join(fine.remarks)


def test_remarks_on_hot_and_hasty_cups():
    full = plan_mix(cloth(300.0), RESIN, 0.5, dataclasses.replace(QUICK, cup_limit_g=400.0))
    assert "sets sooner and runs hotter" in " ".join(full.remarks)
    assert "smoke, melt and burn" in " ".join(full.remarks)
    assert "would reach 271 degC: an upper bound" in " ".join(full.remarks)
    hasty = plan_mix(cloth(50.0), RESIN, 0.5, MixSettings(temperature_c=44.0))
    assert "take a slower hardener" in " ".join(hasty.remarks)
    assert "rough here" in " ".join(hasty.remarks)


def test_steps_say_the_order_and_the_care():
    plan = plan_mix(cloth(60.0, 60.0), RESIN, 0.5, MixSettings())
    text = "\n".join(plan.steps)
    assert "resin to the first reading, then hardener to the second" in text
    assert "four minutes" in text
    assert "time of the first stir" in text
    assert "30 parts to 100 parts" in plan.steps[-1]
    assert "Never add hardener" in plan.steps[-1]


def test_coats_are_mixed_by_area_and_fill_coats_wait_for_the_gel():
    """A part of 0.5 m^2: two seal coats of 60 g/m^2 and two fill coats of 90 g/m^2."""
    pieces = (PlyCloth(1, "cloth", 6e5, 200.0, None, 5e5), PlyCloth(2, "c", 6e5, 200.0, None, 5e5))
    settings = dataclasses.replace(EXACT, seal_coats=2, fill_coats=2, cup_limit_g=300.0)
    plan = plan_mix(pieces, RESIN, 0.5, settings)
    assert plan.coats_g == pytest.approx(0.5 * (2 * 60.0 + 2 * 90.0))
    assert plan.laminate_resin_g == pytest.approx(240.0)
    assert plan.untrimmed_g == pytest.approx(240.0 + 240.0 + 150.0)
    assert plan.mix_g == pytest.approx(390.0, abs=0.1)
    assert plan.resin_share == pytest.approx(0.5), "coats are no part of the laminate's ratio"
    uses = [cup.uses for cup in plan.cups]
    assert uses[0][:2] == ("seal coat 1", "seal coat 2")
    assert uses[-2:] == [("fill coat 1",), ("fill coat 2",)]
    gel = 8.0 * 60.0
    last, first, second = plan.cups[-3:]
    assert first.stir_at_minutes == pytest.approx(last.stir_at_minutes + last.hands_minutes + gel)
    assert second.stir_at_minutes == pytest.approx(
        first.stir_at_minutes + first.hands_minutes + gel
    )
    assert [cup.number for cup in plan.cups] == list(range(1, len(plan.cups) + 1))


def test_hands_slower_than_the_gel_are_warned_of():
    """A square metre takes an hour: ten plies of one take ten, and the first gels after eight."""
    slow = plan_mix(cloth(*[200.0] * 10), RESIN, 0.5, MixSettings(scale_resolution_g=0.01))
    assert sum(slow.ply_minutes) == pytest.approx(10 * 65.0)
    assert slow.laying_minutes == pytest.approx(650.0 + 8.0 * len(slow.cups))
    assert "Hands are slower than the gel" in " ".join(slow.remarks)
    quick = plan_mix(cloth(*[200.0] * 10), RESIN, 0.5, EXACT)
    assert "Hands are slower" not in " ".join(quick.remarks)
    whole = plan_mix(cloth(42.0), RESIN, 0.5, MixSettings(square_metre_minutes=400.0))
    assert "slower than the cup" in " ".join(whole.remarks)


def test_plan_survives_storage_and_knows_its_inputs():
    pieces = cloth(60.0, 40.0)
    plan = plan_mix(pieces, RESIN, 0.5, MixSettings())
    assert unpack(MixPlan, pack(plan)) == plan
    assert unpack(MixSettings, pack(MixSettings())) == MixSettings()
    assert plan.digest == plan_mix.digest(pieces, RESIN, 0.5, MixSettings())
    assert plan.digest != plan_mix.digest(pieces, RESIN, 0.5, MixSettings(temperature_c=22.0))


@pytest.mark.parametrize(
    ("call", "where"),
    [
        (lambda: plan_mix((), RESIN, 0.5, EXACT), "mixing plan"),
        (lambda: plan_mix(cloth(60.0), RESIN, 50.0, EXACT), "ply 1: resin share"),
        (lambda: plan_mix((PlyCloth(3, "c", 0.0, 200.0),), RESIN, 0.5, EXACT), "ply 3: area"),
        (
            lambda: plan_mix((PlyCloth(1, "c", 1e5, 0.2),), RESIN, 0.5, EXACT),
            "ply 1: areal weight",
        ),
        (lambda: MixSettings(cup_limit_g=5.0, scale_resolution_g=1.0), "cup limit"),
        (lambda: MixSettings(temperature_c=210.0), "shop temperature"),
        (lambda: MixSettings(extra_share=5.0), "extra share"),
        (lambda: MixSettings(scale_resolution_g=0.0), "scale resolution"),
        (lambda: MixSettings(fill_coats=-1), "fill coats"),
        (lambda: MixSettings(square_metre_minutes=-1.0), "time for a square metre"),
        (lambda: plan_mix(cloth(5.0), RESIN, 0.5, MixSettings()), "scale for the cup of ply 1"),
    ],
)
def test_bad_input_is_named(call, where):
    with pytest.raises(InputError) as caught:
        call()
    assert caught.value.where == where


@pytest.mark.parametrize(
    ("call", "sentence"),
    [
        (
            lambda: plan_mix((), RESIN, 0.5, EXACT),
            "mixing plan: found no ply, needed at least one; add plies to the layup",
        ),
        (
            lambda: plan_mix((PlyCloth(3, "c", 0.9, 200.0),), RESIN, 0.5, EXACT),
            "ply 3: area: found 0.9 mm^2, needed",
        ),
        (
            lambda: plan_mix((PlyCloth(1, "c", 1e5, 4.9),), RESIN, 0.5, EXACT),
            "ply 1: areal weight: found 4.9 g/m^2, needed",
        ),
        (
            lambda: plan_mix((PlyCloth(2, "c", 1e5, 200.0, None, 1.6e5),), RESIN, 0.5, EXACT),
            "ply 2: covered area: found 160000 mm^2, needed",
        ),
        (
            lambda: plan_mix((PlyCloth(1, "c", 1e5, 200.0, 0.96),), RESIN, 0.5, EXACT),
            "ply 1: resin share: found 0.96, needed",
        ),
        (
            lambda: plan_mix(cloth(60.0), RESIN, 0.5, EXACT, coupon_g=10000.5),
            "mix for coupons: found 10000.5 g, needed",
        ),
    ],
)
def test_bad_input_is_said_in_one_sentence(call, sentence):
    with pytest.raises(InputError) as caught:
        call()
    assert str(caught.value).startswith(sentence)


@pytest.mark.parametrize(
    "ply",
    [
        PlyCloth(1, "c", 1.0, 200.0),
        PlyCloth(1, "c", 1e5, 5.0),
        PlyCloth(1, "c", 1e5, 3000.0),
        PlyCloth(1, "c", 1e5, 200.0, None, 0.0),
        PlyCloth(1, "c", 1e5, 200.0, None, 1.5e5),
        PlyCloth(1, "c", 1e5, 200.0, 0.05),
        PlyCloth(1, "c", 1e5, 200.0, 0.95),
    ],
)
def test_the_ends_of_what_is_allowed_are_allowed(ply):
    fine = dataclasses.replace(EXACT, scale_resolution_g=1e-3, cup_limit_g=1000.0)
    own = 0.5 if ply.resin_share is None else ply.resin_share
    plies = (dataclasses.replace(ply, ply=2), *cloth(60.0))
    assert plan_mix(plies, RESIN, 0.5, fine).ply_resin_g[1] == pytest.approx(
        ply.area_mm2 * ply.areal_weight * 1e-6 * own / (1.0 - own)
    )


def test_a_coat_takes_half_the_time_of_a_ply_and_is_numbered_where_there_are_several():
    """0.5 m^2 at 20 minutes for a square metre: 10 minutes for a ply, 5 for a coat."""
    pieces = (PlyCloth(1, "c", 5e5, 200.0, None, 5e5), PlyCloth(2, "c", 5e5, 200.0, None, 5e5))
    settings = dataclasses.replace(
        EXACT, square_metre_minutes=20.0, seal_coats=1, fill_coats=1, cup_limit_g=400.0
    )
    plan = plan_mix(pieces, RESIN, 0.5, settings)
    assert [cup.uses[0] for cup in plan.cups] == ["seal coat", "fill coat"]
    assert plan.cups[0].stir_at_minutes == 0.0
    assert plan.cups[0].hands_minutes == pytest.approx(8.0 + 5.0 + 10.0 + 10.0)
    assert plan.cups[1].hands_minutes == pytest.approx(8.0 + 5.0)
    assert plan.laying_minutes == pytest.approx(plan.cups[0].hands_minutes)


def test_a_plate_of_coupons_shares_the_cups_of_the_plies():
    """What the plies and the plate hold adds up to what the cups hold, ply by ply."""
    settings = MixSettings(extra_share=0.0, scale_resolution_g=0.01, fill_coats=1)
    cloth = tuple(PlyCloth(n, "glass", 2e5, 200.0) for n in (1, 2, 3))
    alone = plan_mix(cloth, RESIN, 0.5, settings)
    both = plan_mix(cloth, RESIN, 0.5, settings, 12.0)
    assert both.mix_g - alone.mix_g == pytest.approx(12.0, abs=0.1)
    assert both.coats_g == alone.coats_g
    assert both.untrimmed_g == alone.untrimmed_g
    assert both.cups[-1] == dataclasses.replace(
        alone.cups[-1], stir_at_minutes=both.cups[-1].stir_at_minutes
    )
    with pytest.raises(InputError, match="mix for coupons"):
        plan_mix(cloth, RESIN, 0.5, settings, -1.0)


def test_a_resin_without_a_ratio_is_named_and_never_guessed(tmp_path):
    """The hardener's share has no default: a card without it is no resin."""
    folder = Path(materials.__file__).parent
    source = next(path for path in folder.rglob("*.toml") if "slow hardener" in path.read_text())
    text = source.read_text(encoding="utf-8")
    bare = re.sub(r"\[hardener_ratio\].*?(?=\n\[)", "", text, flags=re.DOTALL)
    assert bare != text
    (tmp_path / "mine.toml").write_text(bare, encoding="utf-8")
    with pytest.raises(MaterialError, match=r"mine\.toml: hardener_ratio: found nothing"):
        load_materials(tmp_path).resin("Laminating epoxy, slow hardener")
