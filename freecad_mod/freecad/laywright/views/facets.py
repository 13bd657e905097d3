"""Meshes whose facets are coloured by what a stage found, with a legend that shows numbers."""

import math

from freecad.laywright import host, preferences
from freecad.laywright.qt import translate
from freecad.laywright.translated import translated
from freecad.laywright.views.base import StageView, Toggle
from freecad.laywright.views.legend import Legend, place_legends
from freecad.laywright.views.places import Places
from freecad.laywright.views.signs import Signs
from freecad.laywright.views.step_rows import step_rows
from laywright.files.scale import shades
from laywright.mould.body.from_cad import distance_steps
from laywright.mould.tiles.exploded import signs

__all__ = ["FacetView", "MouldView", "ReleaseView", "ScanView", "TilesView"]

_DEFECT = (0.30, 0.08, 0.42, 0.0)
_NOT_MEASURED = (0.80, 0.80, 0.80, 0.0)
_REGION_SHADES = (
    (0.80, 0.88, 0.90, 0.0),
    (0.45, 0.62, 0.70, 0.0),
    (0.95, 0.78, 0.50, 0.0),
    (0.62, 0.50, 0.62, 0.0),
    (0.72, 0.76, 0.56, 0.0),
    (0.88, 0.66, 0.60, 0.0),
)
_APART = 20.0  # mm
_TILE_SHADES = ((0.86, 0.82, 0.70, 0.0), (0.50, 0.60, 0.68, 0.0))


class FacetView(StageView):
    """A mesh with one colour for each facet."""

    def attach(self, vobj):
        super().attach(vobj)
        obj = vobj.Object
        if "FaceColors" not in obj.PropertiesList:
            obj.addProperty("App::PropertyColorList", "FaceColors", "Results", "Colour of a facet")
        obj.setEditorMode("FaceColors", 2)
        if "PaintedIn" not in vobj.PropertiesList:
            vobj.addProperty("App::PropertyString", "PaintedIn", "Laywright", "Colours in use")
        vobj.setEditorMode("PaintedIn", 2)
        self.legend = Legend(vobj)
        self.refresh_soon()

    def updateData(self, obj, name):
        if name == "Mesh" and hasattr(obj, "FaceColors"):
            self._paint(obj)
            self.refresh_soon()

    def _paint(self, obj):
        """Colour the facets in the colours that are chosen now."""
        touched = "Touched" in obj.State
        obj.FaceColors = self.colours(obj)
        obj.ViewObject.PaintedIn = preferences.ramp().value
        if not touched:
            obj.purgeTouched()

    def refresh(self):
        """Show colours and legend: 0.20 forgets the colours when a document is opened."""
        try:
            vobj = self.ViewObject
            obj = vobj.Object
            wanted = getattr(vobj, self.toggles[0].name)
            if vobj.PaintedIn != preferences.ramp().value:
                self._paint(obj)
            vobj.Coloring = False
            if wanted and obj.Mesh.CountFacets == len(obj.FaceColors) > 0:
                vobj.Coloring = True
            rows = self.legend_rows(obj)
            self.legend.write([(None, obj.Label), *rows] if rows else [])
            self.legend.show(vobj.Visibility and wanted)
            place_legends(obj.Document)
        except ReferenceError:
            return  # deleted meanwhile

    def colours(self, obj):
        """Return one (r, g, b, a) for each facet of the object's mesh."""
        raise NotImplementedError

    def legend_rows(self, obj):
        """Return colour and text of each row of the legend."""
        return ()


class ReleaseView(FacetView):
    """Draft classes of the Release Check."""

    toggles = (Toggle("DraftClasses", "Draft classes"),)

    def colours(self, obj):
        report = obj.Proxy.shown(obj)
        if report is None:
            return []
        classes = self._shades()
        return [classes[index] for index in report.facet_classes]

    @staticmethod
    def _shades():
        """Return the colours of: cannot leave, leaves hard, leaves."""
        return tuple((*shade, 0.0) for shade in reversed(shades(preferences.ramp(), 3)))

    def legend_rows(self, obj):
        report = obj.Proxy.shown(obj) if hasattr(obj, "Digest") and obj.Digest else None
        if report is None:
            return ()
        cannot, hard, good = (area for _, area in report.area_by_class)
        darkest, middle, palest = self._shades()
        wanted = math.degrees(report.wanted_draft)
        return (
            (
                darkest,
                translate("Laywright", "cannot leave along the pull: {0} mm²").format(
                    f"{cannot:.0f}"
                ),
            ),
            (
                middle,
                translate("Laywright", "leaves hard, draft under {0}°: {1} mm²").format(
                    f"{wanted:.1f}", f"{hard:.0f}"
                ),
            ),
            (palest, translate("Laywright", "leaves: {0} mm²").format(f"{good:.0f}")),
        )


class ScanView(FacetView):
    """Smooth regions in shades that neighbours in size do not share, defects as dark points."""

    toggles = (Toggle("RegionShades", "Regions in shades"),)

    def attach(self, vobj):
        self.places = Places(vobj)
        super().attach(vobj)

    def refresh(self):
        super().refresh()
        try:
            obj = self.ViewObject.Object
            reading = _shown(obj)
            found = () if reading is None else reading.defects
            self.places.write([point for defect in found for point in defect.points])
            self.places.show(self.ViewObject.Visibility)
        except ReferenceError:
            return  # deleted meanwhile

    def colours(self, obj):
        reading = obj.Proxy.kept(obj)
        if reading is None:
            return []
        count = len(_REGION_SHADES)
        return [_REGION_SHADES[patch % count] for patch in reading.surface.patches.tolist()]

    def legend_rows(self, obj):
        reading = _shown(obj)
        if reading is None:
            return ()
        surface = reading.surface
        areas = surface.patch_areas.tolist()
        rows = [
            (shade, f"{name}: {area:.0f} mm²")
            for shade, name, area in zip(_REGION_SHADES, surface.patch_names, areas, strict=False)
        ]
        if len(areas) > len(rows):
            rows.append((None, _more(len(areas) - len(rows))))
        found = ((_DEFECT, f"{one.count} {translated(one.kind)}") for one in reading.defects)
        return (*rows, *found)


def _shown(obj):
    return obj.Proxy.kept(obj) if hasattr(obj, "Digest") and obj.Digest else None


def _more(count):
    return translate("Laywright", "and {0} more").format(count)


class MouldView(FacetView):
    """How far the printed working area lies from the part's faces."""

    toggles = (Toggle("DistanceMap", "Distance from the part"),)

    @staticmethod
    def _steps(body):
        scale, steps = distance_steps(body.from_cad, body.working, body.solid, body.on_working_area)
        return scale.painted(preferences.ramp()), steps

    def colours(self, obj):
        body = obj.Proxy.shown(obj)
        if body is None:
            return []
        scale, steps = self._steps(body)
        shades = [(*colour, 0.0) for colour in scale.colours.tolist()]
        return [_NOT_MEASURED if step < 0 else shades[step] for step in steps.tolist()]

    def legend_rows(self, obj):
        body = obj.Proxy.shown(obj) if hasattr(obj, "Digest") and obj.Digest else None
        if body is None:
            return ()
        scale, _ = self._steps(body)
        away = abs(body.from_cad[body.working.triangles]).mean(axis=1)
        rows = step_rows(scale, scale.shares(away, body.working.areas))
        words = translate("Laywright", "off the part {0}")
        return tuple(((*colour, 0.0), words.format(text)) for colour, text in rows)


class TilesView(FacetView):
    """Tiles in two shades, so that neighbours are told apart; together or pulled apart."""

    toggles = (Toggle("TwoShades", "Tiles in two shades"),)

    def setupContextMenu(self, vobj, menu):
        super().setupContextMenu(vobj, menu)
        action = menu.addAction(translate("Laywright", "Pulled apart"))
        action.setCheckable(True)
        action.setChecked(vobj.Object.ShownApart.Value > 0.0)
        action.toggled.connect(lambda on: self.pull_apart(_APART if on else 0.0))

        menu.addAction(translate("Laywright", "Printer of your own …")).triggered.connect(
            lambda *_: self.keep_printer()
        )

    def attach(self, vobj):
        self.signs = Signs(vobj)
        super().attach(vobj)

    def refresh(self):
        super().refresh()
        try:
            obj = self.ViewObject.Object
            tiles = obj.Proxy.shown(obj) if hasattr(obj, "Digest") and obj.Digest else None
            self.signs.write(() if tiles is None else signs(tiles, obj.ShownApart.Value))
            self.signs.show(self.ViewObject.Visibility)
        except ReferenceError:
            return  # deleted meanwhile

    def keep_printer(self):
        """Ask for a printer of one's own, begun from the present one, and take it."""
        from freecad.laywright.panels.printer_window import PrinterWindow

        obj = self.ViewObject.Object
        known = preferences.printers()
        window = PrinterWindow(known.get(obj.Printer, known[preferences.first_printer()]))
        if window.exec_():
            with host.transaction(obj.Document, translate("Laywright", "Printer of your own …")):
                obj.Printer = window.printer.name

    def pull_apart(self, gap):
        """Show the tiles with this gap (mm) between them, as one step of undo."""
        obj = self.ViewObject.Object
        with host.transaction(obj.Document, translate("Laywright", "Pulled apart")):
            obj.ShownApart = gap
            obj.purgeTouched()

    def legend_rows(self, obj):
        tiles = obj.Proxy.shown(obj) if hasattr(obj, "Digest") and obj.Digest else None
        if tiles is None:
            return ()
        seams = translate("Laywright", "{0} tiles, {1} cm² to glue, {2} g of glue")
        number = f"{len(tiles.tiles)}"
        return (
            (None, seams.format(number, f"{tiles.glue_area / 100:.0f}", f"{tiles.glue_g:.1f}")),
        )

    def colours(self, obj):
        tiles = obj.Proxy.shown(obj)
        if tiles is None:
            return []
        return [
            _TILE_SHADES[(tile.row + tile.column + tile.layer) % 2]
            for tile in tiles.tiles
            for _ in range(len(tile.solid.triangles))
        ]
