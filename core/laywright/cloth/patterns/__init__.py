"""Flat patterns: outlines, margins, marks, maps, and where they land on the mould."""
