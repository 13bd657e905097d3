"""Mould Body: the closed solid that is printed, or the pieces of it where it must be parted."""

import math

from freecad.laywright import bridge, preferences
from freecad.laywright.objects.base import Property, StageObject, fresh_result
from freecad.laywright.objects.release_check import ReleaseCheckObject
from laywright.errors import InputError
from laywright.job.links import with_marked_datum, with_printer, with_release
from laywright.job.sections import choice
from laywright.laminate.drop_off import buildup_of
from laywright.laminate.spring_in import closing_share
from laywright.mould.body.body import MouldBody, build_body
from laywright.mould.body.compensation import Allowance, Allowances, SpringInUse
from laywright.mould.body.piece_settings import PieceSettings
from laywright.mould.body.settings import Edge, Feet, Inside, MouldBuild, MouldSettings

__all__ = ["MouldBodyObject"]

_ROOM = 21.0
_SWITCHES = "Allowances switched off, one on each line: " + ", ".join(
    f"'{kind.value}'" for kind in Allowance
)


class MouldBodyObject(StageObject):
    """Moulded face offset for the laminate, run-off, base and scribed trim line."""

    stage = build_body
    result_type = MouldBody
    host_type = "Mesh::FeaturePython"
    icon = "mould_body.svg"
    properties = (
        Property("Face", "Link", "The Moulded Face that it forms"),
        Property("Layup", "Link", "The Layup whose thickness it allows for"),
        Property("RunOff", "Length", "Width of the run-off beyond the trim line (mm)", "25 mm"),
        Property("BaseHeight", "Length", "Height below the lowest point of the edge (mm)", "8 mm"),
        Property("ScribeDepth", "Length", "Depth of the scribed trim line (mm)", "0.4 mm"),
        Property("ScribeWidth", "Length", "Width of the scribed trim line (mm)", "0.8 mm"),
        Property(
            "PrintShrinkage",
            "Vector",
            "Shrinkage of the print along x, y, z (%), made up for by a larger body",
        ),
        Property("Build", "Enumeration", "What lies inside", [build.value for build in MouldBuild]),
        Property("Wall", "Length", "Least wall of a hollow body (mm)", "4 mm"),
        Property("RibSpacing", "Length", "From rib to rib in a hollow body (mm)", "40 mm"),
        Property("RibThickness", "Length", "Thickness of the ribs (mm)", "2.4 mm"),
        Property("Bottom", "Length", "Plate that closes a hollow body; 0 leaves it open (mm)"),
        Property("Flange", "Length", "Width of a level flange around the run-off (mm)"),
        Property("FlangeBlend", "Length", "Radius between run-off and flange (mm)", "6 mm"),
        Property("ClothMargin", "Length", "Second line, this far from the trim line (mm)"),
        Property("PryPockets", "Integer", "Number of pockets for wedges at the mould's edge"),
        Property("AirPort", "Length", "Diameter of a bore below the scrap, for air (mm)"),
        Property("BoltHoles", "Length", "Diameter of four bores in the flange's corners (mm)"),
        Property("Feet", "Integer", "Number of feet below the base: 0, 3 or 4"),
        Property("FootHeight", "Length", "Height of the feet (mm)", "15 mm"),
        Property("FootDiameter", "Length", "Diameter of the feet (mm)", "20 mm"),
        Property("Inscription", "String", "Name and version engraved in a side"),
        Property(
            "MarkedDatum",
            "Link",
            "The Cloth Patterns whose datum is marked on the run-off; none for no marks",
        ),
        Property("Coats", "Length", "What primer, sealer or film add to the print (mm)"),
        Property("PlasticExpansion", "Float", "Thermal expansion of the plastic (1e-6 per K)"),
        Property("Warming", "Float", "Warmer than the printed size when the resin gels (K)"),
        Property(
            "SetTemperature",
            "Float",
            "Temperature at which the resin sets, the post-cure's where there is one (°C)",
            _ROOM,
        ),
        Property(
            "SpringIn",
            "Enumeration",
            "Bends that close: listed, applied (the mould is opened by as much) or not considered",
            [use.value for use in SpringInUse],
        ),
        Property(
            "BendsClose",
            "Float",
            "Share of its turn by which a bend closes (%), as measured; 0 takes it from the Layup",
        ),
        Property("LeftOut", "StringList", _SWITCHES),
        Property(
            "Printer",
            "String",
            "Printer by its card, for plastic and time; empty takes the one for new jobs",
            choices=preferences.printers,
        ),
        Property("Release", "Link", "The Release Check that says draft and number of pieces"),
        Property(
            "MostPieces",
            "Integer",
            "At most so many pieces where one direction does not release the part; 1 refuses it, "
            "0 takes as many as the Release Check",
        ),
        Property(
            "PieceDraft",
            "Angle",
            "Draft that is wanted at every piece; 0 takes that of the Release Check",
        ),
        Property("PieceFlange", "Length", "Flange between pieces (mm)", "45 mm"),
        Property("PieceBolts", "Length", "Diameter of the holes for bolts (mm)", "6.5 mm"),
        Property("BoltSpacing", "Length", "Largest distance between bolts (mm)", "150 mm"),
        Property("ShownApart", "Length", "Gap between the pieces on the screen (mm)", "20 mm"),
    )
    reports = (
        Property("Volume", "Volume", "Volume of the body (mm³)"),
        Property(
            "LargestDeviation",
            "Length",
            "Largest distance of the working area from the wanted surface, the chord of the "
            "triangles included (mm)",
        ),
        Property(
            "FarthestFromPart",
            "Length",
            "Largest distance of the printed working area from the part's faces (mm)",
        ),
        Property("LeastWall", "Length", "Least wall measured; 0 for a solid body (mm)"),
        Property(
            "Printing",
            "String",
            "Plastic and time before cutting, with the formula and the printer's card",
        ),
        Property("Compensations", "StringList", "What is allowed for: size and place"),
        Property(
            "Pieces",
            "StringList",
            "Each piece: the direction in which the part leaves it, volume (cm³)",
        ),
        Property("PartingLines", "StringList", "Lines between pieces: length (mm) and course"),
        Property("Remarks", "StringList", "What was allowed for, and what is not done"),
    )

    def inputs(self, obj):
        face = fresh_result(obj.Face, "a Moulded Face", obj.Label)
        laminate = fresh_result(obj.Layup, "a Layup", obj.Label)
        shrinkage = obj.PrintShrinkage
        inside = Inside(
            build=MouldBuild(obj.Build),
            wall=obj.Wall.Value,
            rib_spacing=obj.RibSpacing.Value,
            rib_thickness=obj.RibThickness.Value,
            bottom=obj.Bottom.Value,
        )
        edge = Edge(
            flange=obj.Flange.Value,
            blend=obj.FlangeBlend.Value,
            cloth_margin=obj.ClothMargin.Value,
            pry_pockets=obj.PryPockets,
            air_port=obj.AirPort.Value,
            bolt_holes=obj.BoltHoles.Value,
            inscription=obj.Inscription,
        )
        allowances = Allowances(
            coats=obj.Coats.Value,
            expansion=1e-6 * obj.PlasticExpansion,
            warming=obj.Warming,
            closing=0.01 * obj.BendsClose or closing_share(laminate, _ROOM - obj.SetTemperature),
            left_out=tuple(choice(Allowance, name, "LeftOut") for name in obj.LeftOut),
            spring_in=SpringInUse(obj.SpringIn),
        )
        settings = MouldSettings(
            run_off=obj.RunOff.Value,
            base=obj.BaseHeight.Value,
            scribe_depth=obj.ScribeDepth.Value,
            scribe_width=obj.ScribeWidth.Value,
            shrinkage=(shrinkage.x / 100.0, shrinkage.y / 100.0, shrinkage.z / 100.0),
            inside=inside,
            edge=edge,
            allowances=allowances,
            feet=Feet(obj.Feet, obj.FootHeight.Value, obj.FootDiameter.Value),
            pieces=PieceSettings(
                most_pieces=obj.MostPieces or None,
                least_draft=math.radians(obj.PieceDraft.Value) or None,
                flange=obj.PieceFlange.Value,
                bolt_diameter=obj.PieceBolts.Value,
                bolt_spacing=obj.BoltSpacing.Value,
            ),
        )
        if obj.MarkedDatum is not None:
            patterns = fresh_result(obj.MarkedDatum, "Cloth Patterns", obj.Label)
            settings = with_marked_datum(settings, face, patterns)
        settings = with_printer(settings, preferences.printer(obj.Printer))
        if obj.Release is not None:
            settings = with_release(settings, _release_settings(obj.Release, obj.Label))
        return face, buildup_of(laminate), settings

    def show(self, obj, result):
        obj.Mesh = bridge.mesh_from_solids(result.apart(obj.ShownApart.Value))
        obj.Volume = result.volume
        face = obj.Face.Proxy.kept(obj.Face)
        obj.LargestDeviation = face.deviation + result.largest_deviation
        obj.FarthestFromPart = result.largest_from_cad
        obj.LeastWall = result.least_wall or 0.0
        obj.Printing = result.plastic.formula
        obj.Compensations = [
            f"{item.name}: {item.size:.3g} {item.unit}, {item.where}"
            for item in result.compensations
        ]
        obj.Pieces = [_piece_line(piece) for piece in result.pieces]
        obj.PartingLines = [
            f"piece {line.pieces[0] + 1} to {line.pieces[1] + 1}: {line.length:.0f} mm, "
            f"{100.0 * line.along_sharp:.0f} % along edges, "
            f"{100.0 * line.along_silhouette:.0f} % along silhouettes"
            for line in result.lines
        ]
        obj.Remarks = list(result.remarks)

    def onChanged(self, obj, name):
        """Move the shown pieces at once; the mould itself stays."""
        if name == "ShownApart" and "Digest" in obj.PropertiesList and obj.Digest:
            kept = self.kept(obj)
            if kept is not None and kept.pieces:
                obj.Mesh = bridge.mesh_from_solids(kept.apart(obj.ShownApart.Value))


def _release_settings(check, owner):
    """Return what a linked Release Check asks for."""
    if not isinstance(getattr(check, "Proxy", None), ReleaseCheckObject):
        raise InputError(owner, check.Label, "a Release Check", "link a Release Check to it")
    return check.Proxy.settings(check)


def _piece_line(piece):
    x, y, z = (round(part, 3) + 0.0 for part in piece.pull)
    return f"{piece.name}: leaves along ({x:g}, {y:g}, {z:g}), {piece.volume / 1000.0:.0f} cm³"
