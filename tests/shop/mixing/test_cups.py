from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.laminate.materials import load_materials
from laywright.shop.mixing.cups import Need, fill_cups, hardener_error, pot_life

RESIN = load_materials().resin("Laminating epoxy, slow hardener")


def plies(masses: dict[int, float], minutes: float = 0.0) -> list[Need]:
    return [Need(f"ply {number}", number, mass, minutes) for number, mass in masses.items()]


def test_pot_life_halves_for_each_ten_degrees():
    assert pot_life(RESIN, RESIN.pot_life_temperature_c) == RESIN.pot_life_minutes
    assert pot_life(RESIN, 13.0) == pytest.approx(4.0 * pot_life(RESIN, 33.0))
    (cup,) = fill_cups(plies({1: 50.0}), RESIN, 100.0, 1.0, 33.0)
    assert cup.use_by_minutes == 30.0


def test_error_of_the_hardener():
    """20 g at 100:30 need 4.6 g of hardener: half a gram is 11 percent (common practice)."""
    assert hardener_error(4.6, 4.6, 1.0) == pytest.approx(0.109, abs=0.001)
    assert hardener_error(5.0, 4.6, 1.0) == pytest.approx(0.9 / 4.6, rel=1e-12)


def test_a_ply_too_large_for_a_cup_is_shared_out_evenly():
    cups = fill_cups(plies({4: 250.0}), RESIN, 100.0, 0.01, 21.0)
    assert [cup.plies for cup in cups] == [(4,)] * 3
    masses = [cup.scale_after_hardener for cup in cups]
    assert max(masses) - min(masses) < 0.05


def test_cups_are_as_even_as_the_order_allows():
    """Greedy filling would give 90 and 20; the same two cups can be 60 and 50."""
    cups = fill_cups(plies({1: 30.0, 2: 30.0, 3: 30.0, 4: 20.0}), RESIN, 100.0, 0.01, 21.0)
    assert [cup.plies for cup in cups] == [(1, 2), (3, 4)]


def test_a_cup_holds_what_hands_lay_before_it_gels():
    """At 23 degC a cup lasts 60 minutes, 8 of them for mixing: two plies of 25 minutes each."""
    cups = fill_cups(plies(dict.fromkeys((1, 2, 3, 4), 20.0), 25.0), RESIN, 100.0, 0.01, 23.0)
    assert [cup.plies for cup in cups] == [(1, 2), (3, 4)]
    assert [cup.hands_minutes for cup in cups] == [58.0, 58.0]
    assert [cup.stir_at_minutes for cup in cups] == [0.0, 58.0]
    (slow,) = fill_cups(plies({1: 48.0}, 100.0), RESIN, 100.0, 1.0, 23.0)
    assert slow.is_slow, "halves of it would be too small for the scale"
    halves = fill_cups(plies({1: 40.0}, 100.0), RESIN, 100.0, 0.01, 23.0)
    assert [cup.plies for cup in halves] == [(1,), (1,)]
    assert not any(cup.is_slow for cup in halves)


def test_a_tiny_cup_takes_over_a_share_of_its_neighbour():
    """40 g beside 80 g on a scale of 1 g: even cups keep the hardener within 5 percent."""
    cups = fill_cups(plies({1: 40.0, 2: 40.0, 3: 40.0}), RESIN, 100.0, 1.0, 21.0)
    assert len(cups) == 2
    assert cups[0].plies[-1] == cups[1].plies[0] == 2
    assert max(cup.hardener_error for cup in cups) <= 0.05


def test_a_scale_too_coarse_for_any_cup_is_refused_with_what_would_do():
    with pytest.raises(InputError) as caught:
        fill_cups(plies({1: 12.0}), RESIN, 100.0, 1.0, 21.0)
    assert caught.value.where == "scale for the cup of ply 1"
    assert "mix 44 g or more" in caught.value.remedy
    (cup,) = fill_cups(plies({1: 44.0}), RESIN, 100.0, 1.0, 21.0)
    assert cup.hardener_error <= 0.10


def test_a_cup_that_gels_before_it_is_mixed_is_refused():
    fast = load_materials().resin("Laminating epoxy, fast hardener")
    assert pot_life(fast, 36.0) > 8.0 > pot_life(fast, 37.0)
    fill_cups(plies({1: 50.0}), fast, 100.0, 0.1, 36.0)
    with pytest.raises(InputError) as caught:
        fill_cups(plies({1: 50.0}), fast, 100.0, 0.1, 37.0)
    assert caught.value.where == f"pot life of {fast.name}"
    assert caught.value.found == "8 minutes at 37 degC"
    assert caught.value.needed == "more than the 8 minutes that mixing takes"
    assert caught.value.remedy == "take a slower hardener or a cooler shop"


def test_a_scale_that_is_just_fine_enough_is_taken():
    """Ten percent is allowed: one step of 1 g off by half of it and 5 g or more to weigh."""
    ratio = RESIN.hardener_ratio / 100.0
    edge = 1.0 / 0.10 * (1.0 + 1.0 / ratio)
    (cup,) = fill_cups(plies({1: edge * 1.01}), RESIN, 100.0, 1.0, 21.0)
    assert cup.hardener_error <= 0.10
    with pytest.raises(InputError) as caught:
        fill_cups(plies({1: 8.0, 2: 4.0}), RESIN, 100.0, 1.0, 21.0)
    assert caught.value.where == "scale for the cup of ply 1 and ply 2"
    assert "an error of 10% at most" in caught.value.needed


def test_a_cup_never_goes_past_its_limit_by_the_steps_of_the_scale():
    for mass in range(90, 101):
        for step in (0.1, 0.5, 1.0):
            cups = fill_cups(plies({1: float(mass)}), RESIN, 100.0, step, 21.0)
            assert max(cup.scale_after_hardener for cup in cups) <= 100.0
            held = sum(cup.scale_after_hardener for cup in cups)
            assert mass - 1e-9 <= held <= mass + 2.0 * step * len(cups)
            assert [cup.number for cup in cups] == list(range(1, len(cups) + 1))
    (one,) = fill_cups(plies({1: 96.0}), RESIN, 100.0, 1.0, 21.0)
    assert one.scale_after_hardener == 96.0


@given(
    st.lists(st.floats(20.0, 150.0), min_size=1, max_size=6),
    st.lists(st.floats(0.0, 80.0), min_size=6, max_size=6),
    st.floats(15.0, 30.0),
)
def test_cups_keep_mass_minutes_and_order(masses, minutes, temperature):
    needs = [
        Need(f"ply {k}", k, m, t) for k, (m, t) in enumerate(zip(masses, minutes, strict=False))
    ]
    cups = fill_cups(needs, RESIN, 100.0, 0.01, temperature)
    assert sum(cup.scale_after_hardener for cup in cups) >= sum(masses) - 1e-6
    hands = sum(need.minutes for need in needs) + 8.0 * len(cups)
    assert sum(cup.hands_minutes for cup in cups) == pytest.approx(hands)
    assert not any(cup.is_slow for cup in cups), "a scale this fine allows cups of any size"
    order = [ply for cup in cups for ply in cup.plies]
    assert order == sorted(order)
