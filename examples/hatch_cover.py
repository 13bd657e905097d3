"""A crowned hatch cover for a research dinghy: a parametric part to try the workbench on.

Invented for this example, as are all its dimensions.  About 420 x 300 mm, crowned both ways,
with rounded corners.  Every dimension stands in the spreadsheet "Dimensions"; change one and
recompute.

Run inside FreeCAD (macro or console) with this folder on the path::

    import hatch_cover
    document = hatch_cover.build()

``bash tools/in_freecad.sh console`` with tools/run_example.py makes hatch_cover.FCStd anew.
"""

import math
from pathlib import Path

import FreeCAD
import Part
import Sketcher
from drawn_parts import hide, middle, rounded_rectangle, spreadsheet

V = FreeCAD.Vector

# name, value, what it is
DIMENSIONS = [
    ("length", "420 mm", "Length of the cover, along x"),
    ("width", "300 mm", "Width of the cover, along y"),
    ("corner_radius", "60 mm", "Corner radius, in plan"),
    ("crown_height", "60 mm", "Height of the crown above the underside"),
    ("crown_radius_long", "1100 mm", "Radius of the crown along the length"),
    ("crown_radius_cross", "500 mm", "Radius of the crown across"),
]


def build(name="HatchCover"):
    """Return a new document with the part in it, recomputed."""
    document = FreeCAD.newDocument(name)
    document.Comment = "Invented example: a crowned hatch cover for a research dinghy."
    document.License = "LGPL-2.1-or-later"
    spreadsheet(document, DIMENSIONS)
    block = document.addObject("Part::Extrusion", "Block")
    block.Base = rounded_rectangle(
        document,
        "Outline",
        (210.0, 150.0, 60.0),
        ("Dimensions.length", "Dimensions.width", "Dimensions.corner_radius"),
    )
    block.Dir = V(0, 0, 1)
    block.Solid = True
    block.setExpression("LengthFwd", "Dimensions.crown_height + 10 mm")
    crown = _crown(document)
    cover = document.addObject("Part::Common", "HatchCover")
    cover.Base, cover.Tool = block, crown
    cover.Label = "Hatch cover"
    document.recompute()
    hide(cover)
    return document


def moulded_faces(shape):
    """Return the names of the faces to be moulded: those that look upwards."""
    return [
        f"Face{number}"
        for number, face in enumerate(shape.Faces, 1)
        if face.normalAt(*middle(face)).z > 0.05
    ]


def _crown(document):
    """Return the solid under the crown: an arc across, swept round the lengthwise radius."""
    sketch = document.addObject("Sketcher::SketchObject", "CrownProfile")
    # sketch x is the part's y, sketch y is the part's z
    sketch.Placement = FreeCAD.Placement(V(0, 0, 0), FreeCAD.Rotation(V(1, 1, 1), 120))
    half, radius, height, depth = 170.0, 500.0, 60.0, 150.0
    turn = math.asin(half / radius)
    arc = Part.ArcOfCircle(
        Part.Circle(V(0, height - radius, 0), V(0, 0, 1), radius),
        math.pi / 2 - turn,
        math.pi / 2 + turn,
    )
    right, left = arc.StartPoint, arc.EndPoint
    sketch.addGeometry(arc)
    sketch.addGeometry(Part.LineSegment(left, V(-half, -depth, 0)))
    sketch.addGeometry(Part.LineSegment(V(-half, -depth, 0), V(half, -depth, 0)))
    sketch.addGeometry(Part.LineSegment(V(half, -depth, 0), right))
    for first, end, second, start in ((0, 2, 1, 1), (1, 2, 2, 1), (2, 2, 3, 1), (3, 2, 0, 1)):
        sketch.addConstraint(Sketcher.Constraint("Coincident", first, end, second, start))
    sketch.addConstraint(Sketcher.Constraint("Vertical", 1))
    sketch.addConstraint(Sketcher.Constraint("Vertical", 3))
    sketch.addConstraint(Sketcher.Constraint("Symmetric", 1, 2, 2, 2, -2))
    sketch.addConstraint(Sketcher.Constraint("PointOnObject", 0, 3, -2))
    labelled = {
        "crown": Sketcher.Constraint("Radius", 0, radius),
        "span": Sketcher.Constraint("DistanceX", 2, 1, 2, 2, 2 * half),
        "centre": Sketcher.Constraint("DistanceY", 0, 3, -1, 1, radius - height),
        "depth": Sketcher.Constraint("DistanceY", 2, 1, -1, 1, depth),
    }
    for label, constraint in labelled.items():
        sketch.renameConstraint(sketch.addConstraint(constraint), label)
    sketch.setExpression("Constraints.crown", "Dimensions.crown_radius_cross")
    sketch.setExpression("Constraints.span", "Dimensions.width + 40 mm")
    sketch.setExpression(
        "Constraints.centre", "Dimensions.crown_radius_cross - Dimensions.crown_height"
    )
    crown = document.addObject("Part::Revolution", "Crown")
    crown.Source = sketch
    crown.Axis = V(0, 1, 0)
    crown.Symmetric = True
    crown.Solid = True
    crown.setExpression("Base.z", "Dimensions.crown_height - Dimensions.crown_radius_long")
    crown.setExpression(
        "Angle", "2 * asin((Dimensions.length / 2 + 40 mm) / Dimensions.crown_radius_long)"
    )
    return crown


if __name__ == "__main__":
    made = build()
    made.saveAs(str(Path(__file__).resolve().parent / "hatch_cover.FCStd"))
