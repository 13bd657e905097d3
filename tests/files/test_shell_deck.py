from __future__ import annotations

import dataclasses
import math

import numpy as np
import pytest

from laminate.navier import navier_deflection
from laywright.errors import InputError
from laywright.files.shell_deck import Hold, LayerMaterial, ShellLayer, ShellModel, shell_deck
from laywright.laminate.lamina import Lamina, reduced_stiffness
from laywright.laminate.ritz import RitzPlate, Support
from laywright.laminate.rotation import rotated_stiffness
from laywright.laminate.stiffness import laminate_stiffness, response
from laywright.laminate.transverse import through_moduli, transverse_stiffness
from solver import solve

GLASS = Lamina(45e3, 12e3, 0.28, 4.5e3)
SKIN = Lamina(20e3, 20e3, 0.15, 3e3)
FOAM = Lamina(50.0, 50.0, 0.25, 20.0, shear_13=20.0, shear_23=20.0)


def grid(a, b, across, along):
    """Return corners, triangles and the grid of corner numbers of a rectangle."""
    x, y = np.meshgrid(np.linspace(0, a, across + 1), np.linspace(0, b, along + 1), indexing="ij")
    number = np.arange(x.size).reshape(x.shape)
    p, q = number[:-1, :-1].ravel(), number[1:, :-1].ravel()
    r, s = number[1:, 1:].ravel(), number[:-1, 1:].ravel()
    triangles = np.concatenate([np.stack([p, q, r], 1), np.stack([p, r, s], 1)])
    return np.stack([x.ravel(), y.ravel(), 0.0 * x.ravel()], 1), triangles, number


class Stack:
    """A laminate as layers of the shell, and by laminated plate theory."""

    def __init__(self, *layers):
        self.laminae = [lamina for lamina, _, _ in layers]
        self.angles = np.radians([angle for _, angle, _ in layers])
        self.thicknesses = np.array([thickness for *_, thickness in layers])
        matrices = np.stack([reduced_stiffness(lamina) for lamina in self.laminae])
        self.plate = laminate_stiffness(matrices, self.angles, self.thicknesses)
        through = [through_moduli(lamina) for lamina in self.laminae]
        self.shear = np.array(
            [
                transverse_stiffness(matrices, self.angles, self.thicknesses, through, direction)
                for direction in (0.0, math.pi / 2.0)
            ]
        )

    def layers(self, count):
        materials, layers = [], []
        for number, (lamina, angle, thickness) in enumerate(
            zip(self.laminae, self.angles, self.thicknesses, strict=True)
        ):
            c, s = math.cos(angle), math.sin(angle)
            turn = np.array([[c, s], [-s, c]])
            through = turn @ np.diag(self.shear / self.thicknesses.sum()) @ turn.T
            materials.append(LayerMaterial("a ply", reduced_stiffness(lamina), through, 1.8))
            directions = np.tile([c, s, 0.0], (count, 1))
            layers.append(ShellLayer("a ply", thickness, np.full(count, number), directions))
        return tuple(materials), tuple(layers)


def supported(stack, a, b, across, along, pressure):
    """Return a simply supported rectangle and the number of its middle node."""
    vertices, triangles, number = grid(a, b, across, along)
    x = np.concatenate([number[0], number[-1]])
    y = np.concatenate([number[:, 0], number[:, -1]])
    holds = (Hold("EX", x, 2, 4), Hold("EY", y, 3, 3), Hold("EA", y, 1, 1), Hold("EB", y, 5, 5))
    model = ShellModel(
        "rectangle", vertices, triangles, *stack.layers(len(triangles)), holds, pressure
    )
    return model, int(number[across // 2, along // 2])


@pytest.mark.solver
@pytest.mark.parametrize(
    "stack",
    [
        Stack(*[(GLASS, angle, 0.25) for angle in (0, 90, 90, 0)]),
        Stack((SKIN, 0, 0.6), (FOAM, 0, 8.0), (SKIN, 0, 0.6)),
    ],
    ids=["cross-ply", "sandwich"],
)
def test_a_simply_supported_plate_meets_the_series(stack, tmp_path):
    """Navier's series with transverse shear; the error falls with finer elements."""
    exact = navier_deflection(stack.plate.d, (200.0, 150.0), 0.001, tuple(stack.shear))
    errors = []
    for cells in (8, 16):
        model, middle = supported(stack, 200.0, 150.0, cells, cells, 0.001)
        answer = solve(shell_deck(model), tmp_path)
        errors.append(abs(answer.shifts[middle, 2] / exact - 1.0))
        assert answer.shifts[middle, 2] > 0.0
    assert errors[1] < 0.01
    assert errors[1] < 0.5 * errors[0] or errors[0] < 1e-4


@pytest.mark.solver
def test_coupled_bending_and_twist_meets_ritz(tmp_path):
    stack = Stack(*[(GLASS, angle, 0.2) for angle in (0, 30, -30, -30, 30, 0)])
    plate = RitzPlate(stack.plate.d, stack.shear, (200.0, 150.0), Support.SIMPLE)
    expected = plate.at(plate.deflected(0.001), 0.0, 0.0).deflection
    model, middle = supported(stack, 200.0, 150.0, 16, 16, 0.001)
    assert solve(shell_deck(model), tmp_path).shifts[middle, 2] == pytest.approx(expected, rel=0.01)


@pytest.mark.solver
def test_layers_are_stacked_along_the_normals(tmp_path):
    """Hung up and heavy in one plane, [0/90] curls as laminated plate theory says."""
    stack = Stack((GLASS, 0, 0.5), (GLASS, 90, 0.5))
    vertices, triangles, number = grid(100.0, 20.0, 20, 4)
    holds = (
        Hold("FOOT", number[0], 1, 6),
        Hold("HEAD", number[-1], 1, 1),
    )
    model = ShellModel("strip", vertices, triangles, *stack.layers(len(triangles)), holds, 0.0)
    deck = shell_deck(model).replace(b"HEAD, 1, 1", b"HEAD, 1, 1, 0.1")
    answer = solve(deck, tmp_path)
    _, curvature = response(stack.plate, (1.0, 0.0, 0.0))
    assert math.copysign(1.0, -curvature[0]) == math.copysign(1.0, answer.shifts[number[-1, 2], 2])


@pytest.mark.solver
def test_a_coupled_material_of_its_own_is_the_turned_plain_one(tmp_path):
    """Turning the directions or the matrix of a ply is the same to the solver."""
    turn = math.radians(25.0)
    plain = Stack((GLASS, 25.0, 1.0))
    model, middle = supported(plain, 150.0, 150.0, 8, 8, 0.001)
    material = LayerMaterial(
        "turned",
        rotated_stiffness(reduced_stiffness(GLASS), turn),
        np.diag(plain.shear),
        1.8,
    )
    flat = dataclasses.replace(
        model.layers[0], directions=np.tile([1.0, 0.0, 0.0], (len(model.triangles), 1))
    )
    other = dataclasses.replace(model, materials=(material,), layers=(flat,))
    first, second = (solve(shell_deck(m), tmp_path).shifts[middle, 2] for m in (model, other))
    assert first == pytest.approx(second, rel=1e-4)


def numbers(lines):
    return [field.strip() for line in lines for field in line.split(",") if field.strip()]


def test_no_number_is_longer_than_the_solver_reads():
    stack = Stack((GLASS, 90.0, 1.0 / 3.0))
    model, _ = supported(stack, 200.0 / 3.0, 100.0 / 7.0, 4, 4, 1e-3 / 7.0)
    lines = shell_deck(model).decode("ascii").splitlines()
    fields = numbers(line for line in lines if not line.startswith("*"))
    assert max(len(field) for field in fields) <= 20
    assert all(len(line) < 132 for line in lines)


def test_edges_between_held_corners_are_held_as_well():
    stack = Stack((GLASS, 0.0, 1.0))
    model, _ = supported(stack, 100.0, 100.0, 4, 4, 0.001)
    lines = shell_deck(model).decode("ascii").splitlines()
    start = lines.index("*NSET, NSET=EX") + 1
    end = next(i for i in range(start, len(lines)) if lines[i].startswith("*"))
    held = numbers(lines[start:end])
    assert len(held) == len(set(held)) == 2 * (5 + 4)
    nodes = lines[lines.index("*NODE, NSET=ALL") + 1 :][: 25 + 56]
    places = {row[0]: float(row[1]) for row in (numbers([line]) for line in nodes)}
    assert {places[number] for number in held} == {0.0, 100.0}


def test_the_same_model_gives_the_same_bytes_and_notes_stand_at_the_head():
    model, _ = supported(Stack((GLASS, 0.0, 1.0)), 100.0, 100.0, 2, 2, 0.001)
    noted = dataclasses.replace(model, notes=("units mm, N, MPa",))
    deck = shell_deck(noted)
    assert deck == shell_deck(noted)
    assert deck.startswith(b"** rectangle\n** units mm, N, MPa\n*NODE")


def test_a_layer_that_does_not_fit_is_refused():
    model, _ = supported(Stack((GLASS, 0.0, 1.0)), 100.0, 100.0, 2, 2, 0.001)
    with pytest.raises(InputError, match="8 triangles"):
        dataclasses.replace(
            model,
            layers=(dataclasses.replace(model.layers[0], materials=np.zeros(3, np.int64)),),
        )
