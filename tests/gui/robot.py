"""What a person does in the window, for tests: click, type, wait, look."""

import sys
import time
from contextlib import contextmanager
from pathlib import Path

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from freecad.laywright.objects.job import stages_of
from freecad.laywright.qt import QAction, QtWidgets

sys.path.append(str(Path(__file__).resolve().parents[2] / "examples"))
import hatch_cover

__all__ = [
    "VERSION",
    "answered",
    "buttons",
    "chosen_folder",
    "click",
    "click_command",
    "click_in_tree",
    "close_all",
    "colours_in",
    "cut_off",
    "fill",
    "grabbed",
    "later",
    "opened",
    "picture",
    "pump",
    "stages_in",
    "started_job",
    "type_into",
    "until",
    "watch_of",
]

VERSION = ".".join(FreeCAD.Version()[:2])


def pump(seconds=0.3):
    """Let the window do what is waiting."""
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        QtWidgets.QApplication.processEvents(QtCore.QEventLoop.AllEvents, 20)


def until(condition, seconds=30.0):
    """Let the window work until something is true; return whether it became true."""
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        if condition():
            return True
        pump(0.05)
    return False


def later(act, seconds=0.0):
    """Do something as soon as the event loop runs, also inside a dialog."""
    QtCore.QTimer.singleShot(int(1000 * seconds), act)


def click_command(name):
    """Click a command's button in the toolbar, or its entry in the menu."""
    window = FreeCADGui.getMainWindow()
    action = next(action for action in window.findChildren(QAction, name))
    assert until(action.isEnabled, 5.0), f"{name} is grey"
    for bar in window.findChildren(QtWidgets.QToolBar):
        button = bar.widgetForAction(action)
        if button is not None:
            button.click()
            break
    else:
        action.trigger()
    pump()


def click(widget, at=None):
    """Press and release the left button over a widget, as the window system would tell it."""
    at = QtCore.QPointF(widget.rect().center() if at is None else at)
    for kind in (QtCore.QEvent.MouseButtonPress, QtCore.QEvent.MouseButtonRelease):
        event = QtGui.QMouseEvent(
            kind, at, QtCore.Qt.LeftButton, QtCore.Qt.LeftButton, QtCore.Qt.NoModifier
        )
        QtWidgets.QApplication.sendEvent(widget, event)


def click_in_tree(label):
    """Click an object of the active document in the tree, so that it alone is selected."""
    tree = next(
        widget
        for widget in FreeCADGui.getMainWindow().findChildren(QtWidgets.QTreeWidget)
        if widget.metaObject().className() == "Gui::TreeWidget"
    )
    tree.expandAll()
    FreeCADGui.Selection.clearSelection()
    pump()
    (item,) = tree.findItems(label, QtCore.Qt.MatchExactly | QtCore.Qt.MatchRecursive, 0)
    tree.scrollToItem(item)
    click(tree.viewport(), tree.visualItemRect(item).center())
    pump()
    assert [obj.Label for obj in FreeCADGui.Selection.getSelection()] == [label]


@contextmanager
def answered(name, answer):
    """Answer the next dialog of a name; give the list into which its texts are written."""
    seen = []

    def look():
        for window in QtWidgets.QApplication.topLevelWidgets():
            if window.isVisible() and name in (
                window.objectName(),
                window.metaObject().className(),
            ):
                timer.stop()
                seen.append([label.text() for label in window.findChildren(QtWidgets.QLabel)])
                answer(window)
                return

    timer = QtCore.QTimer()
    timer.timeout.connect(look)
    timer.start(100)
    try:
        yield seen
    finally:
        timer.stop()


@contextmanager
def chosen_folder(folder):
    """Name a folder, which is made, in the next dialog that asks for one."""
    dialogs = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Dialog")
    dialogs.SetBool("DontUseNativeDialog", True)
    Path(folder).mkdir()

    def name(dialog):
        dialog.findChild(QtWidgets.QLineEdit, "fileNameEdit").setText(str(folder))
        box = dialog.findChild(QtWidgets.QDialogButtonBox)
        next(
            button
            for button in box.buttons()
            if box.buttonRole(button) == QtWidgets.QDialogButtonBox.AcceptRole
        ).click()

    with answered("QFileDialog", name) as seen:
        yield
    assert seen, "nothing asked for a folder"


def stages_in(document):
    """Return the stages of the one job in a document."""
    group = next(obj for obj in document.Objects if obj.Name.startswith("Job") and obj.Group)
    return stages_of(group)


def started_job(name):
    """Return document and stages of a job that was started by command from picked faces."""
    document = hatch_cover.build(name)
    part = document.HatchCover
    FreeCADGui.Selection.clearSelection()
    for face in hatch_cover.moulded_faces(part.Shape):
        FreeCADGui.Selection.addSelection(document.Name, part.Name, face)
    pump()
    click_command("Laywright_StartJob")
    FreeCADGui.Selection.clearSelection()
    stages = stages_in(document)
    stages["RollPlan"].SearchTime = 0.2
    document.recompute()
    return document, stages


def buttons(form):
    """Return the dialog buttons of the open task panel by name."""
    box = next(
        box
        for box in FreeCADGui.getMainWindow().findChildren(QtWidgets.QDialogButtonBox)
        if box.isVisible()
    )
    kinds = QtWidgets.QDialogButtonBox
    return {name: box.button(getattr(kinds, name)) for name in ("Ok", "Apply", "Cancel")}


def opened(obj):
    """Open an object's task panel by double click; return its form."""
    obj.ViewObject.Proxy.doubleClicked(obj.ViewObject)
    pump()
    assert FreeCADGui.Control.activeDialog()
    label = next(
        label
        for label in FreeCADGui.getMainWindow().findChildren(QtWidgets.QLabel, "Report")
        if label.isVisible()
    )
    return label.parentWidget()


def type_into(form, name, text):
    """Type a text into a panel's field."""
    line = form.findChild(QtWidgets.QLineEdit, name)
    line.setFocus()
    line.setText(text)


def fill(form, name, value):
    """Fill a panel's field, whatever it is: type, choose, turn, tick."""
    widget = form.findChild(QtWidgets.QWidget, name)
    widget.setFocus()
    if isinstance(widget, QtWidgets.QLineEdit):
        widget.setText(value)
    elif isinstance(widget, QtWidgets.QComboBox):
        place = widget.findText(value)
        assert place >= 0, f"{name} does not offer {value}"
        widget.setCurrentIndex(place)
    elif isinstance(widget, QtWidgets.QPlainTextEdit):
        widget.setPlainText(value)
    elif isinstance(widget, QtWidgets.QCheckBox):
        widget.setChecked(value)
    else:
        widget.setValue(value)


def watch_of():
    """Return the window that watches a computation, None while none is shown."""
    found = FreeCADGui.getMainWindow().findChildren(QtWidgets.QDialog, "LaywrightWatch")
    return next((dialog for dialog in found if dialog.isVisible()), None)


def picture(path, names, document):
    """Save the 3D view with only these objects shown; return it as an image."""
    for obj in document.Objects:
        obj.ViewObject.Visibility = obj.Name in names
    view = FreeCADGui.getDocument(document.Name).activeView()
    view.viewAxometric()
    view.fitAll()
    pump()
    view.saveImage(str(path), 600, 450, "White")
    return QtGui.QImage(str(path))


def colours_in(image):
    """Return the share of pixels above the legend that are no kind of grey."""
    found = 0
    for x in range(0, image.width(), 3):
        for y in range(0, image.height() * 2 // 3, 3):
            colour = QtGui.QColor(image.pixel(x, y))
            found += max(colour.red(), colour.blue()) - min(colour.red(), colour.blue()) > 8
    return found / (image.width() / 3 * image.height() * 2 / 9)


def grabbed(widget, path):
    """Save a picture of a widget; return the number of different colours in it."""
    image = widget.grab().toImage()
    image.save(str(path))
    return len(
        {image.pixel(x, y) for x in range(0, image.width(), 4) for y in range(image.height())}
    )


def cut_off(form):
    """Return the texts in a form for which there is too little room."""
    found = []
    for widget in form.findChildren(QtWidgets.QWidget):
        if widget.isVisible() and isinstance(
            widget, (QtWidgets.QLabel, QtWidgets.QPushButton, QtWidgets.QCheckBox)
        ):
            wraps = isinstance(widget, QtWidgets.QLabel) and widget.wordWrap()
            needed = widget.minimumSizeHint() if wraps else widget.sizeHint()
            if widget.width() + 1 < needed.width() or widget.height() + 1 < needed.height():
                found.append(widget.text())
    return found


def close_all():
    """Close what is open: panel and documents."""
    FreeCADGui.Control.closeDialog()
    FreeCADGui.Selection.clearSelection()
    pump()
    for name in list(FreeCAD.listDocuments()):
        FreeCAD.closeDocument(name)
    pump()
