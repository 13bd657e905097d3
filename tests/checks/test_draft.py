"""Chapter 5, draft: closed forms against the release check."""

from __future__ import annotations

import math

import numpy as np
import pytest

import shapes
from checks.reference import agree, row
from laywright.mould.release.release import BELOW_DRAFT, GOOD, UNDERCUT, ReleaseSettings, release_of

UP = (0.0, 0.0, 1.0)


def areas(surface, pull, degrees):
    report = release_of(surface, pull, ReleaseSettings(math.radians(degrees)))
    found = dict(report.area_by_class)
    assert sum(found.values()) == pytest.approx(surface.area, rel=1e-12)
    return found


def test_frustum():
    surface = shapes.frustum(40.0, 34.0, 60.0)
    report = release_of(surface, UP)
    side = np.abs(surface.normals[:, 2]) < 0.5
    draft = np.degrees(report.draft[side])
    assert np.ptp(draft) < 1e-9
    agree(
        "DRF-01",
        {
            "draft_angle": float(draft.mean()),
            "side_area": float(surface.areas[side].sum()),
            "side_fraction_of_total": float(surface.areas[side].sum() / surface.area),
            "volume": surface.volume,
        },
    )


def test_sphere():
    surface = shapes.sphere(50.0, 60)
    half = surface.area / 2.0
    found = {f"fraction_{d}": areas(surface, UP, d)[BELOW_DRAFT] / half for d in (1, 3, 5)}
    found["undercut_fraction_full_sphere"] = areas(surface, UP, 1)[UNDERCUT] / surface.area
    agree("DRF-03", found)


def test_sphere_pulled_askew_is_no_worse():
    surface = shapes.sphere(50.0, 60)
    pull = tuple(np.array([0.3, -0.5, 0.8]) / np.linalg.norm([0.3, -0.5, 0.8]))
    found = areas(surface, pull, 3)
    assert found[UNDERCUT] / surface.area == pytest.approx(0.5, abs=0.0005)
    assert 2 * found[BELOW_DRAFT] / surface.area == pytest.approx(math.sin(0.0523599), rel=0.01)


def test_torus_lying():
    fine, surface = shapes.torus(40.0, 12.0, 480, 240), shapes.torus(40.0, 12.0, 120, 60)
    found = areas(surface, UP, 3)
    report = release_of(surface, UP)
    agree(
        "DRF-05",
        {
            "area": fine.area,
            "volume": fine.volume,
            "fraction_facing_away": float(surface.areas[report.facing_away].sum() / surface.area),
            "fraction_draft_0_to_3deg": found[BELOW_DRAFT] / surface.area,
        },
    )
    assert report.hidden_share.max() == 0.0


@pytest.mark.parametrize(("around", "section"), [(120, 42), (101, 49), (90, 55)])
def test_torus_lying_at_ten_thousand_facets_whatever_the_mesh(around, section):
    surface = shapes.torus(40.0, 12.0, around, section)
    found = areas(surface, UP, 3)
    assert found[UNDERCUT] == pytest.approx(surface.area / 2.0, rel=0.005)
    assert found[BELOW_DRAFT] == pytest.approx(surface.area / 60.0, rel=0.02)
    assert found[GOOD] == pytest.approx(surface.area * (0.5 - 1 / 60.0), rel=0.005)


def test_the_default_is_within_the_usual_draft():
    assert row("UND-06")["expected"][0]["value"].startswith("1 deg minimum, 2-3 deg preferred")
    assert math.degrees(ReleaseSettings().least_draft) == pytest.approx(2.0)
    agree("UND-06", {"typical": row("UND-06")["expected"][0]["value"]})
