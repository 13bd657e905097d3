"""The plies of a layup, each laid on the surface that it meets."""
