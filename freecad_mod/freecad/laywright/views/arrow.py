"""An arrow in the scene of a view provider."""

from pivy import coin

from freecad.laywright.views.overlay import Overlay

__all__ = ["Arrow"]

_HEAD = 0.25  # share of the length
_SLIM = 0.12
_WIDTH = 3.0


class Arrow(Overlay):
    """A line with a cone on its end.

    Parameters
    ----------
    vobj : view provider
        Whose scene it is added to.
    colour : tuple of 3 float
        Red, green, blue, 0 to 1.
    """

    def __init__(self, vobj, colour):
        self._content = coin.SoSeparator()
        self._colour = colour
        super().__init__(vobj, (self._content,), coin.SoSeparator)

    def draw(self, start, end):
        """Draw it from one point to another (FreeCAD vectors, mm)."""
        along = end - start
        neck = end - along * _HEAD
        paint = coin.SoBaseColor()
        paint.rgb = self._colour
        style = coin.SoDrawStyle()
        style.lineWidth = _WIDTH
        points = coin.SoCoordinate3()
        points.point.setValues(0, 2, [tuple(start), tuple(neck)])
        line = coin.SoLineSet()
        line.numVertices = 2
        turned = coin.SoTransform()
        turned.translation = tuple((neck + end) * 0.5)
        turned.rotation.setValue(coin.SbRotation(coin.SbVec3f(0, 1, 0), coin.SbVec3f(*along)))
        cone = coin.SoCone()
        cone.height = along.Length * _HEAD
        cone.bottomRadius = along.Length * _SLIM
        self._content.removeAllChildren()
        for node in (paint, style, points, line, turned, cone):
            self._content.addChild(node)
