"""Stages: pure functions whose results know which inputs made them."""

import dataclasses
from dataclasses import dataclass

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright import values
from laywright.errors import Cancelled
from laywright.progress import silent
from laywright.stage import Stage, stage


@dataclass(frozen=True)
class Cloth:
    width: float
    name: str = "twill"


@dataclass(frozen=True)
class Cut:
    length: float
    digest: str = ""


@dataclass(frozen=True)
class Cost:
    money: float
    digest: str = ""


@stage("Cut", version=1)
def cut(cloth: Cloth, share: float = 0.5, *, progress=silent) -> Cut:
    """Cut a share of the width."""
    progress(1.0, "cutting")
    return Cut(cloth.width * share)


@stage("Cost", version=1)
def cost(piece: Cut, price: float) -> Cost:
    return Cost(piece.length * price)


NUMBERS = st.floats(-1e6, 1e6)


def test_result_is_what_the_function_gives_with_the_digest_of_its_inputs():
    result = cut(Cloth(1000.0), 0.25)
    assert dataclasses.replace(result, digest="") == Cut(250.0)
    assert result.digest == cut.digest(Cloth(1000.0), 0.25)
    assert len(result.digest) == 16


def test_stage_keeps_the_face_of_its_function():
    assert isinstance(cut, Stage)
    assert (cut.title, cut.version, cut.__name__) == ("Cut", 1, "cut")
    assert cut.__doc__ == "Cut a share of the width."
    assert cut.__wrapped__.__annotations__["cloth"] is Cloth


def test_ways_to_give_the_same_inputs_give_the_same_digest():
    digests = {
        cut.digest(Cloth(1000.0)),
        cut.digest(Cloth(1000.0), 0.5),
        cut.digest(cloth=Cloth(1000.0), share=0.5),
        cut.digest(share=0.5, cloth=Cloth(1000.0, "twill")),
    }
    assert len(digests) == 1


@given(NUMBERS, NUMBERS)
def test_another_number_gives_another_digest(one, other):
    same_digest = cut.digest(Cloth(one)) == cut.digest(Cloth(other))
    assert same_digest is (repr(one) == repr(other))


def test_progress_is_no_input_and_is_handed_on():
    heard = []
    result = cut(Cloth(10.0), progress=lambda share, doing="": heard.append((share, doing)))
    assert heard == [(1.0, "cutting")]
    assert result == cut(Cloth(10.0))


def test_a_stop_gets_out():
    def stop(share, doing="", /):
        raise Cancelled(doing)

    with pytest.raises(Cancelled):
        cut(Cloth(10.0), progress=stop)


def test_title_and_version_of_the_method_count():
    def same(cloth: Cloth) -> Cut:
        return Cut(cloth.width)

    digests = {
        stage(title, version=version)(same).digest(Cloth(1.0))
        for title in ("Cut", "Trim")
        for version in (1, 2)
    }
    assert len(digests) == 4


def test_a_change_far_upstream_shows_downstream():
    price = 3.0
    before, after = cut(Cloth(1000.0)), cut(Cloth(1000.0), 0.5000001)
    assert cost(before, price).digest != cost(after, price).digest
    assert cost(before, price).digest == cost(cut(Cloth(1000.0)), price).digest


def test_result_of_an_earlier_stage_stands_by_its_digest_alone():
    piece = cut(Cloth(1000.0))
    assert cost.digest(piece, 1.0) == cost.digest(dataclasses.replace(piece, length=0.0), 1.0)


def test_renew_computes_only_what_is_out_of_date():
    calls = []

    @stage("Counted", version=1)
    def counted(cloth: Cloth) -> Cut:
        calls.append(cloth)
        return Cut(cloth.width)

    first = counted.renew(None, Cloth(1.0))
    assert counted.renew(first, Cloth(1.0)) is first
    second = counted.renew(first, Cloth(2.0))
    assert second == counted(Cloth(2.0)) != first
    assert calls == [Cloth(1.0), Cloth(2.0), Cloth(2.0)]


def test_a_result_without_digest_is_never_taken_for_up_to_date():
    fresh = cut.renew(Cut(999.0), Cloth(1000.0))
    assert fresh.length == 500.0


def test_wrong_inputs_are_refused_like_those_of_any_function():
    with pytest.raises(TypeError, match="missing a required argument: 'cloth'"):
        cut.digest()
    with pytest.raises(TypeError):
        cut(Cloth(1.0), width=3.0)


def test_stored_result_still_knows_its_inputs():
    result = cut(Cloth(1000.0))
    assert values.unpack(Cut, values.pack(result)).digest == cut.digest(Cloth(1000.0))
