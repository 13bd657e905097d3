"""An arrow that is turned by hand to set an angle."""

import math

from freecad.laywright.qt import QtCore, QtGui, QtWidgets

__all__ = ["TurningArrow"]

_SIDE = 34
_COARSE, _FINE = 15.0, 1.0


class TurningArrow(QtWidgets.QWidget):
    """The warp of a ply as an arrow; the thin line to the right is the datum arrow.

    Pulled with the mouse it goes in steps of 15 degrees, with Ctrl in steps of 1; the wheel
    and the arrow keys turn it as well.
    """

    turned = QtCore.Signal(float)

    def __init__(self, angle):
        super().__init__()
        self._angle = angle
        self.setFixedSize(_SIDE, _SIDE)
        self.setFocusPolicy(QtCore.Qt.StrongFocus)
        self.setCursor(QtCore.Qt.PointingHandCursor)

    def angle(self):
        """Return the angle in degrees, more than -180 and at most 180."""
        return self._angle

    def point(self, angle):
        """Show an angle in degrees; says nothing to others."""
        self._angle = angle
        self.update()

    def _turn(self, angle):
        angle = 180.0 - (180.0 - angle) % 360.0
        if angle != self._angle:
            self.point(angle)
            self.turned.emit(angle)

    def mousePressEvent(self, event):
        self.setFocus()
        self.mouseMoveEvent(event)

    def mouseMoveEvent(self, event):
        x, y = event.pos().x() - _SIDE / 2, _SIDE / 2 - event.pos().y()
        if math.hypot(x, y) > 3.0:
            step = _FINE if event.modifiers() & QtCore.Qt.ControlModifier else _COARSE
            self._turn(step * round(math.degrees(math.atan2(y, x)) / step))

    def wheelEvent(self, event):
        step = _COARSE if event.angleDelta().y() > 0 else -_COARSE
        self._turn(self._angle + step)
        event.accept()

    def keyPressEvent(self, event):
        steps = {
            QtCore.Qt.Key_Left: _COARSE,
            QtCore.Qt.Key_Up: _FINE,
            QtCore.Qt.Key_Right: -_COARSE,
            QtCore.Qt.Key_Down: -_FINE,
        }
        if event.key() in steps:
            self._turn(self._angle + steps[event.key()])
        else:
            super().keyPressEvent(event)

    def paintEvent(self, event):
        painter = QtGui.QPainter(self)
        painter.setRenderHint(QtGui.QPainter.Antialiasing)
        colour = self.palette().color(QtGui.QPalette.Text)
        painter.translate(_SIDE / 2, _SIDE / 2)
        reach = _SIDE / 2 - 3
        painter.setPen(QtGui.QPen(self.palette().color(QtGui.QPalette.Mid), 1))
        painter.drawEllipse(QtCore.QPointF(0, 0), reach, reach)
        painter.drawLine(QtCore.QPointF(0, 0), QtCore.QPointF(reach, 0))
        painter.rotate(-self._angle)
        painter.setPen(QtGui.QPen(colour, 2))
        for start, end in (
            ((-reach, 0), (reach, 0)),
            ((reach, 0), (reach - 6, -4)),
            ((reach, 0), (reach - 6, 4)),
        ):
            painter.drawLine(QtCore.QPointF(*start), QtCore.QPointF(*end))
        painter.end()
