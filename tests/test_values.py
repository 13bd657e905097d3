"""Values: what goes into the store comes out again, and the digest tells them apart."""

import io
import json
import zipfile
from dataclasses import dataclass, field, replace
from enum import Enum

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra import numpy as shapes_of

from laywright import values
from laywright.arrays import FloatArray, IntArray, floats, ints
from laywright.errors import FileError


class Side(Enum):
    TOOL = "tool side"
    BAG = "bag side"


@dataclass(frozen=True)
class Ply:
    name: str
    angle: float
    side: Side = Side.TOOL
    repeats: int = 1
    mirrored: bool = False


@dataclass(frozen=True, eq=False)
class Mesh:
    points: FloatArray
    triangles: IntArray


@dataclass(frozen=True, eq=False)
class Stack:
    title: str
    plies: tuple[Ply, ...] = ()
    mesh: Mesh | None = None
    weights: dict[str, float] = field(default_factory=dict)
    corners: tuple[float, float, float] = (0.0, 0.0, 0.0)
    maps: tuple[FloatArray, ...] = ()
    digest: str = ""


FINITE = st.floats(allow_nan=False, allow_infinity=False)
PLIES = st.builds(
    Ply,
    name=st.text(max_size=20),
    angle=FINITE,
    side=st.sampled_from(Side),
    repeats=st.integers(-(2**53), 2**53),
    mirrored=st.booleans(),
)
POINTS = shapes_of.arrays(
    np.float64, st.tuples(st.integers(0, 8), st.just(3)), elements=st.floats(-1e12, 1e12)
)
MESHES = st.builds(
    lambda points: Mesh(floats(points, -1, 3), ints(np.arange(3).reshape(1, 3), -1, 3)), POINTS
)
STACKS = st.builds(
    Stack,
    title=st.text(max_size=20),
    plies=st.lists(PLIES, max_size=4).map(tuple),
    mesh=st.none() | MESHES,
    weights=st.dictionaries(st.text(max_size=5), FINITE, max_size=4),
    corners=st.tuples(FINITE, FINITE, FINITE),
    maps=st.lists(POINTS.map(lambda points: floats(points, -1, 3)), max_size=3).map(tuple),
)


def assert_same(one, other):
    assert (one.title, one.plies, one.weights) == (other.title, other.plies, other.weights)
    assert (one.corners, one.digest) == (other.corners, other.digest)
    assert (one.mesh is None) == (other.mesh is None)
    pairs = list(zip(one.maps, other.maps, strict=True))
    if one.mesh is not None:
        pairs += [
            (one.mesh.points, other.mesh.points),
            (one.mesh.triangles, other.mesh.triangles),
        ]
    for left, right in pairs:
        assert left.dtype == right.dtype
        assert left.shape == right.shape
        assert left.tobytes() == right.tobytes()
        assert not right.flags.writeable


@given(STACKS)
def test_what_is_packed_comes_out_bit_for_bit(stack):
    assert_same(stack, values.unpack(Stack, values.pack(stack)))


@given(STACKS)
def test_tree_and_arrays_give_the_value_back(stack):
    tree, arrays = values.plain(stack)
    assert_same(stack, values.from_tree(Stack, tree, arrays))


@given(STACKS)
def test_same_value_gives_the_same_bytes_and_the_same_digest(stack):
    again = values.unpack(Stack, values.pack(stack))
    assert values.pack(again) == values.pack(stack)
    assert values.digest(again) == values.digest(stack)


BASE = Stack("cover", (Ply("glass", 45.0),), None, {"resin": 40.0})


@pytest.mark.parametrize(
    "change",
    [
        {"title": "cowl"},
        {"plies": ()},
        {"plies": (Ply("glass", 45.0), Ply("glass", 45.0))},
        {"plies": (Ply("glass", 45.0, Side.BAG),)},
        {"plies": (Ply("glass", 45.0, mirrored=True),)},
        {"weights": {"resin": 41.0}},
        {"weights": {"cloth": 40.0}},
        {"corners": (0.0, 0.0, 1.0)},
        {"maps": (floats([[1.0, 2.0, 3.0]], -1, 3),)},
        {"mesh": Mesh(floats([[0, 0, 0]], -1, 3), ints([], -1, 3))},
    ],
)
def test_every_change_changes_the_digest(change):
    assert values.digest(replace(BASE, **change)) != values.digest(BASE)


def test_digest_sees_shape_order_and_kind_of_arrays():
    arrays = [
        np.arange(6.0).reshape(2, 3),
        np.arange(6.0).reshape(3, 2),
        np.arange(6.0)[::-1].reshape(2, 3),
        np.arange(6).reshape(2, 3),
    ]
    assert len({values.digest(array) for array in arrays}) == len(arrays)


def test_digest_sees_which_input_is_which():
    assert values.digest(1.0, 2.0) != values.digest(2.0, 1.0)
    assert values.digest("ab", "c") != values.digest("a", "bc")
    assert values.digest(1) != values.digest("1")


@given(st.floats(-1e4, 1e4), st.floats(-4e-9, 4e-9))
def test_noise_in_the_last_bits_of_an_array_makes_nothing_out_of_date(number, noise):
    kept = round(number, 6)
    assert values.digest(np.array([kept])) == values.digest(np.array([kept + noise]))


def test_minus_nought_is_nought():
    assert values.digest(np.array([-0.0, -1e-12])) == values.digest(np.array([0.0, 0.0]))


def test_memory_layout_of_an_array_does_not_count():
    array = np.arange(6.0).reshape(2, 3)
    assert values.digest(np.asfortranarray(array)) == values.digest(array)


def test_a_value_that_carries_a_digest_stands_by_it():
    carried = replace(BASE, digest="0123456789abcdef")
    assert values.digest(carried) == values.digest(replace(carried, title="other"))
    assert values.digest(carried) != values.digest(BASE)


@given(st.lists(st.text(max_size=5), max_size=5, unique=True))
def test_order_of_a_dict_does_not_count(keys):
    forwards = {key: float(index) for index, key in enumerate(keys)}
    backwards = dict(reversed(forwards.items()))
    assert values.digest(forwards) == values.digest(backwards)


def test_archive_holds_text_and_plain_arrays_only():
    packed = values.pack(replace(BASE, maps=(floats([[1, 2, 3]], -1, 3),)))
    with zipfile.ZipFile(io.BytesIO(packed)) as archive:
        assert archive.namelist() == ["value.json", "0.npy"]
        array = np.lib.format.read_array(io.BytesIO(archive.read("0.npy")), allow_pickle=False)
    assert array.tolist() == [1.0, 2.0, 3.0]


def test_very_many_arrays_take_one_entry_for_each_kind_of_number():
    mesh = Mesh(floats([[0, 0, 0], [1, 0, 0], [0, 1, 0]], -1, 3), ints([[0, 1, 2]], -1, 3))
    many = tuple(floats(np.arange(3 * (i % 5)).reshape(-1, 3), -1, 3) for i in range(12_000))
    stack = replace(BASE, mesh=mesh, maps=many)
    packed = values.pack(stack)
    with zipfile.ZipFile(io.BytesIO(packed)) as archive:
        assert archive.namelist() == ["value.json", "0.npy", "1.npy"]
    assert_same(stack, values.unpack(Stack, packed))


def test_an_array_in_an_entry_of_its_own_is_still_read():
    points, triangles = np.arange(9.0).reshape(3, 3), np.array([[0, 1, 2]])
    head = {"kind": "Mesh", "tree": {"points": {"$array": 0}, "triangles": {"$array": 1}}}
    entries = {"value.json": json.dumps(head)}
    for index, array in enumerate((points, triangles)):
        buffer = io.BytesIO()
        np.save(buffer, array)
        entries[f"{index}.npy"] = buffer.getvalue()
    found = values.unpack(Mesh, archive_of(entries))
    wanted = Mesh(floats(points, -1, 3), ints(triangles, -1, 3))
    assert_same(replace(BASE, mesh=wanted), replace(BASE, mesh=found))


@pytest.mark.parametrize(
    "shapes",
    [
        [["<f8", 3, 3]],
        [["<f8", 3, 3], ["<i8", 1, 3, 2]],
        [["<f8", -3, -3], ["<i8", 1, 3]],
        [["<f8", 2, 3], ["<i8", 1, 3]],
        [["<i8", 1, 3], ["<i8", 3, 3]],
        [["<f8", "3", 3], ["<i8", 1, 3]],
        "arrays",
    ],
)
def test_shapes_that_do_not_fit_their_numbers_are_refused(shapes):
    mesh = Mesh(floats(np.arange(9.0).reshape(3, 3), -1, 3), ints([[0, 1, 2]], -1, 3))
    with zipfile.ZipFile(io.BytesIO(values.pack(mesh))) as archive:
        entries = {name: archive.read(name) for name in archive.namelist()}
    head = json.loads(entries["value.json"])
    assert head["arrays"] == [["<f8", 3, 3], ["<i8", 1, 3]]
    entries["value.json"] = json.dumps({**head, "arrays": shapes})
    with pytest.raises(FileError):
        values.unpack(Mesh, archive_of(entries))


def archive_of(entries):
    buffer = io.BytesIO()
    with zipfile.ZipFile(buffer, "w") as archive:
        for name, content in entries.items():
            archive.writestr(name, content)
    return buffer.getvalue()


def pickled_array():
    buffer = io.BytesIO()
    np.save(buffer, np.array([{"a": 1}], dtype=object), allow_pickle=True)
    return buffer.getvalue()


STACK_WITH_ARRAY = '{"kind": "Mesh", "tree": {"points": {"$array": 0}, "triangles": {"$array": 0}}}'


@pytest.mark.parametrize(
    "packed",
    [
        b"",
        b"not an archive",
        values.pack(BASE)[:-20],
        archive_of({}),
        archive_of({"value.json": "{"}),
        archive_of({"value.json": '{"kind": "Mesh"}'}),
        archive_of({"value.json": '{"kind": "Mesh", "tree": {}}'}),
        archive_of({"value.json": '{"kind": "Mesh", "tree": {"points": 1, "triangles": 2}}'}),
        archive_of({"value.json": STACK_WITH_ARRAY}),
        archive_of({"value.json": STACK_WITH_ARRAY, "0.npy": b"short"}),
        archive_of({"value.json": STACK_WITH_ARRAY, "0.npy": pickled_array()}),
        values.pack(Ply("glass", 0.0)),
    ],
)
def test_damaged_archive_ends_in_one_sentence(packed):
    with pytest.raises(FileError) as caught:
        values.unpack(Mesh, packed, "Cloth Patterns")
    assert caught.value.where == "Cloth Patterns"
    assert caught.value.needed == "a stored Mesh"
    assert str(caught.value).endswith("; recompute the object.")


def test_field_that_is_not_known_is_refused():
    tree, arrays = values.plain(Ply("glass", 0.0))
    with pytest.raises(Exception, match="Ply has no field 'colour'"):
        values.from_tree(Ply, tree | {"colour": "red"}, arrays)


PLY = {"name": "glass", "angle": 45.0}
STACK = {"title": "cover"}


@pytest.mark.parametrize(
    ("kind", "tree"),
    [
        (Ply, PLY | {"name": 5}),
        (Ply, PLY | {"name": None}),
        (Ply, PLY | {"angle": "45"}),
        (Ply, PLY | {"angle": True}),
        (Ply, PLY | {"repeats": 1.5}),
        (Ply, PLY | {"repeats": True}),
        (Ply, PLY | {"mirrored": 1}),
        (Ply, PLY | {"side": "upside"}),
        (Ply, {"name": "glass"}),
        (Ply, ["glass", 45.0]),
        (Stack, STACK | {"plies": PLY}),
        (Stack, STACK | {"plies": "glass"}),
        (Stack, STACK | {"corners": [0.0, 0.0]}),
        (Stack, STACK | {"corners": [0.0, 0.0, 0.0, 0.0]}),
        (Stack, STACK | {"weights": [1.0]}),
        (Stack, STACK | {"mesh": "cube.stl"}),
        (Stack, STACK | {"maps": [{"$array": 0}]}),
    ],
)
def test_tree_that_does_not_fit_the_type_is_refused(kind, tree):
    with pytest.raises((TypeError, ValueError, LookupError, AttributeError)):
        values.from_tree(kind, tree)


def test_whole_number_is_taken_for_a_float_and_becomes_one():
    angle = values.from_tree(Ply, PLY | {"angle": 45}).angle
    assert (angle, type(angle)) == (45.0, float)


def test_numpys_own_numbers_are_stored_as_plain_ones():
    stored = values.unpack(Ply, values.pack(Ply("glass", np.float64(45.0), repeats=np.int64(2))))
    assert stored == Ply("glass", 45.0, repeats=2)
    assert (type(stored.angle), type(stored.repeats)) == (float, int)


def test_what_has_no_plain_form_is_refused():
    with pytest.raises(TypeError, match="a set has no plain form"):
        values.plain(Ply({"glass"}, 45.0))


def test_missing_fields_take_their_defaults():
    assert values.from_tree(Ply, {"name": "glass", "angle": 45.0}) == Ply("glass", 45.0)


@given(st.binary(max_size=200))
def test_no_bytes_do_anything_but_fail_cleanly(packed):
    with pytest.raises(FileError):
        values.unpack(Mesh, packed)
