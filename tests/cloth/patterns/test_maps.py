"""Maps of a drape: values, steps, legend."""

import math
from dataclasses import replace

import numpy as np
import pytest

import shapes
from cloth_demo import hatch_patterns
from laywright.cloth.cuts.pieces import Piece
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.drape import drape
from laywright.cloth.drape.fabric import fabric_of
from laywright.cloth.patterns.maps import MAPS, ClothMap, flat_surface, map_of
from laywright.cloth.plies.lay import DrapedPly
from laywright.files.scale import stepped
from laywright.laminate.materials import load_materials


@pytest.fixture(scope="module")
def draped():
    cloth = load_materials().cloth("E-glass twill weave 200 g/m^2")
    cap = shapes.cap(100.0, math.radians(45.0), 14)
    datum = Datum((0.0, 0.0, 100.0), (1.0, 0.0, 0.0))
    result = drape(cap, fabric_of(cloth), datum)
    return DrapedPly(cap, result, (Piece(np.arange(len(cap.triangles)), datum),)), cloth


def test_shear_is_shown_in_steps_up_to_the_locking_angle(draped):
    ply, cloth = draped
    found = map_of(ply, cloth, MAPS[0])
    assert found.values == pytest.approx(np.degrees(np.abs(ply.drape.shear)))
    assert found.bears == pytest.approx(math.degrees(cloth.locking_angle), abs=0.05)
    assert found.scale.limits[-1] == found.bears
    assert len(found.colours) == len(ply.surface.triangles)
    assert sum(found.shares) == pytest.approx(1.0)
    # On a sphere shear grows outwards on the bias and stays away on the warp and the weft.
    middles = ply.surface.centroids
    outside = np.hypot(middles[:, 0], middles[:, 1]) > 55.0
    turn = np.degrees(np.arctan2(middles[:, 1], middles[:, 0])) % 90.0
    bias = outside & (np.abs(turn - 45.0) < 5.0)
    straight = outside & (np.minimum(turn, 90.0 - turn) < 4.0)
    assert found.values[bias].min() > 3.0 * found.values[straight].max()


@pytest.mark.parametrize("kind", MAPS[1:])
def test_stretch_is_shown_in_percent(draped, kind):
    found = map_of(*draped, kind)
    drape_values = {
        MAPS[1]: draped[0].drape.warp_stretch,
        MAPS[2]: draped[0].drape.weft_stretch,
    }
    assert found.values == pytest.approx(100.0 * drape_values[kind])
    assert found.scale.unit == "%"
    assert found.bears == pytest.approx(1.0)
    assert found.scale.limits.tolist() == pytest.approx([-1.0, -0.1, 0.1, 1.0])


@pytest.mark.parametrize(
    ("largest", "limits"),
    [
        (2.3, [0.5, 1.0, 1.5, 2.0, 2.5, 50.0]),
        (0.01, [0.1, 50.0]),
        (23.0, [5.0, 10.0, 15.0, 20.0, 25.0, 50.0]),
        (48.0, [10.0, 20.0, 30.0, 40.0, 50.0]),
        (70.0, [20.0, 40.0, 50.0]),
    ],
)
def test_shear_is_resolved_in_round_steps_and_the_locking_angle_stays_marked(
    draped, largest, limits
):
    ply, cloth = draped
    shear = np.radians(np.linspace(0.0, largest, len(ply.surface.triangles)))
    laid = replace(ply, drape=replace(ply.drape, shear=shear))
    found = map_of(laid, cloth, MAPS[0])
    assert found.scale.limits.tolist() == limits
    past = ply.surface.areas[np.degrees(shear) > 50.0].sum() / ply.surface.area
    assert found.shares[-1] == pytest.approx(past)
    assert (len(found.limit_lines) > 0) == (largest > 50.0)
    assert max(found.shares) < 0.7 or largest < 0.1


def test_contours_of_a_field_lie_where_it_takes_the_value():
    plate = shapes.graph(lambda x, y: 0 * x, (-60, 60), (-40, 40), (24, 16))
    values = plate.centroids[:, 0] + 60.0
    found = ClothMap(plate, values, stepped("deg", (30.0, 90.0)), 90.0)
    lines = np.concatenate([found.contours, found.limit_lines])
    assert np.abs(found.limit_lines[:, :, 0] - 30.0).max() < 2.0
    x = lines[:, :, 0]
    assert np.minimum(np.abs(x + 30.0), np.abs(x - 30.0)).max() < 2.0
    lengths = np.linalg.norm(lines[:, 1] - lines[:, 0], axis=1)
    assert lengths.sum() == pytest.approx(2 * 80.0, rel=0.05)


def test_a_map_lies_on_the_flat_pattern_as_it_lies_on_the_part():
    found = hatch_patterns()
    ply, pattern = found.draped[0], found.patterns[0]
    flat = flat_surface(ply, [pattern], [(100.0, 7.0)])
    assert flat.area == pytest.approx(pattern.net_area, rel=1e-3)
    assert flat.normals[:, 2].min() == pytest.approx(1.0)
    loop = flat.vertices[flat.boundary_loops[0]]
    assert loop[:, 0].min() == pytest.approx(100.0 + pattern.trim[:, 0].min(), abs=0.1)
    assert loop[:, 1].max() == pytest.approx(7.0 + pattern.trim[:, 1].max(), abs=0.1)
