"""A part of a panel that can be folded away."""

from freecad.laywright.qt import QtCore, QtWidgets

__all__ = ["Fold"]


class Fold(QtWidgets.QWidget):
    """A title that opens and closes a form below it.

    Parameters
    ----------
    title : str

    Attributes
    ----------
    form : QFormLayout
        For the fields.
    """

    def __init__(self, title):
        super().__init__()
        self._head = QtWidgets.QToolButton()
        self._head.setText(title)
        self._head.setToolButtonStyle(QtCore.Qt.ToolButtonTextBesideIcon)
        self._head.setAutoRaise(True)
        self._head.setCheckable(True)
        self._head.toggled.connect(self.open)
        self._body = QtWidgets.QWidget()
        self.form = QtWidgets.QFormLayout(self._body)
        self.form.setContentsMargins(12, 0, 0, 0)
        self.form.setRowWrapPolicy(QtWidgets.QFormLayout.WrapLongRows)
        self.form.setFieldGrowthPolicy(QtWidgets.QFormLayout.AllNonFixedFieldsGrow)
        column = QtWidgets.QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._head)
        column.addWidget(self._body)
        self.open(False)

    def open(self, wanted):
        """Open or close it."""
        self._head.setChecked(wanted)
        self._head.setArrowType(QtCore.Qt.DownArrow if wanted else QtCore.Qt.RightArrow)
        self._body.setVisible(wanted)

    def holds(self, widget):
        """Return whether a widget stands in it."""
        return self._body.isAncestorOf(widget)
