"""A region is picked by a point on it and ends at creases."""

from __future__ import annotations

import numpy as np
import pytest

import shapes
from laywright.errors import InputError
from laywright.surface.region import named_faces, region_at
from laywright.surface.weld import smooth_patches, tidy


def scan(surface):
    return tidy(
        surface.corners.reshape(-1, 3), np.arange(3 * len(surface.triangles)).reshape(-1, 3)
    )[0]


def test_a_point_picks_its_side_of_a_box():
    box = scan(shapes.box(20, 30, 40))
    top = region_at(box, ((10.0, 15.0, 40.0),))
    assert top.area == pytest.approx(600.0)
    two = region_at(box, ((10.0, 15.0, 40.0), (0.0, 10.0, 10.0), (5.0, 5.0, 40.0)))
    assert two.patch_names == ("Region1", "Region2")
    assert two.part(two.patches == 1).area == pytest.approx(1200.0)


def test_the_rim_of_a_mushroom_bounds_its_cap():
    mushroom = scan(shapes.mushroom(64))
    top = region_at(mushroom, ((3.0, 2.0, 46.0),))
    wanted = 64 / 2 * np.sin(2 * np.pi / 64) * 30.0**2
    assert top.area == pytest.approx(wanted, rel=1e-9)
    assert region_at(mushroom, ((3.0, 2.0, 46.0),), crease=3.0).area == pytest.approx(mushroom.area)


def test_a_point_off_the_mesh_is_refused():
    with pytest.raises(InputError, match="lies 460 mm off the mesh"):
        region_at(shapes.box(20, 30, 40), ((10.0, 15.0, 500.0),))
    with pytest.raises(InputError, match="no point"):
        region_at(shapes.box(20, 30, 40), ())


def test_faces_by_name():
    box = smooth_patches(shapes.box(20, 30, 40), 0.35)
    part = named_faces(box, ("Face3", "Face1"))
    assert part.patch_names == ("Face3", "Face1")
    assert part.part(part.patches == 1).area == pytest.approx(1200.0)
    with pytest.raises(InputError, match="found 'Face9'"):
        named_faces(box, ("Face9",))
