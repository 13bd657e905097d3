"""A failed recompute says one sentence in the report view.

FreeCAD prints the traceback of whatever an ``execute`` raises, and the class above the message.
For a mistake in somebody's input that is noise: the traceback goes to the log instead, for those
who have FreeCAD show it.  Python's own ``sys.tracebacklimit`` is what FreeCAD's printing heeds;
it is set while the exception leaves ``execute`` and put back as soon as FreeCAD has told
its observers that the object or the document was recomputed.
"""

import sys
import traceback

import FreeCAD

__all__ = ["Sentence", "speak_freely", "tell"]

_LIMIT = "tracebacklimit"


class _Named(type):
    """FreeCAD prints the class of an exception by its text."""

    def __str__(cls):
        return "Laywright"


class Sentence(Exception, metaclass=_Named):
    """What FreeCAD shows of a problem: in its report view, at the object, in the tree."""


def tell(words):
    """Raise a sentence out of ``execute`` and leave the traceback to the log.

    Parameters
    ----------
    words : str
        The sentence, with the object's label.
    """
    FreeCAD.Console.PrintLog(f"{words}\n{traceback.format_exc()}")
    _Limit.hold()
    raise Sentence(words) from None


def speak_freely():
    """Let tracebacks be printed in full again."""
    _Limit.give_back()


class _Limit:
    """The limit on tracebacks that was there before it was held, if any."""

    earlier = ()

    @classmethod
    def hold(cls):
        cls.give_back()
        cls.earlier = (getattr(sys, _LIMIT, None),)
        setattr(sys, _LIMIT, 0)

    @classmethod
    def give_back(cls):
        if not cls.earlier:
            return
        (value,), cls.earlier = cls.earlier, ()
        if value is None:
            delattr(sys, _LIMIT)
        else:
            setattr(sys, _LIMIT, value)
