"""Edge tape along cut lines."""

import math

import numpy as np
import pytest

from laywright.cloth.roll.tape import TAPES, cut_length, tape_length


def circle(radius, count=720):
    turn = 2.0 * np.pi * np.arange(count) / count
    return radius * np.stack([np.cos(turn), np.sin(turn)], axis=1)


def test_common_widths():
    assert TAPES == (20.0, 50.0)


@pytest.mark.parametrize("width", TAPES)
def test_a_lone_line_takes_its_own_length(width):
    """Half the band lies outside a circle and half inside: 2 pi r w, for any width below 2 r."""
    ring = circle(200.0)
    assert tape_length([ring], width) == pytest.approx(2.0 * math.pi * 200.0, rel=1e-3)
    assert cut_length([ring, ring]) == pytest.approx(4.0 * math.pi * 200.0, rel=1e-4)


def test_neighbours_closer_than_the_width_share_the_tape():
    """Two squares 5 mm apart: the shared band of 500 mm saves width - 5 mm of its width."""
    one = np.array([[0, 0], [500, 0], [500, 500], [0, 500]], float)
    two = one + np.array([505.0, 0.0])
    for width in TAPES:
        shared = 2 * 2000.0 - (500.0 + width) * (width - 5.0) / width
        assert tape_length([one, two], width) == pytest.approx(shared, rel=1e-3)
    assert tape_length([one, one + 2000.0], 50.0) == pytest.approx(4000.0)
