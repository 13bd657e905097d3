import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.errors import InputError
from laywright.files.charts import Curve, Level, line_chart, round_steps
from laywright.files.drawing import Label, Line
from laywright.files.lettering import width_of

CURE = np.array([[0.0, 20.0], [12.0, 20.0], [15.0, 50.0], [31.0, 50.0]])


def _on(drawing, layer):
    return [s for s in drawing.shapes if s.layer == layer and isinstance(s, Line)]


def test_points_stand_where_the_axes_say():
    chart = line_chart(
        "cure", "time, h", "temperature, °C", [Curve("oven", CURE)], size=(120.0, 60.0)
    )
    (line,) = _on(chart, "curve 1")
    labels = {s.text: s.at for s in chart.shapes if isinstance(s, Label)}
    start, ten = labels["0"][0], labels["10"][0]
    assert line.points[1, 0] == pytest.approx(start + (ten - start) * 1.2)
    forty, fifty = labels["40"][1], labels["50"][1]
    assert line.points[2, 1] == pytest.approx(fifty)
    assert line.points[0, 1] == pytest.approx(forty - 2.0 * (fifty - forty))


def test_levels_and_marks_lie_on_the_scale_of_their_axis():
    chart = line_chart(
        "cure",
        "time, h",
        "temperature, °C",
        [Curve("oven", CURE)],
        [Level("mould", 50.0)],
        [Level("gel", 15.0)],
    )
    curve = _on(chart, "curve 1")[0]
    level, mark, key = _on(chart, "level")
    assert level.points[:, 1] == pytest.approx(curve.points[2, 1])
    assert mark.points[:, 0] == pytest.approx(curve.points[2, 0])
    assert key.points[:, 1].min() > curve.points[:, 1].max()


def test_no_name_lies_in_the_field_or_on_the_line_of_another_mark():
    """Names of marks in any order; every name clears the field, every upright line and name."""
    marks = [Level("off the mould", 24.4), Level("gelled", 6.5), Level("too hard", 24.0)]
    chart = line_chart(
        "cure", "t, h", "T, °C", [Curve("oven", CURE)], [Level("limit", 45.0)], marks, size=(90, 40)
    )
    names = {mark.name for mark in marks}
    boxes = []
    for label in (s for s in chart.shapes if isinstance(s, Label) and s.text in names):
        wide, high = 0.5 * width_of(label.text, label.height), 0.5 * label.height
        x, y = label.at
        boxes.append((x - wide, x + wide, y - high, y + high))
    upright = [s.points for s in _on(chart, "level") if np.ptp(s.points[:, 0]) == 0.0]
    assert len(boxes) == len(upright) == 3
    for left, right, low, high in boxes:
        assert low >= 40.0
        for line in upright:
            crosses = left < line[0, 0] < right and line[:, 1].max() > low
            assert not crosses
        others = [box for box in boxes if box != (left, right, low, high)]
        assert all(box[3] <= low or box[2] >= high for box in others)


def test_axes_carry_their_units_and_curves_differ_without_colour():
    chart = line_chart(
        "cure", "time, h", "temperature, °C", [Curve("a", CURE), Curve("b", CURE + 1)]
    )
    texts = {s.text for s in chart.shapes if isinstance(s, Label)}
    assert {"time, h", "temperature, °C", "a", "b"} <= texts
    assert chart.styles["curve 1"].dashes != chart.styles["curve 2"].dashes


@given(st.floats(-1e4, 1e4), st.floats(1e-3, 1e5))
def test_round_steps_hold_the_range(low, reach):
    steps = round_steps(low, low + reach)
    gaps = np.diff(steps)
    assert steps[0] <= low + 1e-6 * reach
    assert steps[-1] >= low + reach * (1 - 1e-6)
    assert 2 <= len(steps) <= 9
    assert np.allclose(gaps, gaps[0])


def test_a_flat_line_has_a_scale_and_nothing_is_refused():
    flat = line_chart("flat", "t, h", "T, °C", [Curve("a", [[0, 21], [5, 21]])])
    assert np.isfinite(flat.bounds).all()
    for points in ([], [[0, 1]], [[0, 1], [1, np.nan]]):
        with pytest.raises(InputError):
            line_chart("x", "t", "T", [Curve("a", np.array(points).reshape(-1, 2))])


def test_dots_lie_at_their_values_and_widen_the_axes():
    cloud = Curve("tried", [[2.0, 30.0], [8.0, 90.0]])
    chart = line_chart("x", "t", "T", [Curve("a", [[0, 21], [5, 21]])], dots=[cloud])
    crosses = [s for s in chart.shapes if isinstance(s, Line) and s.layer == "dot"]
    middles = np.array([cross.points.mean(axis=0) for cross in crosses[::2]])
    run = middles[1] - middles[0]
    steps = {float(s.text) for s in chart.shapes if isinstance(s, Label) and s.text.isdigit()}
    assert {0.0, 8.0, 100.0} <= steps
    assert len(crosses) == 4
    assert (run > 0.0).all()
    (line,) = [s for s in chart.shapes if isinstance(s, Line) and s.layer == "curve 1"]
    scale = line.points[1, 0] / 5.0
    assert run[0] == pytest.approx(6.0 * scale)
