"""What holds the cloth."""

import numpy as np
import pytest

import shapes
from laywright.cloth.drape.datum import Datum, start_place, warp_direction
from laywright.cloth.drape.fabric import Start
from laywright.cloth.drape.hold import Held, first_threads, hold_points, hold_start

PLATE = shapes.graph(lambda x, y: 0.0 * x, (-30, 30), (-20, 20), (7, 5))
DATUM = Datum((3.0, 2.0, 0.0), (1.0, 0.0, 0.0))


def lack(rows, uv):
    return np.abs(rows.matrix @ uv.ravel() - rows.targets).max()


def cloth(turn=0.0, shear=0.0):
    c, s = np.cos(turn), np.sin(turn)
    at = (PLATE.vertices[:, :2] - [3.0, 2.0]) @ np.array([[c, s], [-s, c]])
    return at + np.stack([shear * at[:, 1], np.zeros(len(at))], axis=1)


def rows_of(start, datum=DATUM):
    place = start_place(PLATE, datum)
    threads = first_threads(PLATE, place, warp_direction(PLATE, datum, 0.0), PLATE.vertex_normals)
    return hold_start(PLATE, threads, start, 1e-4)


@pytest.mark.parametrize("start", list(Start))
def test_cloth_laid_true_lacks_nothing(start):
    rows = rows_of(start)
    assert lack(rows, cloth()) < 1e-12
    assert lack(rows, cloth() + np.array([1.0, 0.0])) > 1e-3
    assert lack(rows, cloth(turn=0.1)) > 1e-3


def test_only_the_point_leaves_the_weft_free():
    held = {start: lack(rows_of(start), cloth(shear=0.2)) for start in Start}
    assert held[Start.POINT] < 1e-12
    assert held[Start.EASED] > 1e-6
    assert held[Start.CROSS] > 1e-3


def test_an_eased_thread_costs_its_squared_angle_times_the_shear_stiffness():
    """A weft thread that leans by 0.2 costs 1e-4 * 0.2^2 times its length over the size."""
    rows = rows_of(Start.EASED)
    lacking = rows.matrix @ cloth(shear=0.2).ravel() - rows.targets
    length = 40.0 - 2.0 * 40 / 5 / 2  # between the first and the last crossing
    size = np.sqrt(PLATE.area)
    assert lacking @ lacking == pytest.approx(1e-4 * 0.2**2 * length / size, rel=0.1)


def test_points_are_held_where_they_stick():
    held = Held(np.array([0, 5, 9]), cloth()[[0, 5, 9]])
    rows = hold_points(PLATE, held)
    assert lack(rows, cloth()) < 1e-12
    assert rows.matrix.shape == (6, 2 * len(PLATE.vertices))
    moved = cloth()
    moved[5, 0] += 1.0
    assert lack(rows, moved) > 1e-3


def test_a_start_at_the_very_edge_holds_what_is_there():
    corner = Datum((30.0, 20.0, 0.0), (1.0, 0.0, 0.0))
    for start in Start:
        rows = rows_of(start, corner)
        assert rows.matrix.shape[0] >= 2
        assert np.isfinite(rows.matrix.data).all()
