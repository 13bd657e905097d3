"""Every symmetric and balanced layup of some cloths and angles, with its figures."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

import numpy as np

from laywright.arrays import FloatArray, IntArray
from laywright.errors import InputError
from laywright.laminate.constituents import Cloth, Resin
from laywright.laminate.cores import core_lamina
from laywright.laminate.lamina import reduced_stiffness
from laywright.laminate.layers import layers
from laywright.laminate.plies import Core, Layup, Ply, Process
from laywright.laminate.stiffness import Stiffness, laminate_stiffness

__all__ = ["Candidates", "Choices", "Prices", "candidates"]

_MOST = 300_000
_AT_ONCE = 20_000
_EVEN = 1e-6


@dataclass(frozen=True)
class Prices:
    """What the maker pays, in a currency of their own.

    Attributes
    ----------
    cloths : dict of str to float
        Price of a square metre, by the name of the cloth.
    resin : float
        Price of a kilogram of resin with hardener.
    core : float
        Price of a square metre of core.
    """

    cloths: dict[str, float] = field(default_factory=dict)
    resin: float = 0.0
    core: float = 0.0


@dataclass(frozen=True)
class Choices:
    """What a layup may be made of.

    Attributes
    ----------
    cloths : tuple of Cloth
    angles : tuple of float, radians
        At which each cloth may lie.
    resin : Resin
    process : Process
    most_plies : int
    core : Core or None
        Laid in the middle of every layup; `Core.after` is not looked at.
    prices : Prices or None
    """

    cloths: tuple[Cloth, ...]
    angles: tuple[float, ...]
    resin: Resin
    process: Process = Process.HAND
    most_plies: int = 6
    core: Core | None = None
    prices: Prices | None = None

    def __post_init__(self) -> None:
        if not self.cloths or not self.angles:
            raise InputError("choice of layups", "no cloth or no angle", "one of each", "add them")
        least = 1 if self.core is None else 2
        if not least <= self.most_plies <= 40:
            raise InputError(
                "most plies", f"{self.most_plies}", f"{least} to 40", "correct the number"
            )
        if self.prices is not None:
            missing = [c.name for c in self.cloths if c.name not in self.prices.cloths]
            if missing:
                raise InputError("prices", f"none for {missing[0]}", "one for each cloth", "add it")
        tried = sum(len(self.options) ** half for half, _ in self.shapes)
        if tried > _MOST:
            raise InputError(
                "choice of layups",
                f"{tried} layups",
                f"at most {_MOST}",
                "allow fewer cloths, angles or plies",
            )

    @property
    def options(self) -> tuple[tuple[Cloth, float], ...]:
        """Every cloth at every angle; mirrored angles count once."""
        return tuple((cloth, angle) for cloth in self.cloths for angle in self.angles)

    @property
    def shapes(self) -> tuple[tuple[int, bool], ...]:
        """Plies in half a layup, the middle one included, and whether there is a middle one."""
        found = []
        for plies in range(1, self.most_plies + 1):
            middle = plies % 2 == 1
            if not (middle and self.core is not None):
                found.append(((plies + 1) // 2, middle))
        return tuple(found)


@dataclass(frozen=True, eq=False)
class Candidates:
    """Balanced layups with their figures.

    Attributes
    ----------
    halves : tuple of (n_i, h_i) int
        Options of the plies from the mould to the middle, for each shape.
    middles : tuple of bool
        Whether the last of them is the middle ply, for each shape.
    plies : (n,) int
    thickness, mass, cost : (n,) float, mm, g/m^2, currency per m^2
    bending : (n, 2) float, N mm
        Of a strip along and across, per width.
    pull : (n, 2) float, N/mm
    """

    halves: tuple[IntArray, ...]
    middles: tuple[bool, ...]
    plies: IntArray
    thickness: FloatArray
    mass: FloatArray
    cost: FloatArray
    bending: FloatArray
    pull: FloatArray

    def stack(self, index: int) -> tuple[int, ...]:
        """Return the options of all plies of a layup, the one at the mould first."""
        for half, middle in zip(self.halves, self.middles, strict=True):
            if index < len(half):
                row = half[index].tolist()
                return (*row, *reversed(row[:-1] if middle else row))
            index -= len(half)
        raise IndexError(index)


@dataclass(frozen=True, eq=False)
class _Figures:
    """Figures of one ply of each option: stiffness, angle, thickness, mass and cost."""

    stiffness: FloatArray
    angles: FloatArray
    thicknesses: FloatArray
    mass: FloatArray
    cost: FloatArray


def candidates(choices: Choices) -> Candidates:
    """Return every symmetric and balanced layup that the choices allow."""
    figures = _figures(choices)
    parts = [
        part
        for half, middle in choices.shapes
        for part in _of_one_shape(choices, figures, half, middle)
    ]
    halves, middles, plies, thickness, mass, cost, bending, pull = zip(*parts, strict=True)
    extra = _core_figures(choices.core, choices.prices)
    return Candidates(
        halves,
        middles,
        np.concatenate(plies),
        np.concatenate(thickness) + extra[0],
        np.concatenate(mass) + extra[1],
        np.concatenate(cost) + extra[2],
        np.concatenate(bending),
        np.concatenate(pull),
    )


def _figures(choices: Choices) -> _Figures:
    single = [Layup((Ply(*option),), choices.resin, choices.process) for option in choices.options]
    found = [layers(layup)[0] for layup in single]
    cloth = np.array([layup.plies[0].cloth.areal_weight for layup in single])
    shares = np.array([layup.ply_resin_share(1) for layup in single])
    resin = cloth * shares / (1.0 - shares)
    cost = np.zeros(len(found))
    if choices.prices is not None:
        prices = choices.prices
        cost = np.array([prices.cloths[layup.plies[0].cloth.name] for layup in single])
        cost = cost + resin * prices.resin / 1000.0
    return _Figures(
        np.stack([reduced_stiffness(layer.lamina) for layer in found]),
        np.array([layer.angle for layer in found]),
        np.array([layer.thickness for layer in found]),
        cloth + resin,
        cost,
    )


def _of_one_shape(
    choices: Choices, figures: _Figures, half: int, middle: bool
) -> Iterator[tuple[Any, ...]]:
    """Yield the balanced layups of one number of plies, some thousands at a time."""
    weights = np.full(half, 2.0)
    if middle:
        weights[-1] = 1.0
    rows = np.indices((len(figures.angles),) * half).reshape(half, -1).T
    for start in range(0, len(rows), _AT_ONCE):
        chosen = rows[start : start + _AT_ONCE]
        order = np.concatenate([chosen, chosen[:, ::-1][:, int(middle) :]], axis=1)
        plates = _plates(order, figures, choices.core)
        even = np.abs(plates.a[:, :2, 2]).max(axis=1) <= _EVEN * plates.a[:, 0, 0]
        chosen = chosen[even]
        bending, pull = np.linalg.inv(plates.d[even]), np.linalg.inv(plates.a[even])
        yield (
            chosen,
            middle,
            np.full(len(chosen), order.shape[1]),
            figures.thicknesses[chosen] @ weights,
            figures.mass[chosen] @ weights,
            figures.cost[chosen] @ weights,
            1.0 / bending[:, (0, 1), (0, 1)],
            1.0 / pull[:, (0, 1), (0, 1)],
        )


def _plates(order: IntArray, figures: _Figures, core: Core | None) -> Stiffness:
    """Return A, B and D of rows of options, with the core in the middle."""
    stiffness, angles, thicknesses = figures.stiffness, figures.angles, figures.thicknesses
    if core is not None:
        order = np.insert(order, order.shape[1] // 2, len(stiffness), axis=1)
        lamina = reduced_stiffness(core_lamina(core.sheet))
        stiffness = np.concatenate([stiffness, lamina[None]])
        angles, thicknesses = np.append(angles, 0.0), np.append(thicknesses, core.thickness)
    return laminate_stiffness(stiffness[order], angles[order], thicknesses[order])


def _core_figures(core: Core | None, prices: Prices | None) -> tuple[float, float, float]:
    """Return thickness, mass and cost of the core with the resin that bonds it."""
    if core is None:
        return 0.0, 0.0, 0.0
    bond = 2.0 * core.sheet.bond_resin
    price = 0.0 if prices is None else prices.core + bond * prices.resin / 1000.0
    return core.thickness, 1000.0 * core.sheet.density * core.thickness + bond, price
