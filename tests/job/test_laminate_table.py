from __future__ import annotations

import csv
import io

import pytest

from laminate.stacks import CARBON, MATERIALS, layup
from laywright.job.laminate_table import laminate_table
from laywright.laminate.laminate import analyse
from laywright.laminate.plies import Core


def test_every_layer_is_a_row_and_the_columns_add_up():
    core = Core(MATERIALS.core("Closed-cell PVC foam 80 kg/m^3"), 6.0, 1)
    made = analyse(layup(CARBON, 0, 45, core=core))
    text = laminate_table(made).decode("utf-8-sig")
    rows = list(csv.DictReader(io.StringIO(text)))
    assert [row["ply"] for row in rows] == ["1", "", "2"]
    assert [row["angle (deg)"] for row in rows] == ["0.0", "0.0", "45.0"]
    total = sum(float(row["thickness (mm)"]) for row in rows)
    assert total == pytest.approx(made.thickness, abs=1e-3)
    mass = sum(
        float(row["dry mass (g/m2)"]) + float(row["resin with hardener (g/m2)"]) for row in rows
    )
    assert mass == pytest.approx(made.areal_mass, abs=0.1)
    heights = [float(row["middle above the mould (mm)"]) for row in rows if row["ply"]]
    assert heights == pytest.approx(made.ply_heights.tolist(), abs=1e-3)
    assert float(rows[1]["G13 (MPa)"]) == core.sheet.shear_along
