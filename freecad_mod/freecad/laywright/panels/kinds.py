"""Which task panel each kind of stage object has."""

from freecad.laywright.panels.layup_panel import LayupPanel
from freecad.laywright.panels.stage_panel import StagePanel

__all__ = ["panel_for"]

_PANELS = {"LayupObject": LayupPanel}


def panel_for(obj):
    """Return a new task panel for a stage object."""
    return _PANELS.get(type(obj.Proxy).__name__, StagePanel)(obj)
