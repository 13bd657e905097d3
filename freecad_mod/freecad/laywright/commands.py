"""The workbench's commands, in the order of the work.

Each is also a plain function for scripts: see ``objects.job`` (`make_job`, `add_stage`),
``ahead`` (`bring_up_to_date`), ``exports`` (`export_job`) and ``examples`` (`open_example`).

Titles and tips stand here in English; FreeCAD translates them under the command's name.
"""

from pathlib import Path

import FreeCAD
import FreeCADGui

from freecad.laywright import ICONS, bridge, host
from freecad.laywright.ahead import bring_up_to_date
from freecad.laywright.asking import ask_for_folder
from freecad.laywright.examples import EXAMPLES, open_example
from freecad.laywright.exports import export_job
from freecad.laywright.lessons import lessons_for, take
from freecad.laywright.objects.job import (
    KINDS,
    TESTS,
    JobObject,
    add_stage,
    is_mesh,
    make_job,
    pick,
    stages_of,
)
from freecad.laywright.qt import QAction, QtWidgets, translate
from freecad.laywright.staleness import stale
from freecad.laywright.translated import translated
from laywright.errors import Cancelled, LaywrightError

__all__ = ["COMMANDS", "EXAMPLE_NAMES", "NAMES", "register"]

_TIPS = {
    "MouldedFace": "Pick the faces of the part that cloth is laid against",
    "ReleaseCheck": "See whether the part leaves the mould along the pull",
    "Layup": "Set the plies and see thickness, mass and stiffness",
    "MouldBody": "Make the closed solid under the moulded face",
    "PrintTiles": "Cut the mould body into pieces that fit the printer",
    "ClothPatterns": "Make the flat pattern of every ply",
    "RollPlan": "Place the patterns on the roll",
    "MixCurePlan": "Plan resin, cups and cure",
    "JobSheet": "Gather everything on printed sheets",
    "WeighIn": "Write down what a part really weighs and hold it against the plan",
    "CouponTest": "Plan test pieces of the layup, read them in, compare with the prediction",
}


class _Command:
    """Shared by all: title, tip, icon, one step of undo, errors in a box, why it is grey."""

    name = ""
    title = ""
    tip = ""
    icon = "laywright.svg"
    keys = ""

    def GetResources(self):
        return {
            "MenuText": self.title,
            "ToolTip": self.tip,
            "WhatsThis": self.tip,
            "StatusTip": self.tip,
            "Pixmap": str(ICONS / self.icon),
            "Accel": self.keys,
        }

    def obstacle(self):
        """Return why the command cannot run now, "" when it can."""
        if FreeCADGui.Control.activeDialog():
            return translate("Laywright", "Finish what is open in the task panel first.")
        if FreeCAD.ActiveDocument is None:
            return translate("Laywright", "Open or make a document first.")
        return ""

    def IsActive(self):
        obstacle = self.obstacle()
        if obstacle != getattr(self, "_said", None):
            self._said = obstacle
            tip = translate(self.name, self.tip)
            for action in FreeCADGui.getMainWindow().findChildren(QAction, self.name):
                action.setToolTip(f"{tip}\n{obstacle}" if obstacle else tip)
        return not obstacle

    def Activated(self):
        title = translate(self.name, self.title)
        try:
            with host.transaction(FreeCAD.ActiveDocument, title):
                self.run(FreeCAD.ActiveDocument)
        except Cancelled:
            words = translate("Laywright", "{0}: stopped, nothing was changed").format(title)
            FreeCADGui.getMainWindow().statusBar().showMessage(words, 5000)
        except LaywrightError as problem:
            QtWidgets.QMessageBox.warning(FreeCADGui.getMainWindow(), title, translated(problem))

    def run(self, document):
        raise NotImplementedError


class _OfJob(_Command):
    """A command that needs a job."""

    def obstacle(self):
        obstacle = super().obstacle()
        if obstacle or _picked_job(FreeCAD.ActiveDocument) is not None:
            return obstacle
        return translate("Laywright", "Select a job, or anything in it, in the tree first.")


class _OfFaces(_Command):
    """A command that needs a part, or faces of one."""

    def obstacle(self):
        obstacle = super().obstacle()
        if obstacle or _picked_faces()[0] is not None:
            return obstacle
        return translate("Laywright", "Select a part, or faces of one, first.")


class _StartJob(_OfFaces):
    title = "Start a job"
    tip = (
        "Make a job with every stage from the selected faces of a part, or from those that look "
        "upwards if the part itself is selected"
    )
    icon = "start_job.svg"
    keys = "L, 0"

    def run(self, document):
        part, faces = _picked_faces()
        name = translate("Laywright", "{0} job").format(part.Label)
        make_job(part, _or_upper(part, faces), name)
        bring_up_to_date(document, name)


class _AddStage(_Command):
    def __init__(self, kind, key):
        self.kind = kind
        self.title = (KINDS | TESTS)[kind].stage.title
        self.tip = _TIPS[kind]
        self.icon = (KINDS | TESTS)[kind].icon
        self.keys = f"L, {key}"

    def run(self, document):
        obj = add_stage(document, self.kind, _picked_job(document))
        bring_up_to_date(document, obj.Label)


class _AddFace(_AddStage, _OfFaces):
    def run(self, document):
        part, faces = _picked_faces()
        obj = add_stage(document, self.kind, _picked_job(document))
        pick(obj, part, _or_upper(part, faces), _picked_job(document))
        bring_up_to_date(document, obj.Label)


class _BringUpToDate(_OfJob):
    title = "Bring up to date"
    tip = "Compute again, in order, whatever in the job is out of date"
    icon = "bring_up_to_date.svg"
    keys = "L, U"

    def run(self, document):
        job = _picked_job(document)
        bring_up_to_date(document, job.Label, stages_of(job).values())


class _Learn(_OfJob):
    title = "Learn from records"
    tip = "Show what accepted records say on resin, losses and pace; take what you tick"
    icon = "learn_from_records.svg"
    keys = "L, L"

    def run(self, document):
        from freecad.laywright.panels.lessons_window import LessonsWindow

        job = _picked_job(document)
        learnt = lessons_for(job)
        chosen = LessonsWindow(learnt, FreeCADGui.getMainWindow()).ask()
        if chosen:
            take(job, learnt, chosen)
            bring_up_to_date(document, job.Label)


class _WriteFiles(_OfJob):
    title = "Write files"
    tip = "Write tiles, patterns, plans and sheets of the job into a folder"
    icon = "write_files.svg"
    keys = "L, W"

    def run(self, document):
        job = _picked_job(document)
        old = stale(stages_of(job).values())
        if old and not self._wanted(old):
            return
        if old:
            bring_up_to_date(document, job.Label, stages_of(job).values())
        sheet = stages_of(job).get("JobSheet")
        last = sheet.Folder if sheet is not None else ""
        folder = ask_for_folder(translate("Laywright", "Folder for the files"), last)
        if folder:
            written = export_job(job, Path(folder))
            words = translate("Laywright", "{0} files in {1}").format(len(written), folder)
            FreeCAD.Console.PrintMessage(f"{words}\n")

    def _wanted(self, old):
        """Ask whether what is out of date shall be brought up to date and written."""
        question = translate(
            "Laywright", "Out of date: {0}. Bring the job up to date and write it?"
        )
        answer = QtWidgets.QMessageBox.question(
            FreeCADGui.getMainWindow(),
            translate(self.name, self.title),
            question.format(", ".join(obj.Label for obj in old)),
        )
        return answer == QtWidgets.QMessageBox.Yes


class _MaterialCards(_Command):
    title = "Material cards"
    tip = "Look at the material cards, change or copy them into your folder, take in and give away"
    icon = "material_cards.svg"
    keys = "L, M"

    def obstacle(self):
        return ""

    def Activated(self):
        """Open the window with the cards; the document has no part in it."""
        from freecad.laywright.panels.card_window import CardWindow

        try:
            CardWindow(FreeCADGui.getMainWindow()).show()
        except LaywrightError as problem:
            QtWidgets.QMessageBox.warning(
                FreeCADGui.getMainWindow(), self.title, translated(problem)
            )


class _OpenExample(_Command):
    tip = "Open a copy of this example to try the workbench on; its numbers are invented"
    icon = "open_example.svg"

    def __init__(self, file, title):
        self.file = file
        self.title = title

    def obstacle(self):
        return ""

    def Activated(self):
        open_example(self.file)
        FreeCADGui.SendMsgToActiveView("ViewFit")


def _picked_faces():
    """Return the selected part and its selected faces, none of a mesh; (None, []) without."""
    for picked in FreeCADGui.Selection.getSelectionEx():
        faces = [name for name in picked.SubElementNames if name.startswith("Face")]
        if faces:
            return picked.Object, faces
    for picked in FreeCADGui.Selection.getSelectionEx():
        if is_mesh(picked.Object) and not hasattr(picked.Object, "LaywrightKind"):
            return picked.Object, []
    for part in FreeCADGui.Selection.getSelection():
        if not hasattr(part, "LaywrightKind") and getattr(part, "Shape", None) is not None:
            return part, []
    return None, []


def _or_upper(part, faces):
    """Return the picked faces; of a shape those that look upwards if none was picked."""
    return faces if faces or is_mesh(part) else bridge.upper_faces(bridge.placed_shape(part))


def _picked_job(document):
    jobs = [obj for obj in document.Objects if isinstance(getattr(obj, "Proxy", None), JobObject)]
    for picked in FreeCADGui.Selection.getSelection():
        for job in jobs:
            if picked is job or picked in job.Group:
                return job
    return jobs[0] if len(jobs) == 1 else None


_JOB = {
    "Laywright_StartJob": _StartJob(),
    **{
        f"Laywright_{kind}": (_AddFace if kind == "MouldedFace" else _AddStage)(kind, number)
        for number, kind in enumerate(KINDS, 1)
    },
    "Laywright_BringUpToDate": _BringUpToDate(),
    "Laywright_WriteFiles": _WriteFiles(),
    "Laywright_MaterialCards": _MaterialCards(),
    **{f"Laywright_{kind}": _AddStage(kind, key) for kind, key in zip(TESTS, "SC", strict=True)},
    "Laywright_Learn": _Learn(),
}
_EXAMPLES = {
    f"Laywright_Example_{file}": _OpenExample(file, title) for file, title in EXAMPLES.items()
}
COMMANDS = _JOB | _EXAMPLES
for _name, _command in COMMANDS.items():
    _command.name = _name
NAMES = list(_JOB)
EXAMPLE_NAMES = list(_EXAMPLES)


def register():
    """Make the commands known to FreeCAD."""
    for name, command in COMMANDS.items():
        FreeCADGui.addCommand(name, command)
