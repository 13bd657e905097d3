"""Tolerances fit together: what one makes, the next does not undo."""

import dataclasses

import pytest

from laywright.tolerances import TOLERANCES, Tolerances


def test_all_are_more_than_nought():
    assert min(dataclasses.astuple(TOLERANCES)) > 0.0


def test_points_are_welded_far_below_every_deviation_that_is_accepted():
    accepted = (TOLERANCES.outline, TOLERANCES.chord, TOLERANCES.working_area)
    assert TOLERANCES.weld <= min(accepted) / 1000.0


def test_a_triangle_with_welded_corners_has_no_area():
    assert 0.5 * TOLERANCES.weld**2 < TOLERANCES.zero_area


def test_triangles_of_a_smooth_face_do_not_meet_in_an_edge():
    assert TOLERANCES.chord_angle < TOLERANCES.sharp_edge


def test_meshing_leaves_room_within_the_working_areas_bound():
    assert TOLERANCES.chord < TOLERANCES.working_area


def test_nobody_changes_them_on_the_way():
    with pytest.raises(dataclasses.FrozenInstanceError):
        TOLERANCES.weld = 1.0
    assert Tolerances() == TOLERANCES
    assert dataclasses.replace(TOLERANCES, chord=0.01).chord == 0.01
