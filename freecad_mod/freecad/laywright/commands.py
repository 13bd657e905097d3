"""The workbench's commands, in the order of the work.

Each is also a plain function for scripts: see ``objects.job`` (`make_job`, `add_stage`) and
``exports`` (`export_job`).
"""

from pathlib import Path

import FreeCAD
import FreeCADGui

from freecad.laywright import ICONS, host
from freecad.laywright.objects.job import KINDS, JobObject, add_stage, make_job
from freecad.laywright.qt import QtWidgets, translate
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


class _Command:
    """Shared by all: title, tip, icon, one step of undo, errors in a box."""

    title = ""
    tip = ""
    icon = "laywright.svg"

    def GetResources(self):
        return {
            "MenuText": translate("Laywright", self.title),
            "ToolTip": translate("Laywright", self.tip),
            "StatusTip": translate("Laywright", self.tip),
            "Pixmap": str(ICONS / self.icon),
        }

    def IsActive(self):
        return FreeCAD.ActiveDocument is not None

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

    def IsActive(self):
        return bool(_picked_faces()[1])

    def run(self, document):
        part, faces = _picked_faces()
        make_job(part, faces, f"{part.Label} job")
        document.recompute()


class _AddStage(_Command):
    def __init__(self, kind):
        self.kind = kind
        self.title = KINDS[kind].stage.title
        self.tip = _TIPS[kind]
        self.icon = KINDS[kind].icon

    def run(self, document):
        obj = add_stage(document, self.kind, _picked_job(document))
        if self.kind == "MouldedFace":
            part, faces = _picked_faces()
            if faces:
                obj.Faces = (part, faces)
        document.recompute()


class _Export(_Command):
    title = "Write files"
    tip = "Write tiles, patterns, plans and sheets of the job into a folder"
    icon = "write_files.svg"

    def IsActive(self):
        return (
            FreeCAD.ActiveDocument is not None and _picked_job(FreeCAD.ActiveDocument) is not None
        )

    def run(self, document):
        from freecad.laywright.exports import export_job

        folder = QtWidgets.QFileDialog.getExistingDirectory(
            FreeCADGui.getMainWindow(), translate("Laywright", "Folder for the files")
        )
        if folder:
            written = export_job(_picked_job(document), Path(folder))
            FreeCAD.Console.PrintMessage(f"{len(written)} files in {folder}\n")


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
    **{f"Laywright_{kind}": _AddStage(kind) for kind in KINDS},
    "Laywright_WriteFiles": _Export(),
}
NAMES = list(_COMMANDS)


def register():
    """Make the commands known to FreeCAD."""
    for name, command in _COMMANDS.items():
        FreeCADGui.addCommand(name, command)
