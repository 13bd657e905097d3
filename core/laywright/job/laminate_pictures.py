"""Pictures of a laminate: its section, its stiffness all round, what it carries, the choice."""

from __future__ import annotations

import math

import numpy as np

from laywright.arrays import FloatArray
from laywright.files.charts import Curve, Level, line_chart
from laywright.files.drawing import Drawing, Label, Line, Style
from laywright.files.lettering import width_of
from laywright.files.polar_chart import polar_chart
from laywright.laminate.choice import Ranking
from laywright.laminate.constituents import FibreKind
from laywright.laminate.directions import bent_moduli, pulled_moduli
from laywright.laminate.envelope import Envelope, LoadPair
from laywright.laminate.extents import extent_text
from laywright.laminate.laminate import Laminate

__all__ = ["envelope_chart", "section_drawing", "stiffness_polar", "trade_off_chart"]

_PLY, _CORE = (6.0, 11.0), (14.0, 26.0)
_LETTER = 2.6
_MOULD = 5.0
_HATCH = 3.0
_LOCAL = 0.6  # how wide a local ply is drawn
_FILLS = {
    FibreKind.GLASS: (0.94, 0.96, 0.94),
    FibreKind.CARBON: (0.72, 0.72, 0.74),
    FibreKind.ARAMID: (0.98, 0.93, 0.70),
    FibreKind.PLANT: (0.86, 0.90, 0.72),
    FibreKind.OTHER: (0.95, 0.95, 0.95),
}
_CORE_FILL = (1.0, 0.98, 0.92)
_IN_METRES = np.array([1.0, 1e-3])  # N mm to N m, in the second column


def section_drawing(laminate: Laminate, width: float = 60.0) -> Drawing:
    """Return the stack from the mould upwards, each layer with its cloth, angle and thickness.

    Heights are drawn larger the thicker a layer is, but not to scale.  The strokes in a ply lean
    as its warp does: upright strokes stand for 90 degrees, a row of points for 0.  A ply that
    covers a part of the face is drawn narrower.

    Parameters
    ----------
    laminate : Laminate
    width : float, mm
        Of the stack in the drawing, without the words beside it.
    """
    layup = laminate.layup
    thicknesses = laminate.ply_thicknesses.tolist()
    thinnest, thickest = min(thicknesses), max(thicknesses)
    shapes: list[Line | Label] = _mould(width)
    height = 0.0
    for number, (ply, thickness) in enumerate(zip(layup.plies, thicknesses, strict=True), 1):
        share = (thickness - thinnest) / (thickest - thinnest) if thickest > thinnest else 0.0
        tall = _PLY[0] + share * (_PLY[1] - _PLY[0])
        degrees = math.degrees(ply.angle)
        cloth = ply.cloth.name.replace("^2", "²")
        text = f"{number}  {cloth}, {degrees:g}°, {thickness:.2f} mm"
        wide = width
        if ply.extent is not None:
            text, wide = f"{text}, {extent_text(ply.extent)}", _LOCAL * width
        shapes += _box("ply", (wide, height, tall), _FILLS[ply.cloth.fibre.kind], text, width)
        shapes += _strokes(wide, height, tall, ply.angle)
        height += tall
        core = layup.core
        if core is not None and core.after == number:
            tall = min(max(_CORE[0], 2.0 * core.thickness), _CORE[1])
            sheet = core.sheet.name.replace("^3", "³")
            text = f"core  {sheet}, {core.thickness:g} mm"
            shapes += _box("core", (width, height, tall), _CORE_FILL, text, width)
            height += tall
    where = "without local plies" if layup.local else "in all"
    total = f"{laminate.thickness:.2f} mm {where}, {laminate.areal_mass:.0f} g/m²"
    shapes.append(
        Label("text", total, (0.5 * width_of(total, _LETTER), height + 1.8 * _LETTER), _LETTER)
    )
    styles = {
        "ply": Style(0.3),
        "core": Style(0.3),
        "mould": Style(0.3),
        "strokes": Style(0.2, (), (0.25, 0.25, 0.25)),
        "text": Style(0.2),
    }
    return Drawing("section of the stack", tuple(shapes), styles)


def _mould(width: float) -> list[Line | Label]:
    """Return the mould's surface below, hatched, with its name."""
    shapes: list[Line | Label] = [Line("mould", np.array([[0.0, 0.0], [width, 0.0]]))]
    for x in np.arange(0.0, width, _HATCH):
        end = min(x + _MOULD, width)
        shapes.append(Line("mould", np.array([[x, -(end - x)], [end, 0.0]])))
    middle = width + 3.0 + 0.5 * width_of("mould", _LETTER)
    shapes.append(Label("text", "mould", (middle, -0.5 * _MOULD), _LETTER))
    return shapes


def _box(
    layer: str,
    place: tuple[float, float, float],
    fill: tuple[float, float, float],
    text: str,
    beside: float,
) -> list[Line | Label]:
    """Return a layer and its words; `place` is its width, where it begins and how tall it is."""
    width, low, tall = place
    corners = np.array([[0.0, low], [width, low], [width, low + tall], [0.0, low + tall]])
    middle = (beside + 3.0 + 0.5 * width_of(text, _LETTER), low + 0.5 * tall)
    return [Line(layer, corners, True, fill), Label("text", text, middle, _LETTER)]


def _strokes(width: float, low: float, tall: float, angle: float) -> list[Line | Label]:
    """Return strokes that lean by the angle of the warp to the section."""
    up = abs(math.sin(angle))
    lean = math.cos(angle) * math.copysign(1.0, math.sin(angle) or 1.0)
    half = 0.32 * tall
    reach = np.array([half * lean, half * up]) if up > 0.02 else np.array([0.9, 0.0])
    middles = np.arange(0.5 * _HATCH, width, _HATCH)
    return [
        Line("strokes", np.array([[x, low + 0.5 * tall]]) + np.stack([-reach, reach]))
        for x in middles
        if reach[0] <= x + 1e-9 and -reach[0] <= x and abs(reach[0]) <= width - x
    ]


def stiffness_polar(laminate: Laminate) -> Drawing:
    """Return the modulus in every direction, pulled and bent, in GPa."""
    directions = np.radians(np.arange(0.0, 361.0, 3.0))
    curves = [
        Curve(name, np.column_stack([directions, moduli(laminate, directions) / 1000.0]))
        for name, moduli in (("pulled", pulled_moduli), ("bent", bent_moduli))
    ]
    return polar_chart("stiffness all round", "GPa", curves, arrow="datum arrow")


_AXES = {
    LoadPair.PULLS: ("pull along", "pull across"),
    LoadPair.PULL_AND_SHEAR: ("pull along", "shear"),
    LoadPair.BENDINGS: ("bending along", "bending across"),
}


def envelope_chart(envelope: Envelope) -> Drawing:
    """Return the failure envelope: inside the first curve nothing fails."""
    along, up = (f"{name}, {envelope.unit}" for name in _AXES[envelope.pair])
    return line_chart(
        f"what it carries, by {envelope.criterion.value}",
        along,
        up,
        (Curve("first ply fails", envelope.first), Curve("last ply fails", envelope.last)),
        size=(90.0, 90.0),
    )


def trade_off_chart(ranking: Ranking) -> Drawing:
    """Return bending stiffness against mass: what was tried, and the front of the best."""
    best = ranking.best[0]
    return line_chart(
        "the choice of layups",
        "mass, g/m²",
        "weaker bending stiffness, N m",
        (Curve("none is both lighter and stiffer", _stepped(ranking.front * _IN_METRES)),),
        levels=(
            Level("the best of the wish", min(best.bending_along, best.bending_across) / 1000.0),
        ),
        marks=(Level("", best.areal_mass),),
        dots=(Curve("tried", ranking.cloud * _IN_METRES),),
    )


def _stepped(points: FloatArray) -> FloatArray:
    """Return a staircase through points that rise to the right; one point becomes a dash."""
    if len(points) == 1:
        return np.asarray(np.array([[0.99, 1.0], [1.01, 1.0]]) * points[0])
    xs = np.repeat(points[:, 0], 2)[1:]
    ys = np.repeat(points[:, 1], 2)[:-1]
    return np.column_stack([xs, ys])
