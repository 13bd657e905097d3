"""One piece of cloth on a curved face: the solver, its starts, and what it says."""
