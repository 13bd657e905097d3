"""From a moulded face to flat patterns on a roll: drape, outlines, packing."""
