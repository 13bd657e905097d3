"""What a stage would give for the fields of its panel, computed beside the window.

A coarse result comes first where the full one takes long; a newer change stops both.
"""

from freecad.laywright.objects.base import Ready
from freecad.laywright.worker import Worker
from laywright.errors import Cancelled

__all__ = ["Preview"]


class Preview:
    """Computes and shows previews of one stage object.

    Parameters
    ----------
    obj : DocumentObject
        It shows the preview; its kept result stays until it is recomputed.
    """

    def __init__(self, obj):
        self._obj = obj
        self._worker = None
        self._steps = []

    @property
    def share(self):
        """Share done of what is being computed; None while nothing is."""
        return None if self._worker is None else self._worker.share

    def start(self):
        """Begin anew with the object's present properties.

        Raises
        ------
        LaywrightError
            If they are no inputs to compute with.
        """
        self.stop()
        obj, proxy = self._obj, self._obj.Proxy
        inputs = proxy.inputs(obj)
        digest, kept = proxy.stage.digest(*inputs), proxy.kept(obj)
        if kept is not None and kept.digest == digest:
            self._show(kept)
            return
        coarse = proxy.coarse(inputs)
        self._steps = [("", coarse)] if coarse is not None else []
        self._steps.append((digest, inputs))
        self._next()

    def stop(self):
        """Compute no further."""
        if self._worker is not None:
            self._worker.stop()
        self._worker, self._steps = None, []

    def look(self):
        """Show what is ready; return "coarse" or "full" when something new is shown.

        Raises
        ------
        LaywrightError
            If the computation found that it cannot be done.
        """
        if self._worker is None or self._worker.is_alive():
            return ""
        worker, self._worker = self._worker, None
        digest, _ = self._steps.pop(0)
        try:
            result = worker.outcome()
        except Cancelled:
            return ""
        except Exception:
            self._steps = []
            raise
        if digest:
            self._obj.Proxy.at_hand = Ready(digest, result)
        self._show(result)
        if self._steps:
            self._next()
        return "full" if digest else "coarse"

    def _next(self):
        proxy, (_, inputs) = self._obj.Proxy, self._steps[0]
        self._worker = Worker(lambda progress: proxy.compute(None, inputs, progress))

    def _show(self, result):
        proxy = self._obj.Proxy
        proxy.previewed = result
        proxy.show(self._obj, result)
