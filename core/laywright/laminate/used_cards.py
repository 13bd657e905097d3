"""The cards that a layup was made from: kept with it, so that it stays what it was.

A layup takes each material from the card that is stored with it, and from the library only what
is not stored yet.  Whoever wants the library's newer cards asks for them: `newer_cards` says
which differ, and an empty store takes them all.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Callable, Iterable
from dataclasses import dataclass

from laywright.laminate.card_files import Card, card_text
from laywright.laminate.extents import Extent
from laywright.laminate.materials import Materials, materials_of
from laywright.laminate.plies import Core, DropOff, Layup, Ply, Process

__all__ = ["NamedCore", "NamedPly", "layup_of", "newer_cards", "used_cards"]


@dataclass(frozen=True)
class NamedPly:
    """A ply by the name of its cloth; see `laywright.laminate.plies.Ply`."""

    cloth: str
    angle: float
    name: str = ""
    extent: Extent | None = None


@dataclass(frozen=True)
class NamedCore:
    """A core by the name of its sheet; see `laywright.laminate.plies.Core`."""

    sheet: str
    thickness: float
    after: int


def layup_of(
    library: Materials,
    plies: Iterable[NamedPly],
    resin: str,
    process: Process = Process.HAND,
    resin_share: float | None = None,
    void_share: float = 0.0,
    core: NamedCore | None = None,
    stored: Iterable[Card] = (),
    drop_off: float | None = None,
    drop_way: DropOff = DropOff.IN,
) -> Layup:
    """Return a layup of materials by their names, with their cards in it.

    Parameters
    ----------
    library : Materials
        Where cards come from that are not stored.
    plies : iterable of NamedPly
        The first touches the mould.
    resin : str
    process, resin_share, void_share
        As for `laywright.laminate.plies.Layup`.
    core : NamedCore or None
    stored : iterable of Card
        Cards that win over those of the library.
    drop_off, drop_way
        As for `laywright.laminate.plies.Layup`.

    Raises
    ------
    MaterialError
        If a name is on no card.
    """
    plies = tuple(plies)
    cards = used_cards(
        library, [ply.cloth for ply in plies], resin, core.sheet if core else "", stored
    )
    own = materials_of(cards)
    return Layup(
        tuple(Ply(own.cloth(ply.cloth), ply.angle, ply.name, ply.extent) for ply in plies),
        own.resin(resin),
        process,
        resin_share,
        void_share,
        None if core is None else Core(own.core(core.sheet), core.thickness, core.after),
        cards,
        drop_off,
        drop_way,
    )


def used_cards(
    library: Materials,
    cloths: Iterable[str],
    resin: str,
    core: str = "",
    stored: Iterable[Card] = (),
) -> tuple[Card, ...]:
    """Return the cards of the named materials and of the fibres in them, by name.

    A card says the same whatever its file is called, so each is given the name of its material
    for a file name: a layup does not change when a file is renamed.

    Parameters
    ----------
    library : Materials
        Where cards come from that are not stored.
    cloths : iterable of str
        Names of the cloths.
    resin, core : str
        Names; an empty core is none.
    stored : iterable of Card
        Cards that win over those of the library.

    Raises
    ------
    MaterialError
        If a name is on no card.
    """
    kept = {card.name: card for card in stored}
    used: dict[str, Card] = {}

    def take(name: str, find: Callable[[str], object]) -> Card:
        if name not in kept:
            find(name)
        used[name] = dataclasses.replace(kept.get(name) or library.cards[name], file=name)
        return used[name]

    for name in dict.fromkeys(cloths):
        take(take(name, library.cloth).texts["fibre"], library.fibre)
    take(resin, library.resin)
    if core:
        take(core, library.core)
    return tuple(used[name] for name in sorted(used))


def newer_cards(library: Materials, stored: Iterable[Card]) -> tuple[str, ...]:
    """Return the names of stored cards of which the library now says something else."""
    return tuple(
        card.name
        for card in stored
        if card.name in library.cards and card_text(card) != card_text(library.cards[card.name])
    )
