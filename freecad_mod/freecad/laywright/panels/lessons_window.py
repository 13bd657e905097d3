"""A window that shows what accepted records say, before any of it is taken."""

from freecad.laywright.qt import QtWidgets, translate

__all__ = ["LessonsWindow"]

_NAMES = ("resin_share", "extra_share", "square_metre_minutes", "ply_minutes")


class LessonsWindow(QtWidgets.QDialog):
    """One box for each lesson: the plan's value, what the records say, how many there are.

    Parameters
    ----------
    learnt : laywright.shop.record.learning.Learnt
    parent : QWidget
    """

    def __init__(self, learnt, parent=None):
        super().__init__(parent)
        self.setObjectName("Lessons")
        self.setWindowTitle(translate("Laywright", "What the records say"))
        column = QtWidgets.QVBoxLayout(self)
        column.addWidget(
            QtWidgets.QLabel(
                translate("Laywright", "What is ticked goes into Layup and Mix & Cure Plan:")
            )
        )
        self.boxes = {}
        for name in _NAMES:
            lesson = getattr(learnt, name)
            if lesson is None:
                continue
            box = QtWidgets.QCheckBox(str(lesson))
            box.setObjectName(name)
            box.setChecked(lesson.differs)
            column.addWidget(box)
            self.boxes[name] = box
        if not self.boxes:
            column.addWidget(
                QtWidgets.QLabel(
                    translate(
                        "Laywright",
                        "There is no accepted record of this process yet: weigh a part, accept "
                        "it, and keep its record.",
                    )
                )
            )
        kinds = QtWidgets.QDialogButtonBox
        buttons = kinds(kinds.Ok | kinds.Cancel if self.boxes else kinds.Close)
        if self.boxes:
            buttons.button(kinds.Ok).setText(translate("Laywright", "Take what is ticked"))
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        column.addWidget(buttons)

    def ask(self):
        """Return the names of the lessons that the person takes."""
        answer = (self.exec if hasattr(self, "exec") else self.exec_)()
        if answer != QtWidgets.QDialog.Accepted:
            return []
        return [name for name, box in self.boxes.items() if box.isChecked()]
