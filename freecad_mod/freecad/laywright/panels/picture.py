"""A drawing of the core inside a panel, as sharp as the panel is wide."""

from freecad.laywright.qt import QtCore, QtGui, QtWidgets
from laywright.files.svg import svg_bytes

__all__ = ["DrawingView"]


class DrawingView(QtWidgets.QWidget):
    """Shows one drawing on white, as large as the width allows.

    Parameters
    ----------
    name : str
        Name of the widget.
    """

    def __init__(self, name):
        super().__init__()
        self.setObjectName(name)
        self._svg = b""
        self._size = QtCore.QSize(3, 2)
        self._image = None
        policy = QtWidgets.QSizePolicy(
            QtWidgets.QSizePolicy.Ignored, QtWidgets.QSizePolicy.Preferred
        )
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def draw(self, drawing):
        """Show a drawing; None shows nothing."""
        self._svg = b"" if drawing is None else svg_bytes(drawing)
        if self._svg:
            self._size = self._reader().size()
        self._image = None
        self.updateGeometry()
        self.update()

    def hasHeightForWidth(self):
        return True

    def heightForWidth(self, width):
        return round(width * self._size.height() / max(1, self._size.width()))

    def sizeHint(self):
        return QtCore.QSize(280, self.heightForWidth(280))

    def paintEvent(self, event):
        painter = QtGui.QPainter(self)
        painter.fillRect(self.rect(), QtCore.Qt.white)
        if self._svg:
            image = self._rendered()
            scale = image.devicePixelRatio()
            left = round((self.width() - image.width() / scale) / 2)
            painter.drawImage(left, 0, image)
        painter.end()

    def _rendered(self):
        scale = self.devicePixelRatioF()
        wanted = self._size.scaled(self.size() * scale, QtCore.Qt.KeepAspectRatio)
        if self._image is None or self._image.size() != wanted:
            reader = self._reader()
            reader.setScaledSize(wanted)
            self._image = reader.read()
            self._image.setDevicePixelRatio(scale)
        return self._image

    def _reader(self):
        self._buffer = QtCore.QBuffer(self)
        self._buffer.setData(self._svg)
        self._buffer.open(QtCore.QIODevice.ReadOnly)
        return QtGui.QImageReader(self._buffer, b"svg")
