"""The whole job without CAD: results, re-runs, files, the description file."""

import csv
import dataclasses
import hashlib
import json
import math
import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest
import trimesh

import shapes
from job_demo import hatch
from laywright import values
from laywright.__main__ import main, summary
from laywright.errors import Cancelled, LaywrightError
from laywright.files.stl import stl_bytes
from laywright.job import JobResult, files_of, freshness, run, write_files
from laywright.job.analysis import AnalysisSettings
from laywright.job.description import read_job
from laywright.surface.face import MouldSide

ROOT = Path(__file__).resolve().parents[2]

DESCRIPTION = """
name = "Test hatch"

[part]
mesh = "hatch.stl"
unit = "mm"
pull = "largest least draft"
mould_side = "outside (cavity)"

[layup]
resin = "Laminating epoxy, slow hardener"
process = "hand"
resin_share = "50 %"
plies = [
    { cloth = "E-glass twill weave 200 g/m^2", angle = "0 deg" },
    { cloth = "E-glass twill weave 200 g/m^2", angle = "45 deg" },
    { cloth = "E-glass twill weave 200 g/m^2", angle = "0 deg" },
]

[printer]
use = "Medium, 220 x 220 x 250 mm"

[patterns]
margin = "2 cm"

[roll]
seconds = "0 s"

[mix]
temperature = "70 degF"
scale_resolution_g = "0.5 g"

[cure]
mould_softening_c = "70 degC"
"""


@pytest.fixture(scope="module")
def result():
    return run(hatch())


def write_description(folder, text=DESCRIPTION):
    surface = shapes.hatch()
    (folder / "hatch.stl").write_bytes(stl_bytes(surface.vertices, surface.triangles))
    path = folder / "job.toml"
    path.write_text(text, encoding="utf-8")
    return path


def test_the_chain_holds_together(result):
    area = shapes.hatch().area
    assert result.face.surface.area == pytest.approx(area)
    assert result.release.undercut_area == 0.0
    assert result.body.solid.is_closed
    assert all(tile.solid.is_closed for tile in result.tiles.tiles)
    assert abs(result.tiles.volume_error) < 1e-6
    assert [pattern.ply for pattern in result.patterns.patterns] == [1, 2, 3]
    for pattern in result.patterns.patterns:
        # A drape changes area by its shear (cos) and its small stretch only, never gains.
        assert 0.95 * area < pattern.net_area < 1.02 * area
    cloth = sum(pattern.area for pattern in result.patterns.patterns) * 200e-6
    assert result.shop.mix.cloth_g == pytest.approx(cloth)
    assert {placement.ply for placement in result.roll.rolls[0].placements} == {1, 2, 3}


def test_every_stage_is_stamped_and_a_second_run_computes_nothing(result, monkeypatch):
    assert all(len(digest) == 16 for digest in result.digests.values())
    assert len(set(result.digests.values())) == len(result.digests) == 9
    from laywright.stage import Stage

    def never(self, *args, **kwargs):
        raise AssertionError(f"{self.title} was computed again")

    monkeypatch.setattr(Stage, "__call__", never)
    again = run(hatch(), result)
    assert again.digests == result.digests


def test_only_the_stages_behind_a_change_are_new(result):
    job = hatch()
    changed = run(
        dataclasses.replace(job, tiles=dataclasses.replace(job.tiles, clearance=0.2)), result
    )
    new = {t for t in result.digests if result.digests[t] != changed.digests[t]}
    assert new == {"Print Tiles", "Job Sheet"}
    assert changed.patterns is result.patterns


def test_every_result_survives_storage(result):
    for field in dataclasses.fields(JobResult):
        value = getattr(result, field.name)
        if field.name not in ("name", "analysis"):
            packed = values.pack(value)
            assert values.pack(values.unpack(type(value), packed)) == packed


def test_same_result_same_bytes_and_the_record_names_them(result, tmp_path):
    files = files_of(result)
    assert files == files_of(result)
    record = json.loads(files["job.json"])
    assert record["version"] == result.version
    assert set(record["files"]) == set(files) - {"job.json"}
    for path in write_files(files, tmp_path / "out"):
        name = path.relative_to(tmp_path / "out").as_posix()
        assert hashlib.sha256(path.read_bytes()).hexdigest() == record["files"].get(
            name, hashlib.sha256(files["job.json"]).hexdigest()
        )
    assert freshness(tmp_path / "out", result.digests) == ()
    assert freshness(tmp_path, result.digests) is None
    stale = result.digests | {"Layup": "another"}
    assert freshness(tmp_path / "out", stale) == ("Layup",)


def test_solids_in_the_files_are_closed_for_a_reader_that_only_sees_positions(result, tmp_path):
    write_files(files_of(result), tmp_path)
    paths = list((tmp_path / "mould").glob("*.stl"))
    names = {path.stem.removesuffix(" (mm)") for path in paths}
    tiles = {f"tile {tile.name}" for tile in result.tiles.tiles}
    assert names > tiles
    assert any(name.startswith(result.name) for name in names)
    for path in paths:
        assert trimesh.load(path).is_watertight, path.name


def test_a_load_and_the_shell_are_asked_for_in_the_description(result, tmp_path):
    """The load changes the sheet alone; the shell goes beside the other files and is told old."""
    asked = '\n[load]\npull_along = "10 N/mm"\n\n[analysis]\ntriangles = 300\npressure = "2 kPa"\n'
    job = read_job(write_description(tmp_path, DESCRIPTION + asked))
    assert job.analysis == AnalysisSettings(300, 0.002)
    loaded = run(hatch(loading=job.loading, analysis=job.analysis), result)
    new = {t for t in loaded.digests if loaded.digests[t] != result.digests.get(t)}
    assert new == {"Job Sheet", "Shell for Analysis"}
    files = files_of(loaded)
    deck = files["analysis/shell_mm_N_MPa.inp"].decode("ascii")
    assert deck.startswith(f"** Test hatch, {loaded.version}\n")
    assert "*DLOAD\nSHELL, P, 0.002\n" in deck
    assert "times this load" in files["job sheet.html"].decode()
    assert not any(name.startswith("analysis/") for name in files_of(result))
    write_files(files, tmp_path / "out")
    stale = dataclasses.replace(loaded, analysis=AnalysisSettings(300, 0.003))
    assert freshness(tmp_path / "out", stale.digests) == ("Shell for Analysis",)


@pytest.mark.solver
def test_the_written_shell_runs_in_its_folder_and_lifts_under_pressure(result, tmp_path):
    """Pressure away from the mould, which stands above; the solver keeps the file's name."""
    asked = dataclasses.replace(
        result, name="Hatch & lid, 2nd (try)", analysis=AnalysisSettings(300)
    )
    write_files(
        {name: c for name, c in files_of(asked).items() if name.startswith("analysis/")}, tmp_path
    )
    folder = tmp_path / "analysis"
    (deck,) = folder.iterdir()
    done = subprocess.run(
        ["ccx", deck.stem], cwd=folder, capture_output=True, text=True, check=False, timeout=120
    )
    assert "Job finished" in done.stdout
    assert {path.stem for path in folder.iterdir()} - {"spooles"} == {deck.stem}
    lines = (folder / f"{deck.stem}.dat").read_text(encoding="ascii").splitlines()
    rows = [line.split() for line in lines if line[:10].strip().isdigit()]
    largest = max((float(row[3]) for row in rows if len(row) == 4), key=abs)
    assert asked.face.mould_side is MouldSide.OUTSIDE
    assert -5.0 < largest < -0.001


def test_files_of_an_earlier_job_go_unless_somebody_changed_them(result, tmp_path):
    files = files_of(result)
    kept, gone = "mould/kept.txt", "mould/gone.txt"
    old = dict.fromkeys((kept, gone), b"old")
    record = {"files": {name: hashlib.sha256(b"old").hexdigest() for name in old}}
    write_files(old | {"job.json": json.dumps(record).encode()}, tmp_path)
    (tmp_path / kept).write_bytes(b"my own notes")
    write_files(files, tmp_path)
    assert not (tmp_path / gone).exists()
    assert (tmp_path / kept).read_bytes() == b"my own notes"


def test_cancel_in_any_stage_raises_cancelled():
    seen = []

    def stop_late(share, doing="", /):
        seen.append(share)
        if share > 0.15:
            raise Cancelled

    with pytest.raises(Cancelled):
        run(hatch(), progress=stop_late)
    assert seen == sorted(seen)


def test_the_command_line_gives_the_same_job_as_the_library(result, tmp_path, capsys):
    path = write_description(tmp_path)
    assert main(["run", str(path), "--out", str(tmp_path / "out")]) == 0
    printed = capsys.readouterr().out
    assert "print tiles     4" in printed
    with (tmp_path / "out" / "tables" / "tiles.csv").open(encoding="utf-8-sig") as rows:
        tiles = list(csv.DictReader(rows))
    mass, hours = (sum(float(row[key]) for row in tiles) for key in ("mass (g)", "time (h)"))
    (line,) = (line for line in printed.splitlines() if line.startswith("print tiles"))
    count, grams, time, *_ = line.removeprefix("print tiles").split(",")
    assert int(count) == len(tiles)
    assert float(grams.removesuffix(" g")) == pytest.approx(mass, abs=0.6)
    assert float(time.removesuffix(" h")) == pytest.approx(hours, abs=0.1)
    table = (tmp_path / "out" / "tables" / "plies.csv").read_text(encoding="utf-8-sig")
    areas = [float(line.split(",")[3]) for line in table.splitlines()[1:]]
    ours = [pattern.area / 1e6 for pattern in result.patterns.patterns]
    assert areas == pytest.approx(ours, rel=2e-3)
    job = read_job(path)
    assert job.shop.mix.temperature_c == pytest.approx(21.111, abs=1e-3)
    assert job.shop.cure.temperature_c == job.shop.mix.temperature_c
    assert job.shop.cure.mould_softening_c == 70.0
    assert job.patterns.margin == 20.0
    assert job.layup.plies[1].angle == pytest.approx(math.pi / 4)


def test_the_tiles_have_a_cost_where_a_price_was_given(result):
    plain = summary(result)
    mass = sum(tile.mass for tile in result.tiles.tiles)
    assert plain.count("skins at the cuts included\n") == 1
    plastic = dataclasses.replace(result.body.plastic, price=20.0, currency="EUR")
    paid = dataclasses.replace(result, body=dataclasses.replace(result.body, plastic=plastic))
    assert f"skins at the cuts included, {0.02 * mass:.2f} EUR\n" in summary(paid)


@pytest.mark.parametrize(
    ("old", "new", "words"),
    [
        ('unit = "mm"', 'unit = "kg"', "kg"),
        ('margin = "2 cm"', "margin = 20", "a number with its unit in quotes"),
        ('margin = "2 cm"', 'margin = "2 kg"', "a quantity in mm"),
        ('margin = "2 cm"', 'margin = "2,5 cm"', "a point as the decimal mark"),
        ("[patterns]", "[pattern]", "the key 'pattern'"),
        ('use = "Medium', 'use = "Giant', "'Giant"),
        ("E-glass twill weave 200", "E-glass twil weave 200", "E-glass twill weave 200 g/m^2"),
        ('resin_share = "50 %"', 'resin_share = "50"', "0.05 to 0.95"),
        ('process = "hand"', 'process = "foot"', "'hand' or 'bagged' or 'infused'"),
        ('mesh = "hatch.stl"', 'mesh = "no.stl"', "no.stl"),
        ("name =", "name", "not TOML"),
        ('seconds = "0 s"', 'secs = "0 s"', "the key 'secs'"),
        ('pull = "largest least draft"', 'pull = "up"', "three numbers such as [0, 0, 1]"),
        ('angle = "45 deg"', "angle = 45", "a text in quotes"),
    ],
)
def test_a_wrong_description_is_refused_in_one_sentence(tmp_path, capsys, old, new, words):
    assert old in DESCRIPTION
    path = write_description(tmp_path, DESCRIPTION.replace(old, new, 1))
    assert main(["run", str(path)]) == 1
    said = capsys.readouterr().err.strip()
    assert words in said
    assert "\n" not in said
    assert said.endswith(".")
    assert sorted(p.name for p in tmp_path.iterdir()) == ["hatch.stl", "job.toml"]


def test_a_missing_description_is_one_sentence(tmp_path, capsys):
    assert main(["run", str(tmp_path / "none.toml")]) == 1
    assert "cannot be read" in capsys.readouterr().err


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ('datum = "left"\n', "[datum]: found 'left', needed a section with point and direction"),
        ("#" * 1_000_000 + "\n", "bytes, needed a job description"),
    ],
)
def test_what_is_no_description_is_one_sentence(tmp_path, capsys, text, words):
    path = write_description(tmp_path, text + DESCRIPTION)
    assert main(["run", str(path)]) == 1
    said = capsys.readouterr().err.strip()
    assert words in said
    assert "\n" not in said


def test_stopping_by_hand_writes_nothing(tmp_path, capsys, monkeypatch):
    def stopped(*_, **__):
        raise KeyboardInterrupt

    monkeypatch.setattr("laywright.__main__.run", stopped)
    path = write_description(tmp_path)
    assert main(["run", str(path)]) == 1
    assert capsys.readouterr().err.strip() == "Stopped; nothing was written."
    assert sorted(p.name for p in tmp_path.iterdir()) == ["hatch.stl", "job.toml"]


def test_metres_taken_for_millimetres_are_noticed(tmp_path):
    path = write_description(tmp_path, DESCRIPTION.replace('unit = "mm"', 'unit = "m"'))
    with pytest.raises(LaywrightError):
        run(read_job(path))


def test_it_runs_as_a_module_with_nothing_of_cad_on_the_path():
    done = subprocess.run(
        [sys.executable, "-m", "laywright", "--version"],
        env={"PYTHONPATH": str(ROOT / "core"), "PATH": "/usr/bin:/bin"},
        capture_output=True,
        text=True,
        check=True,
    )
    assert done.stdout.strip() == "laywright 0.1.0"


def test_a_flipped_pull_is_refused_by_the_mould_and_named(result):
    with pytest.raises(LaywrightError, match="hold the part back"):
        run(hatch(pull=tuple(-np.array(result.face.pull))))


def test_a_mould_with_marks_of_the_datum_changes_body_and_tiles_alone(result):
    marked = run(dataclasses.replace(hatch(), marks_datum=True), result)
    changed = {name for name in marked.digests if marked.digests[name] != result.digests[name]}
    assert changed == {"Mould Body", "Print Tiles", "Job Sheet"}
    assert marked.body.volume < result.body.volume
    assert marked.body.largest_deviation == result.body.largest_deviation
    assert all(tile.solid.is_closed for tile in marked.tiles.tiles)


def test_marks_of_the_datum_are_read_from_the_description(tmp_path):
    assert not read_job(write_description(tmp_path)).marks_datum
    text = DESCRIPTION.replace("[roll]", "[mould]\nmark_datum = true\n\n[roll]")
    assert read_job(write_description(tmp_path, text)).marks_datum
