"""What docs/ says about job descriptions is true: every key, every default, every example."""

import contextlib
import dataclasses
import io
import re
import shutil
import tomllib

import pytest

from doc_reading import CHECKOUT, CORE, DOCS, blocks
from laywright import values
from laywright.__main__ import main
from laywright.errors import InputError
from laywright.job.description import read_job

EXAMPLES = CHECKOUT / "examples"
WITHOUT_CAD = (DOCS / "without-cad.md").read_text(encoding="utf-8")
FIRST = (EXAMPLES / "rain_hood.toml").read_text(encoding="utf-8")

_TABLE = re.compile(r"^\| key in `\[([\w.]+)\]` \|.*\n\|[-|]+\|\n((?:\|.*\n)+)", re.MULTILINE)
_CODE = re.compile(r"`([^`]+)`")
# Read beside the settings of their section, which name only theirs when they refuse a key.
_ONLY_IF_ASKED = ("part.mend", "load", "load.strain", "load.panel", "load.counted_on", "analysis")


def key_tables():
    """Return key and default (None where it is told in words) by section of job.toml."""
    tables = {}
    for section, rows in _TABLE.findall(WITHOUT_CAD):
        tables[section] = {}
        for row in rows.splitlines():
            keys, _, default = (cell.strip() for cell in row.strip().strip("|").split("|"))
            names, stated = _CODE.findall(keys), _CODE.findall(default)
            stated = stated * len(names) if len(stated) == 1 else stated or [None] * len(names)
            tables[section] |= dict(zip(names, stated, strict=True))
    return tables


def described(folder, text):
    """Read a description from a folder in which the example's mesh lies."""
    path = folder / "job.toml"
    path.write_text(text, encoding="utf-8")
    return read_job(path)


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    """Return a folder with the examples that need no CAD program, as a reader has them."""
    place = tmp_path_factory.mktemp("docs") / "examples"
    place.mkdir()
    for pattern in ("*.toml", "*.obj", "*.stl"):
        for path in EXAMPLES.glob(pattern):
            shutil.copy(path, place)
    return place


def test_the_first_description_is_the_example():
    shown = blocks(WITHOUT_CAD, "toml")[0]
    assert tomllib.loads(shown) == tomllib.loads(FIRST)


@pytest.mark.parametrize("section", ["", *key_tables()])
def test_keys_are_all_there_and_no_other(section, folder):
    tables = key_tables()
    name = section or None
    wrong = f"[{section}]\nno_such_key = 1\n" if name else "no_such_key = 1\n"
    text = (
        FIRST.replace(f"[{section}]\n", wrong)
        if f"[{section}]\n" in FIRST
        else (FIRST + wrong if name else wrong + FIRST)
    )
    with pytest.raises(InputError) as refused:
        described(folder, text)
    known = set(refused.value.needed.removeprefix("one of ").split(", "))
    if section == "":
        assert known == {"name", "prices"} | {name for name in tables if "." not in name}
    else:
        parts = {name.rpartition(".")[2] for name in tables if name.rpartition(".")[0] == section}
        assert known | parts == set(tables[section]) | parts


def leaves(tree, place=""):
    """Return the numbers, words and blanks of a tree by their place in it."""
    if isinstance(tree, dict):
        parts = tree.items()
    elif isinstance(tree, list):
        parts = enumerate(tree)
    else:
        return {place: round(tree, 12) if isinstance(tree, float) else tree}
    return {
        key: leaf for name, part in parts for key, leaf in leaves(part, f"{place}/{name}").items()
    }


def test_defaults_written_out_change_nothing(folder):
    plain = described(folder, FIRST)
    kept = tomllib.loads(FIRST)
    lines = [f'name = "{kept["name"]}"']
    written = 0
    for section, keys in key_tables().items():
        own = kept.get(section, {})
        stated = {key: text for key, text in keys.items() if text is not None and key not in own}
        if section in _ONLY_IF_ASKED or not (own or stated):
            continue
        lines.append(f"[{section}]")
        lines += [f"{key} = {text}" for key, text in stated.items()]
        lines += re.findall(rf"^\[{section}\]\n(.*?)(?=^\[|\Z)", FIRST, re.DOTALL | re.MULTILINE)
        written += len(stated)
    full = described(folder, "\n".join(lines))
    assert written > 40
    for field in dataclasses.fields(plain):
        if field.name != "surface":
            there, _ = values.plain(getattr(full, field.name))
            here, _ = values.plain(getattr(plain, field.name))
            assert leaves(there) == leaves(here), field.name
    assert (full.surface.vertices == plain.surface.vertices).all()
    assert (full.surface.triangles == plain.surface.triangles).all()


def test_meshes_of_the_examples_are_as_drawn():
    names = {"__name__": "draw_meshes", "__file__": str(EXAMPLES / "draw_meshes.py")}
    exec((EXAMPLES / "draw_meshes.py").read_text(encoding="utf-8"), names)
    for name, content in names["meshes"]().items():
        assert (EXAMPLES / name).read_bytes() == content, name


@pytest.mark.parametrize("name", sorted(path.stem for path in EXAMPLES.glob("*.toml")))
def test_the_example_runs_and_says_what_the_page_shows(name, folder):
    commands = [line for code in blocks(WITHOUT_CAD, "sh") for line in code.splitlines()]
    command = next(line for line in commands if f"examples/{name}.toml" in line)
    options = command.partition(".toml")[2].split()
    said = io.StringIO()
    with contextlib.redirect_stdout(said):
        code = main(["run", str(folder / f"{name}.toml"), *options])
    assert code == 0
    out = folder / f"{name} files"
    assert (out / f"job sheet {options[-1] if options else 'A4'}.pdf").stat().st_size > 10_000
    for shown in blocks(WITHOUT_CAD, "text"):
        if shown.startswith(tomllib.loads((folder / f"{name}.toml").read_text("utf-8"))["name"]):
            agree(shown, said.getvalue())


def agree(shown, said):
    """Compare lines: the words exactly, the numbers within 3 % or one in the last place."""
    number = re.compile(r"(?<![\w^])\d+(?:\.\d+)?")
    really = said.strip().replace(", version", "\n", 1).splitlines()
    del really[1]
    for line, real in zip(shown.splitlines(), really, strict=False):
        assert number.sub("#", line) == number.sub("#", real)
        for text, found in zip(number.findall(line), number.findall(real), strict=True):
            last = 10.0 ** -len(text.partition(".")[2])
            assert float(text) == pytest.approx(float(found), rel=0.03, abs=1.01 * last), line


def test_the_python_on_the_page_runs(folder, monkeypatch):
    monkeypatch.chdir(folder.parent)
    (code,) = blocks(WITHOUT_CAD, "python")
    exec(compile(code, "without-cad.md", "exec"), {})
    assert (folder.parent / "rain hood files" / "job.json").is_file()


def test_cards_on_the_pages_are_read():
    from laywright.laminate.card_files import parse_card
    from laywright.mould.tiles.printer import load_printers

    (cloth,) = blocks((DOCS / "stages" / "layup.md").read_text("utf-8"), "toml")
    assert parse_card(cloth, "layup.md").name == "E-glass plain weave 163 g/m^2"
    (printer,) = blocks((DOCS / "stages" / "print-tiles.md").read_text("utf-8"), "toml")
    shipped = CORE / "mould" / "tiles" / "printers"
    assert tomllib.loads(printer) in [
        tomllib.loads(p.read_text("utf-8")) for p in shipped.glob("*")
    ]
    assert tomllib.loads(printer)["name"] in load_printers()
