"""Places to look at, as dark points that are seen through the surface."""

from pivy import coin

__all__ = ["Places"]

_COLOUR = (0.30, 0.08, 0.42)
_SIZE = 11


class Places:
    """Points over the scene of a view provider.

    Parameters
    ----------
    vobj : view provider
        Whose scene they are added to.
    """

    def __init__(self, vobj):
        self._switch = coin.SoSwitch()
        self._points = coin.SoCoordinate3()
        over = coin.SoAnnotation()
        colour, style = coin.SoBaseColor(), coin.SoDrawStyle()
        colour.rgb.setValue(*_COLOUR)
        style.pointSize = _SIZE
        for node in (colour, style, self._points, coin.SoPointSet()):
            over.addChild(node)
        self._switch.addChild(over)
        vobj.RootNode.addChild(self._switch)

    def write(self, points):
        """Set the points (x, y, z)."""
        self._points.point.deleteValues(0)
        self._points.point.setValues(0, len(points), points)

    def show(self, visible):
        """Show or hide them."""
        self._switch.whichChild = coin.SO_SWITCH_ALL if visible else coin.SO_SWITCH_NONE
