"""``laywright run job.toml``: the whole job without a CAD session."""

from __future__ import annotations

import argparse
import math
import sys
from pathlib import Path

from laywright import __version__
from laywright.errors import LaywrightError
from laywright.files.paper import Paper
from laywright.job.description import read_job
from laywright.job.job import JobResult, run
from laywright.job.outputs import files_of, write_files

__all__ = ["main"]


def main(arguments: list[str] | None = None) -> int:
    """Run the command line and return its exit code: 0, or 1 with one sentence said."""
    parser = argparse.ArgumentParser(
        prog="laywright",
        description="Moulds, cloth patterns and shop plans for parts laid up by hand.",
    )
    parser.add_argument("--version", action="version", version=f"laywright {__version__}")
    commands = parser.add_subparsers(dest="command", required=True)
    job = commands.add_parser("run", help="run a job description and write its files")
    job.add_argument("description", type=Path, help="the job description, a TOML file")
    job.add_argument("--out", type=Path, help="folder for the files (default: beside the file)")
    job.add_argument("--paper", choices=[paper.value for paper in Paper], default=Paper.A4.value)
    job.add_argument("--materials", type=Path, help="folder with material cards of your own")
    chosen = parser.parse_args(arguments)
    stopped = "Stopped; nothing was written."
    try:
        result = run(read_job(chosen.description, chosen.materials), progress=_say)
        files = files_of(result, Paper(chosen.paper))
        out = chosen.out or chosen.description.parent / f"{chosen.description.stem} files"
        stopped = f"Stopped while writing; run it again, for {out} may hold files of two runs."
        written = write_files(files, out)
    except LaywrightError as problem:
        print(f"\n{problem}", file=sys.stderr)
        return 1
    except KeyboardInterrupt:
        print(f"\n{stopped}", file=sys.stderr)
        return 1
    print("\n" + summary(result))
    print(f"{len(written)} files are in {out}")
    return 0


def summary(result: JobResult) -> str:
    """Return the main numbers of a job as lines of text, each with its unit."""
    mix = result.shop.mix
    shear = max(pattern.largest_shear for pattern in result.patterns.patterns)
    lines = [
        f"{result.name}, version {result.version}",
        f"moulded face    {result.face.surface.area / 1e6:.4f} m2",
        f"release         least draft {math.degrees(result.release.least_draft):.1f} deg, "
        f"undercut {result.release.undercut_area:.0f} mm2",
        f"laminate        {result.laminate.thickness:.2f} mm, "
        f"{result.laminate.areal_mass:.0f} g/m2, fibre volume "
        f"{100.0 * result.laminate.fibre_volume_fraction:.0f} %",
        f"mould body      {result.body.volume / 1e6:.2f} litres, working area within "
        f"{result.face.deviation + result.body.largest_deviation:.3f} mm of the mesh",
        f"mould pieces    {len(result.body.parts())}",
        *(
            []
            if result.body.plastic is None
            else [f"printing        {result.body.plastic.formula}"]
        ),
        f"print tiles     {_tiles(result)}",
        f"cloth patterns  {len(result.patterns.patterns)}, largest shear "
        f"{math.degrees(shear):.1f} deg",
        *(
            f"roll            {roll.title}: {roll.length / 1000.0:.2f} m, "
            f"{100.0 * roll.share_used:.0f} % used"
            for roll in result.roll.layouts
        ),
        f"mix             cloth {mix.cloth_g:.0f} g, resin {mix.resin_g:.0f} g, hardener "
        f"{mix.hardener_g:.0f} g, cups: {len(mix.cups)}",
        f"cure            {result.shop.cure.cure_hours:.0f} h at "
        f"{result.shop.cure.temperature_c:.0f} degC",
        *result.release.remarks,
        *result.body.remarks,
        *result.laminate.remarks,
        *result.patterns.remarks,
        *result.roll.remarks,
    ]
    return "\n".join(lines)


def _tiles(result: JobResult) -> str:
    """Return number, mass, time and, with a price, cost of all tiles: what is really printed."""
    tiles = result.tiles.tiles
    mass, hours = (
        math.fsum(sums) for sums in zip(*((t.mass, t.hours) for t in tiles), strict=True)
    )
    cost = "" if result.body.plastic is None else result.body.plastic.cost_of(mass)
    together = f"{len(tiles)}, {mass:.0f} g, {hours:.1f} h, skins at the cuts included"
    return f"{together}, {cost}" if cost else together


def _say(share: float, doing: str = "", /) -> None:
    if sys.stderr.isatty():
        print(f"\r{100.0 * share:3.0f} % {doing:<50.50}", end="", file=sys.stderr)


if __name__ == "__main__":
    sys.exit(main())
