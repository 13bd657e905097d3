from __future__ import annotations

import dataclasses
from pathlib import Path

import pytest

import laywright.laminate
from laywright.errors import FileError, MaterialError
from laywright.laminate.card_files import (
    Card,
    Knowledge,
    card_text,
    convert,
    corrected,
    parse_card,
    read_cards,
    write_card,
)
from laywright.laminate.materials import load_materials

SHIPPED = Path(laywright.laminate.__file__).parent / "cards"

VALUE = """
[density]
value = 2560
unit = "kg/m^3"
low = 2540
high = 2600
source = "a table"
kind = "handbook"
"""


def write(folder: Path, text: str) -> Path:
    (folder / "mine.toml").write_text(text, encoding="utf-8")
    return folder


def one(folder: Path, text: str):
    (card,) = read_cards(write(folder, text))
    return card


def test_every_shipped_value_has_unit_source_and_an_honest_kind():
    cards = list(read_cards(SHIPPED))
    assert len(cards) == 32
    for card in cards:
        for name, value in card.values.items():
            assert value.unit, (card.file, name)
            assert value.source, (card.file, name)
            said = "common practice" in value.source
            assert not said or value.kind is Knowledge.COMMON_PRACTICE, (card.file, name)


def test_a_value_in_another_unit_is_converted(tmp_path):
    card = one(tmp_path, f'card = "fibre"\nname = "x"\nkind = "glass"\n{VALUE}')
    value = card.values["density"]
    assert (value.low, value.high, value.kind) == (2540.0, 2600.0, Knowledge.HANDBOOK)
    assert convert(value, "g/cm^3", "x") == 2.56
    assert card.texts == {"kind": "glass"}


@pytest.mark.parametrize(
    ("text", "where"),
    [
        ("card = ", "mine.toml"),
        ('name = "x"', "mine.toml: card"),
        ('card = "fibre"', "mine.toml: name"),
        ('card = "fibre"\nname = "x"\ndensity = 2.56', "mine.toml: density"),
        ('card = "fibre"\nname = "x"' + VALUE.replace("source", "origin"), "mine.toml: density"),
        ('card = "fibre"\nname = "x"' + VALUE.replace("2560", '"2560"'), "mine.toml: density"),
        ('card = "fibre"\nname = "x"' + VALUE.replace("2560", "2700"), "mine.toml: density"),
        (
            'card = "fibre"\nname = "x"' + VALUE.replace("handbook", "guess"),
            "mine.toml: density: kind",
        ),
        (
            'card = "fibre"\nname = "x"' + VALUE.replace('"a table"', '" "'),
            "mine.toml: density: source",
        ),
    ],
)
def test_a_malformed_card_is_named_by_file_and_field(tmp_path, text, where):
    with pytest.raises(MaterialError) as caught:
        one(tmp_path, text)
    assert caught.value.where == where
    assert str(caught.value).count("\n") == 0


def test_a_value_of_another_dimension_is_refused(tmp_path):
    text = f'card = "fibre"\nname = "x"\n{VALUE.replace("kg/m^3", "kg/m^2")}'
    card = one(tmp_path, text)
    with pytest.raises(MaterialError) as caught:
        convert(card.values["density"], "g/cm^3", "mine.toml: density")
    assert caught.value.where == "mine.toml: density"
    assert "g/cm^3" in caught.value.needed


def test_every_shipped_card_comes_back_from_its_text(tmp_path):
    for card in read_cards(SHIPPED):
        path = write_card(card, tmp_path)
        (back,) = read_cards(tmp_path)
        assert dataclasses.replace(back, file=card.file) == card
        path.unlink()


def test_a_card_is_read_from_text_as_from_a_file():
    for card in read_cards(SHIPPED):
        assert parse_card(card_text(card), card.file) == card
    with pytest.raises(MaterialError) as caught:
        parse_card("card = ", "pasted text")
    assert caught.value.where == "pasted text"


def test_a_name_with_quotes_and_umlauts_comes_back(tmp_path):
    card = Card("", "fibre", 'a "fine" Gewebe\\n 3° ü', {"kind": "glass"}, {})
    write_card(card, tmp_path)
    (back,) = read_cards(tmp_path)
    assert (back.name, back.texts) == (card.name, card.texts)


def test_a_weighed_value_replaces_the_written_one_and_wins(tmp_path):
    library = load_materials()
    name = "Carbon twill weave 200 g/m^2"
    card = corrected(
        library.cards[name], "areal_weight", 205.5, "g/m^2", "weighed, invented for this test"
    )
    write_card(card, tmp_path)
    own = load_materials(tmp_path)
    assert own.cloth(name).areal_weight == 205.5
    assert own.cards[name].values["areal_weight"].kind is Knowledge.MEASURED
    assert own.cloth(name).strengths == library.cloth(name).strengths


def test_a_folder_that_is_not_there(tmp_path):
    (card, *_) = read_cards(SHIPPED)
    with pytest.raises(FileError, match="no such folder"):
        write_card(card, tmp_path / "nowhere")
