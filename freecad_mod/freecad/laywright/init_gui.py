"""Runs when FreeCAD's window starts: makes the workbench known, loads nothing heavy."""

import FreeCADGui

from freecad.laywright import ICONS, PANELS, TRANSLATIONS


class LaywrightWorkbench(FreeCADGui.Workbench):
    """Moulds, cloth patterns and shop plans for parts laid up by hand."""

    MenuText = "Laywright"
    ToolTip = "Moulds, cloth patterns and shop plans for parts laid up by hand"
    Icon = str(ICONS / "laywright.svg")

    def Initialize(self):
        """Load the commands; FreeCAD calls this when the workbench is first chosen."""
        from freecad.laywright import packages

        missing = packages.missing()
        if missing:
            packages.offer(missing)
            if packages.missing():
                return
        from freecad.laywright import commands

        commands.register()
        self.appendToolbar("Laywright", commands.NAMES)
        self.appendMenu("Laywright", commands.NAMES)
        self.appendMenu(["Laywright", "Examples"], commands.EXAMPLE_NAMES)

    def GetClassName(self):
        """Tell FreeCAD that this is a workbench written in Python."""
        return "Gui::PythonWorkbench"


FreeCADGui.addLanguagePath(str(TRANSLATIONS))
FreeCADGui.updateLocale()
FreeCADGui.addWorkbench(LaywrightWorkbench())
FreeCADGui.addIconPath(str(ICONS))
FreeCADGui.addPreferencePage(str(PANELS / "preferences.ui"), "Laywright")
