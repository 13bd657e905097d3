"""The sections [printer] and [tiles]: every setting by its unit, every slip by its key."""

from __future__ import annotations

import dataclasses
import math

import pytest

from laywright.errors import FileError, InputError, LaywrightError
from laywright.job.tile_section import read_printer, read_tiles
from laywright.mould.tiles.cuts import PrintPose
from laywright.mould.tiles.joint import JointKind
from laywright.mould.tiles.printer import Printer, load_printers, save_printer
from laywright.mould.tiles.tile import TileSettings
from laywright.mould.tiles.wishes import CutWishes

MEDIUM = "Medium, 220 x 220 x 250 mm"


def test_nothing_said_gives_the_defaults():
    assert read_tiles({}) == TileSettings()


def test_every_setting_can_be_said():
    section = {
        "joint": "keyed tongues",
        "dowel_diameter": "8 mm",
        "dowel_depth": "1 cm",
        "clearance": "0.2 mm",
        "tongue_width": "12 mm",
        "tongue_length": "5 mm",
        "tongue_clearance": "0.3 mm",
        "ear_reach": "20 mm",
        "ear_thickness": "9 mm",
        "ear_height": "25 mm",
        "wall": "3 mm",
        "glue_gap": "0.15 mm",
        "glue_density": "1.2 g/cm^3",
        "least_tile": "4 cm",
        "mark_depth": "0.5 mm",
        "pose": "base on the bed",
        "plan_seconds": "5 s",
        "cuts": {
            "turn": "15 deg",
            "pinned_x": ["150 mm", "30 cm"],
            "free_y": [["10 mm", "35 mm"]],
            "kept_whole": [["1 mm", "2 mm", "3 mm", "5 mm"]],
        },
    }
    assert set(section) - {"cuts"} == {f.name for f in dataclasses.fields(TileSettings)} - {
        "wishes"
    }
    found = read_tiles(section)
    assert found.wishes.turn == pytest.approx(math.radians(15.0), rel=1e-14)
    wishes = dataclasses.replace(found.wishes, turn=None)
    assert dataclasses.replace(found, wishes=wishes) == TileSettings(
        joint=JointKind.TONGUES,
        dowel_diameter=8.0,
        dowel_depth=10.0,
        clearance=0.2,
        tongue_width=12.0,
        tongue_length=5.0,
        tongue_clearance=0.3,
        ear_reach=20.0,
        ear_thickness=9.0,
        ear_height=25.0,
        wall=3.0,
        glue_gap=0.15,
        glue_density=1.2,
        least_tile=40.0,
        mark_depth=0.5,
        pose=PrintPose.BASE_DOWN,
        wishes=CutWishes(
            pinned_x=(150.0, 300.0),
            free_y=((10.0, 35.0),),
            kept_whole=((1.0, 2.0, 3.0, 5.0),),
        ),
        plan_seconds=5.0,
    )


@pytest.mark.parametrize(
    ("section", "said"),
    [
        ({"dowel": "6 mm"}, "[tiles]: found the key 'dowel'"),
        ({"joint": "snap"}, "[tiles] joint: found 'snap'"),
        ({"glue_gap": 0.1}, "[tiles] glue_gap: found 0.1"),
        ({"wall": "3 g"}, "[tiles] wall"),
        ({"cuts": {"pinned_x": "150 mm"}}, "[tiles.cuts] pinned_x: found '150 mm'"),
        ({"cuts": {"free_x": [["10 mm"]]}}, "[tiles.cuts] free_x: found ['10 mm']"),
        (
            {"cuts": {"free_x": [["30 mm", "10 mm"]]}},
            "stretch without cuts along x: found 30 to 10",
        ),
        ({"clearance": "3 mm"}, "dowel clearance: found 3 mm, needed 0 to 2 mm"),
    ],
)
def test_a_slip_is_named_by_its_key(section, said):
    with pytest.raises(LaywrightError) as caught:
        read_tiles(section)
    assert str(caught.value).startswith(said)


def test_a_printer_by_its_card_changed_in_one_number_or_said_whole(tmp_path):
    medium = load_printers()[MEDIUM]
    assert read_printer({"use": MEDIUM}, tmp_path) == medium
    changed = read_printer({"use": MEDIUM, "nozzle": "0.6 mm"}, tmp_path)
    assert changed == dataclasses.replace(medium, nozzle=0.6)
    mine = Printer("Mine", (300.0, 310.0, 320.0), walls=4, material="ASA", softening_c=95.0)
    save_printer(mine, tmp_path / "printers")
    assert read_printer({"use": "Mine", "cards": "printers"}, tmp_path) == mine
    whole = {
        "name": "Mine",
        "volume": ["30 cm", "310 mm", "320 mm"],
        "border": "5 mm",
        "nozzle": "0.4 mm",
        "layer_height": "0.2 mm",
        "infill_share": "20 %",
        "walls": 4,
        "material": {"name": "ASA", "density": "1.27 g/cm^3", "softening": "95 degC"},
    }
    assert read_printer(whole, tmp_path) == mine
    with pytest.raises(FileError, match="no entry 'border'"):
        read_printer({"name": "Mine", "volume": ["1 mm"] * 3}, tmp_path)
    with pytest.raises(InputError, match="found 'Mine'"):
        read_printer({"use": "Mine"}, tmp_path)
    with pytest.raises(InputError, match="found nothing"):
        read_printer({}, tmp_path)
