"""The sieve lets no box through its mesh that meets a mark."""

from __future__ import annotations

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from laywright.mould.release.plan_marks import boxes_near


@given(st.integers(0, 10**6), st.integers(0, 12), st.sampled_from([0.0, 0.01, 1.0, 30.0]))
def test_every_box_that_meets_a_mark_is_found(seed, count, size):
    rng = np.random.default_rng(seed)
    first, low = rng.uniform(-50.0, 50.0, (2, count)), rng.uniform(-70.0, 70.0, (2, 300))
    last, high = first + size * rng.random((2, count)), low + 20.0 * rng.random((2, 300)) ** 3
    meets = ((low[:, :, None] <= last[:, None, :]) & (high[:, :, None] >= first[:, None, :])).all(
        axis=0
    )
    found = boxes_near(low, high, (first, last))
    assert found[meets.any(axis=1)].all()
    beyond = (low > last.max(axis=1, initial=-np.inf)[:, None]).any(axis=0)
    assert not found[beyond].any()


def test_far_from_a_line_of_marks_nothing_is_kept():
    along = np.linspace(0.0, 100.0, 400)
    line = np.stack([along[:-1], along[:-1]]), np.stack([along[1:], along[1:]])
    x, y = np.meshgrid(np.arange(100.0), np.arange(100.0))
    low = np.stack([x.ravel(), y.ravel()])
    found = boxes_near(low, low + 0.5, line)
    assert (np.abs(low[0] - low[1])[found] < 2.0).all()
    assert found.sum() >= 100
