"""Lines in the scene of a view provider."""

from pivy import coin

__all__ = ["SceneLines"]


class SceneLines:
    """Lines of one colour.

    Parameters
    ----------
    vobj : view provider
        Whose scene they are added to.
    colour : (r, g, b)
        From 0 to 1.
    width : float
        In pixels.
    holder : class of node
        `coin.SoAnnotation` to be seen through surfaces, `coin.SoSeparator` to be hidden by them.
    """

    def __init__(self, vobj, colour, width, holder):
        self._switch = coin.SoSwitch()
        self._place = coin.SoCoordinate3()
        self._lines = coin.SoLineSet()
        content = holder()
        paint, style = coin.SoBaseColor(), coin.SoDrawStyle()
        paint.rgb.setValue(*colour)
        style.lineWidth = width
        for node in (paint, style, self._place, self._lines):
            content.addChild(node)
        self._switch.addChild(content)
        vobj.RootNode.addChild(self._switch)
        self.write([])

    def write(self, lines):
        """Set the lines, each a list of points (x, y, z); none hides them."""
        points = [point for line in lines for point in line]
        counts = [len(line) for line in lines]
        self._place.point.deleteValues(0)
        self._lines.numVertices.deleteValues(0)
        if points:
            self._place.point.setValues(0, len(points), points)
            self._lines.numVertices.setValues(0, len(counts), counts)
        self._switch.whichChild = coin.SO_SWITCH_ALL if points else coin.SO_SWITCH_NONE
