"""Resin by mass: what to weigh, in which cups, by when."""
