"""Stiffness of very many laminates: all in one call, against a plain loop over numpy arrays.

    python benchmarks/laminates.py [LAMINATES ...]

Both give the same A, B and D, which is checked.
"""

from __future__ import annotations

import numpy as np
from rows import Case, Found, Kernel, main, ratio_within

from laywright.laminate.lamina import Lamina, reduced_stiffness
from laywright.laminate.stiffness import laminate_stiffness

PLIES = 16
KINDS = (
    Lamina(140e3, 9e3, 0.3, 5e3),
    Lamina(45e3, 12e3, 0.28, 4.5e3),
    Lamina(20e3, 20e3, 0.15, 3e3),
)


def stacks(count):
    """Return stiffnesses (count, 16, 3, 3), angles and thicknesses (count, 16)."""
    draw = np.random.default_rng(1)
    matrices = np.stack([reduced_stiffness(lamina) for lamina in KINDS])
    return (
        matrices[draw.integers(0, len(KINDS), (count, PLIES))],
        draw.uniform(-np.pi, np.pi, (count, PLIES)),
        draw.uniform(0.1, 0.4, (count, PLIES)),
    )


def plain_loop(matrices, angles, thicknesses):
    """Return A, B and D ply by ply, as the textbook writes them."""
    result = np.zeros((len(angles), 3, 3, 3))
    for laminate in range(len(angles)):
        z = np.concatenate([[0.0], np.cumsum(thicknesses[laminate])])
        z -= z[-1] / 2.0
        for ply in range(angles.shape[1]):
            c, s = np.cos(angles[laminate, ply]), np.sin(angles[laminate, ply])
            turn = np.array(
                [
                    [c * c, s * s, c * s],
                    [s * s, c * c, -c * s],
                    [-2 * c * s, 2 * c * s, c * c - s * s],
                ]
            )
            turned = turn.T @ matrices[laminate, ply] @ turn
            for power in (1, 2, 3):
                step = (z[ply + 1] ** power - z[ply] ** power) / power
                result[laminate, power - 1] += step * turned
    return result


def laminates(count):
    given = stacks(count)

    def compare(ours, peer):
        for power, matrix in enumerate((ours.a, ours.b, ours.d)):
            assert np.allclose(matrix, peer[:, power], rtol=1e-9, atol=1e-9 * np.abs(peer).max())
        return Found("the same A, B and D")

    return Case(count, lambda _: laminate_stiffness(*given), lambda _: plain_loop(*given), compare)


KERNELS = (
    Kernel(
        "laminates",
        f"Stiffness of laminates of {PLIES} plies",
        "a loop over numpy arrays, ply by ply, as the textbook writes it",
        "at most a twentieth of the peer's time",
        "laminates",
        (100, 1_000, 10_000),
        (100,),
        laminates,
        ratio_within(0.05),
    ),
)

if __name__ == "__main__":
    main(KERNELS)
