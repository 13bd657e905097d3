"""Which view each kind of stage object has."""

from freecad.laywright.views.base import StageView
from freecad.laywright.views.facets import ReleaseView, TilesView

__all__ = ["view_for"]

_VIEWS = {"ReleaseCheck": ReleaseView, "PrintTiles": TilesView}


def view_for(kind):
    """Return the view class of a kind of stage object."""
    return _VIEWS.get(kind, StageView)
