"""Distance from points to straight pieces."""

import numpy as np
import shapely

from laywright.surface.lines import away_from_lines


def test_distances_in_a_plane_are_those_of_plane_geometry():
    rng = np.random.default_rng(7)
    points, lines = rng.uniform(-50, 50, (300, 3)), rng.uniform(-50, 50, (40, 2, 3))
    points[:, 2] = lines[:, :, 2] = 0.0
    wanted = shapely.distance(
        shapely.points(points[:, :2]), shapely.multilinestrings(shapely.linestrings(lines[..., :2]))
    )
    np.testing.assert_allclose(away_from_lines(points, lines), wanted, atol=1e-9)


def test_a_piece_without_length_is_a_point():
    assert away_from_lines(np.array([[3.0, 4.0, 0.0]]), np.zeros((1, 2, 3))).tolist() == [5.0]
