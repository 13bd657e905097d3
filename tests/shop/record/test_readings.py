from __future__ import annotations

import pytest

from laywright.errors import InputError
from laywright.shop.record.readings import ClothReading, Readings
from laywright.values import pack, unpack

FULL = Readings(
    100.0,
    110.0,
    200.0,
    (0.7, 0.75),
    (ClothReading("linen", 1e5, 20.0),),
    trimmed_g=180.0,
    left_g=4.0,
    temperature_c=19.0,
    laying_minutes=70.0,
    gel_hours=9.0,
    demould_hours=33.0,
    date="2026-11-25",
    humidity=55.0,
    hardness=(81.0, 83.0),
    hardness_full=84.0,
    notes=("resin batch 17", "a leak at the left rear, mended"),
)


def test_readings_survive_storage():
    assert unpack(Readings, pack(FULL)) == FULL
    assert unpack(Readings, pack(Readings(1.0, 1.0, 1.5))) == Readings(1.0, 1.0, 1.5)


@pytest.mark.parametrize(
    ("changes", "where"),
    [
        ({"cloth_g": 0.0}, "weighed cloth"),
        ({"mix_g": float("nan")}, "weighed mix"),
        ({"thicknesses_mm": (0.7, 600.0)}, "measured thickness"),
        ({"trimmed_g": 201.0}, "weighed trimmed part"),
        ({"left_g": -1.0}, "weighed left-over mix"),
        ({"temperature_c": 68.0}, "temperature of the shop"),
        ({"laying_minutes": 0.0}, "time of laying"),
        ({"gel_hours": 0.0}, "time until gel"),
        ({"demould_hours": -2.0}, "time until demould"),
        ({"date": "25.11.2026"}, "date"),
        ({"humidity": 0.0}, "humidity of the shop"),
        ({"hardness": (80.0, 300.0)}, "hardness of the part"),
        ({"cloths": (ClothReading("linen", 0.0, 20.0),)}, "linen: area"),
    ],
)
def test_impossible_readings_are_named(changes, where):
    given = {name: getattr(FULL, name) for name in FULL.__dataclass_fields__} | changes
    with pytest.raises(InputError) as caught:
        Readings(**given)
    assert caught.value.where == where
