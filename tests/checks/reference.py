"""The outside references, and the one way in which a computed value is held against them."""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path
from typing import Any

__all__ = ["agree", "row"]


@cache
def _rows() -> dict[str, dict[str, Any]]:
    text = (Path(__file__).parent / "reference.json").read_text(encoding="utf-8")
    return {entry["id"]: entry for entry in json.loads(text)["rows"]}


def row(identity: str) -> dict[str, Any]:
    """Return a row: source, how the value is known, inputs, expected quantities."""
    return _rows()[identity]


def agree(identity: str, computed: dict[str, Any], *, without: tuple[str, ...] = ()) -> None:
    """Hold every quantity of a row against a computed value in the row's unit.

    Parameters
    ----------
    identity : str
        For example ``"CLT-01"``.
    computed : dict
        Value by quantity name; every quantity of the row must be there.
    without : tuple of str
        Quantities that are left out on purpose; say why beside the call.
    """
    expected = {item["name"]: item for item in row(identity)["expected"]}
    assert set(computed) == set(expected) - set(without), (
        f"{identity}: computed {sorted(computed)}, the row has {sorted(expected)}"
    )
    for name, found in computed.items():
        item = expected[name]
        value = item["value"]
        if isinstance(value, (str, bool)):
            assert found == value, f"{identity} {name}: {found!r}, reference {value!r}"
            continue
        tolerance = max(item.get("tol_rel", 0.0) * abs(value), item.get("tol_abs", 0.0))
        if "tol_rel" not in item and "tol_abs" not in item:
            tolerance = 1e-9 * abs(value)
        assert abs(found - value) <= tolerance, (
            f"{identity} {name}: {found!r} {item['unit']}, "
            f"reference {value!r} +- {tolerance:.3g} ({row(identity)['source']})"
        )
