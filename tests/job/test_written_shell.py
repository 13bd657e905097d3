"""The shell among the files of a job, run by the solver as a person would run it."""

from __future__ import annotations

import subprocess

import pytest

from job_demo import hatch
from laywright.job import files_of, run, write_files
from laywright.job.analysis import AnalysisSettings


@pytest.mark.solver
def test_the_written_shell_runs_in_its_folder_and_lifts_under_pressure(tmp_path):
    """Pressure away from the mould lifts the cover; every result keeps the name of the file."""
    result = run(hatch(name="Hatch & lid, 2nd (try)", analysis=AnalysisSettings(300, 0.001)))
    write_files(files_of(result), tmp_path)
    folder = tmp_path / "analysis"
    (deck,) = folder.iterdir()
    done = subprocess.run(
        ["ccx", deck.stem], cwd=folder, capture_output=True, text=True, check=False, timeout=120
    )
    assert "Job finished" in done.stdout
    assert {deck.stem} == {path.stem for path in folder.iterdir()} - {"spooles"}
    lines = (folder / f"{deck.stem}.dat").read_text(encoding="ascii").splitlines()
    rows = [
        line.split() for line in lines if len(line.split()) == 4 and line[:10].strip().isdigit()
    ]
    lifts = [float(row[3]) for row in rows]
    normals = result.face.surface.normals.mean(axis=0)
    largest = max(lifts, key=abs)
    assert 0.001 < abs(largest) < 5.0
    away = -1.0 if result.face.mould_side.name == "OUTSIDE" else 1.0
    assert largest * normals[2] * away > 0.0
