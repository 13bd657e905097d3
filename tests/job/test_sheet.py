import collections
import math
import re

import pytest

from job_demo import hatch
from laywright.files.paper import Paper
from laywright.files.pdf import pdf_bytes
from laywright.job import run
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.shop.curing.cure_settings import CureSettings
from laywright.shop.plan import ShopSettings
from pdf_reading import texts_of

STATIONS = (
    "Shopping list",
    "Print",
    "Assemble and seal",
    "Release",
    "Cut cloth",
    "Mix",
    "Lay up",
    "Cure",
    "Trim",
    "Record",
)


def _two_cloths():
    """Return the layup of the hatch with its middle ply of another cloth."""
    materials = load_materials()
    names = ("E-glass twill weave 200 g/m^2", "E-glass plain weave 163 g/m^2")
    outer, middle = (materials.cloth(name) for name in names)
    plies = (Ply(outer, 0.0), Ply(middle, math.radians(45.0)), Ply(outer, 0.0))
    return Layup(plies, materials.resin("Laminating epoxy, slow hardener"))


@pytest.fixture(scope="module")
def plain():
    return run(hatch()).sheet.sheet


@pytest.fixture(scope="module")
def rich():
    """The hatch of two cloths, with a post-cure."""
    cure = ShopSettings(cure=CureSettings(post_cure_c=50.0))
    return run(hatch(layup=_two_cloths(), shop=cure)).sheet.sheet


def _pages(sheet, paper):
    """Return how many pages each station has, as the head of each page says."""
    heads = [
        re.search(r"^\d+\. (.+)$", text, re.M)[1] for text in texts_of(pdf_bytes(sheet, paper))
    ]
    return collections.Counter(heads)


@pytest.mark.parametrize("paper", [Paper.A4, Paper.LETTER])
def test_every_station_of_an_ordinary_job_has_one_page(plain, paper):
    found = _pages(plain, paper)
    assert {name: found[name] for name in STATIONS} == dict.fromkeys(STATIONS, 1)


@pytest.mark.parametrize(("paper", "cutting"), [(Paper.A4, 1), (Paper.LETTER, 2)])
def test_only_the_cut_lists_of_more_cloths_need_a_further_page(rich, paper, cutting):
    found = _pages(rich, paper)
    expected = dict.fromkeys(STATIONS, 1) | {"Cut cloth": cutting}
    assert {name: found[name] for name in STATIONS} == expected
    pages = texts_of(pdf_bytes(rich, paper))
    assert sum("Cut cloth, continued" in page for page in pages) == cutting - 1


def test_no_number_of_the_sheet_is_a_negative_zero(plain):
    text = "\n".join(texts_of(pdf_bytes(plain)))
    assert re.search(r"(?<![\w.])-0(\.0+)?(?!\.?\w)", text) is None
