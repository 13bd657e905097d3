from __future__ import annotations

import math

import numpy as np
import pytest

from drawing_reading import lines, texts
from laminate.stacks import CARBON, GLASS, MATERIALS, RESIN, TAPE, layup
from laywright.job.laminate_pictures import (
    envelope_chart,
    section_drawing,
    stiffness_polar,
    trade_off_chart,
)
from laywright.laminate.candidates import Choices
from laywright.laminate.choice import Wish, rank_layups
from laywright.laminate.envelope import LoadPair, failure_envelope
from laywright.laminate.laminate import analyse
from laywright.laminate.plies import Core, Layup, Ply


def test_the_section_stacks_every_layer_from_the_mould_upwards():
    core = Core(MATERIALS.core("Closed-cell PVC foam 80 kg/m^3"), 8.0, 1)
    made = analyse(Layup((Ply(GLASS, 0.0), Ply(CARBON, math.pi / 4)), RESIN, core=core))
    drawing = section_drawing(made)
    first, second = lines(drawing, "ply")
    (middle,) = lines(drawing, "core")
    tops = [box.points[:, 1].max() for box in (first, middle, second)]
    bottoms = [box.points[:, 1].min() for box in (first, middle, second)]
    assert bottoms == pytest.approx([0.0, *tops[:2]])
    assert tops[2] - bottoms[2] > tops[0] - bottoms[0]  # the thicker ply is drawn taller
    said = texts(drawing)
    assert "1  E-glass plain weave 163 g/m², 0°, 0.21 mm" in said
    assert "core  Closed-cell PVC foam 80 kg/m³, 8 mm" in said
    assert said.index("mould") == 0
    assert max(shape.points[:, 1].max() for shape in lines(drawing, "mould")) == 0.0


def test_a_narrow_section_says_the_same_in_less_room():
    made = analyse(layup(CARBON, 30, 0))
    wide, narrow = section_drawing(made), section_drawing(made, 20.0)
    assert texts(narrow) == texts(wide)
    for layer in ("ply", "strokes", "mould"):
        assert max(shape.points[:, 0].max() for shape in lines(narrow, layer)) <= 20.0


@pytest.mark.parametrize("degrees", [30, 45, -45, 90, 120])
def test_strokes_lean_as_the_warp_does(degrees):
    drawing = section_drawing(analyse(layup(CARBON, degrees)))
    strokes = lines(drawing, "strokes")
    assert len(strokes) > 10
    for stroke in strokes:
        run = stroke.points[1] - stroke.points[0]
        assert math.degrees(math.atan2(run[1], run[0])) % 180.0 == pytest.approx(degrees % 180.0)
        assert (stroke.points[:, 0] >= -1e-9).all()
        assert (stroke.points[:, 0] <= 60.0).all()


def test_the_polar_shows_the_moduli_of_the_laminate():
    made = analyse(layup(TAPE, 30))
    drawing = stiffness_polar(made)
    pulled = lines(drawing, "curve 1")[0].points
    reach = np.linalg.norm(pulled, axis=1)
    tip = pulled[reach.argmax()]
    assert math.degrees(math.atan2(tip[1], tip[0])) % 180.0 == pytest.approx(30.0, abs=1e-6)
    assert reach[0] / reach.max() == pytest.approx(
        made.in_plane.e_x / analyse(layup(TAPE, 0)).in_plane.e_x, rel=1e-6
    )
    assert {"datum arrow", "pulled, GPa", "bent, GPa"} <= set(texts(drawing))


@pytest.mark.parametrize("pair", LoadPair)
def test_the_envelope_is_a_closed_curve_with_units(pair):
    drawing = envelope_chart(failure_envelope(analyse(layup(TAPE, 0, 60, -60)), pair))
    for layer in ("curve 1", "curve 2"):
        curve = lines(drawing, layer)[0].points
        assert curve[0] == pytest.approx(curve[-1], abs=1e-9)
    unit = "N" if pair is LoadPair.BENDINGS else "N/mm"
    assert sum(text.endswith(f", {unit}") for text in texts(drawing)) == 2


def test_the_trade_off_has_all_that_was_tried_below_its_front():
    angles = tuple(math.radians(a) for a in (0, 45, -45, 90))
    ranking = rank_layups(Choices((GLASS, TAPE), angles, RESIN, most_plies=4), Wish())
    drawing = trade_off_chart(ranking)
    stairs = lines(drawing, "curve 1")[0].points
    assert (np.diff(stairs, axis=0) >= -1e-9).all()
    crosses = lines(drawing, "dot")
    assert len(crosses) == 2 * len(ranking.cloud)
    for cross in crosses:
        x, y = cross.points.mean(axis=0)
        below = stairs[stairs[:, 0] <= x + 1e-6][:, 1].max()
        assert y <= below + 1e-6
