"""What is picked in the 3D view: faces by the names that a Moulded Face gives them, a point."""

import FreeCADGui

__all__ = ["picked_faces", "picked_point"]


def picked_faces():
    """Return the names of the picked faces, as the part that is moulded calls them."""
    names = []
    for picked in FreeCADGui.Selection.getSelectionEx():
        taken = getattr(picked.Object, "Faces", None)
        faces = [name for name in picked.SubElementNames if name.startswith("Face")]
        if taken:  # a Moulded Face counts its own faces anew
            faces = [taken[1][int(name[len("Face") :]) - 1] for name in faces]
        names += faces
    return names


def picked_point():
    """Return the picked point (x, y, z), mm: the middle of a round edge, a corner, a place."""
    for picked in FreeCADGui.Selection.getSelectionEx():
        shapes = [*picked.SubObjects, *[None] * len(picked.PickedPoints)]
        for shape, place in zip(shapes, picked.PickedPoints, strict=False):
            point = _middle_of(shape) or place
            return point.x, point.y, point.z
    return None


def _middle_of(shape):
    """Return the middle of a round edge or a corner, None for anything else."""
    if shape is None:
        return None
    if shape.ShapeType == "Vertex":
        return shape.Point
    if shape.ShapeType == "Edge" and hasattr(shape.Curve, "Center"):
        return shape.Curve.Center
    return None
