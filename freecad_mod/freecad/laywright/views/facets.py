"""Meshes whose facets are coloured by what a stage found, with a legend that shows numbers."""

from freecad.laywright.views.base import StageView

__all__ = ["FacetView", "ReleaseView", "TilesView"]

# Our own scale: told apart by lightness alone, so that it survives a grey print and any kind
# of colour blindness.
_CANNOT_LEAVE = (0.25, 0.05, 0.35, 0.0)
_TOO_STEEP = (0.93, 0.55, 0.20, 0.0)
_LEAVES = (0.80, 0.88, 0.90, 0.0)
_TILE_SHADES = ((0.82, 0.80, 0.72, 0.0), (0.55, 0.62, 0.68, 0.0))


class FacetView(StageView):
    """A mesh with one colour for each facet."""

    def attach(self, vobj):
        super().attach(vobj)
        if "FaceColors" not in vobj.Object.PropertiesList:
            vobj.Object.addProperty(
                "App::PropertyColorList", "FaceColors", "Results", "Colour of each facet"
            )
            vobj.Object.setEditorMode("FaceColors", 2)
        self.refresh(vobj)

    def updateData(self, obj, name):
        if name == "Digest":
            obj.FaceColors = self.colours(obj)
            self.refresh(obj.ViewObject)

    def refresh(self, vobj):
        """Switch colouring off and on: 0.20 forgets it when a document is opened."""
        vobj.Coloring = False
        vobj.Coloring = True

    def colours(self, obj):
        """Return one (r, g, b, a) for each facet of the object's mesh."""
        raise NotImplementedError


class ReleaseView(FacetView):
    """Draft classes of the Release Check."""

    def colours(self, obj):
        report = obj.Proxy.kept(obj)
        if report is None:
            return []
        shades = (_CANNOT_LEAVE, _TOO_STEEP, _LEAVES)
        return [shades[index] for index in report.facet_classes]


class TilesView(FacetView):
    """Tiles in two shades, so that neighbours are told apart."""

    def colours(self, obj):
        tiles = obj.Proxy.kept(obj)
        if tiles is None:
            return []
        return [
            _TILE_SHADES[(tile.row + tile.column + tile.layer) % 2]
            for tile in tiles.tiles
            for _ in range(len(tile.solid.triangles))
        ]
