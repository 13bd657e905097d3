"""The start with the least shear: never worse than the middle, and better where that is known."""

import numpy as np
import pytest

import shapes
from laywright.cloth.drape.datum import default_datum
from laywright.cloth.drape.fabric import fabric_for
from laywright.cloth.drape.start_search import find_start
from laywright.laminate.materials import Weave

TWILL = fabric_for(Weave.TWILL)


def test_on_a_round_cap_the_middle_along_it_stays():
    cap = shapes.cap(100.0, 0.8, 16)
    found = find_start(cap, [(TWILL, 0.0)])
    assert found.datum == default_datum(cap)
    assert found.shear == found.usual_shear


def test_half_a_cap_is_laid_from_where_the_shear_is_least():
    """Of a cap cut off-centre the search beats its middle, or finds nothing clearly better."""
    cap = shapes.cap(100.0, 1.2, 20)
    part = cap.part(cap.centroids[:, 0] > -20.0)
    found = find_start(part, [(TWILL, 0.0)])
    assert found.shear < 0.97 * found.usual_shear
    assert np.linalg.norm(found.datum.direction) == pytest.approx(1.0)
