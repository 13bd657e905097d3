"""Words at places in the scene, always turned to the reader and seen through the surface."""

from pivy import coin

from freecad.laywright.views.overlay import Overlay

__all__ = ["Signs"]

_INK = (0.10, 0.10, 0.12)
_SIZE = 16


class Signs(Overlay):
    """Short texts over the scene of a view provider.

    Parameters
    ----------
    vobj : view provider
        Whose scene they are added to.
    """

    def __init__(self, vobj):
        self._signs = coin.SoSeparator()
        ink, font, light = coin.SoBaseColor(), coin.SoFont(), coin.SoLightModel()
        ink.rgb.setValue(*_INK)
        font.size = _SIZE
        light.model = coin.SoLightModel.BASE_COLOR
        unpickable = coin.SoPickStyle()
        unpickable.style = coin.SoPickStyle.UNPICKABLE
        super().__init__(vobj, (light, unpickable, ink, font, self._signs))
        self.texts = ()

    def write(self, signs):
        """Set the signs: text and place (x, y, z) of each."""
        self._signs.removeAllChildren()
        for text, point in signs:
            sign, place, words = coin.SoSeparator(), coin.SoTranslation(), coin.SoText2()
            place.translation = point
            words.string = text
            words.justification = coin.SoText2.CENTER
            for node in (place, words):
                sign.addChild(node)
            self._signs.addChild(sign)
        self.texts = tuple(text for text, _ in signs)
