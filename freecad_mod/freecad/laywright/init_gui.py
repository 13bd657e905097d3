"""Runs when FreeCAD's window starts: makes the workbench known, loads nothing heavy."""

import FreeCADGui

from freecad.laywright import ICONS, TRANSLATIONS


class LaywrightWorkbench(FreeCADGui.Workbench):
    """Moulds, cloth patterns and shop plans for parts laid up by hand."""

    MenuText = "Laywright"
    ToolTip = "Moulds, cloth patterns and shop plans for parts laid up by hand"
    Icon = str(ICONS / "laywright.svg")
    filled = False

    def Initialize(self):
        """Load the commands; FreeCAD calls this when the workbench is first chosen."""
        from freecad.laywright import packages

        if not packages.missing():
            self.fill()

    def Activated(self):
        """Offer to install what is missing; FreeCAD calls this whenever it is chosen."""
        if not self.filled:
            from freecad.laywright.qt import QtCore

            QtCore.QTimer.singleShot(0, self.offer)

    def offer(self):
        """Ask whether the missing packages shall be installed."""
        from freecad.laywright import packages
        from freecad.laywright.panels.install_window import InstallWindow, offer

        window = FreeCADGui.getMainWindow()
        if not any(one.isVisible() for one in window.findChildren(InstallWindow)):
            offer(packages.missing(), self.complete, window)

    def complete(self):
        """Load the commands once the packages are there."""
        self.fill()
        FreeCADGui.activeWorkbench().reloadActive()

    def fill(self):
        """Put the commands into toolbar and menu."""
        from freecad.laywright import clicked, commands

        commands.register()
        clicked.watch_clicks()
        self.appendToolbar("Laywright", commands.NAMES)
        self.appendMenu("Laywright", commands.NAMES)
        self.appendMenu(["Laywright", "Examples"], commands.EXAMPLE_NAMES)
        self.filled = True

    def GetClassName(self):
        """Tell FreeCAD that this is a workbench written in Python."""
        return "Gui::PythonWorkbench"


class _Preferences:
    """Makes the page when FreeCAD's preferences are opened, and no sooner."""

    def __new__(cls, *parent):
        from freecad.laywright.panels.preferences_page import PreferencesPage

        return PreferencesPage(*parent)


FreeCADGui.addLanguagePath(str(TRANSLATIONS))
FreeCADGui.updateLocale()
FreeCADGui.addWorkbench(LaywrightWorkbench())
FreeCADGui.addIconPath(str(ICONS))
FreeCADGui.addPreferencePage(_Preferences, "Laywright")
