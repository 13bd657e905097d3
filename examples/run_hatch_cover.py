"""Run the whole job of the crowned hatch cover in FreeCAD and write its files.

``LAYWRIGHT_OUT`` names the folder for the files; without it they go to results/hatch_cover.
The part is an invention, and so are the numbers of this job.
"""

import os
from pathlib import Path

import FreeCAD
import hatch_cover

from freecad.laywright.exports import export_job
from freecad.laywright.objects.job import make_job, stages_of

HERE = Path(__file__).resolve().parent


def main():
    """Open the shipped part, make the job, compute it, write the files, print the numbers."""
    out = Path(os.environ.get("LAYWRIGHT_OUT", HERE.parent / "results" / "hatch_cover"))
    document = FreeCAD.openDocument(str(HERE / "hatch_cover.FCStd"))
    part = document.HatchCover
    job = make_job(part, hatch_cover.moulded_faces(part.Shape), "Hatch cover")
    document.recompute()
    stages = stages_of(job)
    for obj in stages.values():
        if not obj.isValid() or obj.Status != "up to date":
            raise SystemExit(f"{obj.Label}: {obj.Status}")
    written = export_job(job, out)
    document.saveAs(str(out / "hatch cover job.FCStd"))
    print(summary(stages))
    print(f"{len(written)} files and the FreeCAD document are in {out}")


def summary(stages):
    """Return the main numbers of a job as lines of text."""
    face, release, layup = stages["MouldedFace"], stages["ReleaseCheck"], stages["Layup"]
    body, tiles, patterns = stages["MouldBody"], stages["PrintTiles"], stages["ClothPatterns"]
    plan, sheet = stages["MixCurePlan"], stages["JobSheet"]
    mass = face.Area.Value * 1e-6 * layup.ArealMass
    lines = [
        f"Hatch cover (an invented example), version {sheet.Version}",
        f"moulded face    {face.Area.Value / 1e6:.4f} m2, triangles within "
        f"{face.Deviation.Value:.3f} mm",
        f"release         least draft {release.DraftFound.Value:.1f} deg, undercut "
        f"{release.UndercutArea.Value:.0f} mm2",
        f"layup           {len(layup.Cloths)} plies, {layup.Thickness.Value:.2f} mm, "
        f"{layup.ArealMass:.0f} g/m2, fibre volume {layup.FibreVolume:.0f} %, part about "
        f"{mass:.0f} g",
        f"mould body      {body.Volume.Value / 1e6:.2f} litres, working area within "
        f"{body.LargestDeviation.Value:.3f} mm of the CAD face",
        f"print tiles     {tiles.Count}",
        *(f"                {line}" for line in tiles.Tiles),
        f"cloth patterns  {patterns.Count}, {patterns.CutArea.Value / 1e6:.3f} m2, largest shear "
        f"{patterns.LargestShear.Value:.1f} deg",
        *(f"roll            {line}" for line in stages["RollPlan"].Rolls),
        f"mix             cloth {plan.ClothMass:.0f} g, resin {plan.ResinMass:.0f} g, hardener "
        f"{plan.HardenerMass:.0f} g, cups: {len(plan.Cups)}",
        *(f"cure            {line}" for line in plan.Cure),
    ]
    return "\n".join(lines)


main()
