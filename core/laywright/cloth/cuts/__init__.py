"""Darts and splices: where they are needed, how they are made, and how their sides meet."""
