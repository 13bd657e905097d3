"""Weigh-in and what it teaches, in a real document."""

import FreeCAD
import pytest

from freecad.laywright.lessons import lessons_for, take
from freecad.laywright.objects.job import add_stage
from freecad.laywright.objects.orphans import adopt
from freecad.laywright.objects.weigh_in import NOT_WEIGHED, keep_record, record_file
from laywright.errors import InputError
from laywright.job.records import Acceptance, read_records

pytestmark = pytest.mark.freecad

GOOD, OPEN = Acceptance.ACCEPTED.value, Acceptance.OPEN.value


def weighed(document, job, stages, share=0.46, date="2026-11-25"):
    """A Weigh-in of a part that holds this share of resin; invented."""
    obj = add_stage(document, "WeighIn", job)
    mix = stages["MixCurePlan"]
    obj.Date = date
    obj.DryCloth = mix.ClothMass
    obj.PartUntrimmed = mix.ClothMass / (1.0 - share)
    obj.MixMade = 1.12 * (obj.PartUntrimmed - obj.DryCloth)
    document.recompute()
    return obj


def test_before_anything_is_weighed_it_says_so_and_nothing_fails(hatch):
    document, job, stages = hatch
    obj = add_stage(document, "WeighIn", job)
    document.recompute()
    assert obj.isValid()
    assert obj.Status == NOT_WEIGHED
    assert obj.Sheet is stages["JobSheet"]
    assert len(obj.Date) == 10
    with pytest.raises(InputError, match="not weighed yet"):
        record_file(obj)


def test_the_readings_give_the_share_of_resin_and_the_verdict(hatch):
    document, job, stages = hatch
    obj = weighed(document, job, stages)
    assert obj.Status == "up to date"
    assert obj.ResinShare == pytest.approx(46.0)
    assert obj.Verdict.startswith("within the band")
    assert obj.Version == stages["JobSheet"].Version
    planned = stages["Layup"].Proxy.kept(stages["Layup"])
    obj.Thicknesses = [planned.thickness] * 5
    obj.PartUntrimmed = 2.0 * stages["MixCurePlan"].ClothMass
    obj.MixMade = 1.1 * obj.DryCloth
    document.recompute()
    assert obj.FibreByMass == pytest.approx(obj.FibreByThickness, rel=1e-6)
    assert obj.Voids == pytest.approx(0.0, abs=1e-6)


def test_pieces_are_weighed_one_by_one(hatch):
    document, job, stages = hatch
    obj = weighed(document, job, stages)
    pieces = stages["ClothPatterns"].Proxy.kept(stages["ClothPatterns"]).patterns
    obj.DryCloth = 0.0
    obj.PieceMasses = [pattern.area * 210e-6 for pattern in pieces]
    document.recompute()
    (cloth,) = obj.Cloths
    assert cloth.endswith("210 weighed, 200 on its card")
    obj.PieceMasses = [30.0]
    document.recompute()
    assert not obj.isValid()
    assert "one for each of the 3 pieces" in obj.Status


def test_a_part_that_was_accepted_keeps_the_plan_of_its_day(hatch, tmp_path):
    document, job, stages = hatch
    obj = weighed(document, job, stages)
    obj.Acceptance = GOOD
    document.recompute()
    before = (obj.Digest, obj.Version, obj.ResinShare, list(obj.Planned))
    stages["ClothPatterns"].Margin = "40 mm"
    document.recompute()
    assert stages["JobSheet"].Version != obj.Version
    assert (obj.Digest, obj.Version, obj.ResinShare, list(obj.Planned)) == before
    assert obj.Status == "up to date"
    name = obj.Name
    document.saveAs(str(tmp_path / "weighed.FCStd"))
    FreeCAD.closeDocument(document.Name)
    again = FreeCAD.openDocument(str(tmp_path / "weighed.FCStd")).getObject(name)
    assert (again.Digest, again.Version) == before[:2]
    again.touch()
    again.Document.recompute()
    assert (again.Digest, again.Version) == before[:2]
    assert record_file(again).acceptance is Acceptance.ACCEPTED


def test_a_mistyped_weight_is_one_sentence_and_nothing_is_lost(hatch):
    document, job, stages = hatch
    obj = weighed(document, job, stages)
    version = obj.Digest
    obj.PartUntrimmed = 10.0 * obj.PartUntrimmed
    document.recompute()
    assert not obj.isValid()
    assert "went in" in obj.Status
    assert "\n" not in obj.Status
    assert obj.Digest == version
    obj.PartUntrimmed = 0.1 * obj.PartUntrimmed
    document.recompute()
    assert obj.isValid()


def test_records_are_dated_files_that_teach_the_next_plan(hatch, tmp_path):
    document, job, stages = hatch
    plan, layup = stages["MixCurePlan"], stages["Layup"]
    assert lessons_for(job, tmp_path).lessons == ()
    one = weighed(document, job, stages, 0.44, "2026-11-24")
    two = weighed(document, job, stages, 0.46, "2026-11-25")
    for obj in (one, two):
        obj.Acceptance = GOOD
    document.recompute()
    path = keep_record(two, tmp_path)
    assert path.name == "weigh-in 2026-11-25 Hatch cover.json"
    assert two.File == str(path)
    (entry,) = read_records(tmp_path)
    assert entry == record_file(two)
    assert entry.version == stages["JobSheet"].Version

    learnt = lessons_for(job, tmp_path)
    assert learnt.resin_share.records.count == 2, "one is in the file as well as in the document"
    assert learnt.resin_share.proposed == pytest.approx(45.0)
    assert learnt.extra_share.proposed == pytest.approx(12.0)
    assert (plan.ExtraShare, layup.ResinShare) == (5, 0), "nothing is taken by itself"
    take(job, learnt, ["extra_share"])
    document.recompute()
    assert (plan.ExtraShare, layup.ResinShare) == (12, 0)
    take(job, learnt, ["resin_share"])
    document.recompute()
    assert layup.ResinShare == 45
    assert one.Status == "up to date"
    assert one.ResinShare == pytest.approx(44.0)
    with pytest.raises(InputError):
        take(job, learnt, ["ply_minutes"])


def test_only_accepted_parts_teach(hatch, tmp_path):
    document, job, stages = hatch
    obj = weighed(document, job, stages)
    assert lessons_for(job, tmp_path).resin_share is None
    obj.Acceptance = Acceptance.REJECTED.value
    document.recompute()
    assert lessons_for(job, tmp_path).resin_share is None


def test_saved_without_the_workbench_it_is_taken_up_again(hatch):
    document, job, stages = hatch
    obj = weighed(document, job, stages)
    before = (obj.Digest, obj.Verdict, obj.Date)
    obj.Proxy = None
    assert adopt(document) == [obj]
    document.recompute()
    assert (obj.Digest, obj.Verdict, obj.Date) == before
    assert record_file(obj).job == stages["JobSheet"].Title


def test_coupons_beside_the_part_reach_cups_and_sheet(hatch):
    document, _, stages = hatch
    plan, sheet = stages["MixCurePlan"], stages["JobSheet"]
    mixed = plan.ResinMass + plan.HardenerMass
    pages = len(sheet.Proxy.kept(sheet).sheet.stations)
    plan.Coupons = 5
    document.recompute()
    coupons = plan.Proxy.kept(plan).coupons
    assert plan.ResinMass + plan.HardenerMass >= mixed + coupons.resin_g - 2.0
    titles = [station.title for station in sheet.Proxy.kept(sheet).sheet.stations]
    assert len(titles) == pages + 1
    assert "Coupons" in titles
