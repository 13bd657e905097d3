"""A job with local plies from its description to its pages, tables, cups and mould."""

import csv
import io
import math

import pytest

import shapes
from job_demo import hatch
from laywright.cloth.drape.datum import Datum
from laywright.cloth.patterns.pattern import PatternSettings, make_patterns
from laywright.files.html import html_bytes
from laywright.job import run
from laywright.job.analysis import shell_model
from laywright.job.draped import draped_places
from laywright.job.links import ply_cloths
from laywright.job.outputs import files_of
from laywright.job.zones import zone_csv, zone_table, zones_of
from laywright.laminate.extents import Round, Strip
from laywright.laminate.laminate import analyse
from laywright.laminate.local import local_laminate
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.shop.mixing.mix_settings import MixSettings
from laywright.shop.plan import ShopSettings
from laywright.surface.face import LaminateSide, MouldSide, take_face

CARDS = load_materials()
TWILL = CARDS.cloth("E-glass twill weave 200 g/m^2")
PATCH = Round((20.0, 0.0, 0.0), 30.0)


@pytest.fixture(scope="module")
def plate():
    extents = (None, PATCH, PATCH, None, Strip(20.0))
    plies = tuple(Ply(TWILL, 0.3 * n, "", extent) for n, extent in enumerate(extents))
    laminate = analyse(Layup(plies, CARDS.resin(CARDS.resin_names[0])))
    face = take_face(shapes.graph(lambda x, y: 0.0 * x, (-100, 100), (-60, 60), (8, 8)), (0, 0, 1))
    datum = Datum((0.0, 0.0, 0.0), (1.0, 0.0, 0.0))
    patterns = make_patterns(face, laminate, datum, PatternSettings(triangles=1500))
    return face, laminate, patterns


AREAS = (24000.0, math.pi * 900.0, math.pi * 576.0, 24000.0, 24000.0 - 160.0 * 80.0)


def test_mass_is_the_sum_of_areas_and_areal_weights(plate):
    """By zones, by the draped part and by hand: three ways to the same grams."""
    _, laminate, patterns = plate
    one = laminate.areal_mass / 2.0  # of each ply, all of the same cloth and resin share
    by_hand = one * sum(AREAS) * 1e-6
    zones = zones_of(laminate, patterns)
    assert sum(zone.mass for zone in zones) == pytest.approx(by_hand, rel=2e-3)
    local = local_laminate(laminate, draped_places(patterns))
    assert local.mass == pytest.approx(by_hand, rel=3e-3)
    assert local.thickness.max() == pytest.approx(2.0 * laminate.thickness, rel=5e-3)
    assert local.thickness.min() == pytest.approx(laminate.thickness, rel=1e-3)
    nets = [pattern.net_area for pattern in patterns.patterns]
    assert nets == pytest.approx(AREAS, rel=5e-3)
    cloths = ply_cloths(patterns, laminate)
    assert [cloth.ply for cloth in cloths] == [1, 2, 3, 4, 5]
    assert [cloth.covered_mm2 for cloth in cloths] == pytest.approx(AREAS, rel=5e-3)


def test_thickness_mass_and_stiffness_stand_in_the_table_by_zone(plate):
    _, laminate, patterns = plate
    zones = zones_of(laminate, patterns)
    table = zone_table(zones)
    assert [row[0] for row in table.rows] == [
        ", ".join(str(ply) for ply in zone.plies) for zone in zones
    ]
    assert f"{laminate.thickness:.2f} to {2.0 * laminate.thickness:.2f} mm" in table.heading
    rows = list(csv.reader(io.StringIO(zone_csv(zones).decode("utf-8-sig"))))
    assert len(rows) == len(zones) + 1
    areas = [float(row[1]) for row in rows[1:]]
    assert sum(areas) == pytest.approx(24000.0, abs=0.5)


def test_a_solver_is_told_which_plies_were_left_out(plate):
    model = shell_model("plate", *plate)
    assert len(model.layers) == 2
    assert any("ply 2, ply 3, ply 5" in line for line in model.notes)


@pytest.fixture(scope="module")
def whole():
    """A small plug with a reinforced place, the whole job."""
    plies = (Ply(TWILL, 0.0), *(Ply(TWILL, 0.0, "", PATCH),) * 2, Ply(TWILL, math.pi / 2.0))
    return run(
        hatch(
            name="Plate",
            surface=shapes.graph(lambda x, y: -5e-4 * x * x, (-100, 100), (-60, 60), (16, 8)),
            layup=Layup(plies, CARDS.resin("Laminating epoxy, slow hardener")),
            laminate_side=LaminateSide.INSIDE,
            mould_side=MouldSide.INSIDE,
            patterns=PatternSettings(triangles=800),
            shop=ShopSettings(mix=MixSettings(scale_resolution_g=0.1)),
        )
    )


def test_local_plies_are_cut_mixed_for_and_laid_in_their_order(whole):
    assert [pattern.ply for pattern in whole.patterns.patterns] == [1, 2, 3, 4]
    assert sorted(p.ply for layout in whole.roll.layouts for p in layout.placements) == [1, 2, 3, 4]
    mix = whole.shop.mix
    assert mix.ply_numbers == (1, 2, 3, 4)
    cut = sum(pattern.area for pattern in whole.patterns.patterns) * TWILL.areal_weight * 1e-6
    assert mix.cloth_g == pytest.approx(cut)
    assert {ply for cup in mix.cups for ply in cup.plies} == {1, 2, 3, 4}
    words = html_bytes(whole.sheet.sheet).decode().replace("\xa0", " ")
    order = [words.index(f">{name}<") for name in ("Ply 1", "Ply 2", "Ply 3", "Ply 4")]
    assert order == sorted(order)
    assert words.count("only 30 mm round 20, 0, 0") == 2
    assert "2 of 4 plies are local" in words


def test_the_mould_is_set_back_under_them(whole):
    one = whole.laminate.thickness / 2.0
    assert whole.body.solid.is_closed
    assert whole.body.largest_from_cad == pytest.approx(4.0 * one, rel=5e-3)
    assert whole.body.largest_deviation < 0.01


def test_their_files_say_what_they_cover(whole):
    files = files_of(whole)
    plies = files["tables/plies.csv"].decode("utf-8-sig")
    assert plies.count('"30 mm round 20, 0, 0"') == 2
    assert plies.count("whole face") == 2
    assert len(files["tables/zones.csv"].decode("utf-8-sig").splitlines()) == 1 + len(
        whole.patterns.zones
    )
    assert "cloth/ply 02 E-glass twill weave 200 g_m^2 (mm).svg" in files or any(
        path.startswith("cloth/ply 02") for path in files
    )
