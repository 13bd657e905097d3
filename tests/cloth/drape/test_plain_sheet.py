"""Sheets alike in all directions, laid from one point."""

import math
from dataclasses import replace

import numpy as np
import pytest

import shapes
from cloth.drape.reading import principal_stretches
from laywright.cloth.drape.datum import Datum, default_datum, start_place, warp_direction
from laywright.cloth.drape.drape import drape
from laywright.cloth.drape.energy import Sheet
from laywright.cloth.drape.even_mesh import even_mesh
from laywright.cloth.drape.fabric import Sheeting, Start, fabric_for
from laywright.cloth.drape.flatten import flatten
from laywright.cloth.drape.plain_sheet import lay_plain
from laywright.cloth.drape.strain import turned_over
from laywright.laminate.materials import Weave
from laywright.progress import silent

MAT = fabric_for(Weave.MAT)
TOP = Datum((0, 0, 100), (1, 0, 0))


@pytest.mark.parametrize("kind", [Weave.MAT, Sheeting.FILM, Sheeting.TAPE])
def test_what_unrolls_takes_no_strain_and_turns_with_the_arrow(kind):
    surface = shapes.cylinder_patch(50, 2.0, 120, (24, 24))
    datum = default_datum(surface)
    along = drape(surface, fabric_for(kind), datum)
    turned = drape(surface, fabric_for(kind), datum, 0.7)
    assert principal_stretches(surface, along.uv) == pytest.approx(1.0, abs=1e-9)
    cosine, sine = math.cos(0.7), math.sin(0.7)
    assert turned.uv == pytest.approx(along.uv @ [[cosine, -sine], [sine, cosine]], abs=0.05)
    assert start_place(surface, datum).value(surface, along.uv) == pytest.approx([0, 0], abs=1e-9)


def test_the_same_rest_as_that_of_the_solver_for_every_cloth():
    """A mat a hair off alike in all directions goes through the other solver."""
    cap = even_mesh(shapes.cap(100, math.radians(45), 30), 6.0)
    here, there = (drape(cap, cloth, TOP) for cloth in (MAT, replace(MAT, weft=1.0 + 1e-9)))
    assert here.uv == pytest.approx(there.uv, abs=0.15)
    assert here.yarn_stretch == pytest.approx(there.yarn_stretch, rel=0.02)
    means = [np.abs(principal_stretches(cap, f.uv) - 1).mean() for f in (here, there)]
    assert means[0] <= means[1]


def test_where_no_rest_is_found_nothing_is_given():
    cap = shapes.cap(100, 1.0, 8)
    place = start_place(cap, TOP)
    warp = warp_direction(cap, TOP, 0.0)
    assert lay_plain(Sheet(cap), place, warp, flatten(cap), silent, rest=1e-30) is None


@pytest.mark.parametrize("angle", [1.0, 2.0, 2.8])
def test_deep_caps_are_covered_without_turned_triangles(angle):
    cap = shapes.cap(100, angle, 14)
    result = drape(cap, MAT, TOP)
    assert result.at_rest
    assert turned_over(cap, result.uv) == 0


def test_threads_held_straight_are_heeded():
    bump = shapes.graph(
        lambda x, y: 12 * np.exp(-((x - 20) ** 2 + y * y) / 600), (-50, 50), (-40, 40), (24, 20)
    )
    datum = Datum((-20, 15, 0), (1, 0, 0))
    free, held = (drape(bump, MAT, datum, start=way) for way in (Start.POINT, Start.CROSS))
    assert held.yarn_stretch > free.yarn_stretch
