"""Job Sheet: everything on printed sheets, and the files of the job."""

from pathlib import Path

from freecad.laywright.objects.base import Property, StageObject, fresh_result
from laywright.errors import InputError
from laywright.job.job import JobResult
from laywright.job.outputs import freshness
from laywright.job.sheet import make_job_sheet
from laywright.shop.traveller import JobSheet

__all__ = ["JobSheetObject", "job_result"]

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


class JobSheetObject(StageObject):
    """The sheets; says whether the files that were written still fit the job."""

    stage = make_job_sheet
    result_type = JobSheet
    icon = "job_sheet.svg"
    properties = (
        Property("Title", "String", "Name of the job, printed on every sheet", "Job"),
        *(Property(name, "Link", f"{what[0].upper()}{what[1:]} to print") for name, what in _LINKS),
        Property("Paper", "Enumeration", "Paper of the printed sheets", ["A4", "Letter"]),
        Property("Folder", "Path", "Folder that the files were last written to"),
    )
    reports = (
        Property("Version", "String", "Code that every sheet and file of this state carries"),
        Property("Files", "String", "Whether the written files fit the present job"),
    )

    def inputs(self, obj):
        results = [fresh_result(getattr(obj, name), what, obj.Label) for name, what in _LINKS]
        return (obj.Title, *results)

    def compute(self, obj, previous, inputs, progress):
        return self.stage.renew(previous, *inputs)

    def show(self, obj, result):
        obj.Version = result.digest[:8]

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
    face, release, laminate, body, tiles, patterns, roll, shop = results
    return JobResult(obj.Title, face, release, laminate, body, tiles, patterns, roll, shop, sheet)
