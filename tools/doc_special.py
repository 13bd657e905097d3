"""Pictures for the stages' pages that the first job has no place for; see doc_pictures.py."""

import math

import FreeCAD
import FreeCADGui
import Mesh
import Part

from freecad.laywright import preferences
from freecad.laywright.examples import open_example
from freecad.laywright.objects.job import add_stage, stage_objects
from freecad.laywright.panels.card_window import CardWindow
from laywright.cloth.cuts.cuts import Propose

__all__ = ["cards", "darts", "parted_mould", "scan"]

_PLAIN = "E-glass plain weave 163 g/m^2"
_TWILL = "E-glass twill weave 200 g/m^2"
_RESIN = "Laminating epoxy, slow hardener"


def parted_mould():
    """Return the Mould Body of the battery tray, whose lip needs a mould in two pieces."""
    document = open_example("battery_tray")
    part = document.BatteryTray
    import battery_tray

    face = add_stage(document, "MouldedFace")
    face.Faces = (part, battery_tray.moulded_faces(part.Shape))
    face.LargestChord = "0.2 mm"
    _plies(add_stage(document, "Layup"), _TWILL, (0.0, 45.0, 0.0))
    body = add_stage(document, "MouldBody")
    body.ShownApart = "40 mm"
    document.recompute()
    return body


def darts():
    """Return Cloth Patterns of a deep dome with the cuts that they propose, shear on show."""
    document = FreeCAD.newDocument("Dome")
    dome = document.addObject("Part::Feature", "Dome")
    dome.Shape = Part.makeSphere(
        100.0, FreeCAD.Vector(), FreeCAD.Vector(0, 0, 1), math.degrees(0.1), 90.0, 360.0
    )
    upper = max(range(len(dome.Shape.Faces)), key=lambda k: dome.Shape.Faces[k].Area)
    face = add_stage(document, "MouldedFace")
    face.Faces = (dome, [f"Face{upper + 1}"])
    _plies(add_stage(document, "Layup"), _PLAIN, (0.0,))
    patterns = add_stage(document, "ClothPatterns")
    patterns.WherePastLimits = Propose.SHOWN.value
    patterns.Placement.Base = FreeCAD.Vector(130.0, -190.0, 0.0)
    document.recompute()
    patterns.ViewObject.Map = "shear"
    return patterns


def scan():
    """Return a Scanned Part: the hatch cover as a mesh in centimetres, two triangles missing."""
    document = open_example("hatch_cover")
    points, facets = document.HatchCover.Shape.tessellate(0.3)
    corners = [[points[corner] * 0.1 for corner in facet] for facet in facets]
    source = document.addObject("Mesh::Feature", "Scan")
    source.Mesh = Mesh.Mesh(corners[: len(corners) // 2] + corners[len(corners) // 2 + 2 :])
    part = add_stage(document, "ScannedPart")
    part.Source, part.Unit = source, "cm"
    document.recompute()
    (found,) = stage_objects(document, "ScannedPart")
    return found


def cards():
    """Return the window of the material cards, open at a cloth."""
    FreeCAD.ParamGet(preferences.GROUP).SetString("MaterialsFolder", "/home/maker/cards")
    window = CardWindow(FreeCADGui.getMainWindow())
    window.resize(940, 440)
    window.show()
    window.choose(_TWILL)
    return window


def _plies(layup, cloth, angles):
    layup.Cloths, layup.Angles, layup.Resin = [cloth] * len(angles), list(angles), _RESIN
