"""What can hurt at each station, in the words that the job sheet prints there.

General workshop practice; the safety data sheet of the product at hand always goes first.
"""

from __future__ import annotations

__all__ = [
    "ASSEMBLE",
    "BAG",
    "CLOCK",
    "COUPONS",
    "CURE",
    "CUT",
    "ESTIMATES",
    "LAY_UP",
    "MIX",
    "PART",
    "PRINT",
    "RECORD",
    "RELEASE",
    "SHOPPING",
    "TRIM",
]

ESTIMATES = (
    "All results are estimates and no protection level is stated: a protective, load-bearing or "
    "safety part must be tested by an accredited laboratory."
)

_DATA_SHEET = (
    "Read the safety data sheet (SDS) of every product you really use. Where it or a local rule "
    "says something else than this page, follow it."
)
_UNCURED = (
    "Uncured epoxy resin and hardener irritate or burn skin and eyes and can make you allergic "
    "for life. Nitrile gloves (not latex), changed often; long sleeves; goggles. Never clean skin "
    "with solvent: use soap and water."
)
_AIR = "Work with open windows or an extractor."
_DUST = (
    "Dust of cured, and above all of half-cured, laminate irritates and sensitises. Extraction, "
    "P2 or P3 mask (FFP3, N100), eye protection; sand wet where you can."
)
_CARBON = (
    "Carbon fibre and its dust conduct electricity: keep them away from electronics, sockets and "
    "mains cables."
)
_SOLVENT = (
    "Acetone vapour ignites from about -20 °C, isopropanol vapour from about 12 °C: no flame, "
    "heater or spark in the room. Put solvent rags into a closed metal bin."
)
_SOFT_MOULD = (
    "A printed mould softens when it is warmed, near the heat deflection temperature of its "
    "plastic. Hot resin, sun or an oven can bend it."
)

PART = (ESTIMATES, _DATA_SHEET)
CLOCK = (
    "Times are planned, not promised: the data sheets go first, and warm or cold days shift them. "
    "Look after the part until it has passed its warmest hour.",
)
SHOPPING = (
    "Ask for the safety data sheet (SDS) with every product. Keep resin, hardener and solvents "
    "away from food, children and heat.",
)
BAG = (
    _UNCURED,
    "A bag pulls with eight tonnes on a square metre: a hollow mould can give way. Eye protection "
    "while it is pumped, hands off its edges.",
)
PRINT = (
    "Nozzle and bed burn skin. Air the room: melted plastic gives off fumes and fine dust.",
    "Cut supports away from your hand; wear eye protection.",
    _SOFT_MOULD,
)
ASSEMBLE = (
    _UNCURED,
    "Filler and primer make fine dust: sand wet or with extraction, with a P2 or P3 mask.",
    _SOLVENT,
)
RELEASE = (
    _SOLVENT,
    "Air the room while release agent dries; wear nitrile gloves.",
)
CUT = (
    "Loose glass and aramid fibres irritate skin, eyes and lungs: sleeves, eye protection, mask.",
    _CARBON,
    "Aramid leaves a fuzzy edge and blunts shears: keep a pair for it alone. Cut away from you.",
)
MIX = (
    _UNCURED,
    "A full cup of mixed epoxy can get hot enough to smoke, give off fumes and set fire to what "
    "lies beside it. Small batches, shallow trays; no foam or glass cups. Carry a hot cup outside "
    "on a board.",
    "Polyester only: the MEKP catalyst can blind and burns fiercely. Goggles; never let it meet "
    "the cobalt accelerator undiluted.",
    _AIR,
    _DATA_SHEET,
)
LAY_UP = (
    _UNCURED,
    _AIR,
    "Resin left in the cup heats up while you work: spread it early, take a hot cup outside.",
)
CURE = (
    _SOFT_MOULD,
    "Resin pooled in a corner runs hot: brush it out before it gels and look after the part "
    "until it has passed its warmest hour.",
    "Never use a kitchen oven that food goes into.",
)
TRIM = (
    "Cutting disc: guard on, disc rated for the speed of the machine, part clamped; face shield "
    "and hearing protection.",
    _DUST,
    _CARBON,
    "Edges of cured laminate cut like glass: gloves. Dust of glass and aramid itches; aramid "
    "fuzzes and does not sand clean.",
)
COUPONS = (
    "A coupon that breaks throws splinters: goggles, and a box over it. Weights fall: keep feet "
    "and hands from under them.",
    _DUST,
)
RECORD = (ESTIMATES,)
