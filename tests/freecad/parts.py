"""Parts for the tests, built in FreeCAD."""

import sys
from pathlib import Path

import FreeCAD

from freecad.laywright.objects.job import make_job, stages_of

sys.path.append(str(Path(__file__).resolve().parents[2] / "examples"))
import hatch_cover

__all__ = ["bored_box", "hatch_job", "job_in", "set_dimension"]


def hatch_job(name="HatchCover"):
    """Return document, job group and stages of the example, not recomputed, quick to compute."""
    document = hatch_cover.build(name)
    part = document.HatchCover
    job = make_job(part, hatch_cover.moulded_faces(part.Shape), "Hatch cover")
    stages = stages_of(job)
    stages["RollPlan"].SearchTime = 0.0
    return document, job, stages


def job_in(document):
    """Return the job group of a document and its stages."""
    job = next(obj for obj in document.Objects if obj.Name.startswith("Job") and obj.Group)
    return job, stages_of(job)


def set_dimension(document, name, value):
    """Change a dimension in the example's spreadsheet and recompute."""
    row = 1 + [entry[0] for entry in hatch_cover.DIMENSIONS].index(name)
    document.Dimensions.set(f"B{row}", f"={value}")
    document.recompute()


def bored_box(document):
    """Return a box with a bore that does not touch it yet: moving it renumbers the faces."""
    box = document.addObject("Part::Box", "Box")
    box.Length, box.Width, box.Height = 60, 40, 20
    bore = document.addObject("Part::Cylinder", "Bore")
    bore.Radius, bore.Height = 5, 60
    bore.Placement.Base = FreeCAD.Vector(200, 20, -20)
    cut = document.addObject("Part::Cut", "Cut")
    cut.Base, cut.Tool = box, bore
    document.recompute()
    return cut, bore
