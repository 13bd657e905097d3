"""The printers that are known, one's own among them, which can be added and taken away."""

from freecad.laywright import preferences
from freecad.laywright.qt import QtCore, QtWidgets, translate
from freecad.laywright.translated import translated
from laywright.errors import LaywrightError

__all__ = ["PrinterList"]


class PrinterList(QtWidgets.QWidget):
    """A list with two buttons; what is done here is done at once, for cards are files.

    Signals
    -------
    changed
        The printers are others now.
    """

    changed = QtCore.Signal()

    def __init__(self, parent=None):
        super().__init__(parent)
        self.entries = QtWidgets.QListWidget()
        self.entries.setObjectName("Printers")
        self.entries.setMaximumHeight(110)
        self.entries.currentRowChanged.connect(lambda *_: self._look())
        self.add = QtWidgets.QPushButton(translate("Laywright", "Printer of your own …"))
        self.add.setObjectName("AddPrinter")
        self.add.setToolTip(
            translate("Laywright", "Begun from the chosen one; its card is kept in your folder")
        )
        self.add.clicked.connect(lambda *_: self._add())
        self.drop = QtWidgets.QPushButton(translate("Laywright", "Take away"))
        self.drop.setObjectName("DropPrinter")
        self.drop.setToolTip(
            translate("Laywright", "Take the card of your own printer out of your folder, now")
        )
        self.drop.clicked.connect(lambda *_: self._drop())
        self.problem = QtWidgets.QLabel()
        self.problem.setObjectName("PrintersProblem")
        self.problem.setWordWrap(True)
        row = QtWidgets.QHBoxLayout()
        row.addWidget(self.add)
        row.addWidget(self.drop)
        row.addStretch()
        column = QtWidgets.QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.entries)
        column.addLayout(row)
        column.addWidget(self.problem)
        self.refill()

    def refill(self):
        """Show the printers that are known now."""
        self.problem.clear()
        self.known, self.own = {}, []
        try:
            self.known, self.own = preferences.printers(), preferences.own_printers()
        except LaywrightError as problem:
            self.problem.setText(translated(problem))
        self.entries.clear()
        for name in self.known:
            self.entries.addItem(name)
            if name in self.own:
                item = self.entries.item(self.entries.count() - 1)
                font = item.font()
                font.setBold(True)
                item.setFont(font)
                item.setToolTip(
                    translate("Laywright", "your own, from {0}").format(
                        preferences.printer_folder()
                    )
                )
        self._look()
        self.changed.emit()

    def chosen(self):
        """Return the name of the chosen printer, "" for none."""
        item = self.entries.currentItem()
        return item.text() if item is not None else ""

    def _look(self):
        self.drop.setEnabled(self.chosen() in self.own)
        self.add.setEnabled(bool(self.known))

    def _add(self):
        from freecad.laywright.panels.printer_window import PrinterWindow

        begun = self.known[self.chosen() or preferences.first_printer()]
        if PrinterWindow(begun, self.window()).exec_():
            self.refill()

    def _drop(self):
        try:
            preferences.drop_printer(self.chosen())
        except LaywrightError as problem:
            self.problem.setText(translated(problem))
            return
        self.refill()
