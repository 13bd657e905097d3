"""The files of the cloth, read back by libraries that did not write them."""

import dataclasses
import io

import numpy as np
import pytest
import trimesh
from shapely.geometry import Polygon

from job_demo import hatch
from laywright.cloth.patterns.pattern import PatternSettings
from laywright.cloth.roll.roll import RollSettings, placed_outline
from laywright.files.drawing import Label
from laywright.files.paper import Paper
from laywright.job import run
from laywright.job.cloth_files import cloth_files, paper_patterns
from pdf_reading import lines_of, pages_of, texts_of


@pytest.fixture(scope="module")
def result():
    settings = PatternSettings(triangles=500)
    return run(hatch(patterns=settings, roll=RollSettings(seconds=0.0, parts=2)))


@pytest.fixture(scope="module")
def files(result):
    return cloth_files(result, Paper.A3)


def test_the_dxf_of_the_roll_holds_every_cut_line_where_it_lies(result, files):
    (roll,) = result.roll.rolls
    name = next(path for path in files if path.startswith("cloth/roll") and path.endswith(".dxf"))
    path = trimesh.load_path(io.BytesIO(files[name]), file_type="dxf")
    read = {layer.lower() for layer in path.layers if layer is not None}
    assert {"cut", "roll", "warp"} <= read
    cuts = [
        path.vertices[entity.points]
        for entity, layer in zip(path.entities, path.layers, strict=True)
        if (layer or "").lower() == "cut"
    ]
    assert len(cuts) == len(roll.placements) == 6
    for place, points in zip(roll.placements, cuts, strict=True):
        outline = placed_outline(result.patterns.patterns[place.pattern], place)
        assert Polygon(points).area == pytest.approx(Polygon(outline).area, rel=1e-9)
        assert np.ptp(points, axis=0) == pytest.approx(np.ptp(outline, axis=0))


def test_the_plotted_sheets_measure_as_the_patterns(result, files):
    pages = pages_of(files["cloth/whole sheets for a plotter.pdf"])
    drawings = paper_patterns(result)
    assert len(pages) == len(drawings) + len(result.roll.layouts)
    for page, drawing in zip(pages, drawings, strict=False):
        cut = drawing.shapes[0].points
        wanted = np.linalg.norm(np.roll(cut, -1, axis=0) - cut, axis=1)
        lines = lines_of(page)[: len(cut)]
        assert np.linalg.norm(lines[:, 1] - lines[:, 0], axis=1) == pytest.approx(wanted, abs=2e-3)


def test_plies_that_are_cut_alike_share_a_drawing_with_its_quantity(result, files):
    said = [
        {shape.text for shape in drawing.shapes if isinstance(shape, Label)}
        for drawing in paper_patterns(result)
    ]
    assert len(said) == 2
    assert {"Plies 1 and 3", "cut 4"} <= said[0]
    assert {"Ply 2", "cut 2"} <= said[1]
    texts = texts_of(files["cloth/patterns true scale A3.pdf"])
    assert sum("A3 paper" in text for text in texts) == 2


def test_a_ply_split_for_its_roll_has_its_seams_on_paper(result):
    pattern = result.patterns.patterns[0]
    strips = ((0.0, 200.0), (175.0, float(pattern.cut[:, 1].max())))
    places = [
        dataclasses.replace(result.roll.rolls[0].placements[0], pattern=0, strip=s) for s in strips
    ]
    layout = dataclasses.replace(result.roll.rolls[0], placements=tuple(places))
    split = dataclasses.replace(result, roll=dataclasses.replace(result.roll, rolls=(layout,)))
    (first, *_) = paper_patterns(split)
    seams = [shape.points[0, 1] for shape in first.shapes if shape.layer == "seam"]
    assert seams == pytest.approx([175.0, 200.0])


def test_pieces_of_one_ply_are_named_by_their_number(result):
    first = result.patterns.patterns[0]
    pieces = [dataclasses.replace(first, piece=number) for number in (1, 2)]
    patterns = dataclasses.replace(
        result.patterns, patterns=(*pieces, *result.patterns.patterns[1:])
    )
    roll = dataclasses.replace(result.roll, rolls=())
    written = cloth_files(dataclasses.replace(result, patterns=patterns, roll=roll), Paper.A3)
    names = sorted(
        path for path in written if path.startswith("cloth/ply") and path.endswith("svg")
    )
    assert [name.split(" E-glass")[0] for name in names] == [
        "cloth/ply 01 piece 1",
        "cloth/ply 01 piece 2",
        "cloth/ply 02",
        "cloth/ply 03",
    ]
