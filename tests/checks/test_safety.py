"""What a printed sheet must say; no level is computed anywhere."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from checks import reference
from job_sheet_demo import inputs, texts_on
from laywright.files.html import html_bytes
from laywright.files.pdf import pdf_bytes
from laywright.shop.sheet.traveller import make_sheet
from pdf_reading import texts_of

CORE = Path(__file__).parents[2] / "core" / "laywright"


def test_no_protection_level_is_computed_or_claimed_anywhere():
    for path in [*CORE.rglob("*.py"), *CORE.rglob("*.jinja"), *CORE.rglob("*.toml")]:
        text = " ".join(path.read_text(encoding="utf-8").split()).lower()
        text = re.sub(r'" "', "", text)
        assert not re.search(r"\b1621\b|\bkn\b.{0,40}\bimpact|level [12]\b|certified", text), path
        for found in re.finditer(r"protection level", text):
            assert text[: found.start()].endswith("no "), path


# What each statement of the row must come to on the sheet, and where it must stand: the words
# that carry its substance, in any order.
SUBSTANCE = {
    "uncured epoxy": (
        {"Assemble and seal", "Mix", "Lay up"},
        "uncured epoxy|hardener|irritate or burn|eyes|allergic for life|nitrile|not latex|"
        "changed often|long sleeves|goggles|never clean skin with solvent",
    ),
    "work ventilated": (
        {"Trim"},
        "dust|half-cured|irritates|sensitises|extraction|p2 or p3|ffp3|n100|eye protection|"
        "sand wet",
    ),
    "carbon dust": (
        {"Cut cloth", "Trim"},
        "carbon|conduct electricity|electronics|mains|glass|aramid|irritate|fuzz",
    ),
    "full cups": (
        {"Mix"},
        "full cup|hot enough to smoke|fumes|set fire|small batches|shallow trays|"
        "no foam or glass cups|outside",
    ),
    "acetone": (
        {"Assemble and seal", "Release"},
        "acetone|-20 °c|isopropanol|12 °c|no flame|spark|closed metal bin",
    ),
    "mekp": ({"Mix"}, "polyester|mekp|blind|burns|never|cobalt accelerator"),
    "cutting discs": (
        {"Trim"},
        "guard on|face shield|hearing protection|clamped|disc rated for the speed",
    ),
    "printed mould": (
        {"Print", "Cure"},
        "printed mould softens|heat deflection temperature|hot resin|oven",
    ),
    "read the sds": ({"Part and check", "Mix"}, "read the safety data sheet|sds|you really use"),
    "protective": (
        {"Part and check", "Record"},
        "all results are estimates|no protection level|protective|load-bearing|safety|accredited "
        "laboratory",
    ),
}
AIR = {"Mix", "Lay up"}


def test_saf_03_every_statement_has_its_check():
    (item,) = reference.row("SAF-03")["expected"]
    beginnings = [statement.lower() for statement in item["value"]]
    assert len(beginnings) == len(SUBSTANCE)
    for beginning, name in zip(beginnings, SUBSTANCE, strict=True):
        assert name in beginning


@pytest.mark.parametrize("name", list(SUBSTANCE))
def test_saf_03_statements_stand_where_they_matter(name):
    stations, words = SUBSTANCE[name]
    by_title = {station.title: station for station in make_sheet(**inputs()).sheet.stations}
    for title in stations:
        text = " ".join(texts_on(by_title[title].cautions)).lower()
        for word in words.split("|"):
            assert word in text, (title, word)


def test_saf_03_air_where_resin_is_open():
    by_title = {station.title: station for station in make_sheet(**inputs()).sheet.stations}
    for title in AIR:
        assert "open windows or an extractor" in " ".join(by_title[title].cautions)


def test_saf_03_cautions_are_in_both_printed_forms():
    sheet = make_sheet(**inputs()).sheet
    printed = " ".join(" ".join(texts_of(pdf_bytes(sheet))).split())
    page = html_bytes(sheet).decode()
    for station in sheet.stations:
        for caution in station.cautions:
            assert caution in printed
            assert caution in page
