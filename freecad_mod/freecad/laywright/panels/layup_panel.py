"""The task panel of a Layup: plies in a table, materials from the cards, figures at once."""

from freecad.laywright import preferences
from freecad.laywright.objects.layup import COUNTED, LOADS, kept_cards
from freecad.laywright.panels import fields
from freecad.laywright.panels.choice_window import ChoiceWindow
from freecad.laywright.panels.fold import Fold
from freecad.laywright.panels.laminate_look import LaminateLook
from freecad.laywright.panels.ply_table import PlyTable
from freecad.laywright.panels.stage_panel import StagePanel
from freecad.laywright.qt import QtWidgets, translate
from laywright.laminate.materials import materials_of
from laywright.laminate.used_cards import newer_cards

__all__ = ["LayupPanel"]

# What folds away together: by what it stands open, and the rest of it.
_FOLDED = (
    (("DropOff",), ("DropWay",)),
    (("Core",), ("CoreThickness", "CoreOnPly")),
    (LOADS, ("PressedArea", "Criterion", *COUNTED.values())),
    (("PanelLength", "PanelWidth"), ("PanelEdges", "PanelPressure", "PanelPush")),
)


class LayupPanel(StagePanel):
    """Cloths and angles edited together, so that their numbers always agree."""

    def add_fields(self):
        """Add the table of plies with the figures below it, then the other fields."""
        obj = self.obj
        materials = preferences.materials()
        extents = [*obj.Extents, *[""] * (len(obj.Cloths) - len(obj.Extents))]
        plies = list(zip(obj.Cloths, obj.Angles, extents, strict=False))
        self.table = PlyTable(list(materials.cloth_names), plies)
        self.grid.addRow(translate("Laywright", "Plies, the first touches the mould"), self.table)
        self.look = LaminateLook(obj.Proxy, self._values, materials.sheets.values())
        find = QtWidgets.QPushButton(translate("Laywright", "Find a layup …"))
        find.setObjectName("FindLayup")
        find.clicked.connect(lambda *_: self.find(materials))
        self.grid.addRow(find)
        self.grid.addRow(self.look)
        self.fields["Cloths"] = fields.Field(
            self.table, lambda: [cloth for cloth, _, _ in self.table.plies()]
        )
        self.fields["Angles"] = fields.Field(
            self.table, lambda: [angle for _, angle, _ in self.table.plies()]
        )
        self.fields["Extents"] = fields.Field(self.table, self._extents)
        self.fields["Cards"] = fields.Field(self._library(materials), self._cards)
        offers = {"Resin": materials.resin_names, "Core": ("", *materials.core_names)}
        whole, self.folds = self.grid, self._folds()
        for prop in obj.Proxy.properties:
            if prop.name in self.fields:
                continue
            fold = next((fold for names, fold in self.folds if prop.name in names), None)
            self.grid = whole if fold is None else fold.form
            field = (
                fields.named(list(offers[prop.name]), getattr(obj, prop.name))
                if prop.name in offers
                else fields.field_for(obj, prop)
            )
            self.add_field(prop, field)
            self.look.watch(field.widget)
        self.grid = whole
        for _, fold in self.folds:
            whole.addRow(fold)
        self.table.changed.connect(self.look.look_soon)
        self.look.look()

    def _extents(self):
        """Return what each ply covers, as far as the last one that covers a part of the face."""
        extents = [extent for _, _, extent in self.table.plies()]
        while extents and not extents[-1]:
            extents.pop()
        return extents

    def _folds(self):
        """Return what folds away; a part in which something is set stands open."""
        titles = (
            translate("Laywright", "Ends of local plies"),
            translate("Laywright", "Core"),
            translate("Laywright", "Load"),
            translate("Laywright", "Flat panel, a quick estimate"),
        )
        folds = []
        for title, (deciding, others) in zip(titles, _FOLDED, strict=True):
            fold = Fold(title)
            values = (getattr(self.obj, name) for name in deciding)
            fold.open(any(getattr(value, "Value", value) for value in values))
            folds.append((deciding + others, fold))
        return folds

    def _say(self, problem, name=""):
        super()._say(problem, name)
        for said in self.problems.values():
            for _, fold in self.folds:
                if not said.isHidden() and fold.holds(said):
                    fold.open(True)

    def find(self, materials):
        """Open the window that ranks layups; the one that is taken goes into the table."""
        self.look.look()
        if self.look.laminate is None:
            return
        kept = [] if self.renew.isChecked() else kept_cards(self.obj)
        cards = materials.cards | {card.name: card for card in kept}
        window = ChoiceWindow(materials_of(cards.values()), self.look.laminate, self.form)
        local = [ply for ply in self.table.plies() if ply[2]]
        window.accepted.connect(lambda: self.table.fill([*window.plies_taken(), *local]))
        window.open()

    def _library(self, materials):
        """Return the box that takes the library's cards, shown where they say something else."""
        newer = newer_cards(materials, kept_cards(self.obj))
        self.renew = QtWidgets.QCheckBox(translate("Laywright", "Take the library's cards"))
        self.renew.setObjectName("RenewCards")
        if newer:
            words = translate(
                "Laywright", "This job keeps its own cards. The library now says otherwise of: {0}"
            ).format(", ".join(newer))
            label = QtWidgets.QLabel(words)
            label.setWordWrap(True)
            self.grid.addRow(label)
            self.grid.addRow(self.renew)
            self.renew.toggled.connect(self.look.look_soon)
        return self.renew

    def _cards(self):
        return [] if self.renew.isChecked() else list(self.obj.Cards)

    def _values(self):
        """Return what stands in the fields, by property."""
        return {name: field.value() for name, field in self.fields.items()}
