"""The drape against the closed forms of pin-jointed nets.

The closed forms hold for yarns that do not stretch and shear that costs nothing; the cloth
here comes near to that, its start yarns held straight as the closed forms ask.  Values are read
from the solver's result with `cloth.drape.reading`, without the closed forms.
"""

import math
from functools import cache

import numpy as np
import pytest
from scipy.interpolate import CubicSpline

import shapes
from checks.reference import agree, row
from cloth.drape.reading import read_cloth, strain_of, yarn_directions
from laywright.cloth.drape.datum import Datum, default_datum
from laywright.cloth.drape.drape import drape
from laywright.cloth.drape.fabric import Fabric, Start, fabric_for
from laywright.cloth.drape.hold import Held
from laywright.cloth.drape.recovery import strain_at_vertices
from laywright.laminate.materials import Weave
from laywright.surface.triangles import Surface

LOOSE = Fabric(1.0, 1.0, 1e-6, math.pi / 2, start=Start.CROSS)
RADIUS = 100.0
POLE = Datum((0.0, 0.0, RADIUS), (1.0, 0.0, 0.0))


def sphere_square(cells: int, half: float = math.radians(68.0)) -> Surface:
    """A square grid of distances from the pole, laid on the sphere along the meridians."""
    flat = shapes.graph(lambda x, y: 0.0 * x, (-half, half), (-half, half), (cells, cells))
    x, y = flat.vertices[:, 0], flat.vertices[:, 1]
    polar = np.hypot(x, y)
    share = np.sinc(polar / np.pi)
    return flat.moved(RADIUS * np.stack([x * share, y * share, np.cos(polar)], axis=1))


@cache
def on_sphere(cells: int = 80):
    surface = sphere_square(cells)
    return surface, drape(surface, LOOSE, POLE)


def read(points):
    """Polar angle and shear at points (u, v) over the radius, in degrees."""
    surface, result = on_sphere()
    reading = read_cloth(surface, result.uv, RADIUS * np.atleast_2d(points))
    x, y, z = reading.points.T
    return np.degrees(np.arctan2(np.hypot(x, y), z)), np.degrees(reading.shear)


def test_yarns_do_not_stretch():
    """12,800 triangles: far below the 0.1 % that counts as hardly stretching."""
    _, result = on_sphere()
    assert result.at_rest
    assert result.yarn_stretch < 1e-4


def test_net_on_a_sphere():
    polar, shear = read([[0.5, 0.5], [1.0, 1.0], [0.4, 1.0]])
    agree(
        "DRP-01",
        {
            "gamma(u=v=0.5R)": shear[0],
            "gamma(u=v=1.0R)": shear[1],
            "gamma(u=0.4R,v=1.0R)": shear[2],
            "polar_angle(u=v=0.5R)": polar[0],
            "polar_angle(u=v=1.0R)": polar[1],
        },
    )


@cache
def bias():
    """Polar angle and shear along the bias u = v, as splines over u / radius."""
    u = np.linspace(0.1, 1.02, 47)
    polar, shear = read(np.stack([u, u], axis=1))
    return CubicSpline(polar, u), CubicSpline(u, shear)


def test_hemisphere():
    """Where the net would collapse lies beyond the hemisphere: no drape reaches it."""
    u_at, shear_at = bias()
    u = float(u_at(90.0))
    shear = float(shear_at(u))
    along = [[t, 0.0] for t in (0.3, 0.6, 0.9)] + [[0.0, t] for t in (0.3, 0.6, 0.9)]
    agree(
        "DRP-02",
        {
            "gamma_equator_bias": shear,
            "yarn_angle": 90.0 - shear,
            "u_over_R": u,
            "gamma_on_start_yarns": float(np.abs(read(along)[1]).max()),
        },
        without=("s_where_net_collapses",),
    )


def test_shear_along_the_bias():
    u_at, shear_at = bias()
    agree("DRP-03", {f"gamma_bias_polar_{a}": float(shear_at(u_at(a))) for a in (30, 60)})


def curvature_of_patch(u, v):
    """Integral of the Gaussian curvature over the patch 0..u by 0..v, both over the radius.

    The area of the patch is that of its cloth times the cosine of the shear; 10 x 10 points
    of Gauss and Legendre.
    """
    nodes, weights = np.polynomial.legendre.leggauss(10)
    at_u, at_v = np.meshgrid(u * (nodes + 1) / 2, v * (nodes + 1) / 2, indexing="ij")
    _, shear = read(np.stack([at_u.ravel(), at_v.ravel()], axis=1))
    cosine = np.cos(np.radians(shear)).reshape(10, 10)
    return float(weights @ cosine @ weights) * u * v / 4


def test_shear_is_the_curvature_of_the_patch():
    found = {"int_K(0.8R,0.8R)": curvature_of_patch(0.8, 0.8)}
    found["int_K(0.4R,1.0R)"] = curvature_of_patch(0.4, 1.0)
    agree("DRP-05", found, without=("bound",))  # a sentence, held by the lines below
    _, shear = read([[0.8, 0.8], [0.4, 1.0]])
    assert np.radians(shear) == pytest.approx(list(found.values()), abs=3e-4)
    assert np.radians(np.abs(read([[1.0, 1.0]])[1])) < math.pi / 2


def paraboloid(cells):
    p = 100.0
    half = 110.0
    surface = shapes.graph(
        lambda x, y: (x * x + y * y) / (2 * p), (-half, half), (-half, half), (cells, cells)
    )
    return surface, drape(surface, LOOSE, Datum((0, 0, 0), (1, 0, 0)))


def at(surface, x, y):
    """Vertex at (x, y)."""
    index = int(np.argmin(np.hypot(surface.vertices[:, 0] - x, surface.vertices[:, 1] - y)))
    assert surface.vertices[index, :2] == pytest.approx([x, y], abs=1e-9)
    return index


def test_paraboloid():
    """Lengths by Richardson from two meshes: facets cut chords, wrong in the second order."""
    coarse, fine = paraboloid(44), paraboloid(88)
    surface, result = fine
    shear = np.degrees(strain_at_vertices(surface, result.uv).shear)
    found = {f"gamma({a},{a})": shear[at(surface, a, a)] for a in (50, 100)}
    for a in (50, 100):
        near, far = (r.uv[at(s, a, 0), 0] for s, r in (fine, coarse))
        found[f"u({a})"] = (4.0 * near - far) / 3.0
    agree("DRP-06", found)


def test_saddle():
    c = 120.0
    surface = shapes.graph(lambda x, y: (x * x - y * y) / (2 * c), (-90, 90), (-90, 90), (60, 60))
    result = drape(surface, LOOSE, Datum((0, 0, 0), (1, 0, 0)))
    shear = strain_at_vertices(surface, result.uv).shear[at(surface, 60, 60)]
    agree("DRP-08", {"gamma": math.degrees(shear)})


@pytest.mark.parametrize(
    ("surface", "angle"),
    [
        (shapes.cylinder_patch(50, 2.0, 120, (48, 24)), 25.0),
        (shapes.cylinder_patch(50, 2.0, 120, (96, 48)), 25.0),
        (shapes.cone_patch(0.4, 40, 160, 2.0, (48, 24)), 25.0),
        (shapes.cone_patch(0.4, 40, 160, 2.0, (96, 48)), 25.0),
    ],
    ids=["cylinder", "cylinder finer", "cone", "cone finer"],
)
def test_developables_shear_nowhere(surface, angle):
    result = drape(surface, LOOSE, default_datum(surface), math.radians(angle))
    agree("DRP-10", {"max_shear": math.degrees(result.largest_shear)})


def test_bias_sleeve():
    """Cloth held at 45 degrees along one circle of a cone must follow the sleeve's rule.

    Held points replace the start point.  The patch narrows away from the circle so that both
    yarns through each of its points come from the circle.
    """
    half_angle, r0 = 0.5, 50.0
    near, far = 28.0 / math.sin(half_angle), 62.0 / math.sin(half_angle)
    cells = (60, 68)
    surface = shapes.cone_patch(half_angle, near, far, 2.0, cells)
    points = surface.vertices
    radius = np.hypot(points[:, 0], points[:, 1])
    turn = np.arctan2(points[:, 0], -points[:, 1])
    turn *= np.where(radius < r0, 1 - 0.85 * (r0 - radius) / 22, 1 - 0.7 * (radius - r0) / 12)
    surface = surface.moved(
        np.stack([radius * np.sin(turn), -radius * np.cos(turn), points[:, 2]], axis=1)
    )
    circle = np.flatnonzero(np.abs(radius - r0) < 1e-9)
    assert len(circle) == cells[0] + 1
    along = r0 * turn[circle] / math.sqrt(2.0)
    held = Held(circle, np.stack([along, -along], axis=1))
    result = drape(surface, LOOSE, default_datum(surface), held=held)
    assert result.at_rest
    warp, weft = yarn_directions(surface, result.uv)
    shear = strain_at_vertices(surface, result.uv).shear
    meridian = np.stack(
        [
            math.sin(half_angle) * np.sin(turn),
            -math.sin(half_angle) * np.cos(turn),
            np.full(len(turn), -math.cos(half_angle)),
        ],
        axis=1,
    )
    found = {}
    for r in (30, 60):
        middle = int(np.argmin(np.abs(radius - r) + 100 * np.abs(turn)))
        assert radius[middle] == pytest.approx(r, abs=1e-9)
        angles = [math.acos(abs(yarn[middle] @ meridian[middle])) for yarn in (warp, weft)]
        found[f"half_angle(r={r})"] = math.degrees(sum(angles) / 2)
        found[f"gamma(r={r})"] = math.degrees(shear[middle])
    agree("DRP-11", found)


def test_picture_frame():
    """A square cloth in a frame of four equal bars, drawn along its diagonal.

    The strain of the known deformation is measured; nothing is solved.
    """
    side, drawn = 200.0, 40.0
    cloth = shapes.graph(lambda x, y: 0.0 * x, (0, side), (0, side), (4, 4))
    uv = cloth.vertices[:, :2]
    half = math.acos((math.sqrt(2.0) * side + drawn) / (2.0 * side))
    bars = np.array([[math.cos(half), -math.sin(half)], [math.cos(half), math.sin(half)]])
    framed = cloth.moved(np.column_stack([uv @ bars, np.zeros(len(uv))]))
    gamma = np.degrees(strain_of(framed, uv).shear)
    assert np.ptp(gamma) < 1e-9
    slanted = np.array([[1.0, 0.0], [math.sin(math.radians(40)), math.cos(math.radians(40))]])
    sheared = cloth.moved(np.column_stack([uv @ slanted, np.zeros(len(uv))]))
    cover = strain_of(sheared, uv).cover
    agree(
        "DRP-13",
        {
            "gamma": gamma.mean(),
            "areal_factor_40deg": cover.mean(),
            "areal_weight_40deg": 200.0 * cover.mean(),
        },
    )


def test_locking_angles_lie_in_the_reported_ranges():
    """The row holds ranges in words; the usual angles of the weaves lie within them."""
    words = {item["name"]: item["value"] for item in row("DRP-15")["expected"]}
    for weave, name in (
        (Weave.PLAIN, "tight_plain_weave"),
        (Weave.TWILL, "twill_satin"),
        (Weave.SATIN, "twill_satin"),
        (Weave.BIAXIAL, "non_crimp"),
    ):
        low, high = (float(n) for n in words[name].split()[1].split("-"))
        assert low <= math.degrees(fabric_for(weave).locking_angle) <= high


def test_convergence_on_the_sphere_is_of_the_second_order():
    """Against the meridians: the distance from the pole along the warp is the yarn's length."""
    errors = []
    for cells in (20, 40):
        surface, result = on_sphere(cells)
        on_warp = np.abs(surface.vertices[:, 1]) < 1e-9
        polar = np.arctan2(surface.vertices[on_warp, 0], surface.vertices[on_warp, 2])
        errors.append(np.abs(result.uv[on_warp, 0] - RADIUS * polar).max())
    assert errors[0] / errors[1] == pytest.approx(4.0, rel=0.1)


def test_eased_threads_stay_straight_where_symmetry_keeps_them_so():
    surface, straight = on_sphere(40)
    eased = drape(surface, LOOSE, POLE, start=Start.EASED)
    assert np.abs(eased.shear - straight.shear).max() < math.radians(0.5)
