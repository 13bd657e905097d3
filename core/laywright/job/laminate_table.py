"""The layers of a laminate as a table for a spreadsheet."""

from __future__ import annotations

import math

from laywright.files.csv import csv_bytes
from laywright.laminate.extents import extent_text
from laywright.laminate.laminate import Laminate
from laywright.laminate.layers import layers
from laywright.laminate.transverse import through_moduli

__all__ = ["laminate_table"]


def laminate_table(laminate: Laminate) -> bytes:
    """Return every ply and the core as comma-separated text, the one at the mould first."""
    head = (
        "layer",
        "ply",
        "material",
        "angle (deg)",
        "thickness (mm)",
        "middle above the mould (mm)",
        "covers",
        "fibre volume (%)",
        "dry mass (g/m2)",
        "resin with hardener (g/m2)",
        "E1 (MPa)",
        "E2 (MPa)",
        "nu12",
        "G12 (MPa)",
        "G13 (MPa)",
        "G23 (MPa)",
    )
    rows = []
    heights = laminate.ply_heights.tolist()
    layup = laminate.layup
    for layer in layers(layup):
        lamina = layer.lamina
        if layer.ply is not None:
            cloth = layup.plies[layer.ply - 1].cloth
            share = layup.ply_resin_share(layer.ply)
            material, dry = cloth.name, cloth.areal_weight
            resin = dry * share / (1.0 - share)
            fibre = 100.0 * float(laminate.ply_fibre_fractions[layer.ply - 1])
            middle, extent = heights[layer.ply - 1], layup.plies[layer.ply - 1].extent
        else:
            assert layup.core is not None
            sheet = layup.core.sheet
            material, dry, fibre = sheet.name, 1000.0 * sheet.density * layer.thickness, 0.0
            resin, extent = 2.0 * sheet.bond_resin, None
            below = [n for n in layup.throughout if n <= layup.core.after]
            middle = layer.thickness / 2.0
            middle += math.fsum(float(laminate.ply_thicknesses[n - 1]) for n in below)
        rows.append(
            (
                layer.name,
                layer.ply,
                material,
                round(math.degrees(layer.angle), 3),
                round(layer.thickness, 4),
                round(middle, 4),
                extent_text(extent) or "whole face",
                round(fibre, 2),
                round(dry, 2),
                round(resin, 2),
                round(lamina.modulus_1, 1),
                round(lamina.modulus_2, 1),
                round(lamina.poisson_12, 4),
                round(lamina.shear_12, 1),
                *(round(modulus, 1) for modulus in through_moduli(lamina)),
            )
        )
    return csv_bytes(head, rows)
