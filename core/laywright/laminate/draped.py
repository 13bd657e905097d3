"""The stiffness of a draped laminate, place by place.

On a doubly curved part warp and weft no longer cross at right angles, and no longer lie at the
angle at which the ply was started.  Each ply is taken as its yarns in their true directions,
thicker where the cloth is sheared together.  A core keeps its thickness.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike

from laywright.arrays import FloatArray
from laywright.errors import InputError
from laywright.laminate.cloth_ply import yarns
from laywright.laminate.constituents import Weave
from laywright.laminate.cores import core_lamina
from laywright.laminate.lamina import reduced_stiffness
from laywright.laminate.laminate import Laminate
from laywright.laminate.rotation import at_angles
from laywright.laminate.stiffness import Stiffness, integrated

__all__ = ["draped_cover", "draped_ply", "draped_stiffness", "draped_thickness"]

_FLATTEST = 0.05


def draped_cover(laminate: Laminate, warp: ArrayLike, weft: ArrayLike) -> FloatArray:
    """Return flat cloth per area of surface of each ply, from its shear alone.

    Yarns keep their length, so a cell of the cloth shrinks by the sine of the angle between
    warp and weft (pin-jointed net; areal weight by Prodromou and Chen 1997).  Mat flows and
    covers evenly.

    Parameters
    ----------
    laminate : Laminate
    warp, weft : (..., k) array_like, radians
        Directions of the yarns of each ply, from the local x axis.

    Returns
    -------
    numpy.ndarray
        (..., k) float.

    Raises
    ------
    InputError
        If warp and weft nearly coincide.
    """
    sine = np.abs(np.sin(np.asarray(weft, dtype=np.float64) - np.asarray(warp)))
    if sine.size and sine.min() < _FLATTEST:
        raise InputError(
            "draped laminate",
            f"warp and weft only {np.degrees(np.arcsin(sine.min())):.1f} degrees apart",
            "cloth short of locking",
            "give the ply a dart or a splice",
        )
    flows = [ply.cloth.weave is Weave.MAT for ply in laminate.layup.plies]
    return np.asarray(1.0 / np.where(flows, 1.0, sine))


def draped_thickness(
    laminate: Laminate, warp: ArrayLike, weft: ArrayLike, cover: ArrayLike | None = None
) -> FloatArray:
    """Return the thickness of each ply at each place, (..., k) float, mm.

    Parameters
    ----------
    laminate : Laminate
    warp, weft : (..., k) array_like, radians
        Directions of the yarns of each ply, from the local x axis.
    cover : (..., k) array_like, optional
        Flat cloth per area of surface; None takes that of the shear, see `draped_cover`.
    """
    if cover is None:
        cover = draped_cover(laminate, warp, weft)
    return np.asarray(laminate.ply_thicknesses * np.asarray(cover, dtype=np.float64))


def draped_ply(laminate: Laminate, number: int, warp: ArrayLike, weft: ArrayLike) -> FloatArray:
    """Return the stiffness of one ply at each place, (..., 3, 3) float, MPa, in the local axes.

    Parameters
    ----------
    laminate : Laminate
    number : int
        Of the ply, from 1.
    warp, weft : (...) array_like, radians
        Directions of its yarns.
    """
    layup = laminate.layup
    cloth = layup.plies[number - 1].cloth
    fraction = float(laminate.ply_fibre_fractions[number - 1])
    mat = cloth.weave is Weave.MAT
    warp = np.asarray(warp, dtype=np.float64)
    total = np.zeros((*warp.shape, 3, 3))
    for part in yarns(cloth, layup.resin, fraction, layup.void_share):
        crossing = part.angle > 0.0 and not mat
        direction = np.asarray(weft, dtype=np.float64) if crossing else warp + part.angle
        total += part.share * at_angles(reduced_stiffness(part.lamina), direction)
    return total


def draped_stiffness(
    laminate: Laminate, warp: ArrayLike, weft: ArrayLike, cover: ArrayLike | None = None
) -> Stiffness:
    """Return A, B and D at each place.

    Parameters
    ----------
    laminate : Laminate
    warp, weft : (..., k) array_like, radians
        Directions of the yarns of each ply, from the local x axis, counter-clockwise seen from
        the side away from the mould.
    cover : (..., k) array_like, optional
        Flat cloth per area of surface; None takes that of the shear, see `draped_cover`.

    Returns
    -------
    Stiffness
        Leading axes as those of `warp`, in the local axes.
    """
    warp = np.asarray(warp, dtype=np.float64)
    weft = np.asarray(weft, dtype=np.float64)
    matrices = [
        draped_ply(laminate, index + 1, warp[..., index], weft[..., index])
        for index in range(len(laminate.layup.plies))
    ]
    thicknesses = draped_thickness(laminate, warp, weft, cover)
    core = laminate.layup.core
    if core is not None:
        even = reduced_stiffness(core_lamina(core.sheet))
        matrices.insert(core.after, np.broadcast_to(even, matrices[0].shape))
        thicknesses = np.insert(thicknesses, core.after, core.thickness, axis=-1)
    return integrated(np.stack(matrices, axis=-3), thicknesses)
