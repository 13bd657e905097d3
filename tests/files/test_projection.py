import itertools

import numpy as np
import pytest
import shapely

import shapes
from laywright.errors import GeometryError
from laywright.files.drawing import Label, Line
from laywright.files.projection import FROM_ABOVE, picture, picture_of_several, view_from
from laywright.files.solid import Solid

SIDES = (60.0, 40.0, 20.0)


def _filled(drawing):
    return [s for s in drawing.shapes if isinstance(s, Line) and s.layer.startswith("shade")]


def _area(points):
    x, y = points.T
    return 0.5 * float(np.sum(x * np.roll(y, -1) - y * np.roll(x, -1)))


def _moved(x, y, z):
    matrix = np.eye(4)
    matrix[:3, 3] = x, y, z
    return matrix


@pytest.mark.parametrize(
    "view", [(0.9, -1.4, 1.1), (-1, 2, 0.3), (0, 0, 1), (0, -1, 0), (1, 1, -1)]
)
def test_a_box_shows_the_sides_that_face_the_eye_in_their_true_proportion(view):
    box = shapes.box(*SIDES)
    drawing = picture(box.vertices, box.triangles, view, size=(100.0, 100.0))
    eye = np.array(view) / np.linalg.norm(view)
    areas = np.array([SIDES[1] * SIDES[2], SIDES[0] * SIDES[2], SIDES[0] * SIDES[1]])
    seen = areas * np.abs(eye)
    found = {}
    for shape in _filled(drawing):
        found[shape.layer] = found.get(shape.layer, 0.0) + _area(shape.points)
    total = sum(found.values())
    scale = total / seen.sum()
    merged = sorted(value / scale for value in found.values())
    wanted = sorted(value for value in seen if value > 1e-9)
    if len(merged) == len(wanted):
        assert merged == pytest.approx(wanted, rel=1e-9)
    assert sum(merged) == pytest.approx(sum(wanted), rel=1e-9)
    whole = shapely.union_all([shapely.Polygon(s.points).buffer(1e-6) for s in _filled(drawing)])
    assert whole.area == pytest.approx(total, rel=1e-5)


def test_from_the_front_x_runs_right_and_z_up():
    points = np.array([[0, 0, 0], [30, 0, 0], [0, 0, 10]], float)
    drawing = picture(points, np.array([[0, 1, 2]]), (0, -1, 0), size=(60.0, 60.0))
    corners = np.concatenate([shape.points for shape in _filled(drawing)])
    corners = corners - corners.min(axis=0)
    assert corners.max(axis=0) == pytest.approx([60.0, 20.0])
    assert corners[corners[:, 1].argmax(), 0] == pytest.approx(0.0, abs=1e-9)


def test_from_above_x_runs_right_and_y_up():
    points = np.array([[0, 0, 0], [30, 0, 0], [0, 10, 0]], float)
    drawing = picture(points, np.array([[0, 1, 2]]), (0, 0, 1), size=(60.0, 60.0))
    corners = np.concatenate([shape.points for shape in _filled(drawing)])
    corners = corners - corners.min(axis=0)
    assert corners[corners[:, 1].argmax(), 0] == pytest.approx(0.0, abs=1e-9)
    assert all(_area(shape.points) > 0 for shape in _filled(drawing))


def test_the_lines_of_a_box_are_its_nine_visible_edges():
    box = shapes.box(*SIDES)
    drawing = picture(box.vertices, box.triangles)
    lengths = {}
    for shape in drawing.shapes:
        if shape.layer in ("ridge", "outline"):
            way = shape.points[1] - shape.points[0]
            key = tuple(np.sort(shape.points.round(6), axis=0).ravel())
            lengths[key] = (shape.layer, float(np.linalg.norm(way)))
    eye = np.array([0.9, -1.4, 1.1]) / np.linalg.norm([0.9, -1.4, 1.1])
    shown = np.array(SIDES) * np.sqrt(1 - eye**2)
    scale = sum(_area(s.points) for s in _filled(drawing)) / float(
        np.array([800.0, 1200.0, 2400.0]) @ np.abs(eye)
    )
    for layer, each in (("ridge", 1), ("outline", 2)):
        total = sum(length for kind, length in lengths.values() if kind == layer)
        assert total == pytest.approx(each * shown.sum() * np.sqrt(scale), rel=1e-6)


@pytest.mark.parametrize("order", list(itertools.permutations(range(3))))
def test_what_is_nearer_is_painted_later_whatever_the_order_of_the_solids(order):
    box = shapes.box(10, 10, 10)
    places = [(0, 0, 0), (0, -30, 0), (0, -60, 0)]
    solids = [Solid(f"box {k}", box.vertices, box.triangles, _moved(*places[k])) for k in order]
    drawing = picture_of_several("row", solids, (0.0, -1.0, 0.2))
    last = {}
    for index, shape in enumerate(drawing.shapes):
        if isinstance(shape, Line) and shape.layer.startswith("shade"):
            last[round(float(shape.points[:, 1].mean()), 1)] = index
    heights = sorted(last)
    assert last[heights[0]] > last[heights[-1]]


def test_each_solid_carries_its_name_on_top_of_the_picture():
    box = shapes.box(10, 10, 10)
    solids = [Solid(f"R1 C{k}", box.vertices, box.triangles, _moved(14 * k, 0, 0)) for k in (1, 2)]
    drawing = picture_of_several("tiles", solids)
    labels = [shape for shape in drawing.shapes if isinstance(shape, Label)]
    assert [label.text for label in labels] == ["R1 C1", "R1 C2"]
    assert drawing.shapes[-4].fill == (1.0, 1.0, 1.0)
    assert labels[0].at[0] < labels[1].at[0]


def test_pictures_are_grey_and_keep_to_their_size():
    torus = shapes.torus(40, 12)
    drawing = picture(torus.vertices, torus.triangles, size=(120.0, 70.0))
    for shape in _filled(drawing):
        assert shape.fill[0] == shape.fill[1] == shape.fill[2]
        assert 0.6 <= shape.fill[0] <= 1.0
    low, high = drawing.bounds
    assert low.min() >= 0.0
    assert (high <= np.array([121.0, 71.0])).all()


def test_a_fine_mesh_becomes_few_polygons():
    sphere = shapes.sphere(50.0, 200)
    assert len(sphere.triangles) > 100_000
    drawing = picture(sphere.vertices, sphere.triangles, most=1500)
    assert 300 < len(_filled(drawing)) <= 1500
    whole = shapely.union_all([shapely.Polygon(s.points).buffer(0.01) for s in _filled(drawing)])
    assert whole.area == pytest.approx(np.pi * 50.0**2, rel=0.03)


def test_an_open_surface_shows_its_inside_darker():
    sheet = shapes.graph(lambda x, y: 0 * x, (0, 10), (0, 10), (2, 2))
    above = _filled(picture(sheet.vertices, sheet.triangles, (0, 0, 1)))
    below = _filled(picture(sheet.vertices, sheet.triangles, (0, 0, -1)))
    assert above
    assert below
    assert below[0].fill < above[0].fill


def test_nothing_to_see_is_said():
    with pytest.raises(GeometryError, match="nothing to see"):
        picture(np.zeros((0, 3)), np.zeros((0, 3)))


@pytest.mark.parametrize("pull", [(0, 0, 1), (0, 0, -1), (1, 0, 0), (0.3, -0.5, 0.2)])
def test_a_view_looks_onto_the_side_that_the_pull_points_to(pull):
    view = np.array(view_from(pull))
    assert np.linalg.norm(view) == pytest.approx(np.linalg.norm(FROM_ABOVE))
    assert view @ pull == pytest.approx(FROM_ABOVE[2] * np.linalg.norm(pull))
