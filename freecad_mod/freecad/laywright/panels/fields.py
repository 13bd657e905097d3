"""One field for each type of property: with its unit, and typed as FreeCAD lets one type."""

import html
import re

import FreeCAD
import FreeCADGui

from freecad.laywright import bridge
from freecad.laywright.qt import QtWidgets

__all__ = ["Field", "field_for", "named", "shown_value", "spoken"]

_LIST_HEIGHT = 110
_UNIT = re.compile(r"\(([^()]*)\)\s*$")


class Field:
    """A widget and the way its value is read."""

    def __init__(self, widget, read):
        self.widget = widget
        self.value = read
        self.shown = read()


def field_for(obj, prop):
    """Return the field of a property, None where it is not for editing."""
    if obj.getEditorMode(prop.name) or prop.kind not in _MAKERS:
        return None
    if prop.choices is not None:
        return named(list(prop.choices()), getattr(obj, prop.name))
    return _MAKERS[prop.kind](obj, prop, getattr(obj, prop.name))


def spoken(name):
    """Return a property's name as words: "RunOff" becomes "Run off"."""
    words = re.sub(r"(?<=[a-z])(?=[A-Z])", " ", name).split(" ")
    return " ".join([words[0], *(word.lower() for word in words[1:])])


def shown_value(obj, prop):
    """Return a result as text with its unit, safe inside rich text."""
    value = getattr(obj, prop.name)
    if prop.kind == "StringList":
        return "".join(f"<br>{html.escape(line)}" for line in value) or "none"
    if prop.kind == "Vector":
        return f"({value.x:.4f}, {value.y:.4f}, {value.z:.4f})"
    if hasattr(value, "UserString"):
        return html.escape(value.UserString)
    number = f"{value:.4g}" if isinstance(value, float) else str(value)
    return html.escape(number + _suffix(prop))


def _quantity(obj, prop, value):
    widget = FreeCADGui.UiLoader().createWidget("Gui::QuantitySpinBox")
    widget.setProperty("unit", value.getUserPreferred()[2])
    widget.setProperty("value", value)
    return Field(widget, lambda: FreeCAD.Units.Quantity(widget.property("value")))


def named(names, value):
    """Return a field that offers names; a value that is none of them stays to be seen."""
    widget = QtWidgets.QComboBox()
    names = names if value in names else [value, *names]
    widget.addItems(names)
    widget.setCurrentIndex(names.index(value))
    widget.setSizeAdjustPolicy(QtWidgets.QComboBox.AdjustToMinimumContentsLengthWithIcon)
    widget.setMinimumContentsLength(8)
    return Field(widget, widget.currentText)


def _choice(obj, prop, value):
    return named(obj.getEnumerationsOfProperty(prop.name), value)


def _real(obj, prop, value):
    widget = QtWidgets.QDoubleSpinBox()
    widget.setRange(-1e6, 1e6)
    widget.setDecimals(3)
    widget.setValue(value)
    widget.setSuffix(_suffix(prop))
    return Field(widget, widget.value)


def _whole(obj, prop, value):
    widget = QtWidgets.QSpinBox()
    widget.setRange(0, 100 if prop.kind == "Percent" else 10**6)
    widget.setValue(value)
    widget.setSuffix(_suffix(prop))
    return Field(widget, widget.value)


def _suffix(prop):
    unit = _UNIT.search(prop.doc)
    return f" {unit.group(1)}" if unit else ""


def _vector(obj, prop, value):
    widget = QtWidgets.QWidget()
    row = QtWidgets.QHBoxLayout(widget)
    row.setContentsMargins(0, 0, 0, 0)
    parts = []
    for number in (value.x, value.y, value.z):
        part = QtWidgets.QDoubleSpinBox()
        part.setRange(-1e6, 1e6)
        part.setDecimals(4)
        part.setValue(number)
        part.setButtonSymbols(QtWidgets.QAbstractSpinBox.NoButtons)
        part.setMinimumWidth(40)
        row.addWidget(part)
        parts.append(part)
    return Field(widget, lambda: bridge.vector([part.value() for part in parts]))


def _words(obj, prop, value):
    widget = QtWidgets.QPlainTextEdit("\n".join(value))
    widget.setMaximumHeight(_LIST_HEIGHT)
    return Field(widget, lambda: _lines_of(widget))


def _numbers(obj, prop, value):
    widget = QtWidgets.QPlainTextEdit("\n".join(f"{item:g}" for item in value))
    widget.setMaximumHeight(_LIST_HEIGHT)
    return Field(widget, lambda: [float(line.replace(",", ".")) for line in _lines_of(widget)])


def _lines_of(widget):
    return [line.strip() for line in widget.toPlainText().splitlines() if line.strip()]


def _text(obj, prop, value):
    widget = QtWidgets.QLineEdit(value)
    return Field(widget, widget.text)


def _link(obj, prop, value):
    widget = QtWidgets.QLabel(value.Label if value else "none")
    return Field(widget, lambda: value)


def _faces(obj, prop, value):
    text = f"{value[0].Label}: {', '.join(value[1])}" if value else "none"
    widget = QtWidgets.QLabel(text)
    widget.setWordWrap(True)
    return Field(widget, lambda: value)


_MAKERS = {
    **dict.fromkeys(("Length", "Distance", "Angle", "Area"), _quantity),
    "Enumeration": _choice,
    "Float": _real,
    "Percent": _whole,
    "Integer": _whole,
    "Vector": _vector,
    "StringList": _words,
    "FloatList": _numbers,
    "String": _text,
    "Link": _link,
    "LinkSubGlobal": _faces,
}
