"""The Job: a group that holds the stage objects of one part, linked to each other."""

from freecad.laywright import preferences
from freecad.laywright.objects.base import remember_kind
from freecad.laywright.objects.cloth_patterns import ClothPatternsObject
from freecad.laywright.objects.coupon_test import CouponTestObject
from freecad.laywright.objects.job_sheet import JobSheetObject
from freecad.laywright.objects.layup import LayupObject
from freecad.laywright.objects.mix_cure_plan import MixCurePlanObject
from freecad.laywright.objects.mould_body import MouldBodyObject
from freecad.laywright.objects.moulded_face import MouldedFaceObject
from freecad.laywright.objects.print_tiles import PrintTilesObject
from freecad.laywright.objects.release_check import ReleaseCheckObject
from freecad.laywright.objects.roll_plan import RollPlanObject
from freecad.laywright.objects.scanned_part import ScannedPartObject
from freecad.laywright.objects.weigh_in import WeighInObject

__all__ = [
    "KINDS",
    "SOURCES",
    "TESTS",
    "JobObject",
    "add_stage",
    "give_view",
    "is_mesh",
    "kind_of_link",
    "make_job",
    "pick",
    "stage_objects",
    "stages_of",
]

KINDS = {
    "MouldedFace": MouldedFaceObject,
    "ReleaseCheck": ReleaseCheckObject,
    "Layup": LayupObject,
    "MouldBody": MouldBodyObject,
    "PrintTiles": PrintTilesObject,
    "ClothPatterns": ClothPatternsObject,
    "RollPlan": RollPlanObject,
    "MixCurePlan": MixCurePlanObject,
    "JobSheet": JobSheetObject,
}

# What is added when parts are made and tested, as often as that happens.
TESTS = {"WeighIn": WeighInObject, "CouponTest": CouponTestObject}

# What a job may start from beside a shape.
SOURCES = {"ScannedPart": ScannedPartObject}

_EVERY = SOURCES | KINDS | TESTS

# Which kind of object a link of that name points to.
_LINKS = {
    "Face": "MouldedFace",
    "Release": "ReleaseCheck",
    "Layup": "Layup",
    "Body": "MouldBody",
    "Tiles": "PrintTiles",
    "Patterns": "ClothPatterns",
    "Roll": "RollPlan",
    "MixCure": "MixCurePlan",
    "Sheet": "JobSheet",
}
# The same for links that only a person sets.
_OPTIONAL_LINKS = {"MarkedDatum": "ClothPatterns"}

_FIRST_PLIES = ("E-glass twill weave 200 g/m^2",) * 3
_FIRST_ANGLES = (0.0, 45.0, 0.0)
_FIRST_RESIN = "Laminating epoxy, slow hardener"


# Where flat drawings stand beside the part, mm, and what is not shown at first.
_BESIDE = {"ClothPatterns": (60.0, 0.0), "RollPlan": (60.0, -1400.0)}
_HIDDEN = ("MouldedFace", "MouldBody", "RollPlan")


class JobObject:
    """A group; it computes nothing itself."""

    icon = "laywright.svg"

    def __init__(self, obj):
        obj.Proxy = self
        remember_kind(obj, type(self).__name__)

    def execute(self, obj):
        """Nothing to compute."""

    def dumps(self):
        """Nothing is stored on the proxy."""

    def loads(self, state):
        """See `dumps`."""

    __getstate__ = dumps
    __setstate__ = loads


def stages_of(job):
    """Return the stage objects of a job by kind, in the order of the work."""
    found = {type(member.Proxy): member for member in job.Group if hasattr(member, "Proxy")}
    return {kind: found[cls] for kind, cls in KINDS.items() if cls in found}


def stage_objects(document, kind):
    """Return a document's stage objects of one kind: a key of `KINDS`, `SOURCES` or `TESTS`."""
    return [obj for obj in document.Objects if type(getattr(obj, "Proxy", None)) is _EVERY[kind]]


def kind_of_link(name):
    """Return which kind of stage object a link of that name points to, None for others."""
    return (_LINKS | _OPTIONAL_LINKS).get(name)


def add_stage(document, kind, job=None):
    """Add a stage object, linked to the stages that the job has already.

    Without a job it is linked to those of which the document has just one.

    Parameters
    ----------
    document : App.Document
        Where it is made.
    kind : str
        A key of `KINDS`, `SOURCES` or `TESTS`.
    job : DocumentObject, optional
        The job that it joins.

    Returns
    -------
    DocumentObject
        Not recomputed yet.
    """
    cls = _EVERY[kind]
    obj = document.addObject(cls.host_type, kind)
    cls(obj)
    obj.Label = cls.stage.title
    _take_preferred(obj, kind)
    present = _only_ones(document) if job is None else stages_of(job)
    for prop in cls.properties:
        if prop.kind == "Link" and _LINKS.get(prop.name) in present:
            setattr(obj, prop.name, present[_LINKS[prop.name]])
    if job is not None:
        job.addObject(obj)
    give_view(obj)
    return obj


def _take_preferred(obj, kind):
    """Give a new object what the person set once for all jobs."""
    if kind in ("PrintTiles", "MouldBody"):
        obj.Printer = preferences.first_printer()
    elif kind == "JobSheet":
        obj.Paper = preferences.paper()
        obj.DecimalMark = preferences.decimal_mark()


def _only_ones(document):
    """Return the stage objects by kind of which the document has just one."""
    found = {kind: stage_objects(document, kind) for kind in KINDS}
    return {kind: objects[0] for kind, objects in found.items() if len(objects) == 1}


def give_view(obj):
    """Give an object its look, where there is a window."""
    if obj.ViewObject is not None:
        from freecad.laywright.views.kinds import view_for

        view_for(type(obj.Proxy).__name__)(obj.ViewObject)


def make_job(part, faces, name="Job"):
    """Make a job with every stage from faces of a part, with defaults that give a first result.

    Parameters
    ----------
    part : DocumentObject
        The part; a mesh becomes a Scanned Part, whose unit is still to be stated.
    faces : sequence of str
        Names of its faces that are moulded, such as ``["Face3"]``; of a mesh names of regions
        or points on them, none for all of it.
    name : str
        Label of the job.

    Returns
    -------
    DocumentObject
        The job's group; not recomputed yet.
    """
    document = part.Document
    job = document.addObject("App::DocumentObjectGroupPython", "Job")
    JobObject(job)
    job.Label = name
    give_view(job)
    for kind in KINDS:
        obj = add_stage(document, kind, job)
        if kind == "MouldedFace":
            pick(obj, part, faces, job)
        elif kind == "Layup":
            obj.Cloths = list(_FIRST_PLIES)
            obj.Angles = list(_FIRST_ANGLES)
            obj.Resin = _FIRST_RESIN
        elif kind == "JobSheet":
            obj.Title = name
        elif kind in _BESIDE:
            across, up = _BESIDE[kind]
            size = (part.Mesh if is_mesh(part) else part.Shape).BoundBox
            obj.Placement.Base = (size.XMax + across, size.YMin + up, size.ZMin)
        if obj.ViewObject is not None and kind in _HIDDEN:
            obj.ViewObject.Visibility = False
    if part.ViewObject is not None:
        part.ViewObject.Visibility = False
    return job


def pick(face, part, faces, job=None):
    """Let a Moulded Face take faces of a part, or regions of a mesh; see `make_job`."""
    if is_mesh(part):
        face.Scan = _scan_of(part, job)
        face.Regions = [name for name in faces if isinstance(name, str)]
        face.RegionPoints = [point for point in faces if not isinstance(point, str)]
    else:
        face.Faces = (part, list(faces))


def is_mesh(part):
    """Return whether an object of the document is a mesh and no shape."""
    return getattr(part, "Shape", None) is None and hasattr(part, "Mesh")


def _scan_of(part, job):
    """Return the Scanned Part of a mesh, a new one where there is none."""
    for obj in stage_objects(part.Document, "ScannedPart"):
        if obj.Source is part:
            return obj
    scan = add_stage(part.Document, "ScannedPart", job)
    scan.Source = part
    return scan
