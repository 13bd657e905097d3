"""The drape as a whole; closed forms stand in tests/checks."""

import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright import values
from laywright.cloth.drape.datum import Datum, default_datum, start_place, warp_direction
from laywright.cloth.drape.drape import Drape, drape
from laywright.cloth.drape.even_mesh import even_mesh
from laywright.cloth.drape.fabric import Fabric, Start, fabric_for
from laywright.cloth.drape.hold import Held
from laywright.cloth.drape.strain import image_of, turned_over
from laywright.errors import Cancelled, GeometryError, InputError
from laywright.laminate.materials import Weave
from laywright.surface.triangles import Surface

TOP = Datum((0, 0, 100), (1, 0, 0))
LOOSE = Fabric(1.0, 1.0, 1e-6, math.pi / 2)


def dish(cells, half=80.0, p=100.0):
    return shapes.graph(
        lambda x, y: (x * x + y * y) / (2 * p), (-half, half), (-half, half), (cells,) * 2
    )


def exact_on_dish(surface, p=100.0):
    """Arc lengths of the parabolas (translation surface, check DRP-06)."""
    t = surface.vertices[:, :2] / p
    return p / 2 * (t * np.sqrt(1 + t * t) + np.arcsinh(t))


def test_the_net_of_a_translation_surface_converges_in_the_second_order():
    errors = []
    for cells in (10, 20, 40):
        surface = dish(cells)
        result = drape(surface, LOOSE, Datum((0, 0, 0), (1, 0, 0)))
        errors.append(np.abs(result.uv - exact_on_dish(surface)).max())
    assert errors[0] / errors[1] > 3.5
    assert errors[1] / errors[2] > 3.5
    assert errors[2] < 0.03


def test_strain_hardly_depends_on_how_the_triangles_lie():
    """Jittered points: yarn stretch below 0.1 % and shear within 1 degree of the closed form."""
    surface = dish(40)
    points = surface.vertices.copy()
    inner = np.abs(points[:, :2]).max(axis=1) < 79.9
    points[inner, :2] += np.random.default_rng(3).uniform(-1, 1, (inner.sum(), 2))
    points[:, 2] = (points[:, 0] ** 2 + points[:, 1] ** 2) / 200
    surface = surface.moved(points)
    result = drape(surface, fabric_for(Weave.TWILL), Datum((0, 0, 0), (1, 0, 0)))
    x, y = surface.centroids[:, 0] / 100, surface.centroids[:, 1] / 100
    exact = np.arcsin(x * y / np.sqrt((1 + x * x) * (1 + y * y)))
    assert result.yarn_stretch < 1e-3
    assert math.degrees(np.abs(result.shear - exact).max()) < 1.0


@pytest.mark.parametrize("weave", list(Weave))
@pytest.mark.parametrize("angle", [0.0, 0.6])
def test_every_cloth_lies_on_a_cylinder_without_strain(weave, angle):
    surface = shapes.cylinder_patch(50, 2.0, 120, (24, 24))
    result = drape(surface, fabric_for(weave), default_datum(surface), angle)
    assert result.at_rest
    assert result.largest_shear < 1e-3
    assert result.yarn_stretch < 1e-3
    assert result.locked_share == 0.0


@pytest.mark.parametrize("weave", list(Weave))
def test_no_triangle_turns_over_on_a_deep_cap(weave):
    cap = shapes.cap(100, math.radians(100), 14)
    result = drape(cap, fabric_for(weave), TOP, 0.3)
    assert turned_over(cap, result.uv) == 0
    assert result.at_rest


def test_woven_cloth_hardly_stretches_its_yarns_on_a_sphere():
    cap = even_mesh(shapes.cap(100, math.radians(45), 40), 5.0)
    result = drape(cap, fabric_for(Weave.SATIN), TOP)
    assert result.locked_share == 0.0
    assert result.yarn_stretch < 1e-3
    assert abs((cap.areas @ result.warp_stretch) / cap.area) < 1e-4


def test_mirrored_dish_gives_mirrored_cloth():
    """With the warp along a mirror plane shear changes its sign across it."""
    surface = dish(20)
    result = drape(surface, LOOSE, Datum((0, 0, 0), (1, 0, 0)))
    mirrored = surface.centroids * [1, -1, 1]
    partner = np.linalg.norm(surface.centroids[:, None] - mirrored[None], axis=2).argmin(axis=0)
    assert result.shear == pytest.approx(-result.shear[partner], abs=1e-3)


def test_zero_stands_at_the_start_point_and_warp_runs_along_u():
    cap = shapes.cap(100, 1.0, 20)
    at = Datum((30, 20, 90), (1, 0, 0))
    result = drape(cap, LOOSE, at, 0.5)
    shared = drape(cap, LOOSE, at, 0.5, first=result.uv)
    assert shared.uv == pytest.approx(result.uv, abs=0.05)
    assert start_place(cap, at).value(cap, result.uv) == pytest.approx([0, 0], abs=1e-9)
    ahead = image_of(cap, result.uv, at.origin, warp_direction(cap, at, 0.5))
    assert ahead == pytest.approx([1, 0], abs=0.02)


@given(st.floats(-3.2, 3.2))
@settings(max_examples=5, deadline=None)
def test_a_round_cap_does_not_care_for_the_angle(angle):
    cap = shapes.cap(100, 0.8, 16)
    first = drape(cap, fabric_for(Weave.TWILL), TOP)
    turned = drape(cap, fabric_for(Weave.TWILL), TOP, angle)
    assert turned.largest_shear == pytest.approx(first.largest_shear, abs=0.015)


def test_freer_starts_need_less_shear():
    """Over a bump to one side straight threads are led astray; letting them go spares shear."""
    bump = shapes.graph(
        lambda x, y: 18 * np.exp(-((x - 20) ** 2 + (y + 10) ** 2) / 900),
        (-60, 60),
        (-50, 50),
        (24, 20),
    )
    means = []
    for start in (Start.CROSS, Start.EASED, Start.POINT):
        result = drape(bump, fabric_for(Weave.TWILL), default_datum(bump), start=start)
        assert turned_over(bump, result.uv) == 0
        means.append(bump.areas @ result.shear**2)
    assert means == sorted(means, reverse=True)
    assert means[1] < 0.9 * means[0]


ROUGH_GROUND = {
    "saddle": lambda x, y: (x * x - y * y) / 80,
    "waves": lambda x, y: 8 * np.sin(x / 12) * np.cos(y / 15),
    "spike": lambda x, y: 30 * np.exp(-(x * x + y * y) / 500),
    "tray": lambda x, y: 3 * np.logaddexp(np.maximum(np.abs(x), np.abs(y)) - 42, 0.0),
}


@pytest.mark.parametrize("weave", [Weave.PLAIN, Weave.UNIDIRECTIONAL, Weave.MAT])
@pytest.mark.parametrize("ground", ROUGH_GROUND)
def test_rough_ground_is_covered_without_turned_triangles(ground, weave):
    """More curvature than cloth can follow: it locks, but the drape comes to rest."""
    surface = shapes.graph(ROUGH_GROUND[ground], (-60, 60), (-50, 50), (28, 24))
    result = drape(surface, fabric_for(weave), default_datum(surface))
    assert result.at_rest
    assert turned_over(surface, result.uv) == 0
    if weave is Weave.PLAIN:
        assert result.yarn_stretch < 0.02
        mean = surface.areas @ result.warp_stretch / surface.area
        assert abs(mean) < 5e-3


def test_locked_share_counts_area():
    cap = shapes.cap(100, 1.2, 14)
    lock = math.radians(20)
    result = drape(cap, Fabric(1, 1, 1e-5, lock), TOP)
    past = np.abs(result.shear) > lock
    assert result.locked_share == pytest.approx(cap.areas[past].sum() / cap.area)
    assert 0.1 < result.locked_share < 0.9
    stiff = drape(cap, Fabric(1, 1, 1e-5, lock, 0.03), TOP)
    assert stiff.largest_shear < result.largest_shear
    assert stiff.yarn_stretch > result.yarn_stretch


def test_held_points_stay_where_they_stick():
    plate = shapes.graph(lambda x, y: 0.0 * x, (-30, 30), (-20, 20), (12, 8))
    edge = np.flatnonzero(plate.vertices[:, 0] < -29.9)
    turn = 0.3
    wanted = np.stack([-20 * math.sin(turn) + 0 * edge, 0.0 * edge], axis=1)
    wanted[:, 0] = 5.0 - math.sin(turn) * plate.vertices[edge, 1]
    wanted[:, 1] = 7.0 + math.cos(turn) * plate.vertices[edge, 1]
    result = drape(
        plate, fabric_for(Weave.TWILL), Datum((0, 0, 0), (1, 0, 0)), held=Held(edge, wanted)
    )
    assert result.uv[edge] == pytest.approx(wanted, abs=1e-3)
    assert result.largest_shear < 1e-3


def test_progress_rises_and_the_drape_can_be_stopped():
    told = []
    drape(
        shapes.cap(10, 1.0, 6),
        LOOSE,
        Datum((0, 0, 10), (1, 0, 0)),
        progress=lambda s, _="": told.append(s),
    )
    assert told[0] == 0.0
    assert told[-1] == 1.0

    def stop(share, doing=""):
        if share > 0.5:
            raise Cancelled

    with pytest.raises(Cancelled):
        drape(shapes.cap(10, 1.0, 6), LOOSE, Datum((0, 0, 10), (1, 0, 0)), progress=stop)


def test_result_is_stored_and_read_back():
    result = drape(shapes.cap(10, 0.8, 4), LOOSE, Datum((0, 0, 10), (1, 0, 0)))
    again = values.unpack(Drape, values.pack(result))
    assert values.digest(again) == values.digest(result)


def test_what_cannot_be_draped_is_refused_in_one_sentence():
    with pytest.raises(GeometryError, match="closes on itself"):
        drape(shapes.sphere(10, 6), LOOSE, TOP)
    with pytest.raises(InputError, match="datum arrow"):
        drape(shapes.cap(10, 1.0, 4), LOOSE, Datum((0, 0, 10), (0, 0, 1)))
    points = np.array([[0, 0, 0], [1, 0, 0], [2, 0, 0], [0, 1, 0]], float)
    with pytest.raises(GeometryError, match="without area"):
        drape(Surface.single(points, np.array([[0, 1, 2], [0, 2, 3]])), LOOSE, TOP)


@given(
    st.lists(st.floats(-1.0, 1.0), min_size=9, max_size=9),
    st.floats(0.0, 14.0),
    st.sampled_from(list(Weave)),
    st.floats(-1.6, 1.6),
)
@settings(max_examples=25, deadline=None)
def test_no_triangle_turns_over_on_whatever_face(shares, height, weave, angle):
    """Hills and pits of any height, four to each side of 100 mm, slopes up to about 60 degrees."""
    size = 50.0
    waves = np.reshape(shares, (3, 3))

    def ground(x, y):
        each = [
            waves[i, j] * np.sin((i + 1) * np.pi * x / size) * np.cos((j + 1) * np.pi * y / size)
            for i in range(3)
            for j in range(3)
        ]
        return height / 3.0 * sum(each)

    surface = shapes.graph(ground, (-size, size), (-size, size), (14, 14))
    result = drape(surface, fabric_for(weave), default_datum(surface), angle)
    assert turned_over(surface, result.uv) == 0
    assert np.isfinite(result.shear).all()
    assert np.abs(result.shear).max() < math.pi / 2
