"""The plies of a layup as a table: cloth and angle, ply 1 touches the mould."""

from freecad.laywright.qt import QtCore, QtWidgets, translate

__all__ = ["PlyTable"]

_CLOTH, _ANGLE = 0, 1


class PlyTable(QtWidgets.QWidget):
    """Rows of cloth and angle that can be added, taken away and moved.

    Parameters
    ----------
    cloths : list of str
        Names of all cloths.
    plies : list of (str, float)
        Cloth and angle (degrees) of each ply.
    """

    def __init__(self, cloths, plies):
        super().__init__()
        self._cloths = cloths
        self._table = QtWidgets.QTableWidget(0, 2)
        self._table.setObjectName("Plies")
        self._table.setHorizontalHeaderLabels(
            [translate("Laywright", "Cloth"), translate("Laywright", "Angle (°)")]
        )
        self._table.horizontalHeader().setSectionResizeMode(_CLOTH, QtWidgets.QHeaderView.Stretch)
        self._table.setMinimumHeight(150)
        layout = QtWidgets.QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self._table)
        row = QtWidgets.QGridLayout()
        for index, (text, act) in enumerate(
            (
                (translate("Laywright", "Add"), self.add),
                (translate("Laywright", "Remove"), self.remove),
                (translate("Laywright", "Towards mould"), lambda: self.move(-1)),
                (translate("Laywright", "Away from it"), lambda: self.move(1)),
            )
        ):
            button = QtWidgets.QPushButton(text)
            button.clicked.connect(lambda *_, act=act: act())
            row.addWidget(button, index // 2, index % 2)
        layout.addLayout(row)
        self.fill(plies)

    def plies(self):
        """Return cloth and angle (degrees) of each ply."""
        return [
            (
                self._table.cellWidget(row, _CLOTH).currentText(),
                self._table.cellWidget(row, _ANGLE).value(),
            )
            for row in range(self._table.rowCount())
        ]

    def fill(self, plies):
        """Show these plies."""
        self._table.setRowCount(len(plies))
        for row, (cloth, angle) in enumerate(plies):
            box = QtWidgets.QComboBox()
            names = self._cloths if cloth in self._cloths else [cloth, *self._cloths]
            box.addItems(names)
            box.setCurrentIndex(names.index(cloth))
            box.setSizeAdjustPolicy(QtWidgets.QComboBox.AdjustToMinimumContentsLengthWithIcon)
            box.setMinimumContentsLength(8)
            box.setToolTip(cloth)
            self._table.setCellWidget(row, _CLOTH, box)
            turn = QtWidgets.QDoubleSpinBox()
            turn.setRange(-180.0, 180.0)
            turn.setDecimals(1)
            turn.setSingleStep(15.0)
            turn.setValue(angle)
            self._table.setCellWidget(row, _ANGLE, turn)

    def add(self):
        """Add a ply like the last one."""
        plies = self.plies()
        self.fill([*plies, plies[-1] if plies else (self._cloths[0], 0.0)])

    def remove(self):
        """Take away the chosen ply, or the last one."""
        plies = self.plies()
        row = self._table.currentRow()
        if plies:
            del plies[row if 0 <= row < len(plies) else -1]
            self.fill(plies)

    def move(self, step):
        """Move the chosen ply towards the mould (-1) or away from it (+1)."""
        plies = self.plies()
        row = self._table.currentRow()
        if 0 <= row < len(plies) and 0 <= row + step < len(plies):
            plies[row], plies[row + step] = plies[row + step], plies[row]
            self.fill(plies)
            self._table.setCurrentCell(row + step, _CLOTH, QtCore.QItemSelectionModel.Select)
