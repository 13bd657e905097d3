"""Mixed steps of a slow iteration."""

import numpy as np
import pytest

from laywright.cloth.mixer import Mixer


def test_mixing_solves_a_linear_iteration_in_as_many_steps_as_it_has_modes():
    matrix = np.diag([0.9, 0.5, -0.7, 0.2])
    goal = np.array([[1.0, 2.0], [3.0, 4.0]])
    place, mixer = np.zeros((2, 2)), Mixer()
    for _ in range(7):
        step = (matrix @ (place - goal).ravel()).reshape(2, 2) + goal - place
        place = mixer.mix(place, step)
    assert place == pytest.approx(goal, abs=1e-9)
