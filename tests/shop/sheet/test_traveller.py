import dataclasses
import re

import pytest
from markupsafe import escape

from job_sheet_demo import inputs, texts_on
from laywright import values
from laywright.errors import InputError
from laywright.files.drawing import Label
from laywright.files.html import html_bytes
from laywright.files.page import Cards, Note, Picture, Steps, Table
from laywright.files.pdf import pdf_bytes
from laywright.shop.plan import ShopPlan
from laywright.shop.sheet.traveller import (
    JobSheet,
    PartSummary,
    TileSummary,
    make_sheet,
    version_code,
)
from pdf_reading import texts_of

UNIT = re.compile(r", (mm|m|g|m²|%|°|°C|min|h)$")
AFTER = re.compile(r"( to $| ?(mm|g|m|°|%|h|hours|days|min|parts|EUR)\b)")
TITLES = (
    "Part and check",
    "Clock",
    "Shopping list",
    "Print",
    "Assemble and seal",
    "Release",
    "Cut cloth",
    "Mix",
    "Lay up",
    "Bag",
    "Cure",
    "Trim",
    "Coupons",
    "Record",
)


def test_stations_in_the_order_of_the_work_each_with_its_cautions(made):
    assert tuple(station.title for station in made.sheet.stations) == TITLES
    assert all(station.cautions for station in made.sheet.stations)


def test_the_version_is_the_one_that_was_given(made):
    assert made.sheet.version == inputs()["version"] == version_code("1a2b3c4d5e6f")


def test_version_and_estimates_stand_on_every_printed_page(made):
    for text in texts_of(pdf_bytes(made.sheet, "Letter")):
        words = " ".join(text.split())
        assert made.sheet.version in words
        assert "is out of date" in words
        assert "no protection level is stated" in words
        assert "accredited laboratory" in words


def test_html_says_what_the_pdf_says(made):
    page = html_bytes(made.sheet).decode()
    printed = "".join("".join(texts_of(pdf_bytes(made.sheet))).split())
    for station in made.sheet.stations:
        for block in station.blocks:
            for text in texts_on(block):
                assert escape(text) in page
                assert "".join(text.split()) in printed


def test_every_number_has_a_unit(made):
    """A bare number may stand only in a column whose head names the unit or a count."""
    counts = {"Ply", "Cup", "Row, column, layer", "Tile", "Hole", "No."}
    for station in made.sheet.stations:
        for block in station.blocks:
            if isinstance(block, Table):
                for row in block.rows:
                    for head, cell in zip(block.columns, row, strict=True):
                        if re.fullmatch(r"(?=.*\d)[-\d., x]+", cell):
                            assert head in counts or UNIT.search(head), head
            elif isinstance(block, (Note, Steps)):
                for text in texts_on(block):
                    for tail in re.split(r"\d+\.\d+", text)[1:]:
                        assert AFTER.match(tail), text


def test_units_are_printed_as_people_write_them(made):
    every = " ".join(texts_on(made.sheet))
    assert "degC" not in every
    assert "^2" not in every
    assert "g/m²" in every
    assert "21 °C" in every


def test_a_job_without_tiles_patterns_and_pictures_still_prints():
    bare = inputs()
    bare["tiles"] = TileSummary("demo printer", ())
    bare["patterns"] = ()
    bare["rolls"] = ()
    bare["part"] = PartSummary((1.0, 2.0, 3.0), 10.0)
    assert len(texts_of(pdf_bytes(make_sheet(**bare).sheet))) >= len(TITLES)


@pytest.mark.parametrize("paper", ["A4", "Letter"])
def test_every_station_of_an_ordinary_job_fits_one_page(made, paper):
    assert len(texts_of(pdf_bytes(made.sheet, paper))) == len(TITLES)


def test_work_by_hand_has_no_page_for_a_bag():
    by_hand = inputs()
    by_hand["bench"] = dataclasses.replace(by_hand["bench"], bag=None)
    assert "Bag" not in {station.title for station in make_sheet(**by_hand).sheet.stations}


def test_hostile_names_reach_the_page_as_text():
    name = "<img src=x onerror=alert(1)> & co"
    sheet = make_sheet(**inputs(name)).sheet
    page = html_bytes(sheet).decode()
    assert "<img" not in page
    assert "&lt;img src=x" in page
    assert all("<img" in text for text in texts_of(pdf_bytes(sheet)))


def test_a_plan_for_other_plies_and_a_nameless_job_are_refused():
    wrong = inputs()
    wrong["shop"] = ShopPlan(
        dataclasses.replace(wrong["shop"].mix, ply_numbers=(1, 5)), wrong["shop"].cure
    )
    with pytest.raises(InputError, match="mixing plan for ply 5"):
        make_sheet(**wrong)
    with pytest.raises(InputError, match="no name"):
        make_sheet(**inputs("  "))


def test_inputs_and_result_survive_storage(made):
    back = values.unpack(JobSheet, values.pack(made))
    assert values.digest(back.sheet) == values.digest(made.sheet)
    assert html_bytes(back.sheet) == html_bytes(made.sheet)


def test_units_in_pictures_are_printed_as_people_write_them():
    given = inputs()
    label = Label("label", "cloth of 200 g/m^2, 30 degC", (0.0, 0.0))
    (part, *_) = given["patterns"]
    drawing = dataclasses.replace(part.drawing, shapes=(*part.drawing.shapes, label))
    picture = dataclasses.replace(given["part"], picture=drawing)
    sheet = make_sheet(**given | {"part": picture}).sheet
    (shown,) = (block for block in sheet.stations[0].blocks if isinstance(block, Picture))
    assert shown.drawing.shapes[-1].text == "cloth of 200 g/m², 30 °C"
    assert shown.drawing.shapes[:-1] == drawing.shapes[:-1]


def test_on_a_card_a_number_stays_with_its_unit(made):
    page = next(station for station in made.sheet.stations if station.title == "Lay up")
    lines = [line for block in page.blocks if isinstance(block, Cards) for line in lines_of(block)]
    assert any("0.25\u00a0mm" in line for line in lines)
    assert not [line for line in lines if re.search(r"\d (mm|min|g)\b", line)]


def lines_of(cards):
    return [line for card in cards.cards for line in card.lines]
