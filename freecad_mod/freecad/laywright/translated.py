"""What the core says, in the language of the window.

The core makes whole English sentences, with numbers and names in them.  The file
``translations/sentences.txt`` lists the templates that they are made from; it is written by
``tools/translations.sh``, from the core's source.  Here the template behind a sentence is found,
its translation is taken, and what stood in its gaps is set in, itself translated where it holds
words.  What is not found stays as it is.
"""

import functools
import re

from freecad.laywright import TRANSLATIONS
from freecad.laywright.qt import translate
from laywright.errors import LaywrightError

__all__ = ["translated"]

CONTEXT = "Sentences"
FRAME = "%1: found %2, needed %3; %4."
_GAP = re.compile(r"%(\d\d?)")
_FILLING = r"((?:(?![.!?] [A-Z]).)*?)"  # what stands in a gap, if anything, ends no sentence
_SENTENCES = re.compile(r"(?<=[.!?]) +(?=[A-Z])")
_TELLING = 6
_MARKS = re.compile(r"[:;,] ")


def translated(words):
    """Return an error, or a text that the core made, in the language of the window.

    Parameters
    ----------
    words : LaywrightError or Exception or str
    """
    if translate(CONTEXT, FRAME) == FRAME:
        return str(words)  # the window speaks the core's own language
    if isinstance(words, LaywrightError):
        parts = [_said(part) for part in (words.where, words.found, words.needed, words.remedy)]
        if str(words) == _filled(FRAME, (words.where, words.found, words.needed, words.remedy)):
            return _filled(translate(CONTEXT, FRAME), parts)
    return _said(str(words))


def _said(text):
    """Return a text in the language of the window: as a whole, by sentences, or by its parts."""
    found = _of_template(text)
    if found is not None:
        return found
    sentences = _SENTENCES.split(text)
    if len(sentences) > 1:
        return " ".join(map(_said, sentences))
    for mark in _MARKS.finditer(text):
        found = _of_template(text[mark.end() :])
        if found is not None:
            before = _of_template(text[: mark.start() + 1])  # some end in their colon
            if before is None:
                before = _said(text[: mark.start()]) + mark[0][0]
            return f"{before} {found}"
    return text


def _of_template(text):
    """Return the translation of a text that is made from one template, or None."""
    bare = text.strip()
    exact, gapped = _templates()
    if bare in exact:
        return translate(CONTEXT, bare)
    parted = _MARKS.search(bare)
    for longest, pattern, template in gapped:
        if parted and len(longest) < _TELLING:
            continue  # "%1 mm" says nothing of a text that has parts of its own
        match = pattern.fullmatch(bare) if longest in bare else None
        if match:
            return _filled(translate(CONTEXT, template), [_said(gap) for gap in match.groups()])
    return None


def _filled(template, gaps):
    return _GAP.sub(lambda gap: gaps[int(gap[1]) - 1], template)


@functools.cache
def _templates():
    """Return the templates without gaps, and those with gaps, the most telling first."""
    lines = (TRANSLATIONS / "sentences.txt").read_text(encoding="utf-8").splitlines()
    gapped = []
    for template in lines:
        literals = _GAP.split(template)[::2]
        if len(literals) > 1:
            pattern = re.compile(_FILLING.join(re.escape(literal) for literal in literals))
            gapped.append((max(literals, key=len), pattern, template))
    gapped.sort(key=lambda entry: -len(_GAP.sub("", entry[2])))
    return frozenset(lines), gapped
