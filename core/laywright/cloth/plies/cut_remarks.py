"""What a maker should know about cuts, in plain words."""

from __future__ import annotations

from collections.abc import Sequence

from laywright.arrays import Vector
from laywright.cloth.cuts.cuts import CutSettings, Joint, LaidCut, Propose
from laywright.cloth.cuts.stagger import Clash
from laywright.cloth.plies.lay import DrapedPly, Proposal

__all__ = ["clash_remarks", "cut_remarks"]


def cut_remarks(
    name: str, ply: DrapedPly, proposal: Proposal | None, settings: CutSettings
) -> list[str]:
    """Return the remarks on one ply: the cuts made, and those proposed.

    Parameters
    ----------
    name : str
        Name of the ply.
    ply : DrapedPly
    proposal : Proposal or None
    settings : CutSettings
    """
    remarks = [f"{name}: {_described(cut)}, made." for cut in ply.cuts]
    if proposal is None:
        return remarks
    before, after = (
        f"{100.0 * share:.1f} % of its area"
        for share in (proposal.share_before, proposal.share_after)
    )
    if not proposal.cuts:
        remarks.append(
            f"{name}: {before} passes a limit and no cuts were found that help; one piece of this "
            "cloth cannot cover the face. Move the start point, turn the ply, take a looser "
            "cloth or split the face into two Moulded Faces."
        )
        return remarks
    total = sum(cut.length for cut in proposal.cuts)
    few = "1 cut" if len(proposal.cuts) == 1 else f"{len(proposal.cuts)} cuts"
    remarks.append(
        f"{name}: one piece without cuts cannot cover the face: {before} passes a limit. "
        f"{few}, {total:.0f} mm together, bring that to {after}."
    )
    if settings.propose is Propose.SHOWN:
        remarks += [f"{name}: {_described(cut)}, proposed." for cut in proposal.cuts]
    return remarks


def clash_remarks(found: Sequence[Clash]) -> list[str]:
    """Return the remarks on cuts that lie too near each other."""
    return [
        f"Cuts of ply {clash.ply} and ply {clash.other} come within {clash.distance:.0f} mm of "
        f"each other near {_place(clash.place)}; at least {clash.needed:.0f} mm are wanted: move "
        "one."
        for clash in found
    ]


def _described(cut: LaidCut) -> str:
    start, end = cut.ends
    joint = f"lapped {cut.lap:.0f} mm" if cut.joint is Joint.LAP else "butted"
    return f"a cut of {cut.length:.0f} mm from {_place(start)} to {_place(end)}, {joint}"


def _place(point: Vector) -> str:
    x, y, z = (round(value) + 0.0 for value in point)
    return f"({x:.0f}, {y:.0f}, {z:.0f}) mm"
