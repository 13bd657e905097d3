"""The look that all stage objects share: icon, double click, drop-outs on restore."""

from dataclasses import dataclass

import FreeCAD

from freecad.laywright import ICONS
from freecad.laywright.qt import QtCore, translate

__all__ = ["GroupView", "StageView", "Toggle", "refresh_all"]


@dataclass(frozen=True)
class Toggle:
    """Something that a person shows or hides in the 3D view, from the tree's context menu.

    Attributes
    ----------
    name : str
        Of the view property that keeps the choice, saved with the document.
    title : str
        What the menu calls it.
    """

    name: str
    title: str


class StageView:
    """View provider of a stage object; double click opens its task panel."""

    toggles = ()

    def __init__(self, vobj):
        vobj.Proxy = self
        self.attach(vobj)

    def attach(self, vobj):
        """FreeCAD calls this on making and on loading."""
        self.ViewObject = vobj
        for toggle in self.toggles:
            if toggle.name not in vobj.PropertiesList:
                vobj.addProperty("App::PropertyBool", toggle.name, "Laywright", toggle.title)
                setattr(vobj, toggle.name, True)

    def onChanged(self, vobj, name):
        if name == "Visibility" or name in [toggle.name for toggle in self.toggles]:
            self.refresh_soon()

    def finishRestoring(self):
        """Draw when all of a document is there again, whatever came first."""
        self.refresh_soon()

    def setupContextMenu(self, vobj, menu):
        """Offer what can be shown and hidden in the tree's context menu."""
        for toggle in self.toggles:
            action = menu.addAction(translate("Laywright", toggle.title))
            action.setCheckable(True)
            action.setChecked(getattr(vobj, toggle.name))
            action.toggled.connect(lambda on, name=toggle.name: setattr(vobj, name, on))

    def refresh_soon(self):
        """Refresh once FreeCAD has finished what it does now."""
        QtCore.QTimer.singleShot(0, self.refresh)

    def refresh(self):
        """Draw what is shown besides what FreeCAD draws itself."""

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


def refresh_all():
    """Draw everything anew, in all documents, for instance in other colours."""
    for document in FreeCAD.listDocuments().values():
        for obj in document.Objects:
            view = getattr(obj.ViewObject, "Proxy", None)
            if isinstance(view, StageView):
                view.refresh_soon()


class GroupView(StageView):
    """The Job in the tree."""

    def setEdit(self, vobj, mode=0):
        return None

    def doubleClicked(self, vobj):
        return False
