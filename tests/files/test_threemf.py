import io
import zipfile

import lib3mf
import numpy as np
import pytest
import trimesh
from lxml import etree

import shapes
from laywright.errors import GeometryError, InputError
from laywright.files.threemf import Solid, three_mf_bytes

CORE = "{http://schemas.microsoft.com/3dmanufacturing/core/2015/02}"


def _solid(name, surface, transform=None):
    return Solid(name, surface.vertices, surface.triangles, transform)


def _placed(x=0.0, y=0.0, z=0.0, turn=0.0):
    matrix = np.eye(4)
    c, s = np.cos(turn), np.sin(turn)
    matrix[:2, :2] = [[c, -s], [s, c]]
    matrix[:3, 3] = x, y, z
    return matrix


def _model(written):
    with zipfile.ZipFile(io.BytesIO(written)) as archive:
        return etree.fromstring(archive.read("3D/3dmodel.model"))


TILES = (
    _solid("Tile R1 C1", shapes.box(120, 80, 50), _placed(-30, 5, 0)),
    _solid("Tile R1 C2", shapes.sphere(20, 40), _placed(200, 100, 20, 0.7)),
    _solid("Tile R2 C1", shapes.torus(40, 12), _placed(60, 250, 12)),
)


def test_lib3mf_reads_unit_names_sizes_and_closed_bodies():
    wrapper = lib3mf.get_wrapper()
    model = wrapper.CreateModel()
    reader = model.QueryReader("3mf")
    reader.SetStrictModeActive(True)
    reader.ReadFromBuffer(list(three_mf_bytes(TILES, "Cowl")))
    assert reader.GetWarningCount() == 0
    assert model.GetUnit() == lib3mf.ModelUnit.MilliMeter
    items = model.GetBuildItems()
    found = []
    while items.MoveNext():
        item = items.GetCurrent()
        mesh = model.GetMeshObjectByID(item.GetObjectResource().GetUniqueResourceID())
        assert mesh.IsManifoldAndOriented()
        found.append((mesh.GetName(), mesh.GetVertexCount(), mesh.GetTriangleCount()))
    assert found == [(t.name, len(t.vertices), len(t.triangles)) for t in TILES]


def test_trimesh_reads_each_solid_where_it_was_placed():
    scene = trimesh.load_scene(io.BytesIO(three_mf_bytes(TILES)), file_type="3mf")
    shift = np.array([30.0, 0.0, 0.0])
    assert set(scene.geometry) == {tile.name for tile in TILES}
    by_name = {name: scene.graph.get(name)[0] for name in scene.graph.nodes_geometry}
    meshes = {
        scene.graph.get(node)[1]: scene.geometry[scene.graph.get(node)[1]].copy().apply_transform(m)
        for node, m in by_name.items()
    }
    for tile in TILES:
        mesh = meshes[tile.name]
        wanted = trimesh.Trimesh(tile.placed + shift, tile.triangles, process=False)
        assert mesh.is_watertight
        assert mesh.volume == pytest.approx(wanted.volume, rel=1e-6)
        assert np.abs(mesh.bounds - wanted.bounds).max() < 1e-4


def test_all_are_shifted_together_into_the_positive_octant():
    model = _model(three_mf_bytes(TILES))
    items = model.findall(f"{CORE}build/{CORE}item")
    matrices = [np.array(item.get("transform").split(), float).reshape(4, 3) for item in items]
    lowest = [
        (tile.vertices @ m[:3] + m[3]).min(axis=0) for tile, m in zip(TILES, matrices, strict=True)
    ]
    assert np.min(lowest, axis=0).tolist() == pytest.approx([0, 5, 0], abs=1e-9)
    shifts = [m[3] - t.transform[:3, 3] for t, m in zip(TILES, matrices, strict=True)]
    assert np.ptp(shifts, axis=0).max() < 1e-9


def test_what_lies_in_the_octant_already_stays_where_it_is():
    box = _solid("box", shapes.box(1, 2, 3), _placed(7, 8, 9))
    item = _model(three_mf_bytes([box])).find(f"{CORE}build/{CORE}item")
    assert item.get("transform") == "1 0 0 0 1 0 0 0 1 7 8 9"


def test_hostile_names_are_text():
    name = 'a"/><evil x="1">&amp;\x00\n\ud800]]>'
    model = _model(three_mf_bytes([_solid(name, shapes.box(1, 1, 1))], "<title>"))
    (entry,) = model.findall(f"{CORE}resources/{CORE}object")
    assert entry.get("name") == 'a"/><evil x="1">&amp; ]]>'
    assert model.find(f"{CORE}metadata").text == "<title>"
    assert model.find(".//evil") is None


def test_the_same_solids_give_the_same_bytes():
    assert three_mf_bytes(TILES, "x") == three_mf_bytes(TILES, "x")


@pytest.mark.parametrize(
    ("solid", "word"),
    [
        (
            Solid("open", shapes.box(1, 1, 1).vertices, shapes.box(1, 1, 1).triangles[:-1]),
            "open or doubled",
        ),
        (
            Solid(
                "inside out", shapes.box(1, 1, 1).vertices, shapes.box(1, 1, 1).triangles[:, ::-1]
            ),
            "volume of -1",
        ),
        (
            Solid(
                "doubled",
                shapes.box(1, 1, 1).vertices,
                np.concatenate([shapes.box(1, 1, 1).triangles] * 2),
            ),
            "open or doubled",
        ),
        (_solid("mirrored", shapes.box(1, 1, 1), np.diag([-1.0, 1, 1, 1])), "mirrors"),
        (_solid("far", shapes.box(1, 1, 1), _placed(2e6)), "1 km"),
        (Solid("flat", np.eye(3), np.array([[0, 1, 2]])), "1 triangles"),
    ],
)
def test_what_cannot_be_printed_is_refused(solid, word):
    with pytest.raises(GeometryError, match=word) as caught:
        three_mf_bytes([solid])
    assert caught.value.where == solid.name


def test_no_solid_is_refused():
    with pytest.raises(InputError, match="no solid"):
        three_mf_bytes([])
