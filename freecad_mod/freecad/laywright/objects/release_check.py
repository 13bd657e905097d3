"""Release Check: whether the part leaves the mould along the pull."""

import math

from freecad.laywright import bridge
from freecad.laywright.objects.base import Property, StageObject, fresh_result
from laywright.mould.release.release import ReleaseReport, ReleaseSettings, check_release
from laywright.mould.release.wanted_draft import LAYER_RIDGE, MouldFinish, wanted_draft

__all__ = ["ReleaseCheckObject"]

_BY_HAND = "draft set by hand"


class ReleaseCheckObject(StageObject):
    """Draft of every facet, hidden undercuts included."""

    stage = check_release
    result_type = ReleaseReport
    host_type = "Mesh::FeaturePython"
    icon = "release_check.svg"
    properties = (
        Property("Face", "Link", "The Moulded Face that is checked"),
        Property(
            "MouldSurface",
            "Enumeration",
            "Surface of the mould: it decides which draft is wanted",
            [_BY_HAND, *(finish.value for finish in MouldFinish)],
        ),
        Property(
            "TextureDepth",
            "Length",
            "Depth of layer lines or texture across the pull (mm)",
            f"{LAYER_RIDGE} mm",
        ),
        Property(
            "LeastDraft",
            "Angle",
            "Draft that is wanted everywhere, as set by hand; pieces of the Mould Body too",
            "2 deg",
        ),
        Property(
            "MostPieces",
            "Integer",
            "Where no direction releases the part, up to so many pieces are tried; 1 for none; "
            "the Mould Body takes it, too",
            4,
        ),
    )
    reports = (
        Property("WantedDraft", "Angle", "Draft that is wanted for this surface (degrees)"),
        Property("DraftFound", "Angle", "Least draft found (degrees)"),
        Property("UndercutArea", "Area", "Area that cannot leave along the pull (mm²)"),
        Property("AreaByClass", "StringList", "Area of each class of draft (mm²)"),
        Property("BestPull", "Vector", "Pull direction with the largest least draft"),
        Property("BestDraft", "Angle", "Least draft along that direction (degrees)"),
        Property("ReleasingPull", "Vector", "Best pull by search, where something is held back"),
        Property("PiecePulls", "VectorList", "Directions in which the part leaves the pieces"),
        Property("Remarks", "StringList", "What to know before going on"),
    )

    def inputs(self, obj):
        face = fresh_result(obj.Face, "a Moulded Face", obj.Label)
        return face, self.settings(obj)

    @staticmethod
    def settings(obj):
        """Return the draft that is wanted, why, and the number of pieces."""
        if obj.MouldSurface == _BY_HAND:
            least = math.radians(obj.LeastDraft.Value)
            return ReleaseSettings(least, most_pieces=obj.MostPieces)
        wanted = wanted_draft(MouldFinish(obj.MouldSurface), obj.TextureDepth.Value)
        return ReleaseSettings(wanted.angle, wanted.reason, obj.MostPieces)

    def show(self, obj, result):
        face = obj.Face.Proxy.kept(obj.Face)
        obj.Mesh = bridge.mesh_from_solids([face.surface])
        obj.WantedDraft = math.degrees(result.wanted_draft)
        obj.DraftFound = math.degrees(result.least_draft)
        obj.UndercutArea = result.undercut_area
        obj.AreaByClass = [f"{name}: {area:.0f} mm²" for name, area in result.area_by_class]
        obj.BestPull = bridge.vector(result.best_pull)
        obj.BestDraft = math.degrees(result.best_least_draft)
        obj.ReleasingPull = bridge.vector(
            result.releasing.pull if result.releasing else result.best_pull
        )
        obj.PiecePulls = [bridge.vector(pull) for pull in result.piece_pulls]
        obj.Remarks = list(result.remarks)
