"""A printer of one's own: begun from a known one, kept as a card for all jobs."""

from freecad.laywright import preferences
from freecad.laywright.qt import QtWidgets, translate
from freecad.laywright.translated import translated
from laywright.errors import LaywrightError
from laywright.mould.tiles.printer import card_of, printer_of

__all__ = ["PrinterWindow"]


class PrinterWindow(QtWidgets.QDialog):
    """One field for each entry of a printer's card; every number is typed with its unit.

    Parameters
    ----------
    printer : Printer
        What the fields show first.
    """

    def __init__(self, printer, parent=None):
        super().__init__(parent)
        self.setObjectName("PrinterCard")
        self.setWindowTitle(translate("Laywright", "Printer of your own"))
        self.printer = printer
        form = QtWidgets.QFormLayout(self)
        self.fields = {}
        card = card_of(printer)
        material = card.pop("material")
        for key, value in (
            *card.items(),
            *((f"material_{key}", value) for key, value in material.items()),
        ):
            field = QtWidgets.QLineEdit(", ".join(value) if isinstance(value, list) else value)
            field.setObjectName(f"Printer_{key}")
            form.addRow(key.replace("_", " "), field)
            self.fields[key] = field
        self.problem = QtWidgets.QLabel()
        self.problem.setObjectName("PrinterProblem")
        self.problem.setWordWrap(True)
        keep = QtWidgets.QPushButton(translate("Laywright", "Keep"))
        keep.setToolTip(translate("Laywright", "Keep the card in your folder, for all jobs"))
        keep.clicked.connect(self.keep)
        form.addRow(self.problem)
        form.addRow(keep)
        self.resize(460, self.sizeHint().height())

    def typed(self):
        """Return the printer as it is typed."""
        texts = {key: field.text().strip() for key, field in self.fields.items()}
        volume = [side.strip() for side in texts.pop("volume").split(",")]
        material = {
            key.removeprefix("material_"): texts.pop(key)
            for key in list(texts)
            if key.startswith("material_")
        }
        return printer_of({**texts, "volume": volume, "material": material}, texts["name"])

    def keep(self):
        """Keep the printer's card, or say what is wrong with it."""
        self.problem.clear()
        try:
            self.printer = self.typed()
            preferences.keep_printer(self.printer)
        except LaywrightError as problem:
            self.problem.setText(translated(problem))
            return
        self.accept()
