"""The layers of a layup from the mould upwards: its plies and its core, each with its constants."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray
from laywright.laminate.cloth_ply import cloth_ply
from laywright.laminate.cores import core_lamina
from laywright.laminate.lamina import Lamina, free_strains, reduced_stiffness
from laywright.laminate.micromechanics import check_fraction, fibre_volume_fraction, ply_thickness
from laywright.laminate.plies import Layup
from laywright.laminate.transverse import through_moduli

__all__ = ["Layer", "Stack", "laminae", "layers", "ply_fraction", "stack_of"]


@dataclass(frozen=True)
class Layer:
    """A ply or a core.

    Attributes
    ----------
    name : str
    lamina : Lamina
        Axis 1 along the warp.
    angle : float, radians
    thickness : float, mm
    ply : int or None
        Number of the ply; None for the core.
    """

    name: str
    lamina: Lamina
    angle: float
    thickness: float
    ply: int | None


@dataclass(frozen=True, eq=False)
class Stack:
    """Layers as arrays, for laminated plate theory.

    Attributes
    ----------
    stiffness : (k, 3, 3) float, MPa
        Of each layer in its own axes.
    angles, thicknesses : (k,) float, radians, mm
    free : (2, k, 3) float
        Strain of each layer in its own axes per kelvin, and per unit of water in the resin.
    through : (k, 2) float, MPa
        Shear moduli 13 and 23 of each layer.
    """

    stiffness: FloatArray
    angles: FloatArray
    thicknesses: FloatArray
    free: FloatArray
    through: FloatArray


def ply_fraction(layup: Layup, number: int) -> float:
    """Return the fibre volume fraction of ply `number`, counted from 1.

    Raises
    ------
    LimitError
        If it would hold more fibre than can be packed.
    """
    fibre = layup.plies[number - 1].cloth.fibre
    fraction = fibre_volume_fraction(
        1.0 - layup.ply_resin_share(number), fibre.density, layup.resin.density, layup.void_share
    )
    return check_fraction(fraction, layup.ply_name(number))


def laminae(layup: Layup) -> tuple[Lamina, ...]:
    """Return the elastic constants of each ply of a layup, axis 1 along its warp."""
    return tuple(layer.lamina for layer in layers(layup) if layer.ply is not None)


def layers(layup: Layup) -> tuple[Layer, ...]:
    """Return the plies of a layup, and its core where it lies, the one at the mould first."""
    found: list[Layer] = []
    for number, ply in enumerate(layup.plies, start=1):
        fraction = ply_fraction(layup, number)
        cloth = ply.cloth
        found.append(
            Layer(
                layup.ply_name(number),
                cloth_ply(cloth, layup.resin, fraction, layup.void_share),
                ply.angle,
                ply_thickness(cloth.areal_weight, cloth.fibre.density, fraction),
                number,
            )
        )
        core = layup.core
        if core is not None and core.after == number:
            found.append(Layer("core", core_lamina(core.sheet), 0.0, core.thickness, None))
    return tuple(found)


def stack_of(found: tuple[Layer, ...]) -> Stack:
    """Return layers as arrays."""
    return Stack(
        np.stack([reduced_stiffness(layer.lamina) for layer in found]),
        np.array([layer.angle for layer in found]),
        np.array([layer.thickness for layer in found]),
        np.stack([free_strains(layer.lamina) for layer in found], axis=1),
        np.array([through_moduli(layer.lamina) for layer in found]),
    )
