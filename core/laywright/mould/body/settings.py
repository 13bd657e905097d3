"""How a mould is built: its edge, its inside, its allowances and its plastic."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum

from laywright.arrays import Vector
from laywright.errors import InputError, LimitError
from laywright.mould.body.compensation import Allowances, print_scale
from laywright.mould.body.piece_settings import PieceSettings
from laywright.mould.body.plastic import PlasticSettings
from laywright.mould.marks import ARROW, strokes
from laywright.wording import three_figures

__all__ = ["Edge", "Feet", "Inside", "MarkedDatum", "MouldBuild", "MouldSettings"]


class MouldBuild(Enum):
    """What lies below the mould's surface."""

    SOLID = "solid"
    HOLLOW_WITH_RIBS = "hollow with ribs"
    SHELL = "shell"


@dataclass(frozen=True)
class Inside:
    """What lies below the mould's surface, and how thick.

    Attributes
    ----------
    build : MouldBuild
        A block, walls with ribs on a grid, or walls alone.
    wall : float, mm
        Least wall below the upper surface and behind the sides.
    rib_spacing, rib_thickness : float, mm
        From the middle of one rib to the next, and of each rib.
    bottom : float, mm
        Of a plate that closes the base but for one vent in each hollow; 0 leaves it open.
    stiffness : float, MPa
        Of the plastic along its layers; 2000 suits PETG (from memory: use the data sheet).
    vacuum : float, MPa
        Pressure of the bag; 0.08 is what a workshop pump reaches (common practice, no source).
    """

    build: MouldBuild = MouldBuild.SOLID
    wall: float = 4.0
    rib_spacing: float = 40.0
    rib_thickness: float = 2.4
    bottom: float = 0.0
    stiffness: float = 2000.0
    vacuum: float = 0.08

    def __post_init__(self) -> None:
        _between("wall", self.wall, 0.8, 100.0)
        _between("rib thickness", self.rib_thickness, 0.4, 50.0)
        _between("rib spacing", self.rib_spacing, self.rib_thickness + 4.0, 1e4)
        _between("bottom", self.bottom, 0.0, 50.0)
        _between("stiffness of the plastic", self.stiffness, 100.0, 1e5, "MPa")
        _between("vacuum", self.vacuum, 0.0, 0.11, "MPa")


@dataclass(frozen=True)
class Feet:
    """What a mould stands on instead of its base.

    Attributes
    ----------
    number : int
        3 or 4; 0 for none.
    height, diameter : float, mm
        Of each; 15 mm let fingers and clamps under the edge (common practice, no source).
    """

    number: int = 0
    height: float = 15.0
    diameter: float = 20.0

    def __post_init__(self) -> None:
        if self.number not in (0, 3, 4):
            raise LimitError("feet", str(self.number), "0, 3 or 4", "set another number")
        _between("height of the feet", self.height, 1.0, 500.0)
        _between("diameter of the feet", self.diameter, 4.0, 200.0)


@dataclass(frozen=True)
class Edge:
    """What stands beyond the trim line.

    Attributes
    ----------
    flange : float, mm
        Width of a level flange around the run-off; 0 for none.
    blend : float, mm
        Radius with which the flange leaves the run-off.
    cloth_margin : float, mm
        How far from the trim line the edge of the cloth is scribed; 0 leaves this line out.
    pry_pockets : int
        Pockets at the mould's edge into which a wedge is set, beyond the edge of the cloth.
    air_port : float, mm
        Diameter of an upright bore that ends below the scrap between trim line and edge of
        the cloth, for air or water under pressure; 0 for none.
    bolt_holes : float, mm
        Diameter of four upright bores near the corners of the flange; 0 for none.
    inscription : str
        Name and version, engraved in a side of the mould; empty for none.
    """

    flange: float = 0.0
    blend: float = 6.0
    cloth_margin: float = 0.0
    pry_pockets: int = 0
    air_port: float = 0.0
    bolt_holes: float = 0.0
    inscription: str = ""

    def __post_init__(self) -> None:
        _between("flange", self.flange, 0.0, 500.0)
        _between("blend radius of the flange", self.blend, 0.5, 200.0)
        _between("cloth margin", self.cloth_margin, 0.0, 500.0)
        _between("air port", self.air_port, 0.0, 20.0)
        _between("bolt holes", self.bolt_holes, 0.0, 30.0)
        if not 0 <= self.pry_pockets <= 24:
            raise LimitError("pry pockets", str(self.pry_pockets), "0 to 24", "set another number")
        if self.bolt_holes and self.flange < 2.0 * self.bolt_holes:
            raise LimitError(
                "flange",
                f"{three_figures(self.flange)} mm with bolt holes of "
                f"{three_figures(self.bolt_holes)} mm",
                f"at least {three_figures(2.0 * self.bolt_holes)} mm",
                "widen the flange or leave the holes out",
            )
        for letter in self.inscription.replace(" ", ""):
            try:
                strokes(letter)
            except KeyError:
                raise InputError(
                    "inscription",
                    f"'{letter}' in '{self.inscription}'",
                    f"letters A to Z, figures, '-' and '{ARROW}'",
                    "write it otherwise",
                ) from None


@dataclass(frozen=True)
class MarkedDatum:
    """The datum of the cloth that is marked on the run-off.

    Attributes
    ----------
    point : tuple of 3 float, mm
        Where the cloth is laid first, in the part's coordinates.
    direction : tuple of 3 float
        The arrow, any length; its part along the surface counts.
    """

    point: Vector
    direction: Vector


@dataclass(frozen=True)
class MouldSettings:
    """How the body is built.

    Attributes
    ----------
    run_off : float, mm
        Length of the surface beyond the trim line; 25 mm carries the trim margin (common
        practice, no source).
    base : float, mm
        Material below the lowest point of the upper surface.
    scribe_depth, scribe_width : float, mm
        The groove outside of the trim edge; depth 0 leaves it out.
    shrinkage : tuple of 3 float
        Share by which a print is shorter than its file along the printer's x, y, z.
    inside : Inside
        Solid, or hollow and how.
    edge : Edge
        Flange, second line, pockets, bores, inscription.
    allowances : Allowances
        What else is allowed for.
    plastic : PlasticSettings
        For mass, time and cost of printing.
    feet : Feet
        Below the base.
    pieces : PieceSettings
        How a mould is built that one direction does not release.
    datum : MarkedDatum or None
        Marked on the run-off with grooves of the trim line's section; None for no marks.
    """

    run_off: float = 25.0
    base: float = 8.0
    scribe_depth: float = 0.4
    scribe_width: float = 0.8
    shrinkage: Vector = (0.0, 0.0, 0.0)
    inside: Inside = field(default_factory=Inside)
    edge: Edge = field(default_factory=Edge)
    allowances: Allowances = field(default_factory=Allowances)
    plastic: PlasticSettings = field(default_factory=PlasticSettings)
    feet: Feet = field(default_factory=Feet)
    pieces: PieceSettings = field(default_factory=PieceSettings)
    datum: MarkedDatum | None = None

    def __post_init__(self) -> None:
        _between("scribe width", self.scribe_width, 0.1, 1e4)
        _between("run-off", self.run_off, 2.0 * self.scribe_width + 1.0, 1e4)
        _between("base height", self.base, 1.0, 1e4)
        _between("scribe depth", self.scribe_depth, 0.0, 1e4)
        print_scale(self.shrinkage)
        margin, reach = self.edge.cloth_margin, self.run_off + self.edge.flange
        if margin and not 2.0 * self.scribe_width + 1.0 <= margin <= reach - 2.0:
            raise LimitError(
                "cloth margin",
                f"{three_figures(margin)} mm",
                f"{three_figures(2.0 * self.scribe_width + 1.0)} to "
                f"{three_figures(reach - 2.0)} mm",
                "keep it on the run-off and clear of the trim line",
            )


def _between(name: str, value: float, least: float, most: float, unit: str = "mm") -> None:
    if not least <= value <= most:
        raise LimitError(
            name,
            f"{three_figures(value)} {unit}",
            f"{three_figures(least)} to {three_figures(most)} {unit}",
            "set another value",
        )
