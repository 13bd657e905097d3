"""Plies laid with cuts: from what is wanted to what is drawn."""

import math

import numpy as np
import pytest
import shapely

import shapes
from cloth_demo import laminate_of
from laywright import values
from laywright.cloth.cuts.cuts import Answer, Cut, CutSettings, Joint, Propose
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.strain import turned_over
from laywright.cloth.patterns.pattern import PatternSet, PatternSettings, make_patterns
from laywright.surface.face import take_face

PLAIN, UNIDIRECTIONAL = "E-glass plain weave 163 g/m^2", "E-glass unidirectional 250 g/m^2"
RADIUS = 100.0
TOP = Datum((0.0, 0.0, RADIUS), (1.0, 0.0, 0.0))
COARSE = PatternSettings(triangles=800)
ACROSS = tuple(
    (RADIUS * math.sin(t), 0.0, RADIUS * math.cos(t)) for t in (-math.radians(80), math.radians(80))
)
RADIAL = tuple(
    tuple(RADIUS * x for x in (math.sin(t) * 0.5**0.5, math.sin(t) * 0.5**0.5, math.cos(t)))
    for t in (math.radians(80), math.radians(40))
)


@pytest.fixture(scope="module")
def dome():
    return take_face(shapes.cap(RADIUS, math.radians(80), 24), (0, 0, 1.0))


def test_a_splice_gives_two_patterns_that_together_cover_the_part(dome):
    cuts = CutSettings((Cut(1, ACROSS),))
    found = make_patterns(dome, laminate_of((PLAIN, 0.0)), TOP, COARSE, cuts)
    assert [(p.ply, p.piece) for p in found.patterns] == [(1, 1), (1, 2)]
    assert [p.name for p in found.patterns] == ["ply 1, piece 1", "ply 1, piece 2"]
    ply = found.draped[0]
    assert len(ply.pieces) == 2
    assert ply.uncut.euler_characteristic == 1
    assert ply.uncut.area == pytest.approx(ply.surface.area, rel=1e-12)
    assert turned_over(ply.surface, ply.drape.uv) == 0
    cover = 1.0 / (
        (1 + ply.drape.warp_stretch) * (1 + ply.drape.weft_stretch) * np.cos(ply.drape.shear)
    )
    net = sum(pattern.net_area for pattern in found.patterns)
    assert net == pytest.approx(ply.surface.areas @ cover, rel=2e-3)
    lapped = [len(pattern.laps) for pattern in found.patterns]
    assert sorted(lapped) == [0, 1]
    for pattern in found.patterns:
        cut = shapely.Polygon(pattern.cut).buffer(0.2)
        assert cut.covers(shapely.Polygon(pattern.trim))
    assert "lapped 25 mm, made" in found.remarks[0]
    again = values.unpack(PatternSet, values.pack(found))
    assert values.digest(again) == values.digest(found)


def test_a_dart_spares_shear_and_is_butted_in_unidirectional_cloth(dome):
    darts = [
        Cut(0, tuple((sx * x, sy * y, z) for x, y, z in RADIAL)) for sx in (1, -1) for sy in (1, -1)
    ]
    plies = laminate_of((PLAIN, 0.0), (UNIDIRECTIONAL, 0.0))
    whole = make_patterns(dome, plies, TOP, COARSE)
    cut = make_patterns(dome, plies, TOP, COARSE, CutSettings(tuple(darts)))
    for before, after in zip(whole.patterns, cut.patterns, strict=True):
        assert after.largest_shear < before.largest_shear
        assert after.piece == 0
    woven, straight = cut.draped
    assert [c.joint for c in woven.cuts] == [Joint.LAP] * 4
    assert [(c.joint, c.lap) for c in straight.cuts] == [(Joint.BUTT, 0.0)] * 4
    assert cut.patterns[0].laps
    assert cut.patterns[1].laps == ()
    # Both plies are cut at the same places, which is said.
    assert [r for r in cut.remarks if r.startswith("Cuts of ply 1 and ply 2 come within 0 mm")]
    refused = tuple(Cut(0, c.points, answer=Answer.REFUSED) for c in darts)
    left = make_patterns(dome, plies, TOP, COARSE, CutSettings(refused))
    assert values.digest(left.patterns) == values.digest(whole.patterns)


def test_proposed_cuts_are_shown_or_made():
    deep = take_face(shapes.cap(RADIUS, math.radians(86), 24), (0, 0, 1.0))
    plies = laminate_of((PLAIN, 0.0))
    shown = make_patterns(deep, plies, TOP, COARSE, CutSettings(propose=Propose.SHOWN))
    (proposal,) = shown.proposals
    assert proposal.share_after < 0.1 * proposal.share_before
    assert shown.draped[0].cuts == ()
    assert "one piece without cuts cannot cover the face" in " ".join(shown.remarks)
    wanted = tuple(Cut(1, cut.ends) for cut in proposal.cuts)
    made = make_patterns(deep, plies, TOP, COARSE, CutSettings(wanted))
    locked = [max(p.locked_share for p in found.patterns) for found in (shown, made)]
    assert locked[0] > 0.03
    assert locked[1] < 0.005


def test_a_mirrored_part_gives_a_mirrored_kit():
    """Mirrored in x, with the angles the other way round: the outlines are turned over."""
    part = shapes.graph(
        lambda x, y: 0.002 * x * x + 0.004 * y * y + 0.001 * x * y + 2e-5 * x**3,
        (-80, 80),
        (-50, 50),
        (32, 20),
    )
    other = part.moved(part.vertices * [-1, 1, 1]).flipped()
    kits = [
        make_patterns(
            take_face(surface, (0, 0, 1.0)),
            laminate_of((PLAIN, sign * 30.0), (PLAIN, sign * 75.0)),
            Datum((0.0, 0.0, 0.0), (0.0, 1.0, 0.0)),
            COARSE,
        )
        for surface, sign in ((part, 1.0), (other, -1.0))
    ]
    for one, two in zip(*(kit.patterns for kit in kits), strict=True):
        mirrored = shapely.Polygon((np.asarray(two.cut) - two.datum) * [1, -1])
        mine = shapely.Polygon(np.asarray(one.cut) - one.datum)
        assert mine.hausdorff_distance(mirrored) < 0.6
        assert one.largest_shear == pytest.approx(two.largest_shear, abs=0.01)
