"""Task panels: what is typed, previewed, applied, undone."""

import FreeCADGui
import pytest
from robot import VERSION, buttons, grabbed, later, opened, pump, type_into, until, watch_of

from freecad.laywright.qt import QtWidgets

pytestmark = pytest.mark.gui


@pytest.mark.parametrize(
    ("typed", "mm"),
    [("9,5 mm", 9.5), ("9.5", 9.5), ("9,5", 9.5), ("3/8 in", 9.525), ("1.234,5 mm", 1234.5)],
)
def test_lengths_are_read_with_any_unit_and_either_decimal_mark(job, typed, mm):
    from freecad.laywright.panels.typed import quantity

    _, stages = job
    assert quantity(typed, "Base height", stages["MouldBody"].BaseHeight).Value == pytest.approx(mm)


@pytest.mark.parametrize(
    ("typed", "unit", "value"),
    [
        ("21,5", "°C", 21.5),
        ("70 °F", "°C", 21.111),
        ("6 oz/yd^2", "g/m²", 203.43),
        ("1,5 h", "min", 90.0),
        ("12 g", "g", 12.0),
        ("1.234,5", "", 1234.5),
        ("1,234.5", "", 1234.5),
    ],
)
def test_numbers_are_read_with_any_unit_and_either_decimal_mark(typed, unit, value):
    from freecad.laywright.panels.typed import number

    assert number(typed, "field", unit) == pytest.approx(value, rel=1e-4)


@pytest.mark.parametrize("typed", ["abc", "5 kg", "", "-3 mm"])
def test_what_cannot_be_taken_is_said_beside_its_field(job, typed):
    document, stages = job
    body = stages["MouldBody"]
    form = opened(body)
    type_into(form, "RunOff", typed)
    buttons(form)["Ok"].click()
    pump()
    assert FreeCADGui.Control.activeDialog()
    problem = form.findChild(QtWidgets.QLabel, "Problem RunOff")
    assert problem.isVisible()
    assert "Run off" in problem.text()
    others = [
        label
        for label in form.findChildren(QtWidgets.QLabel)
        if label.objectName().startswith("Problem") and label.isVisible()
    ]
    assert others == [problem]
    buttons(form)["Cancel"].click()
    pump()
    assert body.RunOff.Value == 25.0
    assert body.Status == "up to date"
    assert not any("Touched" in obj.State for obj in document.Objects)


def test_a_preview_comes_coarse_then_full_and_cancel_takes_it_back(job, artefacts):
    document, stages = job
    patterns = stages["ClothPatterns"]
    before = (
        patterns.Digest,
        patterns.CutArea.Value,
        patterns.Margin.Value,
        list(patterns.Patterns),
    )
    form = opened(patterns)
    state = form.findChild(QtWidgets.QLabel, "State")
    type_into(form, "Margin", "30 mm")
    assert until(lambda: "Coarse" in state.text())
    coarse = patterns.CutArea.Value
    assert coarse > before[1] * 1.02
    assert patterns.Digest == before[0]
    assert until(lambda: state.text().startswith("Preview"))
    full = patterns.CutArea.Value
    assert full == pytest.approx(coarse, rel=0.02)
    assert full != coarse
    assert grabbed(form, artefacts / f"preview {VERSION}.png") > 8
    buttons(form)["Cancel"].click()
    pump()
    after = (
        patterns.Digest,
        patterns.CutArea.Value,
        patterns.Margin.Value,
        list(patterns.Patterns),
    )
    assert after == before
    assert {obj.Status for obj in stages.values()} == {"up to date"}
    assert not any("Touched" in obj.State for obj in document.Objects)


def test_what_was_previewed_is_taken_without_computing_it_again(job, monkeypatch):
    from laywright.stage import Stage

    document, stages = job
    patterns = stages["ClothPatterns"]
    form = opened(patterns)
    type_into(form, "Margin", "32 mm")
    state = form.findChild(QtWidgets.QLabel, "State")
    assert until(lambda: state.text().startswith("Preview"))
    computed, call = [], Stage.__call__
    monkeypatch.setattr(
        Stage, "__call__", lambda self, *a, **k: computed.append(self.title) or call(self, *a, **k)
    )
    buttons(form)["Ok"].click()
    assert until(lambda: not FreeCADGui.Control.activeDialog())
    assert "Cloth Patterns" not in computed
    assert "Roll Plan" in computed
    assert patterns.Margin.Value == 32.0
    assert {obj.Status for obj in stages.values()} == {"up to date"}
    document.undo()
    pump()
    assert patterns.Margin.Value == 20.0


def test_apply_and_ok_are_one_step_of_undo_each(job):
    document, stages = job
    check = stages["ReleaseCheck"]
    form = opened(check)
    for text in ("3", "5 deg"):
        type_into(form, "LeastDraft", text)
        buttons(form)["Apply"].click()
        pump()
        assert FreeCADGui.Control.activeDialog()
    type_into(form, "LeastDraft", "7,5")
    buttons(form)["Ok"].click()
    assert until(lambda: not FreeCADGui.Control.activeDialog())
    for value in (7.5, 5.0, 3.0, 2.0):
        assert check.LeastDraft.Value == pytest.approx(value)
        document.undo()
        pump()
    assert watch_of() is None


def test_cancel_while_a_panel_applies_leaves_the_panel_open_and_the_job_as_it_was(job, monkeypatch):
    import time

    from laywright.stage import Stage

    call = Stage.__call__

    def slowly(self, *args, **kwargs):
        for step in range(40 if self.title == "Mould Body" else 0):
            kwargs["progress"](step / 80, "waiting")
            time.sleep(0.05)
        return call(self, *args, **kwargs)

    _, stages = job
    body = stages["MouldBody"]
    before = (body.Digest, body.Volume.Value, body.BaseHeight.Value)
    monkeypatch.setattr(Stage, "__call__", slowly)
    form = opened(body)
    form.findChild(QtWidgets.QCheckBox).setChecked(False)
    type_into(form, "BaseHeight", "12 mm")
    later(lambda: watch_of().reject(), 1.0)
    buttons(form)["Ok"].click()
    pump()
    assert FreeCADGui.Control.activeDialog()
    assert form.findChild(QtWidgets.QLineEdit, "BaseHeight").text() == "12 mm"
    assert (body.Digest, body.Volume.Value, body.BaseHeight.Value) == before
    form.findChild(QtWidgets.QCheckBox).setChecked(True)
    buttons(form)["Cancel"].click()
    pump()
    assert (body.Digest, body.Volume.Value, body.BaseHeight.Value) == before
    assert body.Status == "up to date"


def test_a_value_that_an_expression_drives_is_shown_and_left_alone(job):
    document, stages = job
    body = stages["MouldBody"]
    body.setExpression("BaseHeight", "4mm + 5mm")
    document.recompute()
    form = opened(body)
    field = form.findChild(QtWidgets.QLineEdit, "BaseHeight")
    assert not field.isEnabled()
    assert field.toolTip().replace(" ", "") == "Follows:4mm+5mm"
    buttons(form)["Cancel"].click()
    pump()
    assert body.BaseHeight.Value == 9.0


def test_the_supplies_of_the_bench_are_chosen_from_their_cards(job, artefacts):
    _, stages = job
    sheet = stages["JobSheet"]
    form = opened(sheet)
    choice = form.findChild(QtWidgets.QComboBox, "PeelPly")
    assert [choice.itemText(k) for k in range(choice.count())] == [sheet.PeelPly]
    assert form.findChild(QtWidgets.QComboBox, "Wax").currentText() == "Paste wax for moulds"
    assert grabbed(form, artefacts / f"supplies of the bench {VERSION}.png") > 8
    buttons(form)["Cancel"].click()
    pump()
