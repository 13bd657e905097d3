"""Spring-in against published formula and findings."""

from __future__ import annotations

import math

import pytest

from checks import reference
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.laminate.spring_in import corner_spring_in, spring_in

MATERIALS = load_materials()
RESIN = MATERIALS.resin("Laminating epoxy, slow hardener")


def laminate(*degrees: float, cloth: str = "Carbon twill weave 200 g/m^2"):
    plies = tuple(Ply(MATERIALS.cloth(cloth), math.radians(angle)) for angle in degrees)
    return analyse(Layup(plies, RESIN))


def test_spr_01_thermal():
    closed = math.degrees(spring_in(math.pi / 2.0, 3e-6, 40e-6, -100.0).total)
    reference.agree("SPR-01", {"dtheta": closed, "dtheta_rounded": closed})


def test_spr_02_thermal_and_cure():
    closed = spring_in(math.pi / 2.0, 4e-6, 45e-6, -155.0, -0.0005, -0.0055)
    reference.agree(
        "SPR-02", {"thermal": math.degrees(closed.thermal), "total": math.degrees(closed.total)}
    )


def test_spr_04_findings_of_jain_and_others():
    facts = reference.row("SPR-04")["expected"][0]["value"]

    assert "nearly constant for almost all radius/thickness" in facts
    thin, thick = (laminate(*[0.0] * count) for count in (2, 8))
    assert corner_spring_in(thin, 1.5, -20.0).total == pytest.approx(
        corner_spring_in(thick, 1.5, -20.0).total, rel=1e-9
    )

    assert "insensitive to symmetric lay-up sequence" in facts
    assert corner_spring_in(laminate(0, 45, 45, 0), 1.5, -20.0).total == pytest.approx(
        corner_spring_in(laminate(45, 0, 0, 45), 1.5, -20.0).total, rel=1e-9
    )

    assert "for fabric, to ply orientation" in facts
    assert corner_spring_in(laminate(0, 0), 1.5, -20.0).total == pytest.approx(
        corner_spring_in(laminate(45, 45), 1.5, -20.0).total, rel=0.02
    )

    assert "decreases when the tool (included) angle increases" in facts
    included = [60.0, 90.0, 120.0, 150.0]
    closed = [corner_spring_in(thin, math.radians(180.0 - a), -20.0).total for a in included]
    assert closed == sorted(closed, reverse=True)
    assert all(angle > 0.0 for angle in closed)
