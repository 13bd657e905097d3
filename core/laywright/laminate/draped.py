"""The stiffness of a draped laminate, place by place.

On a doubly curved part warp and weft no longer cross at right angles, and no longer lie at the
angle at which the ply was started.  Each ply is taken as its yarns in their true directions,
thicker where the cloth is sheared together.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike

from laywright.arrays import FloatArray
from laywright.errors import InputError
from laywright.laminate.cloth_ply import yarns
from laywright.laminate.constituents import Weave
from laywright.laminate.lamina import reduced_stiffness
from laywright.laminate.laminate import Laminate
from laywright.laminate.rotation import at_angles
from laywright.laminate.stiffness import Stiffness, integrated

__all__ = ["draped_stiffness", "draped_thickness"]

_FLATTEST = 0.05


def draped_thickness(laminate: Laminate, warp: ArrayLike, weft: ArrayLike) -> FloatArray:
    """Return the thickness of each ply at each place, (..., k) float, mm.

    Yarns keep their length, so a cell of the cloth shrinks by the sine of the angle between
    warp and weft and its thickness grows by as much (pin-jointed net; areal weight by
    Prodromou and Chen 1997).  Mat flows and keeps its thickness.

    Parameters
    ----------
    laminate : Laminate
    warp, weft : (..., k) array_like, radians
        Directions of the yarns of each ply, from the local x axis.

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
    return np.asarray(laminate.ply_thicknesses / np.where(flows, 1.0, sine))


def draped_stiffness(laminate: Laminate, warp: ArrayLike, weft: ArrayLike) -> Stiffness:
    """Return A, B and D at each place.

    Parameters
    ----------
    laminate : Laminate
    warp, weft : (..., k) array_like, radians
        Directions of the yarns of each ply, from the local x axis, counter-clockwise seen from
        the side away from the mould.

    Returns
    -------
    Stiffness
        Leading axes as those of `warp`, in the local axes.
    """
    warp = np.asarray(warp, dtype=np.float64)
    weft = np.asarray(weft, dtype=np.float64)
    layup = laminate.layup
    matrices = []
    for number, ply in enumerate(layup.plies):
        fraction = float(laminate.ply_fibre_fractions[number])
        mat = ply.cloth.weave is Weave.MAT
        total = np.zeros((*warp.shape[:-1], 3, 3))
        for part in yarns(ply.cloth, layup.resin, fraction, layup.void_share):
            crossing = part.angle > 0.0 and not mat
            direction = weft[..., number] if crossing else warp[..., number] + part.angle
            total += part.share * at_angles(reduced_stiffness(part.lamina), direction)
        matrices.append(total)
    return integrated(np.stack(matrices, axis=-3), draped_thickness(laminate, warp, weft))
