"""What is said in more than one place about the release is the same everywhere."""

import re
import tomllib
from pathlib import Path
from xml.etree import ElementTree

import pytest
from packaging.requirements import Requirement

import laywright

CHECKOUT = Path(__file__).resolve().parents[1]
XMLNS = "{https://wiki.freecad.org/Package_Metadata}"
HELD_BY_THE_HOST = {"numpy", "scipy", "lxml"}


@pytest.fixture(scope="module")
def project():
    return tomllib.loads((CHECKOUT / "pyproject.toml").read_text(encoding="utf-8"))["project"]


@pytest.fixture(scope="module")
def package():
    return ElementTree.parse(CHECKOUT / "package.xml").getroot()


def pinned():
    lines = (CHECKOUT / "tools" / "requirements.txt").read_text(encoding="utf-8").splitlines()
    wanted = [Requirement(line) for line in lines if line and not line.startswith("#")]
    return {requirement.name: requirement for requirement in wanted}


def test_version_is_the_same_everywhere(project, package):
    newest = re.search(
        r"^## (\S+) \((\S+)\)$", (CHECKOUT / "CHANGELOG.md").read_text(encoding="utf-8"), re.M
    )
    assert project["version"] == laywright.__version__
    assert package.findtext(f"{XMLNS}version") == laywright.__version__
    assert newest.groups() == (laywright.__version__, package.findtext(f"{XMLNS}date"))


def test_a_document_of_this_release_is_kept_for_the_releases_after_it(package):
    """Save examples/hatch_cover as a job with this version, up to date, under its number."""
    version = package.findtext(f"{XMLNS}version")
    assert (CHECKOUT / "tests" / "documents" / f"{version}.FCStd").is_file()


def test_licence_is_the_same_everywhere(project, package):
    text = (CHECKOUT / "LICENSE").read_text(encoding="utf-8")
    assert project["license"] == package.findtext(f"{XMLNS}license") == "LGPL-2.1-or-later"
    assert "GNU LESSER GENERAL PUBLIC LICENSE" in text
    assert "Version 2.1, February 1999" in text


def test_icons_named_in_the_manifest_are_there(package):
    workbench = package.find(f"{XMLNS}content/{XMLNS}workbench")
    folder = CHECKOUT / workbench.findtext(f"{XMLNS}subdirectory")
    for icon in (
        CHECKOUT / package.findtext(f"{XMLNS}icon"),
        folder / workbench.findtext(f"{XMLNS}icon"),
    ):
        assert ElementTree.parse(icon).getroot().tag == "{http://www.w3.org/2000/svg}svg"


def test_python_is_the_same_everywhere(project, package):
    assert project["requires-python"] == f">={package.findtext(f'{XMLNS}pythonmin')}"


def test_every_package_that_is_needed_is_pinned_within_its_bounds(project):
    pins = pinned()
    for line in project["dependencies"]:
        requirement = Requirement(line)
        pin = pins[requirement.name]
        if requirement.name in HELD_BY_THE_HOST:
            assert not pin.specifier, f"{requirement.name} is the host's own"
            continue
        (exact,) = pin.specifier
        assert exact.operator == "=="
        assert requirement.specifier.contains(exact.version), line


def test_manifest_asks_only_for_packages_that_are_needed(project, package):
    asked = {
        entry.text for entry in package.findall(f"{XMLNS}depend") if entry.get("type") == "python"
    }
    assert asked < {Requirement(line).name for line in project["dependencies"]}


def test_wheel_holds_every_package_and_every_file_beside_them():
    tool = tomllib.loads((CHECKOUT / "pyproject.toml").read_text(encoding="utf-8"))["tool"]
    listed, data = tool["setuptools"]["packages"], tool["setuptools"]["package-data"]
    packages, left_out = set(), set()
    for root in (CHECKOUT / "core", CHECKOUT / "freecad_mod"):
        for init in root.rglob("__init__.py"):
            name = ".".join(init.parent.relative_to(root).parts)
            packages.add(name)
            patterns = data.get(name, [])
            beside = {path for pattern in ("*.*", "*/*.*") for path in init.parent.glob(pattern)}
            taken = {path for pattern in patterns for path in init.parent.glob(pattern)}
            left_out |= {
                path.relative_to(CHECKOUT).as_posix()
                for path in beside - taken
                if path.suffix not in {".py", ".pyc"}
                and not any((folder / "__init__.py").exists() for folder in inside(path, init))
            }
    assert packages == set(listed)
    assert left_out == set()


def inside(path, init):
    """Return the folders between a package and a path in it."""
    return [folder for folder in path.parents if init.parent in folder.parents]
