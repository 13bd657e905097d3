"""Places to look at, as dark points that are seen through the surface."""

from pivy import coin

from freecad.laywright.views.overlay import Overlay

__all__ = ["Places"]

_COLOUR = (0.30, 0.08, 0.42)
_SIZE = 11


class Places(Overlay):
    """Points over the scene of a view provider.

    Parameters
    ----------
    vobj : view provider
        Whose scene they are added to.
    """

    def __init__(self, vobj):
        self._points = coin.SoCoordinate3()
        colour, style = coin.SoBaseColor(), coin.SoDrawStyle()
        colour.rgb.setValue(*_COLOUR)
        style.pointSize = _SIZE
        super().__init__(vobj, (colour, style, self._points, coin.SoPointSet()))

    def write(self, points):
        """Set the points (x, y, z)."""
        self._points.point.deleteValues(0)
        self._points.point.setValues(0, len(points), points)
