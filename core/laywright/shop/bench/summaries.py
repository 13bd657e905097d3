"""What the job sheet is told about a job: plain summaries, so that it knows no other room."""

from __future__ import annotations

from dataclasses import dataclass

from laywright.files.drawing import Drawing
from laywright.files.page import Table
from laywright.shop.bench.roll_summary import LandingLine

__all__ = [
    "CoreLine",
    "LaminateDetails",
    "LaminateSummary",
    "PartSummary",
    "PatternLine",
    "PlyLine",
    "ReleaseSummary",
    "TileLine",
    "TileSummary",
]

Size = tuple[float, float, float]


@dataclass(frozen=True, eq=False)
class PartSummary:
    """The part.

    Attributes
    ----------
    size : tuple of 3 float, mm
        Along x, y and z.
    area : float, mm^2
        Moulded area inside the trim line.
    deviation : float, mm
        Largest distance between the part and the triangles that stand for it.
    picture : Drawing or None
        The part as the eye sees it.
    """

    size: Size
    area: float
    deviation: float = 0.0
    picture: Drawing | None = None


@dataclass(frozen=True, eq=False)
class ReleaseSummary:
    """Whether the part leaves the mould.

    Attributes
    ----------
    pull : tuple of 3 float
        Direction in which the part is pulled.
    least_draft, wanted_draft : float, radians
        Smallest draft of the moulded face, and the draft that was asked for.
    undercut_area : float, mm^2
        Area that holds the part back.
    remarks : tuple of str
        What the check found.
    """

    pull: Size
    least_draft: float
    wanted_draft: float
    undercut_area: float
    remarks: tuple[str, ...] = ()


@dataclass(frozen=True)
class TileLine:
    """One printed tile.

    Attributes
    ----------
    name : str
        As engraved on it and as its file is called.
    row, column : int
        Place in the mould, from 1.
    size : tuple of 3 float, mm
        As it stands on the printer.
    mass : float, g
        Estimate with the printer's walls and infill.
    layer : int
        Place in height, from 1.
    hours : float
        Estimate of the print's time without supports.
    pose : str
        What it stands on.
    """

    name: str
    row: int
    column: int
    size: Size
    mass: float
    layer: int = 1
    hours: float = 0.0
    pose: str = ""


@dataclass(frozen=True, eq=False)
class TileSummary:
    """The tiles of the mould.

    Attributes
    ----------
    printer : str
        Name of the printer.
    tiles : tuple of TileLine
        In the order of rows and columns.
    glue_gap : float, mm
        Thickness of the glue in each joint.
    picture : Drawing or None
        The tiles pulled apart, with their names.
    remarks : tuple of str
        What to look out for.
    mould_size : tuple of 3 float or None, mm
        Of the whole mould when it is glued.
    assembly : tuple of str
        What is glued to what, in order.
    """

    printer: str
    tiles: tuple[TileLine, ...]
    glue_gap: float = 0.0
    picture: Drawing | None = None
    remarks: tuple[str, ...] = ()
    mould_size: Size | None = None
    assembly: tuple[str, ...] = ()


@dataclass(frozen=True, eq=False)
class PlyLine:
    """One ply of the laminate.

    Attributes
    ----------
    ply : int
        Number; ply 1 touches the mould.
    name, cloth : str
        Name of the ply and of its cloth.
    angle : float, radians
        From the datum arrow, counter-clockwise seen from the side away from the mould.
    thickness : float, mm
        When cured.
    drawing : Drawing or None
        The ply as it lies on the mould, the datum arrow to the right.
    extent : str
        What it covers; empty for the whole face.
    """

    ply: int
    name: str
    cloth: str
    angle: float
    thickness: float
    drawing: Drawing | None = None
    extent: str = ""


@dataclass(frozen=True)
class ZoneLine:
    """A part of the face that the same plies cover.

    Attributes
    ----------
    plies : tuple of int
        Their numbers.
    area : float, mm^2
    thickness : float, mm
    areal_mass : float, g/m^2
    """

    plies: tuple[int, ...]
    area: float
    thickness: float
    areal_mass: float


@dataclass(frozen=True)
class CoreLine:
    """The core of a laminate.

    Attributes
    ----------
    name : str
        Of its sheet.
    thickness : float, mm
    after : int
        Number of the ply that it lies on.
    """

    name: str
    thickness: float
    after: int


@dataclass(frozen=True, eq=False)
class LaminateDetails:
    """What the page on the laminate shows beside its plies.

    Attributes
    ----------
    section, polar : Drawing
        The stack, and the stiffness all round.
    tables : tuple of Table
    notes : tuple of str
    envelope : Drawing or None
        Which loads it carries, where a load is given.
    """

    section: Drawing
    polar: Drawing
    tables: tuple[Table, ...]
    notes: tuple[str, ...]
    envelope: Drawing | None = None


@dataclass(frozen=True, eq=False)
class LaminateSummary:
    """The laminate.

    Attributes
    ----------
    process, resin : str
        How it is worked, and the name of the resin.
    plies : tuple of PlyLine
        Ply 1 first.
    thickness : float, mm
        Of the plies that cover the whole face, and the core.
    areal_mass : float, g/m^2
        Of the same.
    fibre_volume_fraction : float
        Fibre volume over laminate volume.
    e_x, e_y, g_xy : float, MPa
        Moduli along the datum arrow, across it, and in shear, when pulled.
    bending_x, bending_y : float, MPa
        Moduli when bent along the datum arrow and across it.
    remarks : tuple of str
        What a maker should know about it.
    core : CoreLine or None
    details : LaminateDetails or None
        For a page of its own.
    view : Drawing or None
        The mould from above with the start point.
    landings : tuple of LandingLine
        Where the patterns land on it.
    zones : tuple of ZoneLine
        Where some plies cover a part of the face only.
    """

    process: str
    resin: str
    plies: tuple[PlyLine, ...]
    thickness: float
    areal_mass: float
    fibre_volume_fraction: float
    e_x: float
    e_y: float
    g_xy: float
    bending_x: float
    bending_y: float
    remarks: tuple[str, ...] = ()
    core: CoreLine | None = None
    details: LaminateDetails | None = None
    view: Drawing | None = None
    landings: tuple[LandingLine, ...] = ()
    zones: tuple[ZoneLine, ...] = ()


@dataclass(frozen=True, eq=False)
class PatternLine:
    """One flat pattern.

    Attributes
    ----------
    ply : int
        Its ply.
    cloth : str
        Cloth that it is cut from.
    angle : float, radians
        Of the ply, as in `PlyLine`.
    area : float, mm^2
        Cut area.
    mass : float, g
        Of the dry cut cloth.
    largest_shear : float, radians
        Largest shear that the drape asks of the cloth.
    locked_share : float
        Share of its area past the angle at which the cloth locks.
    drawing : Drawing or None
        The pattern; its layer ``check bar``, if any, is left out of the picture.
    """

    ply: int
    cloth: str
    angle: float
    area: float
    mass: float
    largest_shear: float
    locked_share: float
    drawing: Drawing | None = None
