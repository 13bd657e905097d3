"""A window that takes the readings of one coupon: typed, pasted or from a file."""

from pathlib import Path

from freecad.laywright.asking import ask_for_file
from freecad.laywright.objects.coupon_test import add_coupon
from freecad.laywright.panels import fields, typed
from freecad.laywright.qt import QtWidgets, translate
from freecad.laywright.translated import translated
from laywright.errors import FileError, LaywrightError
from laywright.files.number_table import read_number_table
from laywright.shop.coupons.coupon import Ending
from laywright.shop.coupons.coupon_assessment import CouponLoading
from laywright.shop.coupons.coupon_records import (
    FORCE_UNITS,
    LENGTH_UNITS,
    STRAIN_UNITS,
    ReadingColumns,
)

__all__ = ["CouponReader"]

_HEADS = {
    CouponLoading.BENDING: "weight (g); deflection (mm)",
    CouponLoading.TENSION: "force (N); strain (%)",
}


class CouponReader(QtWidgets.QDialog):
    """Asks for size, columns and units; what is wrong is said below, nothing typed is lost.

    Parameters
    ----------
    obj : DocumentObject
        The Coupon Test that the readings go into.
    parent : QWidget
    """

    def __init__(self, obj, parent=None):
        super().__init__(parent)
        self.obj = obj
        self.loading = CouponLoading(obj.Loading)
        self.setObjectName("CouponReader")
        self.setWindowTitle(translate("Laywright", "Readings of one coupon"))
        self.where = translate("Laywright", "the readings")
        self._content = None
        form = QtWidgets.QFormLayout()
        column = QtWidgets.QVBoxLayout(self)
        column.addLayout(form)
        bends = self.loading is CouponLoading.BENDING
        plan = obj.Proxy.kept(obj)
        self.lines = {}
        first = f"{'B' if bends else 'P'}{len(obj.Proxy.coupons(obj).names) + 1}"
        rows = [
            ("Name", "Name", first),
            ("Width", "Width (mm)", f"{plan.plan.width:g}" if plan else ""),
            ("Thickness", "Thickness (mm)", ""),
            ("Span", "Supports apart (mm)", f"{plan.plan.span:g}" if plan else "")
            if bends
            else ("Gauge", "Gauge length (mm), empty where strains were read", ""),
        ]
        for name, words, text in rows:
            self.lines[name] = QtWidgets.QLineEdit(text)
            self.lines[name].setObjectName(name)
            form.addRow(translate("Laywright", words), self.lines[name])
        self.text = QtWidgets.QPlainTextEdit(_HEADS[self.loading] + "\n")
        self.text.setObjectName("Readings")
        self.text.setToolTip(
            translate("Laywright", "One line for each reading; the first line names the columns")
        )
        self.text.textChanged.connect(self._edited)
        column.addWidget(self.text)
        pick = QtWidgets.QPushButton(translate("Laywright", "Read a file …"))
        pick.clicked.connect(lambda *_: self.pick())
        column.addWidget(pick)
        units = QtWidgets.QFormLayout()
        column.addLayout(units)
        travel = LENGTH_UNITS if bends else (*STRAIN_UNITS, *LENGTH_UNITS)
        self.force = self._column(units, "Force", "Column of the force", FORCE_UNITS)
        what = "Column of the deflection" if bends else "Column of the strain or extension"
        self.travel = self._column(units, "Travel", what, travel)
        # Stopped first: a strength that was none is worse than one that is missing.
        endings = [ending.value for ending in (Ending.STOPPED, Ending.BROKEN)]
        self.ending = fields.named(endings, Ending.STOPPED.value)
        units.addRow(translate("Laywright", "How it ended"), self.ending.widget)
        self.problem = QtWidgets.QLabel()
        self.problem.setObjectName("Problem")
        self.problem.setWordWrap(True)
        column.addWidget(self.problem)
        kinds = QtWidgets.QDialogButtonBox
        box = kinds(kinds.Ok | kinds.Cancel)
        box.accepted.connect(self.accept)
        box.rejected.connect(self.reject)
        column.addWidget(box)
        self.resize(460, 620)

    def _column(self, form, name, words, units):
        """Add the choice of a column and of its unit, side by side."""
        both = QtWidgets.QWidget()
        row = QtWidgets.QHBoxLayout(both)
        row.setContentsMargins(0, 0, 0, 0)
        place, unit = QtWidgets.QComboBox(), QtWidgets.QComboBox()
        place.setObjectName(f"{name}Column")
        unit.setObjectName(f"{name}Unit")
        place.addItem(translate("Laywright", "by its heading"))
        unit.addItem(translate("Laywright", "unit of the heading"))
        unit.addItems(list(dict.fromkeys(units)))
        row.addWidget(place, 2)
        row.addWidget(unit, 1)
        form.addRow(translate("Laywright", words), both)
        return place, unit

    def pick(self):
        """Read a file that the person chooses."""
        found = ask_for_file(
            translate("Laywright", "Readings of one coupon"),
            translate("Laywright", "Tables") + " (*.csv *.txt *.tsv *.dat);;* (*)",
            self,
        )
        if found:
            self.read(Path(found))

    def read(self, path):
        """Take the readings of a file and offer its columns."""
        try:
            content = path.read_bytes()
            table = read_number_table(content, path.name)
        except OSError as problem:
            self.problem.setText(
                translated(problem)
                if isinstance(problem, FileError)
                else translated(
                    FileError(path.name, str(problem), "a text table", "choose another")
                )
            )
            return
        self.text.setPlainText(_shown(content))
        self._content, self.where = content, path.name
        self._offer([f"{c.name} ({c.unit})" if c.unit else c.name for c in table.columns])
        self.problem.setText("")

    def _offer(self, names):
        for place, _ in (self.force, self.travel):
            while place.count() > 1:
                place.removeItem(1)
            place.addItems(names)

    def _edited(self):
        """Typed readings stand for themselves, no longer for the file."""
        self._content = None

    def accept(self):
        """Add the coupon, or say what is wrong and stay."""
        content = self._content or self.text.toPlainText().encode()
        try:
            bends = self.loading is CouponLoading.BENDING
            gauge = "" if bends else self.lines["Gauge"].text().strip()
            add_coupon(
                self.obj,
                content,
                self.lines["Name"].text().strip(),
                self._length("Width"),
                self._length("Thickness"),
                self._length("Span") if bends else None,
                gauge_length=self._length("Gauge") if gauge else None,
                columns=ReadingColumns(
                    _chosen(self.force[0]),
                    _chosen(self.travel[0]),
                    _named_unit(self.force[1]),
                    _named_unit(self.travel[1]),
                ),
                ending=Ending(self.ending.value()),
                where=self.where,
            )
        except LaywrightError as problem:
            self.problem.setText(translated(problem))
            return
        super().accept()

    def _length(self, name):
        return typed.number(self.lines[name].text(), name, "mm")


def _chosen(box):
    """Return the number of the chosen column, "" for the one that the heading says."""
    return str(box.currentIndex()) if box.currentIndex() > 0 else ""


def _named_unit(box):
    return box.currentText() if box.currentIndex() > 0 else ""


def _shown(content):
    """Return a file's bytes as text to be looked at."""
    for code in ("utf-8-sig", "cp1252"):
        try:
            return content.decode(code)
        except UnicodeDecodeError:
            continue
    return content.decode("utf-16", "replace")
