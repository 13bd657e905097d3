"""Cloth Patterns: flat outlines, and on wish the shear or stretch of a ply on the part."""

import FreeCAD
from pivy import coin

from freecad.laywright import bridge, host, preferences
from freecad.laywright.ahead import bring_up_to_date
from freecad.laywright.qt import translate
from freecad.laywright.views.base import StageView
from freecad.laywright.views.coloured import ColouredSurface
from freecad.laywright.views.legend import Legend, place_legends
from freecad.laywright.views.lines import SceneLines
from freecad.laywright.views.step_rows import step_rows
from laywright.cloth.patterns.maps import MAPS, flat_surface, map_of
from laywright.errors import Cancelled

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
        self.limits = SceneLines(vobj, _CONTOUR_COLOUR, 3.0, coin.SoSeparator)
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
        """Offer the maps, whose ply and where they lie in the tree's context menu."""
        self._offer(menu, vobj, "Map", {kind: _spoken(kind) for kind in (_NONE, *MAPS)})
        kept = _kept(vobj.Object)
        if kept is not None:
            shown = menu.addMenu(translate("Laywright", "Ply that is shown"))
            names = {number: _ply_name(vobj.Object, number) for number in _plies(kept)}
            self._offer(shown, vobj, "MapPly", names)
        self._offer(menu, vobj, "MapPlace", {place: _spoken(place) for place in (_PART, _FLAT)})
        if vobj.Object.ProposedCuts:
            action = menu.addAction(translate("Laywright", "Make the proposed cuts"))
            action.triggered.connect(lambda *_: self._take(vobj.Object, "take_proposed"))
            action = menu.addAction(translate("Laywright", "Refuse the proposed cuts"))
            action.triggered.connect(lambda *_: self._take(vobj.Object, "refuse_proposed"))

    @staticmethod
    def _offer(menu, vobj, name, words):
        """Add an entry for each value of a view property, the present one ticked."""
        menu.addSeparator()
        for value, text in words.items():
            action = menu.addAction(text)
            action.setCheckable(True)
            action.setChecked(getattr(vobj, name) == value)
            action.triggered.connect(lambda *_, value=value: setattr(vobj, name, value))

    @staticmethod
    def _take(obj, answer):
        """Answer what is proposed, as one step of undo; see `ClothPatternsObject`."""
        title = translate("Laywright", "Proposed cuts")
        try:
            with host.transaction(obj.Document, title):
                getattr(obj.Proxy, answer)(obj)
                bring_up_to_date(obj.Document, obj.Label)
        except Cancelled:
            return

    def refresh(self):
        """Draw the chosen map and its legend."""
        try:
            vobj = self.ViewObject
            obj = vobj.Object
            kept = _kept(obj)
            shown = bool(vobj.Visibility and kept is not None and vobj.Map != _NONE)
            on_part = vobj.Visibility and not (shown and vobj.MapPlace == _FLAT)
            self._draw_cuts(obj, kept if on_part else None)
            self.contours.write([])
            self.limits.write([])
            if shown:
                self._draw_map(vobj, obj, kept)
            self.surface.show(shown)
            self.legend.show(shown)
            place_legends(obj.Document)
        except ReferenceError:
            return  # deleted meanwhile
        except RuntimeError as problem:
            FreeCAD.Console.PrintWarning(f"{problem}\n")

    def _draw_map(self, vobj, obj, kept):
        number = min(max(vobj.MapPly, 1), max(_plies(kept)))
        ply = kept.draped[number - 1]
        layup = obj.Layup.Proxy.kept(obj.Layup).layup
        found = map_of(ply, layup.plies[number - 1].cloth, vobj.Map)
        found = found.painted(preferences.ramp())
        placement = obj.Placement
        if vobj.MapPlace == _FLAT:
            placement = FreeCAD.Placement()
            places = obj.Proxy.places((*kept.patterns, *kept.sheets))
            own = [k for k, pattern in enumerate(kept.patterns) if pattern.ply == number]
            flat = flat_surface(ply, [kept.patterns[k] for k in own], [places[k] for k in own])
            found = found.on(flat)
        self.surface.write(*bridge.scene_lists(found, placement))
        self.contours.write(bridge.scene_lines(found.contours, placement))
        self.limits.write(bridge.scene_lines(found.limit_lines, placement))
        title = f"{_ply_name(obj, number)}: {_spoken(vobj.Map)}"
        self.legend.write([(None, title), *step_rows(found.scale, found.shares, found.bears)])

    def _draw_cuts(self, obj, kept):
        """Draw the cuts on the part: those made, and those proposed and not made."""
        lines = []
        if kept is not None:
            made = {cut.ply for ply in kept.draped for cut in ply.cuts}
            proposed = [cut for found in kept.proposals for cut in found.cuts]
            lines = [cut.line for ply in kept.draped for cut in ply.cuts]
            lines += [cut.line for cut in proposed if cut.ply not in made]
        self.cuts.write(bridge.scene_lines(lines, obj.Placement))


def _kept(obj):
    return obj.Proxy.kept(obj) if getattr(obj, "Digest", "") else None


def _plies(kept):
    """Return the numbers of the plies."""
    return range(1, len(kept.draped) + 1)


def _ply_name(obj, number):
    """Return what a ply is called, its number in the language of the window."""
    layup = obj.Layup.Proxy.kept(obj.Layup).layup
    own = layup.plies[number - 1].name
    return own or translate("Laywright", "ply {0}").format(number)


def _spoken(value):
    """Return a choice of the view properties in the language of the window."""
    return {
        _NONE: translate("Laywright", "outlines only"),
        MAPS[0]: translate("Laywright", "shear"),
        MAPS[1]: translate("Laywright", "stretch along the warp"),
        MAPS[2]: translate("Laywright", "stretch along the weft"),
        _PART: translate("Laywright", "on the part"),
        _FLAT: translate("Laywright", "on the flat patterns"),
    }[value]
