"""Every reader of files from elsewhere, by one name each, for fuzzing and for the kept seeds.

A reader may give a value or raise a LaywrightError; anything else is a fault of ours.
"""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress
from pathlib import Path

from laywright import values
from laywright.cloth.cuts.cut_text import cut_from_text
from laywright.cloth.patterns.margins import side_margin
from laywright.cloth.patterns.pattern import PatternSet
from laywright.cloth.roll.roll import RollPlan
from laywright.cloth.roll.roll_settings import Fault, Offcut, roll_width
from laywright.errors import LaywrightError
from laywright.files.number_table import read_number_table
from laywright.job.description import read_job
from laywright.job.records import read_records
from laywright.laminate.card_files import read_cards
from laywright.laminate.laminate import Laminate
from laywright.mould.body.body import MouldBody
from laywright.mould.tiles.printer import load_printers
from laywright.mould.tiles.tiles import TileSet
from laywright.shop.bench.shopping import read_prices
from laywright.shop.bench.timeline import WorkingDay
from laywright.shop.coupons.coupon import CouponSet
from laywright.shop.plan import ShopPlan
from laywright.shop.sheet.traveller import JobSheet
from laywright.surface.read import read_mesh
from laywright.surface.repair import RepairSettings

__all__ = ["READERS", "SEEDS", "read"]

SEEDS = Path(__file__).parent / "seeds"


def _job(path: Path) -> object:
    part = path.parent / "part.obj"
    if not part.exists():
        part.write_bytes((SEEDS / "obj" / "whole plate.obj").read_bytes())
    return read_job(path)


def _mesh(path: Path) -> object:
    return read_mesh(path, "mm", mending=RepairSettings())


_LINES: tuple[Callable[[str], object], ...] = (
    cut_from_text,
    side_margin,
    roll_width,
    Offcut.read,
    Fault.read,
    lambda line: read_prices([line]),
    lambda line: WorkingDay(line, "20:00").start,
)
_STORED = (PatternSet, RollPlan, TileSet, Laminate, ShopPlan, JobSheet, CouponSet)


def _lines(path: Path) -> object:
    """Return what anything that reads lines of a document's properties makes of them."""
    found = []
    for line in path.read_text(encoding="utf-8", errors="replace").splitlines():
        for reader in _LINES:
            with suppress(LaywrightError):
                found.append(reader(line))
    return found


def _stored(path: Path) -> object:
    """Return what each stage makes of a stored result, taking it for its own."""
    found = []
    for kind in _STORED:
        with suppress(LaywrightError):
            found.append(values.unpack(kind, path.read_bytes()))
    return found


READERS: dict[str, tuple[str, Callable[[Path], object]]] = {
    "job": ("job.toml", _job),
    "card": ("card.toml", lambda path: list(read_cards(path.parent))),
    "printer": ("printer.toml", lambda path: load_printers(path.parent)),
    "readings": ("readings.csv", lambda path: read_number_table(path.read_bytes(), path.name)),
    "record": ("weigh-in 1.json", lambda path: read_records(path.parent)),
    "stored body": ("body.zip", lambda path: values.unpack(MouldBody, path.read_bytes())),
    "stored result": ("result.zip", _stored),
    "lines": ("lines.txt", _lines),
    "stl": ("part.stl", _mesh),
    "obj": ("part.obj", _mesh),
    "ply": ("part.ply", _mesh),
    "3mf": ("part.3mf", _mesh),
}


def read(kind: str, content: bytes, folder: Path) -> object:
    """Return what the reader of that kind makes of the bytes."""
    name, reader = READERS[kind]
    path = folder / name
    path.write_bytes(content)
    return reader(path)
