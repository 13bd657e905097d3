"""The mould's frame is a rotation whose third axis is the pull."""

from __future__ import annotations

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from laywright.mould.frame import upright


@given(st.tuples(*[st.floats(-1.0, 1.0)] * 3).filter(lambda v: np.linalg.norm(v) > 0.1))
def test_rotation_with_the_pull_upwards(pull):
    turn = upright(pull)
    np.testing.assert_allclose(turn @ turn.T, np.eye(3), atol=1e-12)
    assert np.linalg.det(turn) > 0.0
    np.testing.assert_allclose(turn @ np.array(pull), [0, 0, np.linalg.norm(pull)], atol=1e-12)
