"""The sentences that the window says in other languages are those of the sources."""

import re
import sys
import xml.etree.ElementTree as ET
from pathlib import Path

import pytest

from laywright.errors import InputError

sys.path.append(str(Path(__file__).resolve().parents[1] / "tools"))
import core_sentences

LANGUAGES = ("de", "fr")


def gaps(text):
    return sorted(re.findall(r"%\d\d?", text))


def known(language):
    path = core_sentences.LISTED.parent / f"Sentences_{language}.ts"
    return {
        message.findtext("source"): message.findtext("translation")
        for message in ET.parse(path).getroot().iter("message")
        if message.find("translation").get("type") != "unfinished"
    }


def test_the_list_of_templates_is_what_the_sources_say():
    listed = core_sentences.LISTED.read_text(encoding="utf-8").splitlines()
    assert listed == core_sentences.sentences(), "run tools/translations.sh"


def test_an_error_is_framed_as_the_template_says():
    parts = ("roll width", "0 mm", "more than 0 mm", "set the width of the roll")
    framed = core_sentences.FRAME
    for place, part in enumerate(parts, 1):
        framed = framed.replace(f"%{place}", part)
    assert str(InputError(*parts)) == framed


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_template_is_translated_with_its_gaps(language):
    templates, translations = core_sentences.sentences(), known(language)
    assert sorted(set(templates) - set(translations)) == []
    wrong = [text for text, said in translations.items() if gaps(text) != gaps(said)]
    assert wrong == []
    assert all(gaps(text) == [f"%{k + 1}" for k in range(len(gaps(text)))] for text in templates)
