import io

import numpy as np
from reportlab.pdfgen.canvas import Canvas

from laywright.files.drawing import Drawing, Label, Line
from laywright.files.painter import mm, paint, write
from pdf_reading import lines_of, pages_of, texts_of

FLAG = np.array([[0, 0], [100, 0], [100, 20], [20, 20], [20, 60], [0, 60]], float)


def _page(draw):
    buffer = io.BytesIO()
    canvas = Canvas(buffer, pagesize=(200 * mm, 200 * mm), invariant=1)
    draw(canvas)
    canvas.showPage()
    canvas.save()
    return buffer.getvalue()


def test_lines_lie_where_they_should_in_millimetres():
    written = _page(lambda canvas: paint(canvas, Drawing("f", (Line("cut", FLAG, True),)), 30, 40))
    lines = lines_of(pages_of(written)[0])
    expected = np.stack([FLAG, np.roll(FLAG, -1, axis=0)], axis=1) + np.array([30, 40])
    assert np.allclose(lines, expected, atol=1e-3)


def test_labels_are_text():
    written = _page(lambda canvas: paint(canvas, Drawing("f", (Label("t", "WARP č", (50, 50)),))))
    assert texts_of(written) == ["WARP c"]


def test_a_long_line_is_cut_short_to_its_room():
    written = _page(lambda canvas: write(canvas, "word " * 60, 10, 10, 4.0, room=80.0))
    (text,) = texts_of(written)
    assert text.endswith("…")
    assert 10 < len(text) < 40
