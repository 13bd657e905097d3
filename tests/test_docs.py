"""What docs/ says is true: links, pictures, names, numbers, sources."""

import math
import re
import struct
import zlib

import pytest

from doc_reading import CHECKOUT, CORE, DOCS, WORKBENCH, prose, without_blocks
from laywright.cloth.cuts.cuts import CutSettings
from laywright.cloth.drape.fabric import fabric_for
from laywright.laminate.constituents import Weave
from laywright.laminate.knock_downs import usual_knock_downs
from laywright.laminate.plies import Process, usual_resin_share
from laywright.mould.body.piece_settings import PieceSettings
from laywright.mould.body.settings import Inside, MouldSettings
from laywright.mould.release.wanted_draft import LAYER_RIDGE, MouldFinish, wanted_draft
from laywright.shop.bench.bag import BagSettings
from laywright.shop.bench.bench_supplies import usual_supplies
from laywright.shop.coupons.coupon_plan import SpanRule
from laywright.shop.curing.cure_settings import MOULD_MARGIN, CureSettings
from laywright.shop.mixing.cups import COARSE
from laywright.shop.mixing.mix_words import RULE_SPAN
from laywright.shop.record.record_words import BAND

PAGES = sorted(DOCS.rglob("*.md"))
STAGES = sorted((DOCS / "stages").glob("*.md"))

_LINK = re.compile(r"!?\[[^\]]*\]\(([^)\s]+)\)")
_CITED = re.compile(
    r"\b([A-Z][A-Za-zé]+(?:[- ](?:and )?[A-Z][A-Za-z]+)*) ((?:1[89]|20)\d\d)(?=[;:,.) ])"
)
_SOURCE = re.compile(r"^- (.+?) \(`([\w/]+\.py)`\): ", re.MULTILINE)
_GENERATED = re.compile(r"<!-- (?:inputs|results) of .*?<!-- end -->", re.DOTALL)
_LARGEST_PICTURE = 150_000


def named(pages):
    return [str(page.relative_to(DOCS)) for page in pages]


def anchors(page):
    """Return the anchors of a page's headings."""
    heads = re.findall(r"^#+ (.+)$", page.read_text(encoding="utf-8"), re.MULTILINE)
    return {re.sub(r"[^\w -]", "", head.lower()).replace(" ", "-") for head in heads}


@pytest.mark.parametrize("page", PAGES, ids=named(PAGES))
def test_links_lead_somewhere(page):
    for target in _LINK.findall(page.read_text(encoding="utf-8")):
        place, _, anchor = target.partition("#")
        assert "://" not in target, "the pages stand on their own"
        aim = (page.parent / place).resolve() if place else page
        assert aim.is_relative_to(CHECKOUT), target
        assert aim.exists(), target
        if anchor:
            assert anchor in anchors(aim), target


def test_every_page_is_in_the_contents():
    index = DOCS / "index.md"
    linked = {
        (DOCS / target.partition("#")[0]).resolve()
        for target in _LINK.findall(index.read_text(encoding="utf-8"))
    }
    assert {page for page in PAGES if page != index} <= linked


def test_every_picture_is_used_small_and_shows_something():
    used = {
        (page.parent / target).resolve()
        for page in PAGES
        for target in re.findall(r"!\[[^\]]+\]\(([^)]+)\)", page.read_text(encoding="utf-8"))
    }
    assert used == set((DOCS / "pictures").glob("*.png"))
    for path in used:
        assert path.stat().st_size < _LARGEST_PICTURE, path.name
        width, height, lines = png_lines(path.read_bytes())
        assert width > 100, path.name
        assert height > 30, path.name
        assert len(set(lines)) > 0.25 * height, f"{path.name} is nearly empty"


def png_lines(content):
    """Return width, height and the stored lines of a PNG picture."""
    assert content.startswith(b"\x89PNG\r\n\x1a\n")
    packed, place = b"", 8
    while place < len(content):
        (length,), kind = struct.unpack_from(">I", content, place), content[place + 4 : place + 8]
        if kind == b"IDAT":
            packed += content[place + 8 : place + 8 + length]
        place += length + 12
    width, height = struct.unpack_from(">II", content, 16)
    stored = zlib.decompress(packed)
    step = len(stored) // height
    return width, height, [stored[i : i + step] for i in range(0, len(stored), step)]


@pytest.mark.parametrize("page", STAGES, ids=named(STAGES))
def test_a_stage_page_has_its_parts(page):
    text = page.read_text(encoding="utf-8")
    for head in ("## What it is for", "## Limits"):
        assert f"\n{head}\n" in text


@pytest.mark.parametrize("page", STAGES, ids=named(STAGES))
def test_what_is_cited_is_a_source_of_the_code(page):
    text = page.read_text(encoding="utf-8")
    sources = dict(_SOURCE.findall(text))
    for names, place in sources.items():
        code = (CORE / place).read_text(encoding="utf-8")
        for word in re.findall(r"[A-Z][\w-]+|\d{3,}", names):
            assert word in code, f"{word} of {names} is not in {place}"
    for names, year in _CITED.findall(prose(page)):
        assert f"{names} {year}" in sources, f"{names} {year}"


def test_commands_and_stages_are_called_what_the_window_calls_them():
    titles = set(re.findall(r'@stage\(\s*"([^"]+)"', sources_below(CORE)))
    titles |= set(re.findall(r'title = "([^"]+)"', sources_below(WORKBENCH)))
    examples = (WORKBENCH / "examples.py").read_text(encoding="utf-8")
    titles |= set(re.findall(r'^    "\w+": "([^"]+)",$', examples, re.MULTILINE))
    first = DOCS / "first-job.md"
    called = set(re.findall(r"\*\*([^*]+)\*\*", prose(first)))
    assert called <= titles


def test_properties_named_in_the_text_are_there():
    code = sources_below(WORKBENCH)
    known = set(re.findall(r'(?:Property\(|"App::Property\w+",)\s*"(\w+)"', code))
    known |= set(re.findall(r'"(\w+)": \w+Object,', code))
    for page in (*STAGES, DOCS / "first-job.md", DOCS / "macros.md"):
        text = _GENERATED.sub("", without_blocks(page))
        spans = re.findall(r"`([A-Z][a-z]+(?:[A-Z][a-z]*)*(?:\.[A-Z]\w+)?)`", text)
        for name in (part for span in spans for part in span.split(".")):
            assert name in known, f"{page.name}: {name}"


def told_numbers():
    """Return numbers that the pages tell, as the code has them, by page."""
    hand = usual_knock_downs(Process.HAND)
    shares = [
        [f"{100 * usual_resin_share(process, weave):.0f} %" for process in Process]
        for weave in (Weave.TWILL, Weave.MAT)
    ]
    locking = {weave: math.degrees(fabric_for(weave).locking_angle) for weave in Weave}
    span = {rule: f"{rule.ratio:.0f}:1" for rule in SpanRule}
    layered = math.degrees(wanted_draft(MouldFinish.LAYERED).angle)
    bag, vacuum = BagSettings(), Inside().vacuum
    wax, film = usual_supplies().wax, usual_supplies().film
    return {
        "release-check.md": (f"{LAYER_RIDGE:g} mm deep therefore ask for {layered:.0f}°",),
        "layup.md": (
            "{} by hand, {} bagged, {} infused; mat takes {}, {} and {}".format(
                *shares[0], *shares[1]
            ),
            f"{hand.tension:g} in tension, {hand.compression:g} in compression, {hand.shear:g} in",
        ),
        "cloth-patterns.md": (
            f"plain {locking[Weave.PLAIN]:.0f}°, twill and stitched biaxial "
            f"{locking[Weave.BIAXIAL]:.0f}°, satin {locking[Weave.SATIN]:.0f}°",
            f"lapped by {CutSettings().lap:g} mm",
            f"keep {CutSettings().stagger:g} mm apart",
        ),
        "mould-body.md": (
            f"at most {PieceSettings().bolt_spacing:g} mm apart",
            f"about {vacuum:g} MPa",
            f"{MouldSettings().run_off:g} mm of run-off",
        ),
        "mixing-and-curing.md": (
            f"no hotter than {MOULD_MARGIN:g} °C below",
            f"{CureSettings().ramp:g} °C per hour",
            f"remarked on above {100 * COARSE:.0f} %",
            f"more than {RULE_SPAN:g} °C away",
        ),
        "job-sheet.md": (
            f"reach {bag.beyond:g} mm beyond the part, the bag is {bag.slack:g} mm larger",
            f"pleats {bag.pleat_height:g} mm high every {bag.pleat_every:g} mm",
            f"{wax.coats_new:g} coats of wax on a new mould, before a second part "
            f"{wax.coats_second:g}, later {wax.coats_later:g}; {film.coats_new:g} sprays of film",
            f"{wax.wait_minutes:g} min of waiting",
        ),
        "weigh-in-and-coupons.md": (
            f"within {100 * BAND:.0f} % of the planned mass",
            f"{span[SpanRule.ASTM_D790]} (ASTM D790), {span[SpanRule.ASTM_D7264]} (ASTM D7264) or "
            f"{span[SpanRule.ISO_14125_CARBON]} (ISO 14125",
        ),
    }


@pytest.mark.parametrize("page", sorted(told_numbers()))
def test_numbers_in_the_text_are_those_of_the_code(page):
    text = " ".join((DOCS / "stages" / page).read_text(encoding="utf-8").split())
    for words in told_numbers()[page]:
        assert words in text


def sources_below(folder):
    return "\n".join(path.read_text(encoding="utf-8") for path in sorted(folder.rglob("*.py")))


@pytest.mark.parametrize("page", PAGES, ids=named(PAGES))
def test_spelling_is_british(page):
    american = r"\b(mold\w*|fiber\w*|color\w*|gray|center\w*|labor|meter|liter)\b"
    assert re.findall(american, prose(page), re.IGNORECASE) == []
