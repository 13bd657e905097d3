"""The values of a material card as a table: number, unit, range, source, how it is known."""

from freecad.laywright.qt import QtCore, QtWidgets, translate
from laywright.laminate.card_files import CardValue, Knowledge
from laywright.laminate.own_cards import card_value

__all__ = ["CardTable"]

_NAME, _NUMBER, _UNIT, _LOW, _HIGH, _SOURCE, _KIND = range(7)
_KINDS = [kind.value for kind in Knowledge]


class CardTable(QtWidgets.QTableWidget):
    """One row for each value that such a card may have; a row without a number is left out."""

    def __init__(self):
        super().__init__(0, 7)
        self.setObjectName("CardValues")
        self.setHorizontalHeaderLabels(
            [
                translate("Laywright", "Value"),
                translate("Laywright", "Number"),
                translate("Laywright", "Unit"),
                translate("Laywright", "From"),
                translate("Laywright", "To"),
                translate("Laywright", "Source"),
                translate("Laywright", "Known by"),
            ]
        )
        head = self.horizontalHeader()
        for column in (_NAME, _NUMBER, _UNIT, _LOW, _HIGH, _KIND):
            head.setSectionResizeMode(column, QtWidgets.QHeaderView.ResizeToContents)
        head.setSectionResizeMode(_SOURCE, QtWidgets.QHeaderView.Stretch)
        self.verticalHeader().hide()

    def fill(self, fields, values):
        """Show values by name; `fields` are those that such a card may have."""
        for old in self.viewport().findChildren(QtWidgets.QWidget):
            old.hide()  # until it is really gone, which may take a moment
        self._fields = [field for field in fields if field.unit]
        self.setRowCount(len(self._fields))
        for row, field in enumerate(self._fields):
            self._fill_row(row, field, values.get(field.name))
        self.resizeRowsToContents()

    def _fill_row(self, row, field, value):
        title = field.name.replace("strengths.", "strength, ").replace("_", " ")
        name = QtWidgets.QTableWidgetItem(title if field.needed else f"{title} *")
        name.setFlags(QtCore.Qt.ItemIsEnabled)
        unit = "" if field.unit == "1" else f" {field.unit}"
        name.setToolTip(
            translate("Laywright", "Plausible: {0} to {1}").format(
                f"{field.low:g}", f"{field.high:g}{unit}"
            )
        )
        known = value or CardValue(0.0, field.unit, None, None, "", Knowledge.COMMON_PRACTICE)
        texts = (
            "" if value is None else f"{known.value:.12g}",
            known.unit,
            "" if known.low is None else f"{known.low:.12g}",
            "" if known.high is None else f"{known.high:.12g}",
            known.source,
        )
        self.setItem(row, _NAME, name)
        for column, text in zip((_NUMBER, _UNIT, _LOW, _HIGH, _SOURCE), texts, strict=True):
            item = QtWidgets.QTableWidgetItem(text)
            item.setToolTip(text)
            self.setItem(row, column, item)
        box = QtWidgets.QComboBox()
        box.addItems(_KINDS)
        box.setCurrentIndex(_KINDS.index(known.kind.value))
        self.setCellWidget(row, _KIND, box)

    def values(self, where):
        """Return the values by name; raises a MaterialError that names card and field.

        Parameters
        ----------
        where : str
            Name of the card.
        """
        found = {}
        for row, field in enumerate(self._fields):
            number, unit, low, high, source = (
                self.item(row, column).text() for column in (_NUMBER, _UNIT, _LOW, _HIGH, _SOURCE)
            )
            if number.strip():
                kind = _KINDS[self.cellWidget(row, _KIND).currentIndex()]
                found[field.name] = card_value(
                    number, unit, low, high, source, kind, f"{where}: {field.name}"
                )
        return found

    def point_at(self, where):
        """Choose the row whose field stands in the `where` of an error."""
        for row, field in enumerate(self._fields):
            if f": {field.name}" in where:
                self.setCurrentCell(row, _NUMBER)
                return
