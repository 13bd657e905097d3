"""Errors carry their parts, read as one sentence and are the natural built-in."""

import inspect
import pickle

import pytest
from hypothesis import given
from hypothesis import strategies as st

from laywright import errors
from laywright.errors import LaywrightError

KINDS = [getattr(errors, name) for name in errors.__all__]
PARTS = ("Face3", "2 deg of draft", "3 deg of draft", "turn the face or the pull")

BUILT_IN = {
    errors.InputError: ValueError,
    errors.UnitError: ValueError,
    errors.LimitError: ValueError,
    errors.MaterialError: LookupError,
    errors.GeometryError: ValueError,
    errors.FaceError: ValueError,
    errors.FileError: OSError,
}


def test_every_error_of_the_module_is_public():
    defined = {
        name
        for name, kind in inspect.getmembers(errors, inspect.isclass)
        if issubclass(kind, LaywrightError)
    }
    assert defined == set(errors.__all__)


@pytest.mark.parametrize("kind", KINDS)
def test_message_is_one_sentence_made_of_the_parts(kind):
    error = kind(*PARTS)
    assert str(error) == (
        "Face3: found 2 deg of draft, needed 3 deg of draft; turn the face or the pull."
    )
    assert (error.where, error.found, error.needed, error.remedy) == PARTS


@pytest.mark.parametrize("kind", KINDS)
def test_every_error_is_caught_at_the_root(kind):
    with pytest.raises(LaywrightError) as caught:
        raise kind(*PARTS)
    assert type(caught.value) is kind


@pytest.mark.parametrize(("kind", "built_in"), BUILT_IN.items())
def test_every_error_is_the_natural_built_in(kind, built_in):
    assert issubclass(kind, built_in)


def test_more_special_errors_are_caught_by_the_more_general():
    assert issubclass(errors.UnitError, errors.InputError)
    assert issubclass(errors.LimitError, errors.InputError)
    assert issubclass(errors.FaceError, errors.GeometryError)
    assert not issubclass(errors.Cancelled, (ValueError, OSError, LookupError))


def test_stopping_needs_no_words():
    assert str(errors.Cancelled()) == (
        "the computation: found a request to stop, needed time to finish; "
        "nothing was changed, start it again when it suits."
    )
    assert errors.Cancelled("Roll Plan").where == "Roll Plan"


@pytest.mark.parametrize("kind", KINDS)
@given(parts=st.tuples(st.text(), st.text(), st.text(), st.text()))
def test_pickle_keeps_the_parts(kind, parts):
    error = pickle.loads(pickle.dumps(kind(*parts)))
    assert type(error) is kind
    assert (error.where, error.found, error.needed, error.remedy) == parts
    assert str(error) == str(kind(*parts))
