"""Lines in the scene of a view provider."""

from pivy import coin

from freecad.laywright.views.overlay import Overlay

__all__ = ["SceneLines"]


class SceneLines(Overlay):
    """Lines of one colour, shown as soon as there are any.

    Parameters
    ----------
    vobj : view provider
        Whose scene they are added to.
    colour : (r, g, b)
        From 0 to 1.
    width : float
        In pixels.
    holder : class of node
        See `Overlay`.
    """

    def __init__(self, vobj, colour, width, holder):
        self._place = coin.SoCoordinate3()
        self._lines = coin.SoLineSet()
        paint, style = coin.SoBaseColor(), coin.SoDrawStyle()
        paint.rgb.setValue(*colour)
        style.lineWidth = width
        super().__init__(vobj, (paint, style, self._place, self._lines), holder)

    def write(self, lines):
        """Set the lines, each a list of points (x, y, z); none hides them."""
        points = [point for line in lines for point in line]
        counts = [len(line) for line in lines]
        self._place.point.deleteValues(0)
        self._lines.numVertices.deleteValues(0)
        if points:
            self._place.point.setValues(0, len(points), points)
            self._lines.numVertices.setValues(0, len(counts), counts)
        self.show(bool(points))
