"""Says in the tree which results do not fit the present job, and why.

The text stands in the tree's column for descriptions (the property Label2), so that it is
seen without opening anything.
"""

import re

from freecad.laywright.objects.base import StageObject, is_current

__all__ = ["mark", "stale", "why_stale"]


def why_stale(obj):
    """Return why the result of a stage object cannot be used as it is; "" if it can."""
    return _reason(obj, {})


def mark(document):
    """Write the reason beside every stage object of a document."""
    own = {}
    for obj in document.Objects:
        if _is_whole(obj):
            reason = _reason(obj, own)
            if obj.Label2 != reason:
                obj.Label2 = reason


def stale(stages):
    """Return the stage objects whose results do not fit their present inputs."""
    return [obj for obj in stages if why_stale(obj) or not is_current(obj)]


def _is_whole(obj):
    """Return whether it is a stage object with all its properties; one being pasted is not yet."""
    return isinstance(getattr(obj, "Proxy", None), StageObject) and hasattr(obj, "MadeFrom")


def _reason(obj, own):
    """Return why an object is out of date; what is found of each goes into `own` by its name."""
    if obj.Status != "up to date":
        return obj.Status
    words = _changed(obj, own)
    if words:
        return f"out of date: {words} changed"
    for upstream in _upstream(obj):
        if upstream.Status != "up to date":
            return f"out of date: waits for {upstream.Label}"
        words = _changed(upstream, own)
        if words:
            return f"out of date: {words} of {upstream.Label} changed"
    return ""


def _changed(obj, own):
    """Return in words which inputs of an object differ from those of its result; "" for none."""
    if obj.Name not in own:
        names = obj.Proxy.changed(obj)
        own[obj.Name] = "" if not names or is_current(obj) else ", ".join(map(_words, names))
    return own[obj.Name]


def _words(name):
    """Return the name of a property as words: "RunOff" becomes "run off"."""
    return re.sub(r"(?<=[a-z])(?=[A-Z])", " ", name).lower()


def _upstream(obj, seen=None):
    """Yield the stage objects that this one depends on, however far."""
    seen = set() if seen is None else seen
    for linked in obj.OutList:
        if _is_whole(linked) and linked.Name not in seen:
            seen.add(linked.Name)
            yield linked
            yield from _upstream(linked, seen)
