"""Says in the tree which results do not fit the present job, and why.

The text stands in the tree's column for descriptions (the property Label2), so that it is
seen without opening anything.
"""

from freecad.laywright.objects.base import StageObject, is_current

__all__ = ["mark", "stale", "why_stale"]


def why_stale(obj):
    """Return why the result of a stage object cannot be used as it is; "" if it can."""
    if obj.Status != "up to date":
        return obj.Status
    for upstream in _upstream(obj):
        if upstream.Status != "up to date":
            return f"out of date: waits for {upstream.Label}"
    return ""


def mark(document):
    """Write the reason beside every stage object of a document."""
    for obj in document.Objects:
        if isinstance(getattr(obj, "Proxy", None), StageObject):
            reason = why_stale(obj)
            if obj.Label2 != reason:
                obj.Label2 = reason


def stale(stages):
    """Return the stage objects whose results do not fit their present inputs."""
    return [obj for obj in stages if why_stale(obj) or not is_current(obj)]


def _upstream(obj, seen=None):
    """Yield the stage objects that this one depends on, however far."""
    seen = set() if seen is None else seen
    for linked in obj.OutList:
        if isinstance(getattr(linked, "Proxy", None), StageObject) and linked.Name not in seen:
            seen.add(linked.Name)
            yield linked
            yield from _upstream(linked, seen)
