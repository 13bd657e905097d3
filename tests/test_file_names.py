import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright.file_names import safe_name, safe_names

# Names that Windows keeps for devices, as its documentation of file names lists them.
DEVICES = {"con", "prn", "aux", "nul"} | {
    f"{port}{digit}" for port in ("com", "lpt") for digit in "0123456789¹²³"
}


def is_plain(name):
    return (
        bool(name)
        and len(name) <= 80
        and len(name.encode()) <= 160
        and not set(name) & set('/\\:*?"<>|\0\n\r\t')
        and name == name.strip(" .")
        and name.partition(".")[0].rstrip().casefold() not in DEVICES
    )


@given(st.text(max_size=120))
def test_a_safe_name_is_one_plain_name(text):
    name = safe_name(text)
    assert is_plain(name)
    assert safe_name(name) == name


@pytest.mark.parametrize(
    "text",
    [
        "../x",
        "a/b",
        "..\\..\\x",
        "CON",
        "con.txt",
        "Nul .stl",
        "com¹",
        "/etc/passwd",
        "C:\\x",
        ".",
        "",
        "a\0b",
        "a\nb",
        "con" + " " * 90 + "x",
        "con." + "x" * 90,
        "x" * 5000,
        "\U00020000" * 500,
        "Flügel ü naïve 翼",
        "\u202egnp.exe",
        "~/x",
        "$(id)",
        "-rf",
    ],
)
def test_names_that_somebody_may_type(text):
    name = safe_name(text)
    assert is_plain(name)
    assert safe_name(name) == name


@given(st.sampled_from(sorted(DEVICES)), st.text(alphabet=" .aX", max_size=90))
def test_a_device_is_never_named(device, rest):
    assert is_plain(safe_name(device.upper() + rest))


@given(st.lists(st.text(alphabet="aA/:-1 ", max_size=5), max_size=12))
def test_safe_names_never_meet(texts):
    names = safe_names(texts)
    assert len({name.casefold() for name in names}) == len(texts)
