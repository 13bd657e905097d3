"""The body that is still to be parted: closed, and its working area kept."""

from __future__ import annotations

import math

import numpy as np
import pytest

import shapes
from laywright.errors import GeometryError
from laywright.mould.body.parted_body import parted_body
from laywright.surface.triangles import Surface

OWN = ("run-off", "filled", "sides", "base")


def named(surface):
    names = (*surface.patch_names, *OWN)
    return Surface(surface.vertices, surface.triangles, surface.patches, names)


def test_the_body_round_a_ball_holds_what_a_prism_less_the_ball_does():
    ball = shapes.sphere(50.0, 24)
    surface = ball.part((ball.corners[..., 2] < 40.0).all(axis=1)).flipped()
    body = parted_body(named(surface), 30.0, (1, 2, 3, 4))
    assert body.is_closed
    assert body.areas[body.patches == 0].sum() == pytest.approx(surface.area, rel=1e-12)
    top = float(surface.vertices[:, 2].max())
    hollow = math.pi * (50.0 + top) ** 2 * (3 * 50.0 - (50.0 + top)) / 3.0
    block = math.pi * 80.0**2 * (top + 80.0)
    assert body.volume == pytest.approx(block - hollow, rel=0.02)


@pytest.mark.parametrize("surface", [shapes.tray(turns=4), shapes.lobed(3, 3, 0.6)])
def test_hollow_outlines_and_undercuts_close(surface):
    body = parted_body(
        named(surface.flipped()), 20.0, tuple(len(surface.patch_names) + i for i in range(4))
    )
    assert body.is_closed
    assert body.volume > 0.0
    low = surface.bounds[0]
    np.testing.assert_allclose(body.bounds[0, :2], low[:2] - 20.0, atol=0.3)
    assert body.bounds[0, 2] == pytest.approx(low[2] - 20.0)


def test_a_trim_edge_that_crosses_itself_is_refused():
    surface = shapes.plate(
        np.array([[0, 0], [40, 0], [40, 10], [0, 10]], float), lambda x, y: 0 * x
    )
    turned = surface.vertices.copy()
    angle = np.pi * turned[:, 0] / 40.0
    turned[:, 1], turned[:, 2] = (
        (turned[:, 1] - 5.0) * np.cos(angle),
        (surface.vertices[:, 1] - 5.0) * np.sin(angle),
    )
    with pytest.raises(GeometryError, match="a trim edge that crosses itself"):
        parted_body(named(surface.moved(turned)), 10.0, (1, 2, 3, 4))
