"""Plain arithmetic of a drop test, for comparing panels of one's own with each other.

It says nothing about the protection of a person: that is tested by an accredited laboratory.
"""

from __future__ import annotations

import math

__all__ = ["STANDARD_GRAVITY", "drop_height", "impact_speed"]

STANDARD_GRAVITY = 9.80665


def drop_height(energy: float, mass: float) -> float:
    """Return the height (m) from which a mass (kg) falls to bring an energy (J).

    Examples
    --------
    >>> round(drop_height(50.0, 5.0), 4)
    1.0197
    """
    return energy / (mass * STANDARD_GRAVITY)


def impact_speed(energy: float, mass: float) -> float:
    """Return the speed (m/s) at which a mass (kg) brings an energy (J)."""
    return math.sqrt(2.0 * energy / mass)
