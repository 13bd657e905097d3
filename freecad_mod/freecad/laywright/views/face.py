"""Moulded Face: the picked faces, and an arrow along which the part leaves the mould."""

from freecad.laywright.qt import translate
from freecad.laywright.views.arrow import Arrow
from freecad.laywright.views.base import StageView, Toggle
from freecad.laywright.views.legend import Legend, place_legends

__all__ = ["FaceView"]

_PULL = (0.30, 0.26, 0.45)
_LONG = 0.35  # of the diagonal


class FaceView(StageView):
    """Draws the pull as an arrow above the faces, with its numbers in the legend."""

    toggles = (Toggle("PullArrow", "Pull arrow"),)

    def attach(self, vobj):
        super().attach(vobj)
        self.arrow = Arrow(vobj, _PULL)
        self.legend = Legend(vobj)
        self.refresh_soon()

    def updateData(self, obj, name):
        if name in ("Shape", "PullUsed"):
            self.refresh_soon()

    def refresh(self):
        """Draw the arrow from the middle of the faces."""
        try:
            vobj = self.ViewObject
            obj = vobj.Object
            pull = getattr(obj, "PullUsed", None)
            room = obj.Shape.BoundBox
            wanted = vobj.Visibility and vobj.PullArrow and pull and room.isValid()
            if wanted and pull.Length > 0.0:
                self.arrow.draw(room.Center, room.Center + pull * _LONG * room.DiagonalLength)
                words = translate("Laywright", "pull ({0}, {1}, {2}), {3} cm² moulded")
                numbers = [f"{number:.3f}" for number in pull]
                area = f"{obj.Area.Value / 100.0:.0f}"
                self.legend.write([(None, obj.Label), (_PULL, words.format(*numbers, area))])
            self.arrow.show(bool(wanted))
            self.legend.show(bool(wanted))
            place_legends(obj.Document)
        except ReferenceError:
            return  # deleted meanwhile
