"""What the job sheet must know of the cloth: lengths, pieces, and where they are laid."""

from __future__ import annotations

from dataclasses import dataclass

from laywright.files.drawing import Drawing

__all__ = ["CutLine", "LandingLine", "RollLine"]


@dataclass(frozen=True)
class CutLine:
    """One piece of the cut list.

    Attributes
    ----------
    number : int
        Place in the order of cutting.
    piece : str
        What is written on it.
    ply : int
        Its ply.
    angle : float, radians
        Ply angle.
    at, size : tuple of 2 float, mm
        Where it begins along the warp and across, and how long and wide it is.
    face_down : bool
        Whether its written side lies downwards on the table.
    turned : bool
        Whether its warp arrow points to the free end of the cloth.
    """

    number: int
    piece: str
    ply: int
    angle: float
    at: tuple[float, float]
    size: tuple[float, float]
    face_down: bool
    turned: bool = False


@dataclass(frozen=True, eq=False)
class RollLine:
    """One length of cloth, from a roll or an offcut.

    Attributes
    ----------
    cloth : str
        Which cloth, or which offcut of it.
    width, length : float, mm
        Width of the roll and length that is used up.
    share_used : float
        Share of that cloth that becomes pieces.
    drawing : Drawing or None
        The roll with its pieces.
    to_buy : float, mm
        Length that is bought, 0 for an offcut.
    tape : tuple of 2 float, mm
        Edge tape of 20 and of 50 mm width along the cut lines, on one face.
    left_over : tuple of (length, width), mm
        The largest rectangles that remain.
    pieces : tuple of CutLine
        In the order of cutting.
    """

    cloth: str
    width: float
    length: float
    share_used: float
    drawing: Drawing | None = None
    to_buy: float = 0.0
    tape: tuple[float, float] = (0.0, 0.0)
    left_over: tuple[tuple[float, float], ...] = ()
    pieces: tuple[CutLine, ...] = ()


@dataclass(frozen=True)
class LandingLine:
    """Where a pattern lands on the mould, seen along the pull, the datum arrow to the right.

    Attributes
    ----------
    names : str
        The patterns.
    start : tuple of 2 float, mm
        Start point: from the rearmost and from the rightmost point of the trim line.
    notches : tuple of (str, (float, float)), mm
        Name of a thread and where it leaves the part: along the arrow and to its left, from
        the start point.
    """

    names: str
    start: tuple[float, float]
    notches: tuple[tuple[str, tuple[float, float]], ...]
