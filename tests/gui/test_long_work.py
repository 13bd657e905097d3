"""Long work: the window stays alive, shows how far it is, and Cancel leaves all as it was."""

import time

import FreeCAD
import FreeCADGui
import pytest
from robot import VERSION, click, click_command, later, pump, stages_in, until, watch_of

from freecad.laywright.exports import export_job
from freecad.laywright.qt import QtCore, QtWidgets
from freecad.laywright.watch import time_left
from laywright.errors import Cancelled
from laywright.progress import part_of
from laywright.stage import Stage

pytestmark = pytest.mark.gui


@pytest.fixture
def slow(monkeypatch):
    """Make Cloth Patterns take two seconds more, with forty reports of progress."""
    call = Stage.__call__

    def slowly(self, *args, **kwargs):
        if self.title == "Cloth Patterns":
            for step in range(40):
                kwargs["progress"](step / 80, "waiting")
                time.sleep(0.05)
            kwargs["progress"] = part_of(kwargs["progress"], 0.5, 1.0)
        return call(self, *args, **kwargs)

    monkeypatch.setattr(Stage, "__call__", slowly)


def state_of(document, stages):
    """Return all that a person could find changed."""
    return {
        (obj.Name, name): str(getattr(obj, name))
        for obj in stages.values()
        for name in obj.PropertiesList
        if name not in ("Result", "Label2") and " at 0x" not in str(getattr(obj, name))
    } | {obj.Name: ("Touched" in obj.State, obj.isValid()) for obj in document.Objects}


def pick(document, obj):
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(document.Name, obj.Name)


def test_the_window_lives_while_a_job_is_brought_up_to_date(job, slow, artefacts):
    document, stages = job
    seen = {"beats": [], "shares": [], "words": set(), "left": set()}

    def beat():
        seen["beats"].append(time.monotonic())
        watch = watch_of()
        if watch is not None:
            bar = watch.findChild(QtWidgets.QProgressBar)
            seen["shares"].append(bar.value() / max(bar.maximum(), 1))
            labels = [label.text() for label in watch.findChildren(QtWidgets.QLabel)]
            seen["words"].add(labels[0])
            seen["left"].add(labels[1])
            if len(seen["beats"]) == 60:
                watch.grab().save(str(artefacts / f"watch {VERSION}.png"))

    timer = QtCore.QTimer()
    timer.timeout.connect(beat)
    timer.start(25)
    stages["ClothPatterns"].Margin = "26 mm"
    pick(document, stages["Layup"])
    click_command("Laywright_BringUpToDate")
    timer.stop()
    assert {obj.Status for obj in stages.values()} == {"up to date"}
    assert watch_of() is None
    gaps = [b - a for a, b in zip(seen["beats"], seen["beats"][1:], strict=False)]
    assert len(gaps) > 40
    # Two seconds of work, and no half of one in which a click would have gone unheard.
    assert sorted(gaps)[-2] < 1.0
    shares = seen["shares"]
    assert shares == sorted(shares)
    assert len(set(shares)) > 10
    assert any("waiting" in words for words in seen["words"])
    assert any("about" in words for words in seen["left"])


def test_cancel_leaves_the_document_exactly_as_it_was(job, slow):
    document, stages = job
    stages["ClothPatterns"].Margin = "27 mm"
    before, steps = state_of(document, stages), document.UndoCount

    def stop():
        watch = watch_of()
        if watch is None:
            later(stop, 0.1)
        else:
            click(watch.findChild(QtWidgets.QPushButton, "LaywrightCancel"))

    later(stop, 0.6)
    pick(document, stages["Layup"])
    click_command("Laywright_BringUpToDate")
    assert state_of(document, stages) == before
    assert document.UndoCount == steps
    click_command("Laywright_BringUpToDate")
    assert stages["ClothPatterns"].Status == "up to date"
    assert stages["ClothPatterns"].Digest != before[("ClothPatterns", "Digest")]


def test_escape_stops_a_plain_recompute_too_and_says_so(job, slow):
    document, stages = job
    patterns = stages["ClothPatterns"]
    digest = patterns.Digest
    patterns.Margin = "28 mm"

    def stop():
        watch = watch_of()
        if watch is None:
            later(stop, 0.1)
        else:
            click(watch.findChild(QtWidgets.QPushButton, "LaywrightCancel"))

    later(stop, 0.6)
    document.recompute()
    assert not patterns.isValid()
    assert "a request to stop" in patterns.Status
    assert patterns.Digest == digest
    assert stages["RollPlan"].Label2 == "out of date: waits for Cloth Patterns"
    document.recompute()
    assert patterns.Status == "up to date"


def test_a_cancelled_start_leaves_no_job(window, slow):
    import hatch_cover

    document = hatch_cover.build("Cancelled")
    names = [obj.Name for obj in document.Objects]
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(document.Name, document.HatchCover.Name)

    def stop():
        watch = watch_of()
        if watch is None:
            later(stop, 0.1)
        else:
            watch.reject()

    later(stop, 0.6)
    click_command("Laywright_StartJob")
    assert [obj.Name for obj in document.Objects] == names
    assert document.HatchCover.ViewObject.Visibility
    FreeCAD.closeDocument(document.Name)


def test_a_cancelled_export_writes_nothing(job, tmp_path, monkeypatch):
    _, stages = job
    from freecad.laywright import exports

    files_of = exports.files_of

    def slowly(*args):
        time.sleep(1.0)
        return files_of(*args)

    monkeypatch.setattr(exports, "files_of", slowly)
    later(lambda: watch_of().reject(), 0.8)
    group = stages["Layup"].InList[0].getParentGroup() or stages["Layup"].getParentGroup()
    with pytest.raises(Cancelled):
        export_job(group, tmp_path / "files")
    assert not (tmp_path / "files").exists()
    assert stages["JobSheet"].Files == "not written yet"


def test_an_error_in_the_middle_is_told_where_it_belongs(job):
    document, stages = job
    stages["ClothPatterns"].Margin = "29 mm"
    stages["PrintTiles"].Printer = "gone"
    pick(document, stages["Layup"])
    click_command("Laywright_BringUpToDate")
    assert "found 'gone'" in stages["PrintTiles"].Status
    assert stages["ClothPatterns"].Status == "up to date"
    assert stages["JobSheet"].Label2.startswith("out of date")
    assert stages_in(document)["RollPlan"].isValid()


def test_the_time_left_is_said_when_it_is_known():
    assert time_left(0.5, 0.2) == ""
    assert time_left(30.0, 0.01) == ""
    assert time_left(10.0, 0.5) == "about 10 s left"
    assert time_left(120.0, 0.25) == "about 6 min left"


def test_a_macro_gets_its_results_at_once(job):
    document, stages = job
    stages["ClothPatterns"].Margin = "31 mm"
    document.recompute()
    assert stages["ClothPatterns"].Status == "up to date"
    assert until(lambda: watch_of() is None, 1.0)
    pump()
