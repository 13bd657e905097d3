from __future__ import annotations

import dataclasses

import numpy as np
import pytest

import shapes
from job_demo import hatch
from laywright.cloth.patterns.pattern import PatternSettings, make_patterns
from laywright.job.draped import draped_places
from laywright.laminate.laminate import analyse
from laywright.laminate.local import local_laminate
from laywright.surface.face import MouldSide, take_face


@pytest.fixture(scope="module")
def draped():
    job = hatch()
    laminate = analyse(job.layup)
    face = take_face(job.surface, None)
    patterns = make_patterns(face, laminate, None, PatternSettings(triangles=1500))
    return laminate, patterns, draped_places(patterns)


def test_on_a_gentle_crown_the_plies_keep_their_angles_and_weight(draped):
    laminate, patterns, places = draped
    planned = np.array([ply.angle for ply in laminate.layup.plies])
    away = np.angle(np.exp(1j * (places.warp - planned)))
    # only where the rim turns down does the cloth leave its angle
    assert np.degrees(np.abs(away)).max() < 35.0
    assert abs(np.degrees(places.areas @ away / places.areas.sum())).max() < 1.0
    for ply, column in enumerate(places.cover.T):
        flat = patterns.patterns[ply].net_area
        area = patterns.draped[ply].surface.areas
        assert column @ area == pytest.approx(flat, rel=2e-3)


def test_mass_of_the_part_is_that_of_the_cloth_within_its_edge(draped):
    laminate, patterns, places = draped
    found = local_laminate(laminate, places)
    cloth = sum(pattern.net_area for pattern in patterns.patterns) * 1e-6 * 200.0
    assert found.mass == pytest.approx(2.0 * cloth, rel=0.01)  # as much resin as cloth
    spread = found.spread("modulus along")
    assert spread.low < spread.middle <= spread.high
    assert spread.mean == pytest.approx(spread.planned, rel=0.05)


@pytest.mark.parametrize("surface", ["sheet", "cylinder"])
def test_on_a_developable_face_every_place_is_the_laminate_itself(surface):
    """Cloth lies on a cylinder without strain, at its own angle to the arrow everywhere."""
    corners = np.array([[0.0, 0.0], [200.0, 0.0], [200.0, 120.0], [0.0, 120.0]])
    faces = {
        "sheet": lambda: shapes.plate(corners, lambda x, y: 0.0 * x),
        "cylinder": lambda: shapes.cylinder_patch(150.0, 1.0, 200.0),
    }
    laminate = analyse(dataclasses.replace(hatch().layup, plies=hatch().layup.plies[:2]))
    face = take_face(faces[surface](), (0.0, 0.0, 1.0), mould_side=MouldSide.INSIDE)
    patterns = make_patterns(face, laminate, None, PatternSettings(triangles=800))
    places = draped_places(patterns)
    planned = np.array([ply.angle for ply in laminate.layup.plies])
    assert np.degrees(np.abs(np.sin(places.warp - planned))).max() < 0.5
    assert np.degrees(np.abs(np.cos(places.weft - planned))).max() < 0.5
    for spread in local_laminate(laminate, places).spreads:
        assert (spread.low, spread.high) == pytest.approx((spread.planned,) * 2, rel=5e-3)


def test_a_ply_with_other_triangles_is_read_where_it_lies(draped):
    """Where a ply lies far off the face, it may be meshed otherwise than the first."""
    laminate, patterns, places = draped
    face = take_face(hatch().surface, None)
    coarse = make_patterns(face, laminate, None, PatternSettings(triangles=700))
    mixed = dataclasses.replace(
        patterns, draped=(patterns.draped[0], coarse.draped[1], patterns.draped[2])
    )
    found = draped_places(mixed)
    assert found.warp.shape == places.warp.shape
    np.testing.assert_array_equal(found.warp[:, [0, 2]], places.warp[:, [0, 2]])
    away = np.angle(np.exp(1j * (found.warp[:, 1] - places.warp[:, 1])))
    assert np.degrees(np.sqrt(places.areas @ away**2 / places.areas.sum())) < 5.0
    assert found.cover[:, 1] @ places.areas == pytest.approx(
        places.cover[:, 1] @ places.areas, rel=5e-3
    )
