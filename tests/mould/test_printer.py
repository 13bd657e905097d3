"""Printer cards carry their units and are checked."""

from __future__ import annotations

import pytest

from laywright import values
from laywright.errors import FileError, LimitError, UnitError
from laywright.mould.printer import Printer, load_printers, save_printer

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
        (('["10 in", "20 cm", "150 mm"]', '["10 in"]'), FileError, "printer card"),
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


def test_mass_lies_between_the_infill_and_the_solid():
    printer = Printer("P", (200.0, 200.0, 200.0), infill_share=0.2, density=1.25)
    solid = 1.25e-3 * 1e6
    assert printer.mass(1e6, 0.0) == pytest.approx(0.2 * solid)
    assert printer.mass(1e6, 6e4) == pytest.approx(1.25e-3 * (72000 + 0.2 * 928000))
    assert printer.mass(1e6, 1e9) == pytest.approx(solid)


def test_a_saved_printer_comes_back_the_same(tmp_path):
    mine = Printer('My "own", 3', (201.5, 180.0, 210.0), walls=4, speed=85.0, material="ASA")
    path = save_printer(mine, tmp_path / "cards")
    assert path.suffix == ".toml"
    assert load_printers(tmp_path / "cards")[mine.name] == mine


def test_time_grows_with_plastic_and_layers():
    printer = Printer("P", (200.0, 200.0, 200.0), speed=50.0)
    # 100 % solid: 8000 mm3 over a line of 0.44 x 0.2 mm at 50 mm/s, and 100 layers of 1.5 s
    assert printer.hours(8000.0, 1e6, 20.0) == pytest.approx((8000 / 4.4 + 150) / 3600)
