from __future__ import annotations

import math

import pytest

from laminate.stacks import MATERIALS
from laywright.errors import MaterialError
from laywright.laminate.card_files import card_text, corrected, parse_card, write_card
from laywright.laminate.laminate import Laminate, analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Process
from laywright.laminate.used_cards import NamedCore, NamedPly, layup_of, newer_cards, used_cards
from laywright.values import pack, unpack

TWILL = "Carbon twill weave 200 g/m^2"
RESIN = "Laminating epoxy, slow hardener"
FOAM = "Closed-cell PVC foam 80 kg/m^3"
PLIES = (NamedPly(TWILL, 0.0), NamedPly(TWILL, math.pi / 4.0))


def heavier(folder):
    card = corrected(MATERIALS.cards[TWILL], "areal_weight", 240.0, "g/m^2", "invented")
    write_card(card, folder)
    return load_materials(folder)


def test_the_layup_holds_the_cards_of_everything_in_it():
    layup = layup_of(MATERIALS, PLIES, RESIN, core=NamedCore(FOAM, 6.0, 1))
    assert [card.name for card in layup.cards] == sorted(
        [TWILL, RESIN, FOAM, "Carbon, standard modulus"]
    )
    assert layup.plies[1].cloth == MATERIALS.cloth(TWILL)
    assert layup.core.sheet == MATERIALS.core(FOAM)
    made = analyse(layup)
    assert unpack(Laminate, pack(made)).layup == layup


def test_a_changed_card_leaves_an_old_layup_alone_until_it_is_asked_for(tmp_path):
    old = layup_of(MATERIALS, PLIES, RESIN)
    library = heavier(tmp_path)
    again = layup_of(library, PLIES, RESIN, stored=old.cards)
    assert again == old
    assert analyse(again).digest == analyse(old).digest
    assert newer_cards(library, old.cards) == (TWILL,)
    renewed = layup_of(library, PLIES, RESIN)
    assert renewed.plies[0].cloth.areal_weight == 240.0
    assert newer_cards(library, renewed.cards) == ()


def test_a_material_that_left_the_library_lives_on_in_the_layup(tmp_path):
    card = corrected(MATERIALS.cards[TWILL], "areal_weight", 240.0, "g/m^2", "invented")
    own = dict(MATERIALS.cards) | {TWILL: card}
    stored = used_cards(MATERIALS, [TWILL], RESIN, stored=own.values())
    (found,) = [kept for kept in stored if kept.name == TWILL]
    assert card_text(found) == card_text(card)


def test_a_renamed_file_changes_no_layup(tmp_path):
    """The card is read back from another file and from its bare text: the same layup."""
    first = layup_of(MATERIALS, PLIES, RESIN)
    write_card(MATERIALS.cards[TWILL], tmp_path)
    again = layup_of(load_materials(tmp_path), PLIES, RESIN)
    stored = [parse_card(card_text(card), "kept in a document") for card in first.cards]
    assert analyse(again).digest == analyse(first).digest
    assert layup_of(load_materials(tmp_path), PLIES, RESIN, stored=stored) == first


def test_what_is_not_used_is_not_stored():
    stored = used_cards(MATERIALS, [TWILL], RESIN, stored=MATERIALS.cards.values())
    assert [card.name for card in stored] == [TWILL, "Carbon, standard modulus", RESIN]


def test_an_unknown_name_is_answered_with_the_nearest():
    with pytest.raises(MaterialError, match=r"Closed-cell PVC foam 80 kg/m\^3"):
        layup_of(MATERIALS, PLIES, RESIN, Process.HAND, core=NamedCore("PVC foam", 6.0, 1))
