"""Moulds of random parts: always one closed body whose working area is the wanted surface."""

from __future__ import annotations

import math

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

import shapes
from laywright.mould.body.body import build_body
from laywright.mould.body.settings import Edge, Inside, MarkedDatum, MouldBuild, MouldSettings
from laywright.surface.face import LaminateSide, MouldSide, take_face
from laywright.tolerances import TOLERANCES

SIZE = st.floats(30.0, 250.0)
EDGES = st.sampled_from(
    [Edge(), Edge(flange=18.0), Edge(flange=15.0, cloth_margin=12.0, bolt_holes=5.0)]
)


def crowned_plate(long, wide, crown):
    return shapes.graph(
        lambda x, y: -crown * ((x / long) ** 2 + (y / wide) ** 2) * 4.0,
        (-long / 2, long / 2),
        (-wide / 2, wide / 2),
        (9, 7),
    )


def cowl(long, wide, high):
    turn = 2.0 * np.pi * np.arange(60) / 60
    radius = 1.0 + 0.35 * np.cos(turn)
    outline = 0.5 * np.stack([long * radius * np.cos(turn), wide * radius * np.sin(turn)], 1)
    return shapes.plate(
        outline,
        lambda x, y: -high * ((2.0 * x / long) ** 2 + (2.0 * y / wide) ** 2),
        max(long, wide) / 9.0,
    )


def channel(long, wide, high):
    def height(x, y):
        return high * np.tanh(6.0 * (np.abs(y) - 0.25 * wide) / wide)

    return shapes.graph(height, (-long / 2, long / 2), (-wide / 2, wide / 2), (6, 24))


def dome(radius, angle):
    return shapes.cap(radius, angle, 6)


def tray(radius, deep, draft):
    out = deep * math.tan(draft)
    profile = [[0, 0], [0.6 * radius, 0], [radius, 0.1 * deep]]
    profile += [[radius + out * s, deep * (0.1 + 0.9 * s)] for s in (0.5, 1.0)]
    return shapes.dish(np.array(profile), 24)


PARTS = st.one_of(
    st.builds(crowned_plate, SIZE, SIZE, st.floats(-20.0, 20.0)),
    st.builds(cowl, SIZE, SIZE, st.floats(1.0, 30.0)),
    st.builds(channel, SIZE, SIZE, st.floats(2.0, 15.0)),
    st.builds(dome, st.floats(30.0, 120.0), st.floats(0.2, 1.45)),
    st.builds(tray, SIZE, st.floats(5.0, 60.0), st.floats(0.01, 0.5)),
)


@settings(max_examples=140, deadline=None)
@given(
    PARTS,
    st.sampled_from(MouldSide),
    st.sampled_from(LaminateSide),
    st.floats(0, 2),
    EDGES,
    st.none() | st.floats(-math.pi, math.pi),
)
def test_closed_and_exact(part, mould_side, laminate_side, thickness, edge, arrow):
    pull = (0.0, 0.0, 1.0 if mould_side is MouldSide.INSIDE else -1.0)
    face = take_face(part, pull, laminate_side, mould_side)
    datum = None
    if arrow is not None:
        middle = tuple(part.vertices.mean(axis=0))
        datum = MarkedDatum(middle, (math.cos(arrow), math.sin(arrow), 0.0))
    body = build_body(face, thickness, MouldSettings(run_off=20.0, edge=edge, datum=datum))
    assert body.solid.is_closed
    assert body.solid.components.max() == 0
    assert body.volume > 0.0
    assert body.largest_deviation < 1e-6 < TOLERANCES.working_area
    applied = (mould_side is MouldSide.INSIDE) == (laminate_side is LaminateSide.INSIDE)
    moved = thickness if applied else 0.0
    assert moved - 1e-6 <= body.largest_from_cad <= 1.8 * moved + 1e-6


@settings(max_examples=10, deadline=None)
@given(PARTS, st.sampled_from([MouldBuild.HOLLOW_WITH_RIBS, MouldBuild.SHELL]), st.floats(2, 5))
def test_hollow_ones_keep_their_wall(part, build, wall):
    face = take_face(part, (0.0, 0.0, 1.0), mould_side=MouldSide.INSIDE)
    inside = Inside(build, wall=wall)
    body = build_body(face, 1.0, MouldSettings(base=3.0 * wall, inside=inside))
    assert body.solid.is_closed
    assert body.solid.components.max() == 0
    assert body.least_wall >= wall
    assert body.largest_deviation < 1e-6
