"""The library: every material at hand, read from the shipped cards and those of one's own."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from pathlib import Path

from laywright.errors import MaterialError
from laywright.laminate.card_fields import CardField, card_fields, from_card, named
from laywright.laminate.card_files import Card, read_cards
from laywright.laminate.constituents import Cloth, Fibre, FibreKind, Resin, Weave
from laywright.laminate.cores import CoreSheet
from laywright.laminate.supplies import Consumable, PlainSheet, ReleaseAgent

__all__ = [
    "Cloth",
    "Fibre",
    "FibreKind",
    "Materials",
    "Resin",
    "Weave",
    "gather_cards",
    "load_materials",
    "materials_of",
]

_KINDS: dict[str, type] = {
    "fibre": Fibre,
    "resin": Resin,
    "cloth": Cloth,
    "core": CoreSheet,
    "release": ReleaseAgent,
    "consumable": Consumable,
    "sheet": PlainSheet,
}


@dataclass(frozen=True)
class Materials:
    """The materials at hand.

    Attributes
    ----------
    fibres, resins, cloths, cores, releases, consumables, sheets : dict of str to material
        By name, in the order of their names.
    cards : dict of str to Card
        The card behind each material, with units, ranges and sources.
    """

    fibres: dict[str, Fibre]
    resins: dict[str, Resin]
    cloths: dict[str, Cloth]
    cores: dict[str, CoreSheet] = field(default_factory=dict)
    releases: dict[str, ReleaseAgent] = field(default_factory=dict)
    consumables: dict[str, Consumable] = field(default_factory=dict)
    sheets: dict[str, PlainSheet] = field(default_factory=dict)
    cards: dict[str, Card] = field(default_factory=dict)

    @property
    def cloth_names(self) -> tuple[str, ...]:
        """Names of the cloths."""
        return tuple(self.cloths)

    @property
    def resin_names(self) -> tuple[str, ...]:
        """Names of the resins."""
        return tuple(self.resins)

    @property
    def core_names(self) -> tuple[str, ...]:
        """Names of the cores."""
        return tuple(self.cores)

    def fibre(self, name: str) -> Fibre:
        """Return the fibre of this name, or raise MaterialError with the nearest names."""
        return named(self.fibres, name, "fibre")

    def cloth(self, name: str) -> Cloth:
        """Return the cloth of this name, or raise MaterialError with the nearest names.

        Examples
        --------
        >>> load_materials().cloth("Carbon twill weave 200 g/m^2").fibre.kind.value
        'carbon'
        """
        return named(self.cloths, name, "cloth")

    def resin(self, name: str) -> Resin:
        """Return the resin of this name, or raise MaterialError with the nearest names."""
        return named(self.resins, name, "resin")

    def core(self, name: str) -> CoreSheet:
        """Return the core of this name, or raise MaterialError with the nearest names."""
        return named(self.cores, name, "core")

    def fields(self, kind: str) -> tuple[CardField, ...]:
        """Return what may stand on a card of a kind, such as ``"cloth"``."""
        if kind not in _KINDS:
            raise _no_kind("card", kind)
        return card_fields(_KINDS[kind], {"fibre": self.fibres} if kind == "cloth" else None)

    def sheet(self, name: str) -> PlainSheet:
        """Return the plain sheet of this name, or raise MaterialError with the nearest names."""
        return named(self.sheets, name, "sheet")


def load_materials(folder: Path | None = None) -> Materials:
    """Read the shipped cards and those of a folder of one's own, which win by name.

    Parameters
    ----------
    folder : Path, optional
        Folder with further cards, one TOML file each; see `laywright.laminate.card_files`.

    Raises
    ------
    MaterialError
        If a card is malformed; the message names the file and the field.
    """
    shipped = gather_cards(Path(__file__).parent / "cards")
    own = {} if folder is None else gather_cards(folder)
    return materials_of((shipped | own).values())


def gather_cards(folder: Path) -> dict[str, Card]:
    """Return the cards of a folder by name.

    Raises
    ------
    MaterialError
        If there is no such folder, or two of its cards have the same name.
    """
    if not folder.is_dir():
        raise MaterialError(
            str(folder), "no such folder", "a folder with cards", "choose another folder"
        )
    found: dict[str, Card] = {}
    for card in read_cards(folder):
        if card.name in found:
            raise MaterialError(
                f"{card.file}: name",
                f"'{card.name}' a second time",
                "one card of each name",
                "rename or remove one of the two",
            )
        found[card.name] = card
    return found


def _no_kind(where: str, kind: str) -> MaterialError:
    return MaterialError(where, f"'{kind}'", " or ".join(_KINDS), "correct the line")


def materials_of(cards: Iterable[Card]) -> Materials:
    """Return the materials that cards describe.

    Raises
    ------
    MaterialError
        If a card is of an unknown kind, or lacks a field, or names a fibre that is on no card.
    """
    shelf: dict[str, list[Card]] = {kind: [] for kind in _KINDS}
    for card in sorted(cards, key=lambda card: card.name):
        if card.card not in shelf:
            raise _no_kind(f"{card.file}: card", card.card)
        shelf[card.card].append(card)
    fibres = {card.name: from_card(Fibre, card) for card in shelf["fibre"]}
    return Materials(
        fibres,
        {card.name: from_card(Resin, card) for card in shelf["resin"]},
        {card.name: from_card(Cloth, card, {"fibre": fibres}) for card in shelf["cloth"]},
        {card.name: from_card(CoreSheet, card) for card in shelf["core"]},
        {card.name: from_card(ReleaseAgent, card) for card in shelf["release"]},
        {card.name: from_card(Consumable, card) for card in shelf["consumable"]},
        {card.name: from_card(PlainSheet, card) for card in shelf["sheet"]},
        {card.name: card for kind in shelf.values() for card in kind},
    )
