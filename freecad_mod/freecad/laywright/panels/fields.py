"""One field for each type of property: with its unit, read as `typed` reads what people type."""

import html
import math
import re

from freecad.laywright import bridge
from freecad.laywright.objects.job import kind_of_link, stage_objects
from freecad.laywright.panels import typed
from freecad.laywright.qt import QtWidgets, translate
from freecad.laywright.translated import translated

__all__ = ["Field", "field_for", "named", "shown_value", "spoken", "words_of", "wrapped_label"]

_LINES = 4.5  # of a list that are seen at once; with just 4 the last one scrolls
_FEWEST, _MOST = 8, 26  # characters of a choice that are seen at least
_UNIT = re.compile(r"\(([^()]*)\)\s*$")


class Field:
    """A widget and the way its value is read; what cannot be read raises an `InputError`."""

    def __init__(self, widget, read):
        self.widget = widget
        self.value = read
        self.shown = read()


def wrapped_label(name):
    """Return a label that breaks its lines instead of widening the panel."""
    label = QtWidgets.QLabel()
    label.setObjectName(name)
    label.setWordWrap(True)
    label.setSizePolicy(QtWidgets.QSizePolicy.Ignored, QtWidgets.QSizePolicy.Preferred)
    return label


def field_for(obj, prop):
    """Return the field of a property, None where it is not for editing."""
    if obj.getEditorMode(prop.name) or prop.kind not in _MAKERS:
        return None
    if prop.choices is not None:
        return named(list(prop.choices()), getattr(obj, prop.name))
    return _MAKERS[prop.kind](obj, prop, getattr(obj, prop.name))


def words_of(name):
    """Return a property's name as words: "RunOff" becomes "Run off"."""
    words = re.sub(r"(?<=[a-z])(?=[A-Z])", " ", name).split(" ")
    return " ".join([words[0], *(word.lower() for word in words[1:])])


def spoken(name):
    """Return a property's name as words in the language of the window."""
    return translate("App::Property", words_of(name))


def shown_value(obj, prop):
    """Return a result as text with its unit, safe inside rich text."""
    value = getattr(obj, prop.name)
    if prop.kind == "StringList":
        lines = "".join(f"<br>{html.escape(translated(line))}" for line in value)
        return lines or translate("Laywright", "none")
    if prop.kind == "Vector":
        return f"({value.x:.4f}, {value.y:.4f}, {value.z:.4f})"
    if hasattr(value, "UserString"):
        return html.escape(value.UserString)
    number = f"{value:.4g}" if isinstance(value, float) else translated(str(value))
    unit = _unit(prop)
    return html.escape(f"{number} {unit}" if unit else number)


def named(names, value):
    """Return a field that offers names; a value that is none of them stays to be seen."""
    widget = QtWidgets.QComboBox()
    names = names if value in names else [value, *names]
    shown = [translate("App::Property", name) for name in names]
    widget.addItems(shown)
    widget.setCurrentIndex(names.index(value))
    widget.setSizeAdjustPolicy(QtWidgets.QComboBox.AdjustToMinimumContentsLengthWithIcon)
    longest = max(len(text) for text in shown)
    widget.setMinimumContentsLength(min(max(longest, _FEWEST), _MOST))
    return Field(widget, lambda: names[widget.currentIndex()])


def _choice(obj, prop, value):
    return named(obj.getEnumerationsOfProperty(prop.name), value)


def _quantity(obj, prop, value):
    line = QtWidgets.QLineEdit(value.UserString)
    unread = line.text()

    def read():
        if line.text() == unread:
            return value
        return typed.quantity(line.text(), spoken(prop.name), value)

    return Field(line, read)


def _real(obj, prop, value):
    unit = _unit(prop)
    line = QtWidgets.QLineEdit(f"{value:.6g} {unit}".strip())
    return Field(line, lambda: typed.number(line.text(), spoken(prop.name), unit))


def _whole(obj, prop, value):
    widget = QtWidgets.QSpinBox()
    widget.setRange(-(10**6), 10**6)
    widget.setValue(value)
    unit = _unit(prop)
    widget.setSuffix(f" {unit}" if unit else "")
    return Field(widget, widget.value)


def _unit(prop):
    unit = _UNIT.search(prop.doc)
    return unit.group(1) if unit else ""


def _vector(obj, prop, value):
    widget = QtWidgets.QWidget()
    row = QtWidgets.QHBoxLayout(widget)
    row.setContentsMargins(0, 0, 0, 0)
    parts = []
    for number in (value.x, value.y, value.z):
        part = QtWidgets.QLineEdit(f"{number:.6g}")
        part.setMinimumWidth(40)
        row.addWidget(part)
        parts.append(part)
    name = spoken(prop.name)
    return Field(widget, lambda: bridge.vector([typed.number(part.text(), name) for part in parts]))


def _words(obj, prop, value):
    widget = _list_of(value)
    return Field(widget, lambda: _lines_of(widget))


def _numbers(obj, prop, value):
    widget = _list_of(f"{item:g}" for item in value)
    name = spoken(prop.name)
    return Field(widget, lambda: [typed.number(line, name) for line in _lines_of(widget)])


def _list_of(lines):
    """Return a widget with one line for each item, of a height that its font asks for."""
    widget = QtWidgets.QPlainTextEdit("\n".join(lines))
    widget.ensurePolished()
    around = widget.frameWidth() + widget.document().documentMargin()
    widget.setFixedHeight(math.ceil(_LINES * widget.fontMetrics().lineSpacing() + 2 * around))
    return widget


def _lines_of(widget):
    return [line.strip() for line in widget.toPlainText().splitlines() if line.strip()]


def _yes_or_no(obj, prop, value):
    widget = QtWidgets.QCheckBox()
    widget.setChecked(value)
    return Field(widget, widget.isChecked)


def _text(obj, prop, value):
    widget = QtWidgets.QLineEdit(value)
    return Field(widget, widget.text)


def _link(obj, prop, value):
    """Offer the stage objects of the document that such a link may point to."""
    kind = kind_of_link(prop.name)
    objects = [None, *(stage_objects(obj.Document, kind) if kind else ())]
    objects = objects if value in objects else [value, *objects]
    widget = QtWidgets.QComboBox()
    widget.addItems([translate("Laywright", "none") if o is None else o.Label for o in objects])
    widget.setCurrentIndex(objects.index(value))
    return Field(widget, lambda: objects[widget.currentIndex()])


def _picked(obj, prop, value):
    """Show picked faces or an edge; a button takes what is selected in the 3D view."""
    widget = QtWidgets.QWidget()
    column = QtWidgets.QVBoxLayout(widget)
    column.setContentsMargins(0, 0, 0, 0)
    words = QtWidgets.QLabel()
    words.setWordWrap(True)
    button = QtWidgets.QPushButton(translate("Laywright", "Take what is selected"))
    column.addWidget(words)
    column.addWidget(button)
    field = Field(widget, lambda: value)

    def show(found):
        field.value = lambda: found
        none = translate("Laywright", "none")
        words.setText(f"{found[0].Label}: {', '.join(found[1])}" if found else none)

    def take():
        found = _selected()
        if found is not None:
            show(found)

    button.clicked.connect(take)
    show(value)
    return field


def _selected():
    import FreeCADGui

    for picked in FreeCADGui.Selection.getSelectionEx():
        names = [name for name in picked.SubElementNames if name.startswith(("Face", "Edge"))]
        if names:
            return picked.Object, names
    return None


def _places(obj, prop, value):
    """Show places; buttons add the one that was clicked on in the 3D view, and forget all."""
    widget = QtWidgets.QWidget()
    column = QtWidgets.QVBoxLayout(widget)
    column.setContentsMargins(0, 0, 0, 0)
    words = QtWidgets.QLabel()
    words.setWordWrap(True)
    column.addWidget(words)
    field = Field(widget, lambda: value)

    def show(places):
        field.value = lambda: places
        lines = [f"({place.x:.1f}, {place.y:.1f}, {place.z:.1f})" for place in places]
        words.setText("; ".join(lines) or translate("Laywright", "none"))

    def add():
        place = _clicked()
        if place is not None:
            show([*field.value(), place])

    for text, act in (
        (translate("Laywright", "Add the place clicked on"), add),
        (translate("Laywright", "Forget all places"), lambda: show([])),
    ):
        button = QtWidgets.QPushButton(text)
        button.clicked.connect(act)
        column.addWidget(button)
    show(value)
    return field


def _clicked():
    import FreeCADGui

    from freecad.laywright.clicked import place_on

    places = [place_on(obj) for obj in FreeCADGui.Selection.getSelection()]
    return next((place for place in places if place is not None), None)


_MAKERS = {
    **dict.fromkeys(("Length", "Distance", "Angle", "Area"), _quantity),
    "Bool": _yes_or_no,
    "Enumeration": _choice,
    "Float": _real,
    "Percent": _whole,
    "Integer": _whole,
    "Vector": _vector,
    "StringList": _words,
    "FloatList": _numbers,
    "String": _text,
    "Link": _link,
    "LinkSubGlobal": _picked,
    "VectorList": _places,
}
