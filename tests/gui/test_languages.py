"""German and French: texts are there, built, shown, and have room."""

import re
import sys
from pathlib import Path

import FreeCAD
import FreeCADGui
import pytest
from robot import VERSION, buttons, cut_off, grabbed, opened, pump, type_into

from freecad.laywright import TRANSLATIONS
from freecad.laywright.qt import QAction, QtCore, QtWidgets

sys.path.append(str(Path(__file__).resolve().parents[2] / "tools"))
import translations

pytestmark = pytest.mark.gui

LANGUAGES = {"de": ("Auftrag beginnen", "Sockelhöhe"), "fr": ("Commencer un travail", "Hauteur")}
UNIT = re.compile(r"\((?:mm|g|h|min|s|°C|%|K|N|kPa|g/m²|N/mm|mm²|cm²|cm³|mm³)\)$")
# Alike in both, or names that nobody translates
SAME = re.compile(r"[\W\d]*|A4|Letter|Tsai-.*|Hashin|Laywright|Medium.*|Barcol 934|Shore D|mm|g/m²")


@pytest.fixture
def speaking(request, window):
    """Let the window speak a language; English again afterwards."""
    FreeCADGui.setLocale(request.param)
    pump()
    yield request.param
    FreeCADGui.setLocale("en")
    pump()


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_texts_of_the_workbench_are_translated_and_built(language):
    known = translations.read(TRANSLATIONS / f"Laywright_{language}.ts")
    entries = translations.texts()
    missing = [entry for entry in entries if entry not in known]
    assert missing == []
    translator = QtCore.QTranslator()
    assert translator.load(str(TRANSLATIONS / f"Laywright_{language}.qm"))
    for (context, text), translated in known.items():
        assert translator.translate(context, text) == translated
        assert re.findall(r"\{\d\}", text) == re.findall(r"\{\d\}", translated), text
        assert UNIT.findall(text) == UNIT.findall(translated), text


@pytest.mark.parametrize("speaking", LANGUAGES, indirect=True)
def test_every_panel_speaks_and_nothing_is_cut_off(job, speaking, artefacts):
    _, stages = job
    start, height = LANGUAGES[speaking]
    actions = FreeCADGui.getMainWindow().findChildren(QAction, "Laywright_StartJob")
    assert {action.text().replace("&", "") for action in actions} == {start}
    english = {
        text
        for (_, text), said in translations.read(TRANSLATIONS / f"Laywright_{speaking}.ts").items()
        if said != text
    }
    for kind, obj in stages.items():
        form = opened(obj)
        assert grabbed(form, artefacts / f"{speaking} {kind} {VERSION}.png") > 8
        assert cut_off(form) == [], kind
        labels = {label.text() for label in form.findChildren(QtWidgets.QLabel)}
        shown = {text for text in labels if not SAME.fullmatch(text)}
        untranslated = shown & english - {obj.Label for obj in stages.values()}
        assert untranslated == set(), kind
        if kind == "MouldBody":
            assert any(text.startswith(height) for text in labels)
        buttons(form)["Cancel"].click()
        pump(0.1)
    window = FreeCADGui.getMainWindow()
    assert grabbed(window, artefacts / f"{speaking} window {VERSION}.png") > 20
    assert {obj.Status for obj in stages.values()} == {"up to date"}
    assert FreeCAD.ActiveDocument.UndoCount == 0


SAID = {
    "de": ("Sockelhöhe: gefunden: 0.1 mm; gebraucht: ", "Abhilfe: ", "nicht angewandt: "),
    "fr": ("hauteur du socle : trouvé : 0.1 mm ; attendu : ", "Remède : ", "non appliqué : "),
}


@pytest.mark.parametrize("speaking", LANGUAGES, indirect=True)
def test_what_the_core_says_is_in_the_language_of_the_window(job, speaking, artefacts):
    _, stages = job
    problem, remedy, listed = SAID[speaking]
    form = opened(stages["MouldBody"])
    report = form.findChild(QtWidgets.QLabel, "Report").text()
    assert listed in report
    assert "not applied" not in report
    assert "laminate thickness" not in report
    type_into(form, "BaseHeight", "0.1 mm")
    buttons(form)["Ok"].click()
    pump()
    shown = form.findChild(QtWidgets.QLabel, "Problem BaseHeight").text()
    grabbed(form, artefacts / f"{speaking} problem {VERSION}.png")
    assert problem in shown
    assert remedy in shown
    buttons(form)["Cancel"].click()
    pump(0.1)
