from __future__ import annotations

import pytest

from laywright.errors import LaywrightError
from laywright.job.layup_section import read_layup
from laywright.laminate.materials import load_materials

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
