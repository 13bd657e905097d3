"""What the job sheet tells of the laminate: its figures, how sure they are, and as it is draped."""

from __future__ import annotations

from laywright.cloth.patterns.pattern import PatternSet
from laywright.errors import MaterialError
from laywright.files.page import Table
from laywright.job.draped import draped_places
from laywright.job.laminate_pictures import section_drawing, stiffness_polar
from laywright.job.load_page import LoadPage, load_page
from laywright.job.zones import zone_table, zones_of
from laywright.laminate.certainty import Certainty, how_sure
from laywright.laminate.choice import RULES_OF_THUMB
from laywright.laminate.drop_off import drop_off_words
from laywright.laminate.equal_sheet import equal_sheets
from laywright.laminate.laminate import Laminate
from laywright.laminate.loading import Loading
from laywright.laminate.local import local_laminate
from laywright.laminate.materials import load_materials
from laywright.shop.bench.summaries import LaminateDetails

__all__ = ["laminate_details"]


def laminate_details(
    laminate: Laminate, patterns: PatternSet, loading: Loading | None = None
) -> LaminateDetails:
    """Return the page on a laminate.

    Parameters
    ----------
    laminate : Laminate
    patterns : PatternSet
        With the drape of its plies.
    loading : Loading or None
        What it is asked to carry.
    """
    carries = LoadPage(None, (), ()) if loading is None else load_page(laminate, loading)
    sure = _certainty(laminate, loading)
    zones = zones_of(laminate, patterns)
    return LaminateDetails(
        section_drawing(laminate),
        stiffness_polar(laminate),
        (
            _bands(sure),
            _spread(laminate, patterns),
            *((zone_table(zones),) if zones else ()),
            _sheets(laminate),
            *carries.tables,
        ),
        (
            *_state(laminate),
            *drop_off_words(laminate),
            *laminate.couplings,
            *carries.notes,
            *sure.remarks,
            *RULES_OF_THUMB,
        ),
        carries.picture,
    )


def _certainty(laminate: Laminate, loading: Loading | None) -> Certainty:
    """Return the bands, that of the margin among them where the cards state strengths."""
    if loading is None or loading.load is None:
        return how_sure(laminate.layup)
    try:
        return how_sure(laminate.layup, loading.load, loading.criterion, loading.knock_downs)
    except MaterialError:
        return how_sure(laminate.layup)


def _state(laminate: Laminate) -> tuple[str, ...]:
    state = laminate.state
    words = [
        "symmetric about the middle" if state.symmetric else "not symmetric about the middle",
        "balanced" if state.balanced else "not balanced",
    ]
    return (f"The layup is {' and '.join(words)}.",)


def _bands(sure: Certainty) -> Table:
    return Table(
        "How sure the figures are",
        ("Figure", "Planned", "Nine of ten parts", "What matters most"),
        tuple(
            (
                f"{band.name}, {band.unit}",
                _short(band.planned),
                f"{_short(band.low)} to {_short(band.high)}",
                band.matters or "nothing was varied",
            )
            for band in sure.bands
        ),
    )


def _spread(laminate: Laminate, patterns: PatternSet) -> Table:
    local = local_laminate(laminate, draped_places(patterns))
    return Table(
        f"On the draped part, which weighs {local.mass:.0f} g within its edge",
        ("Figure", "Flat", "5 % of the area below", "Half", "95 %"),
        tuple(
            (
                f"{spread.name}, {spread.unit}",
                *(
                    _short(value)
                    for value in (spread.planned, spread.low, spread.middle, spread.high)
                ),
            )
            for spread in local.spreads
        ),
    )


def _sheets(laminate: Laminate) -> Table:
    return Table(
        "A plain sheet that is as stiff when bent",
        ("Sheet", "Thickness, mm", "Mass, g/m^2", "Times this laminate"),
        tuple(
            (
                sheet.name,
                f"{sheet.thickness:.2f}",
                _short(sheet.areal_mass),
                f"{sheet.mass_ratio:.2f}",
            )
            for sheet in equal_sheets(laminate, load_materials().sheets.values())
        ),
    )


def _short(value: float) -> str:
    """Return a number with three digits and no exponent."""
    return f"{float(f'{value:.3g}'):.10g}"
