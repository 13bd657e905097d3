"""The scribed line is a closed ring of the wanted section, outside of the trim edge."""

from __future__ import annotations

import numpy as np
import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.mould.body.run_off import rays_of
from laywright.mould.body.scribe import groove, straight_groove
from laywright.mould.tiles.joints import sections


@settings(max_examples=15, deadline=None)
@given(st.floats(0.2, 1.0), st.floats(0.4, 2.0))
def test_volume_is_section_times_length(depth, width):
    surface = shapes.cap(80.0, 0.5, 24)
    rays = rays_of(surface, surface.boundary_loops[0])
    ring = groove(rays, surface.vertices[surface.boundary_loops[0]], depth, width, 3)
    section = 0.5 * depth * width + 0.3 * width
    radius = 80.0 * np.sin(0.5)
    assert ring.volume() == pytest.approx(2 * np.pi * radius * section, rel=0.03)
    assert ring.genus() == 1


def test_it_leaves_the_working_surface_alone():
    surface = shapes.cap(80.0, 0.5, 24)
    rays = rays_of(surface, surface.boundary_loops[0])
    mesh = groove(rays, surface.vertices[surface.boundary_loops[0]], 0.4, 0.8, 3).to_mesh64()
    points = np.asarray(mesh.vert_properties)
    assert np.hypot(points[:, 0], points[:, 1]).min() > np.hypot(*rays.start[:, :2].T).max()


@given(st.floats(0.2, 1.0), st.floats(0.4, 2.0), st.floats(0.0, 1.5))
def test_a_straight_groove_has_its_section_and_length(depth, width, turn):
    along = np.array([np.cos(turn), 0.0, np.sin(turn)])
    normals = np.tile([-np.sin(turn), 0.0, np.cos(turn)], (5, 1))
    bar = straight_groove(np.linspace(0.0, 12.0, 5)[:, None] * along, normals, depth, width, 3)
    assert bar.volume() == pytest.approx(12.0 * (0.5 * depth + 0.3) * width)
    assert bar.genus() == 0


def test_it_narrows_in_a_notch_and_never_crosses_it():
    notch = np.array(
        [[-50, -50], [50, -50], [50, 50], [4, 50], [0, -20], [-4, 50], [-50, 50]], float
    )
    surface = shapes.plate(notch, lambda x, y: 0.0 * x, 5.0)
    loop = surface.boundary_loops[0]
    ring = groove(rays_of(surface, loop), surface.vertices[loop], 0.4, 0.8, 3)
    (flat,) = sections(ring, 2, [1e-3])
    assert flat.intersection(shapely.Polygon(notch)).area < 1e-9
    assert shapely.LinearRing(notch).distance(shapely.Point(0, -20)) == 0.0
    assert flat.distance(shapely.Point(0, -20)) < 0.1
