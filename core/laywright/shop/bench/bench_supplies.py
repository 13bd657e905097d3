"""Which cards the bench works with: release agents, and what lies in a bag."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, fields
from typing import Any

from laywright.errors import MaterialError
from laywright.laminate.materials import Materials, load_materials
from laywright.laminate.plies import Process
from laywright.laminate.supplies import Consumable, ReleaseAgent, ReleaseKind, Use

__all__ = [
    "USUAL_SUPPLIES",
    "BenchSupplies",
    "supplies_at_hand",
    "supplies_of",
    "usual_supplies",
]

_KINDS: dict[str, ReleaseKind | Use] = {
    "wax": ReleaseKind.WAX,
    "film": ReleaseKind.FILM,
    "tape": ReleaseKind.TAPE,
    "peel_ply": Use.PEEL_PLY,
    "release_film": Use.RELEASE_FILM,
    "breather": Use.BREATHER,
    "flow_mesh": Use.FLOW_MESH,
    "bag_film": Use.BAG_FILM,
    "sealant_tape": Use.SEALANT_TAPE,
}

USUAL_SUPPLIES: dict[str, str] = {
    "wax": "Paste wax for moulds",
    "film": "Polyvinyl alcohol film, sprayed",
    "tape": "Release tape",
    "peel_ply": "Polyester peel ply 85 g/m^2",
    "release_film": "Perforated release film",
    "breather": "Polyester breather 150 g/m^2",
    "flow_mesh": "Flow mesh for infusion",
    "bag_film": "Nylon bag film",
    "sealant_tape": "Sealant tape",
}
"""Card that each is taken from where the job names none."""


@dataclass(frozen=True)
class BenchSupplies:
    """What stands on the shelf of the bench, as it stands on cards.

    Attributes
    ----------
    wax, film, tape : ReleaseAgent
        Paste wax, film that is sprayed over it, release tape.
    peel_ply, release_film, breather, flow_mesh, bag_film, sealant_tape : Consumable
        What lies in a bag and closes it.
    """

    wax: ReleaseAgent
    film: ReleaseAgent
    tape: ReleaseAgent
    peel_ply: Consumable
    release_film: Consumable
    breather: Consumable
    flow_mesh: Consumable
    bag_film: Consumable
    sealant_tape: Consumable

    def in_bag(self, process: Process) -> tuple[Consumable, ...]:
        """Return what lies between laminate and bag film, in the order of laying."""
        if process is Process.INFUSED:
            return (self.peel_ply, self.flow_mesh)
        return (self.peel_ply, self.release_film, self.breather)


def supplies_at_hand(materials: Materials, place: str) -> tuple[str, ...]:
    """Return the names of the cards that fit a place of `BenchSupplies`, such as ``"wax"``."""
    kind = _KINDS[place]
    if isinstance(kind, ReleaseKind):
        return tuple(name for name, agent in materials.releases.items() if agent.kind is kind)
    return tuple(name for name, item in materials.consumables.items() if item.use is kind)


def supplies_of(materials: Materials, names: Mapping[str, str]) -> BenchSupplies:
    """Return the supplies that cards describe.

    Parameters
    ----------
    materials : Materials
        Where the cards are.
    names : mapping of str to str
        Card of each place; places that are left out take `USUAL_SUPPLIES`.

    Raises
    ------
    MaterialError
        If a name is on no card, or on the card of another thing.
    """
    chosen: dict[str, Any] = {}
    for field in fields(BenchSupplies):
        name = names.get(field.name) or USUAL_SUPPLIES[field.name]
        at_hand = supplies_at_hand(materials, field.name)
        if name not in at_hand:
            raise MaterialError(
                f"bench: {_KINDS[field.name].value}",
                f"'{name}'",
                f"a card of it: {' or '.join(at_hand) or 'there is none'}",
                "choose another card or write one",
            )
        shelf: Mapping[str, Any] = (
            materials.releases
            if isinstance(_KINDS[field.name], ReleaseKind)
            else materials.consumables
        )
        chosen[field.name] = shelf[name]
    return BenchSupplies(**chosen)


def usual_supplies() -> BenchSupplies:
    """Return the supplies of the cards that come along."""
    return supplies_of(load_materials(), {})
