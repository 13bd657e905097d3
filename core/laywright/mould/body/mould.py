"""A mould that is ready to be cut into tiles: one body, or the pieces that it consists of."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from laywright.arrays import Array, FloatArray, Vector
from laywright.mould.body.compensation import Compensation
from laywright.mould.body.pieces import MouldPiece
from laywright.mould.body.plastic import PlasticEstimate
from laywright.mould.release.parting_lines import PartingLine
from laywright.surface.triangles import Surface

__all__ = ["MouldBody"]


@dataclass(frozen=True, eq=False)
class MouldBody:
    """A mould's body, in the part's coordinates.

    Attributes
    ----------
    solid : Surface
        Closed, normals outwards; all pieces where there are several.  Its patches are the faces
        of the working surface by their own names, then those of `laywright.mould.body.uncut.OWN`;
        of a mould in pieces those of `laywright.mould.body.dividing.OWN_PATCHES`.
    working : Surface
        The wanted working surface, as it is printed.
    trim_line : (k, 3) float, mm
        The outer trim edge, a closed line.
    pull : tuple of 3 float
        Unit direction in which the part leaves.
    compensations : tuple of Compensation
        What was added to the CAD face, and what the print will add.
    print_scale : tuple of 3 float
        Scale of the tiles along the printer's axes; the body itself has nominal size.
    largest_deviation : float, mm
        Largest distance measured between the body and the wanted working surface.
    from_cad : (n,) float, mm
        Distance of every point of the working surface from the CAD faces, measured; negative
        where the mould is set back against its normals, as laminate and coats do.
    largest_from_cad : float, mm
        The largest of these, without its sign.
    least_wall : float or None, mm
        Least wall measured around the hollow; None for a solid body.
    plastic : PlasticEstimate or None
        Mass and time of printing before it is cut, cost where there is a price; None where no
        printer was named.
    volume : float, mm^3
        Of the solid.
    remarks : tuple of str
        What the maker should know.
    pieces : tuple of MouldPiece
        The pieces of a mould that does not release along one direction; else none.
    lines : tuple of PartingLine
        Lines between the pieces, longest first.
    number : int
        Which piece of a mould it is, from 1; 0 for a whole mould.
    digest : str
        Digest of the inputs.
    """

    solid: Surface
    working: Surface
    trim_line: FloatArray
    pull: Vector
    compensations: tuple[Compensation, ...]
    print_scale: Vector
    largest_deviation: float
    from_cad: FloatArray
    largest_from_cad: float
    least_wall: float | None
    plastic: PlasticEstimate | None
    volume: float
    remarks: tuple[str, ...]
    pieces: tuple[MouldPiece, ...] = ()
    lines: tuple[PartingLine, ...] = ()
    number: int = 0
    digest: str = ""

    def patch(self, name: str) -> int:
        """Return the number of a patch of the solid."""
        return self.solid.patch_names.index(name)

    @property
    def on_working_area(self) -> Array:
        """Whether each triangle of the solid lies on the working surface: (m,) bool."""
        return np.asarray(self.solid.patches < self.patch("run-off"))

    def apart(self, gap: float) -> tuple[Surface, ...]:
        """Return what is printed, pieces drawn apart along their pulls by a gap, mm."""
        if not self.pieces:
            return (self.solid,)
        return tuple(
            piece.solid.moved(piece.solid.vertices - gap * np.array(piece.pull))
            for piece in self.pieces
        )

    def parts(self) -> tuple[MouldBody, ...]:
        """Return what is printed and cut by itself: each piece as a body, or the one body.

        The grid of a piece stands along the mouth of the mould, as its base does.
        """
        if not self.pieces:
            return (self,)
        count = len(self.working.patch_names)
        bodies = []
        for number, piece in enumerate(self.pieces, 1):
            area = piece.solid.part(piece.on_working_area)
            working = Surface(area.vertices, area.triangles, area.patches, area.patch_names[:count])
            bodies.append(
                replace(
                    self,
                    solid=piece.solid,
                    working=working,
                    volume=piece.volume,
                    pieces=(),
                    lines=(),
                    number=number,
                    digest="",
                )
            )
        return tuple(bodies)
