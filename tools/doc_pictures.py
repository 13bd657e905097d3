"""Draws docs/pictures in FreeCAD's real window: the first job, step by step, and a few more.

    bash tools/docs.sh pictures

Needs an X server (the script above starts Xvfb) and pdftoppm (Debian package poppler-utils).
"""

import os
import subprocess
import sys
import tempfile
import time
import traceback
from pathlib import Path

import FreeCAD
import FreeCADGui
from PySide import QtCore, QtGui

from freecad.laywright.examples import open_example
from freecad.laywright.exports import export_job
from freecad.laywright.objects.job import add_stage, stages_of
from freecad.laywright.qt import QtWidgets

sys.path.append(str(Path(__file__).resolve().parent))
sys.path.append(str(Path(__file__).resolve().parents[1] / "examples"))
import doc_special

CHECKOUT = Path(__file__).resolve().parents[1]
PICTURES = Path(os.environ.get("LAYWRIGHT_PICTURES", CHECKOUT / "docs" / "pictures"))
SIZE = (720, 460)
PATIENCE = 600.0
PANEL_WIDTH = 400
WHITE, RIM = 250, 12
# Orientations of the camera: yaw, pitch, roll in degrees.
ABOVE, BELOW, PLAN = (30.0, 0.0, 55.0), (30.0, 0.0, 125.0), (0.0, 0.0, 0.0)


def pump(seconds=0.4):
    """Let the window do what is waiting."""
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        QtWidgets.QApplication.processEvents(QtCore.QEventLoop.AllEvents, 20)


def wait_for(stages):
    """Wait until every stage is up to date."""
    end = time.monotonic() + PATIENCE
    while any(obj.Status != "up to date" for obj in stages.values()):
        pump()
        if time.monotonic() > end:
            raise SystemExit({kind: obj.Status for kind, obj in stages.items()})
    pump(1.0)


def keep(image, name):
    """Keep a picture."""
    path = PICTURES / f"{name}.png"
    image.convertToFormat(QtGui.QImage.Format_RGB888).save(str(path), "PNG", 0)
    print(f"{path.name}: {path.stat().st_size // 1000} kB")


def scene(obj, name, look=ABOVE):
    """Keep the 3D view with one object shown, seen along `look`."""
    view = FreeCADGui.getDocument(obj.Document.Name).activeView()
    view.setCameraOrientation(FreeCAD.Rotation(*look).Q)
    for other in obj.Document.Objects:
        other.ViewObject.Visibility = other is obj
    pump()
    view.fitAll()
    pump(1.0)
    with tempfile.TemporaryDirectory() as folder:
        path = str(Path(folder) / "view.png")
        view.saveImage(path, *SIZE, "White")
        keep(cropped(QtGui.QImage(path)), name)


def cropped(image):
    """Return a picture without its white rim."""
    grey = image.convertToFormat(QtGui.QImage.Format_Grayscale8)
    width, height = grey.width(), grey.height()
    drawn = [
        (x, y) for y in range(height) for x in range(width) if QtGui.qGray(grey.pixel(x, y)) < WHITE
    ]
    left, right = min(x for x, _ in drawn), max(x for x, _ in drawn)
    top, low = min(y for _, y in drawn), max(y for _, y in drawn)
    rim = QtCore.QRect(QtCore.QPoint(left, top), QtCore.QPoint(right, low))
    return image.copy(rim.adjusted(-RIM, -RIM, RIM, RIM).intersected(image.rect()))


def toolbar(window, name):
    """Keep the workbench's toolbar on a row of its own."""
    bar = next(bar for bar in window.findChildren(QtWidgets.QToolBar, "Laywright"))
    window.insertToolBarBreak(bar)
    pump()
    keep(bar.grab(QtCore.QRect(0, 0, bar.sizeHint().width(), bar.height())).toImage(), name)


def tree(window, name):
    """Keep the tree, cropped to its items."""
    widget = next(
        found
        for found in window.findChildren(QtWidgets.QTreeWidget)
        if found.metaObject().className() == "Gui::TreeWidget"
    )
    splitter = widget.parentWidget()
    while splitter is not None and not isinstance(splitter, QtWidgets.QSplitter):
        splitter = splitter.parentWidget()
    if splitter is not None:
        splitter.setSizes([window.height(), 50])
    widget.expandAll()
    pump()
    area = QtCore.QRect()
    items = QtWidgets.QTreeWidgetItemIterator(widget)
    while items.value():
        area = area.united(widget.visualItemRect(items.value()))
        items += 1
    area = area.intersected(widget.viewport().rect())
    keep(widget.viewport().grab(area).toImage(), name)


def panel(obj, name, height):
    """Keep the upper part of an object's task panel."""
    obj.ViewObject.Proxy.doubleClicked(obj.ViewObject)
    pump(1.0)
    report = next(
        label
        for label in FreeCADGui.getMainWindow().findChildren(QtWidgets.QLabel, "Report")
        if label.isVisible()
    )
    form = report.parentWidget()
    area = QtCore.QRect(0, 0, min(form.width(), PANEL_WIDTH), min(form.height(), height))
    keep(form.grab(area).toImage(), name)
    box = next(
        box
        for box in FreeCADGui.getMainWindow().findChildren(QtWidgets.QDialogButtonBox)
        if box.isVisible()
    )
    box.button(QtWidgets.QDialogButtonBox.Cancel).click()
    pump()


def sheet_page(job, word, name):
    """Keep the upper half of the job sheet's page with this heading."""
    with tempfile.TemporaryDirectory() as folder:
        export_job(job, Path(folder))
        pdf = Path(folder) / "job sheet A4.pdf"
        for page in range(1, 100):
            only = ["-f", str(page), "-l", str(page)]
            text = subprocess.run(
                ["pdftotext", *only, str(pdf), "-"], capture_output=True, text=True, check=True
            ).stdout
            if word in text[:300]:
                break
        picture = Path(folder) / "page"
        subprocess.run(
            ["pdftoppm", "-r", "80", "-png", "-singlefile", *only, str(pdf), str(picture)],
            check=True,
        )
        image = QtGui.QImage(str(picture.with_suffix(".png")))
        keep(image.copy(0, 0, image.width(), image.height() * 11 // 20), name)


def draw():
    """Walk through the first job and keep a picture of each step."""
    PICTURES.mkdir(parents=True, exist_ok=True)
    window = FreeCADGui.getMainWindow()
    window.showMaximized()
    FreeCADGui.activateWorkbench("LaywrightWorkbench")
    pump(1.0)
    document = open_example("hatch_cover")
    pump()
    part = document.HatchCover
    scene(part, "part")
    toolbar(window, "toolbar")

    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(document.Name, part.Name)
    FreeCADGui.runCommand("Laywright_StartJob")
    pump()
    FreeCADGui.Selection.clearSelection()
    job = next(obj for obj in document.Objects if obj.Name.startswith("Job") and obj.Group)
    stages = stages_of(job)
    wait_for(stages)
    tree(window, "tree")

    scene(stages["ReleaseCheck"], "release")
    scene(stages["MouldBody"], "mould", BELOW)
    scene(stages["PrintTiles"], "tiles", BELOW)
    cloth = stages["ClothPatterns"].ViewObject
    cloth.Map, cloth.MapPly = "shear", 2
    cloth.DisplayMode = "Shaded"  # without the flat outlines beside the part
    scene(stages["ClothPatterns"], "shear")
    cloth.DisplayMode = "Flat Lines"
    cloth.Map = "outlines only"
    scene(stages["RollPlan"], "roll", PLAN)
    panel(stages["Layup"], "panel-layup", 680)
    panel(stages["MixCurePlan"], "panel-mix", 620)
    sheet_page(job, "Mix", "sheet")
    weigh_in = add_stage(document, "WeighIn", job)
    weigh_in.DryCloth, weigh_in.MixMade, weigh_in.PartUntrimmed = 92.0, 97.0, 186.0
    weigh_in.Thicknesses = [0.75, 0.78, 0.77]
    document.recompute()
    panel(weigh_in, "panel-weigh-in", 640)

    scene(doc_special.parted_mould(), "parted")
    scene(doc_special.darts(), "darts")
    scene(doc_special.scan(), "scan")
    cards = doc_special.cards()
    pump(1.0)
    keep(cards.grab().toImage(), "cards")
    cards.accept()


def main():
    """Draw, say what went wrong, and end FreeCAD with the right code."""
    code = 1
    try:
        draw()
        code = 0
    except BaseException:
        traceback.print_exc()
    sys.stdout.flush()
    os._exit(code)


QtCore.QTimer.singleShot(1500, main)
