"""Test pieces: plan, readings, and what they say of a material."""
