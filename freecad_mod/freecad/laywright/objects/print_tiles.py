"""Print Tiles: the body cut into pieces that fit the printer."""

from freecad.laywright import bridge, preferences
from freecad.laywright.objects.base import Property, StageObject, fresh_result
from laywright.errors import InputError
from laywright.mould.exploded import exploded
from laywright.mould.tiles import TileSet, TileSettings, cut_tiles

__all__ = ["PrintTilesObject"]


class PrintTilesObject(StageObject):
    """Tiles with dowel holes and marks, shown apart by a gap that the user sets."""

    stage = cut_tiles
    result_type = TileSet
    host_type = "Mesh::FeaturePython"
    icon = "print_tiles.svg"
    properties = (
        Property("Body", "Link", "The Mould Body that is cut"),
        Property("Printer", "String", "Printer by its card", choices=preferences.printers),
        Property("DowelDiameter", "Length", "Diameter of the dowels (mm)", "6 mm"),
        Property("Clearance", "Length", "Clearance of the dowel holes per side (mm)", "0.15 mm"),
        Property("GlueGap", "Length", "Glue gap at each seam (mm)", "0.1 mm"),
        Property("LeastTile", "Length", "No tile is thinner than this (mm)", "30 mm"),
        Property("ShownApart", "Length", "Gap between the tiles on the screen (mm)", "20 mm"),
    )
    reports = (
        Property("Count", "Integer", "Number of tiles"),
        Property("Tiles", "StringList", "Name, size (mm) and mass (g) of each tile"),
        Property("GlueArea", "Area", "Area of all seams (mm²)"),
        Property("VolumeError", "Float", "Tiles and cut-outs together against the body (relative)"),
        Property("Remarks", "StringList", "What to know before printing"),
    )

    def inputs(self, obj):
        body = fresh_result(obj.Body, "a Mould Body", obj.Label)
        settings = TileSettings(
            dowel_diameter=obj.DowelDiameter.Value,
            clearance=obj.Clearance.Value,
            glue_gap=obj.GlueGap.Value,
            least_tile=obj.LeastTile.Value,
        )
        known = preferences.printers()
        if obj.Printer not in known:
            raise InputError(
                "Printer", f"'{obj.Printer}'", f"one of {', '.join(known)}", "choose one"
            )
        return body, known[obj.Printer], settings

    def show(self, obj, result):
        obj.Mesh = bridge.mesh_from_solids(exploded(result, obj.ShownApart.Value))
        obj.Count = len(result.tiles)
        obj.Tiles = [
            f"{tile.name}: {' × '.join(f'{side:.1f}' for side in tile.size)} mm, {tile.mass:.0f} g"
            for tile in result.tiles
        ]
        obj.GlueArea = result.glue_area
        obj.VolumeError = result.volume_error
        obj.Remarks = list(result.remarks)

    def onChanged(self, obj, name):
        """Move the shown tiles at once; the tiles themselves stay."""
        if name == "ShownApart" and "Digest" in obj.PropertiesList and obj.Digest:
            kept = self.kept(obj)
            if kept is not None:
                obj.Mesh = bridge.mesh_from_solids(exploded(kept, obj.ShownApart.Value))
