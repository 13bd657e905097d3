"""The drape: how a flat cloth lies on a surface, and what it would have to stretch and shear.

The cloth is laid from a start point: there the warp runs along the given direction.  How
firmly the hand fixes the first threads is a choice (`laywright.cloth.drape.fabric.Start`);
everything else settles where the cloth needs the least force.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, IntArray, Vector, floats
from laywright.cloth.drape.datum import Datum, start_place, warp_direction
from laywright.cloth.drape.energy import Sheet
from laywright.cloth.drape.fabric import Fabric, Start
from laywright.cloth.drape.flatten import ROUGHLY, flatten
from laywright.cloth.drape.hold import Held, first_threads, hold_points, hold_start
from laywright.cloth.drape.kin import Kin
from laywright.cloth.drape.place import Place
from laywright.cloth.drape.plain_sheet import lay_plain
from laywright.cloth.drape.solver import REST, Below, Settled, settle
from laywright.cloth.drape.strain import image_of, strain_from, turned_over
from laywright.errors import GeometryError
from laywright.progress import Progress, part_of, silent
from laywright.surface.triangles import Surface

__all__ = ["Drape", "drape", "joined"]


@dataclass(frozen=True, eq=False)
class Drape:
    """A draped cloth.

    Attributes
    ----------
    uv : (n, 2) float, mm
        Place of every vertex on the flat cloth: u along the warp, v along the weft, seen from
        the side away from the mould, zero at the start point.
    shear : (m,) float, radians
        Shear in every triangle, positive where +warp and +weft have closed.
    warp_stretch, weft_stretch : (m,) float
        Stretch that the yarns would need; negative where a yarn has too much length.
    locked_share : float
        Share of the area whose shear is past the locking angle.
    largest_shear : float, radians
        Largest shear, without its sign.
    yarn_stretch : float
        Root mean square of both yarn stretches over the area, weighted by their stiffness.
    iterations : int
        Steps of the solver.
    at_rest : bool
        Whether the solver came to rest.
    """

    uv: FloatArray
    shear: FloatArray
    warp_stretch: FloatArray
    weft_stretch: FloatArray
    locked_share: float
    largest_shear: float
    yarn_stretch: float
    iterations: int
    at_rest: bool


def drape(
    surface: Surface,
    fabric: Fabric,
    datum: Datum,
    angle: float = 0.0,
    *,
    start: Start | None = None,
    held: Held | None = None,
    first: FloatArray | None = None,
    rest: float = REST,
    kin: Kin | None = None,
    progress: Progress = silent,
) -> Drape:
    """Drape a cloth on a surface.

    Parameters
    ----------
    surface : Surface
        The surface that the middle of the ply takes, mm, normals away from the mould; one
        piece with an open edge, holes allowed.
    fabric : Fabric
        Stiffnesses of the cloth.
    datum : Datum
        Start point and arrow.
    angle : float, radians
        Angle of the warp from the arrow, positive counter-clockwise seen from the side away
        from the mould.
    start : Start or None
        What is laid straight first; None takes what is usual for the fabric.
    held : Held, optional
        Points held at given places of the cloth, in place of the start point.
    first : (n, 2) float, mm, optional
        A flat map to start from, for example that of the ply below; a map that turns
        triangles over is left aside.
    rest : float
        Largest share of the surface's size by which a point still moves at the end.
    kin : Kin, optional
        What earlier plies of the layup leave for this one, to save time.
    progress : Progress
        Told how far it is; may raise `laywright.errors.Cancelled`.

    Returns
    -------
    Drape

    Raises
    ------
    GeometryError
        If the surface cannot be laid flat in one piece.
    InputError
        If the arrow stands upright on the surface.
    """
    _check_thin(surface)
    kin = kin or Kin()
    sheet = kin.sheet(surface)
    way = start or fabric.start
    key = (fabric, angle, way, datum)
    below = None if held is not None else kin.below(surface, key)
    if below is not None:
        first = below.uv
    if first is None or first.shape != (len(surface.vertices), 2) or turned_over(surface, first):
        early = part_of(progress, 0.0, 0.2)
        first = flatten(surface, rest=ROUGHLY, rigid=sheet.rigid, progress=early)
    inner = part_of(progress, 0.2, 1.0)
    if held is not None:
        rows = hold_points(surface, held)
        settled = settle(sheet, fabric, (rows, rows), _moved_to(first, held), inner, rest=rest)
        uv = settled.uv
    else:
        place = start_place(surface, datum)
        warp = warp_direction(surface, datum, angle)
        turned = _turned_to(surface, first, place, warp)
        settled = _from_start(sheet, fabric, way, (place, warp), turned, inner, rest, below)
        kin.keep(surface, key, settled)
        uv = settled.uv - place.value(surface, settled.uv)
    progress(1.0)
    strain = strain_from(settled.jacobians)
    return _summed_up(
        surface,
        fabric,
        uv,
        (strain.shear, strain.warp, strain.weft),
        settled.steps,
        settled.at_rest,
    )


def _from_start(
    sheet: Sheet,
    fabric: Fabric,
    start: Start,
    arrow: tuple[Place, Vector],
    first: FloatArray,
    progress: Progress,
    rest: float,
    below: Below | None,
) -> Settled:
    """Return the cloth laid from a start point and the direction of the warp there."""
    if fabric.alike and start is Start.POINT:
        found = lay_plain(sheet, *arrow, first, progress, rest=rest)
        if found is not None:
            return found
    threads = first_threads(sheet.surface, *arrow, sheet.recovery.normals)
    straight, wanted = (
        hold_start(sheet.surface, threads, way, fabric.shear) for way in (Start.CROSS, start)
    )
    return settle(sheet, fabric, (straight, wanted), first, progress, rest=rest, below=below)


def joined(
    surface: Surface,
    fabric: Fabric,
    drapes: Sequence[Drape],
    triangles: IntArray,
    uv: FloatArray,
) -> Drape:
    """Return the drapes of the pieces of a surface as one.

    Parameters
    ----------
    surface : Surface
        All pieces, mm.
    fabric : Fabric
        Stiffnesses of the cloth.
    drapes : sequence of Drape
        One for each piece.
    triangles : (m,) int
        The triangle of `surface` that each triangle of the drapes, one after the other, is.
    uv : (n, 2) float, mm
        Flat coordinates of all vertices.
    """
    back = np.argsort(triangles)
    fields = [
        np.concatenate([getattr(found, name) for found in drapes])[back]
        for name in ("shear", "warp_stretch", "weft_stretch")
    ]
    return _summed_up(
        surface,
        fabric,
        uv,
        (fields[0], fields[1], fields[2]),
        sum(found.iterations for found in drapes),
        all(found.at_rest for found in drapes),
    )


def _summed_up(
    surface: Surface,
    fabric: Fabric,
    uv: FloatArray,
    strain: tuple[FloatArray, FloatArray, FloatArray],
    steps: int,
    at_rest: bool,
) -> Drape:
    """Return a drape from shear, warp and weft stretch in every triangle."""
    shear, warp, weft = strain
    share = surface.areas / surface.area
    yarns = fabric.warp * warp**2 + fabric.weft * weft**2
    return Drape(
        floats(uv, -1, 2),
        floats(shear, -1),
        floats(warp, -1),
        floats(weft, -1),
        float(share[np.abs(shear) > fabric.locking_angle].sum()),
        float(np.abs(shear).max()),
        float(np.sqrt(share @ yarns / (fabric.warp + fabric.weft))),
        steps,
        at_rest,
    )


def _check_thin(surface: Surface) -> None:
    """Check that every triangle has a usable normal."""
    thin = np.einsum("ij,ij->i", surface.normals, surface.normals) < 0.5
    if thin.any():
        x, y, z = surface.centroids[np.flatnonzero(thin)[0]]
        raise GeometryError(
            ", ".join(surface.patch_names),
            f"{int(thin.sum())} triangles without area, one at ({x:.2f}, {y:.2f}, {z:.2f}) mm",
            "triangles with area",
            "mesh the face again with another deflection",
        )


def _turned_to(surface: Surface, uv: FloatArray, place: Place, warp: Vector) -> FloatArray:
    """Turn a flat map so that the warp runs along +u at a place, which becomes zero."""
    origin = tuple(place.point(surface).tolist())
    cosine, sine = image_of(surface, uv, origin, warp)
    turn = np.array([[cosine, -sine], [sine, cosine]])
    turned: FloatArray = (uv - place.value(surface, uv)) @ turn
    return turned


def _moved_to(uv: FloatArray, held: Held) -> FloatArray:
    """Turn and shift a flat map so that it meets the held points as well as it can."""
    wanted, found = held.uv, uv[held.vertices]
    middle, centre = wanted.mean(axis=0), found.mean(axis=0)
    left, _, right = np.linalg.svd((found - centre).T @ (wanted - middle))
    flip = np.diag([1.0, np.sign(np.linalg.det(left @ right))])
    moved: FloatArray = (uv - centre) @ (left @ flip @ right) + middle
    return moved
