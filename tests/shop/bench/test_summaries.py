import numpy as np

from job_sheet_demo import inputs
from laywright import values
from laywright.shop.bench.roll_summary import RollLine
from laywright.shop.bench.summaries import (
    LaminateSummary,
    PartSummary,
    PatternLine,
    ReleaseSummary,
    TileSummary,
)


def test_every_summary_survives_storage():
    given = inputs()
    for name, kind in (
        ("part", PartSummary),
        ("release", ReleaseSummary),
        ("laminate", LaminateSummary),
        ("tiles", TileSummary),
    ):
        stored = values.unpack(kind, values.pack(given[name]))
        assert values.digest(stored) == values.digest(given[name])
    for line, kind in ((given["patterns"][0], PatternLine), (given["rolls"][0], RollLine)):
        stored = values.unpack(kind, values.pack(line))
        assert values.digest(stored) == values.digest(line)
        assert np.array_equal(stored.drawing.shapes[0].points, line.drawing.shapes[0].points)
