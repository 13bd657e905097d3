"""Between FreeCAD and arrays, measured inside FreeCAD: python benchmarks/run.py shape to-mesh ...

Shape: the example hatch cover becomes a surface; it is held against the first stage that it
feeds which takes time, the mould body.  To a mesh and from a mesh: the peers are FreeCAD's own
ways in Python, a list of corners and the mesh's topology.
"""

from __future__ import annotations

import math
import statistics
import sys
import time

import numpy as np
from rows import ROOT, Case, Found, Kernel, ratio_within

import shapes

sys.path.append(str(ROOT / "examples"))

FACETS = (10_000, 100_000, 1_000_000)
TURN = math.radians(28.0)


def cover(triangles):
    """Return the example's shape, its faces and the chord for about so many triangles."""
    import hatch_cover

    from freecad.laywright import bridge

    part = hatch_cover.build().getObject("HatchCover")
    shape = bridge.placed_shape(part)
    names = bridge.upper_faces(shape)
    chord, surface = 0.2, None
    for _ in range(4):
        surface, _ = bridge.surface_from_shape(shape, names, chord, TURN)
        chord *= len(surface.triangles) / triangles
    return shape, names, chord


def meshing(solid, chord):
    """Return the seconds that FreeCAD itself needs to mesh a shape."""
    import MeshPart

    copy = solid.copy()
    start = time.perf_counter()
    MeshPart.meshFromShape(Shape=copy, LinearDeflection=chord, AngularDeflection=TURN)
    return time.perf_counter() - start


def shape(triangles):
    from freecad.laywright import bridge
    from laywright.mould.body.body import build_body
    from laywright.surface.face import MouldSide, take_face

    solid, names, chord = cover(triangles)
    surface, deviation = bridge.surface_from_shape(solid, names, chord, TURN)

    def fed(_):
        face = take_face(
            surface.moved(surface.vertices), (0.0, 0.0, 1.0), mould_side=MouldSide.INSIDE
        )
        return build_body(face, 1.0)

    def compare(found, body):
        assert len(found[0].triangles) == len(surface.triangles)
        assert body is None or body.solid.is_closed
        host = statistics.median(meshing(solid, chord) for _ in range(5))
        return Found(
            f"within {deviation:.4f} mm; FreeCAD's own meshing {host:.3f} s of it", {"host": host}
        )

    return Case(
        len(surface.triangles),
        lambda _: bridge.surface_from_shape(solid, names, chord, TURN),
        fed,
        compare,
    )


def ball(facets):
    return shapes.sphere(50.0, round(math.sqrt(facets / 4.0)))


def to_mesh(facets):
    import Mesh

    from freecad.laywright import bridge

    surface = ball(facets)

    def compare(ours, peer):
        assert ours.CountFacets == peer.CountFacets == len(surface.triangles)
        assert abs(ours.Volume / peer.Volume - 1.0) < 1e-5
        return Found(f"same volume to {abs(ours.Volume / peer.Volume - 1.0):.0e}")

    return Case(
        len(surface.triangles),
        lambda _: bridge.mesh_from_solids([surface]),
        lambda _: Mesh.Mesh(surface.corners.tolist()),
        compare,
    )


def from_mesh(facets):
    import FreeCAD

    from freecad.laywright import bridge

    surface = ball(facets)
    obj = FreeCAD.newDocument("Bridge", hidden=True).addObject("Mesh::Feature", "Mesh")
    obj.Mesh = bridge.mesh_from_solids([surface])

    def by_topology(_):
        points, triangles = obj.Mesh.Topology
        return np.array([(p.x, p.y, p.z) for p in points]), np.array(triangles)

    def compare(ours, peer):
        assert np.allclose(ours[0], peer[0], atol=1e-4)
        assert np.array_equal(ours[1], peer[1])
        return Found("the same arrays")

    return Case(len(surface.triangles), lambda _: bridge.mesh_arrays(obj), by_topology, compare)


KERNELS = (
    Kernel(
        "shape",
        "FreeCAD shape to arrays, its meshing included",
        "the stage that it feeds: the Mould Body",
        "at most a tenth of the stage's time on top of FreeCAD's own meshing",
        "triangles",
        (1_000, 4_000),
        (1_000,),
        shape,
        lambda row: row.ours - row.figures["host"] <= 0.1 * row.peer,
        missed="on top of its meshing come FreeCAD's lists of points and triangles of each face, "
        "and the distance of sampled triangles from the face, measured point by point",
        inside="FreeCAD",
    ),
    Kernel(
        "to-mesh",
        "Arrays to a FreeCAD mesh",
        "FreeCAD's mesh from a list of corners",
        "at most the peer's time",
        "facets",
        FACETS,
        FACETS[:1],
        to_mesh,
        ratio_within(1.0),
        inside="FreeCAD",
    ),
    Kernel(
        "from-mesh",
        "FreeCAD mesh to arrays",
        "the mesh's topology as Python lists",
        "at most the peer's time",
        "facets",
        FACETS,
        FACETS[:1],
        from_mesh,
        ratio_within(1.0),
        inside="FreeCAD",
    ),
)
