"""Files against the published descriptions of their formats."""

from __future__ import annotations

import io
import os
import subprocess
import sys
import zipfile
from pathlib import Path

import ezdxf
import numpy as np
import pytest
import trimesh
from lxml import etree

import shapes
from checks import reference
from laywright.errors import GeometryError
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.dxf import dxf_bytes
from laywright.files.solid import Solid
from laywright.files.stl import stl_bytes
from laywright.files.svg import svg_bytes
from laywright.files.threemf import three_mf_bytes

CORE = "{http://schemas.microsoft.com/3dmanufacturing/core/2015/02}"


def _values(identity: str) -> dict[str, object]:
    return {item["name"]: item["value"] for item in reference.row(identity)["expected"]}


def _solid(name, surface, transform=None):
    return Solid(name, surface.vertices, surface.triangles, transform)


def _package(*solids):
    return zipfile.ZipFile(io.BytesIO(three_mf_bytes(solids, "check")))


def test_fmt_01_package():
    values = _values("FMT-01")
    archive = _package(_solid("box", shapes.box(120, 80, 50)))
    names = archive.namelist()
    assert {entry.compress_type for entry in archive.infolist()} <= {0, 8}
    assert {"[Content_Types].xml", "_rels/.rels"} <= set(names)
    (model_part,) = (name for name in names if name.endswith(".model"))

    types = etree.fromstring(archive.read("[Content_Types].xml"))
    by_ending = {entry.get("Extension"): entry.get("ContentType") for entry in types}
    relation = etree.fromstring(archive.read("_rels/.rels"))[0]
    assert relation.get("Target") == f"/{model_part}"
    text = archive.read(model_part)
    root = etree.fromstring(text)
    assert b"<!DOCTYPE" not in text
    assert text.startswith(b'<?xml version="1.0" encoding="UTF-8"?>')

    mesh = root.find(f"{CORE}resources/{CORE}object/{CORE}mesh")
    points = np.array([[float(v.get(a)) for a in "xyz"] for v in mesh[0]])
    faces = np.array([[int(t.get(f"v{k}")) for k in (1, 2, 3)] for t in mesh[1]])
    body = trimesh.Trimesh(points, faces, process=False)
    reference.agree(
        "FMT-01",
        {
            "model_content_type": by_ending["model"],
            "startpart_relationship": relation.get("Type"),
            "model_namespace": etree.QName(root).namespace,
            "root_tag_ok": root.tag == f"{CORE}model",
            "unit_default": root.get("unit"),
            "box_volume": float(body.volume),
            "watertight_outward": bool(body.is_watertight and body.volume > 0),
        },
        without=("zip_compression", "required_parts"),  # lists of choices, held above
    )
    assert values["required_parts"][:2] == ["[Content_Types].xml", "_rels/.rels"]


def _mesh_rule():
    root = etree.fromstring(
        _package(_solid("ball", shapes.sphere(20, 12))).read("3D/3dmodel.model")
    )
    entry = root.find(f"{CORE}resources/{CORE}object")
    assert entry.get("type") == "model"
    faces = np.array([[int(t.get(f"v{k}")) for k in (1, 2, 3)] for t in entry[0][1]])
    points = np.array([[float(v.get(a)) for a in "xyz"] for v in entry[0][0]])
    assert len(faces) >= 4
    assert faces.min() == 0
    assert faces.max() == len(points) - 1
    assert (np.sort(faces, axis=1)[:, 1:] > np.sort(faces, axis=1)[:, :-1]).all()
    way = np.stack([faces, np.roll(faces, -1, axis=1)], axis=2).reshape(-1, 2)
    assert len({tuple(w) for w in way.tolist()}) == len(way)
    assert {tuple(w) for w in way.tolist()} == {tuple(w[::-1]) for w in way.tolist()}
    assert trimesh.Trimesh(points, faces, process=False).volume > 0
    box = shapes.box(1, 1, 1)
    for wrong in (box.triangles[:, ::-1], box.triangles[1:], box.triangles[:3]):
        with pytest.raises(GeometryError):
            three_mf_bytes([Solid("wrong", box.vertices, wrong)])


def _transform_rule():
    turn = np.array([[0, -1, 0, 70], [1, 0, 0, 5], [0, 0, 1, 3], [0, 0, 0, 1]], float)
    solid = _solid("box", shapes.box(10, 20, 30), turn)
    root = etree.fromstring(_package(solid).read("3D/3dmodel.model"))
    text = root.find(f"{CORE}build/{CORE}item").get("transform")
    assert text == "0 1 0 -1 0 0 0 0 1 70 5 3"
    m = np.array(text.split(), float).reshape(4, 3)
    rows = np.column_stack([solid.vertices, np.ones(8)]) @ m
    assert np.allclose(rows, solid.placed)


def _build_rule():
    shifted = np.eye(4)
    shifted[:3, 3] = -500.0
    root = etree.fromstring(
        _package(_solid("a", shapes.box(1, 2, 3)), _solid("b", shapes.box(3, 2, 1), shifted)).read(
            "3D/3dmodel.model"
        )
    )
    objects = root.findall(f"{CORE}resources/{CORE}object")
    items = root.findall(f"{CORE}build/{CORE}item")
    assert [o.get("id") for o in objects] == [i.get("objectid") for i in items]
    for entry, item in zip(objects, items, strict=True):
        m = np.array(item.get("transform").split(), float).reshape(4, 3)
        points = np.array([[float(v.get(a)) for a in "xyz"] for v in entry[0][0]])
        assert (points @ m[:3] + m[3]).min() >= -1e-9
        assert np.linalg.det(m[:3]) > 0


def _metadata_rule():
    root = etree.fromstring(_package(_solid("a", shapes.box(1, 2, 3))).read("3D/3dmodel.model"))
    names = [entry.get("name") for entry in root.findall(f"{CORE}metadata")]
    assert len(names) == len(set(names)) > 0


def test_fmt_02_mesh_and_build_rules():
    """Each rule of the row has a check of its own; a new rule without one fails here."""
    checks = {
        "mesh": _mesh_rule,
        "transform": _transform_rule,
        "build": _build_rule,
        "metadata": _metadata_rule,
    }
    assert set(checks) == set(_values("FMT-02"))
    for check in checks.values():
        check()


def test_fmt_04_binary_stl():
    ball = trimesh.creation.icosphere(3, radius=10.0)
    written = stl_bytes(ball.vertices, ball.faces)
    records = np.frombuffer(written[84:], np.uint8).reshape(-1, 50)
    assert len(records) == len(ball.faces)
    reference.agree(
        "FMT-04",
        {
            "file_size": len(written),
            "count_field": int.from_bytes(written[80:84], "little"),
            "record_size": (len(written) - 84) / len(ball.faces),
            "attribute_byte_count": int(records[:, 48:].max()),
            "header_starts_with_solid": written[:80].lower().startswith(b"solid"),
        },
    )


def _header(lines: list[str], name: str) -> tuple[str, str]:
    at = lines.index(name)
    return lines[at + 1].strip(), lines[at + 2].strip()


def test_fmt_06_dxf_units_and_a_known_length():
    ruler = np.array([[3.0, 4.0], [3.0, 1004.0]])
    written = dxf_bytes(Drawing("ruler", (Line("cut", ruler),)))
    lines = written.decode().split("\n")
    code, units = _header(lines, "$INSUNITS")
    document = ezdxf.read(io.StringIO(written.decode()))
    (line,) = document.modelspace()
    ends = np.array(list(line.get_points("xy")))
    assert np.linalg.norm(ends[1] - ends[0]) == 1000.0
    table = dict(entry.split(" ", 1) for entry in str(_values("FMT-06")["table"]).split(", "))
    assert table[units] == "mm"
    assert _header(lines, "$ACADVER")[1] == "AC1024"
    reference.agree(
        "FMT-06",
        {
            "INSUNITS_mm": float(units),
            "INSUNITS_group_code": code,
            "MEASUREMENT_metric": float(_header(lines, "$MEASUREMENT")[1]),
            "AC1024": document.acad_release,
        },
        without=("table",),  # the meaning of the number, held above
    )


def test_fmt_08_svg_in_millimetres():
    """An A4 page as a drawing: sizes carry mm, the view box counts mm, nothing is mirrored."""
    corners = np.array([[2.0, 2.0], [208.0, 2.0], [208.0, 295.0], [2.0, 295.0]])
    flag = np.array([[20.0, 20.0], [60.0, 20.0], [60.0, 30.0], [20.0, 90.0]])
    layers = ("edge", "flag", "text")
    page = Drawing(
        "A4",
        (
            Line("edge", corners, closed=True),
            Line("flag", flag, closed=True),
            Label("text", "F", (30.0, 30.0)),
        ),
        {layer: Style(0.0) for layer in layers},
    )
    root = etree.fromstring(svg_bytes(page))
    box = [float(v) for v in root.get("viewBox").split()]
    assert root.get("width").endswith("mm")
    assert root.get("height").endswith("mm")
    width, height = (float(root.get(k).removesuffix("mm")) for k in ("width", "height"))
    assert box == [0.0, 0.0, 210.0, 297.0]
    px_per_inch, mm_per_inch = 96.0, 25.4
    px_per_mm = px_per_inch / mm_per_inch
    reference.agree(
        "FMT-08",
        {
            "px_per_mm": px_per_mm,
            "user_unit_mm": width / box[2],
            "A4_width_px": width * px_per_mm,
        },
    )
    assert height / box[3] == 1.0
    numbers = root.findall(".//{*}path")[1].get("d").strip("MZ").split("L")
    drawn = np.array([[float(v) for v in pair.split()] for pair in numbers])
    assert np.allclose(drawn - drawn[0], (flag - flag[0]) * [1, -1])
    assert b"scale(" not in svg_bytes(page)


_ALL_WRITERS = """
import hashlib, sys
import numpy as np
import shapes
from laywright.files.charts import Curve, line_chart
from laywright.files.csv import csv_bytes
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.dxf import dxf_bytes
from laywright.files.html import html_bytes
from laywright.files.page import Note, Picture, Sheet, Station, Steps, Table
from laywright.files.pdf import pdf_bytes
from laywright.files.projection import picture
from laywright.files.solid import Solid
from laywright.files.stl import stl_bytes
from laywright.files.svg import svg_bytes
from laywright.files.threemf import three_mf_bytes
from laywright.files.true_scale import drawing_pages

torus = shapes.torus(40, 12)
shapes_of = [Line(layer, [[0, 0], [300, 9], [3, 400]], True) for layer in ("cut", "b", "c")]
drawing = Drawing("d", (*shapes_of, Label("text", "ply", (9, 9))), {"b": Style(0.3, (2, 1))})
seen = picture(torus.vertices, torus.triangles)
chart = line_chart("c", "t, h", "T, K", [Curve("a", [[0, 1], [2, 3]])])
table = Table("t", ("c",), (("1",),))
blocks = (Note("n"), Steps(("s",)), table, Picture("p", seen), Picture("q", chart))
sheet = Sheet("job", "1", (Station("Mix", ("hot",), blocks),))
for content in (
    stl_bytes(torus.vertices, torus.triangles),
    three_mf_bytes([Solid("t", torus.vertices, torus.triangles)]),
    svg_bytes(drawing),
    dxf_bytes(drawing),
    drawing_pages(drawing),
    pdf_bytes(sheet),
    html_bytes(sheet),
    csv_bytes(["a"], [[1.5]]),
):
    print(hashlib.sha256(content).hexdigest())
"""


def test_every_writer_gives_the_same_bytes_in_another_process_at_another_time():
    tests = Path(__file__).parents[1]
    found = []
    for seed, zone in (("1", "UTC"), ("4", "Asia/Tokyo")):
        environment = os.environ | {
            "PYTHONHASHSEED": seed,
            "TZ": zone,
            "PYTHONPATH": os.pathsep.join([str(tests.parent / "core"), str(tests)]),
        }
        done = subprocess.run(
            [sys.executable, "-c", _ALL_WRITERS],
            env=environment,
            capture_output=True,
            text=True,
            check=True,
        )
        found.append(done.stdout.split())
    assert len(found[0]) == 8
    assert found[0] == found[1]
