"""Patterns that are the same for the shears."""

import dataclasses
import math

import numpy as np

from cloth_demo import pattern_of
from laywright.cloth.patterns.alike import ALIKE, alike_groups

PLATE = np.array([[0, 0], [300, 0], [300, 200], [0, 200]], float)


def plate(ply, grown=0.0, cloth="twill"):
    return pattern_of(PLATE + grown * np.sign(PLATE - 100.0), ply, cloth, 1000.0)


def test_the_largest_of_a_group_leads_it():
    patterns = [plate(1), plate(2, 5.0), plate(3, 0.2), plate(4, 5.1)]
    assert alike_groups(patterns) == ((2, 0), (3, 1))
    assert alike_groups(patterns, 10.0) == ((3, 1, 2, 0),)
    assert ALIKE == 1.0


def test_other_cloth_angle_openings_or_slits_are_not_alike():
    first = plate(1)
    for other in (
        plate(2, cloth="mat"),
        dataclasses.replace(plate(2), angle=math.pi / 4),
        dataclasses.replace(plate(2), openings=(PLATE[:3] * 0.1 + 50.0,)),
        dataclasses.replace(plate(2), slits=(PLATE[:2] * 0.1,)),
        dataclasses.replace(plate(2), datum=first.datum + 2.0),
    ):
        assert alike_groups([first, other]) == ((0,), (1,))


def test_points_on_the_line_do_not_matter():
    many = np.concatenate(
        [np.linspace(a, b, 7)[:-1] for a, b in zip(PLATE, PLATE[[1, 2, 3, 0]], strict=True)]
    )
    shifted = dataclasses.replace(pattern_of(many, 2, "twill", 1000.0), datum=plate(1).datum)
    assert alike_groups([plate(1), shifted]) in (((0, 1),), ((1, 0),))
