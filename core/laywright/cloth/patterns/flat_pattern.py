"""One flat pattern: outlines, marks and figures of a piece of cloth or of a plain sheet."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np
import shapely
from shapely.geometry import LineString

from laywright.arrays import FloatArray, floats
from laywright.cloth.drape.place import nearest_place
from laywright.cloth.drape.strain import image_of
from laywright.cloth.patterns.margins import EdgeMargins, with_margins
from laywright.cloth.patterns.outline import (
    flat_region,
    notches_of,
    refuse_runaway,
    ring,
    smooth_region,
)
from laywright.cloth.patterns.pattern_settings import PatternSettings
from laywright.cloth.patterns.seam_marks import seam_marks
from laywright.cloth.patterns.seam_outline import seamed_outline
from laywright.cloth.plies.draped_ply import DrapedPly
from laywright.cloth.plies.local_outline import local_outline
from laywright.laminate.materials import Weave
from laywright.laminate.plies import Ply
from laywright.tolerances import TOLERANCES

__all__ = ["Goods", "Pattern", "flat_pattern", "goods_of"]


@dataclass(frozen=True, eq=False)
class Pattern:
    """The flat pattern of one ply; coordinates in mm, x along the warp, lowest corner at zero.

    Attributes
    ----------
    ply : int
        Number of the ply; ply 1 touches the mould, 0 is a plain sheet over the last one.
    name : str
        Name of the ply.
    cloth : str
        Name of the cloth that it is cut from.
    weave : Weave
        How the yarns of that cloth lie.
    roll_width : float, mm
        Width of the roll, from the cloth's card; 0 where none is known.
    locking_angle : float, radians
        Shear at which the cloth begins to wrinkle.
    angle : float, radians
        Ply angle from the datum arrow.
    cut : (k, 2) float, mm
        Outline to cut, margin included, counter-clockwise, not repeated at its end.
    openings : tuple of (i, 2) float, mm
        Openings to cut, smaller than the holes by the margin; small holes have none.
    trim : (j, 2) float, mm
        Edge of the part.
    holes : tuple of (i, 2) float, mm
        Edges of the holes in the part.
    datum : (2,) float, mm
        Start point.
    datum_direction : (2,) float
        Unit direction of the datum arrow on the cloth.
    centre : (2,) float, mm
        Where the middle of the part's area lies.
    notches : tuple of (2, 2) float, mm
        From the cut edge inwards, where the threads through the start point run; and beside
        seams, to meet those of the other side.
    area : float, mm^2
        Cloth within the cut line.
    net_area : float, mm^2
        Cloth within the edge of the part.
    largest_shear : float, radians
        Largest shear, without its sign.
    locked_share : float
        Share of the area whose shear is past the locking angle.
    piece : int
        Number of the piece where the ply is laid in several, 0 where it is laid in one.
    slits : tuple of (k, 2) float, mm
        Lines to cut inside the cut line, from the edge inwards, where darts lap over.
    laps : tuple of (k, 2) float, mm
        Lines up to which this pattern laps over its neighbour, or over itself at a dart.
    deviation : float, mm
        Largest distance between the outlines drawn and the smooth ones that were computed.
    """

    ply: int
    name: str
    cloth: str
    weave: Weave
    roll_width: float
    locking_angle: float
    angle: float
    cut: FloatArray
    openings: tuple[FloatArray, ...]
    trim: FloatArray
    holes: tuple[FloatArray, ...]
    datum: FloatArray
    datum_direction: FloatArray
    centre: FloatArray
    notches: tuple[FloatArray, ...]
    area: float
    net_area: float
    largest_shear: float
    locked_share: float
    piece: int = 0
    slits: tuple[FloatArray, ...] = ()
    laps: tuple[FloatArray, ...] = ()
    deviation: float = TOLERANCES.outline


@dataclass(frozen=True)
class Goods:
    """What a pattern is cut from, and how it lies to the datum arrow; see `Pattern`."""

    ply: int
    name: str
    cloth: str
    weave: Weave
    roll_width: float
    locking_angle: float
    angle: float


def goods_of(number: int, name: str, ply: Ply) -> Goods:
    """Return what a ply is cut from."""
    cloth = ply.cloth
    return Goods(
        number, name, cloth.name, cloth.weave, cloth.roll_width, cloth.locking_angle, ply.angle
    )


def flat_pattern(goods: Goods, lies: DrapedPly, piece: int, settings: PatternSettings) -> Pattern:
    """Return the flat pattern of one piece of a ply, or of a plain sheet.

    Parameters
    ----------
    goods : Goods
        What it is cut from.
    lies : DrapedPly
        How it lies on the part.
    piece : int
        Which of its pieces, from 0.
    settings : PatternSettings
        Margin, notches, outlines.

    Raises
    ------
    GeometryError
        If it would overlap itself, or take far more cloth than it covers.
    """
    surface, uv, own = lies.part(piece), lies.drape.uv, lies.pieces[piece]
    direction = floats(image_of(surface, uv, own.datum.origin, own.datum.direction), 2)
    within = settings.deviation
    several = len(lies.pieces) > 1
    name = f"{goods.name}, piece {piece + 1}" if several else goods.name
    if lies.seams:
        laps = [cut.lap for cut in lies.cuts]
        edge = EdgeMargins.by_side(settings.margin, settings.margins, direction, within)
        seamed = seamed_outline(surface, uv, lies.seams, laps, edge, lies.hole_vertices, name)
        region = seamed.region
        slits, lap_lines = (_few(lines, within) for lines in (seamed.slits, seamed.laps))
        refuse_runaway(region, surface, name)
        cut = with_margins(seamed.cut, 0.0, {}, direction, within)
        marks = seam_marks(seamed.runs, lies.seams, laps, cut, settings.notch)
    else:
        region, slits, lap_lines = flat_region(surface, uv, name), (), ()
        marks = ()
        refuse_runaway(region, surface, name)
        region = smooth_region(region, 0.5 * within)
        if lies.ends is None:
            cut = with_margins(region, settings.margin, settings.margins, direction, within)
        else:
            cut = local_outline(region, surface, uv, lies.ends, settings.margin)
            cut = with_margins(cut, 0.0, {}, direction, within)
    trim = shapely.simplify(region, 0.5 * within)
    shift = -np.array(cut.bounds[:2])
    middle = nearest_place(surface, (surface.areas / surface.area) @ surface.centroids)
    notches = (*notches_of(cut, settings.notch), *marks)
    shear = np.abs(lies.drape.shear[own.triangles])
    return Pattern(
        goods.ply,
        name,
        goods.cloth,
        goods.weave,
        goods.roll_width,
        goods.locking_angle,
        goods.angle,
        ring(cut.exterior) + shift,
        tuple(ring(inner) + shift for inner in cut.interiors),
        ring(trim.exterior) + shift,
        tuple(ring(inner) + shift for inner in trim.interiors),
        floats(shift, 2),
        direction,
        floats(middle.value(surface, uv) + shift, 2),
        tuple(notch + shift for notch in notches),
        float(cut.area),
        float(region.area),
        float(shear.max()),
        float(surface.areas[shear > goods.locking_angle].sum() / surface.area),
        piece + 1 if several else 0,
        tuple(slit + shift for slit in slits),
        tuple(line + shift for line in lap_lines),
        within,
    )


def _few(lines: Iterable[FloatArray], deviation: float) -> tuple[FloatArray, ...]:
    """Return lines drawn with few points, within half of a deviation, mm."""
    drawn = [shapely.simplify(LineString(line), 0.5 * deviation) for line in lines]
    return tuple(floats(np.asarray(line.coords), -1, 2) for line in drawn)
