"""The page of Laywright in FreeCAD's own preferences."""

from freecad.laywright import preferences
from freecad.laywright.qt import QtGui, QtWidgets, translate

__all__ = ["PreferencesPage"]

_FOLDERS = ("MaterialsFolder", "PrintersFolder", "RecordsFolder")
_STRIP, _SHADES = (96, 14), 6  # pixels


class PreferencesPage:
    """What FreeCAD asks of a page: a form, and to load and save what stands in it.

    Attributes
    ----------
    form : QWidget
        Each field is named after its parameter.
    """

    def __init__(self, parent=None):
        self.form = QtWidgets.QWidget()
        self.form.setObjectName("LaywrightPreferences")
        self.form.setWindowTitle(translate("Laywright", "General"))
        self.folders = {name: _FolderField(name) for name in _FOLDERS}
        self.printer, self.paper = _choice("Printer"), _choice("Paper")
        self.mark, self.ramp = _choice("DecimalMark"), _choice("Ramp")
        self.live = QtWidgets.QCheckBox(
            translate("Laywright", "Show changes in task panels at once")
        )
        self.live.setObjectName("Live")
        self.printers = self._printer_list()
        column = QtWidgets.QVBoxLayout(self.form)
        for title, rows in self._groups():
            box = QtWidgets.QGroupBox(title)
            form = QtWidgets.QFormLayout(box)
            for row in rows:
                form.addRow(*row)
            column.addWidget(box)
        column.addStretch()

    def _groups(self):
        """Return title and rows of every group."""
        materials, printers, records = self.folders.values()
        return (
            (
                translate("Laywright", "Cards of your own"),
                (
                    (translate("Laywright", "Folder with material cards"), materials),
                    (translate("Laywright", "Folder with printer cards"), printers),
                    (translate("Laywright", "Folder with records of parts"), records),
                    (translate("Laywright", "Printers"), self.printers),
                ),
            ),
            (
                translate("Laywright", "New jobs"),
                (
                    (translate("Laywright", "Printer of a new job"), self.printer),
                    (translate("Laywright", "Paper of the printed sheets"), self.paper),
                    (translate("Laywright", "Decimal mark on the sheets"), self.mark),
                ),
            ),
            (
                translate("Laywright", "In the window"),
                ((translate("Laywright", "Colours of maps"), self.ramp), (self.live,)),
            ),
        )

    def _printer_list(self):
        """Return the list of printers, or why there is none."""
        try:
            from freecad.laywright.panels.printer_list import PrinterList
        except ImportError as problem:
            words = translate("Laywright", "Packages are missing: {0}")
            return QtWidgets.QLabel(words.format(problem.name))
        found = PrinterList()
        found.changed.connect(self._offer_printers)
        return found

    def _offer_printers(self):
        chosen = self.printer.currentText()
        self.printer.clear()
        self.printer.addItems(list(getattr(self.printers, "known", ())))
        self.printer.setCurrentIndex(max(self.printer.findText(chosen), 0))

    def loadSettings(self):
        """Show what is set; FreeCAD calls this when its dialog opens."""
        for field in self.folders.values():
            field.load()
        self._offer_printers()
        if self.printer.count():
            self.printer.setCurrentText(preferences.first_printer())
        _offer(self.paper, {name: name for name in preferences.PAPERS}, preferences.paper())
        marks = {
            "point": translate("Laywright", "point: 0.5"),
            "comma": translate("Laywright", "comma: 0,5"),
        }
        _offer(self.mark, marks, preferences.decimal_mark())
        self._offer_ramps()
        self.live.setChecked(preferences.live())

    def _offer_ramps(self):
        from laywright.files.scale import Ramp, shades

        names = {
            Ramp.SAND_TO_PLUM.value: translate("Laywright", "sand to plum"),
            Ramp.FROST_TO_NIGHT.value: translate("Laywright", "frost to night"),
            Ramp.STRAW_TO_BARK.value: translate("Laywright", "straw to bark"),
        }
        _offer(self.ramp, names, preferences.ramp().value)
        for place, ramp in enumerate(Ramp):
            self.ramp.setItemIcon(place, _strip(shades(ramp, _SHADES)))
        self.ramp.setIconSize(QtGui.QPixmap(*_STRIP).size())

    def saveSettings(self):
        """Keep what is set; FreeCAD calls this on OK and Apply."""
        for field in self.folders.values():
            preferences.set_choice(field.name, field.text().strip())
        if self.printer.count():
            preferences.set_choice("Printer", self.printer.currentText())
        for box in (self.paper, self.mark, self.ramp):
            preferences.set_choice(box.objectName(), box.currentData())
        preferences.set_live(self.live.isChecked())
        if hasattr(self.printers, "refill"):
            self.printers.refill()
        from freecad.laywright.views.base import refresh_all

        refresh_all()


class _FolderField(QtWidgets.QWidget):
    """A folder by its path, and a button that asks for one; empty is the usual one."""

    def __init__(self, name):
        super().__init__()
        self.name = name
        self.line = QtWidgets.QLineEdit()
        self.line.setObjectName(name)
        button = QtWidgets.QPushButton("…")
        button.clicked.connect(lambda *_: self._ask())
        row = QtWidgets.QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.line, 1)
        row.addWidget(button)

    def text(self):
        """Return the path, "" for the usual folder."""
        return self.line.text()

    def load(self):
        """Show the folder that is set."""
        self.line.setPlaceholderText(str(preferences.usual_folder(self.name)))
        self.line.setText(preferences.chosen_folder(self.name))

    def _ask(self):
        from freecad.laywright.asking import ask_for_folder

        words = translate("Laywright", "Folder for cards and records")
        folder = ask_for_folder(words, self.text(), self.window())
        if folder:
            self.line.setText(folder)


def _choice(name):
    box = QtWidgets.QComboBox()
    box.setObjectName(name)
    return box


def _offer(box, names, chosen):
    """Fill a box with values and their names, and choose one."""
    box.clear()
    for value, name in names.items():
        box.addItem(name, value)
    box.setCurrentIndex(box.findData(chosen))


def _strip(colours):
    """Return colours beside each other as an icon."""
    width, height = _STRIP
    picture = QtGui.QPixmap(width, height)
    painter = QtGui.QPainter(picture)
    for place, colour in enumerate(colours):
        left = place * width // len(colours)
        painter.fillRect(left, 0, width, height, QtGui.QColor.fromRgbF(*colour))
    painter.end()
    return QtGui.QIcon(picture)
