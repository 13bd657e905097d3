"""Writers of solids against peers: python benchmarks/writers.py [NAME] [TRIANGLES ...]

STL: the peer is trimesh's binary writer.  3MF: the peers are the consortium's library (lib3mf,
fed raw arrays) and, in words, trimesh.  The solid is a sphere; every file is read back by
trimesh before it counts.
"""

from __future__ import annotations

import ctypes
import io
import math
import time

import lib3mf
import numpy as np
import trimesh
from rows import Case, Found, Kernel, main, ratio_within

import shapes
from laywright.files.stl import stl_bytes
from laywright.files.threemf import Solid, three_mf_bytes

TRIANGLES = (10_000, 100_000, 1_000_000)


def solid_of(triangles):
    return shapes.sphere(50.0, round(math.sqrt(triangles / 4.0)))


def read_back(content, kind):
    mesh = trimesh.load(io.BytesIO(content), file_type=kind, force="mesh")
    return len(mesh.faces), float(mesh.volume)


def same(surface, kind, *contents):
    for content in contents:
        count, volume = read_back(content, kind)
        assert count == len(surface.triangles)
        assert abs(volume / surface.volume - 1.0) < 1e-4
    return ", peer ".join(f"{len(content) / 1e6:.1f} MB" for content in contents)


def stl(triangles):
    surface = solid_of(triangles)
    return Case(
        len(surface.triangles),
        lambda _: stl_bytes(surface.vertices, surface.triangles),
        lambda _: trimesh.exchange.stl.export_stl(by_trimesh(surface)),
        lambda ours, peer: Found(same(surface, "stl", ours, peer)),
    )


def by_trimesh(surface):
    return trimesh.Trimesh(surface.vertices, surface.triangles, process=False)


def by_library(surface):
    """Return the 3MF file of the consortium's library, its buffers filled by copying memory."""
    model = lib3mf.get_wrapper().CreateModel()
    mesh = model.AddMeshObject()
    points = np.ascontiguousarray(surface.vertices, dtype=np.float32)
    corners = np.ascontiguousarray(surface.triangles, dtype=np.uint32)
    positions = (lib3mf.Position * len(points))()
    triangles = (lib3mf.Triangle * len(corners))()
    ctypes.memmove(positions, points.ctypes.data, points.nbytes)
    ctypes.memmove(triangles, corners.ctypes.data, corners.nbytes)
    mesh.SetGeometry(positions, triangles)
    wrapper = lib3mf.get_wrapper()
    model.AddBuildItem(mesh, wrapper.GetIdentityTransform())
    return bytes(model.QueryWriter("3mf").WriteToBuffer())


def three_mf(triangles):
    surface = solid_of(triangles)

    def compare(ours, peer):
        start = time.perf_counter()
        trimesh.exchange.threemf.export_3MF(by_trimesh(surface))
        seconds = time.perf_counter() - start
        return Found(f"{same(surface, '3mf', ours, peer)}; trimesh {seconds:.2f} s")

    return Case(
        len(surface.triangles),
        lambda _: three_mf_bytes([Solid("sphere", surface.vertices, surface.triangles)]),
        lambda _: by_library(surface),
        compare,
    )


KERNELS = (
    Kernel(
        "stl",
        "Write binary STL, normals and checks included",
        "trimesh's binary STL",
        "at most the peer's time",
        "triangles",
        TRIANGLES,
        TRIANGLES[:2],
        stl,
        ratio_within(1.0),
    ),
    Kernel(
        "3mf",
        "Write 3MF, checks included",
        "lib3mf fed raw arrays",
        "at most the peer's time",
        "triangles",
        TRIANGLES,
        TRIANGLES[:2],
        three_mf,
        ratio_within(1.0),
    ),
)

if __name__ == "__main__":
    main(KERNELS)
