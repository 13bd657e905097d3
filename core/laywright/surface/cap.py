"""The smallest cap of directions that holds all normals of a surface.

The least draft of a surface along a pull ``p`` is the least ``asin(n . p)`` over its normals
``n``.  The pull that makes it largest is the centre of the smallest spherical cap that holds
all normals, which a linear programme on the normals' convex hull gives exactly: no directions
are sampled.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from scipy.optimize import minimize

from laywright.arrays import FloatArray, Vector, unit_vector

__all__ = ["Cap", "smallest_cap"]

_ACTIVE = 400


@dataclass(frozen=True)
class Cap:
    """A spherical cap of directions.

    Attributes
    ----------
    axis : tuple of 3 float
        Unit vector to the centre of the cap.
    least_draft : float, radians
        Least angle between the plane across `axis` and the normals; negative where no
        direction sees all of them.
    """

    axis: Vector
    least_draft: float


def smallest_cap(normals: FloatArray) -> Cap:
    """Return the smallest cap that holds all `normals`.

    Parameters
    ----------
    normals : (m, 3) float
        Unit normals; zero vectors are left out.

    Returns
    -------
    Cap
        Its axis is the pull direction with the largest least draft.

    Notes
    -----
    Maximise t subject to ``n . p >= t`` for all n and ``|p| <= 1``: concave, so the optimum
    found is the global one.  It is solved on the few normals that matter (those that bound
    the set, exchanged until no other normal is violated).
    """
    usable = normals[np.einsum("ij,ij->i", normals, normals) > 0.25]
    if len(usable) == 0:
        raise ValueError("no normals to hold in a cap")
    mean = usable.mean(axis=0)
    start = mean / np.linalg.norm(mean) if np.linalg.norm(mean) > 1e-9 else usable[0]
    active = usable[np.argsort(usable @ start)[:_ACTIVE]]
    axis = start
    for _ in range(50):
        axis = _deepest_direction(active, axis)
        height = usable @ axis
        worst = np.argsort(height)[:_ACTIVE]
        if height[worst[0]] >= (active @ axis).min() - 1e-12:
            break
        active = np.concatenate([active[np.argsort(active @ axis)[:_ACTIVE]], usable[worst]])
    least = float(np.clip((usable @ axis).min(), -1.0, 1.0))
    return Cap(unit_vector(axis), math.asin(least))


def _deepest_direction(normals: FloatArray, start: FloatArray) -> FloatArray:
    unknown = np.append(start, float((normals @ start).min()))
    result = minimize(
        lambda x: -x[3],
        unknown,
        jac=lambda _: np.array([0.0, 0.0, 0.0, -1.0]),
        constraints=[
            {
                "type": "ineq",
                "fun": lambda x: normals @ x[:3] - x[3],
                "jac": lambda _: np.hstack([normals, -np.ones((len(normals), 1))]),
            },
            {
                "type": "ineq",
                "fun": lambda x: 1.0 - x[:3] @ x[:3],
                "jac": lambda x: np.append(-2.0 * x[:3], 0.0),
            },
        ],
        method="SLSQP",
        options={"ftol": 1e-14, "maxiter": 200},
    )
    axis: FloatArray = np.asarray(result.x[:3], dtype=np.float64)
    length = float(np.linalg.norm(axis))
    improved = length > 1e-6 and (normals @ axis).min() / length >= (normals @ start).min()
    return axis / length if improved else start
