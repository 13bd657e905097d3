"""The job: every input in one value, every result in another.

Running a job again with an earlier result computes only the stages whose inputs changed.
"""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from typing import Any

from laywright.arrays import Vector
from laywright.cloth.cuts.cuts import CutSettings
from laywright.cloth.drape.datum import Datum
from laywright.cloth.patterns.pattern import PatternSet, PatternSettings, make_patterns
from laywright.cloth.roll.roll import RollPlan, RollSettings, plan_roll
from laywright.job.analysis import AnalysisSettings
from laywright.job.links import (
    ply_cloths,
    with_closing,
    with_marked_datum,
    with_mould_of,
    with_printer,
    with_release,
)
from laywright.job.sheet import make_job_sheet
from laywright.laminate.drop_off import buildup_of
from laywright.laminate.laminate import Laminate, analyse
from laywright.laminate.loading import Loading
from laywright.laminate.plies import Layup
from laywright.mould.body.body import MouldBody, MouldSettings, build_body
from laywright.mould.release.release import ReleaseReport, ReleaseSettings, check_release
from laywright.mould.tiles.printer import Printer
from laywright.mould.tiles.tiles import TileSet, TileSettings, cut_tiles
from laywright.progress import Progress, part_of, silent
from laywright.shop.bench.bench import BenchSettings
from laywright.shop.plan import ShopPlan, ShopSettings, plan_shop
from laywright.shop.sheet.traveller import JobSheet
from laywright.surface.face import LaminateSide, MouldedFace, MouldSide, take_face
from laywright.surface.triangles import Surface
from laywright.values import digest

__all__ = ["Job", "JobResult", "run"]


@dataclass(frozen=True, eq=False)
class Job:
    """Everything that a job starts from.

    Attributes
    ----------
    name : str
        Name of the job, printed on every sheet.
    surface : Surface
        The faces to be moulded, mm, normals out of the part.
    pull : tuple of 3 float or None
        Direction in which the part leaves the mould; None takes the largest least draft.
    layup : Layup
        Plies and resin.
    printer : Printer
        What the tiles are printed on.
    laminate_side, mould_side : LaminateSide, MouldSide
        Where laminate and mould lie.
    deviation : float, mm
        Largest distance between the part and its triangles, where known.
    datum : Datum or None
        Start point and arrow of the cloth; None takes the middle and the longest extent.
    release, mould, tiles, patterns, cuts, roll, shop, bench
        Settings of the stages.
    marks_datum : bool
        Whether the mould carries the marks of the datum.
    loading : Loading or None
        What the laminate is asked to carry.
    analysis : AnalysisSettings or None
        How the part is handed over to a finite-element solver; None leaves it out.
    """

    name: str
    surface: Surface
    pull: Vector | None
    layup: Layup
    printer: Printer
    laminate_side: LaminateSide = LaminateSide.INSIDE
    mould_side: MouldSide = MouldSide.OUTSIDE
    deviation: float = 0.0
    datum: Datum | None = None
    release: ReleaseSettings = field(default_factory=ReleaseSettings)
    mould: MouldSettings = field(default_factory=MouldSettings)
    tiles: TileSettings = field(default_factory=TileSettings)
    patterns: PatternSettings = field(default_factory=PatternSettings)
    cuts: CutSettings = field(default_factory=CutSettings)
    roll: RollSettings = field(default_factory=RollSettings)
    shop: ShopSettings = field(default_factory=ShopSettings)
    bench: BenchSettings = field(default_factory=BenchSettings)
    marks_datum: bool = False
    loading: Loading | None = None
    analysis: AnalysisSettings | None = None


@dataclass(frozen=True, eq=False)
class JobResult:
    """Everything that a job gives, each stage with the digest of its inputs.

    `analysis` says how the part is handed over to a finite-element solver among the files.
    """

    name: str
    face: MouldedFace
    release: ReleaseReport
    laminate: Laminate
    body: MouldBody
    tiles: TileSet
    patterns: PatternSet
    roll: RollPlan
    shop: ShopPlan
    sheet: JobSheet
    analysis: AnalysisSettings | None = None

    @property
    def digests(self) -> dict[str, str]:
        """Digest of every stage, by its title, and of how the part is handed over."""
        shell = {} if self.analysis is None else {"Shell for Analysis": digest(self.analysis)}
        return {
            take_face.title: self.face.digest,
            check_release.title: self.release.digest,
            analyse.title: self.laminate.digest,
            build_body.title: self.body.digest,
            cut_tiles.title: self.tiles.digest,
            make_patterns.title: self.patterns.digest,
            plan_roll.title: self.roll.digest,
            plan_shop.title: self.shop.digest,
            make_job_sheet.title: self.sheet.digest,
            **shell,
        }

    @property
    def version(self) -> str:
        """The version code that every sheet and file of this result carries."""
        return self.sheet.digest[:8]


def run(job: Job, earlier: JobResult | None = None, *, progress: Progress = silent) -> JobResult:
    """Run a job.

    Parameters
    ----------
    job : Job
        What to do.
    earlier : JobResult, optional
        An earlier result; stages whose inputs are the same are taken from it.
    progress : Progress
        Told how far it is; may raise `laywright.errors.Cancelled`.

    Returns
    -------
    JobResult
    """
    known: dict[str, Any] = {} if earlier is None else vars(earlier)
    job = replace(job, mould=with_release(with_printer(job.mould, job.printer), job.release))
    face = take_face.renew(
        known.get("face"),
        job.surface,
        job.pull,
        job.laminate_side,
        job.mould_side,
        job.deviation,
    )
    release = check_release.renew(
        known.get("release"), face, job.release, progress=part_of(progress, 0.0, 0.1)
    )
    laminate = analyse.renew(known.get("laminate"), job.layup)
    body, patterns = _mould_and_cloth(job, known, face, laminate, progress)
    tiles = cut_tiles.renew(
        known.get("tiles"),
        body,
        job.printer,
        job.tiles,
        progress=part_of(progress, 0.5, 0.7),
    )
    roll = plan_roll.renew(
        known.get("roll"), patterns, job.roll, progress=part_of(progress, 0.7, 0.9)
    )
    shop = plan_shop.renew(
        known.get("shop"),
        ply_cloths(patterns, laminate),
        laminate,
        with_mould_of(job.shop, job.printer),
    )
    results = (face, release, laminate, body, tiles, patterns, roll, shop)
    sheet = make_job_sheet.renew(known.get("sheet"), job.name, *results, job.bench, job.loading)
    progress(1.0)
    return JobResult(job.name, *results, sheet, job.analysis)


def _mould_and_cloth(
    job: Job, known: dict[str, Any], face: MouldedFace, laminate: Laminate, progress: Progress
) -> tuple[MouldBody, PatternSet]:
    """Return the mould's body and the patterns, which come first where it marks their datum."""

    def draped(start: float, end: float) -> PatternSet:
        return make_patterns.renew(
            known.get("patterns"),
            face,
            laminate,
            job.datum,
            job.patterns,
            job.cuts,
            progress=part_of(progress, start, end),
        )

    def built(settings: MouldSettings, start: float, end: float) -> MouldBody:
        return build_body.renew(
            known.get("body"),
            face,
            buildup_of(laminate),
            settings,
            progress=part_of(progress, start, end),
        )

    settings = with_closing(job.mould, laminate, job.shop.cure)
    if not job.marks_datum:
        return built(settings, 0.1, 0.2), draped(0.2, 0.5)
    patterns = draped(0.1, 0.4)
    return built(with_marked_datum(settings, face, patterns), 0.4, 0.5), patterns
