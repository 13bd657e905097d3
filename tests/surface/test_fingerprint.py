"""A picked face is followed through edits and refused when its name means another face."""

from __future__ import annotations

from dataclasses import replace
from itertools import permutations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright import values
from laywright.errors import FaceError
from laywright.surface.fingerprint import (
    FaceFingerprint,
    difference,
    fingerprint,
    fingerprints,
    match,
)

BOX = fingerprints(shapes.box(100, 60, 40))
WALLS = [("left", 1, 2), ("front", 0, 2), ("bottom", 0, 1)]


def drilled(length: float, holes: tuple[tuple[float, float], ...]) -> tuple[FaceFingerprint, ...]:
    """A box with holes through it, as a CAD program would name its faces: walls, then holes."""
    walls = fingerprints(shapes.box(length, 60, 10))
    bored = tuple(
        FaceFingerprint(f"hole{i}", 2 * np.pi * 3 * 10, (x, y, 5.0), (0.0, 0.0, 0.0), 4 * np.pi * 3)
        for i, (x, y) in enumerate(holes)
    )
    return walls + bored


def test_values_of_a_box():
    for name, one, other in WALLS:
        face = next(face for face in BOX if face.name == name)
        sides = (100.0, 60.0, 40.0)
        assert face.area == pytest.approx(sides[one] * sides[other], rel=1e-12)
        assert face.boundary_length == pytest.approx(2 * (sides[one] + sides[other]), rel=1e-12)
        assert np.linalg.norm(face.normal) == pytest.approx(1.0, abs=1e-9)
    assert fingerprint(shapes.box(100, 60, 40), 3) == BOX[3]


@settings(max_examples=40, deadline=None)
@given(*[st.floats(0.7, 1.4)] * 3, st.sampled_from([(), BOX]))
def test_moderate_edits_of_a_box_are_followed(a, b, c, before):
    present = fingerprints(shapes.box(100 * a, 60 * b, 40 * c))
    for face in BOX:
        assert min(present, key=lambda other: difference(face, other)).name == face.name
        match((face,), present, before)
        with pytest.raises(FaceError) as caught:
            match((face,), tuple(other for other in present if other.name != face.name), before)
        assert caught.value.where == face.name


@settings(max_examples=40, deadline=None)
@given(
    st.integers(1, 5),
    st.floats(0.8, 1.25),
    st.sampled_from([(), BOX]),
)
def test_swapped_names_are_refused_for_every_face(turn, stretch, before):
    present = fingerprints(shapes.box(100 * stretch, 60, 40))
    swapped = tuple(
        replace(face, name=present[(i + turn) % 6].name) for i, face in enumerate(present)
    )
    for index, face in enumerate(BOX):
        with pytest.raises(FaceError) as caught:
            match((face,), swapped, before)
        assert caught.value.where == face.name
        assert swapped[index].name in caught.value.remedy


def test_a_hole_added_in_front_of_others():
    before = drilled(100.0, ((30.0, 30.0), (50.0, 30.0)))
    after = drilled(100.0, ((12.0, 30.0), (30.0, 30.0), (50.0, 30.0)))
    with pytest.raises(FaceError) as caught:
        match(before[6:7], after)
    assert "hole1 is the most like it" in caught.value.remedy
    match(before[:6], after)


def test_a_large_stretch_is_followed_when_the_whole_part_is_known():
    before = drilled(100.0, ((20.0, 30.0), (80.0, 30.0)))
    after = drilled(190.0, ((38.0, 30.0), (152.0, 30.0)))
    match(before[6:], after, before)
    with pytest.raises(FaceError):
        match(before[6:], after)


def test_no_order_of_holes_but_the_right_one():
    places = ((20.0, 20.0), (50.0, 40.0), (80.0, 25.0))
    before = drilled(100.0, places)
    for order in permutations(range(3)):
        after = drilled(110.0, tuple((places[i][0] * 1.1, places[i][1]) for i in order))
        if order == (0, 1, 2):
            match(before, after, before)
        else:
            with pytest.raises(FaceError):
                match(before, after, before)


def test_a_face_that_is_gone_or_a_part_that_is_gone():
    with pytest.raises(FaceError) as caught:
        match(BOX[:1], BOX[1:])
    assert "no face of this name" in caught.value.found
    with pytest.raises(FaceError, match="without faces"):
        match(BOX[:1], ())


def test_difference_is_free_of_size_and_stored_whole():
    big = fingerprints(shapes.box(1000, 600, 400))
    small = [difference(BOX[0], face) for face in BOX]
    large = [difference(big[0], face) for face in big]
    np.testing.assert_allclose(small, large, rtol=1e-6, atol=1e-9)
    tree, arrays = values.plain(BOX[0])
    assert values.from_tree(FaceFingerprint, tree, arrays) == BOX[0]
