from __future__ import annotations

import dataclasses

import pytest

from laminate.stacks import MATERIALS
from laywright.errors import FileError, MaterialError
from laywright.laminate.card_files import Knowledge, card_text, write_card
from laywright.laminate.materials import load_materials
from laywright.laminate.own_cards import (
    card_value,
    changed_card,
    checked,
    drop_card,
    keep_card,
    open_card,
)

TWILL = "Carbon twill weave 200 g/m^2"
CARD = MATERIALS.cards[TWILL]


def heavier(number="0.24", unit="kg/m^2", **typed):
    entry = {"low": "", "high": "0.25", "source": "invented", "kind": "measured"} | typed
    weight = card_value(number, unit, *entry.values(), f"{TWILL}: areal_weight")
    return changed_card(CARD, TWILL, CARD.texts, CARD.values | {"areal_weight": weight})


def test_a_kept_card_wins_and_the_shipped_one_counts_again_when_it_goes(tmp_path):
    folder = tmp_path / "new" / "cards"
    keep_card(heavier(), folder, MATERIALS)
    library = load_materials(folder)
    assert library.cloth(TWILL).areal_weight == pytest.approx(240.0)
    kept = library.cards[TWILL].values["areal_weight"]
    assert (kept.unit, kept.low, kept.high) == ("kg/m^2", None, 0.25)
    assert kept.kind is Knowledge.MEASURED
    drop_card(TWILL, folder)
    assert load_materials(folder).cloth(TWILL).areal_weight == 200.0
    with pytest.raises(MaterialError, match="a card that comes along"):
        drop_card(TWILL, folder)


def test_an_own_file_of_any_name_is_replaced_and_not_doubled(tmp_path):
    write_card(CARD, tmp_path).rename(tmp_path / "my cloth.toml")
    keep_card(heavier(), tmp_path, load_materials(tmp_path))
    assert len(list(tmp_path.glob("*.toml"))) == 1
    assert load_materials(tmp_path).cloth(TWILL).areal_weight == pytest.approx(240.0)


def test_a_copy_under_another_name_stands_beside_the_first(tmp_path):
    copy = changed_card(CARD, "  Twill from the attic ", CARD.texts, CARD.values)
    keep_card(copy, tmp_path, MATERIALS)
    library = load_materials(tmp_path)
    first, second = (library.cloth(name) for name in (TWILL, "Twill from the attic"))
    assert dataclasses.replace(second, name=TWILL) == first


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"number": "240"}, "areal_weight"),
        ({"number": "0.24", "unit": "g/m^2"}, "5 to 3000"),
        ({"number": "2,4"}, "a point as the decimal mark"),
        ({"number": "nan"}, "areal_weight"),
        ({"unit": "kg"}, "g/m"),
        ({"unit": ""}, "unit"),
        ({"source": " "}, "source"),
        ({"kind": "guessed"}, "measured or handbook or common practice"),
        ({"low": "0.3"}, "outside its own range"),
    ],
)
def test_a_slip_is_refused_and_nothing_is_written(tmp_path, change, words):
    """A number that is wrong by a factor of 1000 among them, whichever way."""
    with pytest.raises(MaterialError, match=words):
        keep_card(heavier(**change), tmp_path, MATERIALS)
    assert list(tmp_path.iterdir()) == []


def test_the_message_names_card_and_field():
    with pytest.raises(MaterialError) as refused:
        heavier(low="0.3")
    assert refused.value.where == f"{TWILL}: areal_weight"


def test_a_name_that_another_kind_has_or_none_is_refused():
    with pytest.raises(MaterialError, match="a resin of that name"):
        checked(
            changed_card(CARD, "Laminating epoxy, slow hardener", CARD.texts, CARD.values),
            MATERIALS,
        )
    with pytest.raises(MaterialError, match="no name"):
        changed_card(CARD, " ", CARD.texts, CARD.values)


def test_a_fibre_in_use_cannot_be_made_useless():
    fibre = MATERIALS.cards["Carbon, standard modulus"]
    with pytest.raises(MaterialError, match="density"):
        checked(
            dataclasses.replace(
                fibre, values={k: v for k, v in fibre.values.items() if k != "density"}
            ),
            MATERIALS,
        )


def test_a_card_goes_out_to_a_file_and_comes_back(tmp_path):
    path = tmp_path / "given away.toml"
    path.write_text(card_text(CARD), encoding="utf-8")
    assert card_text(open_card(path)) == card_text(CARD)


def test_what_is_no_card_is_refused(tmp_path):
    path = tmp_path / "x.toml"
    with pytest.raises(FileError, match="cannot be read"):
        open_card(path)
    path.write_bytes(b"\xff\xfe")
    with pytest.raises(FileError, match="cannot be read"):
        open_card(path)
    path.write_text("a" * 300_000, encoding="utf-8")
    with pytest.raises(FileError, match="300000 bytes"):
        open_card(path)
    path.write_text("name = ", encoding="utf-8")
    with pytest.raises(MaterialError, match=r"a card in TOML"):
        open_card(path)


def test_every_field_of_a_kind_is_known_with_its_limits():
    for kind in ("fibre", "resin", "cloth", "core", "release", "consumable", "sheet"):
        fields = {field.name: field for field in MATERIALS.fields(kind)}
        needed = {name for name, field in fields.items() if field.needed}
        for card in MATERIALS.cards.values():
            if card.card == kind:
                assert needed <= set(card.values) | set(card.texts) <= set(fields)
                assert all(text in fields[name].words for name, text in card.texts.items())
    cloth = {field.name: field for field in MATERIALS.fields("cloth")}
    assert cloth["areal_weight"].unit == "g/m^2"
    assert cloth["strengths.shear"].needed is False
    assert "E-glass" in cloth["fibre"].words
    with pytest.raises(MaterialError, match="'wood'"):
        MATERIALS.fields("wood")
