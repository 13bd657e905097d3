"""Moulded Face: which faces of the part are moulded, and how."""

import FreeCAD

from freecad.laywright import bridge, host
from freecad.laywright.objects.base import Property, StageObject, fresh_result
from laywright.errors import InputError
from laywright.mould.release.pull import pull_along
from laywright.surface.face import LaminateSide, MouldedFace, MouldSide, take_face
from laywright.surface.fingerprint import match
from laywright.surface.region import named_faces, patches_at

__all__ = ["MouldedFaceObject"]
from laywright.tolerances import TOLERANCES

translate = FreeCAD.Qt.translate

_BEST, _FIXED, _PICKED = "largest least draft", "fixed direction", "picked edge or face"


class MouldedFaceObject(StageObject):
    """The picked faces; refuses to go on when a name has come to mean another face."""

    stage = take_face
    result_type = MouldedFace
    host_type = "Part::FeaturePython"
    icon = "moulded_face.svg"
    properties = (
        Property("Faces", "LinkSubGlobal", "The part and its faces that are moulded"),
        Property("Scan", "Link", "The Scanned Part whose regions are moulded, instead of faces"),
        Property("Regions", "StringList", "Its regions by name, such as Face1; none takes all"),
        Property("RegionPoints", "VectorList", "A point on each region, instead of names (mm)"),
        Property(
            "PullFrom",
            "Enumeration",
            "How the pull direction is chosen",
            [_BEST, _FIXED, _PICKED],
        ),
        Property(
            "Pull",
            "Vector",
            "Direction in which the part leaves the mould, when it is fixed",
            bridge.vector((0, 0, 1)),
        ),
        Property(
            "PullAxis",
            "LinkSubGlobal",
            "Straight edge, flat face or round face that gives the pull, when one is picked",
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
            f"{TOLERANCES.chord} mm",
        ),
        Property("KnownShape", "String", "Signature of the faces that the triangles stand for"),
        Property(
            "KnownFaces", "String", "Fingerprints of all faces of the part when these were taken"
        ),
    )
    reports = (
        Property("Area", "Area", "Area of the moulded faces (mm²)"),
        Property("Deviation", "Length", "Largest distance found between faces and triangles (mm)"),
        Property("PullUsed", "Vector", "The pull direction in use"),
    )

    def ensure_properties(self, obj):
        super().ensure_properties(obj)
        for name in ("KnownFaces", "KnownShape"):
            obj.setEditorMode(name, 2)

    def onChanged(self, obj, name):
        """Take faces that are picked anew as the known ones."""
        by_host = FreeCAD.isRestoring() or obj.Document.Transacting
        if name == "Faces" and not by_host and getattr(obj, "KnownFaces", ""):
            obj.KnownFaces = ""

    def inputs(self, obj):
        surface, deviation = self._picked(obj)
        return (
            surface,
            self._pull(obj, surface),
            LaminateSide(obj.LaminateSide),
            MouldSide(obj.MouldSide),
            deviation,
        )

    def _picked(self, obj):
        """Return the triangles of what is picked, and how far they are off."""
        if obj.Scan is not None:
            return self._regions(obj), 0.0
        if not obj.Faces or not obj.Faces[1]:
            gone = self.gone(obj, "Faces")
            found = f"no faces, for {gone} is gone" if gone else "no faces"
            raise InputError("Faces", found, "one or more faces of a part", "pick the faces")
        part, names = obj.Faces
        before = bridge.face_table_from_text(obj.KnownFaces)
        if before:
            taken = tuple(entry for entry in before if entry.name in names)
            match(taken, self._table(part.Shape), before)
        return self._surface(obj, bridge.placed_shape(part), names)

    def _regions(self, obj):
        """Return the picked regions of a scan; found once for each state of it."""
        reading = fresh_result(obj.Scan, "a Scanned Part", obj.Label)
        points = tuple((point.x, point.y, point.z) for point in obj.RegionPoints)
        wanted = (reading.digest, tuple(obj.Regions), points)
        if self._meshed is None or self._meshed[0] != wanted:
            surface = reading.surface
            if points:
                surface = patches_at(surface, points)
            elif obj.Regions:
                surface = named_faces(surface, tuple(obj.Regions))
            self._meshed = (wanted, surface)
        return self._meshed[1]

    @staticmethod
    def _pull(obj, surface):
        """Return the pull that is wanted, None for the best one."""
        if obj.PullFrom == _BEST:
            return None
        if obj.PullFrom == _FIXED:
            return (obj.Pull.x, obj.Pull.y, obj.Pull.z)
        if not obj.PullAxis or not obj.PullAxis[1]:
            raise InputError(
                "PullAxis", "no edge or face", "a straight edge, a flat or a round face", "pick one"
            )
        part, names = obj.PullAxis
        axis = bridge.axis_of(bridge.placed_shape(part), names[0])
        return pull_along(surface, axis, MouldSide(obj.MouldSide))

    def _surface(self, obj, shape, names):
        """Return triangles and deviation, the kept ones where the faces are the same."""
        kept, signature = self.kept(obj), self._signature(obj)
        if kept is not None and obj.KnownShape == signature:
            return kept.surface, kept.deviation
        if self._meshed is None or self._meshed[0] != signature:
            with host.busy(translate("Laywright", "Meshing {0} …").format(obj.Faces[0].Label)):
                found = bridge.surface_from_shape(
                    shape, names, obj.LargestChord.Value, TOLERANCES.chord_angle
                )
            self._meshed = (signature, *found)
        return self._meshed[1:]

    def _table(self, shape):
        """Return the fingerprints of all faces of a shape, taken once for each shape."""
        if self._known is None or not self._known[0].isPartner(shape):
            self._known = (shape, bridge.face_table(shape))
        return self._known[1]

    def _forget(self):
        super()._forget()
        self._meshed = self._known = None

    @staticmethod
    def _signature(obj):
        part, names = obj.Faces
        return bridge.shape_signature(
            bridge.placed_shape(part), names, obj.LargestChord.Value, TOLERANCES.chord_angle
        )

    def settle(self, obj, result):
        if obj.Scan is not None:
            return
        part, _ = obj.Faces
        obj.KnownFaces = bridge.face_table_to_text(self._table(part.Shape))
        obj.KnownShape = self._signature(obj)

    def execute(self, obj):
        super().execute(obj)
        if obj.Scan is None and not obj.KnownFaces:
            self.settle(obj, self.kept(obj))

    def show(self, obj, result):
        if obj.Scan is None:
            part, names = obj.Faces
            obj.Shape = bridge.shape_of_faces(bridge.placed_shape(part), names)
        else:
            obj.Shape = bridge.outlines_of(result.surface)
        obj.Area = result.surface.area
        obj.Deviation = result.deviation
        obj.PullUsed = bridge.vector(result.pull)
