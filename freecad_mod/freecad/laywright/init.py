"""Runs at every start of FreeCAD, with or without a window."""

import FreeCAD

FreeCAD.__unit_test__ += ["freecad.laywright.selftest"]
