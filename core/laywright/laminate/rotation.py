"""Turning stresses, strains and stiffnesses from one direction to another.

Angles run from x to axis 1, counter-clockwise.  Stresses and strains are written as
``(1, 2, 12)`` or ``(x, y, xy)`` with engineering shear strain.  All functions take leading axes.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike

from laywright.arrays import FloatArray

__all__ = [
    "at_angles",
    "entries_at_angles",
    "invariants",
    "rotated_expansion",
    "rotated_stiffness",
    "strain_rotation",
    "stress_rotation",
    "symmetric",
]

_PLACES = np.array([[0, 1, 3], [1, 2, 4], [3, 4, 5]])


def stress_rotation(angle: ArrayLike) -> FloatArray:
    """Return T with ``(s1, s2, s12) = T (sx, sy, sxy)`` for a lamina at `angle`.

    Parameters
    ----------
    angle : (...) array_like, radians
        From x to axis 1, counter-clockwise.

    Returns
    -------
    numpy.ndarray
        (..., 3, 3) float.  Jones 1975, eq. 2.76.
    """
    angle = np.asarray(angle, dtype=np.float64)
    c, s = np.cos(angle), np.sin(angle)
    return _matrix([[c * c, s * s, 2 * c * s], [s * s, c * c, -2 * c * s], _shear_row(c, s, 1.0)])


def strain_rotation(angle: ArrayLike) -> FloatArray:
    """Return T with ``(e1, e2, g12) = T (ex, ey, gxy)``, engineering shear.

    See Also
    --------
    stress_rotation : parameters and shape.
    """
    angle = np.asarray(angle, dtype=np.float64)
    c, s = np.cos(angle), np.sin(angle)
    return _matrix([[c * c, s * s, c * s], [s * s, c * c, -c * s], _shear_row(c, s, 2.0)])


def _shear_row(c: FloatArray, s: FloatArray, factor: float) -> list[FloatArray]:
    return [-factor * c * s, factor * c * s, c * c - s * s]


def _matrix(rows: list[list[FloatArray]]) -> FloatArray:
    return np.stack([np.stack(row, axis=-1) for row in rows], axis=-2)


def rotated_stiffness(stiffness: ArrayLike, angle: ArrayLike) -> FloatArray:
    """Return the stiffness of a lamina at `angle`, in the axes x, y.

    Parameters
    ----------
    stiffness : (..., 3, 3) array_like, MPa
        In the lamina's own axes.
    angle : (...) array_like, radians

    Returns
    -------
    numpy.ndarray
        (..., 3, 3) float, MPa; Q-bar of Jones 1975, eq. 2.85.
    """
    turn = strain_rotation(angle)
    return np.swapaxes(turn, -1, -2) @ np.asarray(stiffness, dtype=np.float64) @ turn


def rotated_expansion(expansion: ArrayLike, angle: ArrayLike) -> FloatArray:
    """Return the thermal strain per kelvin of a lamina at `angle`, in the axes x, y.

    Parameters
    ----------
    expansion : (..., 3) array_like, 1/K
        In the lamina's own axes; the third is engineering shear, zero for a lamina.
    angle : (...) array_like, radians

    Returns
    -------
    numpy.ndarray
        (..., 3) float, 1/K, engineering shear.
    """
    back = strain_rotation(-np.asarray(angle, dtype=np.float64))
    return np.asarray((back @ np.asarray(expansion, dtype=np.float64)[..., None])[..., 0])


def invariants(stiffness: ArrayLike) -> FloatArray:
    """Return U1 to U5 of a lamina: what does not change when it is turned.

    Parameters
    ----------
    stiffness : (..., 3, 3) array_like, MPa

    Returns
    -------
    numpy.ndarray
        (..., 5) float, MPa.  Tsai and Pagano 1968; Tsai and Hahn 1980, ch. 3.
    """
    q = np.asarray(stiffness, dtype=np.float64)
    total = 3.0 * (q[..., 0, 0] + q[..., 1, 1])
    cross, shear = 2.0 * q[..., 0, 1], 4.0 * q[..., 2, 2]
    return np.stack(
        [
            (total + cross + shear) / 8.0,
            (q[..., 0, 0] - q[..., 1, 1]) / 2.0,
            (total / 3.0 - cross - shear) / 8.0,
            (total / 3.0 + 3.0 * cross - shear) / 8.0,
            (total / 3.0 - cross + shear) / 8.0,
        ],
        axis=-1,
    )


def at_angles(stiffness: ArrayLike, angles: ArrayLike) -> FloatArray:
    """Return the stiffness of orthotropic laminae at many angles; fast for very many.

    The same as `rotated_stiffness`, written in multiples of the angle by the invariants
    (Tsai and Pagano 1968).

    Parameters
    ----------
    stiffness : (..., 3, 3) array_like, MPa
        In the lamina's own axes, without coupling of stretch and shear.
    angles : (...) array_like, radians

    Returns
    -------
    numpy.ndarray
        (..., 3, 3) float, MPa.
    """
    return symmetric(entries_at_angles(stiffness, angles))


def entries_at_angles(stiffness: ArrayLike, angles: ArrayLike) -> FloatArray:
    """Return the six different entries of `at_angles`: 11, 12, 22, 16, 26, 66.

    Parameters
    ----------
    stiffness : (..., 3, 3) array_like, MPa
    angles : (...) array_like, radians

    Returns
    -------
    numpy.ndarray
        (..., 6) float, MPa.
    """
    u1, u2, u3, u4, u5 = np.moveaxis(invariants(stiffness), -1, 0)
    angles = np.asarray(angles, dtype=np.float64)
    cosine, sine = np.cos(2.0 * angles), np.sin(2.0 * angles)
    twice = u2 * cosine
    four = u3 * (2.0 * cosine * cosine - 1.0)
    half_sine, four_sine = 0.5 * u2 * sine, 2.0 * u3 * sine * cosine
    entries = np.empty((*np.broadcast_shapes(u1.shape, angles.shape), 6))
    entries[..., 0] = u1 + twice + four
    entries[..., 1] = u4 - four
    entries[..., 2] = u1 - twice + four
    entries[..., 3] = half_sine + four_sine
    entries[..., 4] = half_sine - four_sine
    entries[..., 5] = u5 - four
    return entries


def symmetric(entries: ArrayLike) -> FloatArray:
    """Return the symmetric matrices of entries 11, 12, 22, 16, 26, 66: (..., 3, 3) float."""
    return np.asarray(entries, dtype=np.float64)[..., _PLACES]
