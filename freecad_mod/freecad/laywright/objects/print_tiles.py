"""Print Tiles: the body cut into pieces that fit the printer."""

import math

from freecad.laywright import bridge, preferences
from freecad.laywright.objects.base import Property, StageObject, fresh_result
from laywright.errors import InputError
from laywright.mould.tiles.cuts import PrintPose
from laywright.mould.tiles.exploded import exploded
from laywright.mould.tiles.joint import JointKind
from laywright.mould.tiles.tiles import TileSet, TileSettings, cut_tiles
from laywright.mould.tiles.wishes import CutWishes

__all__ = ["PrintTilesObject"]

_TURN = "Turn of the grid about the pull (°); -1 leaves it to the search while no cut is set"
_CUTS = "Cuts that are wanted across {0} of the grid (mm)"
_FREE = "Stretches along {0} of the grid without a cut, each as from and to (mm)"
_WHOLE = "Balls that no cut passes through, each as x, y, z of the part and radius (mm)"


class PrintTilesObject(StageObject):
    """Tiles with joints and marks, shown apart by a gap that the user sets."""

    stage = cut_tiles
    result_type = TileSet
    host_type = "Mesh::FeaturePython"
    icon = "print_tiles.svg"
    properties = (
        Property("Body", "Link", "The Mould Body that is cut"),
        Property("Printer", "String", "Printer by its card", choices=preferences.printers),
        Property(
            "Joint",
            "Enumeration",
            "What holds the tiles in place while the glue sets",
            [kind.value for kind in JointKind],
        ),
        Property("DowelDiameter", "Length", "Diameter of the dowels (mm)", "6 mm"),
        Property("DowelDepth", "Length", "Depth of the dowel hole in each tile (mm)", "12 mm"),
        Property("Clearance", "Length", "Clearance of the dowel holes per side (mm)", "0.15 mm"),
        Property("TongueWidth", "Length", "Diagonal of a tongue's section (mm)", "10 mm"),
        Property("TongueLength", "Length", "How far a tongue stands out (mm)", "6 mm"),
        Property("TongueClearance", "Length", "Clearance of tongues per side (mm)", "0.25 mm"),
        Property("EarReach", "Length", "How far clamp ears stand out (mm)", "15 mm"),
        Property("EarThickness", "Length", "Thickness of an ear along the clamp (mm)", "8 mm"),
        Property("EarHeight", "Length", "Height of an ear at most (mm)", "20 mm"),
        Property("JointWall", "Length", "Material left around a hole or groove (mm)", "2.5 mm"),
        Property("GlueGap", "Length", "Glue gap at each seam (mm)", "0.1 mm"),
        Property("GlueDensity", "Float", "Density of the glue (g/cm³)", 1.15),
        Property("MarkDepth", "Length", "Depth of the engraved marks, 0 for none (mm)", "0.6 mm"),
        Property("LeastTile", "Length", "No tile is thinner than this (mm)", "30 mm"),
        Property(
            "Pose",
            "Enumeration",
            "How tiles may stand on the bed",
            [PrintPose.ANY_SIDE.value, PrintPose.BASE_DOWN.value],
        ),
        Property("GridTurn", "Float", _TURN, -1.0),
        Property("PinnedX", "FloatList", _CUTS.format("x")),
        Property("PinnedY", "FloatList", _CUTS.format("y")),
        Property("PinnedZ", "FloatList", _CUTS.format("z")),
        Property("FreeX", "FloatList", _FREE.format("x")),
        Property("FreeY", "FloatList", _FREE.format("y")),
        Property("FreeZ", "FloatList", _FREE.format("z")),
        Property("KeptWhole", "FloatList", _WHOLE),
        Property("SearchTime", "Float", "Most time for the search of the cuts (s)", 2.0),
        Property("ShownApart", "Length", "Gap between the tiles on the screen (mm)", "20 mm"),
    )
    reports = (
        Property("Count", "Integer", "Number of tiles"),
        Property(
            "Printing", "String", "Plastic and time of all tiles together, by the printer's card"
        ),
        Property("Tiles", "StringList", "Name, size (mm), mass (g) and time (h) of each tile"),
        Property("Poses", "StringList", "What each tile stands on, and what hangs over (cm²)"),
        Property("Assembly", "StringList", "The order in which the tiles are glued"),
        Property("Cuts", "StringList", "Where the cuts lie along the grid's axes (mm)"),
        Property("SeamCost", "Float", "Weighted length of all seams on the working face (mm)"),
        Property("MoreTiles", "Integer", "Tiles more because of pinned and forbidden cuts"),
        Property("MoreSeamCost", "Float", "Weighted seams more because of these cuts (mm)"),
        Property("GlueArea", "Area", "Area of all seams (mm²)"),
        Property("GlueMass", "Float", "Glue that fills the seams (g)"),
        Property("VolumeError", "Float", "Tiles and cut-outs together against the body (relative)"),
        Property("Remarks", "StringList", "What to know before printing"),
    )

    def inputs(self, obj):
        body = fresh_result(obj.Body, "a Mould Body", obj.Label)
        settings = TileSettings(
            joint=JointKind(obj.Joint),
            dowel_diameter=obj.DowelDiameter.Value,
            dowel_depth=obj.DowelDepth.Value,
            clearance=obj.Clearance.Value,
            tongue_width=obj.TongueWidth.Value,
            tongue_length=obj.TongueLength.Value,
            tongue_clearance=obj.TongueClearance.Value,
            ear_reach=obj.EarReach.Value,
            ear_thickness=obj.EarThickness.Value,
            ear_height=obj.EarHeight.Value,
            wall=obj.JointWall.Value,
            glue_gap=obj.GlueGap.Value,
            glue_density=obj.GlueDensity,
            mark_depth=obj.MarkDepth.Value,
            least_tile=obj.LeastTile.Value,
            pose=PrintPose(obj.Pose),
            wishes=CutWishes(
                None if obj.GridTurn < 0.0 else math.radians(obj.GridTurn),
                tuple(obj.PinnedX),
                tuple(obj.PinnedY),
                tuple(obj.PinnedZ),
                _rows(obj, "FreeX", 2, "pairs of from and to"),
                _rows(obj, "FreeY", 2, "pairs of from and to"),
                _rows(obj, "FreeZ", 2, "pairs of from and to"),
                _rows(obj, "KeptWhole", 4, "x, y, z and radius of each ball"),
            ),
            plan_seconds=obj.SearchTime,
        )
        return body, preferences.printer(obj.Printer), settings

    def show(self, obj, result):
        obj.Mesh = bridge.mesh_from_solids(exploded(result, obj.ShownApart.Value))
        obj.Count = len(result.tiles)
        obj.Printing = (
            f"{math.fsum(tile.mass for tile in result.tiles):.0f} g, "
            f"{math.fsum(tile.hours for tile in result.tiles):.1f} h, {obj.Printer}"
        )
        obj.Tiles = [
            f"{tile.name}: {' × '.join(f'{side:.1f}' for side in tile.size)} mm, "
            f"{tile.mass:.0f} g, {tile.hours:.1f} h"
            for tile in result.tiles
        ]
        obj.Poses = [_pose_line(tile) for tile in result.tiles]
        obj.Assembly = list(result.steps)
        plans = result.plans or (result.plan,)
        obj.Cuts = [
            (f"piece {plan.piece}, " if plan.piece else "")
            + f"{axis}: {', '.join(f'{cut:.1f}' for cut in cuts) or 'none'}"
            for plan in plans
            for axis, cuts in zip("xyz", plan.cuts, strict=True)
        ]
        obj.SeamCost = sum(plan.cost for plan in plans)
        obj.MoreTiles = result.plan.more_tiles
        obj.MoreSeamCost = result.plan.more_cost
        obj.GlueArea = result.glue_area
        obj.GlueMass = result.glue_g
        obj.VolumeError = result.volume_error
        obj.Remarks = list(result.remarks)

    def onChanged(self, obj, name):
        """Move the shown tiles at once; the tiles themselves stay."""
        if name == "ShownApart" and "Digest" in obj.PropertiesList and obj.Digest:
            kept = self.kept(obj)
            if kept is not None:
                obj.Mesh = bridge.mesh_from_solids(exploded(kept, obj.ShownApart.Value))


def _rows(obj, name, count, what):
    """Return a list of numbers as rows of `count` each."""
    numbers = list(getattr(obj, name))
    if len(numbers) % count:
        raise InputError(name, f"{len(numbers)} numbers", what, "correct the list")
    return tuple(tuple(numbers[i : i + count]) for i in range(0, len(numbers), count))


def _pose_line(tile):
    standing = tile.standing
    lines = "along" if standing.is_along_pull else "across"
    return (
        f"{tile.name}: {standing.bed_face.value}, layer lines {lines} the pull, "
        f"{standing.overhang / 100.0:.1f} cm² hang over, "
        f"{100.0 * standing.unsupported_share:.0f} % of the working face"
    )
