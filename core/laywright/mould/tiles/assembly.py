"""In which order tiles go together.

Dowels and tongues let a tile slide in along one direction only.  So the tiles of a row are
glued end to end first, then row to row, then layer on layer: nothing is ever caught between
two directions.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby, pairwise

__all__ = ["order_of", "steps_of"]

_Placed = tuple[int, int, int, str]


def order_of(tiles: Sequence[_Placed]) -> list[int]:
    """Return the place of every tile in the order of assembly, from 1.

    Parameters
    ----------
    tiles : sequence of (layer, row, column, name)
        All tiles.

    Examples
    --------
    >>> order_of([(0, 1, 0, "B1"), (0, 0, 1, "A2"), (0, 0, 0, "A1")])
    [3, 2, 1]
    """
    place = {tile: number for number, tile in enumerate(sorted(tiles), 1)}
    return [place[tile] for tile in tiles]


def steps_of(tiles: Sequence[_Placed]) -> tuple[str, ...]:
    """Return the order of assembly in words.

    Examples
    --------
    >>> for step in steps_of([(0, 0, 0, "A1"), (0, 0, 1, "A2"), (0, 1, 0, "B1")]): print(step)
    Glue A1 + A2.
    Glue row A1, A2 to B1.
    """
    steps = []
    layers = []
    for _, layer in groupby(sorted(tiles), key=lambda tile: tile[0]):
        rows = []
        for _, row in groupby(layer, key=lambda tile: tile[1]):
            names = [tile[3] for tile in row]
            rows.append(names)
            if len(names) > 1:
                steps.append(f"Glue {' + '.join(names)}.")
        for before, after in pairwise(rows):
            steps.append(f"Glue {_row(before)} to {_row(after)}.")
        layers.append(rows[0][0])
    steps += [
        f"Glue the layer of {after} on the layer of {before}." for before, after in pairwise(layers)
    ]
    return tuple(steps)


def _row(names: list[str]) -> str:
    return names[0] if len(names) == 1 else f"row {', '.join(names)}"
