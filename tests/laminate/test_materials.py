from __future__ import annotations

import dataclasses
from pathlib import Path

import pytest

import laywright.laminate
from laywright.errors import LimitError, MaterialError
from laywright.laminate.materials import (
    Cloth,
    Materials,
    Resin,
    Weave,
    load_materials,
    materials_of,
)
from laywright.laminate.supplies import ReleaseKind, Use
from laywright.values import pack, unpack

SHIPPED = Path(laywright.laminate.__file__).parent / "cards"
MATERIALS = load_materials()


def own_copy(folder: Path, stem: str, *changes: tuple[str, str]) -> Path:
    text = (SHIPPED / f"{stem}.toml").read_text(encoding="utf-8")
    for old, new in changes:
        assert old in text
        text = text.replace(old, new, 1)
    (folder / "mine.toml").write_text(text, encoding="utf-8")
    return folder


def test_the_shipped_library():
    assert len(MATERIALS.cloth_names) == 10
    assert len(MATERIALS.resin_names) == 2
    assert len(MATERIALS.core_names) == len(MATERIALS.sheets) == 4
    assert {agent.kind for agent in MATERIALS.releases.values()} == set(ReleaseKind)
    assert {item.use for item in MATERIALS.consumables.values()} == set(Use)
    assert {cloth.weave for cloth in MATERIALS.cloths.values()} == set(Weave) - {Weave.SATIN}
    glass = MATERIALS.cloth("E-glass plain weave 163 g/m^2")
    assert (glass.areal_weight, glass.warp_share, glass.fibre.density) == (163.0, 0.5, 2.56)
    assert MATERIALS.cards[glass.name].values["areal_weight"].high == pytest.approx(171.2)


def test_the_library_survives_storage():
    assert unpack(Materials, pack(MATERIALS)) == MATERIALS


@pytest.mark.parametrize("name", MATERIALS.cloth_names)
def test_a_cloth_survives_storage(name):
    cloth = MATERIALS.cloth(name)
    assert unpack(Cloth, pack(cloth)) == cloth


def test_own_cards_win_by_name(tmp_path):
    own = load_materials(
        own_copy(tmp_path, "cloth_carbon_twill_200", ("value = 200", "value = 204"))
    )
    name = "Carbon twill weave 200 g/m^2"
    assert own.cloth(name).areal_weight == 204.0
    assert own.cards[name].file == "mine.toml"
    others = set(MATERIALS.cloth_names) - {name}
    assert all(own.cloth(other) == MATERIALS.cloth(other) for other in others)


def test_an_own_fibre_reaches_the_shipped_cloths(tmp_path):
    own = load_materials(own_copy(tmp_path, "fibre_aramid", ("value = 1.44", "value = 1.45")))
    assert own.cloth("Aramid plain weave 170 g/m^2").fibre.density == 1.45


@pytest.mark.parametrize(
    ("asked", "offered"),
    [("carbon twil 200", "Carbon twill weave 200 g/m^2"), ("mat", "chopped strand mat")],
)
def test_an_unknown_cloth_is_answered_with_the_nearest(asked, offered):
    with pytest.raises(MaterialError) as caught:
        MATERIALS.cloth(asked)
    assert asked in caught.value.found
    assert offered in caught.value.needed


def test_unknown_resin_and_folder():
    with pytest.raises(MaterialError, match="slow hardener"):
        MATERIALS.resin("epoxy slow")
    with pytest.raises(MaterialError, match="no such folder"):
        load_materials(Path("nowhere at all"))


@pytest.mark.parametrize(
    ("stem", "old", "new", "field"),
    [
        ("fibre_e_glass", "value = 2.56", "value = 2560", "density"),
        ("fibre_e_glass", 'value = 72\nunit = "GPa"', 'value = 72\nunit = "MPa"', "axial_modulus"),
        ("resin_epoxy_slow", 'unit = "GPa"', 'unit = "MPa"', "modulus"),
        ("resin_epoxy_slow", 'unit = "minute"', 'unit = "ms"', "pot_life_minutes"),
        ("cloth_carbon_twill_200", 'unit = "g/m^2"', 'unit = "mg/m^2"', "areal_weight"),
        ("cloth_carbon_twill_200", 'unit = "g/m^2"', 'unit = "kg/m^2"', "areal_weight"),
        (
            "cloth_carbon_twill_200",
            'value = 1270\nunit = "mm"',
            'value = 1270\nunit = "m"',
            "roll_width",
        ),
        (
            "cloth_carbon_twill_200",
            'value = 55\nunit = "MPa"',
            'value = 55\nunit = "GPa"',
            "strengths.shear",
        ),
    ],
)
def test_a_unit_wrong_by_a_thousand_is_caught_at_the_door(tmp_path, stem, old, new, field):
    text = (SHIPPED / f"{stem}.toml").read_text(encoding="utf-8")
    assert old in text
    lines = [
        line for line in text.replace(old, new, 1).split("\n") if line[:3] not in ("low", "hig")
    ]
    (tmp_path / "mine.toml").write_text("\n".join(lines), encoding="utf-8")
    with pytest.raises(MaterialError) as caught:
        load_materials(tmp_path)
    assert caught.value.where == f"mine.toml: {field}"


# What may truly be a thousand times smaller: expansions near zero, moduli of soft cores.
SMALL_TOO = {"expansion_axial", "expansion_transverse", "expansion", "modulus_in_plane"}


@pytest.mark.parametrize("card", MATERIALS.cards.values(), ids=lambda card: card.name)
@pytest.mark.parametrize("factor", [1000.0, 0.001])
def test_no_value_with_a_unit_can_be_off_by_a_thousand(card, factor):
    """Every length, mass, time, stress and density on every shipped card, one at a time."""
    for name, value in card.values.items():
        plain = value.unit in ("1", "percent", "deg", "degC", "J/g/K") or value.value == 0.0
        if plain or (factor < 1.0 and name.split(".")[-1] in SMALL_TOO):
            continue
        slip = dataclasses.replace(value, value=factor * value.value, low=None, high=None)
        wrong = dataclasses.replace(card, values=card.values | {name: slip})
        with pytest.raises(MaterialError) as caught:
            materials_of((MATERIALS.cards | {card.name: wrong}).values())
        assert caught.value.where.startswith(f"{card.file}: ")


@pytest.mark.parametrize(
    ("stem", "change", "where"),
    [
        ("cloth_e_glass_plain_49", ('"plain"', '"knitted"'), "mine.toml: weave"),
        ("cloth_e_glass_plain_49", ('fibre = "E-glass"', 'fibre = "E-glas"'), "mine.toml: fibre"),
        ("cloth_e_glass_plain_49", ('fibre = "E-glass"\n', ""), "mine.toml: fibre"),
        ("cloth_e_glass_plain_49", ('weave = "plain"', 'colour = "plain"'), "mine.toml: colour"),
        ("cloth_e_glass_plain_49", ("[roll_width]", "[width]"), "mine.toml: width"),
        (
            "cloth_e_glass_plain_49",
            ("[strengths.shear]", "[strengths.tear]"),
            "mine.toml: strengths.tear",
        ),
        ("cloth_e_glass_plain_49", ('card = "cloth"', 'card = "paper"'), "mine.toml: card"),
        ("cloth_e_glass_plain_49", ('unit = "mm"', 'unit = "kg"'), "mine.toml: roll_width"),
        ("fibre_e_glass", ('kind = "glass"', 'kind = "wool"'), "mine.toml: kind"),
    ],
)
def test_a_malformed_card_is_named_by_file_and_field(tmp_path, stem, change, where):
    with pytest.raises(MaterialError) as caught:
        load_materials(own_copy(tmp_path, stem, change))
    assert caught.value.where == where


def test_a_missing_field_is_named(tmp_path):
    text = (SHIPPED / "cloth_e_glass_plain_49.toml").read_text(encoding="utf-8")
    start, end = text.index("[roll_width]"), text.index("[locking_angle]")
    (tmp_path / "mine.toml").write_text(text[:start] + text[end:], encoding="utf-8")
    with pytest.raises(MaterialError) as caught:
        load_materials(tmp_path)
    assert (caught.value.where, caught.value.found) == ("mine.toml: roll_width", "nothing")


def test_the_same_name_twice_in_one_folder(tmp_path):
    own_copy(tmp_path, "fibre_aramid")
    (tmp_path / "other.toml").write_text(
        (tmp_path / "mine.toml").read_text(encoding="utf-8"), encoding="utf-8"
    )
    with pytest.raises(MaterialError, match="a second time"):
        load_materials(tmp_path)


def test_times_and_glass_transitions_of_a_resin_rise():
    resin: Resin = MATERIALS.resin("Laminating epoxy, fast hardener")
    with pytest.raises(LimitError, match="demould_hours"):
        dataclasses.replace(resin, demould_hours=resin.trim_end_hours / 2.0)
    with pytest.raises(LimitError, match="glass_transition_full_c"):
        dataclasses.replace(resin, glass_transition_full_c=resin.glass_transition_c - 1.0)
