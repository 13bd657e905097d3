"""A battery tray for a field instrument: it cannot leave a mould in one piece, on purpose.

Invented for this example, as are all its dimensions.  220 x 140 x 45 mm over the rim, with
rounded corners.  The rim turns outward.  Below the rim the wall comes inward by
``lip_inward``, so that the battery snaps in; and so the tray is wider below than at its mouth
and a mould of one part holds it back.  Set ``lip_inward`` to 0 and it leaves.  Every dimension
stands in the spreadsheet "Dimensions"; change one and recompute.

Run inside FreeCAD (macro or console) with this folder on the path::

    import battery_tray
    document = battery_tray.build()

``bash tools/in_freecad.sh console`` with tools/run_example.py makes battery_tray.FCStd anew.
"""

import math
from pathlib import Path

import FreeCAD
import Part
import Sketcher
from drawn_parts import drive, hide, middle, rounded_rectangle, sizes, spreadsheet

V = FreeCAD.Vector

# name, value, what it is
DIMENSIONS = [
    ("length", "220 mm", "Length of the tray over its rim, along x"),
    ("width", "140 mm", "Width of the tray over its rim, along y"),
    ("height", "45 mm", "Height of the tray, outside"),
    ("corner_radius", "40 mm", "Corner radius of the walls at the floor, in plan"),
    ("floor_radius", "10 mm", "Radius of the bend between floor and wall, outside"),
    ("wall_draft", "4 deg", "Draft of the wall"),
    ("skin", "1.2 mm", "Nominal thickness of the skin"),
    ("lip_height", "8 mm", "Height of the lip below the bend of the rim"),
    ("lip_inward", "4 mm", "How far the lip comes inward of the wall's line; 0 lets it leave"),
    ("rim_width", "12 mm", "Flat width of the rim that turns outward"),
    ("rim_radius", "4 mm", "Radius of the bend between lip and rim, outside"),
]

# What follows from them, for the profile of the wall; a 2 at the end marks the inside.
WORKED_OUT = [
    ("lean", "atan(lip_inward / lip_height - tan(wall_draft))", "Lean of the lip inward"),
    ("floor_turn", "90 deg - wall_draft", "Turn of the bend between floor and wall"),
    ("rim_turn", "90 deg + lean", "Turn of the bend between lip and rim"),
    ("floor_radius2", "floor_radius - skin", "Radius of the floor's bend inside"),
    ("rim_radius2", "rim_radius + skin", "Radius of the rim's bend inside"),
    ("bend_x", "floor_radius * cos(wall_draft)", "End of the floor's bend, outward"),
    ("bend_z", "floor_radius * (1 - sin(wall_draft))", "End of the floor's bend, up"),
    ("rim_z", "height - skin - rim_radius", "Centre of the rim's bend, up"),
    ("end_z", "rim_z - rim_radius * sin(lean)", "End of the lip, up"),
    ("knee_z", "end_z - lip_height", "Where the lip begins, up"),
    ("knee_x", "bend_x + (knee_z - bend_z) * tan(wall_draft)", "Where the lip begins, outward"),
    ("end_x", "knee_x - lip_height * tan(lean)", "End of the lip, outward"),
    ("rim_x", "end_x + rim_radius * cos(lean)", "Centre of the rim's bend, outward"),
    ("far_x", "rim_x + rim_width", "Edge of the rim, outward"),
    ("corner_x", "length / 2 - far_x", "Where the first corner starts, along x"),
    (
        "corner_y",
        "width / 2 - far_x - corner_radius + floor_radius",
        "Where the first corner starts, along y",
    ),
    ("mitre", "skin / (1 + cos(wall_draft + lean))", "Share of the skin at the knee"),
    ("knee_x2", "knee_x - mitre * (cos(wall_draft) + cos(lean))", "Knee inside, outward"),
    ("knee_z2", "knee_z - mitre * (sin(lean) - sin(wall_draft))", "Knee inside, up"),
]

# Which point of the profile's sketch stands there, which arcs have that radius and that turn.
_PLACES = {
    "knee_x": (2, 1),
    "knee_z": (2, 1),
    "rim_x": (3, 3),
    "rim_z": (3, 3),
    "far_x": (4, 2),
    "height": (5, 2),
    "knee_x2": (9, 1),
    "knee_z2": (9, 1),
}
_RADII = {"floor_radius": 0, "rim_radius": 3, "rim_radius2": 7, "floor_radius2": 10}
_TURNS = {"floor_turn": (0, 10), "rim_turn": (3, 7)}


def build(name="BatteryTray"):
    """Return a new document with the part in it, recomputed."""
    document = FreeCAD.newDocument(name)
    document.Comment = "Invented example: a battery tray that cannot release in one piece."
    document.License = "LGPL-2.1-or-later"
    spreadsheet(document, [*DIMENSIONS, *WORKED_OUT])
    outline = rounded_rectangle(
        document,
        "Outline",
        (86.0, 46.0, 30.0),
        (
            "Dimensions.length - 2 * Dimensions.far_x",
            "Dimensions.width - 2 * Dimensions.far_x",
            "Dimensions.corner_radius - Dimensions.floor_radius",
        ),
    )
    floor = document.addObject("Part::Extrusion", "Floor")
    floor.Base = outline
    floor.Dir = V(0, 0, 1)
    floor.Solid = True
    floor.setExpression("LengthFwd", "Dimensions.skin")
    wall = document.addObject("Part::Sweep", "Wall")
    wall.Sections = [_profile(document)]
    wall.Spine = (outline, [])
    wall.Solid = True
    tray = document.addObject("Part::Fuse", "BatteryTray")
    tray.Base, tray.Tool = floor, wall
    tray.Label = "Battery tray"
    document.recompute()
    hide(tray)
    return document


def moulded_faces(shape):
    """Return the names of the faces to be moulded: the outside, from the floor to the rim."""
    top = _highest(shape) - 1e-6
    return [
        f"Face{number}"
        for number, face in enumerate(shape.Faces, 1)
        if _highest(face) < top and _looks_out(face)
    ]


def _highest(shape):
    return max(vertex.Z for vertex in shape.Vertexes)


def _looks_out(face):
    at = middle(face)
    place, normal = face.valueAt(*at), face.normalAt(*at)
    outward = V(place.x, place.y, 0.0)
    return normal.z < -0.9 or normal.dot(outward) > 0.1 * outward.Length


def _profile(document):
    """Return the sketch of the wall with bends, lip and rim, at the first corner's start.

    Corners are given by their places, arcs by centre, radius and turn.  So no other solution
    of the sketch is near, however much a dimension changes.
    """
    sketch = document.addObject("Sketcher::SketchObject", "Profile")
    # sketch x points outward, sketch y is the part's z
    sketch.Placement = FreeCAD.Placement(V(0, 0, 0), FreeCAD.Rotation(V(1, 0, 0), 90))
    for axis in "xy":
        sketch.setExpression(f"Placement.Base.{axis}", f"Dimensions.corner_{axis}")
    size = sizes(document, [*DIMENSIONS, *WORKED_OUT])
    floor, rim = V(0, size["floor_radius"], 0), V(size["rim_x"], size["rim_z"], 0)
    bend, end = V(size["bend_x"], size["bend_z"], 0), V(size["end_x"], size["end_z"], 0)
    knee, knee2 = V(size["knee_x"], size["knee_z"], 0), V(size["knee_x2"], size["knee_z2"], 0)
    bend2 = floor + (bend - floor) * (size["floor_radius2"] / size["floor_radius"])
    end2 = rim + (end - rim) * (size["rim_radius2"] / size["rim_radius"])
    start, start2 = V(rim.x, rim.y + size["rim_radius"], 0), V(rim.x, size["height"], 0)
    far, skin = V(size["far_x"], start.y, 0), V(0, size["skin"], 0)
    for geometry in (
        _arc(floor, V(0, 0, 0), bend),
        Part.LineSegment(bend, knee),
        Part.LineSegment(knee, end),
        _arc(rim, start, end),
        Part.LineSegment(start, far),
        Part.LineSegment(far, far + skin),
        Part.LineSegment(far + skin, start2),
        _arc(rim, start2, end2),
        Part.LineSegment(end2, knee2),
        Part.LineSegment(knee2, bend2),
        _arc(floor, skin, bend2),
        Part.LineSegment(skin, V(0, 0, 0)),
    ):
        sketch.addGeometry(geometry)
    for first, second in (
        ((0, 1), (-1, 1)),
        ((0, 2), (1, 1)),
        ((1, 2), (2, 1)),
        ((2, 2), (3, 2)),
        ((3, 1), (4, 1)),
        ((4, 2), (5, 1)),
        ((5, 2), (6, 1)),
        ((6, 2), (7, 1)),
        ((7, 2), (8, 1)),
        ((8, 2), (9, 1)),
        ((9, 2), (10, 2)),
        ((10, 1), (11, 1)),
        ((11, 2), (0, 1)),
        ((0, 3), (10, 3)),
        ((3, 3), (7, 3)),
    ):
        sketch.addConstraint(Sketcher.Constraint("Coincident", *first, *second))
    for arc in (0, 3, 7, 10):
        sketch.addConstraint(Sketcher.Constraint("Vertical", arc, 1, arc, 3))
    for kind, index in (("Horizontal", 4), ("Vertical", 5)):
        sketch.addConstraint(Sketcher.Constraint(kind, index))
    for name, (geometry, point) in _PLACES.items():
        kind = "DistanceX" if "_x" in name else "DistanceY"
        drive(sketch, name, Sketcher.Constraint(kind, -1, 1, geometry, point, size[name]))
    for name, arc in _RADII.items():
        drive(sketch, name, Sketcher.Constraint("Radius", arc, size[name]))
    for name, arcs in _TURNS.items():
        for arc in arcs:
            turn = Sketcher.Constraint("Angle", arc, math.radians(size[name]))
            drive(sketch, name, turn, f"{name}_{arc}")
    return sketch


def _arc(centre, start, end):
    """Return an arc that runs counter-clockwise from start to end."""
    first, last = start - centre, end - centre
    circle = Part.Circle(centre, V(0, 0, 1), first.Length)
    return Part.ArcOfCircle(circle, math.atan2(first.y, first.x), math.atan2(last.y, last.x))


if __name__ == "__main__":
    made = build()
    made.saveAs(str(Path(__file__).resolve().parent / "battery_tray.FCStd"))
