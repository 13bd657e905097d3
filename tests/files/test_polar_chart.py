from __future__ import annotations

import math

import numpy as np
import pytest

from laywright.errors import InputError
from laywright.files.charts import Curve
from laywright.files.drawing import Label, Line
from laywright.files.polar_chart import polar_chart

TURN = np.linspace(0.0, 2.0 * math.pi, 73)


def curve(values, name="stiffness"):
    return Curve(name, np.column_stack([TURN, np.broadcast_to(values, TURN.shape)]))


def test_values_lie_at_their_ring_and_direction():
    drawing = polar_chart("all round", "GPa", [curve(20.0)], radius=30.0)
    rings = [s for s in drawing.shapes if isinstance(s, Line) and s.closed]
    radii = sorted({round(float(np.linalg.norm(ring.points[0])), 6) for ring in rings})
    numbers = [
        float(s.text)
        for s in drawing.shapes
        if isinstance(s, Label) and s.text.replace(".", "").isdigit()
    ]
    assert radii == pytest.approx([30.0 * number / max(numbers) for number in sorted(numbers)])
    line, _key = [s for s in drawing.shapes if isinstance(s, Line) and s.layer == "curve 1"]
    radius = np.linalg.norm(line.points, axis=1)
    assert radius == pytest.approx(np.full(len(TURN), 30.0 * 20.0 / max(numbers)))
    assert line.points[18] == pytest.approx([0.0, radius[0]], abs=1e-9)  # a quarter turn is up


def test_curves_are_told_apart_by_dashes_and_named_with_their_unit():
    drawing = polar_chart("all round", "GPa", [curve(1.0, "pulled"), curve(2.0, "bent")])
    assert drawing.styles["curve 1"].dashes != drawing.styles["curve 2"].dashes
    texts = {s.text for s in drawing.shapes if isinstance(s, Label)}
    assert {"pulled, GPa", "bent, GPa", "90°", "270°"} <= texts
    assert "0°" not in texts


@pytest.mark.parametrize("bad", [[], [Curve("x", [[0.0, math.nan], [1.0, 1.0]])], [curve(-1.0)]])
def test_no_curve_and_bad_values_are_refused(bad):
    with pytest.raises(InputError, match="no curve"):
        polar_chart("all round", "GPa", bad)
