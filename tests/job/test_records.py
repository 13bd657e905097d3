import dataclasses

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import FileError, InputError
from laywright.job.records import (
    Acceptance,
    RecordFile,
    accepted_like,
    cloth_readings,
    read_records,
    write_record,
)
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.shop.curing.cure_settings import CureSettings
from laywright.shop.mixing.mix import PlyCloth
from laywright.shop.plan import ShopSettings, plan_shop
from laywright.shop.record.record import Readings, weigh_in

MATERIALS = load_materials()
CLOTH = MATERIALS.cloth("E-glass twill weave 200 g/m^2")
LAMINATE = analyse(
    Layup((Ply(CLOTH, 0.0),) * 3, MATERIALS.resins["Laminating epoxy, slow hardener"])
)
SHOP = plan_shop(
    tuple(PlyCloth(n, CLOTH.name, 4e5, 200.0) for n in (1, 2, 3)),
    LAMINATE,
    ShopSettings(cure=CureSettings(mould_softening_c=70.0)),
)


def entry(part: float = 480.0, date: str = "2026-11-25", job: str = "Hatch cover") -> RecordFile:
    readings = Readings(SHOP.mix.cloth_g, 260.0, part, (0.75, 0.8), date=date)
    return RecordFile(
        job, "1a2b3c4d", Acceptance.ACCEPTED, readings, weigh_in(LAMINATE, SHOP, readings)
    )


def test_the_name_holds_the_date_and_the_job(tmp_path):
    path = write_record(entry(), tmp_path / "records")
    assert path.name == "weigh-in 2026-11-25 Hatch cover.json"
    assert read_records(path.parent) == (entry(),)


def test_nothing_is_overwritten_and_the_same_record_is_kept_once(tmp_path):
    first = write_record(entry(), tmp_path)
    assert write_record(entry(), tmp_path) == first
    second = write_record(entry(470.0), tmp_path)
    assert second.name == "weigh-in 2026-11-25 Hatch cover 2.json"
    assert set(read_records(tmp_path)) == {entry(), entry(470.0)}


@given(job=st.text(min_size=1, max_size=40))
def test_a_record_of_any_job_comes_back(job, tmp_path_factory):
    folder = tmp_path_factory.mktemp("records")
    write_record(entry(job=job), folder)
    (back,) = read_records(folder)
    assert back == entry(job=job)


def test_damage_is_named(tmp_path):
    path = write_record(entry(), tmp_path)
    path.write_text(path.read_text().replace('"part_g"', '"part"'))
    with pytest.raises(FileError, match="weigh-in 2026-11-25 Hatch cover"):
        read_records(tmp_path)
    for other in ("{}", '{"format": "something else"}', "[1]", "half of {"):
        path.write_text(other)
        with pytest.raises(FileError, match="take it out of the folder"):
            read_records(tmp_path)


def test_a_folder_that_is_a_file_is_refused(tmp_path):
    (tmp_path / "file").write_text("mine")
    with pytest.raises(FileError):
        write_record(entry(), tmp_path / "file")
    assert (tmp_path / "file").read_text() == "mine"
    assert dataclasses.replace(entry(), job="other") != entry()


def test_only_accepted_parts_of_the_same_process_teach():
    good, bad = entry(), dataclasses.replace(entry(470.0), acceptance=Acceptance.REJECTED)
    hand = dataclasses.replace(good, process="hand")
    assert accepted_like([good, bad, hand], "hand") == (hand.record,)
    assert accepted_like([bad], "") == ()


def test_weighed_pieces_take_their_areas_from_the_plan():
    pieces = [PlyCloth(n, CLOTH.name, 1e5 * n, 200.0) for n in (1, 2)]
    assert [(r.area_mm2, r.mass_g) for r in cloth_readings(pieces, [20.1, 40.3])] == [
        (1e5, 20.1),
        (2e5, 40.3),
    ]
    assert cloth_readings(pieces, []) == ()
    with pytest.raises(InputError, match="one for each of the 2 pieces"):
        cloth_readings(pieces, [20.1])
