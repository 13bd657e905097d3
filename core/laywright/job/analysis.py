"""Hand-over to a finite-element solver: the part as a layered shell with its draped plies."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

import numpy as np
from scipy.spatial import cKDTree

from laywright.arrays import FloatArray, IntArray
from laywright.cloth.drape.even_mesh import even_mesh, spacing_for
from laywright.cloth.patterns.pattern import PatternSet
from laywright.errors import InputError
from laywright.files.shell_deck import Hold, LayerMaterial, ShellLayer, ShellModel
from laywright.job.draped import yarns_of
from laywright.laminate.cores import core_lamina
from laywright.laminate.draped import draped_ply
from laywright.laminate.lamina import reduced_stiffness
from laywright.laminate.laminate import Laminate
from laywright.surface.face import MouldedFace
from laywright.surface.offset import offset
from laywright.surface.triangles import Surface

__all__ = ["AnalysisSettings", "EdgeHold", "shell_model"]

_SHEAR_STEP = np.radians(1.0)
_COVER_STEP = 0.01


class EdgeHold(Enum):
    """How the outer edge of the part is held."""

    PINNED = "edge can turn but not shift"
    CLAMPED = "edge can neither turn nor shift"


@dataclass(frozen=True)
class AnalysisSettings:
    """How the part is handed over.

    Attributes
    ----------
    triangles : int
        About how many elements.
    pressure : float, MPa
        Away from the mould; negative towards it.
    edge : EdgeHold
        A first load case; the file is made to be edited.
    """

    triangles: int = 1500
    pressure: float = 0.001
    edge: EdgeHold = EdgeHold.PINNED

    def __post_init__(self) -> None:
        if not 50 <= self.triangles <= 50_000:
            raise InputError(
                "elements of the shell", f"{self.triangles}", "50 to 50000", "correct the setting"
            )


def shell_model(
    name: str,
    face: MouldedFace,
    laminate: Laminate,
    patterns: PatternSet,
    settings: AnalysisSettings = AnalysisSettings(),
) -> ShellModel:
    """Return the part as a layered shell.

    Parameters
    ----------
    name : str
    face : MouldedFace
    laminate : Laminate
    patterns : PatternSet
        Their drapes give each ply its directions in every element, and how much cloth lies
        there.  Plies that cover a part of the face are left out, which the file says.
    settings : AnalysisSettings

    Returns
    -------
    ShellModel
        On the middle of the laminate, normals away from the mould.  A ply is one layer; its
        material is that of its yarns in their draped directions, in steps of 1 degree of shear
        and 1 % of cover.  Shear across the thickness is that of the whole laminate.
    """
    working = face.working_surface(laminate.thickness)
    mesh = offset(
        even_mesh(working, spacing_for(working, settings.triangles)), laminate.thickness / 2.0
    )
    materials: list[LayerMaterial] = []
    layers: list[ShellLayer] = []
    through = np.asarray(laminate.shear) / laminate.thickness
    core = laminate.layup.core
    for number, draped in enumerate(patterns.draped, start=1):
        if draped.local:
            continue
        layers.append(
            _ply_layer(mesh, laminate, number, draped.surface, draped.drape.uv, materials, through)
        )
        if core is not None and core.after == number:
            lamina = core_lamina(core.sheet)
            layers.append(
                ShellLayer(
                    core.sheet.name,
                    core.thickness,
                    np.full(len(mesh.triangles), len(materials)),
                    layers[-1].directions,
                )
            )
            turned = _turned(through, laminate.layup.plies[number - 1].angle)
            materials.append(
                LayerMaterial(
                    core.sheet.name, reduced_stiffness(lamina), turned, core.sheet.density
                )
            )
    last = 6 if settings.edge is EdgeHold.CLAMPED else 3
    return ShellModel(
        name,
        mesh.vertices,
        mesh.triangles,
        tuple(materials),
        tuple(layers),
        (Hold("EDGE", mesh.boundary_loops[0], 1, last),),
        settings.pressure,
        (
            "Units: mm, N, MPa, tonne. Made for editing: supports and load are an example.",
            f"{settings.edge.value.capitalize()}; pressure {settings.pressure:g} MPa, positive "
            "away from the mould.",
            "An estimate; nothing in it certifies a protection.",
            *_left_out(laminate),
            "To run it: ccx and the name of this file without its ending, in the file's folder.",
        ),
    )


def _left_out(laminate: Laminate) -> tuple[str, ...]:
    names = [laminate.layup.ply_name(number) for number in laminate.layup.local]
    if not names:
        return ()
    return (f"Without the plies that cover a part of the face: {', '.join(names)}.",)


def _ply_layer(
    mesh: Surface,
    laminate: Laminate,
    number: int,
    surface: Surface,
    uv: FloatArray,
    materials: list[LayerMaterial],
    through: FloatArray,
) -> ShellLayer:
    """Return the layer of one ply; its materials are added to those of the model."""
    ply = laminate.layup.plies[number - 1]
    yarns = yarns_of(surface, uv)
    _, nearest = cKDTree(surface.centroids).query(mesh.centroids)
    warp = _laid_in(mesh, yarns.warp[nearest])
    weft = _laid_in(mesh, yarns.weft[nearest])
    # Axis 1 lies where the warp would lie if warp and weft were turned back by half the shear.
    across = np.cross(weft, mesh.normals)
    along = warp + across / np.linalg.norm(across, axis=1, keepdims=True)
    along /= np.linalg.norm(along, axis=1, keepdims=True)
    shear = np.arcsin(np.clip(np.einsum("mi,mi->m", warp, weft), -1.0, 1.0))
    classes = np.stack(
        [np.round(shear / _SHEAR_STEP), np.round(yarns.cover[nearest] / _COVER_STEP)], axis=1
    )
    kinds, index = np.unique(classes, axis=0, return_inverse=True)
    layup = laminate.layup
    share = layup.ply_resin_share(number)
    thickness = float(laminate.ply_thicknesses[number - 1])
    density = ply.cloth.areal_weight / (1.0 - share) / (1000.0 * thickness)
    first = len(materials)
    for steps, cover_steps in kinds.tolist():
        angle, cover = steps * _SHEAR_STEP, cover_steps * _COVER_STEP
        matrix = draped_ply(laminate, number, angle / 2.0, np.pi / 2.0 - angle / 2.0)
        materials.append(
            LayerMaterial(
                f"{layup.ply_name(number)}, {ply.cloth.name}, sheared {steps:.0f} deg, "
                f"cover {cover:.2f}",
                cover * matrix,
                _turned(through, ply.angle),
                cover * density,
            )
        )
    name = f"{layup.ply_name(number)}, {ply.cloth.name}, {np.degrees(ply.angle):g} deg"
    return ShellLayer(name, thickness, _ints(first + index), along)


def _laid_in(mesh: Surface, directions: FloatArray) -> FloatArray:
    """Return unit directions in the plane of each triangle."""
    normals = mesh.normals
    flat = directions - np.einsum("mi,mi->m", directions, normals)[:, None] * normals
    return np.asarray(flat / np.linalg.norm(flat, axis=1, keepdims=True))


def _turned(through: FloatArray, angle: float) -> FloatArray:
    """Return shear stiffness through the thickness in the axes of a layer at `angle`."""
    cosine, sine = np.cos(angle), np.sin(angle)
    turn = np.array([[cosine, sine], [-sine, cosine]])
    return np.asarray(turn @ np.diag(through) @ turn.T)


def _ints(values: IntArray) -> IntArray:
    return np.asarray(values, dtype=np.int64).reshape(-1)
