"""Cloth Patterns in the window: proposed cuts answered, the ply on show, its legend's words."""

import math

import FreeCAD
import FreeCADGui
import Part
import pytest
from robot import VERSION, close_all, picture, pump

from freecad.laywright.objects.job import add_stage
from freecad.laywright.qt import QtWidgets
from laywright.cloth.cuts.cuts import Propose

pytestmark = pytest.mark.gui

PLAIN = "E-glass plain weave 163 g/m^2"


@pytest.fixture
def patterns(window, quick_drape):
    """Return Cloth Patterns of two plain plies on a deep dome, with cuts proposed."""
    document = FreeCAD.newDocument("Dome")
    document.UndoMode = 1
    dome = document.addObject("Part::Feature", "Part")
    dome.Shape = Part.makeSphere(
        100.0, FreeCAD.Vector(), FreeCAD.Vector(0, 0, 1), math.degrees(0.1), 90.0, 360.0
    )
    upper = max(range(len(dome.Shape.Faces)), key=lambda k: dome.Shape.Faces[k].Area)
    face = add_stage(document, "MouldedFace")
    face.Faces = (dome, [f"Face{upper + 1}"])
    layup = add_stage(document, "Layup")
    layup.Cloths, layup.Angles = [PLAIN] * 2, [0.0, 45.0]
    layup.Resin = "Laminating epoxy, slow hardener"
    stage = add_stage(document, "ClothPatterns")
    stage.WherePastLimits = Propose.SHOWN.value
    document.recompute()
    pump()
    assert stage.ProposedCuts
    yield stage
    close_all()


def test_proposed_cuts_are_refused_and_taken_from_the_context_menu(patterns):
    document, proposed = patterns.Document, list(patterns.ProposedCuts)
    choose(patterns, "Refuse the proposed cuts")
    assert [line.removesuffix(", refused") for line in patterns.Cuts] == proposed
    assert patterns.Status == "up to date"
    assert not set(proposed) & set(patterns.ProposedCuts)
    assert patterns.MadeCuts == []
    document.undo()
    pump()
    assert (patterns.Cuts, patterns.ProposedCuts) == ([], proposed)
    sheared = patterns.LargestShear.Value
    choose(patterns, "Make the proposed cuts")
    assert len(patterns.MadeCuts) == len(proposed)
    assert patterns.LargestShear.Value < sheared - 5.0


def test_each_ply_and_map_is_chosen_from_the_context_menu(patterns, artefacts):
    vobj = patterns.ViewObject
    for map_, ply in (("shear", 2), ("stretch along the weft", 1)):
        choose(patterns, map_)
        choose(patterns, f"ply {ply}")
        texts = vobj.Proxy.legend.texts
        assert texts[0] == f"ply {ply}: {map_}"
        shares = [float(text.rsplit(":", 1)[1].rstrip(" %")) for text in texts[1:]]
        assert sum(shares) == pytest.approx(100.0, abs=0.4)
        picture(artefacts / f"dome {map_} {VERSION}.png", {patterns.Name}, patterns.Document)
    past = [text for text in texts if text.startswith("past what the cloth bears, ")]
    assert len(past) == 2


def test_a_legend_speaks_the_language_of_the_window(patterns):
    vobj = patterns.ViewObject
    try:
        FreeCADGui.setLocale("de")
        vobj.Map = "shear"
        pump()
        texts = vobj.Proxy.legend.texts
        assert texts[0] == "Lage 1: Scherung"
        assert texts[1].startswith("bis ")
        assert texts[-1].startswith("mehr, als das Gewebe verträgt, über 38°")
    finally:
        FreeCADGui.setLocale("en")


def choose(obj, text):
    """Choose an entry of an object's context menu, or of a menu that opens from it."""
    menu = QtWidgets.QMenu()
    obj.ViewObject.Proxy.setupContextMenu(obj.ViewObject, menu)
    actions = menu.actions()
    for action in menu.actions():
        actions += action.menu().actions() if action.menu() else []
    next(action for action in actions if action.text() == text).trigger()
    pump()
