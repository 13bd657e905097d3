"""The map of distances from the CAD faces: each facet in its step, none left out."""

from __future__ import annotations

import numpy as np
import pytest

import shapes
from laywright.mould.body.body import build_body
from laywright.mould.body.from_cad import distance_steps
from laywright.surface.face import MouldSide, take_face


@pytest.mark.parametrize("thickness", [0.0, 2.0])
def test_every_facet_of_the_working_area_has_its_step(thickness):
    face = take_face(shapes.cap(60.0, 0.8, 10), (0.0, 0.0, 1.0), mould_side=MouldSide.INSIDE)
    body = build_body(face, thickness)
    scale, steps = distance_steps(body.from_cad, body.working, body.solid, body.on_working_area)
    np.testing.assert_array_equal(steps >= 0, body.on_working_area)
    here = scale.steps(np.array([thickness]))[0]
    assert set(steps[body.on_working_area].tolist()) == {here}
    shares = scale.shares(np.abs(body.from_cad), np.ones(len(body.from_cad)))
    assert shares[here] == pytest.approx(1.0)
