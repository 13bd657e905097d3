"""Numbers in sentences: three figures, never a power of ten."""

from __future__ import annotations

__all__ = ["three_figures"]


def three_figures(value: float) -> str:
    """Return a number rounded to three figures, written out.

    Examples
    --------
    >>> three_figures(136021.8), three_figures(0.012345), three_figures(0.0)
    ('136000', '0.0123', '0')
    >>> three_figures(1e4), three_figures(-0.0)
    ('10000', '0')
    """
    return f"{float(f'{value:.3g}') + 0.0:.12f}".rstrip("0").rstrip(".")
