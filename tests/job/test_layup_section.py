from __future__ import annotations

import pytest

from laywright.errors import LaywrightError
from laywright.job.layup_section import read_layup
from laywright.laminate.extents import Round
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import DropOff

CORE = {"sheet": "Closed-cell PVC foam 80 kg/m^3", "thickness": "8 mm", "after": 1}
SECTION = {
    "resin": "Laminating epoxy, slow hardener",
    "process": "bagged",
    "resin_share": "42 %",
    "void_share": "2 %",
    "plies": [
        {"cloth": "Carbon twill weave 200 g/m^2", "angle": "0 deg", "name": "outside"},
        {"cloth": "E-glass plain weave 163 g/m^2", "angle": "45 deg"},
    ],
    "core": CORE,
}
MATERIALS = load_materials()


def test_a_layup_with_a_core():
    layup = read_layup(SECTION, MATERIALS)
    assert (layup.core.sheet.name, layup.core.thickness, layup.core.after) == (
        CORE["sheet"],
        8.0,
        1,
    )
    assert (layup.resin_share, layup.void_share) == pytest.approx((0.42, 0.02))
    assert layup.ply_name(1) == "outside"
    assert CORE["sheet"] in {card.name for card in layup.cards}


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"core": "foam"}, "[layup] core"),
        ({"core": CORE | {"after": "1"}}, "[layup] core after"),
        ({"core": CORE | {"after": 2}}, "between two plies"),
        ({"core": CORE | {"thickness": 8}}, "[layup] core thickness"),
        ({"core": CORE | {"thickness": "8 g"}}, "a quantity in mm"),
        ({"core": CORE | {"angle": "0 deg"}}, "the key 'angle'"),
        ({"core": CORE | {"sheet": "PVC"}}, "Closed-cell PVC foam 80 kg/m^3"),
        ({"plies": []}, "no ply"),
        ({"plies": ["glass"]}, "[layup] ply 1: found 'glass', needed cloth and angle"),
    ],
)
def test_a_wrong_core_is_refused_by_key(change, words):
    with pytest.raises(LaywrightError) as caught:
        read_layup(SECTION | change, MATERIALS)
    assert words in str(caught.value)


def test_plies_that_cover_a_part_of_the_face():
    plies = [
        {"cloth": "Carbon twill weave 200 g/m^2", "angle": "0 deg"},
        {
            "cloth": "Carbon twill weave 200 g/m^2",
            "angle": "0 deg",
            "extent": "3 cm round 10, 20, 5",
        },
    ]
    section = {"resin": SECTION["resin"], "plies": plies}
    layup = read_layup(section, MATERIALS)
    assert layup.plies[1].extent == Round((10.0, 20.0, 5.0), 30.0)
    assert (layup.drop_off, layup.drop_way) == (None, DropOff.IN)
    other = read_layup(section | {"drop_off": "8 mm", "drop_way": "further out"}, MATERIALS)
    assert (other.drop_off, other.drop_way) == (8.0, DropOff.OUT)
    for wrong, words in (
        ({"drop_off": "-3 mm"}, "drop-off"),
        ({"drop_way": "sideways"}, "[layup] drop_way"),
        ({"plies": [plies[0] | {"extent": "there"}]}, "extent of a ply"),
        ({"plies": [plies[1]]}, "no ply that covers the whole face"),
    ):
        with pytest.raises(LaywrightError) as problem:
            read_layup(section | wrong, MATERIALS)
        assert words in str(problem.value)
