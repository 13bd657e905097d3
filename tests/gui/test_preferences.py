"""Laywright's page in FreeCAD's own preferences: seen, set, kept, and felt."""

import FreeCAD
import FreeCADGui
import pytest
from pivy import coin
from robot import VERSION, cut_off, grabbed, later, opened, pump, stages_in

from freecad.laywright import preferences
from freecad.laywright.qt import QtCore, QtWidgets
from laywright.files.scale import Ramp, shades
from laywright.mould.tiles.printer import load_printers

pytestmark = pytest.mark.gui


@pytest.fixture
def settings(tmp_path):
    """Keep a person's printers in a folder of the test, and forget all that was set after it."""
    group = FreeCAD.ParamGet(preferences.GROUP)
    group.SetString("PrintersFolder", str(tmp_path / "printers"))
    yield group
    for kind, name, _ in group.GetContents() or ():
        {"String": group.RemString, "Integer": group.RemInt, "Boolean": group.RemBool}[kind](name)


def painted(vobj):
    """Return the colours of what is painted facet by facet in a scene, each once."""
    search = coin.SoSearchAction()
    search.setType(coin.SoMaterial.getClassTypeId())
    search.setInterest(coin.SoSearchAction.ALL)
    search.setSearchingAll(True)
    search.apply(vobj.RootNode)
    paths = search.getPaths()
    paints = [paths[i].getTail().diffuseColor for i in range(paths.getLength())]
    return {
        tuple(round(band, 2) for band in colour.getValue())
        for paint in paints
        if paint.getNum() > 1
        for colour in paint.getValues()
    }


def asked(act):
    """Open FreeCAD's preferences at our page, do something with the page, press OK."""
    problems = []

    def look():
        dialog = QtWidgets.QApplication.activeModalWidget()
        if dialog is None:
            later(look, 0.1)
            return
        try:
            act(dialog, dialog.findChild(QtWidgets.QWidget, "LaywrightPreferences"))
            dialog.findChild(QtWidgets.QDialogButtonBox).button(
                QtWidgets.QDialogButtonBox.Ok
            ).click()
        except BaseException as problem:
            problems.append(problem)
            dialog.reject()

    later(look, 0.5)
    FreeCADGui.showPreferences("Laywright", 0)
    pump()
    if problems:
        raise problems[0]


def choose(page, name, text):
    box = page.findChild(QtWidgets.QComboBox, name)
    place = box.findText(text)
    assert place >= 0, f"{name} does not offer {text}"
    box.setCurrentIndex(place)


def test_the_page_stands_in_freecads_preferences_with_its_icon(window, settings, artefacts):
    def look(dialog, page):
        assert page.isVisible()
        assert grabbed(page, artefacts / f"preferences {VERSION}.png") > 8
        assert cut_off(page) == []
        groups = dialog.findChildren(QtWidgets.QAbstractItemView)
        models = [view.model() for view in groups if view.isVisible() and view.model()]
        rows = [
            model.index(row, 0)
            for model in models
            for row in range(model.rowCount())
            if model.index(row, 0).data() == "Laywright"
        ]
        assert rows
        icon = rows[0].data(QtCore.Qt.DecorationRole)
        shown = icon.pixmap(24, 24).toImage()
        assert len({shown.pixel(x, y) for x in range(20) for y in range(20)}) > 8
        names = [page.findChild(QtWidgets.QComboBox, "Printer").itemText(i) for i in range(3)]
        assert names == list(load_printers())[:3]

    asked(look)
    assert preferences.first_printer() in load_printers()
    assert preferences.paper() == "A4"


def test_what_is_set_is_kept_and_shown_again(window, settings, tmp_path):
    printer = next(iter(load_printers()))

    def change(dialog, page):
        page.findChild(QtWidgets.QLineEdit, "MaterialsFolder").setText(str(tmp_path / "mine"))
        choose(page, "Printer", printer)
        choose(page, "Paper", "Letter")
        choose(page, "DecimalMark", "comma: 0,5")
        choose(page, "Ramp", "frost to night")
        page.findChild(QtWidgets.QCheckBox, "Live").setChecked(False)

    asked(change)
    assert preferences.card_folder() == tmp_path / "mine"
    assert preferences.first_printer() == printer
    assert preferences.paper() == "Letter"
    assert preferences.decimal_mark() == "comma"
    assert preferences.ramp() is Ramp.FROST_TO_NIGHT
    assert preferences.live() is False

    def look(dialog, page):
        boxes = {
            box.objectName(): box.currentText() for box in page.findChildren(QtWidgets.QComboBox)
        }
        assert boxes["Printer"] == printer
        assert boxes["Paper"] == "Letter"
        assert boxes["DecimalMark"] == "comma: 0,5"
        assert boxes["Ramp"] == "frost to night"
        assert not page.findChild(QtWidgets.QCheckBox, "Live").isChecked()
        page.findChild(QtWidgets.QLineEdit, "MaterialsFolder").clear()

    asked(look)
    assert preferences.card_folder() == preferences.usual_folder("MaterialsFolder")


def test_a_printer_of_ones_own_is_seen_and_taken_away(window, settings, tmp_path):
    from dataclasses import replace

    printer = next(iter(load_printers().values()))
    preferences.keep_printer(replace(printer, name="The one in the shed"))

    def look(dialog, page):
        entries = page.findChild(QtWidgets.QListWidget, "Printers")
        drop = page.findChild(QtWidgets.QPushButton, "DropPrinter")
        (item,) = entries.findItems("The one in the shed", QtCore.Qt.MatchExactly)
        other = next(
            entries.item(row) for row in range(entries.count()) if entries.item(row) is not item
        )
        entries.setCurrentItem(other)
        assert drop.isEnabled() is (other.text() == "The one in the shed")
        entries.setCurrentItem(item)
        assert item.font().bold()
        assert drop.isEnabled()
        drop.click()
        assert not entries.findItems("The one in the shed", QtCore.Qt.MatchExactly)
        assert page.findChild(QtWidgets.QComboBox, "Printer").findText("The one in the shed") < 0

    asked(look)
    assert preferences.own_printers() == []
    assert list((tmp_path / "printers").glob("*")) == []
    assert "The one in the shed" not in preferences.printers()


def test_maps_change_their_colours_at_once_and_when_opened_again(job, settings, tmp_path):
    document, stages = job
    check, patterns = stages["ReleaseCheck"], stages["ClothPatterns"]
    patterns.ViewObject.Map = "shear"
    digests = {kind: obj.Digest for kind, obj in stages.items()}
    pump()

    def in_use(check):
        return {tuple(round(band, 2) for band in colour[:3]) for colour in check.FaceColors}

    def palest(ramp):
        return {tuple(round(band, 2) for band in shades(ramp, 3)[0])}

    assert in_use(check) == palest(Ramp.SAND_TO_PLUM)
    asked(lambda dialog, page: choose(page, "Ramp", "straw to bark"))
    assert in_use(check) == palest(Ramp.STRAW_TO_BARK)
    bark = {tuple(round(band, 2) for band in colour) for colour in shades(Ramp.STRAW_TO_BARK, 5)}
    assert set() < painted(patterns.ViewObject) <= bark
    assert not any("Touched" in obj.State for obj in document.Objects)
    path = str(tmp_path / "again.FCStd")
    document.saveAs(path)
    FreeCAD.closeDocument(document.Name)
    preferences.set_choice("Ramp", "frost to night")
    stages = stages_in(FreeCAD.openDocument(path))
    pump()
    assert in_use(stages["ReleaseCheck"]) == palest(Ramp.FROST_TO_NIGHT)
    assert {kind: obj.Digest for kind, obj in stages.items()} == digests


def test_without_live_preview_a_panel_waits_to_be_asked(job, settings):
    _, stages = job
    asked(lambda dialog, page: page.findChild(QtWidgets.QCheckBox, "Live").setChecked(False))
    form = opened(stages["MouldBody"])
    assert not form.findChild(QtWidgets.QCheckBox).isChecked()
    FreeCADGui.Control.closeDialog()
