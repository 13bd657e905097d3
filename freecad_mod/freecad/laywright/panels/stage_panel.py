"""The task panel of a stage object, made from the properties that the stage declares."""

import re
import time

import FreeCADGui

from freecad.laywright import preferences
from freecad.laywright.ahead import bring_up_to_date, stages_in_order
from freecad.laywright.panels import fields
from freecad.laywright.panels.preview import Preview
from freecad.laywright.qt import QtCore, QtWidgets, standard_buttons, translate
from freecad.laywright.translated import translated
from laywright.errors import Cancelled, LaywrightError

__all__ = ["StagePanel"]

_LOOK = 200  # ms
_SETTLED = 0.5  # s without a change before a preview begins
_ROOM = 380  # pixels that a panel takes, so that nothing is cut off
_SAID = "color: #c8402a; font-weight: bold"  # read on light and dark grounds alike


class StagePanel:
    """Fields for the inputs with their errors beside them, the results as text, a preview.

    OK, Apply and Cancel are one step of undo each.
    """

    def __init__(self, obj):
        self.obj = obj
        self.form = QtWidgets.QWidget()
        self.form.setWindowTitle(obj.Label.replace("&", "&&"))
        layout = QtWidgets.QVBoxLayout(self.form)
        self.problem = fields.wrapped_label("Problem")
        self.problem.setStyleSheet(_SAID)
        layout.addWidget(self.problem)
        self.grid = QtWidgets.QFormLayout()
        self.grid.setRowWrapPolicy(QtWidgets.QFormLayout.WrapLongRows)
        self.grid.setFieldGrowthPolicy(QtWidgets.QFormLayout.AllNonFixedFieldsGrow)
        self.fields, self.problems = {}, {}
        self.add_fields()
        layout.addLayout(self.grid)
        self._add_preview(layout)
        self.report = fields.wrapped_label("Report")
        layout.addWidget(self.report)
        layout.addStretch()
        self._touched = {one.Name for one in stages_in_order(obj.Document) if _is_touched(one)}
        self._begin()
        self.show_report()
        self._timer.start(_LOOK)

    def _add_preview(self, layout):
        self._preview = Preview(self.obj)
        self._live = QtWidgets.QCheckBox(translate("Laywright", "Show changes at once"))
        self._live.setChecked(preferences.live())
        self._live.toggled.connect(preferences.set_live)
        self._bar = QtWidgets.QProgressBar()
        self._bar.setMaximumHeight(6)
        self._bar.setTextVisible(False)
        self._state = fields.wrapped_label("State")
        for widget in (self._live, self._bar, self._state):
            layout.addWidget(widget)
        self._bar.hide()
        self._timer = QtCore.QTimer()
        self._timer.timeout.connect(self._look)

    def add_fields(self):
        """Add a field for every input of the stage."""
        for prop in self.obj.Proxy.properties:
            field = fields.field_for(self.obj, prop)
            if field is not None:
                self.add_field(prop, field)

    def add_field(self, prop, field):
        """Add one field under its name; its tooltip says what it means, a line below what is wrong.

        A property that an expression drives is shown, and changed where the expression stands.
        """
        field.widget.setObjectName(prop.name)
        field.widget.setToolTip(translate("App::Property", prop.doc))
        expression = dict(self.obj.ExpressionEngine).get(prop.name)
        if expression:
            field.widget.setEnabled(False)
            field.widget.setToolTip(translate("Laywright", "Follows: {0}").format(expression))
        problem = fields.wrapped_label(f"Problem {prop.name}")
        problem.setStyleSheet(_SAID)
        problem.hide()
        both = QtWidgets.QWidget()
        column = QtWidgets.QVBoxLayout(both)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(1)
        column.addWidget(field.widget)
        column.addWidget(problem)
        label = QtWidgets.QLabel(fields.spoken(prop.name))
        label.setToolTip(field.widget.toolTip())
        self.grid.addRow(label, both)
        self.fields[prop.name] = field
        self.problems[prop.name] = problem

    # what FreeCAD asks

    def getStandardButtons(self):
        QtCore.QTimer.singleShot(0, lambda: _make_room(self.form))
        return standard_buttons("Ok", "Apply", "Cancel")

    def clicked(self, button):
        """Apply: recompute, one step of undo, and stay."""
        if button == standard_buttons("Apply") and self.apply():
            self.obj.Document.commitTransaction()
            self._begin()

    def accept(self):
        if not self.apply():
            return False
        self._timer.stop()
        self.obj.Document.commitTransaction()
        FreeCADGui.ActiveDocument.resetEdit()
        return True

    def reject(self):
        self._timer.stop()
        self._take_back()
        FreeCADGui.ActiveDocument.resetEdit()
        return True

    # how it works

    def apply(self):
        """Write the fields to the object and recompute; return whether all went well."""
        self._preview.stop()
        if not self._write():
            return False
        try:
            bring_up_to_date(self.obj.Document, self.obj.Label)
        except Cancelled:
            self._take_back()
            self._begin()
            self._state.setText(translate("Laywright", "Stopped, nothing was changed."))
            return False
        self.show_report()
        return self.obj.isValid()

    def _begin(self):
        """Begin a step of undo."""
        self.obj.Document.openTransaction(translate("Laywright", "Edit {0}").format(self.obj.Label))
        self._seen, self._changed = self._typed(), 0.0

    def _take_back(self):
        """Leave the document as it was when the step of undo began; the fields stay as typed."""
        document = self.obj.Document
        self._preview.stop()
        self.obj.Proxy.previewed = self.obj.Proxy.at_hand = None
        failed = not self.obj.isValid()
        document.abortTransaction()
        if failed:
            document.recompute()
        for one in stages_in_order(document):
            if one.Name not in self._touched and one.isValid():
                one.purgeTouched()
        for name, field in self.fields.items():
            field.shown = getattr(self.obj, name)

    def _write(self):
        """Write what was changed to the object; return whether all of it could be."""
        self._say(None)
        for name, field in self.fields.items():
            try:
                value = field.value()
                if value != field.shown:
                    setattr(self.obj, name, value)
                    self._refuse_clamped(name, value)
                    field.shown = value
            except LaywrightError as problem:
                self._say(problem, name)
                return False
            except (ValueError, TypeError, ArithmeticError) as problem:
                self._say(f"{fields.spoken(name)}: {problem}", name)
                return False
        return True

    def _refuse_clamped(self, name, value):
        """Raise where FreeCAD silently took another value, as it does with negative lengths."""
        taken = getattr(self.obj, name)
        if hasattr(value, "UserString") and abs(taken.Value - value.Value) > 1e-9:
            words = translate("Laywright", "{0} is not possible here").format(value.UserString)
            raise ValueError(words)

    def _typed(self):
        """Return all fields as they are typed; what cannot be read stands there as its message."""
        found = {}
        for name, field in self.fields.items():
            try:
                found[name] = field.value()
            except LaywrightError as problem:
                found[name] = translated(problem)
        return found

    def _look(self):
        """Begin a preview when typing has paused, and show what is ready."""
        try:
            typed = self._typed()
            if typed != self._seen:
                self._seen, self._changed = typed, time.monotonic()
            elif self._changed and time.monotonic() - self._changed > _SETTLED:
                self._changed = 0.0
                if self._live.isChecked() and self._write():
                    self._preview.start()
                    self.show_report()
            shown = self._preview.look()
            if shown:
                self.show_report()
            if shown == "coarse":
                self._state.setText(translate("Laywright", "Coarse preview, the full one follows"))
            elif shown == "full":
                self._state.setText(translate("Laywright", "Preview; OK or Apply keeps it"))
        except LaywrightError as problem:
            self._say(problem)
        except (ReferenceError, RuntimeError):
            self._timer.stop()  # document or window are gone
            return
        self._bar.setVisible(self._preview.share is not None)
        self._bar.setRange(0, 100 if self._preview.share else 0)
        self._bar.setValue(int(100 * (self._preview.share or 0.0)))

    def _say(self, problem, name=""):
        """Say what is wrong beside the field that it is about, or above all where there is none."""
        where = name or self._field_of(getattr(problem, "where", ""))
        beside = self.problems.get(where)
        for label in (self.problem, *self.problems.values()):
            label.setVisible(problem is not None and label is (beside or self.problem))
        if problem is not None:
            (beside or self.problem).setText(translated(problem))
            self._state.setText("")
        if name:
            self.fields[name].widget.setFocus()

    def _field_of(self, where):
        """Return the name of the field whose words an error's place contains, "" if none."""
        found = set(re.findall(r"[a-z]+", where.lower()))
        names = {name: _words(name) for name in self.problems}
        fitting = [name for name, words in names.items() if words <= found]
        return max(fitting, key=lambda name: len(names[name]), default="")

    def show_report(self):
        """Show the results, or the one sentence that says what is wrong."""
        if self.obj.isValid():
            self._say(None)
        else:
            self._say(self.obj.Proxy.problem or self.obj.Status or self.obj.getStatusString())
        self._state.setText("")
        lines = [
            f"<b>{fields.spoken(prop.name)}:</b> {fields.shown_value(self.obj, prop)}"
            for prop in self.obj.Proxy.reports
        ]
        self.report.setText("<br>".join(lines))


def _words(name):
    return set(re.sub(r"(?<=[a-z])(?=[A-Z])", " ", name).lower().split())


def _is_touched(obj):
    return "Touched" in obj.State


def _make_room(form):
    """Widen the dock that holds a form, so that fields and buttons are seen whole."""
    dock = form
    while dock is not None and not isinstance(dock, QtWidgets.QDockWidget):
        dock = dock.parentWidget()
    if dock is not None and not dock.isFloating() and dock.width() < _ROOM:
        FreeCADGui.getMainWindow().resizeDocks([dock], [_ROOM], QtCore.Qt.Horizontal)
