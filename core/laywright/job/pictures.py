"""Pictures for the sheets: a ply as it lies on the mould, the tiles pulled apart."""

from __future__ import annotations

import math

import numpy as np

from laywright.arrays import FloatArray, Vector, floats
from laywright.cloth.patterns.pattern import Pattern
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.projection import picture_of_several, view_from
from laywright.files.solid import Solid
from laywright.mould.tiles.exploded import exploded
from laywright.mould.tiles.tiles import TileSet

__all__ = ["exploded_picture", "ply_picture"]

_APART = 25.0
_STYLES = {
    "cut": Style(0.5),
    "trim": Style(0.25, (2.0, 1.2)),
    "datum": Style(0.7),
    "warp": Style(0.35, (1.0, 1.0)),
}


def ply_picture(pattern: Pattern) -> Drawing:
    """Return a ply as it lies on the mould: the datum arrow to the right on every picture.

    The solid arrow is the datum arrow, from the start point; dotted lines run along the warp.
    """
    along = np.asarray(pattern.datum_direction) / np.linalg.norm(pattern.datum_direction)
    turn = np.stack([along, np.array([-along[1], along[0]])], axis=1)

    def turned(points: FloatArray) -> FloatArray:
        return floats((np.asarray(points) - pattern.datum) @ turn, -1, 2)

    cut = turned(pattern.cut)
    size = 0.35 * float(np.ptp(cut, axis=0).min())
    head = np.array([[size * 0.7, size * 0.15], [size, 0.0], [size * 0.7, -size * 0.15]])
    ring = size * 0.06 * np.array([[math.cos(t), math.sin(t)] for t in np.arange(16) * math.pi / 8])
    warp = np.array([1.0, 0.0]) @ turn
    aside = np.array([-warp[1], warp[0]])
    yarns = [
        np.stack([k * 0.25 * size * aside - size * warp, k * 0.25 * size * aside + size * warp])
        for k in (-2, -1, 1, 2)
    ]
    shapes: list[Line | Label] = [
        Line("cut", cut, closed=True),
        *(Line("cut", turned(opening), closed=True) for opening in pattern.openings),
        *(Line("trim", turned(edge), closed=True) for edge in (pattern.trim, *pattern.holes)),
        *(Line("warp", yarn) for yarn in yarns),
        Line("datum", ring, closed=True),
        Line("datum", np.array([[0.0, 0.0], [size, 0.0]])),
        Line("datum", head),
    ]
    return Drawing(pattern.name, tuple(shapes), _STYLES)


def exploded_picture(tiles: TileSet, pull: Vector) -> Drawing:
    """Return the tiles pulled apart, each with its place in the order of assembly and its name."""
    return picture_of_several(
        "the tiles",
        [
            Solid(f"{tile.order}: {tile.name}", solid.vertices, solid.triangles)
            for tile, solid in zip(tiles.tiles, exploded(tiles, _APART), strict=True)
        ],
        view_from(pull),
    )
