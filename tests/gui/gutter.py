"""A PartDesign part for the robot user: a drafted gutter with round shoulders, as long as told."""

import math

import FreeCAD
import Part

__all__ = ["LENGTH", "gutter", "section_length", "set_length"]

LENGTH = 120.0
_CROWN, _WALL, _ROUND = 60.0, 20.0, 12.0
_TURN = math.radians(70.0)  # from crown to wall: 20 degrees of draft

V = FreeCAD.Vector


def gutter(document):
    """Return a body whose section, underside left out, is two walls, two arcs and a crown."""
    body = document.addObject("PartDesign::Body", "Gutter")
    sketch = body.newObject("Sketcher::SketchObject", "Section")
    sketch.Placement = FreeCAD.Placement(V(), FreeCAD.Rotation(V(1, 1, 1), 120))  # across: y, z
    start = V(_CROWN / 2, 0)
    centre = start - V(0, _ROUND)
    end = centre + _ROUND * V(math.sin(_TURN), math.cos(_TURN))
    foot = end + _WALL * V(math.cos(_TURN), -math.sin(_TURN))
    mirrored = [V(-point.x, point.y) for point in (start, centre, end, foot)]
    for first, second in (
        (start, mirrored[0]),
        (mirrored[2], mirrored[3]),
        (mirrored[3], foot),
        (foot, end),
    ):
        sketch.addGeometry(Part.LineSegment(first, second))
    up = math.pi / 2
    for middle, low, high in ((centre, up - _TURN, up), (mirrored[1], up, up + _TURN)):
        sketch.addGeometry(Part.ArcOfCircle(Part.Circle(middle, V(0, 0, 1), _ROUND), low, high))
    pad = body.newObject("PartDesign::Pad", "Run")
    pad.Profile = sketch
    pad.Length = LENGTH
    document.recompute()
    assert body.Shape.isValid()
    return body


def section_length():
    """Return the length of the section, its underside left out, mm."""
    return _CROWN + 2 * (_WALL + _ROUND * _TURN)


def set_length(document, length):
    """Change the length in the property editor; nothing is recomputed."""
    document.Run.Length = length
