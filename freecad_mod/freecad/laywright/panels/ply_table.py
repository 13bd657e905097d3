"""The plies of a layup as a table: cloth, angle and what is covered; ply 1 touches the mould."""

from freecad.laywright.panels.arrow import TurningArrow
from freecad.laywright.panels.picked import picked_faces, picked_point
from freecad.laywright.qt import QtCore, QtWidgets, translate
from laywright.laminate.extents import Faces, Round, extent_text

__all__ = ["PlyTable"]

_CLOTH, _ANGLE, _ARROW = range(3)
_RADIUS = 30.0


class PlyTable(QtWidgets.QWidget):
    """Rows of cloth, angle and extent: added, taken away, mirrored, and pulled elsewhere.

    A row is moved by pulling its number up or down.

    Parameters
    ----------
    cloths : list of str
        Names of all cloths.
    plies : list of (str, float) or (str, float, str)
        Cloth and angle (degrees) of each ply, and what it covers where that is not all.
    """

    changed = QtCore.Signal()

    def __init__(self, cloths, plies):
        super().__init__()
        self._cloths = cloths
        self._table = QtWidgets.QTableWidget(0, 3)
        self._table.setObjectName("Plies")
        self._table.setHorizontalHeaderLabels(
            [
                translate("Laywright", "Cloth, what it covers"),
                translate("Laywright", "Angle (°)"),
                "",
            ]
        )
        head = self._table.horizontalHeader()
        head.setSectionResizeMode(_CLOTH, QtWidgets.QHeaderView.Stretch)
        head.setSectionResizeMode(_ARROW, QtWidgets.QHeaderView.ResizeToContents)
        rows = self._table.verticalHeader()
        rows.setSectionsMovable(True)
        rows.setToolTip(translate("Laywright", "Pull a number to move its ply"))
        rows.sectionMoved.connect(self._moved)
        self._table.setMinimumHeight(240)
        layout = QtWidgets.QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self._table)
        row = QtWidgets.QGridLayout()
        for index, (text, tip, act) in enumerate(
            (
                (translate("Laywright", "Add"), "", self.add),
                (translate("Laywright", "Remove"), "", self.remove),
                (translate("Laywright", "Towards mould"), "", lambda: self.move(-1)),
                (translate("Laywright", "Away from it"), "", lambda: self.move(1)),
                (
                    translate("Laywright", "Mirror all"),
                    translate("Laywright", "Lay all plies once more in reverse: symmetric"),
                    lambda: self.mirror(0),
                ),
                (
                    translate("Laywright", "Mirror, last once"),
                    translate("Laywright", "The last ply becomes the middle one: symmetric"),
                    lambda: self.mirror(1),
                ),
                (
                    translate("Laywright", "Cover picked faces"),
                    translate("Laywright", "The chosen ply covers the faces picked in the view"),
                    self.cover_faces,
                ),
                (
                    translate("Laywright", "Cover round the point"),
                    translate(
                        "Laywright",
                        "The chosen ply becomes a patch of 30 mm radius round the point, corner "
                        "or round edge picked in the view",
                    ),
                    self.cover_round,
                ),
            )
        ):
            button = QtWidgets.QPushButton(text)
            button.setToolTip(tip)
            button.clicked.connect(lambda *_, act=act: act())
            row.addWidget(button, index // 2, index % 2)
        layout.addLayout(row)
        self.fill(plies)

    def plies(self):
        """Return cloth, angle (degrees) and extent of each ply, in the order that is seen."""
        rows = self._table.verticalHeader()
        return [self._ply(rows.logicalIndex(place)) for place in range(self._table.rowCount())]

    def _ply(self, row):
        return (
            self._table.cellWidget(row, _CLOTH).findChild(QtWidgets.QComboBox).currentText(),
            self._table.cellWidget(row, _ANGLE).value(),
            self._covers(row).text().strip(),
        )

    def fill(self, plies):
        """Show these plies."""
        rows = self._table.verticalHeader()
        rows.blockSignals(True)
        for row in range(self._table.rowCount()):
            rows.moveSection(rows.visualIndex(row), row)
        for old in self._table.viewport().findChildren(QtWidgets.QWidget):
            old.hide()  # until it is really gone, which may take a moment
        self._table.setRowCount(len(plies))
        for row, ply in enumerate(plies):
            self._fill_row(row, *ply)
        rows.blockSignals(False)
        self._table.resizeRowsToContents()
        self.changed.emit()

    def _fill_row(self, row, cloth, angle, extent=""):
        box = QtWidgets.QComboBox()
        names = self._cloths if cloth in self._cloths else [cloth, *self._cloths]
        box.addItems(names)
        box.setCurrentIndex(names.index(cloth))
        box.setSizeAdjustPolicy(QtWidgets.QComboBox.AdjustToMinimumContentsLengthWithIcon)
        box.setMinimumContentsLength(8)
        box.setToolTip(cloth)
        box.currentTextChanged.connect(box.setToolTip)
        turn = QtWidgets.QDoubleSpinBox()
        turn.setRange(-180.0, 180.0)
        turn.setDecimals(1)
        turn.setSingleStep(15.0)
        turn.setValue(angle)
        arrow = TurningArrow(angle)
        arrow.turned.connect(turn.setValue)
        turn.valueChanged.connect(arrow.point)
        turn.valueChanged.connect(lambda *_: self.changed.emit())
        box.currentIndexChanged.connect(lambda *_: self.changed.emit())
        covers = QtWidgets.QLineEdit(extent)
        covers.setObjectName(f"Covers{row + 1}")
        covers.setPlaceholderText(translate("Laywright", "whole face"))
        covers.setToolTip(
            translate(
                "Laywright",
                "Empty for the whole face, or such as: 30 mm round 10, 20, 5; "
                "25 mm along the edge; faces Face3, Face5",
            )
        )
        covers.setCursorPosition(0)
        covers.textChanged.connect(lambda *_: self.changed.emit())
        covers.setFrame(False)
        both = QtWidgets.QWidget()
        lines = QtWidgets.QVBoxLayout(both)
        lines.setContentsMargins(1, 1, 1, 1)
        lines.setSpacing(0)
        lines.addWidget(box)
        lines.addWidget(covers)
        for column, widget in ((_CLOTH, both), (_ANGLE, turn), (_ARROW, arrow)):
            self._table.setCellWidget(row, column, widget)

    def _moved(self, *_):
        """Renumber the plies after one was pulled elsewhere."""
        QtCore.QTimer.singleShot(0, lambda: self.fill(self.plies()))

    def add(self):
        """Add a ply like the last one."""
        plies = self.plies()
        self.fill([*plies, plies[-1] if plies else (self._cloths[0], 0.0, "")])

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

    def mirror(self, once):
        """Lay the plies once more in reverse; `once` of the last ones are not doubled."""
        plies = self.plies()
        self.fill([*plies, *reversed(plies[: len(plies) - once])])

    def cover_faces(self):
        """Let the chosen ply cover the faces that are picked in the view."""
        names = picked_faces()
        if names:
            self._cover(extent_text(Faces(tuple(names))))

    def cover_round(self):
        """Make the chosen ply a patch about the point that is picked in the view."""
        point = picked_point()
        if point is not None:
            self._cover(extent_text(Round(tuple(point), _RADIUS)))

    def _covers(self, row):
        """Return the field that says what a ply covers."""
        return self._table.cellWidget(row, _CLOTH).findChild(QtWidgets.QLineEdit)

    def _cover(self, text):
        rows = self._table.rowCount()
        row = self._table.currentRow()
        if rows:
            field = self._covers(row if 0 <= row < rows else rows - 1)
            field.setText(text)
            field.setCursorPosition(0)
