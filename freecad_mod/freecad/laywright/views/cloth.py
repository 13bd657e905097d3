"""Cloth Patterns: flat outlines, and on wish the shear or stretch of a ply on the part."""

import FreeCAD

from freecad.laywright import bridge
from freecad.laywright.qt import QtCore
from freecad.laywright.views.base import StageView
from freecad.laywright.views.coloured import ColouredSurface
from freecad.laywright.views.legend import Legend
from laywright.cloth.maps import MAPS, map_of

__all__ = ["ClothView"]

_NONE = "outlines only"


class ClothView(StageView):
    """Adds the view properties Map (what is shown on the part) and MapPly (of which ply)."""

    def attach(self, vobj):
        super().attach(vobj)
        if "Map" not in vobj.PropertiesList:
            vobj.addProperty("App::PropertyEnumeration", "Map", "Laywright", "Shown on the part")
            vobj.Map = [_NONE, *MAPS]
        if "MapPly" not in vobj.PropertiesList:
            vobj.addProperty("App::PropertyInteger", "MapPly", "Laywright", "Ply that is shown")
            vobj.MapPly = 1
        self.surface = ColouredSurface(vobj)
        self.legend = Legend(vobj)
        self.refresh_soon()

    def updateData(self, obj, name):
        if name == "Shape":
            self.refresh_soon()

    def onChanged(self, vobj, name):
        if name in ("Map", "MapPly", "Visibility"):
            self.refresh_soon()

    def setupContextMenu(self, vobj, menu):
        """Offer the maps of every ply in the tree's context menu."""
        for kind in vobj.getEnumerationsOfProperty("Map"):
            action = menu.addAction(kind)
            action.triggered.connect(lambda *_, kind=kind: setattr(vobj, "Map", kind))

    def refresh_soon(self):
        """Refresh when FreeCAD has finished what it does now."""
        QtCore.QTimer.singleShot(0, self.refresh)

    def refresh(self):
        """Draw the chosen map and its legend."""
        try:
            vobj = self.ViewObject
            obj = vobj.Object
            kept = obj.Proxy.kept(obj) if getattr(obj, "Digest", "") else None
            shown = bool(vobj.Visibility and kept is not None and vobj.Map != _NONE)
            if shown:
                ply = min(max(vobj.MapPly, 1), len(kept.draped))
                layup = obj.Layup.Proxy.kept(obj.Layup).layup
                found = map_of(kept.draped[ply - 1], layup.plies[ply - 1].cloth, vobj.Map)
                points, triangles, colours = bridge.scene_lists(found, obj.Placement)
                self.surface.write(points, triangles, colours)
                title = f"{kept.patterns[ply - 1].name}: {vobj.Map}"
                self.legend.write([(None, title), *found.rows])
            self.surface.show(shown)
            self.legend.show(shown)
        except ReferenceError:
            return  # deleted meanwhile
        except RuntimeError as problem:
            FreeCAD.Console.PrintWarning(f"{problem}\n")
