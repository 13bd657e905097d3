"""Something drawn over the scene of a view provider, seen through the surface, shown or not."""

from pivy import coin

__all__ = ["Overlay"]


class Overlay:
    """A switch over the scene.

    Parameters
    ----------
    vobj : view provider
        Whose scene it is added to.
    nodes : sequence of coin.SoNode
        What is drawn, in order.
    """

    def __init__(self, vobj, nodes):
        self._switch = coin.SoSwitch()
        over = coin.SoAnnotation()
        for node in nodes:
            over.addChild(node)
        self._switch.addChild(over)
        vobj.RootNode.addChild(self._switch)

    def show(self, visible):
        """Show or hide it."""
        self._switch.whichChild = coin.SO_SWITCH_ALL if visible else coin.SO_SWITCH_NONE
