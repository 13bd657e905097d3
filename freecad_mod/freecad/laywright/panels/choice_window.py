"""Find a layup: the best ones of some cloths and angles for what is wanted of them."""

import contextlib
import html
import math

from freecad.laywright.panels.picture import DrawingView
from freecad.laywright.qt import QtCore, QtWidgets, translate
from freecad.laywright.translated import translated
from laywright.errors import InputError, LaywrightError
from laywright.job.laminate_pictures import trade_off_chart
from laywright.laminate.candidates import Choices, Prices
from laywright.laminate.choice import Aim, Wish, rank_layups
from laywright.quantities import magnitude

__all__ = ["ChoiceWindow"]

_AIMS = list(Aim)
_ANGLES = "0, 45, -45, 90"
# Name of a wish, and the unit of a number that is typed without one.
_WISHES = {
    "bending_along": "N m",
    "bending_across": "N m",
    "pull_along": "N/mm",
    "pull_across": "N/mm",
    "mass": "g/m^2",
    "thickness": "mm",
    "cost": "",
}
# A little less than the present stiffness, so that rounding does not shut the present one out.
_ROOM = 0.995
_KERNEL = {"N m": "N mm"}


class ChoiceWindow(QtWidgets.QDialog):
    """Symmetric and balanced layups, ranked; the chosen one goes into the table of plies.

    Parameters
    ----------
    materials : laywright.laminate.materials.Materials
        The cloths to choose from.
    laminate : laywright.laminate.laminate.Laminate
        The present one: its resin, process and core are kept, its stiffness is the first wish.
    parent : QWidget, optional
    """

    def __init__(self, materials, laminate, parent=None):
        super().__init__(parent)
        self.setObjectName("LayupChoice")
        self.setWindowTitle(translate("Laywright", "Find a layup"))
        self.resize(1080, 640)
        self._materials, self._layup = materials, laminate.layup
        self.ranking = None
        self.best = QtWidgets.QTableWidget(0, 6)
        self.best.setObjectName("BestLayups")
        self.best.setSelectionBehavior(QtWidgets.QAbstractItemView.SelectRows)
        self.best.setEditTriggers(QtWidgets.QAbstractItemView.NoEditTriggers)
        self.best.setHorizontalHeaderLabels(
            [
                translate("Laywright", "Plies from the mould"),
                translate("Laywright", "mm"),
                translate("Laywright", "g/m²"),
                translate("Laywright", "Bending along, N m"),
                translate("Laywright", "Across, N m"),
                translate("Laywright", "Cost per m²"),
            ]
        )
        head = self.best.horizontalHeader()
        head.setSectionResizeMode(QtWidgets.QHeaderView.ResizeToContents)
        head.setSectionResizeMode(0, QtWidgets.QHeaderView.Stretch)
        self.picture = DrawingView("TradeOff")
        self.words = QtWidgets.QLabel()
        self.words.setObjectName("ChoiceWords")
        self.words.setWordWrap(True)
        right = QtWidgets.QVBoxLayout()
        right.addWidget(self.best, 1)
        right.addWidget(self.picture, 1)
        right.addWidget(self.words)
        both = QtWidgets.QHBoxLayout()
        both.addLayout(self._questions(laminate), 2)
        both.addLayout(right, 5)
        whole = QtWidgets.QVBoxLayout(self)
        whole.addLayout(both)
        whole.addLayout(self._buttons())

    def _questions(self, laminate):
        self.cloths = QtWidgets.QTableWidget(len(self._materials.cloths), 2)
        self.cloths.setObjectName("AllowedCloths")
        self.cloths.setHorizontalHeaderLabels(
            [translate("Laywright", "Allowed cloths"), translate("Laywright", "Price per m²")]
        )
        self.cloths.horizontalHeader().setSectionResizeMode(0, QtWidgets.QHeaderView.Stretch)
        self.cloths.verticalHeader().hide()
        used = {ply.cloth.name for ply in self._layup.plies}
        for row, name in enumerate(self._materials.cloths):
            item = QtWidgets.QTableWidgetItem(name)
            item.setFlags(QtCore.Qt.ItemIsEnabled | QtCore.Qt.ItemIsUserCheckable)
            item.setCheckState(QtCore.Qt.Checked if name in used else QtCore.Qt.Unchecked)
            item.setToolTip(name)
            self.cloths.setItem(row, 0, item)
            self.cloths.setItem(row, 1, QtWidgets.QTableWidgetItem(""))
        self.angles = QtWidgets.QLineEdit(_ANGLES)
        self.angles.setObjectName("AllowedAngles")
        self.plies = QtWidgets.QSpinBox()
        self.plies.setObjectName("MostPlies")
        self.plies.setRange(1, 12)
        self.plies.setValue(max(6, min(12, len(self._layup.plies))))
        self.aim = QtWidgets.QComboBox()
        self.aim.setObjectName("Aim")
        self.aim.addItems([aim.value for aim in _AIMS])
        self.resin_price = QtWidgets.QLineEdit()
        self.resin_price.setObjectName("ResinPrice")
        form = QtWidgets.QFormLayout()
        form.addRow(translate("Laywright", "Angles (°)"), self.angles)
        form.addRow(translate("Laywright", "Most plies"), self.plies)
        form.addRow(translate("Laywright", "Ranked by"), self.aim)
        titles = (
            translate("Laywright", "Bending along, at least"),
            translate("Laywright", "Bending across, at least"),
            translate("Laywright", "Pulled along, at least"),
            translate("Laywright", "Pulled across, at least"),
            translate("Laywright", "Mass, at most"),
            translate("Laywright", "Thickness, at most"),
            translate("Laywright", "Cost per m², at most"),
        )
        self.wishes = {}
        for (name, unit), title in zip(_WISHES.items(), titles, strict=True):
            line = QtWidgets.QLineEdit()
            line.setObjectName(f"Wish_{name}")
            line.setPlaceholderText(unit)
            form.addRow(title, line)
            self.wishes[name] = line
        for name, stiffness in zip(_WISHES, laminate.bending_stiffness, strict=False):
            self.wishes[name].setText(f"{_ROOM * stiffness / 1e3:.3g} N m")
        form.addRow(translate("Laywright", "Price of resin per kg"), self.resin_price)
        column = QtWidgets.QVBoxLayout()
        column.addWidget(self.cloths)
        column.addLayout(form)
        return column

    def _buttons(self):
        row = QtWidgets.QHBoxLayout()
        for name, text, act in (
            ("SearchLayups", translate("Laywright", "Search"), self.search),
            ("TakeLayup", translate("Laywright", "Take this one"), self.take),
            ("CloseChoice", translate("Laywright", "Close"), self.reject),
        ):
            button = QtWidgets.QPushButton(text)
            button.setObjectName(name)
            button.setAutoDefault(name == "SearchLayups")
            button.clicked.connect(lambda *_, act=act: act())
            row.addWidget(button)
        return row

    def search(self):
        """Rank the layups, or say why there is none."""
        try:
            self.ranking = rank_layups(self._choices(), self._wish())
        except LaywrightError as problem:
            self.ranking = None
            self.best.setRowCount(0)
            self.picture.draw(None)
            self.words.setText(html.escape(translated(problem)))
            return
        self._show(self.ranking)

    def plies_taken(self):
        """Return cloth and angle (degrees) of each ply of the chosen layup; none without one."""
        row = self.best.currentRow()
        if self.ranking is None or row < 0:
            return []
        found = self.ranking.best[row]
        degrees = (round(math.degrees(angle), 6) for angle in found.angles)
        return list(zip(found.cloths, degrees, strict=True))

    def take(self):
        """Close with the chosen layup, if there is one."""
        if self.plies_taken():
            self.accept()

    def _show(self, ranking):
        self.best.setRowCount(len(ranking.best))
        for row, found in enumerate(ranking.best):
            cells = (
                _stack_words(found),
                f"{found.thickness:.2f}",
                f"{found.areal_mass:.0f}",
                f"{found.bending_along / 1e3:.3g}",
                f"{found.bending_across / 1e3:.3g}",
                f"{found.cost:.2f}" if found.cost else "",
            )
            for column, text in enumerate(cells):
                item = QtWidgets.QTableWidgetItem(text)
                item.setToolTip(text)
                self.best.setItem(row, column, item)
        self.best.setCurrentCell(0, 0)
        self.picture.draw(trade_off_chart(ranking))
        counts = translate(
            "Laywright", "{0} of {1} symmetric and balanced layups fulfil the wish."
        ).format(ranking.fitting, ranking.tried)
        self.words.setText("<br>".join([counts, *map(html.escape, ranking.notes)]))

    def _choices(self):
        rows = range(self.cloths.rowCount())
        names = [
            self.cloths.item(row, 0).text()
            for row in rows
            if self.cloths.item(row, 0).checkState() == QtCore.Qt.Checked
        ]
        prices = {
            self.cloths.item(row, 0).text(): _number(text, "price", "")
            for row in rows
            if (text := self.cloths.item(row, 1).text().strip())
        }
        resin_price = self.resin_price.text().strip()
        layup = self._layup
        return Choices(
            tuple(self._materials.cloth(name) for name in names),
            tuple(math.radians(angle) for angle in self._typed_angles()),
            layup.resin,
            layup.process,
            self.plies.value(),
            layup.core,
            Prices(prices, _number(resin_price, "price of resin", "") if resin_price else 0.0)
            if prices
            else None,
        )

    def _typed_angles(self):
        parts = [part for part in self.angles.text().replace(";", ",").split(",") if part.strip()]
        try:
            return [float(part) for part in parts]
        except ValueError:
            raise InputError(
                "angles", f"'{self.angles.text()}'", "numbers such as 0, 45, -45, 90", "correct it"
            ) from None

    def _wish(self):
        wanted = {
            name: _number(text, name.replace("_", " "), unit)
            for name, unit in _WISHES.items()
            if (text := self.wishes[name].text().strip())
        }
        return Wish(_AIMS[self.aim.currentIndex()], **wanted)


def _number(text, name, unit):
    """Return a typed number in the core's unit; without a unit it has the one that is shown."""
    plain = text.strip().replace(",", ".")
    with contextlib.suppress(ValueError):
        plain = f"{float(plain)!r} {unit}"
    return magnitude(plain, _KERNEL.get(unit, unit or "1"), name)


def _stack_words(found):
    """Return a layup in one line: angles and cloth, or ply by ply where cloths differ."""
    degrees = [f"{math.degrees(angle):g}°" for angle in found.angles]
    if len(set(found.cloths)) == 1:
        return f"{' '.join(degrees)}  {found.cloths[0]}"
    return ", ".join(f"{angle} {cloth}" for angle, cloth in zip(degrees, found.cloths, strict=True))
