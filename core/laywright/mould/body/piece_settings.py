"""How the pieces of a parted mould are built."""

from __future__ import annotations

import dataclasses
from dataclasses import dataclass

from laywright.errors import LimitError
from laywright.mould.release.release import ReleaseSettings
from laywright.mould.release.wanted_draft import check_wanted_draft
from laywright.wording import three_figures

__all__ = ["PieceSettings"]

_POCKET = 2.8
_WALL = 3.0


@dataclass(frozen=True)
class PieceSettings:
    """Number of pieces, flange, bolts and registration.

    Attributes
    ----------
    most_pieces : int or None
        At most so many pieces, 2 to 4; 1 refuses a part that one direction does not release;
        None takes as many as the Release Check tries.
    least_draft : float or None, radians
        Draft that is wanted at every piece; None takes that of the Release Check.
    flange : float, mm
        Width of the flange between pieces, and least thickness of the mould around it; 45 mm
        holds bolts and cones (common practice for flanges: 25 to 75 mm, no source).
    bolt_spacing : float, mm
        Largest distance between bolts; about 150 mm (common practice, no source).
    bolt_diameter : float, mm
        Of the holes.
    clamped : float, mm
        Thickness under a bolt's head on each side.
    cone_diameter : float, mm
        Of the registration cones at the flange.
    clearance : float, mm
        Between a cone and its hole, square to the flange's axis.
    """

    most_pieces: int | None = None
    least_draft: float | None = None
    flange: float = 45.0
    bolt_spacing: float = 150.0
    bolt_diameter: float = 6.5
    clamped: float = 12.0
    cone_diameter: float = 12.0
    clearance: float = 0.2

    def __post_init__(self) -> None:
        if self.least_draft is not None:
            check_wanted_draft(self.least_draft)
        if self.most_pieces is not None and not 1 <= self.most_pieces <= 4:
            raise LimitError("most pieces", str(self.most_pieces), "1 to 4", "set 1, 2, 3 or 4")
        for name, value, least, most in (
            ("bolt spacing", self.bolt_spacing, 30.0, 1000.0),
            ("bolt diameter", self.bolt_diameter, 2.0, 20.0),
            ("flange width", self.flange, 2.0 * self.room, 500.0),
            ("clamped thickness", self.clamped, 3.0, 100.0),
            ("cone diameter", self.cone_diameter, 4.0, 2.0 * (self.room - 1.0)),
            ("clearance", self.clearance, 0.0, 2.0),
        ):
            if not least <= value <= most:
                raise LimitError(
                    name,
                    f"{three_figures(value)} mm",
                    f"{three_figures(least)} to {three_figures(most)} mm",
                    "set a value in that range",
                )

    def asked(self, release: ReleaseSettings) -> ReleaseSettings:
        """Return most pieces and least draft: its own, else those of the Release Check."""
        most, draft = self.most_pieces, self.least_draft
        return dataclasses.replace(
            release,
            most_pieces=release.most_pieces if most is None else most,
            least_draft=release.least_draft if draft is None else draft,
        )

    @property
    def pocket(self) -> float:
        """Radius of the pocket for a bolt's head or nut, mm."""
        return 0.5 * _POCKET * self.bolt_diameter

    @property
    def room(self) -> float:
        """Distance that the centres of bolts and cones keep from edges, mm."""
        return self.pocket + _WALL
