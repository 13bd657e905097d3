"""The part of a job: a whole mesh, faces by name, or regions of a scan by points."""

from __future__ import annotations

import pytest

import shapes
from laywright.errors import InputError
from laywright.files.stl import stl_bytes
from laywright.job.part_section import read_part


@pytest.fixture
def folder(tmp_path):
    box = shapes.box(20.0, 30.0, 40.0)
    (tmp_path / "box.stl").write_bytes(stl_bytes(box.vertices, box.triangles))
    return tmp_path


def part(folder, **more):
    return read_part({"mesh": "box.stl", "unit": "mm", **more}, folder)


def test_all_of_it_a_face_or_a_region(folder):
    assert part(folder).area == pytest.approx(5200.0)
    assert part(folder, faces=["Face1"]).area == pytest.approx(1200.0)
    assert part(folder, region=[[10, 15, 40]]).area == pytest.approx(600.0)
    assert part(folder, region=[[10, 15, 40]], crease="100 deg").area == pytest.approx(5200.0)
    assert part(folder, mend={"hole": "5 mm"}).area == pytest.approx(5200.0)


@pytest.mark.parametrize(
    ("wrong", "words"),
    [
        ({"faces": ["Face1"], "region": [[0, 0, 0]]}, "leave one out"),
        ({"faces": "Face1"}, "names such as"),
        ({"region": "top"}, "points such as"),
        ({"region": [[1, 2]]}, "three numbers"),
        ({"mend": {"holes": "5 mm"}}, "the key 'holes'"),
        ({"seed": [[1, 2, 3]]}, "the key 'seed'"),
    ],
)
def test_a_slip_is_named(folder, wrong, words):
    with pytest.raises(InputError) as caught:
        part(folder, **wrong)
    assert words in str(caught.value)
