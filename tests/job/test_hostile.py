"""Every stage gets every surface of the corpus: a sound result or one sentence, in time."""

import dataclasses
import math
import re
import signal

import numpy as np
import pytest

import hostile
from job_demo import hatch
from laywright.cloth.patterns.pattern import PatternSettings
from laywright.errors import LaywrightError
from laywright.job import run
from laywright.mould.tiles.printer import load_printers
from laywright.shop.mixing.mix import MixSettings
from laywright.shop.plan import ShopSettings

_SECONDS = 300
PRINTER = load_printers()["Extra large, 420 x 420 x 480 mm"]
COARSE = PatternSettings(triangles=1500)
FINE = ShopSettings(mix=MixSettings(scale_resolution_g=0.01))


@pytest.fixture(autouse=True)
def in_time():
    """A stage that hangs is a failure like any other."""

    def late(*_):
        raise AssertionError(f"still at work after {_SECONDS} s")

    signal.signal(signal.SIGALRM, late)
    signal.alarm(_SECONDS)
    yield
    signal.alarm(0)


def numbers_in(value):
    """Yield every float and array of floats of a value, however deep."""
    if dataclasses.is_dataclass(value):
        for field in dataclasses.fields(value):
            yield from numbers_in(getattr(value, field.name))
    elif isinstance(value, (tuple, list)):
        for item in value:
            yield from numbers_in(item)
    elif isinstance(value, dict):
        yield from numbers_in(tuple(value.values()))
    elif isinstance(value, float) or (isinstance(value, np.ndarray) and value.dtype.kind == "f"):
        yield value


def outcome(name):
    """Return the surface of that name and its whole job, or the error that came of it."""
    try:
        surface = hostile.made(name)
        return surface, run(hatch(surface=surface, printer=PRINTER, shop=FINE, patterns=COARSE))
    except LaywrightError as problem:
        return None, problem


@pytest.mark.parametrize("name", hostile.CORPUS)
def test_a_sound_result_or_one_sentence(name):
    surface, result = outcome(name)
    if surface is None:
        assert "\n" not in str(result)
        assert all((result.where, result.found, result.needed, result.remedy))
        assert not re.search(r"\bnan\b|\binf\b", str(result))
        return
    assert np.isclose(result.face.surface.area, surface.area, rtol=1e-6)
    for stage in (result.release, result.body, result.tiles, result.patterns):
        assert not any(np.isnan(number).any() for number in numbers_in(stage))
    assert len(result.body.solid.boundary_loops) == 0
    assert result.body.solid.volume > 0.0
    for tile in result.tiles.tiles:
        assert len(tile.solid.boundary_loops) == 0
    assert 0.0 < result.shop.mix.laminate_resin_g < math.inf
    for pattern in result.patterns.patterns:
        assert 0.9 * surface.area < pattern.area
