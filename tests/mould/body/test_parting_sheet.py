"""The sheet between pieces: exact on the lines, level between level lines, a graph."""

from __future__ import annotations

import numpy as np
import pytest

import shapes
from laywright.errors import GeometryError
from laywright.mould.body.parting_sheet import lay_sheet

BOUNDS = np.array([[-80.0, -70.0], [80.0, 70.0]])


def halves(height):
    ball = shapes.sphere(50.0, 16)
    low, high = ball.centroids[:, 2] < 0.0, ball.centroids[:, 2] > 0.0
    return ball.part(low), ball.part(high)


def ring(count=40, lift=lambda turn: 0.0 * turn):
    turn = np.linspace(0.0, 2.0 * np.pi, count + 1)
    turn[-1] = 0.0
    return np.stack([50.0 * np.cos(turn), 50.0 * np.sin(turn), lift(turn)], axis=1)


def test_a_level_line_gives_a_level_sheet():
    sheet = lay_sheet([ring()], *halves(0.0), BOUNDS, "a sheet")
    np.testing.assert_allclose(sheet.surface.vertices[:, 2], 0.0, atol=1e-9)
    body = sheet.below(-10.0)
    assert body.is_closed
    assert body.volume == pytest.approx(160.0 * 140.0 * 10.0, rel=1e-9)
    np.testing.assert_allclose(sheet.height(np.array([[70.0, 3.0]])), [[0.0, 0.0]], atol=1e-9)


def test_a_leaning_line_is_met_exactly_and_carried_on_between_its_heights():
    line = ring(lift=lambda turn: 8.0 * np.cos(turn))
    sheet = lay_sheet([line], *halves(0.0), BOUNDS, "a sheet")
    found = sheet.surface.vertices
    for point in line:
        assert np.linalg.norm(found - point, axis=1).min() == 0.0
    assert (sheet.surface.normals[:, 2] > 0.0).all()
    assert np.abs(found[:, 2]).max() <= 8.0 + 1e-9
    # a plane is harmonic: inside the ring the sheet is the plane through it
    inside = np.linalg.norm(found[:, :2], axis=1) < 45.0
    np.testing.assert_allclose(found[inside, 2], 8.0 * found[inside, 0] / 50.0, atol=0.05)


def test_the_sheet_stays_between_the_working_areas():
    low, high = halves(0.0)
    bump = low.vertices.copy()
    bump[:, 2] = np.where(np.linalg.norm(bump[:, :2], axis=1) < 20.0, 15.0, bump[:, 2])
    sheet = lay_sheet([ring()], low.moved(bump), high, BOUNDS, "a sheet")
    middle = sheet.height(np.array([[0.0, 0.0], [5.0, 5.0], [70.0, 0.0]]))[:, 0]
    assert (middle[:2] > 15.0).all()
    assert middle[2] == pytest.approx(0.0, abs=1.0)


def test_a_line_that_crosses_itself_is_refused():
    line = np.array([[-40, -40, 0], [40, 40, 5], [40, -40, 0], [-40, 40, -5]], float)
    with pytest.raises(GeometryError, match="a parting line that crosses itself"):
        lay_sheet([line], *halves(0.0), BOUNDS, "the flange of piece 1")
