"""Cloth Patterns: the flat pattern of every ply."""

import math
from dataclasses import replace

from freecad.laywright import bridge
from freecad.laywright.objects.base import Property, StageObject, fresh_result
from laywright.cloth.cuts.cut_text import cut_from_text, laid_cut_text
from laywright.cloth.cuts.cuts import Answer, CutSettings, Propose
from laywright.cloth.drape.datum import Datum
from laywright.cloth.drape.fabric import Sheeting
from laywright.cloth.drape.start_search import FindStart
from laywright.cloth.patterns.margins import side_margin
from laywright.cloth.patterns.pattern import PatternSet, PatternSettings, make_patterns
from laywright.errors import InputError
from laywright.job.sections import choice
from laywright.job.zones import zones_of

__all__ = ["ClothPatternsObject"]

_BESIDE = 30.0
_ROUGHLY = 1.2
_COARSE = 1200  # triangles
_GIVEN = "point and direction below"
_EDGE = "picked edge"


class ClothPatternsObject(StageObject):
    """Patterns with margin, datum arrow and labels, laid out beside each other."""

    stage = make_patterns
    result_type = PatternSet
    host_type = "Part::FeaturePython"
    icon = "cloth_patterns.svg"
    properties = (
        Property("Face", "Link", "The Moulded Face that the cloth covers"),
        Property("Layup", "Link", "The Layup whose plies are cut"),
        Property("Margin", "Length", "Cloth beyond the trim line on every side (mm)", "20 mm"),
        Property(
            "SideMargins",
            "StringList",
            "Margin of a side where it differs, seen along the datum arrow, such as ahead: 40 mm; "
            "also left, behind, right and holes",
        ),
        Property(
            "AlsoCut",
            "StringList",
            "Plain sheets that are cut besides and laid over the last ply, one on each line: "
            + ", ".join(f"'{sheet.value}'" for sheet in Sheeting),
        ),
        Property(
            "DatumFrom",
            "Enumeration",
            "Where the datum arrow comes from",
            [FindStart.MIDDLE.value, _GIVEN, _EDGE, FindStart.LEAST_SHEAR.value],
        ),
        Property("DatumPoint", "Vector", "Point of the datum arrow on the face (mm)"),
        Property("DatumDirection", "Vector", "Direction of the arrow", bridge.vector((1, 0, 0))),
        Property(
            "DatumEdge",
            "LinkSubGlobal",
            "Edge of the part from whose middle the cloth is laid, the datum arrow along it",
        ),
        Property(
            "WherePastLimits",
            "Enumeration",
            "What to do where the cloth would shear or stretch past its limits",
            [choice.value for choice in Propose],
        ),
        Property(
            "Cuts",
            "StringList",
            "Cuts to make, each as in ProposedCuts; add 'refused' to one that you do not want",
        ),
        Property("Lap", "Length", "Width of a lap along a cut (mm)", "25 mm"),
        Property("Stagger", "Length", "Distance kept by cuts of plies near by (mm)", "25 mm"),
    )
    reports = (
        Property("Count", "Integer", "Number of patterns"),
        Property("Patterns", "StringList", "Each pattern with its area (m²) and largest shear"),
        Property("Sheets", "StringList", "Plain sheets that are cut besides, with their area (m²)"),
        Property("LargestShear", "Angle", "Largest shear of any ply (degrees)"),
        Property("CutArea", "Area", "Area of all patterns (mm²)"),
        Property("StartPoint", "Vector", "Where the cloth is laid first (mm)"),
        Property("StartDirection", "Vector", "Direction of the datum arrow there"),
        Property(
            "Zones",
            "StringList",
            "Where local plies lie: the plies of each zone, its area, thickness and mass",
        ),
        Property("ProposedCuts", "StringList", "Cuts that are proposed, points in mm"),
        Property("MadeCuts", "StringList", "Cuts that are made, points in mm"),
        Property("Remarks", "StringList", "Where the cloth will not lie down by itself"),
    )

    def inputs(self, obj):
        face = fresh_result(obj.Face, "a Moulded Face", obj.Label)
        laminate = fresh_result(obj.Layup, "a Layup", obj.Label)
        cuts = CutSettings(
            cuts=tuple(cut_from_text(line) for line in obj.Cuts),
            propose=Propose(obj.WherePastLimits),
            lap=obj.Lap.Value,
            stagger=obj.Stagger.Value,
        )
        margins = dict(side_margin(text) for text in obj.SideMargins)
        datum = _datum_of(obj)
        find = FindStart.MIDDLE if datum is not None else FindStart(obj.DatumFrom)
        settings = PatternSettings(
            margin=obj.Margin.Value,
            margins=margins,
            find=find,
            also_cut=tuple(choice(Sheeting, name, "AlsoCut") for name in obj.AlsoCut),
        )
        return face, laminate, datum, settings, cuts

    def coarse(self, inputs):
        face, laminate, datum, settings, cuts = inputs
        few = replace(settings, triangles=min(_COARSE, settings.triangles), find=FindStart.MIDDLE)
        return face, laminate, datum, few, replace(cuts, propose=Propose.NOTHING)

    def places(self, patterns):
        """Return where the zero of every pattern lies, in rows that make a near square: (x, y)."""
        sizes = [
            pattern.cut.max(axis=0) - pattern.cut.min(axis=0) + _BESIDE for pattern in patterns
        ]
        across = max(math.sqrt(sum(x * y for x, y in sizes)), *(x for x, _ in sizes), 0.0)
        found, along, up, row = [], 0.0, 0.0, 0.0
        for pattern, (width, height) in zip(patterns, sizes, strict=True):
            if along > 0.0 and along + width > across * _ROUGHLY:
                along, up, row = 0.0, up + row, 0.0
            low = pattern.cut.min(axis=0)
            found.append((along - low[0], up - low[1]))
            along, row = along + width, max(row, height)
        return found

    def take_proposed(self, obj):
        """Accept the proposed cuts: they become cuts to make."""
        obj.Cuts = [*obj.Cuts, *(line for line in obj.ProposedCuts if line not in obj.Cuts)]

    def refuse_proposed(self, obj):
        """Refuse the proposed cuts: they are listed as refused, and others are looked for."""
        refused = [f"{line}, {Answer.REFUSED.value}" for line in obj.ProposedCuts]
        obj.Cuts = [*obj.Cuts, *(line for line in refused if line not in obj.Cuts)]

    def show(self, obj, result):
        outlines = []
        every = (*result.patterns, *result.sheets)
        for pattern, place in zip(every, self.places(every), strict=True):
            closed = (pattern.cut, *pattern.openings, pattern.trim, *pattern.holes)
            outlines += [(line, True, place) for line in closed]
            outlines += [(line, False, place) for line in (*pattern.slits, *pattern.laps)]
        obj.Shape = bridge.lines_from_outlines(outlines)
        obj.Count = len(result.patterns)
        obj.Patterns = [
            f"{p.name}: {p.cloth}, {math.degrees(p.angle):g}°, {p.area / 1e6:.4f} m², "
            f"largest shear {math.degrees(p.largest_shear):.1f}°"
            for p in result.patterns
        ]
        obj.LargestShear = math.degrees(max(p.largest_shear for p in result.patterns))
        obj.Sheets = [f"{sheet.name}: {sheet.area / 1e6:.4f} m²" for sheet in result.sheets]
        obj.CutArea = sum(p.area for p in result.patterns)
        obj.StartPoint = bridge.vector(result.datum.origin)
        obj.StartDirection = bridge.vector(result.datum.direction)
        laminate = obj.Layup.Proxy.kept(obj.Layup)
        obj.Zones = [
            f"plies {', '.join(map(str, zone.plies))}: {zone.area / 100.0:.1f} cm², "
            f"{zone.thickness:.2f} mm, {zone.mass:.1f} g"
            for zone in zones_of(laminate, result)
        ]
        proposed = [cut for found in result.proposals for cut in found.cuts]
        obj.ProposedCuts = [laid_cut_text(cut) for cut in proposed]
        obj.MadeCuts = [laid_cut_text(cut) for ply in result.draped for cut in ply.cuts]
        obj.Remarks = list(result.remarks)


def _datum_of(obj):
    """Return the datum where a person sets it, None where it is found."""
    if obj.DatumFrom == _GIVEN:
        return Datum(tuple(obj.DatumPoint), tuple(obj.DatumDirection))
    if obj.DatumFrom == _EDGE:
        if obj.DatumEdge is None:
            raise InputError("datum edge", "none", "an edge of the part", "pick one")
        part, names = obj.DatumEdge
        return Datum(*bridge.edge_arrow(bridge.placed_shape(part), names[0]))
    return None
