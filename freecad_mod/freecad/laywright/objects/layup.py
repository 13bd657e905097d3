"""Layup: the plies, from the mould outwards, and the laminate that they make."""

import math
from dataclasses import replace
from itertools import zip_longest

from freecad.laywright import preferences
from freecad.laywright.objects.base import Property, StageObject, choices
from laywright.errors import InputError
from laywright.job.load_page import load_words
from laywright.laminate.card_files import card_text, parse_card
from laywright.laminate.criteria import Criterion
from laywright.laminate.drop_off import drop_off_words
from laywright.laminate.extents import extent_from_text
from laywright.laminate.knock_downs import usual_knock_downs
from laywright.laminate.laminate import Laminate, analyse
from laywright.laminate.loading import Loading
from laywright.laminate.loads import LoadCase, Patch
from laywright.laminate.materials import Materials
from laywright.laminate.plate import Plate, Support
from laywright.laminate.plies import DropOff, Process
from laywright.laminate.used_cards import NamedCore, NamedPly, layup_of

__all__ = ["COUNTED", "LOADS", "LayupObject", "kept_cards", "loading_of"]

_PULLS = ("PullAlong", "PullAcross", "PullShear")
_BENDS = ("BendAlong", "BendAcross", "BendTwist")
_THROUGH = ("ThroughAlong", "ThroughAcross")
LOADS = (*_PULLS, *_BENDS, *_THROUGH, "PressedForce")
COUNTED = {
    "tension": "TensionCounted",
    "compression": "CompressionCounted",
    "shear": "ShearCounted",
    "core": "CoreCounted",
}


class LayupObject(StageObject):
    """Plies by cloth and angle, resin, process and core; the laminate's figures come out."""

    stage = analyse
    result_type = Laminate
    icon = "layup.svg"
    properties = (
        Property("Cloths", "StringList", "Cloth of each ply by its card; ply 1 touches the mould"),
        Property(
            "Angles",
            "FloatList",
            "Angle of each ply's warp from the datum arrow (degrees), counter-clockwise seen "
            "from the side away from the mould",
        ),
        Property(
            "Extents",
            "StringList",
            "What each ply covers: a line for each, empty for the whole face, or such as "
            "'30 mm round 10, 20, 5', '25 mm along the edge', 'faces Face3, Face5'; lines may be "
            "left out at the end",
        ),
        Property(
            "DropOff",
            "Length",
            "By how much each further ply of the same extent ends off the one before; 0 for what "
            "is usual, 20 times its thickness and at least 6 mm (mm)",
        ),
        Property(
            "DropWay",
            "Enumeration",
            "Whether further plies of the same extent end further in or out",
            choices(DropOff),
        ),
        Property("Resin", "String", "Resin system by its card"),
        Property("Process", "Enumeration", "How it is laid up", choices(Process)),
        Property(
            "ResinShare",
            "Percent",
            "Resin with hardener as a share of the laminate's mass, 0 for the usual share of the "
            "process (%)",
            0,
        ),
        Property("VoidShare", "Float", "Air as a share of the laminate's volume (%)", 0.0),
        Property("Core", "String", "Core between two plies by its card, empty for none"),
        Property("CoreThickness", "Length", "Thickness of the core (mm)", "5 mm"),
        Property("CoreOnPly", "Integer", "Number of the ply that the core lies on", 1),
        Property("PullAlong", "Float", "Load: pull along the datum arrow, per width (N/mm)", 0.0),
        Property("PullAcross", "Float", "Load: pull across the datum arrow, per width (N/mm)", 0.0),
        Property("PullShear", "Float", "Load: shear in the plane, per width (N/mm)", 0.0),
        Property(
            "BendAlong",
            "Float",
            "Load: moment per width that bends along the datum arrow, the far side stretched (N)",
            0.0,
        ),
        Property(
            "BendAcross",
            "Float",
            "Load: moment per width that bends across the datum arrow, the far side stretched (N)",
            0.0,
        ),
        Property("BendTwist", "Float", "Load: twisting moment per width (N)", 0.0),
        *(
            Property(
                name,
                "Float",
                f"Load: shear through the thickness when it is bent {where} the datum arrow, per "
                "width, by which a core is judged (N/mm)",
                0.0,
            )
            for name, where in zip(_THROUGH, ("along", "across"), strict=True)
        ),
        Property(
            "PressedForce",
            "Float",
            "Load: force that presses on a small patch, by which a core is judged (N)",
            0.0,
        ),
        Property("PressedArea", "Float", "Size of that patch (mm²)", 100.0),
        Property("Criterion", "Enumeration", "Rule by which a ply is judged", choices(Criterion)),
        *(
            Property(
                name,
                "Percent",
                f"Share of the cards' strength in {what} that is counted on, 0 for the usual "
                "share of the process (%)",
                0,
            )
            for what, name in COUNTED.items()
        ),
        Property(
            "PanelLength",
            "Length",
            "Quick estimate of a flat panel: its length along the datum arrow, 0 for none (mm)",
            "0 mm",
        ),
        Property("PanelWidth", "Length", "Its width across the datum arrow (mm)", "0 mm"),
        Property("PanelEdges", "Enumeration", "How all its edges are held", choices(Support)),
        Property(
            "PanelPressure", "Float", "Pressure on it, positive away from the mould (kPa)", 1.0
        ),
        Property(
            "PanelPush",
            "Float",
            "Force per width that presses it along the datum arrow, under which it may buckle "
            "(N/mm)",
            0.0,
        ),
        Property(
            "Cards",
            "StringList",
            "Cards of the materials in it, kept so that the job stays what it was; empty to take "
            "those of the library",
        ),
    )
    reports = (
        Property("Thickness", "Length", "Thickness of the laminate without local plies (mm)"),
        Property("ArealMass", "Float", "Mass of the laminate without local plies (g/m²)"),
        Property("FibreVolume", "Float", "Fibre volume fraction (%)"),
        Property("StiffnessAlong", "Pressure", "Modulus in plane along the datum arrow"),
        Property("StiffnessAcross", "Pressure", "Modulus in plane across the datum arrow"),
        Property("BendingAlong", "Pressure", "Modulus in bending along the datum arrow"),
        Property("BendingAcross", "Pressure", "Modulus in bending across the datum arrow"),
        Property("Remarks", "StringList", "What to know about this layup"),
        Property("UnderLoad", "String", "What fails first under the load"),
    )

    def ensure_properties(self, obj):
        super().ensure_properties(obj)
        obj.setEditorMode("Cards", 2)

    def inputs(self, obj):
        if len(obj.Cloths) != len(obj.Angles) or not obj.Cloths:
            raise InputError(
                "plies",
                f"{len(obj.Cloths)} cloths and {len(obj.Angles)} angles",
                "one cloth and one angle for each ply, one ply at least",
                "complete the list",
            )
        if len(obj.Extents) > len(obj.Cloths):
            raise InputError(
                "extents",
                f"{len(obj.Extents)} lines for {len(obj.Cloths)} plies",
                "at most one for each ply",
                "take lines away",
            )
        stored = kept_cards(obj)
        wanted = {*obj.Cloths, obj.Resin, *([obj.Core] if obj.Core else [])}
        # What is kept suffices for an old job, whatever became of the library.
        complete = wanted <= {card.name for card in stored}
        layup = layup_of(
            Materials({}, {}, {}) if complete else preferences.materials(),
            [
                NamedPly(cloth, math.radians(angle), extent=extent_from_text(extent))
                for cloth, angle, extent in zip_longest(
                    obj.Cloths, obj.Angles, obj.Extents, fillvalue=""
                )
            ],
            obj.Resin,
            Process(obj.Process),
            obj.ResinShare / 100.0 if obj.ResinShare else None,
            obj.VoidShare / 100.0,
            NamedCore(obj.Core, obj.CoreThickness.Value, obj.CoreOnPly) if obj.Core else None,
            stored,
            obj.DropOff.Value or None,
            DropOff(obj.DropWay),
        )
        loading_of(obj)  # no input of the laminate, but what is wrong with it is said as well
        return (layup,)

    def settle(self, obj, result):
        obj.Cards = [card_text(card) for card in result.layup.cards]

    def show(self, obj, result):
        obj.Thickness = result.thickness
        obj.ArealMass = result.areal_mass
        obj.FibreVolume = 100.0 * result.fibre_volume_fraction
        obj.StiffnessAlong = f"{result.in_plane.e_x} MPa"
        obj.StiffnessAcross = f"{result.in_plane.e_y} MPa"
        obj.BendingAlong = f"{result.bending.e_x} MPa"
        obj.BendingAcross = f"{result.bending.e_y} MPa"
        obj.Remarks = [*result.remarks, *result.couplings, *drop_off_words(result)]
        self._judge(obj, result)

    def execute(self, obj):
        super().execute(obj)
        self._judge(obj, self.kept(obj))

    @staticmethod
    def _judge(obj, laminate):
        """Say what fails first; the load is no input of the laminate itself."""
        loading = loading_of(obj)
        words = "" if loading is None else load_words(laminate, loading)
        if obj.UnderLoad != words:
            obj.UnderLoad = words


def kept_cards(obj):
    """Return the cards that a Layup keeps."""
    return tuple(parse_card(text, "a card kept in the document") for text in obj.Cards)


def loading_of(obj):
    """Return what the laminate of a Layup is asked to carry, None without a load."""
    pulls, bends, through = (
        tuple(getattr(obj, name) for name in names) for names in (_PULLS, _BENDS, _THROUGH)
    )
    patch = Patch(obj.PressedForce, obj.PressedArea) if obj.PressedForce else None
    load = (
        LoadCase(pulls, bends, through, patch) if any((*pulls, *bends, *through, patch)) else None
    )
    plate = None
    if obj.PanelLength.Value and obj.PanelWidth.Value:
        plate = Plate(
            obj.PanelLength.Value,
            obj.PanelWidth.Value,
            Support(obj.PanelEdges),
            obj.PanelPressure / 1000.0,
            (-obj.PanelPush, 0.0, 0.0),
        )
    if load is None and plate is None:
        return None
    return Loading(load, None, plate, Criterion(obj.Criterion), _knock_downs(obj))


def _knock_downs(obj):
    """Return the shares of the strengths that are counted on, None for those that are usual."""
    typed = {
        what: getattr(obj, name) / 100.0 for what, name in COUNTED.items() if getattr(obj, name)
    }
    return replace(usual_knock_downs(Process(obj.Process)), **typed) if typed else None
