"""The task panel of a stage object, made from the properties that the stage declares."""

import FreeCAD
import FreeCADGui

from freecad.laywright.panels import fields
from freecad.laywright.qt import QtWidgets, standard_buttons, translate

__all__ = ["StagePanel"]


class StagePanel:
    """Fields for the inputs, the results as text, OK and Cancel as one step of undo each."""

    def __init__(self, obj):
        self.obj = obj
        self.form = QtWidgets.QWidget()
        self.form.setWindowTitle(obj.Label.replace("&", "&&"))
        layout = QtWidgets.QVBoxLayout(self.form)
        self.grid = QtWidgets.QFormLayout()
        self.grid.setRowWrapPolicy(QtWidgets.QFormLayout.WrapAllRows)
        self.fields = {}
        self.add_fields()
        layout.addLayout(self.grid)
        self.problem = _wrapped("Problem")
        self.report = _wrapped("Report")
        layout.addWidget(self.problem)
        layout.addWidget(self.report)
        layout.addStretch()
        obj.Document.openTransaction(translate("Laywright", "Edit {0}").format(obj.Label))
        self.show_report()

    def add_fields(self):
        """Add a field for every input of the stage."""
        for prop in self.obj.Proxy.properties:
            field = fields.field_for(self.obj, prop)
            if field is not None:
                self.add_field(prop, field)

    def add_field(self, prop, field):
        """Add one field under its name; its tooltip says what it means."""
        field.widget.setObjectName(prop.name)
        field.widget.setToolTip(prop.doc)
        self.grid.addRow(fields.spoken(prop.name), field.widget)
        self.fields[prop.name] = field

    def getStandardButtons(self):
        return standard_buttons("Ok", "Apply", "Cancel")

    def clicked(self, button):
        """Apply: recompute and stay."""
        if button == standard_buttons("Apply"):
            self.apply()

    def apply(self):
        """Write the fields to the object and recompute; return whether all went well."""
        for name, field in self.fields.items():
            value = field.value()
            if value != field.shown:
                try:
                    setattr(self.obj, name, value)
                except (ValueError, TypeError, ArithmeticError) as problem:
                    self.problem.setText(f"{fields.spoken(name)}: {problem}")
                    field.widget.setFocus()
                    return False
                field.shown = value
        self.obj.Document.recompute()
        self.show_report()
        return self.obj.isValid()

    def show_report(self):
        """Show the results, or the one sentence that says what is wrong."""
        valid = self.obj.isValid()
        self.problem.setText("" if valid else self.obj.Status or self.obj.getStatusString())
        self.problem.setVisible(not valid)
        lines = [
            f"<b>{fields.spoken(prop.name)}:</b> {fields.shown_value(self.obj, prop)}"
            for prop in self.obj.Proxy.reports
        ]
        self.report.setText("<br>".join(lines))

    def accept(self):
        if not self.apply():
            return False
        self.obj.Document.commitTransaction()
        FreeCADGui.ActiveDocument.resetEdit()
        return True

    def reject(self):
        self.obj.Document.abortTransaction()
        FreeCADGui.ActiveDocument.resetEdit()
        FreeCAD.ActiveDocument.recompute()
        return True


def _wrapped(name):
    """Return a label that breaks its lines instead of widening the panel."""
    label = QtWidgets.QLabel()
    label.setObjectName(name)
    label.setWordWrap(True)
    label.setSizePolicy(QtWidgets.QSizePolicy.Ignored, QtWidgets.QSizePolicy.Preferred)
    return label
