"""A coloured surface in the scene of a view provider, beside what FreeCAD draws itself."""

from pivy import coin

from freecad.laywright.views.overlay import Overlay

__all__ = ["ColouredSurface"]


class ColouredSurface(Overlay):
    """Triangles with one colour each.

    Parameters
    ----------
    vobj : view provider
        Whose scene it is added to.
    """

    def __init__(self, vobj):
        self._content = coin.SoSeparator()
        self._paint = coin.SoMaterial()
        super().__init__(vobj, (self._content,), coin.SoSeparator)

    def write(self, points, triangles, colours):
        """Set points (x, y, z), triangles (three point numbers) and colours (r, g, b)."""
        hints = coin.SoShapeHints()
        hints.vertexOrdering = coin.SoShapeHints.COUNTERCLOCKWISE
        self._paint.diffuseColor.setNum(len(colours))
        self._paint.diffuseColor.setValues(0, len(colours), colours)
        binding = coin.SoMaterialBinding()
        binding.value = coin.SoMaterialBinding.PER_FACE
        place = coin.SoCoordinate3()
        place.point.setValues(0, len(points), points)
        faces = coin.SoIndexedFaceSet()
        corners = [number for triangle in triangles for number in (*triangle, -1)]
        faces.coordIndex.setValues(0, len(corners), corners)
        behind = coin.SoPolygonOffset()  # lines on the surface are seen
        self._content.removeAllChildren()
        for node in (behind, hints, self._paint, binding, place, faces):
            self._content.addChild(node)
