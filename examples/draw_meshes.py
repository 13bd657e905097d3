"""Draws the meshes of the examples that need no CAD program: rain_hood.obj, inspection_lid.stl.

Both parts are invented for these examples, as are all their dimensions.

- The rain hood of a weather station: a paraboloid 170 mm wide and 55 mm high, an open surface,
  in millimetres.
- The inspection lid of a buoyancy tank: a crowned oval plate of 240 mm x 160 mm, rising 16 mm
  from its edge, as a closed solid 6 mm thick there, in inches.

``python examples/draw_meshes.py`` writes them anew beside this file.
"""

import math
import struct
from pathlib import Path

HERE = Path(__file__).resolve().parent
INCH = 25.4


def rings(count, around, half_length, half_width, height):
    """Return points and triangles of a surface over an ellipse, drawn ring by ring, mm.

    ``height(s)`` gives z for s from 0 in the middle to 1 at the edge; normals point upwards.
    The outermost ring comes last.
    """
    points = [(0.0, 0.0, height(0.0))]
    for ring in range(1, count + 1):
        s = ring / count
        for step in range(around):
            turn = 2.0 * math.pi * step / around
            points.append(
                (half_length * s * math.cos(turn), half_width * s * math.sin(turn), height(s))
            )
    triangles = [(0, 1 + step, 1 + (step + 1) % around) for step in range(around)]
    for ring in range(1, count):
        inner, outer = 1 + (ring - 1) * around, 1 + ring * around
        for step in range(around):
            after = (step + 1) % around
            triangles.append((inner + step, outer + step, outer + after))
            triangles.append((inner + step, outer + after, inner + after))
    return points, triangles


def rain_hood():
    """Return the hood as points (mm) and triangles."""
    return rings(22, 60, 85.0, 85.0, lambda s: 55.0 * (1.0 - s * s))


def inspection_lid():
    """Return the lid as points (mm) and triangles of a closed solid."""
    around = 60
    points, triangles = rings(14, around, 120.0, 80.0, lambda s: 6.0 + 16.0 * (1.0 - s * s))
    edge = len(points) - around
    points += [(x, y, 0.0) for x, y, _ in points[edge:]]
    low = edge + around
    points.append((0.0, 0.0, 0.0))
    for step in range(around):
        after = (step + 1) % around
        triangles.append((edge + step, low + step, low + after))
        triangles.append((edge + step, low + after, edge + after))
        triangles.append((low + after, low + step, len(points) - 1))
    return points, triangles


def obj_bytes(points, triangles):
    """Return an OBJ file."""
    lines = ["# Invented example, millimetres"]
    lines += [f"v {x:.4f} {y:.4f} {z:.4f}" for x, y, z in points]
    lines += [f"f {a + 1} {b + 1} {c + 1}" for a, b, c in triangles]
    return ("\n".join(lines) + "\n").encode()


def stl_bytes(points, triangles, scale):
    """Return a binary STL file, its points multiplied by a scale."""
    head = b"Invented example, inches".ljust(80, b" ") + struct.pack("<I", len(triangles))
    facets = [
        struct.pack(
            "<12fH", 0.0, 0.0, 0.0, *(scale * number for i in corners for number in points[i]), 0
        )
        for corners in triangles
    ]
    return head + b"".join(facets)


def meshes():
    """Return the content of each mesh file by its name."""
    return {
        "rain_hood.obj": obj_bytes(*rain_hood()),
        "inspection_lid.stl": stl_bytes(*inspection_lid(), 1.0 / INCH),
    }


if __name__ == "__main__":
    for name, content in meshes().items():
        (HERE / name).write_bytes(content)
