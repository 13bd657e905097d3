"""The mould as a solid: compensation, working surface, run-off, base, edge, and its pieces."""
