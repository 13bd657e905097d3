"""Spring-in against published formula and findings."""

from __future__ import annotations

import math

import numpy as np
import pytest

from checks import reference
from laywright.laminate.laminate import analyse
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Layup, Ply
from laywright.laminate.spring_in import SpringIn, closing_share, spring_in
from laywright.surface.opened import Opened, open_bends
from laywright.surface.triangles import Surface

MATERIALS = load_materials()
RESIN = MATERIALS.resin("Laminating epoxy, slow hardener")


def laminate(*degrees: float, cloth: str = "Carbon twill weave 200 g/m^2"):
    plies = tuple(Ply(MATERIALS.cloth(cloth), math.radians(angle)) for angle in degrees)
    return analyse(Layup(plies, RESIN))


def opened_corner(closed: SpringIn) -> Opened:
    """A mould for a part whose right angle has closed already: its own angle is the right one."""
    swept = 0.5 * math.pi + closed.total
    points = np.array(
        [[-60.0, 0, 0], [0, 0, 0], [60.0 * math.cos(swept), 0, 60.0 * math.sin(swept)]]
    )
    ends = np.concatenate([points, points + np.array([0.0, 90.0, 0.0])])
    triangles = np.array([[0, 1, 4], [0, 4, 3], [1, 2, 5], [1, 5, 4]])
    share = closed.total / (0.5 * math.pi)
    return open_bends(Surface.single(ends, triangles, "Corner"), share, 1.0)


def test_spr_01_thermal():
    found = spring_in(math.pi / 2.0, 3e-6, 40e-6, -100.0)
    closed = math.degrees(found.total)
    reference.agree("SPR-01", {"dtheta": closed, "dtheta_rounded": closed})
    (bend,) = opened_corner(found).bends
    opened = math.degrees(bend.reached)
    reference.agree("SPR-01", {"dtheta": opened, "dtheta_rounded": opened})


def test_spr_02_thermal_and_cure():
    found = spring_in(math.pi / 2.0, 4e-6, 45e-6, -155.0, -0.0005, -0.0055)
    total = math.degrees(found.total)
    reference.agree("SPR-02", {"thermal": math.degrees(found.thermal), "total": total})
    (bend,) = opened_corner(found).bends
    opened = math.degrees(bend.reached)
    reference.agree("SPR-02", {"thermal": math.degrees(found.thermal), "total": opened})


def test_spr_04_findings_of_jain_and_others():
    facts = reference.row("SPR-04")["expected"][0]["value"]

    assert "nearly constant for almost all radius/thickness" in facts
    thin, thick = (laminate(*[0.0] * count) for count in (2, 8))
    assert closing_share(thin, -20.0) == pytest.approx(closing_share(thick, -20.0), rel=1e-9)

    assert "insensitive to symmetric lay-up sequence" in facts
    assert closing_share(laminate(0, 45, 45, 0), -20.0) == pytest.approx(
        closing_share(laminate(45, 0, 0, 45), -20.0), rel=1e-9
    )

    assert "for fabric, to ply orientation" in facts
    assert closing_share(laminate(0, 0), -20.0) == pytest.approx(
        closing_share(laminate(45, 45), -20.0), rel=0.02
    )

    assert "decreases when the tool (included) angle increases" in facts
    included = [60.0, 90.0, 120.0, 150.0]
    closed = [(180.0 - a) * closing_share(thin, -20.0) for a in included]
    assert closed == sorted(closed, reverse=True)
    assert all(angle > 0.0 for angle in closed)
