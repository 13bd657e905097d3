from __future__ import annotations

import dataclasses

import numpy as np
import pytest
from scipy.spatial import cKDTree

import shapes
from job_demo import hatch
from laywright.cloth.patterns.pattern import PatternSettings, make_patterns
from laywright.errors import InputError
from laywright.files.shell_deck import shell_deck
from laywright.job.analysis import AnalysisSettings, EdgeHold, shell_model
from laywright.job.draped import draped_places
from laywright.laminate.draped import draped_stiffness
from laywright.laminate.laminate import analyse
from laywright.laminate.local import local_laminate
from laywright.laminate.materials import load_materials
from laywright.laminate.plies import Core
from laywright.laminate.rotation import rotated_stiffness
from laywright.surface.face import take_face
from solver import solve


@pytest.fixture(scope="module")
def part():
    job = hatch()
    laminate = analyse(job.layup)
    face = take_face(job.surface, None)
    return face, laminate, make_patterns(face, laminate, None, PatternSettings(triangles=1500))


def middle_of(model):
    spread = model.vertices - model.vertices.mean(axis=0)
    return int(np.argmin(np.linalg.norm(spread[:, :2], axis=1)))


def test_the_shell_weighs_what_the_draped_part_weighs(part):
    _, laminate, patterns = part
    model = shell_model("hatch", *part, AnalysisSettings(1500))
    corners = model.vertices[model.triangles]
    areas = np.linalg.norm(
        np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]), axis=1
    )
    densities = np.array([material.density for material in model.materials])
    mass = sum(
        0.5e-3 * float(densities[layer.materials] @ areas) * layer.thickness
        for layer in model.layers
    )
    local = local_laminate(laminate, draped_places(patterns))
    assert mass == pytest.approx(local.mass, rel=0.01)


def test_directions_lie_in_the_elements_at_the_ply_angles(part):
    model = shell_model("hatch", *part)
    corners = model.vertices[model.triangles]
    normals = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    normals /= np.linalg.norm(normals, axis=1, keepdims=True)
    for layer in model.layers:
        assert np.allclose(np.einsum("mi,mi->m", normals, layer.directions), 0.0, atol=1e-9)
        assert np.allclose(np.linalg.norm(layer.directions, axis=1), 1.0)
    first, second = model.layers[0].directions, model.layers[1].directions
    turn = np.einsum("mi,mi->m", np.cross(first, second), normals)
    angle = np.arctan2(turn, np.einsum("mi,mi->m", first, second))
    assert np.degrees(np.median(angle)) == pytest.approx(45.0, abs=1.0)


def test_every_element_is_as_stiff_as_the_draped_laminate_there():
    """A deep cap, whose cloth is sheared by up to 20 degrees; seen from the yarns of ply 1."""
    laminate = analyse(hatch().layup)
    face = take_face(shapes.cap(150.0, np.radians(50.0)), None)
    patterns = make_patterns(face, laminate, None, PatternSettings(triangles=1200))
    model = shell_model("cap", face, laminate, patterns, AnalysisSettings(1000))
    places = draped_places(patterns)
    assert 15.0 < np.degrees(np.abs(places.warp - places.weft + np.pi / 2.0)).max() < 25.0
    there = draped_stiffness(laminate, places.warp, places.weft, places.cover).a
    between = 0.5 * (places.warp[:, 0] + places.weft[:, 0]) - np.pi / 4.0
    expected = rotated_stiffness(there, -between)

    corners = model.vertices[model.triangles]
    normals = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    normals /= np.linalg.norm(normals, axis=1, keepdims=True)
    first = model.layers[0].directions
    found = np.zeros((len(normals), 3, 3))
    matrices = np.stack([material.stiffness for material in model.materials])
    for layer in model.layers:
        turn = np.einsum("mi,mi->m", np.cross(first, layer.directions), normals)
        angle = np.arctan2(turn, np.einsum("mi,mi->m", first, layer.directions))
        found += layer.thickness * rotated_stiffness(matrices[layer.materials], angle)

    surface = patterns.draped[0].surface
    _, nearest = cKDTree(surface.centroids).query(corners.mean(axis=1))
    expected = expected[nearest]
    error = np.abs(found - expected).max(axis=(1, 2)) / laminate.a[0, 0]
    spread = np.ptp(expected, axis=0).max() / laminate.a[0, 0]
    assert spread > 0.1
    assert np.median(error) < 0.005
    assert np.quantile(error, 0.95) < 0.01


@pytest.mark.solver
def test_the_hatch_cover_under_pressure(part, tmp_path):
    """Reactions carry the pressure; the crown bends with it; clamping stiffens; finer agrees.

    What presses on the held nodes themselves is not counted by the solver as a reaction: a strip
    at the edge that shrinks with the elements.
    """
    missing, sagged = {}, {}
    for triangles, edge in (
        (700, EdgeHold.PINNED),
        (1500, EdgeHold.PINNED),
        (1500, EdgeHold.CLAMPED),
    ):
        settings = AnalysisSettings(triangles, 0.002, edge)
        model = shell_model("hatch", *part, settings)
        answer = solve(shell_deck(model), tmp_path)
        corners = model.vertices[model.triangles]
        crosses = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
        pushed = 0.002 * 0.5 * crosses.sum(axis=0)
        reaction = answer.reactions["EDGE"]
        assert np.abs(reaction[:2]).max() < 0.01 * abs(pushed[2])
        missing[triangles, edge] = 1.0 + reaction[2] / pushed[2]
        assert np.sign(answer.shifts[middle_of(model), 2]) == np.sign(pushed[2])
        sagged[triangles, edge] = float(np.abs(answer.shifts[:, 2]).max())
    coarse, fine, clamped = sagged.values()
    assert coarse == pytest.approx(fine, rel=0.1)
    assert clamped < fine
    first, second, _ = missing.values()
    assert 0.0 < second < 0.8 * first < 0.03


@pytest.mark.solver
def test_a_core_stiffens_the_part(part, tmp_path):
    face, laminate, _ = part
    sheet = load_materials().core("Closed-cell PVC foam 80 kg/m^3")
    cored = analyse(dataclasses.replace(laminate.layup, core=Core(sheet, 5.0, 2)))
    patterns = make_patterns(face, cored, None, PatternSettings(triangles=400))
    model = shell_model("hatch", face, cored, patterns, AnalysisSettings(300))
    assert [layer.thickness for layer in model.layers][2] == 5.0
    stiff = np.abs(solve(shell_deck(model), tmp_path).shifts[:, 2]).max()
    plain = shell_model("hatch", *part, AnalysisSettings(300))
    assert stiff < 0.6 * np.abs(solve(shell_deck(plain), tmp_path).shifts[:, 2]).max()


def test_too_many_elements_are_refused():
    with pytest.raises(InputError, match="50 to 50000"):
        AnalysisSettings(10)
