"""The task panel of a Layup: plies in a table, resin from the cards."""

from freecad.laywright import preferences
from freecad.laywright.panels import fields
from freecad.laywright.panels.ply_table import PlyTable
from freecad.laywright.panels.stage_panel import StagePanel

__all__ = ["LayupPanel"]


class LayupPanel(StagePanel):
    """Cloths and angles edited together, so that their numbers always agree."""

    def add_fields(self):
        """Add the table of plies, the resins by name, and the other fields."""
        materials = preferences.materials()
        plies = list(zip(self.obj.Cloths, self.obj.Angles, strict=False))
        self.table = PlyTable(list(materials.cloth_names), plies)
        self.grid.addRow("Plies, the first touches the mould", self.table)
        for prop in self.obj.Proxy.properties:
            if prop.name == "Cloths":
                column = fields.Field(
                    self.table, lambda: [cloth for cloth, _ in self.table.plies()]
                )
                self.fields[prop.name] = column
            elif prop.name == "Angles":
                column = fields.Field(
                    self.table, lambda: [angle for _, angle in self.table.plies()]
                )
                self.fields[prop.name] = column
            elif prop.name == "Resin":
                self.add_field(prop, fields.named(list(materials.resin_names), self.obj.Resin))
            else:
                self.add_field(prop, fields.field_for(self.obj, prop))
