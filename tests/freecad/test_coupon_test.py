"""Coupon Test in a real document: plan, readings with their units, card."""

import FreeCAD
import pytest

from freecad.laywright.objects.coupon_test import (
    add_coupon,
    remove_coupon,
    resize_coupon,
    take_measured,
)
from freecad.laywright.objects.job import add_stage
from laywright.errors import FileError, InputError, MaterialError
from laywright.laminate.materials import load_materials
from laywright.shop.coupons.coupon import Ending
from laywright.shop.coupons.coupon_records import ReadingColumns

pytestmark = pytest.mark.freecad

GRAVITY = 9.80665


@pytest.fixture
def test(doc):
    """Return a Coupon Test of eight plies along the arrow."""
    layup = add_stage(doc, "Layup")
    layup.Cloths = ["E-glass twill weave 200 g/m^2"] * 8
    layup.Angles = [0.0] * 8
    layup.Resin = "Laminating epoxy, slow hardener"
    obj = add_stage(doc, "CouponTest")
    obj.Layup = layup
    obj.Date = "2026-11-25"
    doc.recompute()
    assert obj.isValid(), obj.Status
    return obj


def modulus(obj):
    return obj.Modulus.getValueAs("MPa").Value


def hung(obj, factor=1.0):
    """Readings of a coupon with this many times the predicted modulus; invented."""
    plan = obj.Proxy.kept(obj).plan
    lines = [
        f"{step.mass_g:g}; {step.deflection / factor:.4f}".replace(".", ",") for step in plan.steps
    ]
    return ("weight (g); deflection (mm)\n0; 0\n" + "\n".join(lines)).encode()


def size(obj):
    plan = obj.Proxy.kept(obj).plan
    return plan.width, plan.thickness, plan.span


def test_the_plan_comes_first(test):
    assert test.Modulus.Value == 0.0
    assert test.Tested == []
    assert any("supports" in line for line in test.Plan)
    assert any("same cup" in line for line in test.Remarks)
    test.Span = "40 times the thickness (ISO 14125, carbon)"
    test.Document.recompute()
    assert test.Plan[1] == "supports 81 mm apart"
    assert 4 <= len(test.Plan) - 3 <= 9, "weights hung on one after the other"


def test_weights_hung_by_hand_give_the_modulus(test, tmp_path):
    for number, factor in enumerate((0.99, 1.0, 1.01), 1):
        add_coupon(test, hung(test, factor), f"B{number}", *size(test))
    test.Document.recompute()
    assert len(test.Tested) == 3
    assert modulus(test) == pytest.approx(test.Proxy.kept(test).plan.modulus, rel=2e-3)
    assert "within 15%" in test.Remarks[0]
    assert test.Strength.Value == 0.0

    name = test.Name
    test.Document.saveAs(str(tmp_path / "coupons.FCStd"))
    FreeCAD.closeDocument(test.Document.Name)
    again = FreeCAD.openDocument(str(tmp_path / "coupons.FCStd"))
    kept = again.getObject(name)
    assert kept.Proxy.coupons(kept).names == ("B1", "B2", "B3")
    remove_coupon(kept, "B2")
    again.recompute()
    assert [line.split(":")[0] for line in kept.Tested] == ["B1", "B3"]
    FreeCAD.closeDocument(again.Name)


def test_a_machine_in_inches_and_pounds_is_asked_for_its_units(test):
    """The same coupon in inches and pounds of force; words stand before the numbers."""
    plan = test.Proxy.kept(test).plan
    rows = "\n".join(
        f"{step.deflection / 25.4:.8f},{step.mass_g * GRAVITY / 1000.0 / 4.4482216152605:.8f}"
        for step in plan.steps
    )
    bare = f"Operator,A\nSpecimen,7\ntravel,load\n0,0\n{rows}\n".encode()
    with pytest.raises(InputError, match="unit of the force: found nothing"):
        add_coupon(test, bare, "M1", *size(test), where="export.csv")
    assert test.Proxy.coupons(test).names == ()
    units = ReadingColumns(force_unit="lbf", travel_unit="in")
    add_coupon(test, bare, "M1", *size(test), columns=units)
    test.Document.recompute()
    assert modulus(test) == pytest.approx(plan.modulus, rel=1e-4)


def test_what_cannot_be_read_is_one_sentence_and_the_coupons_stay(test):
    add_coupon(test, hung(test), "B1", *size(test))
    table = hung(test).decode().splitlines()
    broken = "\n".join([*table[:4], "second test", *table[4:]]).encode()
    with pytest.raises(FileError, match="line 5"):
        add_coupon(test, broken, "B2", *size(test), where="two.csv")
    with pytest.raises(InputError, match="a name that is taken"):
        add_coupon(test, hung(test), "B1", *size(test))
    with pytest.raises(InputError, match="no span"):
        add_coupon(test, hung(test), "B2", *size(test)[:2])
    assert test.Proxy.coupons(test).names == ("B1",)


def test_the_measured_modulus_goes_onto_a_card_with_its_count(test, tmp_path):
    for number in range(1, 6):
        add_coupon(test, hung(test, 0.9), f"B{number}", *size(test))
    test.Document.recompute()
    path = take_measured(test, tmp_path / "cards", "modulus")
    text = path.read_text(encoding="utf-8")
    assert "5 coupons" in text
    assert "2026-11-25" in text
    fibre = load_materials(path.parent).fibre("E-glass")
    assert fibre.axial_modulus < load_materials().fibre("E-glass").axial_modulus
    with pytest.raises(InputError, match="one in tension"):
        take_measured(test, tmp_path, "strength")
    remove_coupon(test, "B1")
    with pytest.raises((InputError, MaterialError)):
        take_measured(test, tmp_path, "strength")


def test_only_what_broke_has_a_strength(test):
    for number, factor in enumerate((0.98, 0.99, 1.0, 1.01, 1.02), 1):
        broken = {"ending": Ending.BROKEN} if number > 2 else {}
        add_coupon(test, hung(test, factor), f"B{number}", *size(test), **broken)
    test.Document.recompute()
    assert sum("broke at" in line for line in test.Tested) == 3
    assert test.Strength.Value > 0.0
    assert test.BBasis.Value == 0.0
    assert any("3 coupons are too few" in line for line in test.Remarks)


def test_a_thickness_is_corrected_in_place(test):
    """The stiffness of a strip grows with the cube of its thickness, its modulus falls so."""
    add_coupon(test, hung(test), "B1", *size(test))
    test.Document.recompute()
    before, thick = modulus(test), size(test)[1]
    resize_coupon(test, "B1", thickness=1.1 * thick)
    test.Document.recompute()
    assert modulus(test) == pytest.approx(before / 1.1**3, rel=5e-3)
    with pytest.raises(InputError, match="coupon B1: width"):
        resize_coupon(test, "B1", width=0.1)
    assert test.Proxy.coupons(test).bent[0].thickness == pytest.approx(1.1 * thick)
