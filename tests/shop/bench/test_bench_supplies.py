from __future__ import annotations

import dataclasses
from pathlib import Path

import pytest

import laywright.laminate
from laywright.errors import MaterialError
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Process
from laywright.shop.bench.bench_supplies import (
    USUAL_SUPPLIES,
    BenchSupplies,
    supplies_at_hand,
    supplies_of,
    usual_supplies,
)
from laywright.values import pack, unpack

CARDS = Path(laywright.laminate.__file__).parent / "cards"
MATERIALS = load_materials()


def test_every_card_that_comes_along_has_a_place():
    at_hand = [name for place in USUAL_SUPPLIES for name in supplies_at_hand(MATERIALS, place)]
    assert sorted(at_hand) == sorted((*MATERIALS.releases, *MATERIALS.consumables))
    shelf = usual_supplies()
    for field in dataclasses.fields(BenchSupplies):
        assert getattr(shelf, field.name).name == USUAL_SUPPLIES[field.name]
    assert unpack(BenchSupplies, pack(shelf)) == shelf


def test_an_own_card_is_taken_by_its_name(tmp_path):
    text = (CARDS / "consumable_peel_ply.toml").read_text(encoding="utf-8")
    own = text.replace("Polyester peel ply 85 g/m^2", "Nylon peel ply").replace("60", "45", 1)
    (tmp_path / "own.toml").write_text(own, encoding="utf-8")
    materials = load_materials(tmp_path)
    assert supplies_at_hand(materials, "peel_ply") == ("Nylon peel ply", USUAL_SUPPLIES["peel_ply"])
    shelf = supplies_of(materials, {"peel_ply": "Nylon peel ply", "wax": ""})
    assert (shelf.peel_ply.resin_uptake, shelf.wax) == (45.0, usual_supplies().wax)
    assert shelf.in_bag(Process.BAGGED)[0].name == "Nylon peel ply"


@pytest.mark.parametrize("name", ["Soap", "Release tape"])
def test_a_card_of_another_thing_is_refused(name):
    with pytest.raises(MaterialError, match="bench: wax") as caught:
        supplies_of(MATERIALS, {"wax": name})
    assert USUAL_SUPPLIES["wax"] in caught.value.needed
