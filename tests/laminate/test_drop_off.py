"""Plies of one reinforcement end one after the other; the laminate thins out over a slope."""

import dataclasses
import math

import numpy as np
import pytest

from laywright import values
from laywright.errors import InputError
from laywright.laminate.cores import CoreSheet
from laywright.laminate.drop_off import (
    Buildup,
    buildup_of,
    drop_off_words,
    drop_offs,
    local_plies,
)
from laywright.laminate.extents import Round, Strip
from laywright.laminate.laminate import Laminate, analyse, main_of
from laywright.laminate.loads import LoadCase
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Core, DropOff, Layup, Ply
from laywright.laminate.spring_in import closing_share
from laywright.laminate.strength import check_strength

CARDS = load_materials()
TWILL = CARDS.cloth("E-glass twill weave 200 g/m^2")
RESIN = CARDS.resin(CARDS.resin_names[0])
PATCH, EDGE = Round((0.0, 0.0, 0.0), 40.0), Strip(25.0)


def layup(*extents, **settings):
    angles = (0.0, 45.0, 90.0, -45.0, 0.0, 0.0, 0.0)
    plies = tuple(
        Ply(TWILL, math.radians(angle), "", extent)
        for angle, extent in zip(angles, extents, strict=False)
    )
    return Layup(plies, RESIN, **settings)


class _Line:
    """Places along a line from the middle of the patch outwards."""

    at = np.linspace(0.0, 60.0, 601)

    def from_point(self, point):
        return self.at

    def from_edge(self):
        return 60.0 - self.at


def test_each_further_ply_of_an_extent_ends_further_in():
    laminate = analyse(layup(None, PATCH, EDGE, PATCH, None, PATCH, EDGE))
    assert [(p.ply, p.setback) for p in local_plies(laminate)] == [
        (2, 0.0),
        (3, 0.0),
        (4, 6.0),
        (6, 12.0),
        (7, 6.0),
    ]
    out = analyse(layup(None, PATCH, PATCH, PATCH, drop_off=4.0, drop_way=DropOff.OUT))
    assert [p.setback for p in local_plies(out)] == [0.0, -4.0, -8.0]
    assert [p.ramp for p in local_plies(out)] == pytest.approx([20.0 * out.ply_thicknesses[0]] * 3)


def test_usual_ends_are_twenty_times_the_thickness_and_at_least_6_mm_apart():
    heavy = dataclasses.replace(TWILL, areal_weight=600.0)
    laminate = analyse(
        dataclasses.replace(
            layup(None), plies=(Ply(TWILL, 0.0), Ply(heavy, 0.0), Ply(heavy, 0.0, "", PATCH))
        )
    )
    assert drop_offs(laminate) == pytest.approx([6.0, *20.0 * laminate.ply_thicknesses[1:]])
    assert drop_offs(laminate)[2] > 12.0


def test_thickness_runs_out_with_a_slope_of_one_in_twenty_at_most():
    laminate = analyse(layup(None, PATCH, PATCH, PATCH))
    built = buildup_of(laminate)
    extra = built.extra(_Line())
    one = float(laminate.ply_thicknesses[0])
    assert built.throughout == laminate.thickness == pytest.approx(one)
    assert extra[0] == pytest.approx(3.0 * one)
    for place, plies in ((27.9, 3), (33.9, 2), (39.9, 1), (46.1, 0)):
        assert np.interp(place, _Line.at, extra) == pytest.approx(plies * one, abs=0.05 * one)
    assert np.abs(np.diff(extra) / np.diff(_Line.at)).max() <= 1.0 / 20.0
    assert values.unpack(Buildup, values.pack(built)) == built


def test_a_layup_without_local_plies_is_one_thickness():
    laminate = analyse(layup(None, None))
    assert buildup_of(laminate) == laminate.thickness
    assert main_of(laminate) is laminate
    assert drop_off_words(laminate) == ()


def test_a_drop_off_wider_than_the_patch_is_refused():
    laminate = analyse(layup(None, *[Round((0.0, 0.0, 0.0), 10.0)] * 3))
    with pytest.raises(InputError, match=r"12 mm further in.*shorten the drop-off"):
        buildup_of(laminate).extra(_Line())
    for wrong in (-1.0, 1000.0, math.nan):
        with pytest.raises(InputError, match="0 to 500 mm"):
            layup(None, drop_off=wrong)


def test_figures_are_those_of_the_plies_that_cover_the_whole_face():
    """The same without the local plies, whatever lies between: stiffness, strength, bends."""
    plain = analyse(layup(None))
    local = analyse(layup(None, PATCH, EDGE))
    for name in ("thickness", "areal_mass", "fibre_volume_fraction", "in_plane", "bending"):
        assert getattr(local, name) == getattr(plain, name)
    assert local.ply_thicknesses == pytest.approx([plain.thickness] * 3)
    assert local.ply_heights / plain.thickness == pytest.approx([0.5, 1.5, 2.5])
    load = LoadCase((10.0, 0.0, 2.0))
    assert check_strength(local, load).first_factor == check_strength(plain, load).first_factor
    assert closing_share(local, -40.0) == closing_share(plain, -40.0)
    assert "45" not in " ".join(plain.couplings)
    again = values.unpack(Laminate, values.pack(local))
    assert values.digest(again) == values.digest(local)


def test_a_stored_layup_without_extents_is_one_of_whole_plies():
    tree, arrays = values.plain(layup(None, None))
    for name in ("drop_off", "drop_way"):
        del tree[name]
    for ply in tree["plies"]:
        del ply["extent"]
    assert values.from_tree(Layup, tree, arrays) == layup(None, None)


def test_a_place_is_a_layup_of_its_plies_with_their_names():
    sheet = CARDS.core(CARDS.core_names[0])
    assert isinstance(sheet, CoreSheet)
    found = layup(None, PATCH, None, EDGE, None, core=Core(sheet, 5.0, 3))
    main = found.main
    assert [ply.name for ply in main.plies] == ["ply 1", "ply 3", "ply 5"]
    assert main.core.after == 2
    place = found.at((1, 2, 3, 5))
    assert [ply.name for ply in place.plies] == ["ply 1", "ply 2", "ply 3", "ply 5"]
    assert place.core.after == 3
    assert not place.local


def test_layups_that_cannot_be_are_refused():
    with pytest.raises(InputError, match="no ply that covers the whole face"):
        layup(PATCH, EDGE)
    sheet = CARDS.core(CARDS.core_names[0])
    with pytest.raises(InputError, match="such a ply on each side"):
        layup(None, PATCH, core=Core(sheet, 5.0, 1))


def test_ends_are_told_in_words():
    (words,) = drop_off_words(analyse(layup(None, PATCH, PATCH)))
    assert words.startswith("ply 2, ply 3: 40 mm round 0, 0, 0, they end 0, 6 mm further in")
