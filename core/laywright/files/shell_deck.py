"""A layered shell as an input file for the finite-element solver of Debian's calculix-ccx.

The format is the solver's published keyword format.  Six-node triangles (S6) carry one layer
for each ply and core, each with its own material and its own direction in every triangle.
Units are mm, N, MPa and tonnes; a number has at most 20 characters, which is what the solver
reads.

The solver allows one thickness of each layer in elements that share a node.  So layers keep the
thickness of the flat cloth, and where cloth is sheared together its material is stiffer and
heavier by as much: exact in the plane, too soft in bending by the square of that factor.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np

from laywright.arrays import FloatArray, IntArray, floats, ints
from laywright.errors import InputError

__all__ = ["Hold", "LayerMaterial", "ShellLayer", "ShellModel", "shell_deck"]

_PER_LINE = 8
# Order in which the solver reads the stiffness of an anisotropic material, as rows and columns
# of the matrix over (11, 22, 33, 12, 13, 23).
_ORDER = tuple((row, column) for column in range(6) for row in range(column + 1))


@dataclass(frozen=True, eq=False)
class LayerMaterial:
    """A material of a layer.

    Attributes
    ----------
    name : str
        Written as a comment.
    stiffness : (3, 3) float, MPa
        In the plane, in the axes of the layer.
    through : (2, 2) float, MPa
        Shear stiffness 13 and 23.
    density : float, g/cm^3
    """

    name: str
    stiffness: FloatArray
    through: FloatArray
    density: float


@dataclass(frozen=True, eq=False)
class ShellLayer:
    """A layer of the shell.

    Attributes
    ----------
    name : str
        Written as a comment.
    thickness : float, mm
    materials : (m,) int
        Material of the layer in each triangle, an index into those of the model.
    directions : (m, 3) float
        Axis 1 of the layer in each triangle.
    """

    name: str
    thickness: float
    materials: IntArray
    directions: FloatArray


@dataclass(frozen=True, eq=False)
class Hold:
    """Points that are held.

    Attributes
    ----------
    name : str
        One word.
    vertices : (k,) int
        Corner points; points in the middle of edges between two of them are held as well.
    first, last : int
        Directions: 1 to 3 are shifts along x, y, z, 4 to 6 turns about them.
    """

    name: str
    vertices: IntArray
    first: int
    last: int


@dataclass(frozen=True, eq=False)
class ShellModel:
    """A shell and what is done to it.

    Attributes
    ----------
    name : str
    vertices : (n, 3) float, mm
        Corners on the middle of the shell.
    triangles : (m, 3) int
        Counter-clockwise seen from the side away from the mould.
    materials : tuple of LayerMaterial
    layers : tuple of ShellLayer
        The one at the mould first.
    holds : tuple of Hold
    pressure : float, MPa
        Along the normals, away from the mould; negative the other way.
    notes : tuple of str
        Written at the head of the file.
    """

    name: str
    vertices: FloatArray
    triangles: IntArray
    materials: tuple[LayerMaterial, ...]
    layers: tuple[ShellLayer, ...]
    holds: tuple[Hold, ...]
    pressure: float
    notes: tuple[str, ...] = ()

    def __post_init__(self) -> None:
        object.__setattr__(self, "vertices", floats(self.vertices, -1, 3))
        object.__setattr__(self, "triangles", ints(self.triangles, -1, 3))
        for layer in self.layers:
            if {len(layer.materials), len(layer.directions)} != {len(self.triangles)}:
                raise InputError(
                    f"layer {layer.name}",
                    f"{len(layer.materials)} materials and {len(layer.directions)} directions",
                    f"one of each for {len(self.triangles)} triangles",
                    "give one of each",
                )


def shell_deck(model: ShellModel) -> bytes:
    """Return the input file of a shell: one static step, displacements printed for all points.

    Corner ``i`` of the model is node ``i + 1``; the nodes in the middle of the edges follow.
    Sets: ``ALL`` nodes, ``SHELL`` elements, and one set of nodes for each hold.
    """
    corners, middles, ends = _middles(model.triangles)
    nodes = np.concatenate([model.vertices, model.vertices[ends].mean(axis=1)])
    lines = [f"** {note}" for note in (model.name, *model.notes)]
    lines += ["*NODE, NSET=ALL"]
    lines += [f"{number}, {_row(node)}" for number, node in enumerate(nodes, start=1)]
    lines += ["*ELEMENT, TYPE=S6, ELSET=SHELL"]
    table = np.concatenate([corners, middles + len(model.vertices)], axis=1) + 1
    lines += [
        f"{number}, {', '.join(str(node) for node in row)}"
        for number, row in enumerate(table.tolist(), start=1)
    ]
    for number, material in enumerate(model.materials, start=1):
        lines += _material(number, material)
    lines += _sections(model)
    for hold in model.holds:
        held = np.zeros(len(nodes), bool)
        held[hold.vertices] = True
        held[len(model.vertices) :] = held[ends].all(axis=1)
        lines += [f"*NSET, NSET={hold.name}", *_wrapped(np.flatnonzero(held) + 1)]
    lines += ["*STEP", "*STATIC"]
    for hold in model.holds:
        lines += ["*BOUNDARY", f"{hold.name}, {hold.first}, {hold.last}"]
    if model.pressure:
        lines += ["*DLOAD", f"SHELL, P, {_number(model.pressure)}"]
    lines += ["*NODE PRINT, NSET=ALL", "U"]
    for hold in model.holds:
        lines += [f"*NODE PRINT, NSET={hold.name}, TOTALS=ONLY", "RF"]
    lines += ["*NODE FILE", "U", "*EL FILE", "S", "*END STEP", ""]
    return "\n".join(lines).encode("ascii", "replace")


def _middles(triangles: IntArray) -> tuple[IntArray, IntArray, IntArray]:
    """Return the corners, the number of the middle of each edge, and the ends of each edge."""
    edges = np.sort(np.stack([triangles, np.roll(triangles, -1, axis=1)], axis=2), axis=2)
    ends, index = np.unique(edges.reshape(-1, 2), axis=0, return_inverse=True)
    return triangles, index.reshape(-1, 3), ends


def _material(number: int, material: LayerMaterial) -> list[str]:
    whole = np.zeros((6, 6))
    plane = np.ix_((0, 1, 3), (0, 1, 3))
    whole[plane] = material.stiffness
    # Across the thickness the layer neither pulls nor is pulled by its plane.
    whole[2, 2] = min(material.stiffness[0, 0], material.stiffness[1, 1])
    whole[4:, 4:] = material.through
    values = [_number(whole[place]) for place in _ORDER]
    rows = [values[start : start + _PER_LINE] for start in range(0, len(values), _PER_LINE)]
    rows[-1].append("0.")
    return [
        f"** {material.name}",
        f"*MATERIAL, NAME=M{number}",
        "*ELASTIC, TYPE=ANISO",
        *(", ".join(row) for row in rows),
        "*DENSITY",
        _number(material.density * 1e-9),
    ]


def _sections(model: ShellModel) -> list[str]:
    corners = model.vertices[model.triangles]
    normals = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    normals /= np.linalg.norm(normals, axis=1, keepdims=True)
    lines: list[str] = [
        f"** layer {number}: {layer.name}" for number, layer in enumerate(model.layers, start=1)
    ]
    seconds = [np.cross(normals, layer.directions) for layer in model.layers]
    for element in range(len(model.triangles)):
        for number, (layer, second) in enumerate(zip(model.layers, seconds, strict=True), start=1):
            lines += [
                f"*ORIENTATION, NAME=D{element + 1}L{number}",
                f"{_row(layer.directions[element])}, {_row(second[element])}",
            ]
        lines += [
            f"*ELSET, ELSET=E{element + 1}",
            f"{element + 1}",
            f"*SHELL SECTION, COMPOSITE, ELSET=E{element + 1}",
        ]
        lines += [
            f"{_number(layer.thickness)}, , M{layer.materials[element] + 1}, "
            f"D{element + 1}L{number}"
            for number, layer in enumerate(model.layers, start=1)
        ]
    return lines


def _wrapped(numbers: Iterable[int]) -> list[str]:
    texts = [str(number) for number in numbers]
    return [
        ", ".join(texts[start : start + _PER_LINE]) + ","
        for start in range(0, len(texts), _PER_LINE)
    ]


def _row(values: Iterable[float]) -> str:
    return ", ".join(_number(value) for value in values)


def _number(value: float) -> str:
    """Return a number in at most 20 characters, with a point or an exponent."""
    text = f"{float(value) + 0.0:.9g}"
    return text if any(mark in text for mark in ".en") else f"{text}."
