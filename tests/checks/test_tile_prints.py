"""Tiles as others see them: cut into layers, re-read, put together again."""

from __future__ import annotations

from functools import reduce

import lib3mf
import numpy as np
import pytest
import shapely
import trimesh

import shapes
from laywright.files.solid import Solid
from laywright.files.threemf import three_mf_bytes
from laywright.mould.body.body import build_body
from laywright.mould.solid import joined, to_manifold
from laywright.mould.tiles.joint import JointKind
from laywright.mould.tiles.printer import Printer
from laywright.mould.tiles.tiles import TileSettings, cut_tiles
from laywright.surface.distance import largest_distance
from laywright.surface.face import MouldSide, take_face
from laywright.surface.triangles import Surface

PRINTER = Printer("P", (180.0, 180.0, 180.0))
WIDE = Printer("W", (260.0, 180.0, 180.0), layer_height=0.2)


@pytest.fixture(scope="module")
def body():
    face = take_face(shapes.hatch(spacing=20.0), (0, 0, 1), mould_side=MouldSide.INSIDE)
    return build_body(face, 1.0)


@pytest.fixture(scope="module", params=list(JointKind), ids=lambda kind: kind.name)
def tiles(request, body):
    return cut_tiles(body, PRINTER, TileSettings(joint=request.param))


@pytest.fixture(scope="module", params=list(JointKind), ids=lambda kind: kind.name)
def few_tiles(request, body):
    """Few tiles with joints and marks, so that every layer of them can be looked at."""
    return cut_tiles(body, WIDE, TileSettings(joint=request.param))


def layers(tile, layer_height):
    """The section in the middle of every layer that the printer would lay, from bed to top."""
    printed = tile.printed()
    mesh = trimesh.Trimesh(printed.vertices, printed.triangles, process=False)
    count = round(tile.size[2] / layer_height)
    middles = (np.arange(count) + 0.5) * layer_height
    return mesh.section_multiplane([0.0, 0.0, 0.0], [0.0, 0.0, 1.0], middles)


def area(rings):
    """Area of outlines, those inside others being holes."""
    return reduce(shapely.symmetric_difference, map(shapely.Polygon, rings)).area


def layer(mesh, origin, normal):
    """Section of a mesh as a shape in two axes of its own, the axes, and whether it closes."""
    path = mesh.section(plane_origin=origin, plane_normal=normal)
    one = np.cross(normal, np.eye(3)[np.argmin(np.abs(normal))])
    one /= np.linalg.norm(one)
    axes = np.stack([one, np.cross(normal, one)])
    shape = shapely.Polygon()
    for loop in path.discrete:
        ring = shapely.Polygon(loop @ axes.T).buffer(0.0)
        shape = shapely.symmetric_difference(shape, ring)
    return shape, axes, path.is_closed


def test_every_layer_closes_and_the_layers_make_up_the_volume(few_tiles):
    assert len(few_tiles.tiles) > 1
    for tile in few_tiles.tiles:
        sections = layers(tile, WIDE.layer_height)
        assert len(sections) * WIDE.layer_height == pytest.approx(tile.size[2], abs=0.1)
        assert all(section is not None and section.is_closed for section in sections), tile.name
        volume = WIDE.layer_height * sum(area(section.discrete) for section in sections)
        assert volume == pytest.approx(tile.volume, rel=5e-3), tile.name


def test_walls_around_dowel_holes_are_as_thick_as_was_asked_for(body):
    settings = TileSettings()
    tiles = cut_tiles(body, PRINTER, settings)
    solid = trimesh.Trimesh(body.solid.vertices, body.solid.triangles, process=False)
    assert settings.wall > PRINTER.nozzle
    for joint in tiles.joints:
        normal = tiles.plan.axes[joint.axis]
        middle = np.array(joint.point) @ tiles.plan.axes
        for share in (-0.9, 0.05, 0.9):
            origin = middle + share * joint.depth * normal
            shape, axes, _ = layer(solid, origin, normal)
            point = shapely.Point(axes @ origin)
            assert shape.contains(point)
            wall = shape.boundary.distance(point) - joint.diameter / 2.0
            assert wall >= settings.wall - 0.02


def test_lib3mf_reads_unit_names_sizes_and_closed_tiles(tiles):
    solids = [Solid(t.name, t.solid.vertices, t.solid.triangles, t.pose) for t in tiles.tiles] + [
        Solid(p.name, p.solid.vertices, p.solid.triangles) for p in tiles.coupon
    ]
    wrapper = lib3mf.get_wrapper()
    model = wrapper.CreateModel()
    reader = model.QueryReader("3mf")
    reader.SetStrictModeActive(True)
    reader.ReadFromBuffer(list(three_mf_bytes(solids)))
    assert reader.GetWarningCount() == 0
    assert model.GetUnit() == lib3mf.ModelUnit.MilliMeter
    items, wanted = model.GetBuildItems(), iter(solids)
    while items.MoveNext():
        item, solid = items.GetCurrent(), next(wanted)
        mesh = model.GetMeshObjectByID(item.GetObjectResource().GetUniqueResourceID())
        assert mesh.IsManifoldAndOriented()
        assert mesh.GetName() == solid.name
        matrix = np.array([list(row) for row in item.GetObjectTransform().Fields])
        points = np.array([list(v.Coordinates) for v in mesh.GetVertices()])
        placed = points @ matrix[:3] + matrix[3]
        np.testing.assert_allclose(np.ptp(placed, axis=0), np.ptp(solid.placed, axis=0), atol=1e-3)
    assert next(wanted, None) is None


def test_tiles_put_together_are_the_body(body):
    bare = TileSettings(joint=JointKind.PLAIN, glue_gap=0.0, mark_depth=0.0)
    tiles = cut_tiles(body, PRINTER, bare)
    whole = to_manifold(body.solid, "body")
    union = joined(to_manifold(tile.solid, tile.name) for tile in tiles.tiles)
    assert (whole - union).volume() + (union - whole).volume() < 1e-6 * body.volume
    mesh = union.to_mesh64()
    found = Surface.single(
        np.asarray(mesh.vert_properties)[:, :3], np.asarray(mesh.tri_verts).astype(np.int64)
    )
    assert largest_distance(found, body.solid) < 1e-3


def test_no_two_tiles_claim_the_same_place(tiles):
    solids = [to_manifold(tile.solid, tile.name) for tile in tiles.tiles]
    for index, one in enumerate(solids):
        for other in solids[index + 1 :]:
            assert (one ^ other).volume() < 1e-9


@pytest.mark.parametrize("gap", [0.1, 0.25])
def test_tiles_and_glue_gaps_make_the_nominal_length(body, gap):
    tiles = cut_tiles(body, PRINTER, TileSettings(glue_gap=gap))
    along = body.solid.vertices @ tiles.plan.axes.T
    for axis in range(3):
        ends: dict[int, list[float]] = {}
        for tile in tiles.tiles:
            place = (tile.column, tile.row, tile.layer)[axis]
            points = tile.solid.vertices @ tiles.plan.axes[axis]
            low, high = ends.setdefault(place, [np.inf, -np.inf])
            ends[place] = [min(low, points.min()), max(high, points.max())]
        lengths = sum(high - low for low, high in ends.values())
        nominal = np.ptp(along[:, axis])
        assert lengths + tiles.glue_gaps[axis] == pytest.approx(nominal, abs=1e-9)
