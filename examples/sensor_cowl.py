"""A teardrop cowl for a river-level sensor: curved both ways, open below, out along one pull.

Invented for this example, as are all its dimensions.  About 260 x 110 x 60 mm, a blunt nose
against the stream and a long tail.  Every dimension stands in the spreadsheet "Dimensions";
change one and recompute.

Every section across the stream is part of an ellipse whose middle lies below the open
underside, so the side leans inward by ``side_draft`` where it is steepest.  It is made as a
body of revolution from two arcs (nose and tail), drawn out in height, and cut off below.

Run inside FreeCAD (macro or console) with this folder on the path::

    import sensor_cowl
    document = sensor_cowl.build()

``bash tools/in_freecad.sh console`` with tools/run_example.py makes sensor_cowl.FCStd anew.
"""

import math
from pathlib import Path

import FreeCAD
import Part
import Sketcher
from draftobjects.clone import Clone
from draftviewproviders.view_clone import ViewProviderClone
from drawn_parts import drive, hide, middle, sizes, spreadsheet

V = FreeCAD.Vector

# name, value, what it is
DIMENSIONS = [
    ("length", "260 mm", "Length of the open underside, along x"),
    ("width", "110 mm", "Width of the open underside, along y"),
    ("height", "60 mm", "Height above the open underside"),
    ("nose_length", "75 mm", "From the tip of the nose to the widest section"),
    ("side_draft", "10 deg", "Draft of the side at the widest section"),
]

# What follows from them.
WORKED_OUT = [
    ("half", "width / 2", "Half the width"),
    (
        "below",
        "height * height * tan(side_draft) / (half - 2 * height * tan(side_draft))",
        "Middle of the ellipses below the underside",
    ),
    ("upright", "height + below", "Upright half axis of the widest ellipse"),
    ("across", "half / sqrt(1 - pow(below / upright; 2))", "Level half axis of that ellipse"),
    ("drawn_out", "upright / across", "Height of the ellipses against their width"),
    ("cut", "below / drawn_out", "Where the body of revolution is cut off, below its axis"),
    ("rise", "across - cut", "Rise of the arcs above the underside"),
    ("tail_length", "length - nose_length", "From the widest section to the tip of the tail"),
    ("nose_radius", "(nose_length * nose_length + rise * rise) / (2 * rise)", "Arc of the nose"),
    ("tail_radius", "(tail_length * tail_length + rise * rise) / (2 * rise)", "Arc of the tail"),
    ("nose_turn", "acos(1 - across / nose_radius)", "Turn of the nose's arc down to the axis"),
    ("tail_turn", "acos(1 - across / tail_radius)", "Turn of the tail's arc down to the axis"),
]


def build(name="SensorCowl"):
    """Return a new document with the part in it, recomputed."""
    document = FreeCAD.newDocument(name)
    document.Comment = "Invented example: a teardrop cowl for a river-level sensor."
    document.License = "LGPL-2.1-or-later"
    spreadsheet(document, [*DIMENSIONS, *WORKED_OUT])
    turned = document.addObject("Part::Revolution", "Turned")
    turned.Source = _profile(document)
    turned.Axis = V(1, 0, 0)
    turned.Angle = 180
    turned.Solid = True
    above = document.addObject("Part::Common", "AboveUnderside")
    above.Base, above.Tool = turned, _space(document)
    document.recompute()
    cowl = document.addObject("Part::FeaturePython", "SensorCowl")
    Clone(cowl)
    if cowl.ViewObject is not None:
        ViewProviderClone(cowl.ViewObject)
    cowl.Objects = [above]
    cowl.Label = "Sensor cowl"
    cowl.setExpression("Scale.z", "Dimensions.drawn_out")
    cowl.setExpression("Placement.Base.z", "-Dimensions.below")
    document.recompute()
    hide(cowl)
    return document


def moulded_faces(shape):
    """Return the names of the faces to be moulded: all but the open underside."""
    return [
        f"Face{number}"
        for number, face in enumerate(shape.Faces, 1)
        if face.normalAt(*middle(face)).z > -0.5
    ]


def _profile(document):
    """Return the sketch of half the body: the arcs of nose and tail, and the axis."""
    size = sizes(document, [*DIMENSIONS, *WORKED_OUT])
    sketch = document.addObject("Sketcher::SketchObject", "HalfOutline")
    wide, up = size["across"], V(0, 0, 1)
    nose = Part.Circle(V(0, wide - size["nose_radius"], 0), up, size["nose_radius"])
    tail = Part.Circle(V(0, wide - size["tail_radius"], 0), up, size["tail_radius"])
    turns = [math.radians(size[name]) for name in ("nose_turn", "tail_turn")]
    top = math.pi / 2
    arcs = Part.ArcOfCircle(nose, top, top + turns[0]), Part.ArcOfCircle(tail, top - turns[1], top)
    for geometry in (*arcs, Part.LineSegment(arcs[0].EndPoint, arcs[1].StartPoint)):
        sketch.addGeometry(geometry)
    for first, second in (((0, 1), (1, 2)), ((0, 2), (2, 1)), ((1, 1), (2, 2))):
        sketch.addConstraint(Sketcher.Constraint("Coincident", *first, *second))
    for arc, point in ((0, 1), (0, 3), (1, 3)):
        sketch.addConstraint(Sketcher.Constraint("PointOnObject", arc, point, -2))
    for name, constraint in (
        ("across", Sketcher.Constraint("DistanceY", -1, 1, 0, 1, wide)),
        ("nose_radius", Sketcher.Constraint("Radius", 0, size["nose_radius"])),
        ("tail_radius", Sketcher.Constraint("Radius", 1, size["tail_radius"])),
        ("nose_turn", Sketcher.Constraint("Angle", 0, turns[0])),
        ("tail_turn", Sketcher.Constraint("Angle", 1, turns[1])),
    ):
        drive(sketch, name, constraint)
    return sketch


def _space(document):
    """Return the block of space above the underside, as it stands before it is drawn out."""
    block = document.addObject("Part::Box", "Space")
    for name, size in (
        ("Length", "Dimensions.length + 40 mm"),
        ("Width", "Dimensions.width + 40 mm"),
        ("Height", "Dimensions.across"),
        ("Placement.Base.x", "-Dimensions.nose_length - 20 mm"),
        ("Placement.Base.y", "-Dimensions.half - 20 mm"),
        ("Placement.Base.z", "Dimensions.cut"),
    ):
        block.setExpression(name, size)
    return block


if __name__ == "__main__":
    made = build()
    made.saveAs(str(Path(__file__).resolve().parent / "sensor_cowl.FCStd"))
