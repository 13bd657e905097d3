"""Print Tiles in the window: numbers at the tiles, a printer of one's own."""

import FreeCAD
import FreeCADGui
import pytest
from robot import grabbed, picture, pump

from freecad.laywright import preferences
from freecad.laywright.panels.printer_window import PrinterWindow
from laywright.mould.machine import Printer

pytestmark = pytest.mark.gui


def test_every_tile_carries_its_place_in_the_order_and_its_name(job, artefacts):
    document, stages = job
    tiles = stages["PrintTiles"]
    version = ".".join(FreeCAD.Version()[:2])
    picture(artefacts / f"numbered tiles {version}.png", {tiles.Name}, document)
    pump()
    kept = tiles.Proxy.kept(tiles)
    view = tiles.ViewObject.Proxy
    assert view.signs.texts == tuple(f"{tile.order}: {tile.name}" for tile in kept.tiles)


def test_a_printer_is_typed_with_its_units_and_kept(window, artefacts, tmp_path):
    group = FreeCAD.ParamGet(preferences.GROUP)
    before = group.GetString("PrintersFolder", "")
    group.SetString("PrintersFolder", str(tmp_path / "cards"))
    try:
        usual = next(iter(preferences.printers().values()))
        form = PrinterWindow(usual, FreeCADGui.getMainWindow())
        assert form.fields["infill_share"].text() == "20 %"
        form.fields["name"].setText("Mine")
        form.fields["volume"].setText("30 cm, 310 mm")
        form.keep()
        assert "needed width, depth and height" in form.problem.text()
        form.fields["volume"].setText("30 cm, 310 mm, 320 mm")
        form.fields["walls"].setText("4")
        form.keep()
        mine = preferences.printers()["Mine"]
        assert isinstance(mine, Printer)
        assert (mine.volume, mine.walls) == ((300.0, 310.0, 320.0), 4)
        assert mine.material == usual.material
        grabbed(form, artefacts / "printer of your own.png")
    finally:
        group.SetString("PrintersFolder", before)
