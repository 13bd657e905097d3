"""What the example parts share: the spreadsheet of dimensions, an outline, the middle of a face."""

import math

import FreeCAD
import Part
import Sketcher

__all__ = ["drive", "hide", "middle", "rounded_rectangle", "set_dimension", "sizes", "spreadsheet"]

V = FreeCAD.Vector


def spreadsheet(document, dimensions):
    """Add the spreadsheet "Dimensions": rows of name, value and what it is."""
    sheet = document.addObject("Spreadsheet::Sheet", "Dimensions")
    for row, (alias, value, meaning) in enumerate(dimensions, 1):
        sheet.set(f"A{row}", meaning)
        sheet.set(f"B{row}", f"={value}")
        sheet.setAlias(f"B{row}", alias)
    document.recompute()
    return sheet


def set_dimension(document, name, value):
    """Change a dimension, such as ``"length"`` to ``"440 mm"``, and recompute."""
    sheet = document.Dimensions
    sheet.set(sheet.getCellFromAlias(name), f"={value}")
    document.recompute()


def sizes(document, dimensions):
    """Return the present value of every dimension by name: mm, degrees or a plain number."""
    values = {name: document.Dimensions.get(name) for name, *_ in dimensions}
    return {name: getattr(value, "Value", value) for name, value in values.items()}


def rounded_rectangle(document, name, size, expressions):
    """Return the sketch of a rounded rectangle around the origin of the xy plane.

    Parameters
    ----------
    document : App.Document
        Where it is made.
    name : str
        Name of the sketch.
    size : (float, float, float)
        Half the length, half the width and the corner radius at first, mm.
    expressions : (str, str, str)
        Length, width and corner radius as expressions.
    """
    sketch = document.addObject("Sketcher::SketchObject", name)
    x, y, r = size
    corners = [(1, 1, 0.0), (-1, 1, 0.5), (-1, -1, 1.0), (1, -1, 1.5)]
    for across, up, start in corners:
        centre = V(across * (x - r), up * (y - r), 0)
        circle = Part.Circle(centre, V(0, 0, 1), r)
        sketch.addGeometry(Part.ArcOfCircle(circle, start * math.pi, (start + 0.5) * math.pi))
    for index in range(4):
        first = sketch.Geometry[index].EndPoint
        second = sketch.Geometry[(index + 1) % 4].StartPoint
        sketch.addGeometry(Part.LineSegment(first, second))
    for index in range(4):
        following = (index + 1) % 4
        sketch.addConstraint(Sketcher.Constraint("Tangent", index, 2, 4 + index, 1))
        sketch.addConstraint(Sketcher.Constraint("Tangent", 4 + index, 2, following, 1))
        if index:
            sketch.addConstraint(Sketcher.Constraint("Equal", 0, index))
    for index, kind in ((4, "Horizontal"), (5, "Vertical"), (6, "Horizontal"), (7, "Vertical")):
        sketch.addConstraint(Sketcher.Constraint(kind, index))
    sketch.addConstraint(Sketcher.Constraint("Symmetric", 0, 3, 2, 3, -1, 1))
    length, width, corner = expressions
    for label, constraint, expression in (
        ("corner", Sketcher.Constraint("Radius", 0, r), corner),
        (
            "long",
            Sketcher.Constraint("DistanceX", 1, 3, 0, 3, 2 * (x - r)),
            f"{length} - 2 * ({corner})",
        ),
        (
            "wide",
            Sketcher.Constraint("DistanceY", 3, 3, 0, 3, 2 * (y - r)),
            f"{width} - 2 * ({corner})",
        ),
    ):
        sketch.renameConstraint(sketch.addConstraint(constraint), label)
        sketch.setExpression(f"Constraints.{label}", expression)
    return sketch


def drive(sketch, name, constraint, label=""):
    """Add a constraint whose value is the dimension `name`, under that name or another label."""
    label = label or name
    sketch.renameConstraint(sketch.addConstraint(constraint), label)
    sketch.setExpression(f"Constraints.{label}", f"Dimensions.{name}")


def middle(face):
    """Return the parameters in the middle of a face."""
    first, last, low, high = face.ParameterRange
    return (first + last) / 2, (low + high) / 2


def hide(part):
    """Hide all that a part is made from."""
    for feature in part.OutListRecursive:
        if hasattr(feature, "Shape"):
            feature.Visibility = False
