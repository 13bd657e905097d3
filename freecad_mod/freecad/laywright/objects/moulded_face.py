"""Moulded Face: which faces of the part are moulded, and how."""

from freecad.laywright import bridge
from freecad.laywright.objects.base import Property, StageObject
from laywright.errors import InputError
from laywright.surface.face import LaminateSide, MouldedFace, MouldSide, take_face
from laywright.surface.fingerprint import match

__all__ = ["MouldedFaceObject"]

_CHORD_ANGLE = 0.15
_BEST, _FIXED = "largest least draft", "fixed direction"


class MouldedFaceObject(StageObject):
    """The picked faces; refuses to go on when a name has come to mean another face."""

    stage = take_face
    result_type = MouldedFace
    host_type = "Part::FeaturePython"
    icon = "moulded_face.svg"
    properties = (
        Property("Faces", "LinkSub", "The part and its faces that are moulded"),
        Property("PullFrom", "Enumeration", "How the pull direction is chosen", [_BEST, _FIXED]),
        Property(
            "Pull",
            "Vector",
            "Direction in which the part leaves the mould, when it is fixed",
            bridge.vector((0, 0, 1)),
        ),
        Property(
            "LaminateSide",
            "Enumeration",
            "Side of the CAD face on which the laminate lies",
            [side.value for side in LaminateSide],
        ),
        Property(
            "MouldSide",
            "Enumeration",
            "Side of the laminate on which the mould stands",
            [side.value for side in MouldSide],
        ),
        Property(
            "LargestChord",
            "Length",
            "Largest distance between a CAD face and the triangles that stand for it (mm)",
            "0.05 mm",
        ),
        Property("KnownFaces", "String", "Fingerprints of the faces as they were picked"),
    )
    reports = (
        Property("Area", "Area", "Area of the moulded faces (mm²)"),
        Property("Deviation", "Length", "Largest distance found between faces and triangles (mm)"),
        Property("PullUsed", "Vector", "The pull direction in use"),
    )

    def ensure_properties(self, obj):
        super().ensure_properties(obj)
        obj.setEditorMode("KnownFaces", 2)

    def inputs(self, obj):
        if not obj.Faces or not obj.Faces[1]:
            raise InputError("Faces", "no faces", "one or more faces of a part", "pick the faces")
        part, names = obj.Faces
        names = tuple(names)
        known = bridge.face_table_from_text(obj.KnownFaces)
        if {entry.name for entry in known} == set(names):
            match(known, bridge.face_table(part.Shape))
        surface, deviation = bridge.surface_from_shape(
            part.Shape, names, obj.LargestChord.Value, _CHORD_ANGLE
        )
        pull = None if obj.PullFrom == _BEST else (obj.Pull.x, obj.Pull.y, obj.Pull.z)
        return (
            surface,
            pull,
            LaminateSide(obj.LaminateSide),
            MouldSide(obj.MouldSide),
            deviation,
        )

    def compute(self, obj, previous, inputs, progress):
        result = self.stage.renew(previous, *inputs)
        part, names = obj.Faces
        taken = [entry for entry in bridge.face_table(part.Shape) if entry.name in names]
        table = bridge.face_table_to_text(taken)
        if table != obj.KnownFaces:
            obj.KnownFaces = table
        return result

    def show(self, obj, result):
        part, names = obj.Faces
        obj.Shape = bridge.shape_of_faces(part.Shape, names)
        obj.Area = result.surface.area
        obj.Deviation = result.deviation
        obj.PullUsed = bridge.vector(result.pull)
