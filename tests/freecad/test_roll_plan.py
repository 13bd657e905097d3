"""The Roll Plan in FreeCAD: cloth at hand as properties, what to buy and how to cut as reports."""

TWILL = "E-glass twill weave 200 g/m^2"


def test_cloth_at_hand_and_what_is_to_be_bought(hatch):
    document, _, stages = hatch
    plan = stages["RollPlan"]
    first = plan.ToBuy.Value
    assert first > 0.0
    assert first % 100.0 == 0.0
    assert len(plan.CutList) == len(stages["ClothPatterns"].Patterns)
    assert "of 20 mm tape" in plan.EdgeTape[0]
    plan.Offcuts = [f"{TWILL}: 2 m x 900 mm"]
    plan.Widths = [f"{TWILL}: 1.27 m"]
    document.recompute()
    assert plan.isValid(), plan.Status
    assert plan.Rolls[0].startswith(f"offcut 1 of {TWILL}: 2.00 m of 0.90 m")
    assert plan.ToBuy.Value < first
    assert plan.LeftOver


def test_several_parts_faults_and_words_about_them(hatch):
    document, _, stages = hatch
    plan = stages["RollPlan"]
    alone = len(plan.CutList)
    plan.Parts = 2
    plan.Faults = [f"{TWILL}: 100 mm to 130 mm"]
    document.recompute()
    assert plan.isValid(), plan.Status
    assert len(plan.CutList) == 2 * alone
    assert "for one part" in plan.Remarks[0]


def test_a_slip_is_said_in_one_sentence(hatch):
    document, _, stages = hatch
    plan = stages["RollPlan"]
    plan.Offcuts = ["a bit of glass"]
    document.recompute()
    assert "cloth: length along the warp x width" in plan.Status


def test_a_margin_of_one_side_makes_larger_patterns(hatch):
    document, _, stages = hatch
    patterns = stages["ClothPatterns"]
    area, tapes = patterns.CutArea.Value, stages["RollPlan"].EdgeTape
    patterns.SideMargins = ["ahead: 60 mm"]
    document.recompute()
    assert patterns.isValid(), patterns.Status
    assert patterns.CutArea.Value > area
    assert stages["RollPlan"].EdgeTape != tapes
    patterns.SideMargins = ["above: 60 mm"]
    document.recompute()
    assert "the side 'above'" in patterns.Status
