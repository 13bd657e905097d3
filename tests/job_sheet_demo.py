"""A small job sheet for tests; every number in it is invented."""

from __future__ import annotations

import math

import numpy as np

import shapes
from laywright.files.drawing import Drawing, Line
from laywright.files.page import Station, Table
from laywright.files.projection import picture, picture_of_several
from laywright.files.solid import Solid
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply, Process
from laywright.shop.bench.bench import BenchFacts, BenchSettings, RollUse, plan_bench
from laywright.shop.bench.shopping import read_prices
from laywright.shop.bench.trim import EdgeFacts
from laywright.shop.coupons.coupon_plan import plan_coupons
from laywright.shop.curing.cure import plan_cure
from laywright.shop.curing.cure_settings import CureSettings
from laywright.shop.mixing.mix import MixSettings, PlyCloth, plan_mix
from laywright.shop.plan import ShopPlan
from laywright.shop.sheet.traveller import (
    JobSheet,
    LaminateSummary,
    PartSummary,
    PatternLine,
    PlyLine,
    ReleaseSummary,
    RollLine,
    TileLine,
    TileSummary,
)

__all__ = ["inputs", "texts_on"]


def inputs(name: str = "Hatch cover") -> dict:
    """Return the keyword arguments of `make_sheet`."""
    box = shapes.box(200, 180, 60)
    apart = np.eye(4)
    apart[0, 3] = 230.0
    solids = [
        Solid("R1 C1", box.vertices, box.triangles),
        Solid("R1 C2", box.vertices, box.triangles, apart),
    ]
    outline = np.array([[0, 0], [460, 0], [460, 340], [0, 340]], float)
    drawing = Drawing(
        "ply 1", (Line("cut", outline, True), Line("check bar", [[0, -20], [100, -20]]))
    )
    cloths = ("Glass twill 200 g/m^2", "Carbon plain 160 g/m^2")
    masses = (31.3, 25.0)
    plies = tuple(
        PlyLine(k + 1, "", cloths[k], math.radians(45.0 * k), 0.25 - 0.02 * k, drawing)
        for k in range(2)
    )
    resin = load_materials().resin("Laminating epoxy, slow hardener")
    weights = (200.0, 160.0)
    mix = plan_mix(
        tuple(
            PlyCloth(k + 1, cloths[k], 1e6 * masses[k] / weights[k], weights[k]) for k in range(2)
        ),
        resin,
        0.5,
        MixSettings(),
    )
    cure = plan_cure(resin, CureSettings(mould_softening_c=70.0), 0.5)
    glass = load_materials().cloth("E-glass twill weave 200 g/m^2")
    coupons = plan_coupons(analyse(Layup((Ply(glass, 0.0),) * 2, resin)))
    shop = ShopPlan(mix, cure, coupons=coupons, digest="shop")
    turn = 2.0 * np.pi * np.arange(36) / 36
    facts = BenchFacts(
        part_area=1.36e5,
        mould_area=1.8e5,
        run_off=25.0,
        outline=[[0, 0], [420, 0], [420, 300], [0, 300]],
        curvature=1.8e-6,
        mould_size=(470.0, 350.0, 70.0),
        pull=(0.0, 0.0, 1.0),
        trim_loops=(
            np.array([[0, 0, 0], [420, 0, 0], [420, 300, 0], [0, 300, 0]], float),
            np.stack([200 + 6 * np.cos(turn), 150 + 6 * np.sin(turn), 50 + 0 * turn], axis=1),
        ),
        cloth_edges=(EdgeFacts(1600.0), EdgeFacts(1500.0)),
        rolls=tuple(RollUse(cloth, 483.0) for cloth in cloths),
        plastic="PETG",
        print_g=2468.0,
        glue_g=6.0,
        process=Process.BAGGED,
    )
    prices = read_prices(["Resin = 30 per kg", "Hardener = 40 per kg"])
    bench = plan_bench(facts, shop, BenchSettings(parts=2, prices=prices, currency="EUR"))
    return {
        "name": name,
        "version": "1a2b3c4d",
        "part": PartSummary(
            (420.0, 300.0, 51.8), 1.36e5, 0.03, picture(box.vertices, box.triangles, name="part")
        ),
        "release": ReleaseSummary((0.0, 0.0, 1.0), math.radians(4.2), math.radians(2.0), 0.0),
        "laminate": LaminateSummary(
            "hand", "Demo epoxy", plies, 0.48, 721.0, 0.35, 13.9e3, 13.8e3, 10.1e3, 15.3e3, 15.2e3
        ),
        "tiles": TileSummary(
            "demo printer",
            tuple(
                TileLine(s.name, 1, k + 1, (200.0, 180.0, 60.0), 1234.0)
                for k, s in enumerate(solids)
            ),
            0.1,
            picture_of_several("tiles", solids),
            (),
            (400.1, 180.0, 60.0),
        ),
        "patterns": tuple(
            PatternLine(k + 1, cloths[k], plies[k].angle, 156400.0, masses[k], 0.3, 0.01, drawing)
            for k in range(2)
        ),
        "rolls": tuple(RollLine(cloth, 1000.0, 483.0, 0.69, drawing) for cloth in cloths),
        "shop": shop,
        "bench": bench,
    }


def texts_on(value) -> list[str]:
    """Return every text of a sheet or of a part of it."""
    if isinstance(value, str):
        return [value]
    if isinstance(value, tuple):
        return [text for item in value for text in texts_on(item)]
    if hasattr(value, "__dataclass_fields__") and not isinstance(value, Drawing):
        return [t for field in value.__dataclass_fields__ for t in texts_on(getattr(value, field))]
    return []


def station_of(made: JobSheet, title: str) -> Station:
    """Return the station of that title."""
    return next(station for station in made.sheet.stations if station.title == title)


def table_of(station: Station, start: str) -> Table:
    """Return the table of a station whose heading starts so."""
    return next(b for b in station.blocks if isinstance(b, Table) and b.heading.startswith(start))
