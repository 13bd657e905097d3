"""Task panels: the inputs of a stage as fields with units, its results beside them."""
