from __future__ import annotations

import dataclasses

import pytest

from laywright.errors import MaterialError
from laywright.laminate.card_fields import from_card, named
from laywright.laminate.card_files import Card, CardValue, Knowledge
from laywright.laminate.materials import Cloth, Fibre, FibreKind, load_materials

LIBRARY = load_materials()
GLASS = LIBRARY.cards["E-glass"]
PLAIN = LIBRARY.cards["E-glass plain weave 49 g/m^2"]
SHELVES = {"fibre": LIBRARY.fibres}


def without(card: Card, name: str) -> Card:
    values = {key: value for key, value in card.values.items() if key != name}
    return dataclasses.replace(card, values=values)


def test_numbers_words_groups_and_parts():
    fibre = from_card(Fibre, GLASS)
    assert (fibre.name, fibre.density, fibre.kind) == ("E-glass", 2.56, FibreKind.GLASS)
    cloth = from_card(Cloth, PLAIN, SHELVES)
    assert cloth.fibre == LIBRARY.fibres["E-glass"]
    assert cloth.strengths.tension_1 == 220.0


def test_a_group_may_be_left_out_but_not_half_of_it():
    bare = PLAIN
    for name in PLAIN.values:
        if name.startswith("strengths."):
            bare = without(bare, name)
    assert from_card(Cloth, bare, SHELVES).strengths is None
    with pytest.raises(MaterialError) as caught:
        from_card(Cloth, without(PLAIN, "strengths.shear"), SHELVES)
    assert caught.value.where == f"{PLAIN.file}: strengths.shear"


@pytest.mark.parametrize("name", ["colour", "strengths.tear", "density.low", "name"])
def test_a_field_that_no_card_has(name):
    value = CardValue(1.0, "1", None, None, "invented", Knowledge.MEASURED)
    card = dataclasses.replace(GLASS, values={**GLASS.values, name: value})
    with pytest.raises(MaterialError) as caught:
        from_card(Fibre, card)
    assert caught.value.where == f"{GLASS.file}: {name}"
    assert "axial_modulus" in caught.value.needed


def test_nearest_names_come_first_by_words_then_by_letters():
    shelf = {"Plain glass 200": 1, "Plain carbon 200": 2, "Twill glass 160": 3}
    assert named(shelf, "Twill glass 160", "cloth") == 3
    with pytest.raises(MaterialError, match="'Twill glass 160'") as caught:
        named(shelf, "glass 160", "cloth")
    assert caught.value.needed.startswith("'Twill glass 160'")
    with pytest.raises(MaterialError, match="a card for it"):
        named({}, "x", "cloth")
