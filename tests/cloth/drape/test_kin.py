"""What plies take over from each other."""

import numpy as np
import pytest

import shapes
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.drape import drape
from laywright.cloth.drape.even_mesh import even_mesh
from laywright.cloth.drape.fabric import Start, fabric_for
from laywright.cloth.drape.kin import Kin
from laywright.cloth.drape.solver import Settled
from laywright.cloth.drape.strain import turned_over
from laywright.laminate.materials import Weave
from laywright.surface.offset import offset

TOP = Datum((0, 0, 100), (1, 0, 0))
KEY = (fabric_for(Weave.TWILL), 0.0, Start.EASED, TOP)


@pytest.mark.parametrize("weave", [Weave.TWILL, Weave.UNIDIRECTIONAL, Weave.MAT])
def test_plies_that_share_lie_as_those_that_do_not_in_fewer_steps(weave):
    cap = even_mesh(shapes.cap(100, 0.8, 24), 7.0)
    kin, shared, alone = Kin(), [], []
    for height in (0.2, 0.5, 0.8, 1.1, 1.4):
        surface = offset(cap, height)
        shared.append(drape(surface, fabric_for(weave), TOP, 0.3, kin=kin))
        alone.append(drape(surface, fabric_for(weave), TOP, 0.3))
        assert turned_over(surface, shared[-1].uv) == 0
    assert all(found.at_rest for found in shared)
    for one, other in zip(shared, alone, strict=True):
        assert one.uv == pytest.approx(other.uv, abs=0.02)
    steps = [sum(found.iterations for found in plies[2:]) for plies in (shared, alone)]
    assert steps[0] < 0.6 * steps[1]


def test_another_cloth_angle_or_mesh_takes_nothing_over():
    kin = Kin()
    flat = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (4, 4))
    uv = flat.vertices[:, :2]
    kin.keep(flat, KEY, Settled(uv, np.zeros((len(flat.triangles), 2, 2)), 1, at_rest=True))
    assert kin.below(flat, KEY).uv == pytest.approx(uv)
    assert kin.below(flat, (fabric_for(Weave.SATIN), *KEY[1:])) is None
    assert kin.below(flat, (KEY[0], 0.1, *KEY[2:])) is None
    assert kin.below(flat, (*KEY[:3], Datum((1, 0, 0), (1, 0, 0)))) is None
    other = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (5, 4))
    assert kin.below(other, KEY) is None
    kin.keep(flat, (KEY[0], 0.2, *KEY[2:]), Settled(uv, np.zeros((1, 2, 2)), 1, at_rest=False))
    assert kin.below(flat, (KEY[0], 0.2, *KEY[2:])) is None


@pytest.mark.parametrize(
    ("height", "expected"), [(0.5, 1.05), (0.4, 1.04), (0.2, 1.02), (9.0, 1.05)]
)
def test_the_next_ply_starts_where_two_lead_on_to(height, expected):
    """Two plies at 0.1 and 0.2 mm, the upper 1 % larger: steps of 3 between them at most."""
    kin = Kin()
    flat = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (4, 4))
    for at, scale in ((0.1, 1.01), (0.2, 1.02)):
        lifted = flat.moved(flat.vertices + np.array([0, 0, at]))
        settled = Settled(scale * flat.vertices[:, :2], np.zeros((1, 2, 2)), 1, at_rest=True)
        kin.keep(lifted, KEY, settled)
    upper = flat.moved(flat.vertices + np.array([0, 0, height]))
    found = kin.below(upper, KEY).uv
    assert found == pytest.approx(expected * flat.vertices[:, :2])


def test_the_same_surface_shares_its_whole_sheet_another_its_order():
    kin = Kin()
    flat = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (4, 4))
    sheet = kin.sheet(flat)
    assert kin.sheet(flat) is sheet
    lifted = kin.sheet(flat.moved(flat.vertices + np.array([0, 0, 1.0])))
    assert lifted is not sheet
    assert lifted.order is sheet.order
