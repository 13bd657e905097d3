from __future__ import annotations

import pytest

from laywright.errors import InputError
from laywright.laminate.criteria import Criterion
from laywright.laminate.knock_downs import KnockDowns
from laywright.laminate.loading import Loading
from laywright.laminate.loads import LoadCase, StrainCase
from laywright.laminate.plate import Plate
from laywright.values import pack, unpack


def test_a_loading_without_any_load_is_refused():
    with pytest.raises(InputError, match="forces, strains or a panel"):
        Loading()


def test_a_loading_survives_storage():
    whole = Loading(
        LoadCase(force=(1.0, 2.0, 3.0)),
        StrainCase((1e-3, 0.0, 0.0)),
        Plate(100.0, 80.0, pressure=0.001),
        Criterion.HASHIN,
        KnockDowns(0.5, 0.6, 0.7, 0.8),
    )
    assert unpack(Loading, pack(whole)) == whole
