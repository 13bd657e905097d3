"""A mesh as the part in the window: started by click, its unit chosen, its regions on show."""

import FreeCAD
import Mesh
import pytest
from robot import (
    VERSION,
    buttons,
    click_command,
    click_in_tree,
    close_all,
    colours_in,
    fill,
    opened,
    picture,
    pump,
    stages_in,
    until,
)

pytestmark = pytest.mark.gui


@pytest.fixture
def scan(window, quick_drape):
    """Return a mesh in centimetres, a crowned plate of 24 x 16 cm with a triangle missing."""
    document = FreeCAD.newDocument("Scan")
    document.UndoMode = 1
    across, along = 16, 24
    facets = []

    def at(i, j):
        x, y = i - along / 2, j - across / 2
        return FreeCAD.Vector(x, y, 2.0 - 0.01 * (x * x + y * y))

    for i in range(along):
        for j in range(across):
            a, b, c, d = at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)
            facets += [[a, b, c], [a, c, d]]
    middle = len(facets) // 2 + across
    obj = document.addObject("Mesh::Feature", "Mesh")
    obj.Mesh = Mesh.Mesh(facets[:middle] + facets[middle + 1 :])
    pump()
    yield obj
    close_all()


def test_a_scan_becomes_a_job_once_its_unit_is_chosen(scan, artefacts):
    document = scan.Document
    click_in_tree("Mesh")
    click_command("Laywright_StartJob")
    part = next(obj for obj in document.Objects if obj.Name.startswith("ScannedPart"))
    assert "unit of Mesh: found none stated" in part.Status
    form = opened(part)
    fill(form, "Unit", "cm")
    fill(form, "Mend", value=True)
    fill(form, "Hole", "5 cm")
    buttons(form)["Ok"].click()
    assert until(lambda: part.Status == "up to date")
    assert part.Mend
    assert part.Changes
    version = part.Digest
    form = opened(part)
    fill(form, "Crease", "35 deg")
    buttons(form)["Cancel"].click()
    pump()
    assert (part.Crease.Value, part.Digest, part.Status) == (20.0, version, "up to date")
    assert tuple(part.Size)[:2] == pytest.approx((240.0, 160.0), abs=0.01)
    texts = part.ViewObject.Proxy.legend.texts
    assert texts[0] == "Scanned Part"
    assert texts[1] == f"Face1: {part.Area.Value:.0f} mm²"
    assert any("open edges" in text for text in texts)
    shown = picture(artefacts / f"scan {VERSION}.png", {part.Name}, document)
    assert colours_in(shown) > 0.05
    assert stages_in(document)["MouldBody"].Status == "up to date"
