"""What the job sheet says about the load of a laminate: margins, envelope, a panel."""

from __future__ import annotations

import math
from dataclasses import dataclass

from laywright.errors import MaterialError
from laywright.files.drawing import Drawing
from laywright.files.page import Table
from laywright.job.laminate_pictures import envelope_chart
from laywright.laminate.envelope import LoadPair, failure_envelope
from laywright.laminate.knock_downs import usual_knock_downs
from laywright.laminate.laminate import Laminate
from laywright.laminate.loading import Loading
from laywright.laminate.loads import LoadCase, StrainCase
from laywright.laminate.modes import Mode
from laywright.laminate.plate import Plate, PlateReport, check_plate
from laywright.laminate.strength import StrengthReport, check_strength

__all__ = ["LoadPage", "load_page", "load_words"]


@dataclass(frozen=True, eq=False)
class LoadPage:
    """What is said about a load.

    Attributes
    ----------
    picture : Drawing or None
        The failure envelope.
    tables : tuple of Table
    notes : tuple of str
    """

    picture: Drawing | None
    tables: tuple[Table, ...]
    notes: tuple[str, ...]


def load_page(laminate: Laminate, loading: Loading) -> LoadPage:
    """Return what is said about the load of a laminate.

    A cloth without strengths on its card leaves a note in place of the margins.
    """
    tables: list[Table] = []
    notes: list[str] = []
    picture = None
    try:
        for case in (loading.load, loading.strain):
            if case is not None:
                report = check_strength(laminate, case, loading.criterion, loading.knock_downs)
                tables.append(_margins(report, case))
                notes += [report.finding, _last(report), report.caution]
        if loading.load is not None:
            pair = _pair(loading.load)
            picture = envelope_chart(
                failure_envelope(laminate, pair, loading.criterion, loading.knock_downs)
            )
    except MaterialError as problem:
        notes.append(str(problem))
    if loading.plate is not None:
        found = check_plate(laminate, loading.plate, loading.criterion, loading.knock_downs)
        tables.append(_plate(found, loading.plate))
        notes += [found.finding, *found.limits]
    notes.append(_counted_on(laminate, loading))
    return LoadPage(picture, tuple(tables), tuple(dict.fromkeys(note for note in notes if note)))


def load_words(laminate: Laminate, loading: Loading) -> str:
    """Return what fails first, as one or two sentences."""
    said = []
    try:
        for case in (loading.load, loading.strain):
            if case is not None:
                report = check_strength(laminate, case, loading.criterion, loading.knock_downs)
                said.append(report.finding)
        if loading.plate is not None:
            found = check_plate(laminate, loading.plate, loading.criterion, loading.knock_downs)
            said.append(f"The panel bends by {found.deflection:.3g} mm. {found.finding}".strip())
    except MaterialError as problem:
        said.append(str(problem))
    return " ".join(said)


def _pair(load: LoadCase) -> LoadPair:
    """Return the two loads of the envelope: those that this load has most of."""
    bending = max(abs(moment) for moment in load.moment[:2])
    along, across, shear = (abs(force) for force in load.force)
    if bending > max(along, across, shear):
        return LoadPair.BENDINGS
    return LoadPair.PULL_AND_SHEAR if shear > across else LoadPair.PULLS


def _margins(report: StrengthReport, case: LoadCase | StrainCase) -> Table:
    head = "forces" if isinstance(case, LoadCase) else "strains"
    rows = [
        (
            margin.name,
            _times(margin.factor),
            f"{margin.mode.value}, {margin.border.value}",
            *(_times(factor) for factor in margin.by_mode),
        )
        for margin in report.margins
    ]
    if report.sandwich is not None:
        sandwich = report.sandwich
        blank = ("",) * len(Mode)
        rows += [
            (name, _times(factor), "", *blank)
            for name, factor in (
                ("core, sheared", sandwich.core_shear),
                ("face at the mould, wrinkling", sandwich.wrinkling_mould_side),
                ("face away from it, wrinkling", sandwich.wrinkling_far_side),
                ("core, crushed", sandwich.indentation),
            )
        ]
    return Table(
        f"How many times the {head} until it fails, by {report.criterion.value}",
        ("Layer", "Times", "How", *(mode.value.capitalize() for mode in Mode)),
        tuple(rows),
    )


def _last(report: StrengthReport) -> str:
    if not math.isfinite(report.last_factor) or report.last_factor <= report.first_factor:
        return ""
    return (
        "Ply by ply, with all stiffness of a failed ply gone, it carries up to "
        f"{report.last_factor:.2f} times this load."
    )


def _plate(found: PlateReport, plate: Plate) -> Table:
    rows = [
        ("Pressure", f"{1000.0 * plate.pressure:g} kPa"),
        ("Deflection of the middle", f"{found.deflection:.3g} mm"),
        ("Of that from transverse shear", f"{found.shear_share:.0%}"),
    ]
    if math.isfinite(found.buckling_factor):
        rows.append(("Buckles at", f"{_times(found.buckling_factor)} times the in-plane forces"))
    if found.strength_factor is not None:
        rows.append(("Something fails at", f"{_times(found.strength_factor)} times the pressure"))
    title = f"A flat panel of {plate.length:g} x {plate.width:g} mm, {plate.support.value}"
    return Table(title, ("What", "How much"), tuple(rows))


def _counted_on(laminate: Laminate, loading: Loading) -> str:
    process = laminate.layup.process
    shares = loading.knock_downs or usual_knock_downs(process)
    whence = (
        f"usual for {process.value} work, common practice, no source"
        if loading.knock_downs is None
        else "set for this job"
    )
    return (
        f"Of the strengths on the cards {shares.tension:.0%} are counted on in tension, "
        f"{shares.compression:.0%} in compression, {shares.shear:.0%} in shear and "
        f"{shares.core:.0%} of a core ({whence})."
    )


def _times(factor: float) -> str:
    return f"{factor:.2f}" if math.isfinite(factor) and factor < 1e3 else "-"
