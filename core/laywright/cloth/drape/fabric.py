"""How stiff a cloth is against being stretched along, stretched across and sheared.

Plain sheets that are laid with it (film, peel ply, tape) are told by the same numbers.  Only
the ratios of the stiffnesses matter to the drape.  The yarn direction of a woven cloth is set
to 1; everything else follows from what holds the cloth together.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from enum import Enum

from laywright.errors import LimitError
from laywright.laminate.materials import Cloth, Weave

__all__ = ["Fabric", "Sheeting", "Start", "fabric_for", "fabric_of"]

_SHEAR_OF_LOOSE_YARNS = 3e-5
_LOCKED = 100.0


class Sheeting(Enum):
    """What is laid on a part besides reinforcing cloth."""

    FILM = "film"
    PEEL_PLY = "peel ply"
    TAPE = "adhesive tape"


class Start(Enum):
    """What the hand lays straight before it smooths the rest outwards."""

    EASED = "warp and weft thread through the start point, giving way to spare shear"
    CROSS = "warp and weft thread through the start point, held straight"
    POINT = "the start point alone, the warp along the arrow"


@dataclass(frozen=True)
class Fabric:
    """Stiffness of a cloth in its own plane, relative to a woven cloth's yarns.

    Attributes
    ----------
    warp, weft : float
        Stiffness against stretch along the warp (roll length) and the weft, more than 0.
    shear : float
        Stiffness against shear below the locking angle, more than 0.
    locking_angle : float, radians
        Shear at which neighbouring yarns touch and the cloth starts to wrinkle.
    locked : float
        Further stiffness against the shear beyond the locking angle.
    start : Start
        What is usually laid straight first.
    warp_limit, weft_limit : float
        Stretch or gathering along the warp and the weft that a hand still works in.
    """

    warp: float
    weft: float
    shear: float
    locking_angle: float
    locked: float = 0.0
    start: Start = Start.EASED
    warp_limit: float = 0.01
    weft_limit: float = 0.01

    @property
    def alike(self) -> bool:
        """Whether it is alike in all directions, without contraction aside, and never locks."""
        return self.warp == self.weft and self.shear == 0.5 * self.warp and self.locked == 0.0

    def __post_init__(self) -> None:
        for name in ("warp", "weft", "shear"):
            value = getattr(self, name)
            if not (math.isfinite(value) and value > 0.0):
                raise LimitError(
                    f"{name} stiffness of the cloth",
                    f"{value:g}",
                    "a number above 0",
                    "correct the cloth's card",
                )
        if not 0.0 < self.locking_angle <= math.pi / 2:
            raise LimitError(
                "locking angle of the cloth",
                f"{math.degrees(self.locking_angle):g} deg",
                "more than 0 and at most 90 deg",
                "correct the cloth's card",
            )
        if not (math.isfinite(self.locked) and self.locked >= 0.0):
            raise LimitError(
                "locked stiffness of the cloth", f"{self.locked:g}", "0 or more", "correct it"
            )
        for name in ("warp_limit", "weft_limit"):
            value = getattr(self, name)
            if not (math.isfinite(value) and value > 0.0):
                raise LimitError(
                    f"{name.replace('_', ' ')} of the cloth",
                    f"{100.0 * value:g} %",
                    "more than 0 %",
                    "correct it",
                )


def _woven(locking: float) -> Fabric:
    return Fabric(
        1.0,
        1.0,
        _SHEAR_OF_LOOSE_YARNS,
        math.radians(locking),
        _LOCKED * _SHEAR_OF_LOOSE_YARNS,
    )


_BY_WEAVE: dict[Weave, Fabric] = {
    # Woven: 200 g/m^2 of glass holds about 100 g/m^2 / 2.55 g/cm^3 * 72 GPa = 2800 N/mm along
    # each yarn family, while dry cloth shears under about 0.1 N/mm per radian (order of
    # magnitude from memory): a ratio near 3e-5.  Locking angles: within the ranges for plain
    # and for twill and satin weaves in J. Cao et al., Composites A 39 (2008) 1037 (from memory).
    Weave.PLAIN: _woven(40.0),
    Weave.TWILL: _woven(50.0),
    Weave.SATIN: _woven(55.0),
    # Stitched biaxial: straight yarns as stiff as woven ones; the stitching hinders shear.
    Weave.BIAXIAL: Fabric(1.0, 1.0, 1e-4, math.radians(50.0), 0.01),
    # Unidirectional: across the fibres only stitching or a light grid holds, so the cloth
    # spreads and bunches, by a tenth, sooner than that a fibre stretches (common practice, no
    # source).
    Weave.UNIDIRECTIONAL: Fabric(1.0, 0.02, 2e-3, math.radians(25.0), 0.05, weft_limit=0.1),
    # Mat: the same in all directions, which needs shear = warp / 2 (isotropic, no lateral
    # contraction); wet mat is worked by about a tenth and tears apart rather than locks
    # (common practice, no source).
    Weave.MAT: Fabric(
        1.0, 1.0, 0.5, math.radians(30.0), 0.0, Start.POINT, warp_limit=0.1, weft_limit=0.1
    ),
}

_BY_SHEETING: dict[Sheeting, Fabric] = {
    # Film: the same in all directions, as mat; a bag or release film draws by about 3 % over a
    # curve before it wants a pleat (common practice, no source).
    Sheeting.FILM: Fabric(
        1.0, 1.0, 0.5, math.radians(10.0), 0.0, Start.POINT, warp_limit=0.03, weft_limit=0.03
    ),
    # Peel ply: a tight plain weave of fine yarns, set by heat, so that it shears less easily
    # than dry reinforcement and locks sooner (common practice, no source).
    Sheeting.PEEL_PLY: Fabric(1.0, 1.0, 1e-3, math.radians(25.0), 0.1),
    # Adhesive tape: a film that cannot slide once it touches, so it gathers at 1 % already
    # (common practice, no source).
    Sheeting.TAPE: Fabric(1.0, 1.0, 0.5, math.radians(5.0), 0.0, Start.POINT),
}


def fabric_for(kind: Weave | Sheeting) -> Fabric:
    """Return the usual stiffnesses and limits of a weave or of a plain sheet.

    Examples
    --------
    >>> fabric_for(Weave.MAT).shear
    0.5
    >>> fabric_for(Sheeting.TAPE).warp_limit
    0.01
    """
    return _BY_SHEETING[kind] if isinstance(kind, Sheeting) else _BY_WEAVE[kind]


def fabric_of(cloth: Cloth) -> Fabric:
    """Return the stiffnesses of a cloth: those of its weave, with its own locking angle."""
    usual = _BY_WEAVE[cloth.weave]
    return replace(usual, locking_angle=cloth.locking_angle)
