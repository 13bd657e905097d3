"""The cuts of a job description: which are made, which refused, and whether more are proposed."""

from __future__ import annotations

from laywright.cloth.cuts.cuts import Answer, Cut, CutSettings, Joint
from laywright.errors import InputError
from laywright.job.sections import Section, choice, only
from laywright.job.setting_values import settings_of, vector_of

__all__ = ["read_cuts"]

_USUAL = "usual for the cloth"


def read_cuts(section: Section) -> CutSettings:
    """Return what the section ``[cuts]`` describes.

    Raises
    ------
    InputError
        If a key or value cannot be used.
    """
    settings = settings_of(CutSettings, section, "cuts", besides=("list",))
    listed = section.get("list", [])
    if not isinstance(listed, list):
        raise InputError(
            "[cuts] list",
            repr(listed),
            "a list such as [{ ply = 1, points = [[0, 0, 0], [10, 0, 5]] }]",
            "correct it",
        )
    cuts = tuple(_cut(entry, f"[cuts] cut {number}") for number, entry in enumerate(listed, 1))
    return CutSettings(
        cuts,
        settings.propose,
        settings.lap,
        settings.stagger,
        settings.plies_apart,
        settings.shear_limit,
    )


def _cut(entry: object, where: str) -> Cut:
    if not isinstance(entry, dict):
        raise InputError(where, repr(entry), "ply and points", "correct the cut")
    only(entry, {"ply", "points", "joint", "answer"}, where)
    ply = entry.get("ply", 0)
    if not isinstance(ply, int) or isinstance(ply, bool):
        raise InputError(
            f"{where} ply", repr(ply), "the number of a ply, or 0 for every ply", "correct it"
        )
    points = entry.get("points")
    if not isinstance(points, list):
        raise InputError(
            f"{where} points",
            "nothing" if points is None else repr(points),
            "points such as [[0, 0, 0], [10, 0, 5]]",
            "add the points, the one at the edge first",
        )
    joint = entry.get("joint", _USUAL)
    return Cut(
        ply,
        tuple(vector_of(point, f"{where} points") for point in points),
        None if joint == _USUAL else choice(Joint, joint, f"{where} joint"),
        choice(Answer, entry.get("answer"), f"{where} answer"),
    )
