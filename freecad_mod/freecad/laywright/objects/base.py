"""What all stage objects share: declared properties, one core function, a kept result.

A stage object collects its inputs from its properties and links, asks the stage for their
digest, and computes only when the kept result was made from other inputs.  The result is kept
inside the document (property ``Result``), so that it survives saving, and a document that is
opened without the workbench keeps it too.
"""

import inspect
import json
from dataclasses import dataclass

import FreeCAD

from freecad.laywright import host
from freecad.laywright.objects.kept_value import check_value, read_value, store_value
from freecad.laywright.sentence import tell
from freecad.laywright.translated import translated
from laywright.errors import InputError, LaywrightError

__all__ = [
    "SCHEMA",
    "Property",
    "Ready",
    "StageObject",
    "choices",
    "fresh_result",
    "is_current",
    "refuse_newer",
    "remember_kind",
]

# Raised when a document of this Laywright would mean something else to an older one.
SCHEMA = 2

_INPUTS = "Inputs"
_RESULTS = "Results"
_HIDDEN, _READ_ONLY, _NO_RECOMPUTE = "Hidden", "ReadOnly", "NoRecompute"


@dataclass(frozen=True)
class Ready:
    """What a stage gave for inputs of this digest: a result, or why there is none.

    Attributes
    ----------
    digest : str
        Of the inputs; "" where they could not be collected.
    result : object
        The stage's result, None where there is none.
    problem : Exception or None
        Why there is none.
    """

    digest: str
    result: object = None
    problem: Exception | None = None

    def outcome(self):
        """Return the result or raise the problem."""
        if self.problem is not None:
            raise self.problem
        return self.result


@dataclass(frozen=True)
class Property:
    """A property of a stage object.

    Attributes
    ----------
    name : str
        Name in the property editor and in expressions.
    kind : str
        FreeCAD's property type without ``App::Property``.
    doc : str
        Tooltip: what it means, with its unit.
    default : object
        First value; for an Enumeration the list of choices, the first being the default.
    choices : callable or None
        Gives the texts that a task panel offers for a String.
    """

    name: str
    kind: str
    doc: str
    default: object = None
    choices: object = None


class StageObject:
    """Base of all stage objects.

    Class attributes
    ----------------
    stage : laywright.stage.Stage
        The core function.
    result_type : type
        What it gives.
    properties : tuple of Property
        Inputs.
    reports : tuple of Property
        Read-only numbers shown after computing.

    Attributes
    ----------
    previewed : result or None
        What a task panel shows before it is accepted.
    at_hand, rehearsed : Ready or None
        Computed beside the window already, taken by `execute` if the inputs are still those;
        stages further on take what was rehearsed as if it were there.
    problem : LaywrightError or None
        Why the last `execute` gave no result.
    """

    stage = None
    result_type = None
    host_type = "App::FeaturePython"
    icon = "laywright.svg"
    properties = ()
    reports = ()

    def __init__(self, obj):
        obj.Proxy = self
        self._forget()
        self.ensure_properties(obj)

    # what a stage says about itself

    def inputs(self, obj):
        """Return the arguments of the stage, collected from properties and links."""
        raise NotImplementedError

    def show(self, obj, result):
        """Show the result: shape, mesh, numbers."""

    def compute(self, previous, inputs, progress):
        """Return the result for these inputs, or `previous` where it already is that.

        It runs beside the window and touches nothing of the document.
        """
        if "progress" in inspect.signature(self.stage).parameters:
            return self.stage.renew(previous, *inputs, progress=progress)
        return self.stage.renew(previous, *inputs)

    def coarse(self, inputs):
        """Return inputs that give a coarse result sooner; None where there is no need."""

    def settle(self, obj, result):
        """Write down what belongs to a new result besides what `show` shows."""

    # FreeCAD calls these

    def ensure_properties(self, obj):
        """Add the properties that are missing; harmless on a restored object."""
        for prop in self.properties:
            self._add(obj, prop, _INPUTS)
        for prop in self.reports:
            self._add(obj, prop, _RESULTS)
            obj.setEditorMode(prop.name, 1)
        for prop in _BOOKKEEPING:
            self._add(obj, prop, _RESULTS)
            obj.setEditorMode(prop.name, 1)
        for name in ("Result", "MadeFrom"):
            obj.setEditorMode(name, 2)
        remember_kind(obj, type(self).__name__)

    @staticmethod
    def _add(obj, prop, group):
        if prop.name in obj.PropertiesList:
            return
        obj.addProperty(f"App::Property{prop.kind}", prop.name, group, prop.doc)
        if prop.default is not None:
            setattr(obj, prop.name, prop.default)

    def execute(self, obj):
        """Bring the result up to date; an error leaves the kept result as it was."""
        previous = self.kept(obj)
        self._is_lost = False
        try:
            refuse_newer(obj)
            inputs = self.inputs(obj)
            result = self._result(obj, previous, inputs)
            if previous is None or result.digest != previous.digest:
                store_value(obj, "Result", result)
        except LaywrightError as problem:
            self.problem = problem
            obj.Status = f"out of date: {problem}"
            tell(_by_label(obj, problem))
        except Exception as problem:
            obj.Status = f"out of date: {type(problem).__name__}: {problem}"
            raise
        if previous is None or result.digest != previous.digest:
            self._kept = result
            obj.Digest = result.digest
            self.settle(obj, result)
            self.show(obj, result)
        elif self.previewed is not None:
            self.show(obj, result)
        self.previewed = self.at_hand = self.problem = None
        made_from = json.dumps(self._settings(obj), ensure_ascii=False)
        if obj.MadeFrom != made_from:
            obj.MadeFrom = made_from
        if obj.Status != "up to date":
            obj.Status = "up to date"

    def mustExecute(self, obj):
        """Return whether it is computed although no input has changed: what was kept is lost."""
        return self._is_lost

    def _result(self, obj, previous, inputs):
        """Return the result for these inputs: kept, at hand already, or computed now."""
        digest = self.stage.digest(*inputs)
        if previous is not None and previous.digest == digest:
            return previous
        for found in (self.rehearsed, self.at_hand):
            if found is not None and found.digest == digest:
                return found.outcome()
        self.rehearsed = None  # for other inputs: no stage further on may take it
        return host.run(obj.Label, lambda progress: self.compute(previous, inputs, progress))

    def onDocumentRestored(self, obj):
        """Complete an object of an older version after loading; leave a newer one alone."""
        self._forget()
        try:
            refuse_newer(obj)
        except InputError as problem:
            FreeCAD.Console.PrintWarning(f"{problem}\n")
            return
        self.ensure_properties(obj)
        try:
            check_value(obj, "Result")
        except LaywrightError as problem:
            self._lost(obj, problem)

    def dumps(self):
        """Nothing of the proxy is stored: everything stands in properties."""

    def loads(self, state):
        """See `dumps`."""
        self._forget()

    def _forget(self):
        self._is_lost = False
        self._kept = self.previewed = self.at_hand = self.rehearsed = self.problem = None

    __getstate__ = dumps
    __setstate__ = loads

    # what other objects ask

    def kept(self, obj):
        """Return the kept result, or None."""
        if self._kept is None or self._kept.digest != obj.Digest:
            try:
                self._kept = read_value(obj, "Result", self.result_type)
            except LaywrightError as problem:
                self._kept = None
                if not FreeCAD.isRestoring():  # files come after properties; see onDocumentRestored
                    self._lost(obj, problem)
        return self._kept

    def _lost(self, obj, problem):
        """Say once that the kept result cannot be read, and have it computed again."""
        if not self._is_lost:
            FreeCAD.Console.PrintWarning(f"{problem}\n")
            obj.Status = f"out of date: {problem}"
            self._is_lost = True

    def changed(self, obj):
        """Return the names of the inputs that are not what the kept result was made from."""
        before = json.loads(obj.MadeFrom or "{}")
        now = self._settings(obj)
        return [name for name, value in now.items() if before.get(name, value) != value]

    def gone(self, obj, name):
        """Return the name of what an input linked when the result was made and is gone now."""
        before = json.loads(obj.MadeFrom or "{}").get(name, "").split(", ")[0]
        return "" if not before or obj.Document.getObject(before) else before

    def _settings(self, obj):
        """Return every input that a person sees, as text."""
        names = [
            prop.name
            for prop in self.properties
            if prop.name in obj.PropertiesList and "Hidden" not in obj.getEditorMode(prop.name)
        ]
        return {name: _as_text(getattr(obj, name)) for name in names}

    def shown(self, obj):
        """Return the result that is on the screen: a preview, the kept one, or None."""
        return self.previewed if self.previewed is not None else self.kept(obj)


def _by_label(obj, problem):
    """Return the sentence with the object's label before it, unless it begins with that."""
    sentence = translated(problem)
    named = problem.where == obj.Label or problem.where.startswith(f"{obj.Label}, ")
    return sentence if named else f"{obj.Label}, {sentence}"


def _as_text(value):
    """Return a property's value as text: links by name, for objects are made anew on loading."""
    if hasattr(value, "Document") and hasattr(value, "Name"):
        return value.Name
    if hasattr(value, "UserString"):
        return repr(value.Value)  # whatever the unit system
    if isinstance(value, tuple | list):
        return ", ".join(_as_text(part) for part in value)
    return str(value)


_BOOKKEEPING = (
    Property("Digest", "String", "Version of this result: changes when any input changes"),
    Property("Status", "String", "Whether the result fits the present inputs", "not computed"),
    Property("Result", "FileIncluded", "The stored result"),
    Property("MadeFrom", "String", "What the inputs were when it was made"),
)


def remember_kind(obj, name):
    """Write the class of an object's proxy into a property that outlives the proxy.

    A FreeCAD without the workbench drops the proxy when it saves; see `orphans.adopt`.  The
    schema tells an older Laywright that it does not know all that the object means.
    """
    for prop, kind, doc, value in (
        ("LaywrightKind", "String", "Kind of this object", name),
        ("LaywrightSchema", "Integer", "Which Laywright can compute this object", SCHEMA),
    ):
        if prop not in obj.PropertiesList:
            obj.addProperty(f"App::Property{kind}", prop, _RESULTS, doc)
        if getattr(obj, prop) != value:
            setattr(obj, prop, value)
        obj.setEditorMode(prop, 2)


def refuse_newer(obj):
    """Raise if a newer Laywright made the object: it is shown as it was saved."""
    found = getattr(obj, "LaywrightSchema", 1)
    if found > SCHEMA:
        raise InputError(
            obj.Label,
            f"an object of a newer Laywright (schema {found})",
            f"schema {SCHEMA} or older",
            "bring Laywright up to date to change it; until then it is shown as it was saved",
        )


def choices(kind):
    """Return what a person chooses from: the words of an enum."""
    return [member.value for member in kind]


def fresh_result(obj, wanted, owner):
    """Return the up-to-date result of a linked stage object.

    Parameters
    ----------
    obj : DocumentObject or None
        The linked object.
    wanted : str
        What it should be, for the message, such as ``"a Mould Body"``.
    owner : str
        Label of the object that asks.
    """
    proxy = getattr(obj, "Proxy", None)
    if not isinstance(proxy, StageObject):
        raise InputError(
            owner, "no link" if obj is None else obj.Label, wanted, f"link {wanted} to it"
        )
    if proxy.rehearsed is not None:
        result, status = proxy.rehearsed.result, f"{proxy.rehearsed.problem}"
    else:
        result = proxy.kept(obj) if obj.Status == "up to date" else None
        status = obj.Status
    if result is None:
        raise InputError(
            obj.Label, status or "no result", "a result that is up to date", "mend it first"
        )
    return result


def is_current(obj):
    """Return whether the kept result fits the present inputs, without computing it."""
    try:
        kept = obj.Proxy.kept(obj)
        return kept is not None and kept.digest == obj.Proxy.stage.digest(*obj.Proxy.inputs(obj))
    except LaywrightError:
        return False
