"""The order of elimination."""

import numpy as np
from scipy.sparse import coo_matrix, identity
from scipy.sparse.linalg import splu

import shapes
from laywright.cloth.drape.dissection import dissection


def fill(surface, order):
    count = len(surface.vertices)
    first, second = surface.edges.ends.T
    one = np.ones(len(first))
    graph = coo_matrix((one, (first, second)), shape=(count, count))
    matrix = (20 * identity(count) - graph - graph.T).tocsc()[order][:, order]
    options = {"SymmetricMode": True}
    return splu(matrix, permc_spec="NATURAL", diag_pivot_thresh=0.0, options=options).L.nnz


def test_every_vertex_once_and_less_fill_than_row_by_row():
    plate = shapes.graph(lambda x, y: 0.0 * x, (-10, 10), (-10, 10), (60, 60))
    order = dissection(plate)
    assert sorted(order) == list(range(len(plate.vertices)))
    assert fill(plate, order) < 0.4 * fill(plate, np.arange(len(order)))


def test_points_on_one_line_do_no_harm():
    fan = shapes.cap(10, 1.0, 1)
    strip = fan.moved(fan.vertices * [0.0, 0.0, 1.0])
    assert sorted(dissection(strip)) == list(range(7))
