from xml.etree import ElementTree
from xml.sax.saxutils import escape

from hypothesis import given
from hypothesis import strategies as st
from reportlab.pdfbase.pdfmetrics import stringWidth

from laywright.files.lettering import CAPITAL, clean, latin, width_of


@given(st.text())
def test_clean_text_fits_into_xml_and_utf8_and_one_line(text):
    cleaned = clean(text)
    assert ElementTree.fromstring(f"<t>{escape(cleaned)}</t>").text == (cleaned or None)
    assert (
        len(cleaned.encode().decode().splitlines()) <= 1
        or "\u2028" in cleaned
        or "\u2029" in cleaned
    )
    assert clean(cleaned) == cleaned


@given(st.text())
def test_latin_text_is_known_to_the_built_in_fonts(text):
    plain = latin(text)
    assert latin(plain) == plain
    assert stringWidth(plain, "Helvetica", 10.0) >= 0.0


def test_units_and_european_letters_stay():
    text = "Ø 3 µm ≥ 200 g/m², 21 °C × ½ ä é ñ š ž"
    assert latin(text) == text
    assert latin("čŘőŁđ") == "cRoLd"


def test_estimated_width_covers_running_text():
    text = "Laminating epoxy, slow hardener, 200 g/m² E-glass twill weave"
    assert stringWidth(text, "Helvetica", 10.0) <= width_of(text, 10.0 * CAPITAL)
