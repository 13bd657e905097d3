"""A mesh from elsewhere is asked for its unit, cleaned, and divided along its creases."""

from __future__ import annotations

import numpy as np
import pytest

import shapes
from laywright import values
from laywright.errors import GeometryError, UnitError
from laywright.surface.repair import RepairSettings
from laywright.surface.scan import NO_UNIT, MeshReading, take_mesh


def soup(surface):
    return surface.corners.reshape(-1, 3), np.arange(3 * len(surface.triangles)).reshape(-1, 3)


def test_a_box_in_inches_is_a_box_in_mm_with_six_regions():
    reading = take_mesh(*soup(shapes.box(2.0, 3.0, 4.0)), "in")
    assert reading.surface.volume == pytest.approx(24.0 * 25.4**3)
    assert len(reading.surface.patch_names) == 6
    assert reading.defects == reading.changes == ()


def test_the_unit_is_asked_for():
    box = soup(shapes.box(20.0, 30.0, 40.0))
    with pytest.raises(UnitError, match="unit of Bowl: found none stated"):
        take_mesh(*box, NO_UNIT, name="Bowl")
    with pytest.raises(UnitError, match="in millimetres"):
        take_mesh(*box, "m")
    with pytest.raises(UnitError, match="in metres or inches"):
        take_mesh(0.001 * box[0], box[1], "mm")


def test_nothing_with_area_is_refused():
    with pytest.raises(GeometryError, match="no triangle with area"):
        take_mesh(np.zeros((3, 3)), np.array([[0, 1, 2]]), "mm")


def test_a_third_sheet_is_refused_or_mended_and_told():
    box = shapes.box(20.0, 20.0, 20.0)
    points = np.concatenate([box.vertices, [[-10.0, -10.0, 5.0]]])
    fin = np.concatenate([box.triangles, [[0, 1, 8]]])
    with pytest.raises(GeometryError, match="edges with more than two triangles"):
        take_mesh(points, fin, "mm")
    reading = take_mesh(points, fin, "mm", mending=RepairSettings())
    assert reading.surface.is_closed
    assert reading.surface.volume == pytest.approx(8000.0)
    assert reading.changes[0].kind == "triangles taken off edges with more than two"
    assert "edges with more than two triangles" in {defect.kind for defect in reading.defects}


def test_a_band_with_one_side_is_refused_by_its_name_even_when_mended():
    turn = np.linspace(0.0, 2.0 * np.pi, 25)[:-1]
    middle = np.stack([30 * np.cos(turn), 30 * np.sin(turn), 0 * turn], axis=1)
    half = turn / 2
    way = np.stack([np.cos(half) * np.cos(turn), np.cos(half) * np.sin(turn), np.sin(half)], axis=1)
    after = [*range(1, 24), 24]
    quads = [[i, i + 24, (j + 24) % 48, j] for i, j in enumerate(after)]
    triangles = np.array([three for a, b, c, d in quads for three in ([a, b, c], [a, c, d])])
    points = np.concatenate([middle - 5 * way, middle + 5 * way])
    with pytest.raises(GeometryError, match="Band: found 1 pieces that cannot be turned one way"):
        take_mesh(points, triangles, "mm", mending=RepairSettings(), name="Band")


def test_stored_and_stamped():
    box = soup(shapes.box(20.0, 30.0, 40.0))
    reading = take_mesh(*box, "mm")
    assert reading.digest == take_mesh.digest(*box, "mm") != take_mesh.digest(*box, "cm")
    stored = values.pack(reading)
    assert values.pack(values.unpack(MeshReading, stored)) == stored
