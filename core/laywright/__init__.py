"""Laywright: moulds, cloth patterns, laminates and shop plans for parts laid up by hand.

The house
---------
``quantities`` ``errors`` ``arrays`` ``tolerances`` ``progress``
    The ground floor: units at the door, one root error, array types, tolerances.
``values`` ``stage``
    Frozen values with a digest and a stored form; stages as pure functions.
``surface``
    What a part is: triangles with patches.
``laminate``
    What the skin is: materials, plies, stiffness, strength.
``files``
    The only place that knows a file format; it takes plain values and knows no trade.
``mould`` ``cloth`` ``shop``
    What is made of the two: moulds and tiles, patterns and roll plans, cups and cure.
``job``
    The whole job as one value; running it gives one result.

Imports point downwards only; ``pyproject.toml`` holds the contract and a test keeps it.
No module imports FreeCAD or Qt.
"""

from __future__ import annotations

__all__ = ["__version__"]

__version__ = "0.1.0"
