"""Runs at every start of FreeCAD, with or without a window; loads nothing heavy."""

import FreeCAD

from freecad.laywright.sentence import speak_freely

FreeCAD.__unit_test__ += ["freecad.laywright.selftest"]


class _Documents:
    """Watches documents; only those that hold objects of Laywright load any of it."""

    def slotActivateDocument(self, document):
        """Take up objects that a FreeCAD without the workbench left without their proxy."""
        if any(_ours(obj) and getattr(obj, "Proxy", None) is None for obj in document.Objects):
            from freecad.laywright.objects.orphans import adopt

            adopt(document)

    def slotRecomputedObject(self, obj):
        """Let tracebacks be seen again once a failed object has said its sentence."""
        speak_freely()

    def slotRecomputedDocument(self, document):
        """Say in the tree which results are out of date."""
        speak_freely()
        self._mark(document)

    def slotChangedObject(self, obj, name):
        """Say it when an input changes and nothing is recomputed yet."""
        if not _ours(obj) or FreeCAD.isRestoring():
            return
        document, proxy = obj.Document, getattr(obj, "Proxy", None)
        inputs = [prop.name for prop in getattr(proxy, "properties", ())]
        if name in inputs and not (document.Recomputing or document.Transacting):
            self._mark(document)

    def slotUndoDocument(self, document):
        """Say it again when inputs and results are those of before."""
        self._mark(document)

    slotRedoDocument = slotUndoDocument

    def slotFinishSaveDocument(self, document, path):
        """Say it when a document was not saved whole: FreeCAD itself is silent on a full disk."""
        if any(_ours(obj) for obj in document.Objects):
            from freecad.laywright.saved import warn_if_half

            warn_if_half(document, path)

    def _mark(self, document):
        if any(_ours(obj) for obj in document.Objects):
            from freecad.laywright.staleness import mark

            mark(document)


def _ours(obj):
    return bool(getattr(obj, "LaywrightKind", ""))


FreeCAD.addDocumentObserver(_Documents())
