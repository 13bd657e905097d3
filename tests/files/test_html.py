import re

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from lxml import html as reader

from laywright.errors import InputError
from laywright.files.drawing import Drawing, Label, Line
from laywright.files.html import html_bytes
from laywright.files.lettering import clean
from laywright.files.page import (
    Card,
    Cards,
    Note,
    Picture,
    Sheet,
    Station,
    Steps,
    Table,
    version_note,
)

SQUARE = np.array([[0, 0], [1000, 0], [1000, 500], [0, 500]], float)


def _sheet(text):
    drawing = Drawing(text, (Line(text, SQUARE, True), Label(text, text, (0.0, 0.0))))
    blocks = (
        Note(text),
        Steps((text, text)),
        Table(text, (text, "Found, g"), ((text, ""),)),
        Picture(text, drawing, 50.0),
        Cards(text, (Card(text, (text, ""), drawing), Card(text, (text,)))),
    )
    return Sheet(text, "3F2A77C0", (Station(text, (text,), blocks), Station("Two", (), ())), text)


def _read(sheet):
    return reader.document_fromstring(html_bytes(sheet).decode())


def test_one_page_per_station_with_version_and_foot_on_each():
    page = _read(_sheet("cowl"))
    stations = page.findall(".//table[@class='page']")
    assert len(stations) == 2
    for station in stations:
        foot = " ".join(station.find("tfoot").text_content().split())
        assert foot == f"{version_note(_sheet('cowl'))} cowl"
    assert "break-after: page" in page.find(".//style").text


def test_the_caution_comes_before_everything_else_of_its_station():
    first = _read(_sheet("cowl")).find(".//table[@class='page']/tbody/tr/td")
    assert [child.tag for child in first][:2] == ["h1", "div"]
    assert first[1].get("class") == "caution"


def test_body_letters_have_12_points_or_more():
    style = _read(_sheet("cowl")).find(".//style").text
    sizes = {
        rule.split("{")[0].strip(): float(size)
        for rule in style.split("}")
        for size in re.findall(r"(\d+(?:\.\d+)?)pt", rule)
    }
    assert sizes[":root"] >= 12.0
    assert [rule for rule, size in sizes.items() if size < 12.0] == [".foot"]


def test_nothing_is_fetched_and_nothing_runs():
    text = html_bytes(_sheet("cowl")).decode()
    assert not re.search(r"<script|<link|<img|@import|url\(|\bon\w+=", text)
    assert set(re.findall(r"https?://[^\"'\s<]+", text)) == {"http://www.w3.org/2000/svg"}


def test_boxes_to_tick_and_room_to_write():
    page = _read(_sheet("cowl"))
    assert len(page.findall(".//ol//span[@class='box']")) == 2
    cards = page.findall(".//div[@class='card']")
    assert [len(card.findall(".//span[@class='box']")) for card in cards] == [1, 1]
    assert [len(card.findall(".//svg")) for card in cards] == [1, 0]
    assert [len(card.findall(".//div[@class='blank']")) for card in cards] == [1, 0]
    assert [cell.text for cell in page.findall(".//table[@class='data']/tbody/tr/td")] == [
        "cowl",
        None,
    ]


@settings(max_examples=40, deadline=None)
@given(st.text(st.characters(exclude_characters="\r\n"), max_size=40))
def test_hostile_texts_stay_text(text):
    plain, hostile = _read(_sheet("x")), _read(_sheet(text))
    assert [e.tag for e in plain.iter()] == [e.tag for e in hostile.iter()]


def test_markup_in_names_is_shown_and_not_obeyed():
    name = "<script>alert('x')</script>&lt;\"'{{ 7 * 7 }}"
    page = _read(_sheet(name))
    assert page.findall(".//script") == []
    assert page.find(".//title").text == clean(name)
    assert page.text_content().count(name) >= 8


def test_pictures_fit_the_width_of_the_page():
    page = _read(_sheet("cowl"))
    (picture,) = page.findall(".//figure/svg")
    (small,) = page.findall(".//div[@class='card']//svg")
    assert float(small.get("width").removesuffix("mm")) <= 42.5
    assert float(picture.get("width").removesuffix("mm")) <= 178.0
    assert float(picture.get("height").removesuffix("mm")) <= 50.5


def test_an_empty_sheet_is_refused_and_bytes_repeat():
    with pytest.raises(InputError, match="no station"):
        html_bytes(Sheet("x", "1", ()))
    assert html_bytes(_sheet("a")) == html_bytes(_sheet("a"))
