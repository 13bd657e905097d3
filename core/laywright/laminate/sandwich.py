"""A core between two faces as a beam: stiffness, core shear, wrinkling of a face, deflection.

Per width, for thin faces on a much softer core.  Sources: Allen 1969; Zenkert 1995; wrinkling
by Hoff and Mautner 1945.
"""

from __future__ import annotations

from dataclasses import dataclass

from laywright.errors import LimitError

__all__ = [
    "Sandwich",
    "bending_deflection",
    "core_shear",
    "face_stress",
    "wrinkling_stress",
]

_WRINKLING = 0.5


@dataclass(frozen=True)
class Sandwich:
    """Two faces on a core, per width.

    Attributes
    ----------
    lower_modulus, upper_modulus : float, MPa
        Of the faces, along the span; the lower one lies at the mould.
    lower_thickness, upper_thickness, core_thickness : float, mm
    core_shear_modulus : float, MPa
        Between the faces, along the span.
    """

    lower_modulus: float
    upper_modulus: float
    lower_thickness: float
    upper_thickness: float
    core_thickness: float
    core_shear_modulus: float

    def __post_init__(self) -> None:
        for name, value in vars(self).items():
            if not value > 0.0:
                raise LimitError(
                    f"sandwich: {name}", f"{value:g}", "more than zero", "correct the value"
                )

    @property
    def distance(self) -> float:
        """Distance of the middles of the faces, mm."""
        return self.core_thickness + (self.lower_thickness + self.upper_thickness) / 2.0

    @property
    def bending_stiffness(self) -> float:
        """Per width, N mm: the faces about their common middle, and each about its own."""
        lower = self.lower_modulus * self.lower_thickness
        upper = self.upper_modulus * self.upper_thickness
        own = lower * self.lower_thickness**2 + upper * self.upper_thickness**2
        return lower * upper / (lower + upper) * self.distance**2 + own / 12.0

    @property
    def shear_stiffness(self) -> float:
        """Per width, N/mm (Allen 1969)."""
        return self.core_shear_modulus * self.distance**2 / self.core_thickness


def bending_deflection(sandwich: Sandwich, span: float, force: float) -> tuple[float, float]:
    """Return the deflection of the middle under a middle load, mm: by bending, by core shear.

    Parameters
    ----------
    sandwich : Sandwich
    span : float, mm
        Between simple supports.
    force : float, N/mm
        Per width.
    """
    bent = force * span**3 / (48.0 * sandwich.bending_stiffness)
    return bent, force * span / (4.0 * sandwich.shear_stiffness)


def core_shear(sandwich: Sandwich, shear_force: float) -> float:
    """Return the shear stress in the core, MPa, under a shear force per width (N/mm)."""
    return shear_force / sandwich.distance


def face_stress(sandwich: Sandwich, moment: float) -> tuple[float, float]:
    """Return the size of the mean stress in lower and upper face, MPa, under a moment (N)."""
    force = moment / sandwich.distance
    return force / sandwich.lower_thickness, force / sandwich.upper_thickness


def wrinkling_stress(face_modulus: float, core_modulus: float, core_shear_modulus: float) -> float:
    """Return the pressure at which a face wrinkles, MPa.

    0.5 (E_f E_c G_c)^(1/3): Hoff and Mautner 1945, with the lower factor of practice instead of
    the 0.91 of theory, because hand-laid faces are never quite flat.

    Parameters
    ----------
    face_modulus : float, MPa
        Of the face in bending, along the pressure.
    core_modulus, core_shear_modulus : float, MPa
        Through the core, and between the faces along the pressure.
    """
    return float(_WRINKLING * (face_modulus * core_modulus * core_shear_modulus) ** (1.0 / 3.0))
