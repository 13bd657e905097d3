"""What accepted records teach the next plan, shown before it is taken.

For scripts: ``lessons_for(job)`` says it, ``take(job, learnt, names)`` takes it.
"""

from pathlib import Path

from freecad.laywright.objects.base import fresh_result
from freecad.laywright.objects.job import stages_of
from freecad.laywright.objects.weigh_in import WeighInObject, record_file
from freecad.laywright.preferences import records_folder
from laywright.errors import InputError
from laywright.job.records import accepted_like, read_records
from laywright.shop.record.learning import learn

__all__ = ["lessons_for", "records_folder", "records_of", "take"]


def records_of(document, folder=None):
    """Return the records of a document's Weigh-ins and those of a folder, each once."""
    found = {}
    for entry in read_records(Path(folder or records_folder())):
        found[entry.record.digest] = entry
    for obj in document.Objects:
        if isinstance(getattr(obj, "Proxy", None), WeighInObject) and obj.Status == "up to date":
            entry = record_file(obj)
            found[entry.record.digest] = entry
    return tuple(found.values())


def lessons_for(job, folder=None):
    """Return what accepted records of the same process say on a job's plan.

    Raises
    ------
    InputError
        If the job has no Mix & Cure Plan or it is out of date.
    """
    stages = stages_of(job)
    plan = stages.get("MixCurePlan")
    shop = fresh_result(plan, "a Mix & Cure Plan", job.Label)
    laminate = fresh_result(stages.get("Layup"), "a Layup", job.Label)
    records = accepted_like(records_of(job.Document, folder), laminate.layup.process.value)
    settings = plan.Proxy.inputs(plan)[2]
    return learn(records, shop.mix.resin_share, settings.mix)


def take(job, learnt, names):
    """Write chosen lessons into the job's plan; it is not recomputed by this.

    Parameters
    ----------
    job : DocumentObject
    learnt : laywright.shop.record.learning.Learnt
    names : sequence of str
        Which of ``resin_share``, ``extra_share``, ``square_metre_minutes``, ``ply_minutes``.
    """
    stages = stages_of(job)
    plan, layup = stages["MixCurePlan"], stages["Layup"]
    places = {
        "resin_share": lambda value: setattr(layup, "ResinShare", round(value)),
        "extra_share": lambda value: setattr(plan, "ExtraShare", min(round(value), 100)),
        "square_metre_minutes": lambda value: setattr(plan, "LayingTime", value),
        "ply_minutes": lambda value: setattr(plan, "PlyTime", value),
    }
    for name in names:
        lesson = getattr(learnt, name, None)
        if name not in places or lesson is None:
            raise InputError("lessons", f"'{name}'", "one that the records tell", "choose another")
        places[name](lesson.proposed)
