import math

import numpy as np
import pytest

from job_demo import hatch
from laywright.job import run
from laywright.job.pictures import ply_picture


def test_on_every_picture_the_datum_arrow_points_to_the_right_and_the_warp_is_turned():
    patterns = run(hatch()).patterns.patterns
    for pattern in patterns:
        drawing = ply_picture(pattern)
        shaft = [shape.points for shape in drawing.shapes if shape.layer == "datum"][1]
        assert np.allclose(shaft[0], 0.0)
        assert shaft[1][1] == pytest.approx(0.0, abs=1e-9)
        assert shaft[1][0] > 0.0
        yarn = next(shape.points for shape in drawing.shapes if shape.layer == "warp")
        along = (yarn[1] - yarn[0]) / np.linalg.norm(yarn[1] - yarn[0])
        assert math.degrees(math.atan2(along[1], along[0])) == pytest.approx(
            math.degrees(pattern.angle), abs=0.5
        )
        outline = drawing.shapes[0].points
        x, y = outline.T
        area = 0.5 * (x * np.roll(y, -1) - np.roll(x, -1) * y).sum()
        assert area == pytest.approx(pattern.area, rel=1e-6)
