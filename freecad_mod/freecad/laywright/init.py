"""Runs at every start of FreeCAD, with or without a window; loads nothing heavy."""

import FreeCAD

FreeCAD.__unit_test__ += ["freecad.laywright.selftest"]


class _OpenedDocuments:
    """Takes up objects that a FreeCAD without the workbench left without their proxy."""

    def slotActivateDocument(self, document):
        """FreeCAD calls this when a document has been opened or is switched to."""
        if any(
            getattr(obj, "LaywrightKind", "") and getattr(obj, "Proxy", None) is None
            for obj in document.Objects
        ):
            from freecad.laywright.objects.orphans import adopt

            adopt(document)


FreeCAD.addDocumentObserver(_OpenedDocuments())
