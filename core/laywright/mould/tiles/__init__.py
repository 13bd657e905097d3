"""The mould cut for the printer: cuts, joints, poses, marks, and how the tiles are put together."""
