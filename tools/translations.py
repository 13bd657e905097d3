"""Gather the texts for translation: those of the workbench, and the sentences of the core.

Run inside FreeCAD, for the stages and commands say themselves what they show::

    bash tools/translations.sh

In ``freecad_mod/freecad/laywright/translations`` stand two ``.ts`` files for each language.  Texts
that are new are added to them, marked as unfinished; texts that are gone are taken out; what is
translated stays.  The ``.qm`` files beside them are made from them by Qt's lrelease.
``sentences.txt`` holds the templates in which ``translated.py`` finds what the core says.
"""

import ast
import os
import sys
import traceback
import xml.etree.ElementTree as ET
from pathlib import Path

sys.path.append(str(Path(__file__).resolve().parent))
from core_sentences import LISTED, sentences

WORKBENCH = Path(__file__).resolve().parents[1] / "freecad_mod" / "freecad" / "laywright"
LANGUAGES = ("de", "fr")


def texts():
    """Return every text that can be translated, as (context, text), in order."""
    found = [("Workbench", "Laywright"), ("Workbench", "Examples")]
    for path in sorted(WORKBENCH.rglob("*.py")):
        found += _calls(ast.parse(path.read_text(encoding="utf-8")))
    found += _of_commands() + _of_stages()
    return list(dict.fromkeys(entry for entry in found if entry[1]))


def _calls(tree):
    """Return what stands literally in calls of translate, and in toggles of views."""
    found = []
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call) or not isinstance(node.func, ast.Name):
            continue
        words = [word.value for word in node.args if isinstance(word, ast.Constant)]
        if node.func.id == "translate" and len(words) == 2 == len(node.args):
            found.append(tuple(words))
        elif node.func.id == "Toggle" and len(words) == 2:
            found.append(("Laywright", words[1]))
    return found


def _of_commands():
    from freecad.laywright.commands import COMMANDS

    return [
        (name, text) for name, command in COMMANDS.items() for text in (command.title, command.tip)
    ]


def _of_stages():
    from freecad.laywright.objects.job import KINDS, TESTS
    from freecad.laywright.panels.fields import words_of

    found = []
    for cls in (KINDS | TESTS).values():
        for prop in (*cls.properties, *cls.reports):
            found += [words_of(prop.name), prop.doc]
            if prop.kind == "Enumeration":
                found += list(prop.default)
    return [("App::Property", text) for text in found]


def read(path):
    """Return the finished translations of a file by (context, text)."""
    if not path.is_file():
        return {}
    return {
        (context.findtext("name"), message.findtext("source")): message.findtext("translation")
        for context in ET.parse(path).getroot().iter("context")
        for message in context.iter("message")
        if message.find("translation").get("type") != "unfinished"
    }


def write(path, language, entries, known):
    """Write a file of translations; what is not known is marked as unfinished."""
    root = ET.Element("TS", version="2.1", language=language, sourcelanguage="en")
    for context in sorted({context for context, _ in entries}):
        group = ET.SubElement(root, "context")
        ET.SubElement(group, "name").text = context
        for entry in sorted(entry for entry in entries if entry[0] == context):
            message = ET.SubElement(group, "message")
            ET.SubElement(message, "source").text = entry[1]
            translation = ET.SubElement(message, "translation")
            if entry in known:
                translation.text = known[entry]
            else:
                translation.set("type", "unfinished")
    ET.indent(root, " ")
    body = ET.tostring(root, encoding="unicode")
    path.write_text(f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{body}\n', "utf-8")


def main():
    """Bring every file up to date; say what is not translated yet."""
    templates = sentences()
    LISTED.write_text("\n".join(templates) + "\n", "utf-8")
    catalogues = {"Laywright": texts(), "Sentences": [("Sentences", text) for text in templates]}
    for catalogue, entries in catalogues.items():
        for language in LANGUAGES:
            path = LISTED.parent / f"{catalogue}_{language}.ts"
            known = read(path)
            write(path, language, entries, known)
            left = sum(entry not in known for entry in entries)
            sys.stderr.write(f"{path.stem}: {len(entries)} texts, {left} not translated\n")


if __name__ != "__main__" and "LAYWRIGHT_TRANSLATE" in os.environ:
    try:
        main()
    except BaseException:
        traceback.print_exc()
        os._exit(1)
    os._exit(0)
