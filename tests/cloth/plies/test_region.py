"""The surface under a local ply: areas by closed forms, ends where they are asked for."""

import math

import numpy as np
import pytest

import shapes
from laywright.cloth.drape.even_mesh import even_mesh, spacing_for
from laywright.cloth.plies.region import region_of
from laywright.errors import InputError
from laywright.laminate.drop_off import LocalPly
from laywright.laminate.extents import Faces, Round, Strip
from laywright.surface.triangles import Surface

PLATE = shapes.graph(lambda x, y: 0.0 * x, (-100, 100), (-60, 60), (4, 4))


def covered(surface, extent, setback=0.0, triangles=2000):
    mesh = even_mesh(surface, spacing_for(surface, triangles))
    return region_of(mesh, surface, LocalPly(2, extent, setback, 0.25, 6.0))


@pytest.mark.parametrize("radius", [1.0, 5.0, 25.0])
def test_a_round_patch_on_a_plane_is_a_disc(radius):
    found = covered(PLATE, Round((13.0, 7.0, 0.0), radius))
    assert found.area == pytest.approx(math.pi * radius**2, rel=2e-3)
    rim = found.surface.vertices[found.surface.boundary_loops[0]]
    away = np.linalg.norm(rim - [13.0, 7.0, 0.0], axis=1)
    assert away == pytest.approx(radius, rel=4e-3)
    assert len(found.ends) == len(rim)
    assert len(found.surface.triangles) > 300


def test_a_setback_ends_it_further_in():
    found = covered(PLATE, Round((13.0, 7.0, 0.0), 25.0), 6.0)
    assert found.area == pytest.approx(math.pi * 19.0**2, rel=2e-3)


def test_a_strip_along_a_rectangle_has_its_area_and_one_end():
    found = covered(PLATE, Strip(15.0))
    assert found.area == pytest.approx(200 * 120 - 170 * 90, rel=3e-3)
    assert len(found.surface.boundary_loops) == 2
    ends = found.surface.vertices[np.unique(found.ends)]
    inwards = np.minimum(100.0 - np.abs(ends[:, 0]), 60.0 - np.abs(ends[:, 1]))
    assert np.median(inwards) == pytest.approx(15.0, abs=1e-6)
    assert inwards == pytest.approx(15.0, abs=2.0)  # rounded off in the corners


def test_a_patch_over_the_edge_ends_inside_only():
    """Half a disc: its straight side lies on the edge of the face and is no end of the ply."""
    found = covered(PLATE, Round((100.0, 0.0, 0.0), 30.0))
    assert found.area == pytest.approx(0.5 * math.pi * 30.0**2, rel=2e-3)
    ends = found.surface.vertices[found.ends].mean(axis=1)
    assert np.linalg.norm(ends - [100.0, 0.0, 0.0], axis=1) == pytest.approx(30.0, abs=0.3)


def test_a_patch_on_a_cylinder_develops_to_a_disc():
    radius = 50.0
    found = covered(
        shapes.cylinder_patch(radius, 2.0, 120.0, (60, 50)), Round((0.0, 0.0, radius), 25.0)
    )
    assert found.area == pytest.approx(math.pi * 25.0**2, rel=2e-3)
    rim = found.surface.vertices[found.surface.boundary_loops[0]]
    around = radius * np.arctan2(rim[:, 0], rim[:, 2])
    assert np.hypot(around, rim[:, 1]) == pytest.approx(25.0, abs=0.05)


def test_picked_faces_are_covered_to_their_border():
    hatch = shapes.hatch()
    found = covered(hatch, Faces(("Crown",)))
    crown = hatch.areas[hatch.patches == hatch.patch_names.index("Crown")].sum()
    assert found.area == pytest.approx(crown, rel=1e-3)


def test_what_falls_apart_comes_in_pieces():
    named = np.where(np.abs(PLATE.centroids[:, 0]) > 50.0, 1, 0)
    surface = Surface(PLATE.vertices, PLATE.triangles, named, ("Middle", "Ends"))
    found = covered(surface, Faces(("Ends",)))
    assert int(found.surface.components.max()) == 1
    assert found.area == pytest.approx(100.0 * 120.0, rel=1e-3)


def test_all_of_the_face_is_the_face():
    found = covered(PLATE, Strip(80.0))
    assert found.area == pytest.approx(200.0 * 120.0)
    assert len(found.ends) == 0


@pytest.mark.parametrize(
    ("extent", "setback", "words"),
    [
        (Round((0.0, 0.0, 40.0), 20.0), 0.0, "nowhere on the face"),
        (Round((300.0, 0.0, 0.0), 20.0), 0.0, "move it onto the face"),
        (Round((0.0, 0.0, 0.0), 10.0), 12.0, "12 mm further in.*shorten the drop-off"),
        (Strip(10.0), 12.0, "shorten the drop-off"),
        (Faces(("Roof",)), 0.0, "'Roof'"),
    ],
)
def test_what_covers_nothing_is_refused_in_one_sentence(extent, setback, words):
    with pytest.raises(InputError, match=words):
        covered(PLATE, extent, setback)
