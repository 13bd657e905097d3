from __future__ import annotations

import math

import pytest

from laminate.stacks import CARBON, MAT, RESIN, layup
from laywright.errors import InputError
from laywright.laminate.materials import Weave
from laywright.laminate.plies import Layup, Ply, Process, usual_resin_share
from laywright.values import pack, unpack


def test_resin_share_of_each_ply():
    mixed = Layup((Ply(MAT, 0.0), Ply(CARBON, 0.0, "outer")), RESIN)
    assert (mixed.ply_resin_share(1), mixed.ply_resin_share(2)) == (2.0 / 3.0, 0.5)
    set_by_hand = Layup(mixed.plies, RESIN, resin_share=0.42)
    assert (set_by_hand.ply_resin_share(1), set_by_hand.ply_resin_share(2)) == (0.42, 0.42)
    assert (mixed.ply_name(1), mixed.ply_name(2)) == ("ply 1", "outer")


@pytest.mark.parametrize("weave", Weave)
def test_better_processes_take_less_resin(weave):
    hand, bagged, infused = (usual_resin_share(process, weave) for process in Process)
    assert hand > bagged > infused


def test_layup_survives_storage():
    made = layup(CARBON, 0, 45, process=Process.BAGGED, resin_share=0.4, void_share=0.02)
    assert unpack(Layup, pack(made)) == made


@pytest.mark.parametrize(
    ("call", "where"),
    [
        (lambda: Layup((), RESIN), "layup"),
        (lambda: layup(CARBON, 0, resin_share=40.0), "resin share"),
        (lambda: layup(CARBON, 0, void_share=0.5), "void share"),
        (lambda: Ply(CARBON, math.nan, "outer"), "ply outer"),
    ],
)
def test_bad_layups(call, where):
    with pytest.raises(InputError) as caught:
        call()
    assert caught.value.where == where
