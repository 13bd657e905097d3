"""The material cards: looked at, changed, copied, taken in and given away."""

from pathlib import Path

from freecad.laywright import preferences
from freecad.laywright.asking import ask_for_file, ask_where_to_save
from freecad.laywright.panels.card_table import CardTable
from freecad.laywright.qt import QtCore, QtWidgets, translate
from freecad.laywright.translated import translated
from laywright.errors import LaywrightError
from laywright.laminate.card_files import card_text
from laywright.laminate.materials import gather_cards
from laywright.laminate.own_cards import changed_card, drop_card, keep_card, open_card
from laywright.saving import write_beside

__all__ = ["CardWindow"]

_OWN = QtCore.Qt.UserRole


class CardWindow(QtWidgets.QDialog):
    """All cards on the left, the chosen one on the right; what is kept goes to one's own folder.

    Cards that come along are never changed: a changed one is kept in the folder under the same
    name and taken in its place.
    """

    def __init__(self, parent=None):
        super().__init__(parent)
        self.setObjectName("MaterialCards")
        self.setWindowTitle(translate("Laywright", "Material cards"))
        self.setAttribute(QtCore.Qt.WA_DeleteOnClose)
        self.resize(1060, 620)
        self.card = None
        self.names = QtWidgets.QTreeWidget()
        self.names.setObjectName("CardNames")
        self.names.setHeaderHidden(True)
        self.names.currentItemChanged.connect(self._chosen)
        self.title = QtWidgets.QLineEdit()
        self.title.setObjectName("CardName")
        self.origin = QtWidgets.QLabel()
        self.origin.setObjectName("CardOrigin")
        self._words = QtWidgets.QFormLayout()
        self.table = CardTable()
        self.problem = QtWidgets.QLabel()
        self.problem.setObjectName("CardProblem")
        self.problem.setWordWrap(True)
        right = QtWidgets.QWidget()
        column = QtWidgets.QVBoxLayout(right)
        column.setContentsMargins(0, 0, 0, 0)
        for part in (self.title, self.origin):
            column.addWidget(part)
        column.addLayout(self._words)
        column.addWidget(self.table)
        column.addWidget(
            QtWidgets.QLabel(translate("Laywright", "* may stay empty. Numbers with a point."))
        )
        split = QtWidgets.QSplitter()
        split.addWidget(self.names)
        split.addWidget(right)
        split.setSizes([300, 760])
        whole = QtWidgets.QVBoxLayout(self)
        whole.addWidget(split, 1)
        whole.addWidget(self.problem)
        whole.addLayout(self._buttons())
        self.load()

    def _buttons(self):
        row = QtWidgets.QHBoxLayout()
        for name, text, tip, act in (
            (
                "KeepCard",
                translate("Laywright", "Keep"),
                translate(
                    "Laywright",
                    "Keep the card in your folder; jobs made with the old one stay what they are",
                ),
                self.keep,
            ),
            (
                "CopyCard",
                translate("Laywright", "Copy"),
                translate("Laywright", "Begin a new card with these values under another name"),
                self.copy,
            ),
            (
                "DropCard",
                translate("Laywright", "Take away"),
                translate("Laywright", "Take your own card away; one that came along counts again"),
                self.drop,
            ),
            (
                "TakeInCard",
                translate("Laywright", "Take in file …"),
                translate("Laywright", "Read a card from a TOML file; it is kept with Keep"),
                self._ask_and_take_in,
            ),
            (
                "GiveAwayCard",
                translate("Laywright", "Save as file …"),
                translate("Laywright", "Write the card as it stands in its file, in TOML"),
                self._ask_and_give_away,
            ),
        ):
            button = QtWidgets.QPushButton(text)
            button.setObjectName(name)
            button.setToolTip(tip)
            button.setAutoDefault(False)
            button.clicked.connect(lambda *_, act=act: self._guarded(act))
            row.addWidget(button)
        row.addStretch()
        close = QtWidgets.QPushButton(translate("Laywright", "Close"))
        close.setAutoDefault(False)
        close.clicked.connect(self.accept)
        row.addWidget(close)
        return row

    def _guarded(self, act):
        """Do something; what is wrong is said below and pointed at in the table."""
        self.problem.clear()
        try:
            act()
        except LaywrightError as problem:
            self.problem.setText(translated(problem))
            self.table.point_at(problem.where)

    def load(self, name=""):
        """Read all cards anew and choose one."""
        self.library = preferences.materials()
        folder = preferences.card_folder()
        self.own = set(gather_cards(folder)) if folder.is_dir() else set()
        self.names.clear()
        groups, chosen = {}, None
        for card in self.library.cards.values():
            if card.card not in groups:
                groups[card.card] = QtWidgets.QTreeWidgetItem([card.card])
                groups[card.card].setFlags(QtCore.Qt.ItemIsEnabled)
            item = QtWidgets.QTreeWidgetItem([card.name])
            item.setToolTip(0, card.name)
            item.setData(0, _OWN, card.name)
            font = item.font(0)
            font.setBold(card.name in self.own)
            item.setFont(0, font)
            groups[card.card].addChild(item)
            if chosen is None or card.name == name:
                chosen = item
        self.names.addTopLevelItems([groups[kind] for kind in sorted(groups)])
        self.names.expandAll()
        self.names.setCurrentItem(chosen)

    def choose(self, name):
        """Show the card of this name."""
        for item in self.names.findItems(
            name, QtCore.Qt.MatchExactly | QtCore.Qt.MatchRecursive, 0
        ):
            self.names.setCurrentItem(item)

    def _chosen(self, item, _=None):
        name = item.data(0, _OWN) if item is not None else None
        if name is not None:
            self.problem.clear()
            self.show_card(self.library.cards[name])

    def show_card(self, card):
        """Show a card, kept or not."""
        self.card = card
        self.title.setText(card.name)
        whence = (
            translate("Laywright", "your own, from {0}").format(preferences.card_folder())
            if card.name in self.own
            else translate("Laywright", "comes along; a change is kept in {0}").format(
                preferences.card_folder()
            )
        )
        self.origin.setText(f"{card.card}: {whence}")
        fields = self.library.fields(card.card)
        while self._words.rowCount():
            self._words.removeRow(0)
        self.words = {}
        for field in fields:
            if field.words:
                box = QtWidgets.QComboBox()
                box.addItems(list(field.words))
                box.setCurrentText(card.texts.get(field.name, field.words[0]))
                self._words.addRow(field.name.replace("_", " "), box)
                self.words[field.name] = box
        self.table.fill(fields, card.values)

    def typed_card(self):
        """Return the card as it is typed."""
        name = self.title.text()
        texts = {field: box.currentText() for field, box in self.words.items()}
        return changed_card(self.card, name, texts, self.table.values(name))

    def keep(self):
        """Check the card as it is typed and keep it in one's own folder."""
        card = self.typed_card()
        keep_card(card, preferences.card_folder(), self.library)
        self.load(card.name)

    def copy(self):
        """Begin a new card with these values."""
        self.title.setText(translate("Laywright", "{0}, my own").format(self.title.text().strip()))
        self.title.setFocus()
        self.title.selectAll()

    def drop(self):
        """Take one's own card away."""
        drop_card(self.card.name, preferences.card_folder())
        self.load(self.card.name)

    def take_in(self, path):
        """Show a card from a file; it is not kept yet."""
        card = open_card(Path(path))
        self.library.fields(card.card)
        self.show_card(card)

    def give_away(self, path):
        """Write the card as it is typed into a file."""
        write_beside(Path(path), card_text(self.typed_card()).encode())

    def _ask_and_take_in(self):
        path = ask_for_file(self.windowTitle(), translate("Laywright", "Cards (*.toml)"), self)
        if path:
            self.take_in(path)

    def _ask_and_give_away(self):
        path = ask_where_to_save(
            self.windowTitle(),
            f"{self.card.card}.toml",
            translate("Laywright", "Cards (*.toml)"),
            self,
        )
        if path:
            self.give_away(path)
