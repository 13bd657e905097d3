import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from lxml import etree

from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.svg import svg_bytes, svg_element

NS = "{http://www.w3.org/2000/svg}"
FLAG = np.array([[0, 0], [100, 0], [100, 20], [20, 20], [20, 60], [0, 60]], float)


def _drawing(*shapes, **styles):
    return Drawing("flag", shapes, styles)


def _points(path):
    numbers = path.get("d").replace("M", "").replace("Z", "").split("L")
    return np.array([[float(v) for v in pair.split()] for pair in numbers])


def test_lengths_are_true_and_y_is_turned_once():
    root = etree.fromstring(svg_bytes(_drawing(Line("cut", FLAG, True), cut=Style(0.5))))
    box = [float(v) for v in root.get("viewBox").split()]
    assert root.get("width") == f"{box[2]:g}mm"
    assert root.get("height") == f"{box[3]:g}mm"
    points = _points(root.find(f".//{NS}path"))
    expected = (FLAG - FLAG[0]) * [1, -1]
    assert np.allclose(points - points[0], expected, atol=1e-4)
    assert points.min() >= 0.0
    assert (points <= np.array(box[2:])).all()


def test_text_is_never_mirrored_and_turns_counter_clockwise():
    label = Label("text", "WARP", (50.0, 30.0), 7.18, np.pi / 6)
    root = etree.fromstring(svg_bytes(_drawing(Line("cut", FLAG, True), label)))
    text = root.find(f".//{NS}text")
    turn = text.get("transform")
    assert turn.startswith("rotate(-30 ")
    assert "scale" not in svg_bytes(_drawing(label)).decode()
    assert float(text.get("font-size")) == pytest.approx(10.0)
    x, y = (float(v) for v in turn[len("rotate(-30 ") : -1].split())
    corner = _points(root.find(f".//{NS}path"))[0]
    assert [x - corner[0], corner[1] - y] == pytest.approx([50.0, 30.0])
    assert float(text.get("y")) - y == pytest.approx(0.5 * 7.18)


def test_layers_keep_their_order_pen_and_fill():
    drawing = _drawing(
        Line("cut", FLAG, True, (0.8, 0.8, 0.8)),
        Line("notch", FLAG[:2]),
        Line("cut", FLAG[1:3]),
        cut=Style(0.5, (), (1.0, 0.0, 0.0)),
        notch=Style(0.2, (4.0, 2.0)),
    )
    groups = etree.fromstring(svg_bytes(drawing)).findall(f"{NS}g")
    assert [g.get("data-layer") for g in groups] == ["cut", "notch", "cut"]
    assert [g.get("stroke") for g in groups] == ["#ff0000", "#000000", "#ff0000"]
    assert groups[1].get("stroke-dasharray") == "4 2"
    assert groups[0][0].get("fill") == "#cccccc"
    assert groups[2][0].get("fill") is None


@given(st.text(max_size=40))
def test_hostile_names_are_text_and_nothing_else(text):
    drawing = Drawing(text, (Line(text, FLAG), Label(text, text, (0.0, 0.0))))
    root = etree.fromstring(svg_bytes(drawing))
    assert {element.tag for element in root.iter()} == {
        f"{NS}{tag}" for tag in ("svg", "title", "g", "path", "text")
    }


def test_script_in_a_name_stays_text():
    name = '"/><script>alert(1)</script>'
    root = etree.fromstring(svg_bytes(Drawing(name, (Label(name, name, (0.0, 0.0)),))))
    assert root.find(f"{NS}title").text == name
    assert root.find(f".//{NS}text").text == name


def test_an_empty_drawing_is_a_drawing_of_some_size():
    root = etree.fromstring(svg_element(Drawing("nothing", ())))
    assert root.get("viewBox") == "0 0 1 1"
