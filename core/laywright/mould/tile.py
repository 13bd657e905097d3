"""What print tiles are: the settings they are cut by, one tile, and the set of them."""

from __future__ import annotations

from dataclasses import dataclass

from laywright.arrays import FloatArray, Vector, floats
from laywright.errors import LimitError
from laywright.mould.cuts import CutPlan, PrintPose
from laywright.mould.joints import Joint
from laywright.surface.triangles import Surface

__all__ = ["Tile", "TileSet", "TileSettings"]


@dataclass(frozen=True)
class TileSettings:
    """How the body is cut.

    Attributes
    ----------
    dowel_diameter : float, mm
        Diameter of the dowels; 0 for plain butt joints.
    dowel_depth : float, mm
        Depth of the hole in each tile.
    clearance : float, mm
        Room around the dowel on every side; 0.1 to 0.2 is usual for printed holes (common
        practice, no source), a test piece shows what the printer needs.
    wall : float, mm
        Material left around a hole.
    glue_gap : float, mm
        Thickness of the glue between two tiles; half of it is taken off each.
    least_tile : float, mm
        No cut leaves less than this.
    mark_depth : float, mm
        Depth of the engraved marks; 0 leaves them out.
    pose : PrintPose
        How tiles may stand on the bed.
    """

    dowel_diameter: float = 6.0
    dowel_depth: float = 12.0
    clearance: float = 0.15
    wall: float = 2.5
    glue_gap: float = 0.1
    least_tile: float = 30.0
    mark_depth: float = 0.6
    pose: PrintPose = PrintPose.BASE_DOWN

    def __post_init__(self) -> None:
        for name, value, low, high in (
            ("dowel diameter", self.dowel_diameter, 0.0, 100.0),
            ("dowel depth", self.dowel_depth, 0.0, 200.0),
            ("dowel clearance", self.clearance, 0.0, 2.0),
            ("wall around dowels", self.wall, 0.0, 100.0),
            ("glue gap", self.glue_gap, 0.0, 2.0),
            ("least tile", self.least_tile, 1.0, 1000.0),
            ("mark depth", self.mark_depth, 0.0, 3.0),
        ):
            if not low <= value <= high:
                raise LimitError(
                    name, f"{value:.4g} mm", f"{low:.4g} to {high:.4g} mm", "correct the setting"
                )
        deepest = 0.5 * (self.least_tile - self.wall)
        if self.dowel_diameter > 0.0 and self.dowel_depth > deepest:
            raise LimitError(
                "dowel depth",
                f"{self.dowel_depth:.4g} mm",
                f"at most {deepest:.4g} mm in tiles of {self.least_tile:.4g} mm",
                "shorten the dowels or set a larger least tile",
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
        Dowels, in the grid's axes.
    glue_area : float, mm^2
        Area to be glued, each seam once.
    glue_gaps : tuple of 3 float, mm
        Sum of the glue gaps along the grid's axes; the tiles are shorter by as much.
    volume_error : float
        Body less tiles less what was cut away, relative to the body.
    remarks : tuple of str
        What the maker should know.
    digest : str
        Digest of the inputs.
    """

    tiles: tuple[Tile, ...]
    plan: CutPlan
    printer: str
    glue_gap: float
    cuts: tuple[tuple[float, ...], tuple[float, ...], tuple[float, ...]]
    joints: tuple[Joint, ...]
    glue_area: float
    glue_gaps: Vector
    volume_error: float
    remarks: tuple[str, ...]
    digest: str = ""
