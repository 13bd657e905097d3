"""Objects whose proxy was lost because a FreeCAD without the workbench saved the document.

Their properties and stored results are all there; they only have to be taken up again.
"""

import FreeCAD

from freecad.laywright.objects.base import refuse_newer
from freecad.laywright.objects.job import KINDS, SOURCES, TESTS, JobObject, give_view
from laywright.errors import InputError

__all__ = ["adopt"]

_CLASSES = {cls.__name__: cls for cls in (JobObject, *(KINDS | SOURCES | TESTS).values())}


def adopt(document):
    """Give every orphan of a document its proxy back; nothing is recomputed.

    Returns
    -------
    list of DocumentObject
        What was taken up.
    """
    taken = []
    for obj in document.Objects:
        cls = _CLASSES.get(getattr(obj, "LaywrightKind", ""))
        if cls is not None and getattr(obj, "Proxy", None) is None:
            try:
                refuse_newer(obj)
            except InputError as problem:
                FreeCAD.Console.PrintWarning(f"{problem}\n")
                continue
            up_to_date = "Touched" not in obj.State
            cls(obj)
            give_view(obj)
            if up_to_date:
                obj.purgeTouched()
            taken.append(obj)
    if taken:
        FreeCAD.Console.PrintMessage(
            f"Laywright: took up {len(taken)} objects saved without the workbench\n"
        )
    return taken
