"""The workbench's commands, in the order of the work.

Each is also a plain function for scripts: see ``objects.job`` (`make_job`, `add_stage`) and
``exports`` (`export_job`).
"""

import shutil
import tempfile
from pathlib import Path

import FreeCAD
import FreeCADGui

from freecad.laywright import ADDON, ICONS, host
from freecad.laywright.exports import export_job
from freecad.laywright.objects.job import KINDS, JobObject, add_stage, make_job, stages_of
from freecad.laywright.qt import QAction, QtWidgets, translate
from freecad.laywright.staleness import stale
from laywright.errors import LaywrightError

__all__ = ["NAMES", "register"]

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
}
_NO_DOCUMENT = "Open or make a document first."
_NO_FACES = "Select one or more faces of a part in the 3D view first."
_NO_JOB = "Select a job, or anything in it, in the tree first."


class _Command:
    """Shared by all: title, tip, icon, one step of undo, errors in a box, why it is grey."""

    title = ""
    tip = ""
    icon = "laywright.svg"
    keys = ""

    def GetResources(self):
        tip = translate("Laywright", self.tip)
        return {
            "MenuText": translate("Laywright", self.title),
            "ToolTip": tip,
            "WhatsThis": tip,
            "StatusTip": tip,
            "Pixmap": str(ICONS / self.icon),
            "Accel": self.keys,
        }

    def obstacle(self):
        """Return why the command cannot run now, "" when it can."""
        return "" if FreeCAD.ActiveDocument is not None else _NO_DOCUMENT

    def IsActive(self):
        obstacle = self.obstacle()
        if obstacle != getattr(self, "_said", None):
            self._said = obstacle
            tip = translate("Laywright", self.tip)
            for action in FreeCADGui.getMainWindow().findChildren(QAction, self.name):
                action.setToolTip(f"{tip}\n{translate('Laywright', obstacle)}" if obstacle else tip)
        return not obstacle

    def Activated(self):
        try:
            with host.transaction(FreeCAD.ActiveDocument, self.title):
                self.run(FreeCAD.ActiveDocument)
        except LaywrightError as problem:
            QtWidgets.QMessageBox.warning(FreeCADGui.getMainWindow(), self.title, str(problem))

    def run(self, document):
        raise NotImplementedError


class _StartJob(_Command):
    title = "Start a job"
    tip = "Make a job with every stage from the selected faces of a part"
    icon = "start_job.svg"
    keys = "L, 0"

    def obstacle(self):
        return super().obstacle() or ("" if _picked_faces()[1] else _NO_FACES)

    def run(self, document):
        part, faces = _picked_faces()
        make_job(part, faces, f"{part.Label} job")
        document.recompute()


class _AddStage(_Command):
    def __init__(self, kind, number):
        self.kind = kind
        self.title = KINDS[kind].stage.title
        self.tip = _TIPS[kind]
        self.icon = KINDS[kind].icon
        self.keys = f"L, {number}"

    def obstacle(self):
        if self.kind == "MouldedFace":
            return super().obstacle() or ("" if _picked_faces()[1] else _NO_FACES)
        return super().obstacle()

    def run(self, document):
        obj = add_stage(document, self.kind, _picked_job(document))
        if self.kind == "MouldedFace":
            obj.Faces = _picked_faces()
        document.recompute()


class _BringUpToDate(_Command):
    title = "Bring up to date"
    tip = "Compute again, in order, whatever in the job is out of date"
    icon = "bring_up_to_date.svg"
    keys = "L, U"

    def obstacle(self):
        return super().obstacle() or ("" if _picked_job(FreeCAD.ActiveDocument) else _NO_JOB)

    def run(self, document):
        for obj in stale(stages_of(_picked_job(document)).values()):
            obj.touch()
        document.recompute()


class _WriteFiles(_Command):
    title = "Write files"
    tip = "Write tiles, patterns, plans and sheets of the job into a folder"
    icon = "write_files.svg"
    keys = "L, W"

    def obstacle(self):
        return super().obstacle() or ("" if _picked_job(FreeCAD.ActiveDocument) else _NO_JOB)

    def run(self, document):
        job = _picked_job(document)
        old = stale(stages_of(job).values())
        if old:
            names = ", ".join(obj.Label for obj in old)
            answer = QtWidgets.QMessageBox.question(
                FreeCADGui.getMainWindow(),
                self.title,
                translate(
                    "Laywright", "Out of date: {0}. Bring the job up to date and write it?"
                ).format(names),
            )
            if answer != QtWidgets.QMessageBox.Yes:
                return
            document.recompute()
        folder = QtWidgets.QFileDialog.getExistingDirectory(
            FreeCADGui.getMainWindow(), translate("Laywright", "Folder for the files")
        )
        if folder:
            written = export_job(job, Path(folder))
            FreeCAD.Console.PrintMessage(f"{len(written)} files in {folder}\n")


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
            QtWidgets.QMessageBox.warning(FreeCADGui.getMainWindow(), self.title, str(problem))


class _OpenExample(_Command):
    title = "Open the example"
    tip = "Open a copy of the example, a crowned hatch cover, to try the workbench on"
    icon = "open_example.svg"

    def obstacle(self):
        return ""

    def Activated(self):
        """Open a copy, so that the example itself stays as it is."""
        folder = Path(tempfile.mkdtemp(prefix="laywright-"))
        shutil.copy(ADDON / "examples" / "hatch_cover.FCStd", folder)
        FreeCAD.openDocument(str(folder / "hatch_cover.FCStd"))
        FreeCADGui.SendMsgToActiveView("ViewFit")


def _picked_faces():
    for picked in FreeCADGui.Selection.getSelectionEx():
        faces = [name for name in picked.SubElementNames if name.startswith("Face")]
        if faces:
            return picked.Object, faces
    return None, []


def _picked_job(document):
    jobs = [obj for obj in document.Objects if isinstance(getattr(obj, "Proxy", None), JobObject)]
    for picked in FreeCADGui.Selection.getSelection():
        for job in jobs:
            if picked is job or picked in job.Group:
                return job
    return jobs[0] if len(jobs) == 1 else None


_COMMANDS = {
    "Laywright_StartJob": _StartJob(),
    **{f"Laywright_{kind}": _AddStage(kind, number) for number, kind in enumerate(KINDS, 1)},
    "Laywright_BringUpToDate": _BringUpToDate(),
    "Laywright_WriteFiles": _WriteFiles(),
    "Laywright_MaterialCards": _MaterialCards(),
    "Laywright_OpenExample": _OpenExample(),
}
for _name, _command in _COMMANDS.items():
    _command.name = _name
NAMES = list(_COMMANDS)


def register():
    """Make the commands known to FreeCAD."""
    for name, command in _COMMANDS.items():
        FreeCADGui.addCommand(name, command)
