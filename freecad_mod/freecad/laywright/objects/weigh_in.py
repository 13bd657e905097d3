"""Weigh-in: what was really made, beside the plan that it was made by.

A part that was accepted or rejected keeps the plan of its day, however the job goes on.
"""

from datetime import date
from pathlib import Path

from freecad.laywright.objects.base import Property, StageObject, fresh_result
from laywright.errors import InputError
from laywright.job.links import ply_cloths
from laywright.job.records import Acceptance, RecordFile, cloth_readings, write_record
from laywright.shop.record.hardness import HardnessScale
from laywright.shop.record.readings import Readings
from laywright.shop.record.weighed_part import WeighedPart, weigh_part

__all__ = ["NOT_WEIGHED", "WeighInObject", "keep_record", "record_file"]

NOT_WEIGHED = "not weighed yet: cloth, mix and part are needed"


class WeighInObject(StageObject):
    """Readings of scale, calliper, clock and thermometer; mass balance and fibre content."""

    stage = weigh_part
    result_type = WeighedPart
    icon = "weigh_in.svg"
    properties = (
        Property("Sheet", "Link", "The Job Sheet that the part was made by"),
        Property("Date", "String", "Date of the layup, such as 2026-11-25"),
        Property(
            "PieceMasses",
            "FloatList",
            "Dry cloth, one weight for each piece in the order of the page 'Cut cloth' (g)",
        ),
        Property("DryCloth", "Float", "All dry cloth, 0 for the sum of the pieces (g)", 0.0),
        Property("MixMade", "Float", "All resin and hardener that was mixed (g)", 0.0),
        Property("PartUntrimmed", "Float", "The cured part before it is trimmed (g)", 0.0),
        Property("PartTrimmed", "Float", "The part after it is trimmed, 0 if not weighed (g)", 0.0),
        Property("LeftOver", "Float", "Mix left in cups and tools, -1 if not weighed (g)", -1.0),
        Property("Thicknesses", "FloatList", "Thickness at several places, away from laps (mm)"),
        Property("Hardness", "FloatList", "Hardness at several places of the cured part"),
        Property(
            "HardnessScale",
            "Enumeration",
            "Gauge of the hardness",
            [scale.value for scale in HardnessScale],
        ),
        Property("FullHardness", "Float", "Of the fully cured resin by its maker, 0 if unknown"),
        Property("Temperature", "Float", "Temperature of the shop, 0 if not read (°C)", 0.0),
        Property("Humidity", "Float", "Relative humidity of the shop, 0 if not read (%)", 0.0),
        Property("LayingTime", "Float", "From the first stir to the last ply, 0 if not read (min)"),
        Property("GelTime", "Float", "From the first stir until it gelled, 0 if not read (h)"),
        Property("DemouldTime", "Float", "Until it left the mould, 0 if not read (h)"),
        Property("Notes", "StringList", "Batch numbers, leaks, dry spots, who did it"),
        Property(
            "Acceptance",
            "Enumeration",
            "Whether the part was taken as good; accepted ones teach the next plan",
            [choice.value for choice in Acceptance],
        ),
    )
    reports = (
        Property("Version", "String", "Version of the job that the part was made by"),
        Property("Verdict", "String", "Mass of the part against the plan"),
        Property("ResinShare", "Float", "Resin in the laminate, by mass (%)"),
        Property("FibreByMass", "Float", "Fibre volume from the masses (%)"),
        Property("FibreByThickness", "Float", "Fibre volume from the thickness (%)"),
        Property("Voids", "Float", "Air in the laminate, from both (%)"),
        Property("Lost", "Float", "Mix that is not in the part (g)"),
        Property("Planned", "StringList", "Planned and made, side by side"),
        Property("Cloths", "StringList", "Areal weight of each cloth, card and scale (g/m²)"),
        Property("Remarks", "StringList", "What follows from it"),
        Property("File", "String", "Where the record was written last"),
    )

    def __init__(self, obj):
        super().__init__(obj)
        if not obj.Date:
            obj.Date = date.today().isoformat()

    def inputs(self, obj):
        laminate, shop, pieces = self._plan(obj)
        readings = Readings(
            obj.DryCloth or sum(obj.PieceMasses),
            obj.MixMade,
            obj.PartUntrimmed,
            tuple(obj.Thicknesses),
            cloth_readings(pieces, list(obj.PieceMasses)),
            trimmed_g=obj.PartTrimmed or None,
            left_g=None if obj.LeftOver < 0.0 else obj.LeftOver,
            temperature_c=obj.Temperature or None,
            laying_minutes=obj.LayingTime or None,
            gel_hours=obj.GelTime or None,
            demould_hours=obj.DemouldTime or None,
            date=obj.Date,
            humidity=obj.Humidity or None,
            hardness=tuple(obj.Hardness),
            hardness_scale=HardnessScale(obj.HardnessScale),
            hardness_full=obj.FullHardness or None,
            notes=tuple(obj.Notes),
        )
        return laminate, shop, readings, pieces

    def _plan(self, obj):
        """Return laminate, shop plan and pieces: of the job, or those kept with the part."""
        kept = self.kept(obj)
        if kept is not None and obj.Acceptance != Acceptance.OPEN.value:
            return kept.laminate, kept.shop, kept.pieces
        fresh_result(obj.Sheet, "a Job Sheet", obj.Label)
        laminate = fresh_result(obj.Sheet.Layup, "a Layup", obj.Label)
        shop = fresh_result(obj.Sheet.MixCure, "a Mix & Cure Plan", obj.Label)
        patterns = fresh_result(obj.Sheet.Patterns, "Cloth Patterns", obj.Label)
        return laminate, shop, ply_cloths(patterns, laminate)

    def execute(self, obj):
        """Say what is missing as long as nothing was weighed; that is no error."""
        if not self._is_weighed(obj):
            if obj.Status != NOT_WEIGHED:
                obj.Status = NOT_WEIGHED
            return
        super().execute(obj)
        if obj.Acceptance == Acceptance.OPEN.value and obj.Version != obj.Sheet.Version:
            obj.Version = obj.Sheet.Version

    @staticmethod
    def _is_weighed(obj):
        cloth = obj.DryCloth or sum(obj.PieceMasses)
        return cloth > 0.0 and obj.MixMade > 0.0 and obj.PartUntrimmed > 0.0

    def show(self, obj, result):
        record = result.record
        obj.Verdict = (
            f"{record.verdict.value}: {record.part_g:.0f} g, planned "
            f"{record.planned_part_g:.0f} g, good work by hand {record.least_g:.0f} to "
            f"{record.most_g:.0f} g"
        )
        obj.ResinShare = 100.0 * record.resin_share
        obj.FibreByMass = 100.0 * record.fraction_by_mass
        obj.FibreByThickness = 100.0 * (record.fraction_by_thickness or 0.0)
        obj.Voids = 100.0 * (record.void_share or 0.0)
        obj.Lost = record.lost_g
        obj.Planned = [
            f"{line.what}: {_number(line.made)} {line.unit}, planned {_number(line.planned)}"
            for line in record.lines
        ]
        obj.Cloths = [
            f"{cloth.cloth}: {cloth.weighed:.0f} weighed, {cloth.written:.0f} on its card"
            for cloth in record.cloths
        ]
        obj.Remarks = list(record.remarks)


def _number(value):
    return "-" if value is None else f"{value:.4g}"


def record_file(obj):
    """Return the record of a Weigh-in as it is kept in a file.

    Raises
    ------
    InputError
        If nothing was weighed, or the readings do not hold.
    """
    part = obj.Proxy.kept(obj)
    if part is None or obj.Status != "up to date":
        raise InputError(obj.Label, obj.Status, "readings that hold", "complete the weigh-in")
    return RecordFile(
        obj.Sheet.Title if obj.Sheet is not None else obj.Label,
        obj.Version,
        Acceptance(obj.Acceptance),
        part.readings,
        part.record,
        part.laminate.layup.process.value,
    )


def keep_record(obj, folder):
    """Write the record of a Weigh-in into a folder as a dated file and return its path."""
    path = write_record(record_file(obj), Path(folder))
    obj.File = str(path)
    return path
