"""Something drawn in the scene of a view provider beside what FreeCAD draws itself."""

from pivy import coin

__all__ = ["Overlay"]


class Overlay:
    """Nodes that are shown or not; not, until it is said.

    Parameters
    ----------
    vobj : view provider
        Whose scene they are added to.
    nodes : sequence of coin.SoNode
        What is drawn, in order.
    holder : callable that gives a group
        `coin.SoAnnotation` to be seen through surfaces, `coin.SoSeparator` to be hidden by them.
    """

    def __init__(self, vobj, nodes, holder=coin.SoAnnotation):
        self._switch = coin.SoSwitch()
        group = holder()
        for node in nodes:
            group.addChild(node)
        self._switch.addChild(group)
        vobj.RootNode.addChild(self._switch)
        self.show(False)

    def show(self, visible):
        """Show or hide it."""
        self._switch.whichChild = coin.SO_SWITCH_ALL if visible else coin.SO_SWITCH_NONE

    @property
    def is_shown(self):
        """Whether it is shown."""
        return self._switch.whichChild.getValue() == coin.SO_SWITCH_ALL
