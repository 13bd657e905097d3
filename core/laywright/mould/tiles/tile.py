"""What print tiles are: the settings they are cut by, one tile, and the set of them."""

from __future__ import annotations

import math
from dataclasses import dataclass, field

from laywright.arrays import FloatArray, Vector, floats
from laywright.errors import LimitError
from laywright.mould.tiles.coupon import CouponPiece
from laywright.mould.tiles.cut_ground import CutLimits
from laywright.mould.tiles.cuts import CutPlan, PrintPose
from laywright.mould.tiles.ears import Ear
from laywright.mould.tiles.joint import Joint, JointKind
from laywright.mould.tiles.joints import JointSize
from laywright.mould.tiles.pose import Standing
from laywright.mould.tiles.wishes import CutWishes
from laywright.surface.triangles import Surface

__all__ = ["Tile", "TileSet", "TileSettings"]


@dataclass(frozen=True)
class TileSettings:
    """How the body is cut.

    Attributes
    ----------
    joint : JointKind
        What holds the tiles in place while the glue sets.
    dowel_diameter : float, mm
        Diameter of the dowels; 0 for plain butt joints.
    dowel_depth : float, mm
        Depth of the hole in each tile.
    clearance : float, mm
        Room around the dowel on every side; 0.1 to 0.2 is usual for printed holes (common
        practice, no source), the joint coupon shows what the printer needs.
    tongue_width, tongue_length : float, mm
        Diagonal of a tongue's square section, and how far it stands out.
    tongue_clearance : float, mm
        Room around a tongue on every side; 0.2 to 0.3 is usual (common practice, no source).
    ear_reach, ear_thickness, ear_height : float, mm
        How far clamp ears stand out of the mould, their thickness along the clamp, and their
        height at most.
    wall : float, mm
        Material left around a hole or groove.
    glue_gap : float, mm
        Thickness of the glue between two tiles; half of it is taken off each.
    glue_density : float, g/cm^3
        Of the glue; 1.15 is usual for epoxy (common practice, no source).
    least_tile : float, mm
        No cut leaves less than this.
    mark_depth : float, mm
        Depth of the engraved marks; 0 leaves them out.
    pose : PrintPose
        How tiles may stand on the bed.
    wishes : CutWishes
        Cuts that the maker pins or forbids.
    plan_seconds : float, s
        Most time for the search of the cuts; the best grid so far is taken when it is over.
    """

    joint: JointKind = JointKind.DOWELS
    dowel_diameter: float = 6.0
    dowel_depth: float = 12.0
    clearance: float = 0.15
    tongue_width: float = 10.0
    tongue_length: float = 6.0
    tongue_clearance: float = 0.25
    ear_reach: float = 15.0
    ear_thickness: float = 8.0
    ear_height: float = 20.0
    wall: float = 2.5
    glue_gap: float = 0.1
    glue_density: float = 1.15
    least_tile: float = 30.0
    mark_depth: float = 0.6
    pose: PrintPose = PrintPose.ANY_SIDE
    wishes: CutWishes = field(default_factory=CutWishes)
    plan_seconds: float = 2.0

    def __post_init__(self) -> None:
        for name, value, low, high, unit in (
            ("dowel diameter", self.dowel_diameter, 0.0, 100.0, "mm"),
            ("dowel depth", self.dowel_depth, 0.0, 200.0, "mm"),
            ("dowel clearance", self.clearance, 0.0, 2.0, "mm"),
            ("tongue width", self.tongue_width, 3.0, 100.0, "mm"),
            ("tongue length", self.tongue_length, 1.0, 100.0, "mm"),
            ("tongue clearance", self.tongue_clearance, 0.0, 2.0, "mm"),
            ("ear reach", self.ear_reach, 3.0, 100.0, "mm"),
            ("ear thickness", self.ear_thickness, 3.0, 100.0, "mm"),
            ("ear height", self.ear_height, 3.0, 500.0, "mm"),
            ("wall around joints", self.wall, 0.0, 100.0, "mm"),
            ("glue gap", self.glue_gap, 0.0, 2.0, "mm"),
            ("glue density", self.glue_density, 0.3, 5.0, "g/cm^3"),
            ("least tile", self.least_tile, 1.0, 1000.0, "mm"),
            ("mark depth", self.mark_depth, 0.0, 3.0, "mm"),
            ("time for the cuts", self.plan_seconds, 0.0, 3600.0, "s"),
        ):
            if not low <= value <= high:
                raise LimitError(
                    name,
                    f"{value:.4g} {unit}",
                    f"{low:.4g} to {high:.4g} {unit}",
                    "correct the setting",
                )
        deepest = 0.5 * (self.least_tile - self.wall)
        what, depth = {
            JointKind.DOWELS: ("dowel depth", self.dowel_depth if self.dowel_diameter else 0.0),
            JointKind.TONGUES: ("tongue length", self.tongue_length + self.tongue_clearance),
            JointKind.CLAMP_EARS: ("ear thickness", self.ear_thickness),
            JointKind.PLAIN: ("", 0.0),
        }[self.joint]
        if depth > deepest:
            raise LimitError(
                what,
                f"{depth:.4g} mm",
                f"at most {deepest:.4g} mm in tiles of {self.least_tile:.4g} mm",
                "make it less or set a larger least tile",
            )

    @property
    def joint_size(self) -> JointSize | None:
        """Size of the holes or grooves in a seam; None for flat joints."""
        if self.joint is JointKind.DOWELS and self.dowel_diameter > 0.0:
            return JointSize(
                self.dowel_diameter + 2.0 * self.clearance,
                self.dowel_depth,
                self.wall,
                max(0.5, 4.0 * self.clearance),
                self.joint,
                self.clearance,
            )
        if self.joint is JointKind.TONGUES:
            return JointSize(
                self.tongue_width + 2.0 * math.sqrt(2.0) * self.tongue_clearance,
                self.tongue_length + self.tongue_clearance,
                self.wall,
                max(0.5, 2.0 * self.tongue_clearance),
                self.joint,
                self.tongue_clearance,
            )
        return None

    def limits(self, room: Vector) -> CutLimits:
        """Return what every tile must keep in a room (mm) of the printer."""
        return CutLimits(
            room,
            self.least_tile,
            self.pose,
            self.tongue_length if self.joint is JointKind.TONGUES else 0.0,
            self.ear_reach if self.joint is JointKind.CLAMP_EARS else 0.0,
            self.wall,
        )


@dataclass(frozen=True, eq=False)
class Tile:
    """One printed piece.

    Attributes
    ----------
    name : str
        Row letter and column number, then the layer if there are several, for example
        ``"A1"``; pieces that hang apart in one cell carry a small letter more.
    row, column, layer : int
        Place in the grid, from 0; rows along its second axis, columns along its first.
    solid : Surface
        Closed, in the body's coordinates, nominal size.
    pose : (4, 4) float
        Takes the body's coordinates to the printer's, in mm, print scale included.
    size : tuple of 3 float, mm
        Extent in the printer's axes.
    volume : float, mm^3
        Of `solid`.
    mass : float, g
        Estimate: solid skin and infill.
    hours : float
        Estimate of the print's time without supports.
    order : int
        Place in the order of assembly, from 1.
    standing : Standing
        What it stands on and what that means for the print.
    piece : int
        Which piece of the mould it belongs to, from 0.
    """

    name: str
    row: int
    column: int
    layer: int
    solid: Surface
    pose: FloatArray
    size: Vector
    volume: float
    mass: float
    hours: float
    order: int
    standing: Standing
    piece: int = 0

    def __post_init__(self) -> None:
        object.__setattr__(self, "pose", floats(self.pose, 4, 4))

    def printed(self) -> Surface:
        """Return the tile in the printer's coordinates."""
        return self.solid.moved(self.solid.vertices @ self.pose[:3, :3].T + self.pose[:3, 3])


@dataclass(frozen=True, eq=False)
class TileSet:
    """All tiles of a body.

    Attributes
    ----------
    tiles : tuple of Tile
        By layer, row and column.
    plan : CutPlan
        The grid.
    printer : str
        Name of the printer that they fit.
    glue_gap : float, mm
        Thickness of the glue in each seam.
    cuts : tuple of 3 tuples of float, mm
        Positions of the cuts along the grid's axes.
    joints : tuple of Joint
        Dowels or tongues, in the grid's axes.
    ears : tuple of Ear
        Clamp ears, in the grid's axes.
    glue_area : float, mm^2
        Area to be glued, each seam once.
    glue_g : float, g
        Glue that fills all seams at the glue gap; what is squeezed out comes on top.
    glue_gaps : tuple of 3 float, mm
        Sum of the glue gaps along the grid's axes; the tiles are shorter by as much.
    volume_error : float
        Body less tiles, their tongues and ears left out, less what was cut away; relative to
        the body.
    steps : tuple of str
        The order of assembly in words.
    coupon : tuple of CouponPiece
        Small pieces to print first, which show how the joint fits on this printer.
    remarks : tuple of str
        What the maker should know.
    plans : tuple of CutPlan
        The grid of each piece of a mould in pieces, `plan` being the first; else none.
    digest : str
        Digest of the inputs.
    """

    tiles: tuple[Tile, ...]
    plan: CutPlan
    printer: str
    glue_gap: float
    cuts: tuple[tuple[float, ...], tuple[float, ...], tuple[float, ...]]
    joints: tuple[Joint, ...]
    ears: tuple[Ear, ...]
    glue_area: float
    glue_g: float
    glue_gaps: Vector
    volume_error: float
    steps: tuple[str, ...]
    coupon: tuple[CouponPiece, ...]
    remarks: tuple[str, ...]
    plans: tuple[CutPlan, ...] = ()
    digest: str = ""

    def plan_of(self, tile: Tile) -> CutPlan:
        """Return the grid that a tile was cut by."""
        return self.plans[tile.piece] if self.plans else self.plan
