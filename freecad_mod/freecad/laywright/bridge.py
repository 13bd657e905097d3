"""FreeCAD shapes, meshes and properties on one side, arrays and values on the other.

The only module of the workbench that converts between the two, and the only one that holds
numpy.  Lengths are mm on both sides.
"""

import io
import json
import tempfile
from collections import Counter
from pathlib import Path

import FreeCAD
import Mesh
import MeshPart
import numpy as np
import Part

from laywright import values
from laywright.errors import FaceError
from laywright.surface.fingerprint import FaceFingerprint, fingerprints
from laywright.surface.triangles import Surface

__all__ = [
    "axis_of",
    "edge_arrow",
    "face_table",
    "face_table_from_text",
    "face_table_to_text",
    "lines_from_outlines",
    "mesh_arrays",
    "mesh_from_solids",
    "mesh_signature",
    "outlines_of",
    "placed_shape",
    "scene_lines",
    "scene_lists",
    "shape_of_faces",
    "shape_signature",
    "surface_from_shape",
    "upper_faces",
    "vector",
]

_SAMPLES = 3
_FINER = 4
_GRID = 7
_SIGNATURE_DECIMALS = 4
_UPWARDS = 0.02
_PLY_END = b"end_header\n"
_PLY_FACET = [("n", "u1"), ("i", "<i4", 3)]
_WITH_AXIS = ("Line", "Circle", "Plane", "Cylinder", "Cone", "Toroid")


def surface_from_shape(shape, names, chord, chord_angle):
    """Return triangles of the named faces that keep the wanted distance, as measured.

    Parameters
    ----------
    shape : Part.Shape
        The part; it is not touched, a copy is meshed.
    names : sequence of str
        Faces, such as ``"Face3"``.
    chord : float, mm
        Largest wanted distance between a face and its triangles.
    chord_angle : float, radians
        Largest wanted turn between neighbouring triangles.

    Returns
    -------
    surface : Surface
        One patch for each face, points shared along common edges, normals out of the part.
    deviation : float, mm
        Largest distance found between the triangles and the faces they stand for; a mesh that
        measures worse than `chord` is made again, finer.
    """
    surface, deviation = _meshed(shape, names, chord, chord_angle)
    for _ in range(_FINER):
        if deviation <= chord:
            break
        chord_angle *= 0.7
        finer = 0.7 * chord * chord / deviation
        surface, deviation = _meshed(shape, names, finer, chord_angle)
    return surface, deviation


def placed_shape(part):
    """Return the shape of an object where it stands in the document, inside its containers."""
    shape = part.Shape.copy()
    if hasattr(part, "getGlobalPlacement"):
        shape.Placement = part.getGlobalPlacement()
        return shape
    container = part.getParentGeoFeatureGroup()  # a link knows only where it stands in this one
    if container is not None:
        shape.Placement = container.getGlobalPlacement() * shape.Placement
    return shape


def upper_faces(shape):
    """Return the names of the faces that look upwards everywhere and hang together.

    Of several such groups, the one with the largest area.
    """
    faces = {f"Face{number}": face for number, face in enumerate(shape.Faces, 1)}
    upper = {name: face for name, face in faces.items() if _looks_up(face)}
    groups = []
    for name, face in upper.items():
        edges = {edge.hashCode() for edge in face.Edges}
        touching = [group for group in groups if group[1] & edges]
        groups = [group for group in groups if group not in touching]
        names = {name}.union(*(group[0] for group in touching))
        groups.append((names, edges.union(*(group[1] for group in touching))))
    if not groups:
        raise FaceError(
            "part", "no face that looks upwards", "faces to mould", "select them in the 3D view"
        )
    largest = max(groups, key=lambda group: sum(faces[name].Area for name in group[0]))
    return [name for name in faces if name in largest[0]]


def _looks_up(face):
    """Return whether the normal looks upwards at points spread over a face."""
    first, last, low, high = face.ParameterRange
    shares = (np.arange(_GRID) + 0.5) / _GRID
    return all(
        face.normalAt(first + (last - first) * u, low + (high - low) * v).z > _UPWARDS
        for u in shares
        for v in shares
    )


def axis_of(shape, name):
    """Return the direction that an edge or face of a shape gives: (x, y, z) in the document.

    A straight edge gives its own, a circle and a round face (cylinder, cone, torus) the axis,
    a flat face its normal.
    """
    member = _member(shape, name)
    form = member.Curve if name.startswith("Edge") else member.Surface
    direction = form.Direction if type(form).__name__ == "Line" else getattr(form, "Axis", None)
    if direction is None or type(form).__name__ not in _WITH_AXIS:
        raise FaceError(
            name,
            f"a {type(form).__name__}, which has no single direction",
            "a straight edge, a circle, a flat face or a round face",
            "pick another one",
        )
    return direction.x, direction.y, direction.z


def edge_arrow(shape, name):
    """Return the middle of an edge and its direction there, two (x, y, z) in the document.

    The direction is the one to the positive side of the axis that it follows most, whichever
    way round the edge was made.
    """
    edge = _member(shape, name)
    if not name.startswith("Edge"):
        raise FaceError(name, "a face", "an edge of the part", "pick the edge along the warp")
    middle = edge.getParameterByLength(0.5 * edge.Length)
    point, along = edge.valueAt(middle), edge.tangentAt(middle)
    if max(along, key=abs) < 0.0:
        along = -along
    return tuple(point), tuple(along)


def _member(shape, name):
    """Return the edge or face of a name."""
    kind = "Edge" if name.startswith("Edge") else "Face"
    members = shape.Edges if kind == "Edge" else shape.Faces
    number = name.removeprefix(kind)
    if not (number.isdigit() and 1 <= int(number) <= len(members)):
        raise FaceError(
            name, "no edge or face of this name", "an edge or face of the part", "pick it again"
        )
    return members[int(number) - 1]


def shape_signature(shape, names, *settings):
    """Return a short text that changes when one of the named faces does, or a setting.

    It is taken from points on the faces, not from their triangles: a shape that was saved and
    opened again is the same one, though it may be meshed a little differently.
    """
    grid = (np.arange(_GRID) + 0.5) / _GRID
    numbers = []
    for name in names:
        face = _face(shape, name)
        first, last, low, high = face.ParameterRange
        points = [
            face.valueAt(first + (last - first) * u, low + (high - low) * v)
            for u in grid
            for v in grid
        ]
        numbers += [face.Area, face.Length, *(number for point in points for number in point)]
    rounded = np.round(np.array(numbers), _SIGNATURE_DECIMALS) + 0.0
    return values.digest(tuple(names), rounded, settings)


def _meshed(shape, names, chord, chord_angle):
    copy = shape.copy()
    MeshPart.meshFromShape(Shape=copy, LinearDeflection=chord, AngularDeflection=chord_angle)
    points, triangles, patches, deviation = [], [], [], 0.0
    for index, name in enumerate(names):
        face = _face(copy, name)
        corners, facets = face.tessellate(chord)
        facets = np.array(facets, dtype=np.int64).reshape(-1, 3)
        corners = np.array([(p.x, p.y, p.z) for p in corners]).reshape(-1, 3)
        deviation = max(deviation, _deviation(face, corners[facets]))
        triangles.append(facets + sum(len(p) for p in points))
        points.append(corners)
        patches.append(np.full(len(facets), index, dtype=np.int64))
    welded, index = np.unique(np.concatenate(points), axis=0, return_inverse=True)
    facets = index.reshape(-1)[np.concatenate(triangles)]
    patches = np.concatenate(patches)
    distinct = (
        (facets[:, 0] != facets[:, 1])
        & (facets[:, 1] != facets[:, 2])
        & (facets[:, 2] != facets[:, 0])
    )
    return Surface(welded, facets[distinct], patches[distinct], tuple(names)), deviation


def _face(shape, name):
    """Return the named face of a shape."""
    number = name.removeprefix("Face")
    count = len(shape.Faces)
    if not (number.isdigit() and 1 <= int(number) <= count):
        raise FaceError(
            name, "no face of this name", f"one of Face1 to Face{count}", "pick the face again"
        )
    return shape.Faces[int(number) - 1]


def _deviation(face, corners):
    """Return the largest distance of sampled triangle middles from the face, mm."""
    if len(corners) == 0:
        return 0.0
    spans = np.linalg.norm(corners - np.roll(corners, 1, axis=1), axis=2).max(axis=1)
    picked = corners[np.argsort(-spans)[: max(_SAMPLES, len(corners) // 50)]]
    surface, worst = face.Surface, 0.0
    known = {} if type(surface).__name__ in _WITH_AXIS else _parameters(face)
    for triangle in picked:
        point = vector(triangle.mean(axis=0))
        found = [known.get(tuple(corner)) for corner in _rounded(triangle)]
        if None in found:
            u, v = surface.parameter(point)
            worst = max(worst, surface.value(u, v).distanceToPoint(point))
        else:
            u, v = np.mean(found, axis=0)
            away = point - surface.value(u, v)
            worst = max(worst, abs(away.dot(surface.normal(u, v))))
    return worst


def _parameters(face):
    """Return u and v of the points of a meshed face by their rounded places.

    To look for the place on a free-form surface that lies nearest to a point takes as long as
    meshing; between points whose parameters are known it lies along the normal at their mean.
    Places with two parameters, on the seam of a closed surface, are left out.
    """
    pairs, surface = face.getUVNodes(), face.Surface
    places = np.array([tuple(surface.value(u, v)) for u, v in pairs]).reshape(-1, 3)
    keys = [tuple(place) for place in _rounded(places)]
    count = Counter(keys)
    return {key: pair for key, pair in zip(keys, pairs, strict=True) if count[key] == 1}


def _rounded(places):
    """Return places, (n, 3) float, as lists that can be compared."""
    return (np.round(places, _SIGNATURE_DECIMALS) + 0.0).tolist()


def face_table(shape):
    """Return the fingerprint of every face of a part, named Face1, Face2, ...

    Taken in the part's own coordinates, so that a part which was only moved or turned keeps
    its faces.
    """
    own = shape.copy()
    own.Placement = FreeCAD.Placement()
    names = [f"Face{number}" for number in range(1, len(own.Faces) + 1)]
    surface, _ = surface_from_shape(own, names, 0.5, 0.5)
    return fingerprints(surface)


def face_table_to_text(table):
    """Return fingerprints as text, for a property."""
    return json.dumps([values.plain(entry)[0] for entry in table])


def face_table_from_text(text):
    """Return the fingerprints that `face_table_to_text` wrote; none for an empty text."""
    return values.from_tree(tuple[FaceFingerprint, ...], json.loads(text or "[]"))


def shape_of_faces(shape, names):
    """Return the named faces as one shape, where they stand.

    They lie inside a compound: FreeCAD replaces the placement of a shape by its object's, and
    leaves alone what is inside.
    """
    faces = [_face(shape, name) for name in names]
    return Part.makeCompound(faces if len(faces) == 1 else [Part.makeShell(faces)])


def mesh_from_solids(surfaces):
    """Return one FreeCAD mesh that holds the triangles of all the surfaces, in order."""
    mesh = Mesh.Mesh()
    if not surfaces:
        return mesh
    counts = np.cumsum([0] + [len(surface.vertices) for surface in surfaces])
    points = np.concatenate([surface.vertices for surface in surfaces]).astype("<f4")
    record = np.zeros(sum(len(surface.triangles) for surface in surfaces), _PLY_FACET)
    record["n"] = 3
    record["i"] = np.concatenate(
        [surface.triangles + first for surface, first in zip(surfaces, counts, strict=False)]
    )
    head = (
        "ply\nformat binary_little_endian 1.0\n"
        f"element vertex {len(points)}\n"
        "property float x\nproperty float y\nproperty float z\n"
        f"element face {len(record)}\n"
        "property list uchar int vertex_indices\nend_header\n"
    )
    stream = io.BytesIO(head.encode() + points.tobytes() + record.tobytes())
    mesh.read(Stream=stream, Format="PLY")
    return mesh


def mesh_signature(obj):
    """Return what tells one state of a mesh object from another, without reading its points."""
    mesh, box = obj.Mesh, obj.Mesh.BoundBox
    extent = (box.XMin, box.YMin, box.ZMin, box.XMax, box.YMax, box.ZMax)
    placement = tuple(obj.getGlobalPlacement().toMatrix().A)
    return mesh.CountPoints, mesh.CountFacets, mesh.Area, extent, placement


def mesh_arrays(obj):
    """Return points (n, 3) and triangles (m, 3) of a mesh object where it stands."""
    mesh = obj.Mesh.copy()
    mesh.Placement = FreeCAD.Placement()
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "part.ply"
        mesh.write(str(path))
        content = path.read_bytes()
    start = content.index(_PLY_END) + len(_PLY_END)
    points = np.frombuffer(content, "<f4", 3 * mesh.CountPoints, start).reshape(-1, 3)
    facets = np.frombuffer(content, _PLY_FACET, mesh.CountFacets, start + points.nbytes)
    triangles = facets["i"].astype(np.int64)
    turn = np.array(obj.getGlobalPlacement().toMatrix().A).reshape(4, 4)
    return points @ turn[:3, :3].T + turn[:3, 3], triangles


def outlines_of(surface):
    """Return the boundary of a surface as a compound of closed wires."""
    return Part.makeCompound(
        [
            Part.makePolygon([vector(surface.vertices[i]) for i in (*loop, loop[0])])
            for loop in surface.boundary_loops
        ]
    )


def lines_from_outlines(outlines):
    """Return a compound of flat wires in the xy plane.

    Parameters
    ----------
    outlines : iterable of (points, closed, shift)
        Points (k, 2) in mm, whether the last joins the first, and how far (x, y) to move them.
    """
    wires = []
    for points, closed, (right, up) in outlines:
        corners = [FreeCAD.Vector(float(x + right), float(y + up), 0.0) for x, y in points]
        if closed:
            corners.append(corners[0])
        wires.append(Part.makePolygon(corners))
    return Part.makeCompound(wires)


def vector(numbers):
    """Return three numbers as a FreeCAD vector."""
    return FreeCAD.Vector(*(float(number) for number in numbers))


def scene_lists(coloured, placement):
    """Return a coloured surface as lists for the scene of an object that stands elsewhere.

    Parameters
    ----------
    coloured : value with ``surface`` and ``colours`` (m, 3)
        In the coordinates of the document, mm.
    placement : FreeCAD.Placement
        Of the object, undone here because the scene applies it.

    Returns
    -------
    points, triangles, colours : lists
    """
    matrix = np.array(placement.inverse().toMatrix().A).reshape(4, 4)
    points = coloured.surface.vertices @ matrix[:3, :3].T + matrix[:3, 3]
    return points.tolist(), coloured.surface.triangles.tolist(), coloured.colours.tolist()


def scene_lines(lines, placement):
    """Return lines, (k, 3) float each, mm, as lists for a scene; see `scene_lists`."""
    matrix = np.array(placement.inverse().toMatrix().A).reshape(4, 4)
    return [(np.asarray(line) @ matrix[:3, :3].T + matrix[:3, 3]).tolist() for line in lines]
