"""Printer cards carry their units and are checked."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright import values
from laywright.errors import FileError, LimitError, UnitError
from laywright.mould.tiles.printer import (
    Printer,
    card_of,
    drop_printer,
    load_printers,
    own_printers,
    printer_of,
    save_printer,
)

CARD = """
name = "Mine"
volume = ["10 in", "20 cm", "150 mm"]
border = "1 cm"
nozzle = "0.6 mm"
layer_height = "0.3 mm"
infill_share = "15 %"

[material]
name = "ASA"
density = "1.07 g/cm^3"
softening = "95 degC"
"""


def test_cards_that_come_along_rise_in_size():
    printers = load_printers()
    assert list(printers) == [printer.name for printer in printers.values()]
    volumes = [printer.volume for printer in printers.values()]
    assert volumes == sorted(volumes)
    assert volumes[0] == (180.0, 180.0, 180.0)
    assert (220.0, 220.0, 250.0) in volumes


def test_a_card_of_ones_own_in_its_own_units(tmp_path):
    (tmp_path / "mine.toml").write_text(CARD, encoding="utf-8")
    mine = load_printers(tmp_path)["Mine"]
    assert mine == Printer("Mine", (254.0, 200.0, 150.0), 10.0, 0.6, 0.3, 0.15, 1.07, 95.0, "ASA")
    assert mine.usable == (234.0, 180.0, 150.0)
    assert values.unpack(Printer, values.pack(mine)) == mine


@pytest.mark.parametrize(
    ("change", "error", "part"),
    [
        (("infill_share", "#"), FileError, "no entry 'infill_share'"),
        (('"1.07 g/cm^3"', '"1.07 g/m^2"'), UnitError, "density in mine.toml"),
        (('"15 %"', '"150 %"'), LimitError, "infill share of printer Mine"),
        (('"1 cm"', '"12 cm"'), LimitError, "printer Mine"),
        (('"0.6 mm"', '"0 mm"'), LimitError, "nozzle of printer Mine"),
        (('["10 in", "20 cm", "150 mm"]', '["10 in"]'), FileError, "width, depth and height"),
        (("[material]", "[material"), FileError, "cannot be read as a printer card"),
    ],
)
def test_a_wrong_card_is_one_sentence(tmp_path, change, error, part):
    (tmp_path / "mine.toml").write_text(CARD.replace(*change), encoding="utf-8")
    with pytest.raises(error) as caught:
        load_printers(tmp_path)
    assert part in str(caught.value)


def test_a_folder_that_is_none(tmp_path):
    with pytest.raises(FileError, match="no folder"):
        load_printers(tmp_path / "missing")


def test_a_saved_printer_comes_back_the_same(tmp_path):
    mine = Printer('My "own", 3', (201.5, 180.0, 210.0), walls=4, speed=85.0, material="ASA")
    path = save_printer(mine, tmp_path / "cards")
    assert path.suffix == ".toml"
    assert load_printers(tmp_path / "cards")[mine.name] == mine


@given(st.integers(0, 10000))
def test_a_card_says_its_infill_in_percent_and_keeps_it(parts):
    mine = Printer("Mine", (200.0, 180.0, 210.0), infill_share=parts / 10000)
    card = card_of(mine)
    assert card["infill_share"] == f"{parts / 100:g} %"
    assert printer_of(card, "the card") == mine


def test_a_card_may_lean_on_another_printer():
    usual = load_printers()["Medium, 220 x 220 x 250 mm"]
    card = {"infill_share": "40 %", "material": {"name": "ASA", "softening": "95 degC"}}
    mine = printer_of(card, "[printer]", usual)
    assert (mine.infill_share, mine.material, mine.softening_c) == (0.4, "ASA", 95.0)
    assert (mine.name, mine.volume, mine.density) == (usual.name, usual.volume, usual.density)


def test_an_entry_that_no_card_has():
    with pytest.raises(FileError) as caught:
        printer_of({"nozle": "0.4 mm"}, "[printer]")
    assert caught.value.found == "an entry 'nozle'"


def test_a_printer_of_ones_own_is_listed_and_taken_away(tmp_path):
    along = load_printers()
    name = next(iter(along))
    larger = Printer(name, (500.0, 500.0, 500.0))
    path = save_printer(larger, tmp_path)
    assert own_printers(tmp_path) == {name: (larger, path)}
    assert load_printers(tmp_path)[name] == larger
    assert list(load_printers(tmp_path))[-1] == name
    drop_printer(name, tmp_path)
    assert list(tmp_path.iterdir()) == []
    assert load_printers(tmp_path) == along
    with pytest.raises(FileError) as caught:
        drop_printer(name, tmp_path)
    assert caught.value.found == f"no card of '{name}'"
