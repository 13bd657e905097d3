"""The rows of a legend for a colour scale: each step in words, with the share it takes."""

from freecad.laywright.qt import translate

__all__ = ["step_rows"]

_UNITS = {"deg": "°", "mm": " mm", "%": " %"}


def step_rows(scale, shares, bears=None):
    """Return colour and text of every step.

    Parameters
    ----------
    scale : laywright.files.scale.Scale
        The steps.
    shares : sequence of float
        Share that each takes, 0 to 1.
    bears : float, optional
        What the cloth bears either way; steps past it say so.

    Returns
    -------
    list of (colour, text)
    """
    unit = _UNITS[scale.unit]
    limits = scale.limits.tolist()
    rows = []
    for step, (colour, share) in enumerate(zip(scale.colours.tolist(), shares, strict=True)):
        low = None if step == 0 else limits[step - 1]
        high = None if step == len(limits) else limits[step]
        words = _words(low, high, unit)
        if bears is not None and ((low or 0.0) >= bears or (high or 0.0) <= -bears):
            words = translate("Laywright", "past what the cloth bears, {0}").format(words)
        rows.append((tuple(colour), f"{words}: {100.0 * share:.1f} %"))
    return rows


def _words(low, high, unit):
    if low is None:
        return translate("Laywright", "up to {0}").format(f"{high:g}{unit}")
    if high is None:
        return translate("Laywright", "over {0}").format(f"{low:g}{unit}")
    return translate("Laywright", "{0} to {1}").format(f"{low:g}", f"{high:g}{unit}")
