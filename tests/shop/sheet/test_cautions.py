from job_sheet_demo import inputs, texts_on
from laywright.shop.sheet import cautions
from laywright.shop.sheet.traveller import make_sheet


def test_every_caution_is_printed_somewhere():
    made = make_sheet(**inputs())
    printed = set(texts_on(tuple(station.cautions for station in made.sheet.stations)))
    for name in set(cautions.__all__) - {"ESTIMATES"}:
        assert set(getattr(cautions, name)) <= printed
