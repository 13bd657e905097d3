"""Which task panel each kind of stage object has."""

from freecad.laywright.panels.coupon_panel import CouponPanel
from freecad.laywright.panels.layup_panel import LayupPanel
from freecad.laywright.panels.stage_panel import StagePanel
from freecad.laywright.panels.weigh_in_panel import WeighInPanel

__all__ = ["panel_for"]

_PANELS = {
    "CouponTestObject": CouponPanel,
    "LayupObject": LayupPanel,
    "WeighInObject": WeighInPanel,
}


def panel_for(obj):
    """Return a new task panel for a stage object."""
    return _PANELS.get(type(obj.Proxy).__name__, StagePanel)(obj)
