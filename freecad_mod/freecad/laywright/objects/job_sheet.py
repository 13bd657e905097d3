"""Job Sheet: everything on printed sheets, and the files of the job."""

from pathlib import Path

from freecad.laywright import preferences
from freecad.laywright.objects.base import Property, StageObject, choices, fresh_result
from freecad.laywright.objects.layup import loading_of
from laywright.errors import InputError
from laywright.files.decimal_mark import DecimalMark
from laywright.job.analysis import AnalysisSettings, EdgeHold
from laywright.job.job import JobResult
from laywright.job.outputs import freshness
from laywright.job.sheet import make_job_sheet
from laywright.shop.bench.bag import BagSettings, BagStyle
from laywright.shop.bench.bench import BenchSettings, TrimGuide
from laywright.shop.bench.bench_supplies import USUAL_SUPPLIES, supplies_at_hand, supplies_of
from laywright.shop.bench.release_coats import CoatingSettings, MouldState, ReleaseAgent
from laywright.shop.bench.shopping import read_prices
from laywright.shop.bench.strips import StripSettings
from laywright.shop.bench.timeline import WorkingDay, clock_text
from laywright.shop.sheet.traveller import JobSheet

__all__ = ["JobSheetObject", "job_result"]

# In the order of the core's `JobResult`
_LINKS = (
    ("Face", "a Moulded Face"),
    ("Release", "a Release Check"),
    ("Layup", "a Layup"),
    ("Body", "a Mould Body"),
    ("Tiles", "Print Tiles"),
    ("Patterns", "Cloth Patterns"),
    ("Roll", "a Roll Plan"),
    ("MixCure", "a Mix & Cure Plan"),
)

_NO_SHELL = "not written"

# Property of each supply that is taken from a card, and what it is.
_SUPPLIES = {
    "Wax": ("wax", "Wax by its card"),
    "ReleaseFilm": ("film", "Film that is sprayed over the wax, by its card"),
    "ReleaseTape": ("tape", "Release tape by its card"),
    "PeelPly": ("peel_ply", "Peel ply by its card"),
    "PerforatedFilm": ("release_film", "Release film over the peel ply, by its card"),
    "Breather": ("breather", "Breather by its card"),
    "FlowMesh": ("flow_mesh", "Flow mesh by its card"),
    "BagFilm": ("bag_film", "Bag film by its card"),
    "SealantTape": ("sealant_tape", "Sealant tape by its card"),
}


def _cards_for(place):
    return lambda: supplies_at_hand(preferences.materials(), place)


class JobSheetObject(StageObject):
    """The sheets; says whether the files that were written still fit the job."""

    stage = make_job_sheet
    result_type = JobSheet
    icon = "job_sheet.svg"
    properties = (
        Property("Title", "String", "Name of the job, printed on every sheet", "Job"),
        *(Property(name, "Link", f"{what[0].upper()}{what[1:]} to print") for name, what in _LINKS),
        Property("Paper", "Enumeration", "Paper of the printed sheets", ["A4", "Letter", "A3"]),
        Property(
            "DecimalMark",
            "Enumeration",
            "What stands between whole and fraction on printed sheets; tables for other programs "
            "keep the point",
            choices(DecimalMark),
        ),
        Property("Folder", "Path", "Folder that the files were last written to"),
        Property(
            "ReleaseAgent",
            "Enumeration",
            "What keeps the part from sticking",
            choices(ReleaseAgent),
        ),
        Property("MouldUse", "Enumeration", "How often the mould was used", choices(MouldState)),
        *(
            Property(name, "String", doc, USUAL_SUPPLIES[place], choices=_cards_for(place))
            for name, (place, doc) in _SUPPLIES.items()
        ),
        Property("TapeWidth", "Length", "Width of release tape (mm)", "50 mm"),
        Property("BagClosed", "Enumeration", "Where a bag is closed", choices(BagStyle)),
        Property("People", "Integer", "Hands at the mould", 1),
        Property("DayBegins", "String", "Work begins, such as 08:00", "08:00"),
        Property("DayEnds", "String", "Work ends", "20:00"),
        Property("Parts", "Integer", "Number of parts that share what is paid once", 1),
        Property(
            "Prices", "StringList", "Your own prices, a line such as: Peel ply = 4.20 per m^2"
        ),
        Property("Currency", "String", "Printed beside the cost"),
        Property("TrimGuide", "Enumeration", "What is printed to trim by", choices(TrimGuide)),
        Property(
            "ShellFile",
            "Enumeration",
            "Layered shell of the part for a finite-element solver among the written files, and "
            "how its edge is held in its first load case",
            [_NO_SHELL, *choices(EdgeHold)],
        ),
        Property(
            "ShellPressure",
            "Float",
            "Pressure on that shell, positive away from the mould (kPa)",
            1.0,
        ),
        Property("ShellElements", "Integer", "About how many elements that shell has", 1500),
    )
    reports = (
        Property("Version", "String", "Code that every sheet and file of this state carries"),
        Property("Files", "String", "Whether the written files fit the present job"),
        Property("Finish", "String", "When all is done, at the earliest"),
        Property("Work", "Float", "Hands-on time without printing (h)"),
        Property("CostPerPart", "Float", "Cost of one part, as far as there are prices"),
        Property("TrimLine", "Length", "Length of the trim line (mm)"),
        Property("Clock", "StringList", "What begins when"),
        Property("Shopping", "StringList", "What is bought"),
        Property("Remarks", "StringList", "What to watch"),
    )

    def inputs(self, obj):
        results = [fresh_result(getattr(obj, name), what, obj.Label) for name, what in _LINKS]
        settings = BenchSettings(
            coating=CoatingSettings(ReleaseAgent(obj.ReleaseAgent), MouldState(obj.MouldUse)),
            strips=StripSettings(width=obj.TapeWidth.Value),
            bag=BagSettings(style=BagStyle(obj.BagClosed)),
            day=WorkingDay(obj.DayBegins, obj.DayEnds),
            people=obj.People,
            parts=obj.Parts,
            prices=read_prices(obj.Prices),
            currency=obj.Currency,
            trim_guide=TrimGuide(obj.TrimGuide),
            shelf=supplies_of(
                preferences.materials(),
                {place: getattr(obj, name) for name, (place, _) in _SUPPLIES.items()},
            ),
        )
        return (obj.Title, *results, settings, loading_of(obj.Layup))

    def show(self, obj, result):
        bench = result.bench
        obj.Version = result.digest[:8]
        obj.Finish = bench.timeline.finish
        obj.Work = bench.timeline.hands_minutes / 60.0
        obj.CostPerPart = bench.shopping.per_part
        obj.TrimLine = bench.trim.line_mm
        obj.Clock = [
            f"{clock_text(entry.start_minutes)}: {entry.what}" for entry in bench.timeline.entries
        ]
        obj.Shopping = [
            f"{line.item}: {line.amount:g} {line.unit}" for line in bench.shopping.lines
        ]
        obj.Remarks = list(bench.remarks)

    def execute(self, obj):
        super().execute(obj)
        self.show_freshness(obj)

    def show_freshness(self, obj):
        """Say whether the files in the folder were made from the present state."""
        stale = freshness(Path(obj.Folder), job_result(obj).digests) if obj.Folder else None
        if stale is None:
            text = "not written yet"
        elif stale:
            text = f"out of date: {', '.join(stale)} changed since they were written"
        else:
            text = "up to date"
        if obj.Files != text:
            obj.Files = text


def _analysis_of(obj):
    """Return how the part is handed over to a finite-element solver, None for not at all."""
    if obj.ShellFile == _NO_SHELL:
        return None
    return AnalysisSettings(obj.ShellElements, obj.ShellPressure / 1000.0, EdgeHold(obj.ShellFile))


def job_result(obj):
    """Return the whole job's result, gathered from the stages that a Job Sheet links.

    Raises
    ------
    InputError
        If a stage is out of date.
    """
    results = [fresh_result(getattr(obj, name), what, obj.Label) for name, what in _LINKS]
    sheet = obj.Proxy.kept(obj)
    if sheet is None:
        raise InputError(obj.Label, "no result", "a result that is up to date", "recompute it")
    return JobResult(obj.Title, *results, sheet, _analysis_of(obj))
