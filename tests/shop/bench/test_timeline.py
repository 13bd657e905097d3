from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.shop.bench.timeline import Span, Timeline, WorkingDay, clock_text, plan_timeline
from laywright.values import pack, unpack

DAY = WorkingDay("08:00", "18:00")
H = 60.0


def starts(timeline: Timeline) -> list[str]:
    return [clock_text(entry.start_minutes) for entry in timeline.entries]


def test_steps_follow_each_other_and_add_up():
    made = plan_timeline([[Span("a", 60.0, 30.0)], [Span("b", 15.0)]], DAY)
    assert starts(made) == ["day 1, 08:00", "day 1, 09:30"]
    assert made.finish == "day 1, 09:45"
    assert made.hands_minutes == 75.0


def test_work_that_would_run_into_the_evening_waits_for_the_morning():
    made = plan_timeline([[Span("a", 9 * H)], [Span("b", 2 * H)], [Span("c", 0.5 * H)]], DAY)
    assert starts(made) == ["day 1, 08:00", "day 2, 08:00", "day 2, 10:00"]


def test_waiting_goes_on_through_the_night():
    made = plan_timeline([[Span("a", H, 24 * H)], [Span("b", H)]], DAY)
    assert starts(made) == ["day 1, 08:00", "day 2, 09:00"]


def test_work_longer_than_a_day_begins_in_the_morning():
    made = plan_timeline([[Span("a", H)], [Span("b", 12 * H)]], DAY)
    assert starts(made) == ["day 1, 08:00", "day 2, 08:00"]


def test_a_layup_is_begun_so_that_its_edge_can_be_cut_by_day():
    """Gel after 8 h, too hard after 16: begun at noon the knife comes at night."""
    run = [Span("lay up", H), Span("knife", 0.25 * H, earliest=8 * H, latest=16 * H)]
    made = plan_timeline([[Span("before", 4 * H)], run], DAY)
    assert made.remarks == ()
    first, knife = made.entries[1:]
    assert DAY.holds(knife.start_minutes, knife.hands_minutes)
    assert 8 * H <= knife.start_minutes - first.start_minutes <= 16 * H


def test_a_window_that_always_falls_into_the_night_is_told():
    run = [Span("lay up", H), Span("knife", H, earliest=12 * H, latest=12.5 * H)]
    made = plan_timeline([run], WorkingDay("09:00", "13:00"))
    assert made.remarks[0].startswith("knife: this falls between day 1, 21:00 and day 1, 21:30")
    assert made.entries[1].start_minutes - made.entries[0].start_minutes == 12 * H


spans = st.builds(Span, st.just("work"), st.floats(1.0, 300.0), st.floats(0.0, 2000.0))


@given(st.lists(spans, min_size=1, max_size=8))
def test_nothing_begins_before_what_is_before_it_is_over(steps):
    made = plan_timeline([[span] for span in steps], DAY)
    clock = 0.0
    for entry, span in zip(made.entries, steps, strict=True):
        assert entry.start_minutes >= clock
        assert DAY.holds(entry.start_minutes, entry.hands_minutes)
        clock = entry.start_minutes + span.hands_minutes + span.wait_minutes
        assert entry.ready_minutes == pytest.approx(clock)
    assert made.finish_minutes == pytest.approx(clock)
    assert unpack(Timeline, pack(made)) == made


@pytest.mark.parametrize(
    ("begins", "ends"), [("8", "18:00"), ("25:00", "26:00"), ("18:00", "8:00")]
)
def test_a_day_that_is_none_is_refused(begins, ends):
    with pytest.raises(InputError) as caught:
        WorkingDay(begins, ends)
    assert caught.value.where == "working day"
