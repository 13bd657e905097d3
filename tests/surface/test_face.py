"""The moulded face: four combinations of sides, pull, and what is refused."""

from __future__ import annotations

import math

import numpy as np
import pytest

import shapes
from laywright import values
from laywright.errors import GeometryError, InputError, LaywrightError
from laywright.surface.face import LaminateSide, MouldedFace, MouldSide, take_face
from laywright.surface.triangles import Surface

UP = (0.0, 0.0, 1.0)


@pytest.mark.parametrize(
    ("laminate", "mould", "radius", "way"),
    [
        (LaminateSide.INSIDE, MouldSide.OUTSIDE, 50.0, -1.0),
        (LaminateSide.INSIDE, MouldSide.INSIDE, 48.0, 1.0),
        (LaminateSide.OUTSIDE, MouldSide.OUTSIDE, 52.0, -1.0),
        (LaminateSide.OUTSIDE, MouldSide.INSIDE, 50.0, 1.0),
    ],
)
def test_where_the_working_surface_of_a_dome_lies(laminate, mould, radius, way):
    """The laminate is 2 mm thick and lies between the mould and the other side of the skin."""
    face = take_face(shapes.cap(50.0, 1.0, 24), UP, laminate, mould)
    working = face.working_surface(2.0)
    np.testing.assert_allclose(np.linalg.norm(working.vertices, axis=1), radius, atol=0.02)
    outwards = np.einsum("ij,ij->i", working.normals, working.centroids)
    assert (way * outwards > 0).all()
    skin = [radius, radius + way * 2.0]
    assert pytest.approx(max(skin) if laminate is LaminateSide.INSIDE else min(skin)) == 50.0


def test_the_best_pull_is_taken_when_none_is_given():
    dome = shapes.cap(50.0, 1.0, 12)
    plug = take_face(dome, None, mould_side=MouldSide.INSIDE)
    cavity = take_face(dome, None, mould_side=MouldSide.OUTSIDE)
    np.testing.assert_allclose(plug.pull, (0, 0, 1), atol=1e-6)
    np.testing.assert_allclose(cavity.pull, (0, 0, -1), atol=1e-6)


def test_a_pull_of_any_length_becomes_a_unit_vector():
    face = take_face(shapes.cap(50.0, 1.0, 6), (0.0, 3.0, 4.0))
    assert face.pull == (0.0, 0.6, 0.8)


def test_stored_and_stamped():
    surface = shapes.cap(50.0, 1.0, 6)
    face = take_face(surface, UP)
    assert face.digest == take_face.digest(surface, UP)
    assert face.digest != take_face.digest(surface, UP, LaminateSide.OUTSIDE)
    stored = values.pack(face)
    assert values.pack(values.unpack(MouldedFace, stored)) == stored


def test_triangles_without_area_are_left_out():
    surface = shapes.cap(50.0, 1.0, 6)
    triangles = np.concatenate([surface.triangles, [[0, 0, 1]]])
    spoiled = type(surface).single(surface.vertices, triangles)
    assert len(take_face(spoiled, UP).surface.triangles) == len(surface.triangles)


def test_what_cannot_be_moulded_is_refused():
    with pytest.raises(GeometryError, match="close into a shell"):
        take_face(shapes.box(10, 10, 10), UP)
    box = shapes.box(10, 10, 10)
    with pytest.raises(GeometryError, match="2 pieces that do not hang together"):
        take_face(box.part(np.isin(box.patches, [4, 5])), UP)
    with pytest.raises(GeometryError, match="face with area"):
        take_face(box.part(np.zeros(12, dtype=bool)), UP)
    with pytest.raises(InputError, match="set the direction"):
        take_face(shapes.cap(50.0, 1.0, 6), (0.0, 0.0, 0.0))
    wall = shapes.cylinder_patch(10.0, math.pi, 20.0)
    with pytest.raises(InputError, match="lies in the face everywhere"):
        take_face(wall, (0.0, 1.0, 0.0))


def test_bad_faces_end_in_one_sentence_that_names_them():
    square = np.array([[0, 0, 0], [9, 0, 0], [9, 9, 0], [0, 9, 0]], float)
    folded = np.concatenate([square, [[0.0, 0.0, 0.0]]])
    beside = Surface(square, np.array([[0, 1, 2], [0, 2, 3], [0, 1, 1]]), [0, 0, 1], ("Top", "Lid"))
    cases = [
        (beside, UP, "found no area, needed a face with area"),
        (Surface.single(square * 1e-3, [[0, 1, 2], [0, 2, 3]], "Lid"), UP, "check the unit"),
        (Surface.single(square * 1e3, [[0, 1, 2], [0, 2, 3]], "Lid"), UP, "check the unit"),
        (Surface.single(folded, [[0, 1, 2], [2, 1, 4]], "Lid"), UP, "lying on itself"),
        (Surface.single(square * 0.0, [[0, 1, 2], [0, 2, 3]], "Lid"), UP, "face with area"),
        (Surface.single(square, [[0, 1, 2], [0, 2, 3]], "Lid"), (1, 0, 0), "lies in the face"),
    ]
    for surface, pull, sentence in cases:
        with pytest.raises(LaywrightError) as caught:
            take_face(surface, pull, mould_side=MouldSide.INSIDE)
        assert "Lid" in caught.value.where
        assert sentence in str(caught.value)
        assert str(caught.value).count("\n") == 0


def test_an_outline_that_crosses_itself_is_refused():
    turn = np.linspace(0.0, 2.5 * np.pi, 40)
    inner = np.stack([20 * np.cos(turn), 20 * np.sin(turn), 3 * turn], axis=1)
    i = np.arange(39)
    ramp = Surface.single(
        np.concatenate([inner, inner * np.array([2.0, 2.0, 1.0])]),
        np.concatenate([np.stack([i, i + 40, i + 41], 1), np.stack([i, i + 41, i + 1], 1)]),
        "Ramp",
    )
    with pytest.raises(GeometryError, match="Ramp: found an outline that crosses itself"):
        take_face(ramp, UP, mould_side=MouldSide.INSIDE)
