"""The stations of the job sheet and what stands on them."""
