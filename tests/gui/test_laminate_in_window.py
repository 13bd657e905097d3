"""The laminate in FreeCAD's real window: plies, arrow, figures at once, cards, a layup found."""

import FreeCAD
import FreeCADGui
import Part
import pytest
from PySide import QtCore, QtGui
from robot import pump

from freecad.laywright import preferences
from freecad.laywright.objects.job import add_stage
from freecad.laywright.panels.arrow import TurningArrow
from freecad.laywright.panels.card_window import CardWindow
from freecad.laywright.panels.ply_table import PlyTable
from freecad.laywright.qt import QtWidgets
from laywright.laminate.materials import load_materials

pytestmark = pytest.mark.gui

CARBON = "Carbon twill weave 200 g/m^2"
GLASS = "E-glass twill weave 200 g/m^2"
RESIN = "Laminating epoxy, slow hardener"


def pull(widget, start, end, modifiers=QtCore.Qt.NoModifier):
    """Pull the mouse over a widget from one point to another."""
    kinds = QtCore.QEvent
    left, none = QtCore.Qt.LeftButton, QtCore.Qt.NoButton
    for kind, point, button, held in (
        (kinds.MouseButtonPress, start, left, left),
        (kinds.MouseMove, end, none, left),
        (kinds.MouseButtonRelease, end, left, none),
    ):
        place = QtCore.QPointF(*point)
        there = QtCore.QPointF(widget.mapToGlobal(place.toPoint()))
        event = QtGui.QMouseEvent(kind, place, there, button, held, modifiers)
        QtWidgets.QApplication.sendEvent(widget, event)


def ink(widget):
    """Return the share of pixels of a widget that are not white."""
    image = widget.grab().toImage()
    points = [(x, y) for x in range(0, image.width(), 2) for y in range(0, image.height(), 2)]
    dark = sum(QtGui.QColor(image.pixel(x, y)).lightness() < 250 for x, y in points)
    return dark / len(points)


@pytest.fixture
def layup(doc):
    FreeCADGui.activateWorkbench("LaywrightWorkbench")
    obj = add_stage(doc, "Layup")
    obj.Cloths, obj.Angles, obj.Resin = [CARBON, GLASS, CARBON], [0.0, 45.0, 90.0], RESIN
    doc.recompute()
    yield obj
    if FreeCADGui.Control.activeDialog():
        FreeCADGui.ActiveDocument.resetEdit()
        FreeCADGui.Control.closeDialog()
        pump()


@pytest.fixture
def form(layup):
    """Return the form of the Layup's panel, opened."""
    FreeCADGui.ActiveDocument.setEdit(layup, 0)
    pump()
    looks = FreeCADGui.getMainWindow().findChildren(QtWidgets.QWidget, "LaminateLook")
    return next(look for look in looks if look.isVisible()).parentWidget()


def figures(form):
    pump(0.8)
    return form.findChild(QtWidgets.QLabel, "LaminateFigures").text()


def press(parent, text):
    next(b for b in parent.findChildren(QtWidgets.QPushButton) if b.text() == text).click()
    pump()


def test_an_angle_is_set_by_its_arrow_and_by_number(form):
    table = form.findChild(QtWidgets.QTableWidget, "Plies")
    arrow, number = table.cellWidget(0, 2), table.cellWidget(0, 1)
    middle = arrow.width() / 2
    pull(arrow, (middle + 10, middle), (middle + 1, middle - 12))
    assert number.value() == 90.0
    pull(arrow, (middle, middle - 12), (middle - 8, middle - 9), QtCore.Qt.ControlModifier)
    assert number.value() == 132.0
    number.setValue(-30.0)
    assert arrow.angle() == -30.0
    turns = []
    lone = TurningArrow(180.0)
    lone.turned.connect(turns.append)
    pull(lone, (17 - 12, 17), (17 - 12, 18 + 12))
    assert turns == [-135.0]


def test_plies_are_pulled_elsewhere_and_mirrored(form):
    table = form.findChild(PlyTable)
    rows = form.findChild(QtWidgets.QTableWidget, "Plies").verticalHeader()
    assert rows.sectionsMovable()
    rows.moveSection(2, 0)
    pump()
    moved = [(CARBON, 90.0, ""), (CARBON, 0.0, ""), (GLASS, 45.0, "")]
    assert table.plies() == moved
    rows.moveSection(0, 2)
    pump()
    assert table.plies() == [*moved[1:], moved[0]]
    table.fill(moved)
    press(form, "Mirror, last once")
    assert table.plies() == [*moved, moved[1], moved[0]]
    table.fill(moved)
    press(form, "Mirror all")
    assert table.plies() == [*moved, *reversed(moved)]
    assert "Symmetric. Balanced." in figures(form)


def test_figures_and_pictures_follow_at_once_and_nothing_is_kept_before_ok(layup, form):
    before, version = figures(form), layup.Digest
    assert "1200 g/m²" in before
    assert "nine of ten parts" in before
    assert "Aluminium alloy sheet" in before
    stack = form.findChild(QtWidgets.QWidget, "StackPicture")
    assert 0.02 < ink(stack) < 0.9
    press(form, "Add")
    after = figures(form)
    assert "1600 g/m²" in after
    tabs = form.findChild(QtWidgets.QTabWidget)
    assert not tabs.isTabEnabled(2)
    field = form.findChild(QtWidgets.QWidget, "PullAlong")
    line = field if isinstance(field, QtWidgets.QLineEdit) else field.findChild(QtWidgets.QLineEdit)
    line.setText("25")
    pump(0.8)
    assert "times this load" in form.findChild(QtWidgets.QLabel, "LoadFigures").text()
    assert tabs.isTabEnabled(2)
    for page, name in ((1, "StiffnessPicture"), (2, "LoadPicture")):
        tabs.setCurrentIndex(page)
        pump()
        assert 0.005 < ink(form.findChild(QtWidgets.QWidget, name)) < 0.5
    assert layup.Digest == version
    box = next(
        box
        for box in FreeCADGui.getMainWindow().findChildren(QtWidgets.QDialogButtonBox)
        if box.isVisible()
    )
    box.button(QtWidgets.QDialogButtonBox.Cancel).click()
    pump()
    assert layup.Digest == version
    assert len(layup.Cloths) == 3


def test_what_folds_away_opens_where_something_is_wrong(layup, form):
    field = form.findChild(QtWidgets.QWidget, "CoreOnPly")
    assert not field.isVisible()
    core = form.findChild(QtWidgets.QComboBox, "Core")
    core.setCurrentIndex(1)
    field.setValue(7)
    box = next(
        box
        for box in FreeCADGui.getMainWindow().findChildren(QtWidgets.QDialogButtonBox)
        if box.isVisible()
    )
    box.button(QtWidgets.QDialogButtonBox.Ok).click()
    pump()
    said = form.findChild(QtWidgets.QLabel, "Problem Core")
    assert said.isVisible()
    assert "found a place after ply 7 of 3" in said.text()
    assert core.isVisible()
    box.button(QtWidgets.QDialogButtonBox.Cancel).click()
    pump()
    assert layup.Core == ""


def test_a_wrong_layup_is_said_in_place_of_figures(form):
    form.findChild(PlyTable).fill([])
    assert "one ply at least" in figures(form)


def test_a_layup_is_found_for_the_stiffness_of_the_present_one(form, artefacts):
    form.findChild(QtWidgets.QPushButton, "FindLayup").click()
    pump()
    window = form.findChild(QtWidgets.QDialog, "LayupChoice")
    press(window, "Search")
    best = window.findChild(QtWidgets.QTableWidget, "BestLayups")
    assert best.rowCount() > 1
    masses = [float(best.item(row, 2).text()) for row in range(best.rowCount())]
    assert masses == sorted(masses)
    assert masses[0] <= 1200.0
    assert "common practice, no source" in window.findChild(QtWidgets.QLabel, "ChoiceWords").text()
    assert 0.01 < ink(window.findChild(QtWidgets.QWidget, "TradeOff")) < 0.5
    window.grab().save(str(artefacts / f"find a layup {FreeCAD.Version()[1]}.png"))
    wish = window.findChild(QtWidgets.QLineEdit, "Wish_mass")
    wish.setText("1 g/m^2")
    press(window, "Search")
    assert best.rowCount() == 0
    assert "layups that fulfils it" in window.findChild(QtWidgets.QLabel, "ChoiceWords").text()
    wish.setText("")
    press(window, "Search")
    taken = window.plies_taken()
    press(window, "Take this one")
    assert form.findChild(PlyTable).plies() == [(*ply, "") for ply in taken]


def test_the_librarys_cards_are_taken_where_they_are_asked_for(layup):
    """The job keeps a heavier card than the library has; the panel says so and offers another."""
    kept = list(layup.Cards)
    layup.Cards = [text.replace("value = 200", "value = 205") for text in kept]
    layup.Document.recompute()
    assert layup.ArealMass == pytest.approx(1230.0)
    FreeCADGui.ActiveDocument.setEdit(layup, 0)
    pump()
    boxes = FreeCADGui.getMainWindow().findChildren(QtWidgets.QCheckBox, "RenewCards")
    box = next(box for box in boxes if box.isVisible())
    form = box.parentWidget()
    assert "1230 g/m²" in figures(form)
    form.findChild(QtWidgets.QPushButton, "FindLayup").click()
    pump()
    window = form.findChild(QtWidgets.QDialog, "LayupChoice")
    press(window, "Search")
    best = window.findChild(QtWidgets.QTableWidget, "BestLayups")
    assert best.item(0, 2).text() == "1230"  # the kept cards are those of the choice, too
    press(window, "Close")
    box.setChecked(True)
    assert "1200 g/m²" in figures(form)
    buttons = next(
        found
        for found in FreeCADGui.getMainWindow().findChildren(QtWidgets.QDialogButtonBox)
        if found.isVisible()
    )
    buttons.button(QtWidgets.QDialogButtonBox.Ok).click()
    pump()
    assert layup.ArealMass == pytest.approx(1200.0)
    assert list(layup.Cards) == kept


@pytest.fixture
def cards(tmp_path):
    """Return the window with the cards; one's own go into a folder for the test."""
    settings = FreeCAD.ParamGet(preferences.GROUP)
    before = settings.GetString("MaterialsFolder", "")
    settings.SetString("MaterialsFolder", str(tmp_path / "my cards"))
    window = CardWindow(FreeCADGui.getMainWindow())
    window.show()
    pump()
    yield window
    window.close()
    settings.SetString("MaterialsFolder", before)
    pump()


def value(window, field):
    """Return the row of a value by its name in the table."""
    rows = range(window.table.rowCount())
    return next(row for row in rows if window.table.item(row, 0).text().startswith(field))


def test_a_card_is_changed_refused_kept_and_taken_away(cards, tmp_path, artefacts):
    cards.choose(CARBON)
    pump()
    assert "comes along" in cards.origin.text()
    row = value(cards, "areal weight")
    texts = [cards.table.item(row, column).text() for column in range(1, 6)]
    assert texts[:4] == ["200", "g/m^2", "190", "210"]
    assert texts[4].startswith("nominal weight")
    cards.grab().save(str(artefacts / f"material cards {FreeCAD.Version()[1]}.png"))
    for column, text in ((1, "200000"), (3, ""), (4, "")):
        cards.table.item(row, column).setText(text)
    press(cards, "Keep")
    assert "areal_weight: found 200000 g/m^2, needed 5 to 3000 g/m^2" in cards.problem.text()
    assert cards.table.currentRow() == row
    assert not (tmp_path / "my cards").exists() or not list((tmp_path / "my cards").iterdir())
    cards.table.item(row, 1).setText("212")
    press(cards, "Keep")
    assert cards.problem.text() == ""
    assert "your own" in cards.origin.text()
    assert load_materials(tmp_path / "my cards").cloth(CARBON).areal_weight == 212.0
    press(cards, "Take away")
    assert "comes along" in cards.origin.text()
    press(cards, "Take away")
    assert "a card that comes along" in cards.problem.text()


def test_a_card_is_copied_given_away_and_taken_in(cards, tmp_path):
    cards.choose(RESIN)
    press(cards, "Copy")
    cards.title.setText("Epoxy from the shelf")
    cards.give_away(tmp_path / "given.toml")
    press(cards, "Keep")
    assert "Epoxy from the shelf" in cards.library.resins
    press(cards, "Take away")
    assert "Epoxy from the shelf" not in cards.library.resins
    cards.take_in(tmp_path / "given.toml")
    assert cards.title.text() == "Epoxy from the shelf"
    press(cards, "Keep")
    library = load_materials(tmp_path / "my cards")
    first, second = library.resins[RESIN], library.resins["Epoxy from the shelf"]
    assert (second.density, second.gel_hours) == (first.density, first.gel_hours)
    assert second.glass_transition_c == first.glass_transition_c


def test_a_ply_covers_what_is_typed_or_picked_in_the_view(layup, form, artefacts):
    part = layup.Document.addObject("Part::Feature", "Plate")
    hole = Part.makeCylinder(5.0, 10.0, FreeCAD.Vector(30.0, 20.0, 0.0))
    part.Shape = Part.makeBox(100.0, 60.0, 4.0).cut(hole)
    rim = next(
        f"Edge{number}"
        for number, edge in enumerate(part.Shape.Edges, 1)
        if hasattr(edge.Curve, "Center") and edge.Curve.Center.z > 3.0
    )
    table = form.findChild(QtWidgets.QTableWidget, "Plies")
    table.setCurrentCell(1, 0)
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(part, rim, 35.0, 20.0, 4.0)
    press(form, "Cover round the point")
    covers = [form.findChild(QtWidgets.QLineEdit, f"Covers{row}") for row in (1, 2, 3)]
    assert [field.text() for field in covers] == ["", "30 mm round 30, 20, 4", ""]
    assert "30 mm round 30, 20, 4" in figures(form)
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(part, "Face2")
    FreeCADGui.Selection.addSelection(part, "Face3")
    table.setCurrentCell(2, 0)
    press(form, "Cover picked faces")
    assert covers[2].text() == "faces Face2, Face3"
    covers[2].setText("somewhere")
    assert "extent of a ply" in figures(form)
    covers[2].setText("25 mm along the edge")
    assert "30 mm round 30, 20, 4" in figures(form)
    form.window().grab().save(str(artefacts / f"local plies {FreeCAD.Version()[1]}.png"))
    box = next(
        box
        for box in FreeCADGui.getMainWindow().findChildren(QtWidgets.QDialogButtonBox)
        if box.isVisible()
    )
    box.button(QtWidgets.QDialogButtonBox.Ok).click()
    pump()
    assert layup.Extents == ["", "30 mm round 30, 20, 4", "25 mm along the edge"]
    assert layup.Status == "up to date"
    assert any("25 mm along the edge" in remark for remark in layup.Remarks)
