from __future__ import annotations

import dataclasses
import math

import numpy as np
import pytest

import shapes
from job_demo import hatch
from laywright.cloth.drape.datum import Datum
from laywright.cloth.patterns.pattern import PatternSet, PatternSettings, make_patterns
from laywright.job.links import (
    ply_cloths,
    with_closing,
    with_marked_datum,
    with_printer,
    with_release,
)
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Core
from laywright.laminate.spring_in import closing_share
from laywright.mould.body.as_printed import compensations_of
from laywright.mould.body.compensation import Allowances
from laywright.mould.body.piece_settings import PieceSettings
from laywright.mould.body.settings import MouldSettings
from laywright.mould.release.release import ReleaseSettings
from laywright.shop.curing.cure_settings import CureSettings
from laywright.surface.bends import bends_of
from laywright.surface.face import take_face
from laywright.surface.opened import open_bends


@dataclasses.dataclass(frozen=True)
class Cut:
    """What `ply_cloths` reads of a pattern."""

    ply: int
    cloth: str
    area: float
    net_area: float


def test_the_plies_on_a_core_hold_the_resin_that_bonds_it():
    plain = hatch().layup
    sheet = load_materials().core("Closed-cell PVC foam 80 kg/m^3")
    cored = dataclasses.replace(plain, core=Core(sheet, 5.0, 2))
    name = plain.plies[0].cloth.name
    patterns = PatternSet(tuple(Cut(ply, name, 1e6, 1e6) for ply in (1, 2, 3)), (), ())

    def resin(layup):
        pieces = ply_cloths(patterns, analyse(layup))
        return [piece.mass_g * piece.resin_share / (1 - piece.resin_share) for piece in pieces]

    before, after = resin(plain), resin(cored)
    extra = [late - early for early, late in zip(before, after, strict=True)]
    assert extra == pytest.approx([0.0, sheet.bond_resin, sheet.bond_resin], abs=1e-9)
    made = analyse(cored)
    assert sum(after) == pytest.approx(made.resin_areal, rel=1e-12)


def test_bends_close_by_what_the_laminate_says_unless_a_person_does():
    laminate = analyse(hatch().layup)
    plain, cold = MouldSettings(), CureSettings()
    room = with_closing(plain, laminate, cold).allowances.closing
    hot = with_closing(plain, laminate, CureSettings(post_cure_c=80.0)).allowances.closing
    assert room == closing_share(laminate, 0.0)
    assert hot == closing_share(laminate, 21.0 - 80.0)
    assert hot > room > 0.0
    none = CureSettings(post_cure_c=80.0, post_cure_hours=0.0)
    assert with_closing(plain, laminate, none).allowances.closing == room
    own = MouldSettings(allowances=Allowances(closing=0.005))
    assert with_closing(own, laminate, cold) is own


def test_the_mould_is_reckoned_by_the_card_of_the_tiles():
    printer = hatch().printer
    settings = with_printer(MouldSettings(), printer)
    assert settings.plastic.printer is printer
    assert with_printer(settings, dataclasses.replace(printer, walls=9)) is settings


def test_pieces_take_what_the_release_check_asks_unless_they_say():
    check = ReleaseSettings(math.radians(5.0), most_pieces=3)
    found = with_release(MouldSettings(), check).pieces
    assert (found.least_draft, found.most_pieces) == (math.radians(5.0), 3)
    own = MouldSettings(pieces=PieceSettings(most_pieces=2, least_draft=math.radians(1.0)))
    assert with_release(own, check) == own


def test_a_job_lists_its_bends():
    surface = shapes.tray(0.0, turns=6, spacing=20.0)
    face = take_face(surface, (0.0, 0.0, 1.0))
    laminate = analyse(hatch().layup)
    settings = with_closing(MouldSettings(), laminate, CureSettings())
    items = [item for item in compensations_of(face, 0.6, settings) if "spring-in" in item.name]
    share = settings.allowances.closing
    assert [item.size for item in items] == pytest.approx(
        [math.degrees(share * bend.turn) for bend in bends_of(surface)]
    )
    assert len(items) >= 1


def test_an_opened_mould_takes_the_patterns_of_the_part():
    """Opening keeps lengths, so cloth that fits the part as drawn fits the mould."""
    surface = shapes.tray(0.0, turns=6, spacing=20.0)
    face = take_face(surface, (0.0, 0.0, 1.0))
    laminate = analyse(hatch().layup)
    opened = open_bends(face.surface, 0.0075, laminate.thickness)
    moulded = dataclasses.replace(face, surface=opened.surface)
    coarse = PatternSettings(triangles=2000)
    drawn, made = (
        make_patterns(one, laminate, None, coarse).patterns[0] for one in (face, moulded)
    )
    assert opened.largest_move > 0.1
    assert made.net_area == pytest.approx(drawn.net_area, rel=5e-4)
    was, now = (np.sort(np.ptp(one.trim, axis=0)) for one in (drawn, made))
    np.testing.assert_allclose(now, was, atol=0.3)


def test_the_marked_datum_is_where_the_cloth_starts_with_the_arrow_in_the_face():
    slope = shapes.graph(lambda x, y: 0.5 * x + 0.3 * y, (-50, 50), (-40, 40), (10, 8))
    face = take_face(slope, (0.0, 0.0, 1.0))
    upright = np.array([-0.5, -0.3, 1.0]) / math.sqrt(1.34)
    along = np.cross(upright, [0.3, 1.0, 0.0])
    start = Datum(tuple([3.0, 4.0, 2.7] + 2.0 * upright), tuple(along + 0.5 * upright))
    found = with_marked_datum(MouldSettings(), face, PatternSet((), (), (), (), start)).datum
    np.testing.assert_allclose(found.point, [3.0, 4.0, 2.7], atol=1e-9)
    np.testing.assert_allclose(found.direction, along / np.linalg.norm(along), atol=1e-9)
