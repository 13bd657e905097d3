"""Release Check: whether the part leaves the mould along the pull."""

import math

from freecad.laywright import bridge
from freecad.laywright.objects.base import Property, StageObject, fresh_result
from laywright.mould.release import ReleaseReport, ReleaseSettings, check_release

__all__ = ["ReleaseCheckObject"]


class ReleaseCheckObject(StageObject):
    """Draft of every facet, hidden undercuts included."""

    stage = check_release
    result_type = ReleaseReport
    host_type = "Mesh::FeaturePython"
    icon = "release_check.svg"
    properties = (
        Property("Face", "Link", "The Moulded Face that is checked"),
        Property("LeastDraft", "Angle", "Draft that is wanted everywhere (degrees)", "2 deg"),
    )
    reports = (
        Property("DraftFound", "Angle", "Least draft found (degrees)"),
        Property("UndercutArea", "Area", "Area that cannot leave along the pull (mm²)"),
        Property("AreaByClass", "StringList", "Area of each class of draft (mm²)"),
        Property("BestPull", "Vector", "Pull direction with the largest least draft"),
        Property("BestDraft", "Angle", "Least draft along that direction (degrees)"),
        Property("Remarks", "StringList", "What to know before going on"),
    )

    def inputs(self, obj):
        face = fresh_result(obj.Face, "a Moulded Face", obj.Label)
        return face, ReleaseSettings(least_draft=math.radians(obj.LeastDraft.Value))

    def show(self, obj, result):
        face = obj.Face.Proxy.kept(obj.Face)
        obj.Mesh = bridge.mesh_from_solids([face.surface])
        obj.DraftFound = math.degrees(result.least_draft)
        obj.UndercutArea = result.undercut_area
        obj.AreaByClass = [f"{name}: {area:.0f} mm²" for name, area in result.area_by_class]
        obj.BestPull = bridge.vector(result.best_pull)
        obj.BestDraft = math.degrees(result.best_least_draft)
        obj.Remarks = list(result.remarks)
