"""What is out of date says so, and why, before it is computed; no files are written from it."""

import FreeCAD
import pytest
from parts import job_in, set_dimension

from freecad.laywright.exports import export_job
from freecad.laywright.staleness import stale, why_stale
from laywright.errors import InputError

pytestmark = pytest.mark.freecad


def reasons(stages):
    return {kind: obj.Label2 for kind, obj in stages.items() if obj.Label2}


def test_the_tree_says_which_input_of_which_object_changed(hatch, tmp_path):
    _, job, stages = hatch
    assert reasons(stages) == {}
    stages["ClothPatterns"].Label = "Stücke"
    stages["ClothPatterns"].Margin = "30 mm"
    waiting = "out of date: margin of Stücke changed"
    assert reasons(stages) == {
        "ClothPatterns": "out of date: margin changed",
        "RollPlan": waiting,
        "MixCurePlan": waiting,
        "JobSheet": waiting,
    }
    assert why_stale(stages["ClothPatterns"]) == "out of date: margin changed"
    assert stages["ClothPatterns"].Status == "up to date"
    with pytest.raises(InputError, match="Stücke: found out of date: margin changed, needed"):
        export_job(job, tmp_path / "files")
    assert not (tmp_path / "files").exists()
    stages["ClothPatterns"].Margin = "20 mm"
    assert reasons(stages) == {}
    assert stale(stages.values()) == []


def test_several_changes_are_all_named_and_gone_when_computed(hatch):
    document, _, stages = hatch
    stages["MouldBody"].BaseHeight = "11 mm"
    stages["MouldBody"].RunOff = "27 mm"
    assert stages["MouldBody"].Label2 in (
        "out of date: run off, base height changed",
        "out of date: base height, run off changed",
    )
    document.recompute()
    assert reasons(stages) == {}
    assert stages["MouldBody"].Label2 == ""


def test_what_changes_no_result_makes_nothing_out_of_date(hatch):
    _, _, stages = hatch
    stages["PrintTiles"].ShownApart = "3 mm"
    stages["JobSheet"].Paper = "Letter"
    stages["JobSheet"].DecimalMark = "comma"
    assert reasons(stages) == {}
    assert stale(stages.values()) == []


def test_undo_takes_the_reason_with_it(hatch):
    document, _, stages = hatch
    document.UndoMode = 1
    for value in ("9 mm", "10 mm"):
        document.openTransaction("higher")
        stages["MouldBody"].BaseHeight = value
        document.recompute()
        document.commitTransaction()
    document.undo()
    assert reasons(stages) == {}
    document.openTransaction("not computed")
    stages["MouldBody"].BaseHeight = "14 mm"
    document.commitTransaction()
    assert stages["PrintTiles"].Label2 == "out of date: base height of Mould Body changed"
    document.undo()
    assert reasons(stages) == {}
    document.redo()
    assert stages["MouldBody"].Label2 == "out of date: base height changed"


def test_an_edited_part_runs_through_and_leaves_no_reason(hatch):
    document, _, stages = hatch
    set_dimension(document, "corner_radius", 55)
    assert reasons(stages) == {}
    assert {obj.Status for obj in stages.values()} == {"up to date"}


def test_saved_out_of_date_it_says_why_when_it_is_opened_again(hatch, tmp_path):
    document, _, stages = hatch
    stages["Layup"].Angles = [0.0, 30.0, 0.0]
    document.saveAs(str(tmp_path / "later.FCStd"))
    FreeCAD.closeDocument(document.Name)
    document = FreeCAD.openDocument(str(tmp_path / "later.FCStd"))
    _, stages = job_in(document)
    assert why_stale(stages["Layup"]) == "out of date: angles changed"
    assert why_stale(stages["JobSheet"]) == "out of date: angles of Layup changed"
    assert reasons(stages)["Layup"] == "out of date: angles changed"
