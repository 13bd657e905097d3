"""What a laminate is asked to carry, and how that is judged."""

from __future__ import annotations

from dataclasses import dataclass

from laywright.errors import InputError
from laywright.laminate.criteria import Criterion
from laywright.laminate.knock_downs import KnockDowns
from laywright.laminate.loads import LoadCase, StrainCase
from laywright.laminate.plate import Plate

__all__ = ["Loading"]


@dataclass(frozen=True)
class Loading:
    """Loads of a laminate, each judged for itself.

    Attributes
    ----------
    load : LoadCase or None
        Forces and moments per width.
    strain : StrainCase or None
        Strains that something else forces on it.
    plate : Plate or None
        A flat rectangle of it under pressure or in-plane force.
    criterion : Criterion
    knock_downs : KnockDowns or None
        Shares of the cards' strengths that are counted on; None takes what is usual for the
        process.
    """

    load: LoadCase | None = None
    strain: StrainCase | None = None
    plate: Plate | None = None
    criterion: Criterion = Criterion.MAX_STRESS
    knock_downs: KnockDowns | None = None

    def __post_init__(self) -> None:
        if self.load is None and self.strain is None and self.plate is None:
            raise InputError(
                "load", "none", "forces, strains or a panel", "set one or leave the load out"
            )
