"""The look that all stage objects share: icon, double click, drop-outs on restore."""

from freecad.laywright import ICONS

__all__ = ["GroupView", "StageView"]


class StageView:
    """View provider of a stage object; double click opens its task panel."""

    def __init__(self, vobj):
        vobj.Proxy = self
        self.attach(vobj)

    def attach(self, vobj):
        """FreeCAD calls this on making and on loading."""
        self.ViewObject = vobj

    def getIcon(self):
        return str(ICONS / self.ViewObject.Object.Proxy.icon)

    def setEdit(self, vobj, mode=0):
        if mode != 0:
            return None
        import FreeCADGui

        from freecad.laywright.panels.kinds import panel_for

        FreeCADGui.Control.showDialog(panel_for(vobj.Object))
        return True

    def unsetEdit(self, vobj, mode=0):
        import FreeCADGui

        FreeCADGui.Control.closeDialog()
        return True

    def doubleClicked(self, vobj):
        vobj.Document.setEdit(vobj.Object, 0)
        return True

    def dumps(self):
        """Nothing is stored: the look follows from the object."""

    def loads(self, state):
        """See `dumps`."""

    __getstate__ = dumps
    __setstate__ = loads


class GroupView(StageView):
    """The Job in the tree."""

    def setEdit(self, vobj, mode=0):
        return None

    def doubleClicked(self, vobj):
        return False
