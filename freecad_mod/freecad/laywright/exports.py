"""Write the files of a job; also for scripts: ``export_job(job, folder)``."""

from dataclasses import replace
from pathlib import Path

from freecad.laywright import host
from freecad.laywright.objects.job import stages_of
from freecad.laywright.objects.job_sheet import job_result
from freecad.laywright.staleness import stale, why_stale
from laywright.errors import InputError
from laywright.files.decimal_mark import DecimalMark, marked
from laywright.files.paper import paper_of
from laywright.job.outputs import files_of, write_files

__all__ = ["export_job"]


def export_job(job, folder):
    """Write every file of a job into a folder.

    Parameters
    ----------
    job : DocumentObject
        The job's group.
    folder : path
        Where to; made if it is not there.

    Returns
    -------
    list of Path
        What was written.

    Raises
    ------
    InputError
        If the job has no Job Sheet or a stage is out of date.
    FileError
        If a file cannot be written.
    Cancelled
        If the person stops it; nothing is written then.
    """
    stages = stages_of(job)
    sheet = stages.get("JobSheet")
    if sheet is None:
        raise InputError(job.Label, "no Job Sheet", "a Job Sheet", "add one to the job")
    for obj in stale(stages.values()):
        raise InputError(
            obj.Label,
            why_stale(obj) or "a result that is out of date",
            "one that is up to date",
            "bring the job up to date first",
        )
    result, paper = _as_printed(sheet), paper_of(sheet.Paper)
    files = host.run(f"{job.Label}: files", lambda progress: files_of(result, paper))
    written = write_files(files, Path(folder))
    sheet.Folder = str(folder)
    sheet.Proxy.show_freshness(sheet)
    return written


def _as_printed(sheet):
    """Return the whole job's result, its sheet with the wanted decimal mark."""
    result = job_result(sheet)
    pages = marked(result.sheet.sheet, DecimalMark(sheet.DecimalMark))
    return replace(result, sheet=replace(result.sheet, sheet=pages))
