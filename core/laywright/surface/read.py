"""Reading a part from a mesh file: STL, OBJ, PLY or 3MF.

Most mesh files do not say what their numbers mean, so the unit is always stated by the
person; a 3MF file says it itself, and then both must agree.
"""

from __future__ import annotations

import io
from pathlib import Path

import numpy as np
import trimesh

from laywright.archives import archive_entries
from laywright.arrays import FloatArray, IntArray
from laywright.errors import FileError, UnitError
from laywright.quantities import magnitude
from laywright.surface.repair import RepairSettings
from laywright.surface.scan import MeshReading, take_mesh
from laywright.surface.triangles import Surface
from laywright.tolerances import TOLERANCES

__all__ = ["MeshReading", "read_mesh", "read_surface"]

_KINDS = (".stl", ".obj", ".ply", ".3mf")


def read_surface(path: Path | str, unit: str, crease: float = TOLERANCES.sharp_edge) -> Surface:
    """Return the part that a mesh file holds; see `read_mesh` for what was wrong with it.

    Parameters
    ----------
    path : Path or str
        An STL, OBJ, PLY or 3MF file.
    unit : str
        Unit of its numbers, for example ``"mm"`` or ``"in"``.
    crease : float, radians
        Neighbouring triangles that meet at a larger turn belong to different faces.

    Returns
    -------
    Surface
        In mm; faces are called Face1, Face2 and so on by falling area.

    Raises
    ------
    FileError
        If the file cannot be read.
    UnitError
        If the unit is no length, or not the one that the file states.
    GeometryError
        If edges have more than two triangles or the surface has one side only.
    """
    return read_mesh(path, unit, crease).surface


def read_mesh(
    path: Path | str,
    unit: str,
    crease: float = TOLERANCES.sharp_edge,
    mending: RepairSettings | None = None,
) -> MeshReading:
    """Return a mesh file's surface with the list of its defects; see `read_surface`.

    Parameters
    ----------
    path, unit, crease
        As for `read_surface`.
    mending : RepairSettings or None
        What may be mended; None refuses edges with more than two triangles.
    """
    path = Path(path)
    scale = magnitude(f"1 {unit}", "mm", f"unit of {path.name}")
    vertices, triangles = _load(path, scale)
    return take_mesh(vertices, triangles, unit, crease, mending, path.name)


def _load(path: Path, scale: float) -> tuple[FloatArray, IntArray]:
    kind = path.suffix.lower()
    if kind not in _KINDS:
        raise FileError(
            str(path), f"a file of kind '{path.suffix}'", " or ".join(_KINDS), "export it as such"
        )
    if not path.is_file():
        raise FileError(str(path), "no file", "a mesh file", "check the path")
    try:
        content = path.read_bytes()
        if kind == ".3mf":
            archive_entries(content, str(path))
        loaded = trimesh.load_mesh(io.BytesIO(content), file_type=kind[1:], process=False)
        mesh = loaded.dump(concatenate=True) if isinstance(loaded, trimesh.Scene) else loaded
        vertices = np.asarray(mesh.vertices, dtype=np.float64)
        triangles = np.asarray(mesh.faces, dtype=np.int64).reshape(-1, 3)
        stated = getattr(mesh, "units", None)
    except FileError:
        raise
    except Exception as problem:
        raise FileError(
            str(path),
            f"a file that cannot be read as a mesh ({type(problem).__name__})",
            "a whole mesh file",
            "export it again",
        ) from problem
    fault = _fault(vertices, triangles)
    if fault:
        raise FileError(str(path), fault, "a whole mesh file", "export it again")
    if kind == ".3mf" and stated:
        own = magnitude(f"1 {stated}", "mm", f"unit of {path.name}")
        if abs(own - scale) > 1e-9 * own:
            raise UnitError(
                f"unit of {path.name}",
                f"1 unit taken as {scale:.6g} mm",
                f"'{stated}', which the file states",
                "state the same unit",
            )
    return vertices, triangles


def _fault(vertices: FloatArray, triangles: IntArray) -> str:
    if vertices.shape[1:] != (3,):
        return "points without three coordinates"
    if not np.isfinite(vertices).all():
        return f"{int((~np.isfinite(vertices).all(axis=1)).sum())} points that are no numbers"
    wild = (triangles < 0) | (triangles >= len(vertices))
    if wild.any():
        return f"a triangle of point {int(triangles[wild][0]) + 1} in {len(vertices)} points"
    return ""
