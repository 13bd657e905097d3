import numpy as np
import pytest

import shapes
from laywright.surface.double_curvature import double_curvature
from laywright.surface.triangles import Surface


def grid(height, count=60, size=200.0):
    """A height field over a square, as even triangles."""
    line = np.linspace(-0.5 * size, 0.5 * size, count + 1)
    x, y = (axis.ravel() for axis in np.meshgrid(line, line))
    corner = np.arange(count * (count + 1)).reshape(count, count + 1)[:, :-1].ravel()
    right, above = corner + 1, corner + count + 1
    triangles = np.concatenate(
        [np.stack([corner, right, above], 1), np.stack([right, above + 1, above], 1)]
    )
    return Surface.single(np.stack([x, y, height(x, y)], axis=1), triangles)


def test_a_cylinder_and_a_plane_have_none():
    assert double_curvature(grid(lambda x, y: 0.0 * x)) < 1e-12
    assert double_curvature(grid(lambda x, y: np.sqrt(400.0**2 - x**2))) < 1e-9


@pytest.mark.parametrize("radius", [250.0, 500.0])
def test_a_sphere_has_the_inverse_square_of_its_radius(radius):
    cap = grid(lambda x, y: np.sqrt(radius**2 - x**2 - y**2))
    assert double_curvature(cap) == pytest.approx(1.0 / radius**2, rel=0.02)


def test_a_saddle_counts_without_its_sign():
    saddle = grid(lambda x, y: (x**2 - y**2) / 4000.0)
    assert double_curvature(saddle) == pytest.approx(1.0 / 2000.0**2, rel=0.05)


def test_a_single_triangle_has_no_inner_point():
    assert double_curvature(Surface.single(np.eye(3), np.array([[0, 1, 2]]))) == 0.0
    assert double_curvature(shapes.hatch()) > 0.0
