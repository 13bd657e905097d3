"""The laminate as it really lies on the part: stiffness place by place, and its spread."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, floats
from laywright.errors import InputError
from laywright.laminate.draped import draped_stiffness, draped_thickness
from laywright.laminate.laminate import Laminate
from laywright.stage import stage

__all__ = ["DrapedPlaces", "LocalLaminate", "Spread", "local_laminate"]

_ENDS = (0.05, 0.5, 0.95)


@dataclass(frozen=True, eq=False)
class DrapedPlaces:
    """How the plies lie at some places of the part.

    Attributes
    ----------
    warp, weft : (m, k) float, radians
        Directions of the yarns of each ply from the datum arrow, laid into the surface there,
        counter-clockwise seen from the side away from the mould.
    cover : (m, k) float
        Flat cloth per area of surface; 0 where a local ply does not lie.
    areas : (m,) float, mm^2
        Of the surface that each place stands for.
    """

    warp: FloatArray
    weft: FloatArray
    cover: FloatArray
    areas: FloatArray

    def __post_init__(self) -> None:
        object.__setattr__(self, "areas", floats(self.areas, -1))
        count = len(self.areas)
        for name in ("warp", "weft", "cover"):
            object.__setattr__(self, name, floats(getattr(self, name), count, -1))


@dataclass(frozen=True)
class Spread:
    """How a figure is spread over the part.

    Attributes
    ----------
    name, unit : str
    planned : float
        Of the flat laminate.
    low, middle, high : float
        5, 50 and 95 % of the area lie below.
    mean : float
        Over the area.
    """

    name: str
    unit: str
    planned: float
    low: float
    middle: float
    high: float
    mean: float


@dataclass(frozen=True, eq=False)
class LocalLaminate:
    """The laminate at each place, in the axes of the datum arrow laid into the surface there.

    Attributes
    ----------
    thickness, areal_mass : (m,) float, mm, g/m^2
    e_x, e_y, g_xy : (m,) float, MPa
        Moduli when pulled.
    bending_x, bending_y : (m,) float, N mm
        Bending stiffness of a strip, per width.
    spreads : tuple of Spread
        Of each of these, in this order.
    mass : float, g
        Of the part within its edge.
    digest : str
        Of its inputs.
    """

    thickness: FloatArray
    areal_mass: FloatArray
    e_x: FloatArray
    e_y: FloatArray
    g_xy: FloatArray
    bending_x: FloatArray
    bending_y: FloatArray
    spreads: tuple[Spread, ...]
    mass: float
    digest: str = ""

    def spread(self, name: str) -> Spread:
        """Return the spread of this name."""
        return next(spread for spread in self.spreads if spread.name == name)


@stage("Draped Laminate", version=1)
def local_laminate(laminate: Laminate, places: DrapedPlaces) -> LocalLaminate:
    """Return the stiffness of a draped laminate at each place, and the spread over the part.

    The share of resin stays that of the layup: where the cloth is sheared together, there is
    more of both.

    Parameters
    ----------
    laminate : Laminate
    places : DrapedPlaces

    Raises
    ------
    InputError
        If the places are of another number of plies.
    """
    count = len(laminate.layup.plies)
    if places.warp.shape[1] != count:
        raise InputError(
            "draped laminate",
            f"the drape of {places.warp.shape[1]} plies",
            f"that of {count} plies",
            "drape the layup again",
        )
    core = laminate.layup.core
    plies = draped_thickness(laminate, places.warp, places.weft, places.cover)
    thickness = plies.sum(axis=1) + (0.0 if core is None else core.thickness)
    main = np.array(laminate.layup.throughout) - 1
    masses = np.array(
        [
            ply.cloth.areal_weight / (1.0 - laminate.layup.ply_resin_share(number))
            for number, ply in enumerate(laminate.layup.plies, start=1)
        ]
    )
    rest = laminate.areal_mass - float(masses[main].sum())
    mass = places.cover @ masses + rest
    found = draped_stiffness(laminate, places.warp, places.weft, places.cover)
    compliance = np.linalg.inv(found.matrix())
    diagonal = 1.0 / np.diagonal(compliance, axis1=-2, axis2=-1)
    flat, bent = laminate.in_plane, laminate.bending
    cube = laminate.thickness**3 / 12.0
    figures = (
        ("thickness", "mm", laminate.thickness, thickness),
        ("mass", "g/m^2", laminate.areal_mass, mass),
        ("modulus along", "MPa", flat.e_x, diagonal[:, 0] / thickness),
        ("modulus across", "MPa", flat.e_y, diagonal[:, 1] / thickness),
        ("shear modulus", "MPa", flat.g_xy, diagonal[:, 2] / thickness),
        ("bending stiffness along", "N mm", bent.e_x * cube, diagonal[:, 3]),
        ("bending stiffness across", "N mm", bent.e_y * cube, diagonal[:, 4]),
    )
    values = [floats(value, -1) for *_, value in figures]
    return LocalLaminate(
        thickness=values[0],
        areal_mass=values[1],
        e_x=values[2],
        e_y=values[3],
        g_xy=values[4],
        bending_x=values[5],
        bending_y=values[6],
        spreads=tuple(_spread(places.areas, *figure) for figure in figures),
        mass=float(mass @ places.areas) * 1e-6,
    )


def _spread(areas: FloatArray, name: str, unit: str, planned: float, values: FloatArray) -> Spread:
    order = np.argsort(values)
    below = (np.cumsum(areas[order]) - 0.5 * areas[order]) / areas.sum()
    low, middle, high = np.interp(_ENDS, below, values[order]).tolist()
    return Spread(name, unit, planned, low, middle, high, float(values @ areas / areas.sum()))
