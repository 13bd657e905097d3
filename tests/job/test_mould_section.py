"""The mould of a job: flat keys and its parts, each with units."""

from __future__ import annotations

import math

import pytest

from laywright.errors import LaywrightError
from laywright.job.mould_section import marks_datum, read_mould
from laywright.mould.body.compensation import Allowance, SpringInUse
from laywright.mould.body.settings import MouldBuild, MouldSettings


def test_nothing_said_gives_the_defaults():
    assert read_mould({}) == MouldSettings()


def test_every_part_is_read_with_its_unit():
    found = read_mould(
        {
            "run_off": "3 cm",
            "inside": {"build": "hollow with ribs", "wall": "0.4 cm", "vacuum": "0.5 bar"},
            "edge": {"flange": "20 mm", "pry_pockets": 3, "inscription": "HATCH B-1"},
            "allowances": {
                "coats": "200 um",
                "warming": "20 K",
                "expansion": "68e-6 1/K",
                "left_out": ["print shrinkage"],
                "closing": "0.7 %",
                "spring_in": "applied",
            },
            "pieces": {"most_pieces": 2, "flange": "6 cm", "least_draft": "3 deg"},
            "feet": {"number": 3, "height": "2 cm"},
            "plastic": {"price": 20.0, "currency": "GBP"},
        }
    )
    assert found.run_off == 30.0
    assert found.inside.build is MouldBuild.HOLLOW_WITH_RIBS
    assert (found.inside.wall, found.inside.vacuum) == pytest.approx((4.0, 0.05))
    assert (found.edge.flange, found.edge.pry_pockets) == (20.0, 3)
    assert found.edge.inscription == "HATCH B-1"
    assert (found.allowances.coats, found.allowances.warming) == pytest.approx((0.2, 20.0))
    assert found.allowances.left_out == (Allowance.SHRINKAGE,)
    assert found.allowances.closing == pytest.approx(0.007)
    assert found.allowances.spring_in is SpringInUse.APPLIED
    assert (found.pieces.most_pieces, found.pieces.flange) == (2, 60.0)
    assert found.pieces.least_draft == pytest.approx(math.radians(3.0))
    assert (found.feet.number, found.feet.height) == (3, 20.0)
    assert (found.plastic.price, found.plastic.currency) == (20.0, "GBP")


def test_nothing_has_a_price_and_pieces_ask_the_release_check_until_it_is_said():
    found = read_mould({})
    assert found.plastic.price is None
    assert (found.pieces.most_pieces, found.pieces.least_draft) == (None, None)


def test_marks_of_the_datum_are_asked_for_by_yes_or_no():
    assert not marks_datum({})
    assert marks_datum({"mark_datum": True, "base": "9 mm"})
    assert read_mould({"mark_datum": True}) == MouldSettings()
    with pytest.raises(LaywrightError, match="true or false"):
        marks_datum({"mark_datum": "yes"})


@pytest.mark.parametrize(
    ("wrong", "words"),
    [
        ({"inside": {"build": "foam"}}, "'hollow with ribs'"),
        ({"inside": {"walls": "4 mm"}}, "the key 'walls'"),
        ({"edge": 3}, "a section [edge]"),
        ({"allowances": {"left_out": ["heat"]}}, "'print shrinkage'"),
        ({"allowances": {"spring_in": "perhaps"}}, "'not considered'"),
        ({"inside": {"wall": "4 kg"}}, "a quantity in mm"),
        ({"plastic": {"skin": "1 mm"}}, "set walls in [printer]"),
        ({"plastic": {"infill": "15 %"}}, "set infill_share in [printer]"),
        ({"plastic": {"density": "1.2 g/cm^3"}}, "set material in [printer]"),
        ({"plastic": {"rate": "8 mm^3/s"}}, "set speed in [printer]"),
        ({"plastic": {"price": "25 EUR"}}, "a number"),
        ({"plastic": {"price": -1}}, "price of a kilogram"),
        ({"plastic": {"printer": "Small"}}, "the key 'printer'"),
        ({"pieces": {"most_pieces": "two"}}, "a whole number"),
        ({"pieces": {"least_draft": "95 deg"}}, "wanted draft"),
    ],
)
def test_a_slip_is_named(wrong, words):
    with pytest.raises(LaywrightError) as caught:
        read_mould(wrong)
    assert words in str(caught.value)
