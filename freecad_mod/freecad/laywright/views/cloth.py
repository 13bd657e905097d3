"""Cloth Patterns: flat outlines, and on wish the shear or stretch of a ply on the part."""

import FreeCAD
from pivy import coin

from freecad.laywright import bridge, host, preferences
from freecad.laywright.qt import QtCore
from freecad.laywright.views.base import StageView
from freecad.laywright.views.coloured import ColouredSurface
from freecad.laywright.views.legend import Legend
from freecad.laywright.views.lines import SceneLines
from laywright.cloth.maps import MAPS, flat_surface, map_of

__all__ = ["ClothView"]

_NONE = "outlines only"
_PART, _FLAT = "on the part", "on the flat patterns"
_CUT_COLOUR = (0.85, 0.0, 0.45)
_CONTOUR_COLOUR = (0.15, 0.15, 0.15)


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
        if "MapPlace" not in vobj.PropertiesList:
            vobj.addProperty("App::PropertyEnumeration", "MapPlace", "Laywright", "Where it lies")
            vobj.MapPlace = [_PART, _FLAT]
        self.surface = ColouredSurface(vobj)
        self.contours = SceneLines(vobj, _CONTOUR_COLOUR, 1.0, coin.SoSeparator)
        self.cuts = SceneLines(vobj, _CUT_COLOUR, 4.0, coin.SoAnnotation)
        self.legend = Legend(vobj)
        self.refresh_soon()

    def updateData(self, obj, name):
        if name == "Shape":
            self.refresh_soon()

    def onChanged(self, vobj, name):
        if name in ("Map", "MapPly", "MapPlace", "Visibility"):
            self.refresh_soon()

    def setupContextMenu(self, vobj, menu):
        """Offer the maps of every ply in the tree's context menu."""
        for kind in vobj.getEnumerationsOfProperty("Map"):
            action = menu.addAction(kind)
            action.triggered.connect(lambda *_, kind=kind: setattr(vobj, "Map", kind))

        place = _FLAT if vobj.MapPlace == _PART else _PART
        action = menu.addAction(place)
        action.triggered.connect(lambda *_: setattr(vobj, "MapPlace", place))
        if vobj.Object.ProposedCuts:
            action = menu.addAction("Make the proposed cuts")
            action.triggered.connect(lambda *_: self._take_proposed(vobj.Object))

    def _take_proposed(self, obj):
        with host.transaction(obj.Document, "Make the proposed cuts"):
            obj.Proxy.take_proposed(obj)
        obj.Document.recompute()

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
            on_part = vobj.Visibility and not (shown and vobj.MapPlace == _FLAT)
            self._draw_cuts(obj, kept if on_part else None)
            self.contours.write([])
            if shown:
                self._draw_map(vobj, obj, kept)
            self.surface.show(shown)
            self.legend.show(shown)
        except ReferenceError:
            return  # deleted meanwhile
        except RuntimeError as problem:
            FreeCAD.Console.PrintWarning(f"{problem}\n")

    def _draw_map(self, vobj, obj, kept):
        number = min(max(vobj.MapPly, 1), len(kept.draped))
        ply = kept.draped[number - 1]
        layup = obj.Layup.Proxy.kept(obj.Layup).layup
        found = map_of(ply, layup.plies[number - 1].cloth, vobj.Map)
        found = found.painted(preferences.ramp())
        if vobj.MapPlace == _FLAT:
            places = obj.Proxy.places(kept.patterns)
            own = [k for k, pattern in enumerate(kept.patterns) if pattern.ply == number]
            flat = flat_surface(ply, [kept.patterns[k] for k in own], [places[k] for k in own])
            found = found.on(flat)
            points, triangles, colours = bridge.scene_lists(found, FreeCAD.Placement())
            self.contours.write(bridge.scene_lines(found.contours, FreeCAD.Placement()))
        else:
            points, triangles, colours = bridge.scene_lists(found, obj.Placement)
            self.contours.write(bridge.scene_lines(found.contours, obj.Placement))
        self.surface.write(points, triangles, colours)
        self.legend.write([(None, f"{layup.ply_name(number)}: {vobj.Map}"), *found.rows])

    def _draw_cuts(self, obj, kept):
        """Draw the cuts on the part: those made, and those proposed and not made."""
        lines = []
        if kept is not None:
            made = {cut.ply for ply in kept.draped for cut in ply.cuts}
            proposed = [cut for found in kept.proposals for cut in found.cuts]
            lines = [cut.line for ply in kept.draped for cut in ply.cuts]
            lines += [cut.line for cut in proposed if cut.ply not in made]
        self.cuts.write(bridge.scene_lines(lines, obj.Placement))
