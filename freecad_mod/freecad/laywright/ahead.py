"""Bring results up to date without holding the window, and without leaving anything half done.

First every stage is rehearsed: its inputs are collected, its result is computed in a thread
beside the window.  Nothing of the document changes meanwhile, so it can be stopped at any
moment.  Then FreeCAD recomputes, and each stage takes the result that lies ready.
"""

import time

import FreeCAD

from freecad.laywright import host
from freecad.laywright.objects.base import Ready, StageObject
from freecad.laywright.preferences import GROUP
from freecad.laywright.staleness import stale
from laywright.errors import Cancelled

__all__ = ["bring_up_to_date", "stages_in_order"]

_PACES = f"{GROUP}/Seconds"
_UNKNOWN_PACE = 1.0


def bring_up_to_date(document, title, stages=()):
    """Recompute a document, its stages beside the window where there is one.

    Parameters
    ----------
    document : App.Document
        What is recomputed.
    title : str
        What is being done, for people.
    stages : iterable of DocumentObject
        Stage objects that are looked at even if FreeCAD does not know that they changed.

    Raises
    ------
    Cancelled
        If the person stops it: no stage has changed then.
    """
    if host.has_window():
        _rehearse_and_recompute(document, title, stages)
    else:
        _touch(stages)
        document.recompute()


def stages_in_order(document):
    """Return all stage objects of a document, each after those that it is made from."""
    ordered = []

    def visit(obj):
        if obj not in ordered:
            for linked in obj.OutList:
                if _is_stage(linked):
                    visit(linked)
            ordered.append(obj)

    for obj in document.Objects:
        if _is_stage(obj):
            visit(obj)
    return ordered


def _is_stage(obj):
    return isinstance(getattr(obj, "Proxy", None), StageObject)


def _touch(stages):
    for obj in stale(stages):
        obj.touch()


def _rehearse_and_recompute(document, title, stages):
    from freecad.laywright.watch import Watch

    ordered = stages_in_order(document)
    _recompute_parts(document, ordered)
    try:
        with Watch(title) as watch:
            done, left = 0.0, sum(_pace(obj) for obj in ordered)
            for obj in ordered:
                pace, total = _pace(obj), done + left
                obj.Proxy.rehearsed = _rehearsed(obj, watch, done / total, (done + pace) / total)
                done += pace if obj.Proxy.rehearsed.digest != obj.Digest else 0.0
                left -= pace
        for obj in stages:
            if obj.Proxy.rehearsed.digest != obj.Digest:
                obj.touch()
        document.recompute()
    finally:
        for obj in ordered:
            obj.Proxy.rehearsed = None


def _recompute_parts(document, ordered):
    """Let FreeCAD compute what the stages are made from and is not ours.

    It is given all of that, for it computes what follows from a change within its list alone.
    """
    sources = [
        linked
        for obj in ordered
        for linked in obj.OutListRecursive
        if not _is_stage(linked) and linked.Document is document
    ]
    if any("Touched" in linked.State for linked in sources):
        document.recompute(list(dict.fromkeys(sources)))


def _rehearsed(obj, watch, start, end):
    """Return what a stage gives for its present inputs; computed beside the window."""
    proxy, digest = obj.Proxy, ""
    try:
        inputs = proxy.inputs(obj)
        digest = proxy.stage.digest(*inputs)
        previous = proxy.kept(obj)
        if previous is not None and previous.digest == digest:
            return Ready(digest, previous)
        if proxy.at_hand is not None and proxy.at_hand.digest == digest:
            return proxy.at_hand
        began = time.monotonic()
        result = watch.run(
            lambda progress: proxy.compute(previous, inputs, progress), start, end, obj.Label
        )
        _remember_pace(obj, time.monotonic() - began)
    except Cancelled:
        raise
    except Exception as problem:
        return Ready(digest, problem=problem)
    return Ready(digest, result)


def _pace(obj):
    """Return the seconds that such a stage took the last time on this machine."""
    return FreeCAD.ParamGet(_PACES).GetFloat(obj.LaywrightKind, _UNKNOWN_PACE)


def _remember_pace(obj, seconds):
    FreeCAD.ParamGet(_PACES).SetFloat(obj.LaywrightKind, seconds)
