"""When a face wrinkles on its core."""

from __future__ import annotations

__all__ = ["wrinkling_stress"]

_WRINKLING = 0.5


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
