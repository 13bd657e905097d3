"""Where a person clicked on whole objects: FreeCAD's selection keeps places on faces only."""

import FreeCAD
import FreeCADGui

__all__ = ["place_on", "watch_clicks"]


class _Clicks:
    """Hears of every selection and keeps the last place on each object that has no faces."""

    def __init__(self):
        self.places = {}

    def addSelection(self, document, name, part, place):
        """Keep a place; FreeCAD calls this for every click that selects."""
        if not part:
            self.places[document, name] = FreeCAD.Vector(*place)

    def removeSelection(self, document, name, part):
        """Forget a place; FreeCAD calls this when an object is taken out of the selection."""
        self.places.pop((document, name), None)

    def setSelection(self, document):
        """Forget all places; FreeCAD calls this when the tree selects."""
        self.places.clear()

    def clearSelection(self, document):
        """Forget all places; FreeCAD calls this when nothing is selected any more."""
        self.places.clear()


_clicks = _Clicks()


def watch_clicks():
    """Begin to keep the places of clicks."""
    FreeCADGui.Selection.addObserver(_clicks)


def place_on(obj):
    """Return where the selected object was clicked on (mm), None if it was not."""
    return _clicks.places.get((obj.Document.Name, obj.Name))
