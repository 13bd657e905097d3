"""How fast a resin cures and how hot it can get: closed forms.

Temperatures in degC.  These are textbook relations for judging a plan; the data sheet of a
resin comes first.
"""

from __future__ import annotations

import math

__all__ = [
    "adiabatic_rise",
    "glass_transition",
    "laminate_heat",
    "nth_order_cure",
    "rate_ratio",
    "time_at",
]

_GAS = 8.314462618
_KELVIN = 273.15


def time_at(time: float, reference: float, temperature: float, step: float = 10.0) -> float:
    """Return a time stated at `reference` for another temperature: it halves per `step`.

    Parameters
    ----------
    time : float
        In any unit.
    reference, temperature : float, degC
    step : float, K
        10 by the common rule of resin suppliers (van 't Hoff).

    Examples
    --------
    >>> time_at(7.0, 20.0, 30.0)
    3.5
    """
    return float(time * 2.0 ** ((reference - temperature) / step))


def rate_ratio(energy: float, first: float, second: float) -> float:
    """Return how many times faster a reaction runs at `second` than at `first` (Arrhenius).

    Parameters
    ----------
    energy : float, J/mol
    first, second : float, degC
    """
    return math.exp(energy / _GAS * (1.0 / (first + _KELVIN) - 1.0 / (second + _KELVIN)))


def nth_order_cure(rate: float, time: float, order: float = 1.0) -> float:
    """Return the degree of cure after `time` at constant temperature, d a/dt = k (1 - a)^n.

    Parameters
    ----------
    rate : float, 1/time
    time : float
    order : float
        n, at least 1.
    """
    if order == 1.0:
        return -math.expm1(-rate * time)
    return float(1.0 - (1.0 + (order - 1.0) * rate * time) ** (-1.0 / (order - 1.0)))


def glass_transition(cure: float, fresh: float, full: float, shape: float = 0.4) -> float:
    """Return the glass transition at a degree of cure, degC.

    Parameters
    ----------
    cure : float
        0 fresh to 1 full.
    fresh, full : float, degC
        Glass transition at both ends.
    shape : float
        Ratio of the segment mobilities (or heat capacities) of both ends.

    Notes
    -----
    DiBenedetto 1987 in the form of Pascault and Williams 1990.

    Examples
    --------
    >>> round(glass_transition(0.8, -30.0, 90.0), 3)
    43.846
    """
    return fresh + (full - fresh) * shape * cure / (1.0 - (1.0 - shape) * cure)


def adiabatic_rise(heat: float, capacity: float) -> float:
    """Return the rise in temperature if no heat gets out, K: an upper bound for a cup.

    Parameters
    ----------
    heat : float, J/g
        Set free by the mix.
    capacity : float, J/(g K)
    """
    return heat / capacity


def laminate_heat(
    heat: float, capacity: float, fibre_share: float, fibre_capacity: float = 0.8
) -> tuple[float, float]:
    """Return heat (J/g) and heat capacity (J/(g K)) of a laminate.

    Parameters
    ----------
    heat, capacity : float, J/g, J/(g K)
        Of the mix.
    fibre_share : float
        Share of fibre in the mass.
    fibre_capacity : float, J/(g K)
        0.8 for glass (handbook value, from memory).
    """
    return (
        heat * (1.0 - fibre_share),
        capacity * (1.0 - fibre_share) + fibre_capacity * fibre_share,
    )
