"""A legend in the corner of the 3D view: coloured squares with words and numbers."""

from pivy import coin

from freecad.laywright.views.overlay import Overlay

__all__ = ["Legend", "place_legends"]

_LEFT, _LOW = -0.96, -0.94
_STEP, _SIDE = 0.075, 0.045
_BETWEEN = 0.5  # rows


class Legend(Overlay):
    """Squares with text, drawn over the scene, shown while its object is shown.

    Parameters
    ----------
    vobj : view provider
        Whose scene it is added to.
    """

    def __init__(self, vobj):
        self._rows = coin.SoSeparator()
        self._place = coin.SoTranslation()
        overlay = coin.SoAnnotation()
        camera = coin.SoOrthographicCamera()
        camera.viewportMapping = coin.SoCamera.LEAVE_ALONE
        camera.position = (0.0, 0.0, 1.0)
        camera.height = 2.0
        camera.aspectRatio = 1.0
        light = coin.SoLightModel()
        light.model = coin.SoLightModel.BASE_COLOR
        unpickable = coin.SoPickStyle()
        unpickable.style = coin.SoPickStyle.UNPICKABLE
        for node in (camera, light, unpickable, self._place, self._rows):
            overlay.addChild(node)
        super().__init__(vobj, (overlay,), _outside)

    @property
    def is_shown(self):
        """Whether it is shown and has anything to say."""
        return super().is_shown and bool(self.texts)

    def raise_by(self, rows):
        """Leave room for so many rows below; return the number of rows that are now taken."""
        self._place.translation = (0.0, rows * _STEP, 0.0)
        return rows + len(self.texts) + _BETWEEN

    def write(self, rows):
        """Set the rows, the first on top: colour (r, g, b, ...) or None, and text."""
        self._rows.removeAllChildren()
        for index, (colour, text) in enumerate(reversed(list(rows))):
            low = _LOW + index * _STEP
            if colour is not None:
                self._rows.addChild(_square(colour, low))
            self._rows.addChild(_text(text, low))

    @property
    def texts(self):
        """The texts shown, the first on top."""
        separators = [self._rows.getChild(i) for i in range(self._rows.getNumChildren())]
        found = [
            node.string.getValues()[0]
            for separator in separators
            for node in (separator.getChild(i) for i in range(separator.getNumChildren()))
            if isinstance(node, coin.SoText2)
        ]
        return found[::-1]


def place_legends(document):
    """Stack the legends that are shown in a document, so that none covers another.

    Parameters
    ----------
    document : App.Document
    """
    taken = 0.0
    for obj in reversed(document.Objects):
        legend = getattr(getattr(obj.ViewObject, "Proxy", None), "legend", None)
        if legend is not None and legend.is_shown:
            taken = legend.raise_by(taken)


def _outside():
    """Return a group that is left out when the view is fitted to what it shows."""
    kind = coin.SoType.fromName("SoSkipBoundingGroup")
    return coin.SoSeparator() if kind.isBad() else kind.createInstance()


def _square(colour, low):
    separator = coin.SoSeparator()
    paint = coin.SoBaseColor()
    paint.rgb = colour[:3]
    points = coin.SoCoordinate3()
    right, top = _LEFT + _SIDE, low + _SIDE
    corners = [(_LEFT, low, 0), (right, low, 0), (right, top, 0), (_LEFT, top, 0)]
    points.point.setValues(0, 4, corners)
    face = coin.SoFaceSet()
    face.numVertices = 4
    edge_paint = coin.SoBaseColor()
    edge_paint.rgb = (0.0, 0.0, 0.0)
    edge_points = coin.SoCoordinate3()
    edge_points.point.setValues(0, 5, [*corners, corners[0]])
    edge = coin.SoLineSet()
    edge.numVertices = 5
    for node in (paint, points, face, edge_paint, edge_points, edge):
        separator.addChild(node)
    return separator


def _text(text, low):
    separator = coin.SoSeparator()
    paint = coin.SoBaseColor()
    paint.rgb = (0.0, 0.0, 0.0)
    place = coin.SoTranslation()
    place.translation = (_LEFT + 1.6 * _SIDE, low + 0.2 * _SIDE, 0.0)
    font = coin.SoFont()
    font.name = "sans"
    font.size = 14.0
    words = coin.SoText2()
    words.string = text
    for node in (paint, place, font, words):
        separator.addChild(node)
    return separator
