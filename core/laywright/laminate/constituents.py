"""Fibres, resins and cloths as they stand on cards.

The values are plain numbers in kernel units; where they come from and how wide they range
stands on the card, which the library keeps beside them (`laywright.laminate.materials`).
"""

from __future__ import annotations

import itertools
import math
from dataclasses import dataclass
from enum import Enum
from typing import Annotated

from laywright.errors import LimitError
from laywright.laminate.lamina import Expansion, Strengths
from laywright.laminate.limits import Limits, check_limits

__all__ = ["Cloth", "Fibre", "FibreKind", "Resin", "Weave"]

Density = Annotated[float, Limits("g/cm^3", 0.5, 5.0)]
FibreModulus = Annotated[float, Limits("MPa", 1e3, 9.5e5)]
Celsius = Annotated[float, Limits("degC", -60.0, 300.0)]
Hours = Annotated[float, Limits("hour", 0.5, 450.0)]
Angle = Annotated[float, Limits("radian", 0.0, math.pi / 2)]


class FibreKind(Enum):
    """What a fibre is made of, as far as the bench cares."""

    GLASS = "glass"
    CARBON = "carbon"
    ARAMID = "aramid"
    PLANT = "plant"
    OTHER = "other"


class Weave(Enum):
    """How the yarns of a cloth lie."""

    PLAIN = "plain"
    TWILL = "twill"
    SATIN = "satin"
    BIAXIAL = "biaxial"
    UNIDIRECTIONAL = "unidirectional"
    MAT = "mat"


@dataclass(frozen=True)
class Fibre:
    """A fibre; transversely isotropic about its axis.

    Attributes
    ----------
    name : str
        Name on its card.
    density : float, g/cm^3
        Of the solid fibre.
    axial_modulus, transverse_modulus, shear_modulus : float, MPa
        Young's modulus along and across the fibre, and shear modulus along it.
    poisson : float
        Contraction across per stretch along.
    expansion_axial, expansion_transverse : float, 1/K
        Thermal expansion.
    kind : FibreKind
        What it is made of.
    """

    name: str
    density: Density
    axial_modulus: FibreModulus
    transverse_modulus: FibreModulus
    shear_modulus: FibreModulus
    poisson: Annotated[float, Limits("1", 0.0, 0.5)]
    expansion_axial: Expansion
    expansion_transverse: Expansion
    kind: FibreKind

    def __post_init__(self) -> None:
        check_limits(self, self.name)


@dataclass(frozen=True)
class Resin:
    """A laminating resin with its hardener; "resin" alone means the hardened mix.

    Attributes
    ----------
    name : str
        Name on its card.
    density, modulus, poisson, expansion : float, g/cm^3, MPa, 1, 1/K
        Of the hardened mix.
    hardener_ratio : float
        Parts of hardener per 100 parts of resin, by mass.
    pot_life_minutes, pot_life_mass_g, pot_life_temperature_c : float
        Time in the cup, for this mass of mix at this temperature.
    gel_hours : float
        From mixing until a thin film on the mould has set, at `cure_temperature_c`.
    trim_end_hours : float
        Until when a knife still cuts the edge.
    demould_hours : float
        Until the part may come off the mould.
    cure_hours, cure_temperature_c : float
        Until full cure at this temperature.
    glass_transition_c, glass_transition_full_c : float, degC
        After that cure, and after the fullest post-cure.
    glass_transition_fresh_c : float, degC
        Of the mix before any cure.
    heat_of_cure : float, J/g
        Heat set free by the mix.
    heat_capacity : float, J/(g K)
        Of the mix.
    cure_shrinkage : float
        Linear shrinkage after gel, as a positive share.
    swelling : float
        Linear strain for each unit of water in the mass of the resin.
    water_uptake : float
        Share of water in the mass of the resin after long soaking.
    activation_energy : float or None, kJ/mol
        Of the cure, where known: how much faster it runs when it is warmer.
    reaction_order : float
        n of d a/dt = k (1 - a)^n, for the degree of cure a; k follows from `gel_hours`.
    gel_conversion : float
        Degree of cure at gel.
    """

    name: str
    density: Density
    modulus: Annotated[float, Limits("MPa", 100.0, 2e4)]
    poisson: Annotated[float, Limits("1", 0.0, 0.499)]
    expansion: Annotated[float, Limits("1/K", 1e-5, 5e-4)]
    hardener_ratio: Annotated[float, Limits("percent", 0.5, 200.0)]
    pot_life_minutes: Annotated[float, Limits("minute", 2.0, 600.0)]
    pot_life_mass_g: Annotated[float, Limits("g", 10.0, 2000.0)]
    pot_life_temperature_c: Celsius
    gel_hours: Annotated[float, Limits("hour", 0.1, 72.0)]
    trim_end_hours: Hours
    demould_hours: Hours
    cure_hours: Hours
    cure_temperature_c: Celsius
    glass_transition_c: Celsius
    glass_transition_full_c: Celsius
    glass_transition_fresh_c: Celsius = -30.0
    heat_of_cure: Annotated[float, Limits("J/g", 50.0, 1500.0)] = 450.0
    heat_capacity: Annotated[float, Limits("J/g/K", 0.5, 5.0)] = 1.8
    cure_shrinkage: Annotated[float, Limits("1", 0.0, 0.05)] = 0.005
    swelling: Annotated[float, Limits("1", 0.0, 1.0)] = 0.33
    water_uptake: Annotated[float, Limits("1", 0.0, 0.2)] = 0.03
    activation_energy: Annotated[float, Limits("kJ/mol", 20.0, 150.0)] | None = None
    reaction_order: Annotated[float, Limits("1", 1.0, 3.0)] = 2.0
    gel_conversion: Annotated[float, Limits("1", 0.3, 0.9)] = 0.58

    def __post_init__(self) -> None:
        check_limits(self, self.name)
        self._rising("gel_hours", "trim_end_hours", "demould_hours", "cure_hours")
        self._rising("glass_transition_fresh_c", "glass_transition_c", "glass_transition_full_c")

    def _rising(self, *names: str) -> None:
        for first, second in itertools.pairwise(names):
            if getattr(self, first) > getattr(self, second):
                raise LimitError(
                    f"{self.name}: {second}",
                    f"{getattr(self, second):g}",
                    f"at least {first}, {getattr(self, first):g}",
                    "correct one of the two",
                )


@dataclass(frozen=True)
class Cloth:
    """A cloth from the roll.

    Attributes
    ----------
    name : str
        Name on its card.
    fibre : Fibre
        What its yarns are made of.
    weave : Weave
        How they lie.
    areal_weight : float, g/m^2
        Mass of dry cloth.
    warp_share : float
        Share of the mass that lies along the roll.
    roll_width : float, mm
        Usable width of the roll.
    locking_angle : float, radians
        Shear at which the yarns jam and the cloth begins to wrinkle.
    crimp_angle : float, radians
        Steepest slope of a yarn out of the plane.
    strengths : Strengths or None
        Of one ply of it, axis 1 along the warp; None where nothing is known.
    strength_fibre_fraction : float
        Fibre volume fraction for which `strengths` were given.
    """

    name: str
    fibre: Fibre
    weave: Weave
    areal_weight: Annotated[float, Limits("g/m^2", 5.0, 3000.0)]
    warp_share: Annotated[float, Limits("1", 0.0, 1.0)]
    roll_width: Annotated[float, Limits("mm", 20.0, 5000.0)]
    locking_angle: Angle
    crimp_angle: Annotated[float, Limits("radian", 0.0, 0.6)] = 0.0
    strengths: Strengths | None = None
    strength_fibre_fraction: Annotated[float, Limits("1", 0.05, 0.9)] = 0.35

    def __post_init__(self) -> None:
        check_limits(self, self.name)
