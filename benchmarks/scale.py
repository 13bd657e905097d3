"""Very large inputs, from the input to the files: python benchmarks/run.py scale

Each is a whole job in a process of its own; every stage tells its seconds and the largest
memory of the process so far.  The parts are invented.
"""

from __future__ import annotations

import math
import resource
import tempfile
import time
from pathlib import Path

import rows  # noqa: F401  # the core and the shapes stand on the path
from children import tables_of

from laywright.stage import Stage

CASES = ("scan", "plies", "tiles", "patterns")


def tables(say):
    """Return what the page shows; every case in a process of its own."""
    return {
        "title": "Very large inputs",
        "words": "Whole jobs, from the input to the written files, each in a process of its own. "
        "Memory is the largest that the process had held by the end of the stage. The parts are "
        "invented; the roll plan and the search of the cuts take the time that they are given.",
        "tables": tables_of("scale", CASES, "", say),
    }


class Watch:
    """Seconds and memory of each step of one case."""

    def __init__(self):
        self.rows = []
        self.inside = 0
        self.call = Stage.__call__

    def __enter__(self):
        def timed(stage, *args, **kwargs):
            return self.step(stage.title, lambda: self.call(stage, *args, **kwargs))

        Stage.__call__ = timed
        return self

    def __exit__(self, *_):
        Stage.__call__ = self.call

    def step(self, name, call):
        """Return what a call gives, and remember what it took; a step inside one is its part."""
        start = time.perf_counter()
        self.inside += 1
        try:
            given = call()
        finally:
            self.inside -= 1
        if not self.inside:
            seconds = time.perf_counter() - start
            peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024.0
            self.rows.append([name, f"{seconds:.2f}", f"{peak:.0f}"])
        return given

    def table(self, title, words):
        """Return what was remembered, with the sum."""
        total = sum(float(seconds) for _, seconds, _ in self.rows)
        whole = ["all", f"{total:.1f}", self.rows[-1][2]]
        return {
            "title": title,
            "words": words,
            "head": ["step", "s", "MB"],
            "rows": [*self.rows, whole],
        }

    def job(self, job):
        """Run a job and write its files."""
        from laywright.files.paper import Paper
        from laywright.job.job import run
        from laywright.job.outputs import files_of, write_files

        result = run(job)
        files = self.step("files made", lambda: files_of(result, Paper.A4))
        with tempfile.TemporaryDirectory() as folder:
            out = Path(folder) / "files"
            written = self.step("files written", lambda: write_files(files, out))
            size = sum(path.stat().st_size for path in out.rglob("*") if path.is_file()) / 1e6
        return result, f"{len(written)} files, {size:.0f} MB"


def job_of(**changes):
    """Return a job on the hatch of the tests, with the search of the roll at 5 s."""
    import job_demo
    from laywright.cloth.roll.roll import RollSettings

    return job_demo.hatch(**({"roll": RollSettings(seconds=5.0)} | changes))


def scan(facets=1_000_000):
    """A scan of a crowned part as loose triangles with noise, its unit stated."""
    import numpy as np

    import shapes
    from laywright.surface.scan import take_mesh

    with Watch() as watch:
        cells = round(math.sqrt(facets / 2.0))
        drawn = shapes.graph(
            lambda x, y: 40.0 - (x**2 + 0.5 * y**2) / 4000.0,
            (-190, 190),
            (-140, 140),
            (cells, cells),
        )
        noise = np.random.default_rng(3).normal(0.0, 0.002, len(drawn.vertices))
        points = drawn.vertices + noise[:, None] * [0.0, 0.0, 1.0]
        loose = points[drawn.triangles].reshape(-1, 3)
        triangles = np.arange(len(loose)).reshape(-1, 3)
        reading = take_mesh(loose, triangles, "mm")
        result, written = watch.job(job_of(surface=reading.surface))
        return watch.table(
            f"A scan of {len(triangles):,} loose triangles",
            f"Smooth regions: {len(reading.surface.patch_names)}. {len(result.tiles.tiles)} tiles, "
            f"body of {len(result.body.solid.triangles):,} triangles; {written}.",
        )


def plies(count=200):
    """Very many thin plies, two parts cut at once."""
    from laywright.cloth.roll.roll import RollSettings
    from laywright.laminate.materials import load_materials
    from laywright.laminate.plies import Layup, Ply

    with Watch() as watch:
        materials = load_materials()
        cloth = materials.cloth("E-glass plain weave 49 g/m^2")
        resin = materials.resin("Laminating epoxy, slow hardener")
        angles = [math.radians((0, 45, 90, -45)[number % 4]) for number in range(count)]
        layup = Layup(tuple(Ply(cloth, angle) for angle in angles), resin)
        result, written = watch.job(job_of(layup=layup, roll=RollSettings(seconds=5.0, parts=2)))
        (roll,) = result.roll.rolls
        return watch.table(
            f"{count} plies, two parts cut at once",
            f"{len(result.patterns.patterns)} patterns, {len(roll.placements)} pieces on "
            f"{roll.length / 1000.0:.1f} m of roll, laminate {result.laminate.thickness:.1f} mm; "
            f"{written}.",
        )


def tiles(least=150):
    """A large hatch on a small printer."""
    import shapes
    from laywright.cloth.roll.roll import RollSettings
    from laywright.cloth.roll.roll_settings import WidePatterns
    from laywright.mould.tiles.printer import Printer

    with Watch() as watch:
        surface = shapes.hatch(
            length=900.0, width=640.0, corner=80.0, spacing=8.0, radii=(6000.0, 4000.0)
        )
        result, written = watch.job(
            job_of(
                surface=surface,
                printer=Printer("Very small", (66.0, 60.0, 110.0)),
                roll=RollSettings(seconds=5.0, wide=WidePatterns.SPLIT),
            )
        )
        assert len(result.tiles.tiles) >= least
        return watch.table(
            f"{len(result.tiles.tiles)} tiles",
            f"A hatch of 900 x 640 mm in tiles of at most 66 x 60 x 110 mm, "
            f"{len(result.tiles.joints)} joints; {written}.",
        )


def patterns(count=400):
    """Very many different pieces on one roll, drawn and listed."""
    import roll

    from laywright.cloth.roll.roll import RollSettings, plan_roll
    from laywright.cloth.roll.roll_drawing import roll_drawing
    from laywright.files.dxf import dxf_bytes
    from laywright.laminate.materials import Weave

    with Watch() as watch:
        given = roll.patterns(roll.outlines(count, 80.0), Weave.TWILL)
        (found,) = plan_roll(given, RollSettings(seconds=10.0)).rolls
        drawing = watch.step("drawn", lambda: roll_drawing(found, given.patterns))
        content = watch.step("DXF", lambda: dxf_bytes(drawing))
        return watch.table(
            f"{count} different patterns on a roll",
            f"{len(found.placements)} pieces on {found.length / 1000.0:.1f} m, "
            f"{100.0 * found.share_used:.0f} % used, searched for 10 s; "
            f"a DXF of {len(content) / 1e6:.1f} MB.",
        )
