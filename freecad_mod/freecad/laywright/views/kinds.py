"""Which view each kind of object has."""

from freecad.laywright.views.base import GroupView, StageView
from freecad.laywright.views.cloth import ClothView
from freecad.laywright.views.face import FaceView
from freecad.laywright.views.facets import MouldView, ReleaseView, ScanView, TilesView

__all__ = ["view_for"]

_VIEWS = {
    "JobObject": GroupView,
    "ScannedPartObject": ScanView,
    "MouldedFaceObject": FaceView,
    "ReleaseCheckObject": ReleaseView,
    "MouldBodyObject": MouldView,
    "PrintTilesObject": TilesView,
    "ClothPatternsObject": ClothView,
}


def view_for(kind):
    """Return the view class for a class of document objects, by its name."""
    return _VIEWS.get(kind, StageView)
