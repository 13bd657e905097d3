"""File formats, and nothing of the trade: plain values in, files out."""
