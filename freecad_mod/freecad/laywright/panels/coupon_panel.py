"""The task panel of a Coupon Test: its coupons in a table, their values onto a card."""

from freecad.laywright import preferences
from freecad.laywright.objects.coupon_test import remove_coupon, resize_coupon, take_measured
from freecad.laywright.panels.coupon_reader import CouponReader
from freecad.laywright.panels.stage_panel import StagePanel
from freecad.laywright.panels.typed import number
from freecad.laywright.qt import QtCore, QtWidgets, translate
from freecad.laywright.translated import translated
from laywright.errors import LaywrightError

__all__ = ["CouponPanel"]

_SIZES = {1: "width", 2: "thickness"}  # columns that can be corrected in place


class CouponPanel(StagePanel):
    """Coupons with their sizes; buttons add one, take one out, write a card."""

    def add_fields(self):
        """Add the table of coupons with its buttons, then the other fields."""
        self.table = QtWidgets.QTableWidget(0, 4)
        self.table.setObjectName("Coupons")
        self.table.setHorizontalHeaderLabels(
            [
                translate("Laywright", text)
                for text in ("Coupon", "Wide, mm", "Thick, mm", "Span, mm")
            ]
        )
        self.table.horizontalHeader().setSectionResizeMode(QtWidgets.QHeaderView.Stretch)
        self.table.setSelectionBehavior(QtWidgets.QAbstractItemView.SelectRows)
        self.table.itemChanged.connect(self.correct)
        self.table.setMinimumHeight(110)
        self.grid.addRow(self.table)
        row = QtWidgets.QGridLayout()
        for place, (name, text, act) in enumerate(
            (
                ("Add", translate("Laywright", "Add readings …"), self.add),
                ("Remove", translate("Laywright", "Take out"), self.remove),
                ("Modulus", translate("Laywright", "Modulus onto a card …"), self.to_card),
                ("Strength", translate("Laywright", "Strength onto a card …"), self.to_card),
            )
        ):
            button = QtWidgets.QPushButton(text)
            button.setObjectName(name)
            button.clicked.connect(lambda *_, act=act, name=name: act(name.lower()))
            row.addWidget(button, place // 2, place % 2)
        self.grid.addRow(row)
        super().add_fields()
        self.fill()

    def fill(self):
        """Show the coupons that there are."""
        coupons = self.obj.Proxy.coupons(self.obj)
        rows = [
            *((c.name, c.width, c.thickness, f"{c.span:g}") for c in coupons.bent),
            *((c.name, c.width, c.thickness, "-") for c in coupons.pulled),
        ]
        self.table.blockSignals(True)
        self.table.setRowCount(len(rows))
        for line, cells in enumerate(rows):
            for place, cell in enumerate(cells):
                text = cell if isinstance(cell, str) else f"{cell:.4g}"
                item = QtWidgets.QTableWidgetItem(text)
                if place not in _SIZES:
                    item.setFlags(item.flags() & ~QtCore.Qt.ItemIsEditable)
                self.table.setItem(line, place, item)
        self.table.blockSignals(False)

    def correct(self, item):
        """Take a width or thickness that was typed over; what cannot be one is put back."""
        name, size = self.table.item(item.row(), 0).text(), _SIZES[item.column()]
        try:
            resize_coupon(self.obj, name, **{size: number(item.text(), size, "mm")})
        except LaywrightError as problem:
            self.fill()
            QtWidgets.QMessageBox.warning(self.form, self.obj.Label, translated(problem))
            return
        self._changed_coupons()

    def add(self, _):
        """Ask for the readings of one more coupon."""
        if not self._write():
            return
        reader = CouponReader(self.obj, self.form)
        reader.accepted.connect(self._changed_coupons)
        reader.setAttribute(QtCore.Qt.WA_DeleteOnClose)
        reader.open()

    def remove(self, _):
        """Take the chosen coupon out."""
        row = self.table.currentRow()
        if row >= 0:
            remove_coupon(self.obj, self.table.item(row, 0).text())
            self._changed_coupons()

    def _changed_coupons(self):
        self.fill()
        self.apply()

    def to_card(self, what):
        """Write a card with the measured value into the folder of own cards."""
        try:
            path = take_measured(self.obj, preferences.card_folder(), what)
        except LaywrightError as problem:
            QtWidgets.QMessageBox.warning(self.form, self.obj.Label, translated(problem))
            return
        words = translate("Laywright", "Written to {0}.").format(path)
        QtWidgets.QMessageBox.information(self.form, self.obj.Label, words)
