"""The task panel of a Weigh-in: readings, what follows from them, and a dated file."""

from freecad.laywright.lessons import records_folder
from freecad.laywright.objects.weigh_in import keep_record
from freecad.laywright.panels.stage_panel import StagePanel
from freecad.laywright.qt import QtWidgets, translate
from freecad.laywright.translated import translated
from laywright.errors import LaywrightError

__all__ = ["WeighInPanel"]


class WeighInPanel(StagePanel):
    """Readings as fields; a button keeps the record as a dated file."""

    def add_fields(self):
        """Add the readings and the button below them."""
        super().add_fields()
        button = QtWidgets.QPushButton(translate("Laywright", "Keep as a dated file"))
        button.setObjectName("Keep")
        button.setToolTip(
            translate("Laywright", "Write the record into the folder of records; none is replaced")
        )
        button.clicked.connect(lambda *_: self.keep())
        self.grid.addRow(button)

    def keep(self):
        """Apply what is typed and write the record into the folder of records."""
        if not self.apply():
            return
        try:
            keep_record(self.obj, records_folder())
        except LaywrightError as problem:
            QtWidgets.QMessageBox.warning(self.form, self.obj.Label, translated(problem))
            return
        self.show_report()
